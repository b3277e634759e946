import { html, nothing, svg, type TemplateResult } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { placeKey } from '../../anatomy/index.js';
import type { ChangedPlace } from '../../comparison/changed-places.js';
import type { PatientVisit } from '../../comparison/visits.js';
import type { BodyView } from '../../drawing/views.js';
import type { VisitsWords } from '../../locale/visits.js';
import { ICONS } from '../common/icons.js';
import { letterOf } from './chosen.js';
import type { LaterPart } from './fetched.js';
import { PICTURE } from './pictures.js';
import { type Scene, whenOf } from './scene.js';

/** Least distance from one card to the next, in px of text, and the gap between them, in px. */
const STEP = 188;
export const GAP = 12;

/** Distance from one card to the next: as many as fit fill the width, so that none is cut where the strip comes to rest. */
export function stepIn(width: number, text: number): number {
  const seen = width + GAP;
  const least = STEP * text;
  return Math.max(least, seen / Math.max(1, Math.floor(seen / least)));
}

/** A visit as its card shows it. */
export interface Card {
  readonly visit: PatientVisit;
  /** Entered in error: shown, and counting for nothing. */
  readonly struck: boolean;
  readonly at: number;
  readonly count: number;
  readonly when: string;
  readonly active: boolean;
  /** `a` the earlier of two compared, `b` the later. */
  readonly chosen: 'a' | 'b' | undefined;
  /** Whether the record was read and can be. */
  readonly readable: boolean;
  readonly picture: string | undefined;
  readonly changes: readonly ChangedPlace[] | undefined;
  readonly values: readonly { readonly name: string; readonly said: string }[] | undefined;
  readonly isFirst: boolean;
}

/** The indices and the walking distance, where any visit knows them. */
function valuesOf({ log, words }: Scene, at: number): { name: string; said: string }[] {
  return log!.measures
    .filter((measure) => measure.endsWith('index') || measure === 'distance')
    .map((measure) => ({
      name: words.table.short[measure],
      said: words.both(measure, log!.sides(measure, at)),
    }));
}

/** What the card of a visit shows; nothing of a record that was not read yet. */
export function cardOf(scene: Scene, at: number): Card {
  const { order, log, pictures, pair, active, counts } = scene;
  const isRead = log?.hasRecord(at) ?? false;
  const record = isRead ? log!.record(at) : undefined;
  return {
    visit: order[at]!,
    struck: !counts(at),
    at,
    count: order.length,
    when: whenOf(scene, at),
    active: at === active,
    chosen: letterOf(at, pair),
    readable: !isRead || record !== undefined,
    picture: pictures.of(at),
    changes: record && log!.changes(at),
    values: record && valuesOf(scene, at),
    isFirst: isRead && log!.before(at) === undefined,
  };
}

/** Rings around the sites that changed: solid where it matters, dashed where it may be chance. */
function rings(changes: readonly ChangedPlace[], view: BodyView, part: LaterPart): TemplateResult {
  const { sites, width, height } = part.smallLayout(view, PICTURE);
  const at = new Map(sites.map((site) => [placeKey(site.place), site]));
  return html`<svg
    class="rings"
    width=${width}
    height=${height}
    viewBox="0 0 ${width} ${height}"
    aria-hidden="true"
  >
    ${changes.map(({ place, weight }) => {
      const site = at.get(placeKey(place));
      return site ? svg`<circle class=${weight} cx=${site.x} cy=${site.y} r="8.5"></circle>` : nothing;
    })}
  </svg>`;
}

function told({ struck, readable, changes, isFirst }: Card, words: VisitsWords): TemplateResult {
  const { table } = words;
  if (struck) return html`<p class="told"><b>${table.inError}</b></p>`;
  if (!readable) return html`<p class="told">${table.unread}</p>`;
  if (!changes) return html`<p class="told">${isFirst ? table.first : nothing}</p>`;
  if (!changes.length) return html`<p class="told">${table.noChange}</p>`;
  return html`<p class="told">
    <b>${table.changes(changes.length)}</b><span class="hidden-visually">: ${words.places(changes)}.</span>
  </p>`;
}

/** Chooses the visit to be compared. */
function pickButton(
  { struck, when, active, chosen }: Card,
  { table }: VisitsWords,
  pick: () => void,
): TemplateResult {
  const letter = chosen && { a: 'A', b: 'B' }[chosen];
  return html`<button
    type="button"
    class="button pick"
    tabindex=${active ? 0 : -1}
    aria-pressed=${chosen ? 'true' : 'false'}
    @click=${pick}
    ?disabled=${struck}
  >
    ${letter ? html`<i class="letter" aria-hidden="true">${letter}</i>` : nothing}${table.pick}<span
      class="hidden-visually"
      >: ${when}${chosen ? ` (${chosen === 'a' ? table.earlier : table.later})` : ''}</span
    >
  </button>`;
}

export function renderCard(
  card: Card,
  words: VisitsWords,
  view: BodyView,
  part: LaterPart | undefined,
  act: { readonly open: () => void; readonly pick: () => void },
): TemplateResult {
  const { visit, struck, at, count, when, active, chosen, picture, changes, values } = card;
  const { table } = words;
  return html`<li
    class="card ${chosen && count > 1 ? 'on' : ''} ${struck ? 'struck' : ''}"
    part="visit"
    data-at=${at}
    aria-setsize=${count}
    aria-posinset=${at + 1}
  >
    <button type="button" class="open" tabindex=${active ? 0 : -1} @click=${act.open}>
      <span class="hidden-visually">${table.open} </span
      ><b>${struck ? html`<s>${when}</s>` : when}${ICONS.next}</b
      >${visit.flag ? html`<span class="flag">${ICONS.alarm}<span>${visit.flag}</span></span>` : html`<span class="note">${visit.note ?? nothing}</span>`}
    </button>
    <div class="picture" @click=${act.open}>
      ${picture ? unsafeSVG(picture) : nothing}
      ${picture && part && changes?.length ? rings(changes, view, part) : nothing}
    </div>
    <dl>
      ${values?.map(
        ({ name, said }) =>
          html`<div>
            <dt>${name}</dt>
            <dd>${said}</dd>
          </div>`,
      )}
    </dl>
    ${told(card, words)} ${count > 1 ? pickButton(card, words, act.pick) : nothing}
  </li>`;
}
