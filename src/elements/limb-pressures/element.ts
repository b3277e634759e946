import { html, noChange, type TemplateResult } from 'lit';
import type * as z from 'zod/mini';
import { SIDES, type Side } from '../../anatomy/index.js';
import {
  emptyExamination,
  type Examination,
  LONGEST_TEXT,
  parseExaminationText,
  type Pressure,
  PRESSURE_UNITS,
  type Pressures,
  type PressuresPart,
  pressuresPartSchema,
  type PressureUnit,
  type VolumeCurve,
} from '../../examination/index.js';
import { pressurePlot } from '../../drawing/pressure-plot.js';
import { sayNote, sayVerdict } from '../../locale/pressure-notes.js';
import {
  type IndexKind,
  type IndexReading,
  methodOf,
  type PressureReading,
  type PressureSettings,
  readPressures,
} from '../../pressures/index.js';
import { sidesWithTissueLoss } from '../../staging/index.js';
import { cuffCautions, type TriageChoices, triageSettings } from '../../triage/index.js';
import { pressureNotes, pressureVerdicts, sourcesOf } from '../../statements/index.js';
import { choices, optionsOf } from '../common/choices.js';
import { numberField, refusalLine, textField } from '../common/fields.js';
import { GivenRecord } from '../common/given-record.js';
import { Later } from '../common/later.js';
import { PartElement } from '../common/part-element.js';
import { partStyles } from '../common/part-styles.js';
import { OBJECT, property, RECORD } from '../common/property.js';
import { selectField } from '../common/select.js';
import { sourcesMark, sourcesStyles } from '../common/sources-mark.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { unreadStyles } from '../common/unread-notice.js';
import { cuffCautionsNote } from './cautions.js';
import { cellStyles, pressureCell } from './cells.js';
import { methodFields, methodLine, type MethodView } from './method.js';
import { plotStyles, renderPlot } from './plot.js';
import { ARMS, EXERCISE, MAIN, type Row, SEGMENTS } from './rows.js';
import { pressureStyles } from './styles.js';
import { isUsed } from './used.js';

/** The part checks what it edits, so that what reads a record is there from the start. */
const READER = Later.ready({ parseExaminationText });

const LONGEST_WALK = 60;

/**
 * Systolic pressures of arms and legs, with the indices, bands and levels they point to, and a plot down each leg. Figures
 * that went into an index are underlined; a missing arm is told, never guessed; an impossible value is refused and the one before stays.
 * The value holds the pressures and, as `method`, the methods and limits chosen where sources disagree. In a record both stand beside each
 * other.
 *
 * @tag limb-pressures
 * @attr value - The pressures and `method` as JSON; what a form reset returns to.
 */
export class LimbPressures extends PartElement<PressuresPart> {
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

  /** Methods and limits that the page decides, such as those of its pathway. They go before `method` and cannot be changed here. */
  @property({ attribute: false, shape: OBJECT }) settings: Partial<PressureSettings> = {};
  /**
   * The record around the pressures; its own `pressures` and `method` give way to `value`. Wounds set the limits of limb threat, and
   * pulses, risks and blood pressure tell whether both arms may be diseased. One that cannot be read is left out.
   */
  @property({ attribute: false, shape: RECORD }) examination: Examination = emptyExamination();
  readonly #given = new GivenRecord(READER);

  protected override get schema(): z.ZodMiniType<PressuresPart> {
    return pressuresPartSchema;
  }

  /** Pressures of the visit before: an ankle index that changed since is told. */
  @property({ attribute: false, shape: OBJECT }) earlier: Pressures | undefined = undefined;
  /** Choices of the pathway that cautions about cuffs depend on, such as who may cuff a graft. */
  @property({ attribute: false, shape: OBJECT }) triage: TriageChoices = {};

  /** The reading of the pressures by the methods in force. */
  get reading(): PressureReading {
    const { method, ...pressures } = this.recorded ?? {};
    return readPressures(pressures, methodOf({ method }, this.settings));
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
      ${cuffCautionsNote(words, cuffCautions(this.#record, this.triage))}
      <div class="grid">
        ${this.#table(MAIN, reading)} ${this.#indices(reading)} ${renderPlot(plot, this.#unit, this.words)}
      </div>
      ${this.#refused()} ${this.#findings(reading)}
      ${this.#fold(words.segments, SEGMENTS, reading, this.#curves())}
      ${this.#fold(words.arms, ARMS, reading)} ${this.#exercise(reading)} ${this.#methods()}
      ${textField({
        label: this.words.bedside.note,
        value: this.recorded?.note,
        longest: LONGEST_TEXT,
        disabled: !this.editable,
        typing: this.typing,
        set: (note) => this.edit(['note'], note),
      })}
    `;
  }

  /** The record around with the pressures and the method shown here. */
  get #record(): Examination {
    const held = this.#given.held(this.examination);
    const {
      pressures: _,
      method: __,
      ...around
    } = held.state === 'readable' ? held.value : emptyExamination();
    const { method, ...pressures } = this.recorded ?? {};
    return { ...around, pressures, ...(method && { method }) };
  }

  get #unit(): PressureUnit {
    return this.recorded?.unit ?? 'mmHg';
  }

  #at({ site, after }: Row, side: Side): Pressure | undefined {
    const part = after ? this.recorded?.afterExercise : this.recorded;
    return (part as Partial<Record<string, Partial<Record<Side, Pressure>>>> | undefined)?.[site]?.[side];
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
      used: !row.after && isUsed(reading.indices, row.site, side),
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
      ${index.value === undefined ? html`<b class="none">–</b>` : html`<b>${this.words.whole.number(index.value, 2)}</b>`}
      <span class=${odd ? 'odd' : ''}>${index.band ? `${letter}, ${words.band(index)}` : letter}</span>
    </dd>`;
  }

  /** What the figures mean, and what is missing, in sentences. */
  #findings(reading: PressureReading): TemplateResult {
    const { pressures: words } = this.words;
    const { method, ...pressures } = this.recorded ?? {};
    const record = this.#record;
    const wounds = sidesWithTissueLoss(record, { pressures: this.settings });
    const verdicts = pressureVerdicts(pressures, reading, wounds, this.earlier);
    const notes = pressureNotes(
      record,
      reading,
      triageSettings(this.triage).armsDoubt,
      method,
      this.settings,
    );
    return html`<div class="findings" aria-live="polite">
        ${verdicts.map((verdict) => html`<p><b>${sayVerdict(words, verdict, this.#unit)}</b></p>`)}
        ${notes.map((note) => html`<p class="hint">${sayNote(words, note, this.#unit)}</p>`)}
      </div>
      ${sourcesMark(
        sourcesOf({ code: 'pressures', pressures, settings: reading.settings }),
        this.words.flags,
      )}`;
  }

  #refused(): TemplateResult {
    return html`${[...this.refusals].map(([id, refusal]) => refusalLine(id, refusal))}`;
  }

  /** The shape of the volume curve at each ankle. */
  #curves(): TemplateResult {
    const { pressures: words } = this.words;
    return html`<div class="curves">
      ${SIDES.map((side) => {
        const label = words.field(words.volumeCurve, side);
        return this.known(
          ['volumeCurve', side],
          label,
          () =>
            selectField<VolumeCurve>({
              label,
              empty: this.words.whole.notStated,
              options: optionsOf(words.curves),
              value: this.recorded?.volumeCurve?.[side],
              disabled: !this.editable,
              set: (shape) => this.edit(['volumeCurve', side], shape),
            }),
          true,
        );
      })}
    </div>`;
  }

  #fold(
    heading: string,
    rows: readonly Row[],
    reading: PressureReading,
    more?: TemplateResult,
  ): TemplateResult {
    const has =
      (more && (this.recorded?.volumeCurve || this.unknownAt(['volumeCurve']))) ||
      rows.some((row) =>
        SIDES.some((side) => this.#at(row, side) !== undefined || this.unknownAt([row.site, side])),
      );
    return html`<details class="fold" ?open=${has || noChange}>
      <summary>${heading}</summary>
      <div class="narrow">${this.#table(rows, reading)}</div>
      ${more}
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

  /** The methods in force; sources disagree, so each can be changed, and what was chosen stands in the record. */
  #methods(): TemplateResult {
    const { pressures: words } = this.words;
    const view: MethodView = {
      words,
      method: this.recorded?.method,
      settings: this.settings,
      disabled: !this.editable,
      known: (field, label, control) => this.known(['method', field], label, control, true),
      set: (field, option) => this.edit(['method', field], option),
    };
    return html`<details class="fold">
      <summary>${words.methods} ${methodLine(view)}</summary>
      <div class="methods">
        ${methodFields(view)}
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
