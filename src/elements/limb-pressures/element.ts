import { html, noChange, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import type * as z from 'zod/mini';
import { SIDES, type Side } from '../../anatomy/index.js';
import {
  LONGEST_TEXT,
  type Pressure,
  PRESSURE_UNITS,
  type Pressures,
  type PressureSite,
  pressuresSchema,
  type PressureUnit,
} from '../../examination/index.js';
import { pressurePlot } from '../../drawing/pressure-plot.js';
import {
  type IndexKind,
  type IndexReading,
  limbThreats,
  type PressureReading,
  type PressureSettings,
  pressureSettings,
  readPressures,
} from '../../pressures/index.js';
import { sourcesOf } from '../../statements/index.js';
import { choices } from '../common/choices.js';
import { numberField, refusalLine, selectField, textField } from '../common/fields.js';
import { PartElement } from '../common/part-element.js';
import { partStyles } from '../common/part-styles.js';
import { sourcesMark, sourcesStyles } from '../common/sources-mark.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { unreadStyles } from '../common/unread-notice.js';
import { cellStyles, pressureCell } from './cells.js';
import { plotStyles, renderPlot } from './plot.js';
import { pressureStyles } from './styles.js';

/** A row of the table: a cuff at rest, or after exercise. */
interface Row {
  readonly site: PressureSite | 'tcpo2';
  readonly after?: true;
}

const MAIN: readonly Row[] = (['brachial', 'dorsalis-pedis', 'posterior-tibial', 'toe'] as const).map(
  (site) => ({ site }),
);
const SEGMENTS: readonly Row[] = (['high-thigh', 'low-thigh', 'calf', 'tcpo2'] as const).map((site) => ({
  site,
}));
const ARMS: readonly Row[] = (['radial', 'ulnar', 'finger'] as const).map((site) => ({ site }));
const EXERCISE: readonly Row[] = (['brachial', 'dorsalis-pedis', 'posterior-tibial'] as const).map(
  (site) => ({
    site,
    after: true,
  }),
);
const LONGEST_WALK = 60;

/**
 * Systolic pressures of arms and legs, with the indices, bands and levels they point to, and a plot down each leg. Figures
 * that went into an index are underlined; a missing arm is told, never guessed; an impossible value is refused and the one before stays.
 *
 * @tag limb-pressures
 * @attr value - The pressures as JSON; what a form reset returns to.
 * @fires input - A person changed something.
 * @fires change - A person changed something.
 */
export class LimbPressures extends PartElement<Pressures> {
  static override styles = [
    tokenStyles,
    controlStyles,
    unreadStyles,
    partStyles,
    cellStyles,
    plotStyles,
    pressureStyles,
    sourcesStyles,
  ];

  /** Choices of method and limits where sources disagree. */
  @property({ attribute: false }) settings: Partial<PressureSettings> = {};

  protected override get schema(): z.ZodMiniType<Pressures> {
    return pressuresSchema;
  }

  /** The reading of the pressures with the current settings. */
  get reading(): PressureReading {
    return readPressures(this.recorded, this.settings);
  }

  protected override render(): TemplateResult {
    const { unreadNotice } = this;
    if (unreadNotice) return unreadNotice;
    const { pressures: words } = this.words;
    const { reading } = this;
    const plot = pressurePlot(this.recorded ?? {}, reading.settings);
    return html`
      <div class="top">
        <p class="hint">${words.how}</p>
        ${this.known(
          ['unit'],
          words.unit,
          () =>
            choices<PressureUnit>({
              label: words.unit,
              options: PRESSURE_UNITS.map((unit) => [unit, words.units[unit]] as const),
              value: this.#unit,
              disabled: !this.editable,
              pick: (unit) => unit && this.edit(['unit'], unit),
            }),
          true,
        )}
      </div>
      <div role="note" class="cautions">
        <p>${words.cuffs}</p>
        <p class="hint">${words.technique}</p>
      </div>
      <div class="grid">
        ${this.#table(MAIN, reading)} ${this.#indices(reading)} ${renderPlot(plot, this.#unit, this.words)}
      </div>
      ${this.#refused()} ${this.#findings(reading)} ${this.#fold(words.segments, SEGMENTS, reading)}
      ${this.#fold(words.arms, ARMS, reading)} ${this.#exercise(reading)} ${this.#methods(reading)}
    `;
  }

  get #unit(): PressureUnit {
    return this.recorded?.unit ?? 'mmHg';
  }

  #at({ site, after }: Row, side: Side): Pressure | undefined {
    const part = after ? this.recorded?.afterExercise : this.recorded;
    return (part as Partial<Record<string, Partial<Record<Side, Pressure>>>> | undefined)?.[site]?.[side];
  }

  #isUsed({ site, after }: Row, side: Side, reading: PressureReading): boolean {
    if (after) return false;
    return reading.indices.some(({ value, numerator, denominator }) => {
      if (value === undefined) return false;
      const all = [...(numerator ? [numerator] : []), ...(denominator?.from ?? [])];
      return all.some((used) => used.site === site && used.side === side);
    });
  }

  #name({ site, after }: Row): string {
    const { pressures: words } = this.words;
    const place = site === 'tcpo2' ? words.tcpo2 : words.sites[site];
    return after ? words.siteAfter(place) : place;
  }

  #table(rows: readonly Row[], reading: PressureReading): TemplateResult {
    const { whole } = this.words;
    return html`<table>
      <thead>
        <tr>
          <td></td>
          ${SIDES.map((side) => html`<th scope="col" aria-label=${whole[side]}>${whole.letters[side]}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          (row) =>
            html`<tr>
              <th scope="row">${this.#name(row)}</th>
              ${SIDES.map((side) => this.#cell(row, side, reading))}
            </tr>`,
        )}
      </tbody>
    </table>`;
  }

  #cell(row: Row, side: Side, reading: PressureReading): TemplateResult {
    const id = `${row.after ? 'after-' : ''}${row.site}-${side}`;
    const path = [...(row.after ? ['afterExercise'] : []), row.site, side];
    const place = this.#name(row);
    if (this.unknownAt(path))
      return html`<td>${this.unknownNote(this.words.pressures.field(place, side))}</td>`;
    return pressureCell({
      id,
      place,
      side,
      value: this.#at(row, side),
      unit: this.#unit,
      used: this.#isUsed(row, side, reading),
      disabled: !this.editable,
      refusal: this.refusals.get(id),
      words: this.words,
      typing: this.typing,
      objection: (mmHg) => {
        const other = this.value?.brachial?.[side === 'right' ? 'left' : 'right'];
        const both = row.site === 'brachial' && !row.after && mmHg === 0 && other === 0;
        return both ? this.words.pressures.refusedArms : undefined;
      },
      set: (value) => {
        this.refuse(id);
        return this.edit(path, value);
      },
    });
  }

  #indices(reading: PressureReading): TemplateResult {
    const { pressures: words } = this.words;
    const kinds = (['ankle', 'toe', 'wrist', 'finger'] as IndexKind[]).filter(
      (kind) => kind === 'ankle' || kind === 'toe' || reading.indices.some((index) => index.kind === kind),
    );
    return html`<dl class="indices" aria-live="polite">
      ${kinds.map(
        (kind) =>
          html`<div>
            <dt>${words.kinds[kind]}</dt>
            ${SIDES.map((side) =>
              this.#index(
                reading.indices.find((i) => i.kind === kind && i.side === side),
                side,
              ),
            )}
          </div>`,
      )}
    </dl>`;
  }

  #index(index: IndexReading | undefined, side: Side): TemplateResult {
    const { pressures: words } = this.words;
    const odd = index?.band !== undefined && index.band !== 'normal';
    const letter = this.words.whole.letters[side];
    if (!index) return html`<dd><b class="none">–</b><span>${letter}</span></dd>`;
    return html`<dd>
      <b>${index.value === undefined ? '–' : this.words.whole.number(index.value, 2)}</b>
      <span class=${odd ? 'odd' : ''}>${index.band ? `${letter}, ${words.band(index)}` : letter}</span>
    </dd>`;
  }

  /** What the figures mean, and what is missing, in sentences. */
  #findings(reading: PressureReading): TemplateResult {
    const { pressures: words } = this.words;
    const { indices, denominator, missingArms } = reading;
    const sums = indices.map((index) => words.sum(index, this.#unit)).filter(Boolean);
    const needed = indices.length > 0;
    const [missing] = missingArms;
    const threats = SIDES.flatMap((side) => limbThreats(this.recorded ?? {}, side, false, reading.settings));
    const lines = [
      ...(denominator && sums.length
        ? [`${words.denominator(denominator.from, this.#unit)} ${words.sums(sums)} ${words.used}`]
        : []),
      ...(needed && !denominator ? [words.noArm] : []),
      ...(needed && denominator && missing ? [words.oneArm(missing.side)] : []),
      ...indices
        .filter(({ kind, band }) => kind === 'ankle' && band === 'incompressible')
        .map(({ side }) => words.incompressible(side)),
    ];
    const strong = [
      ...threats.map((threat) => words.threat(threat, this.#unit)),
      ...reading.segments.map((finding) => words.segment(finding, this.#unit)),
      ...reading.arms.map((finding) => words.arm(finding, this.#unit)),
      ...reading.exercise.map((finding) => words.exercise(finding, this.#unit)),
    ];
    return html`<div class="findings" aria-live="polite">
        ${strong.map((line) => html`<p><b>${line}</b></p>`)}
        ${lines.map((line) => html`<p class="hint">${line}</p>`)}
      </div>
      ${sourcesMark(
        sourcesOf({ code: 'pressures', pressures: this.value ?? {}, settings: reading.settings }),
        this.words.flags,
      )}`;
  }

  #refused(): TemplateResult {
    return html`${[...this.refusals].map(([id, refusal]) => refusalLine(id, refusal))}`;
  }

  #fold(heading: string, rows: readonly Row[], reading: PressureReading): TemplateResult {
    const has = rows.some((row) =>
      SIDES.some((side) => this.#at(row, side) !== undefined || this.unknownAt([row.site, side])),
    );
    return html`<details class="fold" ?open=${has || noChange}>
      <summary>${heading}</summary>
      <div class="narrow">${this.#table(rows, reading)}</div>
    </details>`;
  }

  #exercise(reading: PressureReading): TemplateResult {
    const { pressures: words } = this.words;
    const after = this.recorded?.afterExercise;
    return html`<details
      class="fold"
      ?open=${after !== undefined || this.unknownAt(['afterExercise']) || noChange}
    >
      <summary>${words.afterExercise}</summary>
      <div class="narrow">${this.#table(EXERCISE, reading)}</div>
      <div class="walk">
        <div>
          <span class="hint" aria-hidden="true">${words.completed}</span>
          ${choices({
            label: words.completed,
            options: [
              ['yes', words.yes],
              ['no', words.no],
            ],
            value: after?.completed === undefined ? undefined : after.completed ? 'yes' : 'no',
            disabled: !this.editable,
            pick: (picked) => this.edit(['afterExercise', 'completed'], picked && picked === 'yes'),
          })}
        </div>
        ${numberField({
          id: 'minutes',
          label: words.minutes,
          unit: 'min',
          value: after?.minutes,
          shown: this.words.whole.number,
          max: LONGEST_WALK,
          disabled: !this.editable,
          refusal: this.refusals.get('minutes'),
          complain: (typed) => this.words.bedside.refusedTime(typed, LONGEST_WALK, 'min'),
          typing: this.typing,
          set: (minutes) => this.edit(['afterExercise', 'minutes'], minutes),
        })}
        ${textField({
          label: words.stoppedBy,
          value: after?.note,
          longest: LONGEST_TEXT,
          disabled: !this.editable,
          typing: this.typing,
          set: (note) => this.edit(['afterExercise', 'note'], note),
        })}
      </div>
    </details>`;
  }

  /** The current method; sources disagree, so it can be changed. */
  #methods(reading: PressureReading): TemplateResult {
    const { pressures: words } = this.words;
    const choose = (field: keyof PressureSettings, value: string | undefined): void => {
      if (value) this.settings = { ...this.settings, [field]: value };
    };
    return html`<details class="fold">
      <summary>
        ${words.methods} <span class="hint">${words.standards[reading.settings.standard]}</span>
      </summary>
      <div class="methods">
        ${(Object.keys(words.settings) as (keyof typeof words.settings)[]).map((field) =>
          selectField({
            label: words.settings[field].label,
            options: Object.entries(words.settings[field].options),
            value: pressureSettings(this.settings)[field],
            disabled: false,
            set: (value) => choose(field, value),
          }),
        )}
        <p class="hint">${words.caution}</p>
      </div>
    </details>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'limb-pressures': LimbPressures;
  }
}
