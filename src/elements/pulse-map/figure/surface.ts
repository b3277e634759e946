import { html, nothing, type TemplateResult } from 'lit';
import { untoldIn } from '../../../drawing/index.js';
import type { Hand } from '../hand/press.js';
import type { SiteKeys } from '../hand/site-keys.js';
import type { HandState } from '../session.js';
import { renderCodeLegend } from './code-legend.js';
import { type FigureView, renderFigure } from './render.js';

function classOf({ mode, brush }: HandState): string {
  return mode === 'skin' ? 'skinning' : brush ? 'drawing' : '';
}

/** The figure with its listeners: pointer, keys and focus are handled here, once for all sites. */
export function renderSurface(view: FigureView, now: HandState, hand: Hand, keys: SiteKeys): TemplateResult {
  return html`<div
      class="surface ${classOf(now)}"
      tabindex=${now.mode === 'skin' ? -1 : nothing}
      @pointerdown=${hand.down}
      @pointermove=${hand.move}
      @pointerup=${hand.up}
      @pointercancel=${hand.cancel}
      @lostpointercapture=${hand.cancel}
      @pointerleave=${hand.leave}
      @click=${hand.click}
      @contextmenu=${hand.menu}
      @dragstart=${preventDefault}
      @touchmove=${{ handleEvent: hand.touchMove, passive: false }}
      @keydown=${keys.keydown}
      @focusin=${keys.focusin}
    >
      ${renderFigure(view)}
    </div>
    ${view.layout.naming === 'codes' ? renderCodeLegend(view.layout, view.words) : renderUntold(view)}`;
}

/** What was found at sites where it does not fit beside the name, in full. Their buttons are named so, too. */
function renderUntold({ layout, sites }: FigureView): TemplateResult | typeof nothing {
  const untold = untoldIn(layout.findings);
  return untold.length
    ? html`<p class="legend untold" aria-hidden="true">
        ${untold.map((key) => html`<span>${sites.get(key)?.name}</span>`)}
      </p>`
    : nothing;
}

function preventDefault(event: Event): void {
  event.preventDefault();
}
