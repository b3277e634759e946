import { html, nothing, type TemplateResult } from 'lit';
import {
  isListeningSite,
  isPulseSite,
  type Laterality,
  type Place,
  placeKey,
  PLACES,
  SIDES,
  SITE_IDS,
  type SiteId,
  siteDefinition,
} from '../../../anatomy/index.js';
import {
  bruitAt,
  type BruitFinding,
  BRUITS,
  type Examination,
  isBruitLocked,
  isPulseLocked,
  pulseAt,
  type PulseFinding,
  SITE_REASONS,
  SCALES,
  type ScaleStep,
  stepOf,
} from '../../../examination/index.js';
import { GLYPH_SIZE } from '../../../drawing/index.js';
import type { Messages } from '../../../locale/index.js';
import { glyphIcon, markIcon } from '../../common/glyph.js';
import { shownFor } from '../../../drawing/shown.js';
import { ICONS } from '../../common/icons.js';
import { option } from '../../common/option.js';
import type { Chooser } from '../chooser/chooser.js';
import type { Recorder } from '../recorder.js';

export interface TableView {
  readonly examination: Examination;
  /** An earlier record to compare with. */
  readonly earlier: Examination | undefined;
  readonly editable: boolean;
  readonly words: Messages;
}

/** What the cells call to record. */
export interface TableActs {
  readonly recorder: Recorder;
  readonly chooser: Chooser;
}

/** Option values: a step is its index, a bruit its word, a reason has this prefix. */
const REASON_PREFIX = '-';

function reasons(chosen: string | undefined, words: Messages): TemplateResult {
  return html`<optgroup label=${words.map.couldNotExamine}>
    ${SITE_REASONS.map((reason) => option(REASON_PREFIX + reason, words.map.reasonWord(reason), reason === chosen))}
  </optgroup>`;
}

function pick(
  event: Event,
  { recorder }: TableActs,
  place: Place,
  of: 'pulse' | 'bruit',
  take: (value: string) => void,
): void {
  const { value } = event.target as HTMLSelectElement;
  if (value === '') recorder.clearPart(place, of);
  else if (value.startsWith(REASON_PREFIX)) {
    const reason = value.slice(REASON_PREFIX.length) as PulseFinding['couldNotExamine'];
    if (of === 'pulse') recorder.reason(place, reason);
    else recorder.bruitReason(place, reason);
  } else take(value);
}

function unknownCell({ words }: TableView): TemplateResult {
  return html`<span class="cell">
    ${glyphIcon({ kind: 'unknown', numeral: null, marks: [] }, GLYPH_SIZE.legend)}
    <span class="extra">${words.examination.unknownHere}</span>
  </span>`;
}

function pulseCell(place: Place, view: TableView, acts: TableActs): TemplateResult {
  const { examination, earlier, editable, words } = view;
  if (isPulseLocked(examination, place)) return unknownCell(view);
  const pulse = pulseAt(examination, place);
  const before = earlier && pulseAt(earlier, place);
  const chosen = stepOf(pulse, examination.scale);
  const { steps } = SCALES[examination.scale];
  const { scale } = examination;
  const was = earlier ? words.map.before(before, undefined, scale) : '';
  const loud = chosen && chosen.grade !== 'normal';
  return html`<span class="cell ${loud ? 'loud' : ''}">
    ${glyphIcon({ ...shownFor(pulse, undefined, examination.scale), marks: [] }, GLYPH_SIZE.legend)}
    <select
      aria-label=${words.map.pulseOf(place)}
      ?disabled=${!editable}
      @change=${(event: Event) =>
        pick(event, acts, place, 'pulse', (value) =>
          acts.recorder.grade(place, steps[Number(value)] as ScaleStep),
        )}
    >
      ${option('', words.map.notExamined, !pulse?.grade && !pulse?.couldNotExamine)}
      ${steps.map((step, i) => option(String(i), words.examination.step(step), step === chosen))}
      ${reasons(pulse?.couldNotExamine, words)}
    </select>
    ${(['thrill', 'expansile'] as const).map((mark) =>
      pulse?.[mark] ? html`<span class="extra">${markIcon(mark, 16)}${words.map[mark]}</span>` : nothing,
    )}
    ${pulse?.doppler ? html`<span class="extra">${words.map.doppler}: ${words.examination.dopplers[pulse.doppler]}</span>` : nothing}
    ${was && was !== words.map.before(pulse, undefined, scale) ? html`<span class="extra was">${was}</span>` : nothing}
  </span>`;
}

function bruitCell(place: Place, view: TableView, acts: TableActs): TemplateResult {
  const { examination, earlier, editable, words } = view;
  if (isBruitLocked(examination, place)) return unknownCell(view);
  const bruit = bruitAt(examination, place);
  const heard = bruit?.bruit && bruit.bruit !== 'none';
  const { scale } = examination;
  const was = earlier ? words.map.before(undefined, bruitAt(earlier, place), scale) : '';
  return html`<span class="cell ${heard ? 'loud' : ''}">
    ${bruit?.bruit && bruit.bruit !== 'none' ? markIcon(bruit.bruit, 16) : nothing}
    <select
      aria-label=${words.map.bruitOf(place)}
      ?disabled=${!editable}
      @change=${(event: Event) =>
        pick(event, acts, place, 'bruit', (value) =>
          acts.recorder.bruit(place, value as BruitFinding['bruit']),
        )}
    >
      ${option('', words.map.notListenedWord, !bruit?.bruit && !bruit?.couldNotExamine)}
      ${BRUITS.map((kind) => option(kind, words.map.bruitOptions[kind], kind === bruit?.bruit))}
      ${reasons(bruit?.couldNotExamine, words)}
    </select>
    ${was && was !== words.map.before(undefined, bruit, scale) ? html`<span class="extra was">${was}</span>` : nothing}
  </span>`;
}

type Shown = TemplateResult | typeof nothing;

function entry(letter: Shown, cell: TemplateResult, more: Shown): TemplateResult {
  return html`<div class="entry">${letter}${cell}${more}</div>`;
}

function cells(site: SiteId, side: Laterality, view: TableView, acts: TableActs): TemplateResult {
  const place = PLACES.find((p) => p.site === site && p.side === side);
  if (!place)
    return html`<td role="cell"></td>
      <td role="cell"></td>`;
  const letter =
    side === 'midline'
      ? nothing
      : html`<b class="letter ${isPulseSite(site) ? '' : 'alone'}"
          >${view.words.anatomy.sideLetters[side]}</b
        >`;
  return html`<td role="cell">
      ${isPulseSite(site) ? entry(letter, pulseCell(place, view, acts), moreButton(place, view, acts)) : nothing}
    </td>
    <td role="cell">
      ${
        isListeningSite(site)
          ? entry(
              letter,
              bruitCell(place, view, acts),
              isPulseSite(site) ? nothing : moreButton(place, view, acts),
            )
          : nothing
      }
    </td>`;
}

function moreButton(place: Place, { editable, words }: TableView, acts: TableActs): TemplateResult {
  return html`<button
    type="button"
    class="button icon bare more"
    data-anchor=${placeKey(place)}
    aria-haspopup="dialog"
    aria-label=${words.map.moreOf(place)}
    ?disabled=${!editable}
    @click=${() => acts.chooser.openAt(place, true)}
  >
    ${ICONS.more}
  </button>`;
}

function notes(places: readonly Place[], { examination, words }: TableView): string {
  return places
    .flatMap((place) => {
      const found = [pulseAt(examination, place)?.note, bruitAt(examination, place)?.note]
        .filter(Boolean)
        .join('; ');
      return found ? [words.map.noteOf(place.side, found)] : [];
    })
    .join(' ');
}

/** Whether both sides of a site are stated and differ. */
function differs(site: SiteId, examination: Examination): boolean {
  const [right, left] = SIDES.map((side) => ({ site, side }));
  const grades = [right, left].map((place) => place && pulseAt(examination, place)?.grade);
  const bruits = [right, left].map((place) => place && bruitAt(examination, place)?.bruit);
  return [grades, bruits].some(([a, b]) => a !== undefined && b !== undefined && a !== b);
}

function row(site: SiteId, view: TableView, acts: TableActs): TemplateResult {
  const { words, examination } = view;
  const places = PLACES.filter((place) => place.site === site);
  const midline = siteDefinition(site).occurs === 'midline';
  const apart = differs(site, examination);
  return html`<tr role="row" class=${apart ? 'differ' : ''}>
    <th role="rowheader" scope="row">
      ${words.map.siteName(site)}${apart ? html`<small>${words.map.sidesDiffer}</small>` : nothing}
    </th>
    ${
      midline
        ? html`${cells(site, 'midline', view, acts)}
            <td role="cell" class="hint midline" colspan="2">${words.anatomy.sides.midline}</td>`
        : SIDES.map((side) => cells(site, side, view, acts))
    }
    <td role="cell" class="notes">${notes(places, view)}</td>
  </tr>`;
}

/** The record as a table, proximal to distal: everything can be read and changed without the figure. */
export function renderTable(view: TableView, acts: TableActs): TemplateResult {
  const { words } = view;
  const parts = [
    { name: words.map.headAndArms, regions: ['head', 'arm'] },
    { name: words.map.trunkAndLegs, regions: ['trunk', 'leg'] },
  ];
  return html`<div class="table-room">
    <table class="table" part="table" role="table" aria-label=${words.map.tableName}>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">${words.map.site}</th>
          ${SIDES.map(
            (side) =>
              html`<th role="columnheader" scope="col">
                  <b>${words.anatomy.sideLetters[side]}</b> ${words.map.pulseColumn(side)}
                </th>
                <th role="columnheader" scope="col">${words.map.bruitColumn(side)}</th>`,
          )}
          <th role="columnheader" scope="col">${words.map.note}</th>
        </tr>
      </thead>
      ${parts.map(
        ({ name, regions }) =>
          html`<tbody role="rowgroup">
            <tr role="row" class="part">
              <th role="rowheader" scope="rowgroup" colspan="6">${name}</th>
            </tr>
            ${SITE_IDS.filter((site) => regions.includes(siteDefinition(site).region)).map((site) =>
              row(site, view, acts),
            )}
          </tbody>`,
      )}
    </table>
  </div>`;
}
