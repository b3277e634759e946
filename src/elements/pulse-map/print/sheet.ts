import { html, nothing, svg, type TemplateResult } from 'lit';
import { type Place, PLACES, type Side, SIDES, SITE_IDS, type SiteId } from '../../../anatomy/index.js';
import { untoldIn, wordsAt } from '../../../drawing/index.js';
import { digitsSaid, digitViews, isAnySeen } from '../../../drawing/plates/digits.js';
import type { Examination } from '../../../examination/index.js';
import type { Messages } from '../../../locale/index.js';
import type { Pathway } from '../../../triage/index.js';
import { type FigureView, renderFigure } from '../figure/render.js';
import { pictureLegend } from '../picture/legend.js';

/** A page of A4 within margins of 12 mm, in px. Printers give a little more or less. */
export const PAGE = { width: 703, height: 1010 } as const;

/** Settings of the sheet, from loose to tight: the size its figure is laid out for, in px (printed at three quarters). */
export const SETTINGS = [
  { name: 'roomy', width: 640, height: 690 },
  { name: 'close', width: 600, height: 560 },
  { name: 'tight', width: 560, height: 480 },
] as const;

export interface SheetView {
  readonly figure: FigureView;
  readonly examination: Examination;
  /** The record it is compared with. */
  readonly earlier: Examination | undefined;
  readonly setting: (typeof SETTINGS)[number]['name'];
  readonly title: string;
  /** Language as set on the element, empty when none. */
  readonly lang: string;
  readonly register: string;
  readonly flags: boolean;
  readonly pathway: Pathway | undefined;
  readonly reading: boolean;
  readonly words: Messages;
}

function cell(place: Place | undefined, view: SheetView, across: boolean): TemplateResult {
  if (!place) return html`<td></td>`;
  const { examination, figure, words } = view;
  const found = wordsAt(examination, place, words);
  const loud = figure.sites.get(`${place.side} ${place.site}`)?.weight === 'loud';
  return html`<td class=${loud ? 'wrong' : nothing} colspan=${across ? 2 : nothing}>${found || '–'}</td>`;
}

function row(site: SiteId, view: SheetView): TemplateResult {
  const at = (side: Side | 'midline'): Place | undefined =>
    PLACES.find((place) => place.site === site && place.side === side);
  const middle = at('midline');
  return html`<tr>
    <th scope="row">${view.words.map.siteShort(site)}</th>
    ${middle ? cell(middle, view, true) : SIDES.map((side) => cell(at(side), view, false))}
  </tr>`;
}

/** Fingers and toes of each limb, where any was looked at. */
function digitLines(examination: Examination, words: Messages): string[] {
  return (['arm', 'leg'] as const).flatMap((kind) =>
    SIDES.flatMap((side) => {
      const views = digitViews(examination, { kind, side }, words);
      return isAnySeen(views) ? [digitsSaid(views, { kind, side }, words)] : [];
    }),
  );
}

/** Onset and delays, where stated; fingers and toes, where looked at; what has no room on the figure. */
function facts({ examination, figure, words }: SheetView): TemplateResult {
  const { onset, delays } = examination;
  const { map, anatomy } = words;
  const lines = [
    ...(onset ? [`${map.onset}: ${map.onsetWord(onset)}`] : []),
    ...(delays?.radioRadial ? [`${map.radioRadial}: ${map.radioRadialOptions[delays.radioRadial]}`] : []),
    ...SIDES.flatMap((side) => {
      const delay = delays?.radioFemoral?.[side];
      return delay ? [`${map.radioFemoral(anatomy.sides[side])}: ${map.radioFemoralOptions[delay]}`] : [];
    }),
  ];
  const untold = untoldIn(figure.layout.findings).map((key) => figure.sites.get(key)?.name);
  return html`${[...lines, ...digitLines(examination, words), ...untold].map((line) => html`<p>${line}</p>`)}`;
}

/** One page: flags, figure, table of findings, reading. */
export function renderSheet(view: SheetView): TemplateResult {
  const { figure, examination, words, title } = view;
  const { layout } = figure;
  const legend = pictureLegend(figure, words, examination.scale, 4);
  const height = Math.ceil(layout.height + legend.height);
  const about = [words.map.when(examination.examinedAt), examination.examiner].filter(Boolean);
  return html`<section class="sheet ${view.setting}" aria-label=${title}>
    ${view.flags ? html`<limb-flags flat .examination=${examination} .pathway=${view.pathway} lang=${view.lang || nothing} register=${view.register || nothing}></limb-flags>` : nothing}
    <h2>${title}${about.map((said) => html`<span>${said}</span>`)}</h2>
    <div class="picture">
      ${svg`<svg viewBox="0 0 ${layout.width} ${height}" role="img" aria-label=${words.map.figure}><g aria-hidden="true">${renderFigure(figure)}</g>${legend.template}</svg>`}
    </div>
    <div class="found">
      <table>
        <thead>
          <tr>
            <td></td>
            ${SIDES.map((side) => html`<th scope="col">${words.anatomy.sideLetters[side]}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${SITE_IDS.map((site) => row(site, view))}
        </tbody>
      </table>
      <div class="facts">${facts(view)}</div>
    </div>
    ${view.reading ? html`<pulse-reading brief .examination=${examination} .earlier=${view.earlier ?? null} .can=${[]} lang=${view.lang || nothing} register=${view.register || nothing}></pulse-reading>` : nothing}
  </section>`;
}
