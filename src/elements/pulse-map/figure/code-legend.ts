import { html, type TemplateResult } from 'lit';
import type { Layout } from '../../../drawing/index.js';
import type { ShownMessages } from '../../../locale/shown.js';

/** Explains the codes that stand for site names on a narrow figure. */
export function renderCodeLegend(layout: Layout, { anatomy, map }: ShownMessages): TemplateResult {
  const sites = [...new Set(layout.sites.map(({ place }) => place.site))];
  return html`<p class="legend">
    <span class="hidden-visually">${map.legend}: </span>${sites.map(
      (site) => html`<span><b>${anatomy.codes[site]}</b> ${map.siteShort(site)}</span>`,
    )}
  </p>`;
}
