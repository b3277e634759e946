import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import { messagesFor } from '../../locale/index.js';
import { partMessagesFor } from '../../locale/parts.js';
import {
  chartRecord,
  emptyChart,
  isWorseThanNormal,
  type LimbObservation,
  nextDue,
  OBSERVED,
  OBSERVED_RANGES,
  OBSERVED_WORDS,
  type ObservationChart,
  observe,
  type Observed,
  parseChart,
  type Pathway,
  standing,
} from '../../triage/index.js';
import { clock } from '../common/clock.js';
import { intrinsicSize } from '../common/intrinsic-size.js';
import { LANG, LanguageController } from '../common/language.js';
import { ownRoot } from '../common/own-root.js';
import { OBJECT, property, RECORD } from '../common/property.js';
import { textGiven } from '../common/record-value.js';
import { option } from '../common/option.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { courseStyles, renderCourse } from './course.js';

export { emptyChart, type LimbObservation, type ObservationChart, observe } from '../../triage/index.js';

/** A round was recorded or taken back. Bubbles and leaves the shadow tree. */
export class ChartChangeEvent extends Event {
  constructor(readonly chart: ObservationChart) {
    super('chart-change', { bubbles: true, composed: true });
  }
}

/** How often the time to the next round is told anew, in ms. */
const TICK = 15_000;

type Draft = Partial<Record<Observed, string>>;

/**
 * A limb watched by the hour after an operation: signal, colour, sensation, movement, refill and pain entered in one row, the next round
 * due, and the red flags of what stands. A lost signal stands until it is heard again.
 *
 * @tag limb-observations
 * @event {ChartChangeEvent} chart-change - A round was recorded or taken back.
 * @csspart row - The row that is being entered.
 * @csspart course - The rounds drawn over the hours.
 * @csspart rounds - The table of the rounds.
 */
export class LimbObservations extends LitElement {
  static override styles = [
    tokenStyles,
    controlStyles,
    courseStyles,
    css`
      :host {
        display: block;
        container-type: inline-size;
        ${intrinsicSize(480)}
      }
      :host([hidden]) {
        display: none;
      }
      h2 {
        font-size: calc(17 * var(--_text));
        line-height: calc(23 * var(--_text));
        font-weight: 600;
      }
      .due {
        font-weight: 600;
      }
      .late::before {
        content: '! ';
      }
      form {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(100%, 150px), 1fr));
        gap: 8px 12px;
        align-items: end;
        margin-block: 12px;
      }
      label span {
        display: block;
        font-size: calc(13 * var(--_text));
        line-height: calc(18 * var(--_text));
        color: var(--_ink-2);
      }
      .field {
        inline-size: 100%;
      }
      .scroller {
        overflow-x: auto;
      }
      table {
        border-collapse: collapse;
        inline-size: 100%;
        font-size: calc(14 * var(--_text));
      }
      th,
      td {
        padding: 8px 12px 8px 0;
        text-align: start;
        font-weight: 400;
        white-space: nowrap;
      }
      thead th {
        color: var(--_ink-2);
      }
      tbody tr {
        border-block-start: 1px solid var(--_line);
      }
      .worse {
        font-weight: 700;
      }
      .none {
        color: var(--_mute);
      }
    `,
  ];

  /** The chart, or its JSON text. */
  @property({ attribute: false, shape: RECORD }) chart: ObservationChart | string = emptyChart({
    kind: 'leg',
    side: 'left',
  });
  /** The clinic’s own pathway for its red flags. */
  @property({ attribute: false, shape: OBJECT }) pathway: Pathway | undefined = undefined;
  /** Language of the words, a BCP 47 tag; without it the nearest `lang` in the page counts. */
  @property(LANG) override lang = '';
  /** Whom the words address: `trade` for clinicians, `plain` for patients; empty, as the closest ancestor with one says, else `trade`. */
  @property(LANG) register: '' | 'trade' | 'plain' = '';
  @state() private draft: Draft = {};
  @state() private said = '';
  readonly #language = new LanguageController(this);
  #held: ObservationChart | undefined;
  /** The charts before the last rounds, to be taken back one by one. */
  #past: readonly ObservationChart[] = [];
  #own: ObservationChart | undefined;
  #timer: ReturnType<typeof setInterval> | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.#timer = setInterval(() => this.requestUpdate(), TICK);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearInterval(this.#timer);
  }

  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    return ownRoot(this, super.createRenderRoot());
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (!changed.has('chart') || this.chart === this.#own) return;
    const given: unknown = this.chart;
    const chart = parseChart(textGiven(given) ?? '');
    // A page may hand the very same chart back as another object.
    if (chart && JSON.stringify(chart) === JSON.stringify(this.#held)) return;
    this.#held = chart;
    this.#past = [];
    this.draft = {};
    this.said = '';
  }

  protected override render(): TemplateResult {
    const { tag, register } = this.#language;
    const parts = partMessagesFor(tag, register);
    const words = parts.chart;
    const chart = this.#held;
    if (!chart) return html`<p role="status">${words.table.unread}</p>`;
    const now = clock.now();
    const due = nextDue(chart, now);
    const isLate = due < now;
    return html`<h2>${words.title(chart.limb)}</h2>
      <p class="due ${isLate ? 'late' : ''}">
        ${chart.observations.length ? words.due(due, now) : words.table.first}
      </p>
      <p class="hint">${words.every(chart.every)}</p>
      <limb-flags
        lang=${tag}
        register=${register}
        .examination=${chartRecord(chart)}
        .pathway=${this.pathway}
      ></limb-flags>
      <form part="row" @submit=${this.#record}>
        ${OBSERVED.map((field) => this.#field(field))}
        <button type="submit" class="button solid">${words.table.record}</button>
        ${
          this.#past.length
            ? html`<button type="button" class="button" id="undo" @click=${this.#undo}>
                ${words.table.undo}
              </button>`
            : nothing
        }
      </form>
      <p role="status">${this.said}</p>
      ${this.#course(chart)} ${this.#rounds(chart)}
      <p class="hint">${words.table.caution}</p>`;
  }

  /** The words of a field, best first. */
  #words(field: Observed): Readonly<Record<string, string>> {
    const { tag, register } = this.#language;
    const { inspection } = partMessagesFor(tag, register);
    switch (field) {
      case 'signal':
        return messagesFor(tag, register).examination.dopplers;
      case 'colour':
        return inspection.colour.words;
      case 'sensation':
        return inspection.sensationOptions[this.#held!.limb.kind];
      case 'movement':
        return inspection.movement.words;
      default:
        return {};
    }
  }

  #field(field: Observed): TemplateResult {
    const { tag, register } = this.#language;
    const { table } = partMessagesFor(tag, register).chart;
    const set = (event: Event): void => {
      this.draft = { ...this.draft, [field]: (event.target as HTMLInputElement).value };
    };
    const value = this.draft[field] ?? '';
    if (field === 'refill' || field === 'pain') {
      const [least, most] = OBSERVED_RANGES[field];
      return html`<label
        ><span>${table.fields[field]}</span>
        <input
          class="field"
          type="number"
          name=${field}
          min=${least}
          max=${most}
          step="1"
          .value=${value}
          @input=${set}
      /></label>`;
    }
    const words = this.#words(field);
    return html`<label
      ><span>${table.fields[field]}</span>
      <select class="field" name=${field} @change=${set}>
        ${option('', table.notLooked, value === '')}
        ${OBSERVED_WORDS[field].map((word) => option(word, words[word]!, value === word))}
      </select></label
    >`;
  }

  /** What a round says of a field, in words. */
  #said(field: Observed, row: Partial<LimbObservation>): string {
    const { tag, register } = this.#language;
    const words = partMessagesFor(tag, register).chart;
    const value = row[field];
    if (value === undefined) return words.table.notLooked;
    return field === 'refill' || field === 'pain'
      ? words.number(field, value as number)
      : this.#words(field)[value as string]!;
  }

  #cell(field: Observed, row: LimbObservation): TemplateResult {
    const look = row[field] === undefined ? 'none' : isWorseThanNormal(field, row[field]) ? 'worse' : '';
    return html`<td class=${look}>${this.#said(field, row)}</td>`;
  }

  #course(chart: ObservationChart): TemplateResult | typeof nothing {
    const { tag, register } = this.#language;
    const stands = standing(chart);
    return renderCourse(chart, partMessagesFor(tag, register).chart, (field) => this.#said(field, stands));
  }

  #rounds({ observations }: ObservationChart): TemplateResult | typeof nothing {
    if (!observations.length) return nothing;
    const { tag, register } = this.#language;
    const words = partMessagesFor(tag, register).chart;
    const [first, last] = [observations[0]!, observations.at(-1)!].map(({ at }) => Date.parse(at)) as [
      number,
      number,
    ];
    return html`<div class="scroller" tabindex="0" role="region" aria-label=${words.table.rounds}>
      <table part="rounds">
        <thead>
          <tr>
            <td></td>
            ${OBSERVED.map((field) => html`<th scope="col">${words.table.fields[field]}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${[...observations].reverse().map(
            (row) =>
              html`<tr>
                <th scope="row">${words.moment(Date.parse(row.at), first, last)}</th>
                ${OBSERVED.map((field) => this.#cell(field, row))}
              </tr>`,
          )}
        </tbody>
      </table>
    </div>`;
  }

  readonly #record = (event: Event): void => {
    event.preventDefault();
    const chart = this.#held!;
    const { tag, register } = this.#language;
    const words = partMessagesFor(tag, register).chart;
    const entries = Object.entries(this.draft).filter(([, value]) => value !== '');
    if (!entries.length) {
      this.said = words.table.nothing;
      return;
    }
    const now = clock.now();
    const row = Object.fromEntries(
      entries.map(([field, value]) => [field, field in OBSERVED_RANGES ? Number(value) : value]),
    );
    this.#past = [...this.#past, chart];
    this.#take(observe(chart, { at: new Date(now).toISOString(), ...row }));
    this.draft = {};
    this.said = words.table.recorded(words.time(now));
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('select')?.focus());
  };

  readonly #undo = (): void => {
    const before = this.#past.at(-1)!;
    this.#past = this.#past.slice(0, -1);
    this.#take(before);
    const { tag, register } = this.#language;
    this.said = partMessagesFor(tag, register).chart.table.takenBack;
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('select')?.focus());
  };

  #take(chart: ObservationChart): void {
    this.#held = chart;
    this.#own = chart;
    this.chart = chart;
    this.dispatchEvent(new ChartChangeEvent(chart));
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'chart-change': ChartChangeEvent;
  }
  interface HTMLElementTagNameMap {
    'limb-observations': LimbObservations;
  }
}
