import { html, nothing, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { ChangedPlace } from '../../comparison/changed-places.js';
import { TREND_MEASURES, type TrendMeasure } from '../../comparison/trends.js';
import type { PatientVisit } from '../../comparison/visits.js';
import type { VisitsWords } from '../../locale/visits.js';
import { styled } from '../common/styled.js';
import { ICONS } from '../common/icons.js';
import { letterOf } from './chosen.js';
import { type Scene, whenOf } from './scene.js';
import type { Window } from '../common/window-of.js';

export interface Row {
  readonly visit: PatientVisit;
  /** Entered in error: shown, and counting for nothing. */
  readonly struck: boolean;
  readonly at: number;
  readonly when: string;
  readonly active: boolean;
  readonly chosen: 'a' | 'b' | undefined;
  readonly readable: boolean;
  readonly said: Readonly<Record<TrendMeasure, string>>;
  readonly changes: readonly ChangedPlace[] | undefined;
}

/** Height of a row in px of text. */
export const ROW = 48;

/** What the row of a visit shows. */
export function rowOf(scene: Scene, at: number): Row {
  const { order, log, pair, active, words, counts } = scene;
  const record = log?.record(at);
  const said = TREND_MEASURES.map((measure) => [
    measure,
    record ? words.both(measure, log!.sides(measure, at)) : '',
  ]);
  return {
    visit: order[at]!,
    struck: !counts(at),
    at,
    when: whenOf(scene, at),
    active: at === active,
    chosen: letterOf(at, pair),
    readable: !log || record !== undefined,
    said: Object.fromEntries(said) as Row['said'],
    changes: record && log!.changes(at),
  };
}

const spacer = (rows: number, px: number): TemplateResult | typeof nothing =>
  rows
    ? html`<tr class="spacer" aria-hidden="true">
        <td ${styled({ 'block-size': `${rows * px}px` })}></td>
      </tr>`
    : nothing;

function changed({ struck, readable, changes }: Row, words: VisitsWords): string {
  if (struck) return words.table.inError;
  if (!readable) return words.table.unread;
  if (!changes) return '';
  return changes.length ? words.places(changes) : words.table.noChange;
}

/** The visits as a table, of which only the rows in sight are rendered; the latest stands first. */
export function renderTable(
  rows: readonly Row[],
  { from, to }: Window,
  count: number,
  px: number,
  words: VisitsWords,
  act: { readonly open: (at: number) => void; readonly pick: (at: number) => void },
): TemplateResult {
  const { table } = words;
  return html`<table aria-rowcount=${count + 1} aria-label=${table.name}>
    <thead>
      <tr aria-rowindex="1">
        <th scope="col">${table.visit}</th>
        ${TREND_MEASURES.map((measure) => html`<th scope="col">${table.measures[measure]}</th>`)}
        <th scope="col">${table.changed}</th>
        ${count > 1 ? html`<th scope="col">${table.pick}</th>` : html`<td></td>`}
      </tr>
    </thead>
    <tbody>
      ${spacer(from, px)}
      ${repeat(
        rows,
        ({ visit }) => visit.id,
        (row) => {
          const { struck, at, when, active, chosen, said } = row;
          const side = chosen && table[chosen === 'a' ? 'earlier' : 'later'];
          return html`<tr
            class="${chosen ? 'on' : ''} ${struck ? 'struck' : ''}"
            data-at=${at}
            aria-rowindex=${count - at + 1}
            ${styled({ 'block-size': `${px}px` })}
          >
            <th scope="row">
              <button type="button" class="open" tabindex=${active ? 0 : -1} @click=${() => act.open(at)}>
                <span class="hidden-visually">${table.open} </span>${struck ? html`<s>${when}</s>` : when}
              </button>
              ${row.visit.flag ? html`<span class="flag">${ICONS.alarm}<span>${row.visit.flag}</span></span>` : nothing}
            </th>
            ${TREND_MEASURES.map((measure) => html`<td>${said[measure]}</td>`)}
            <td>${changed(row, words)}</td>
            <td>
              ${
                count > 1
                  ? html`<button
                      type="button"
                      class="button pick"
                      tabindex=${active ? 0 : -1}
                      aria-pressed=${chosen ? 'true' : 'false'}
                      ?disabled=${struck}
                      @click=${() => act.pick(at)}
                    >
                      ${chosen ? html`<i class="letter" aria-hidden="true">${chosen.toUpperCase()}</i>` : nothing}${table.pick}<span
                        class="hidden-visually"
                        >: ${when}${side ? ` (${side})` : ''}</span
                      >
                    </button>`
                  : nothing
              }
            </td>
          </tr>`;
        },
      )}
      ${spacer(count - to, px)}
    </tbody>
  </table>`;
}
