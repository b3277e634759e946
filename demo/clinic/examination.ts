import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { LimbExamination } from 'pulse-map/elements/limb-examination';
import type { LetterChangeEvent, LetterEdits } from 'pulse-map/elements/limb-letter';
import { type Examination, parseExaminationText } from 'pulse-map/core';
import 'pulse-map/elements/limb-unconfirmed/define';
import { PATHWAY } from './flag-line.js';
import { LETTER_NAME, letterEdits } from './letter.js';
import { examinationLanguage, examinationRegister, followLanguage } from './language.js';
import { EXAMINATION_NAME, EXTENT_NAME, type Extent, extentOf } from './types.js';

const EXTENTS: readonly (readonly [Extent, string])[] = [
  ['pulses', 'Pulses only'],
  ['whole', 'Whole examination'],
];

/** A record as the clinic kept it; none where there is none or it cannot be read. */
export function recordFrom(text: string | undefined): Examination | undefined {
  const parsed = text ? parseExaminationText(text) : undefined;
  return parsed?.ok ? parsed.value : undefined;
}

/**
 * The examination among the clinic's fields: the map alone or the whole examination, both one custom element with a name, a
 * label and a value. The clinic keeps what it submits and hands the same text back; it never looks inside.
 */
export class ExaminationField extends LitElement {
  /** The record to start from, as the clinic kept it. */
  @property({ attribute: false }) value = '';
  @property({ attribute: false }) extent: Extent = 'pulses';
  /** The record of the visit before, as the clinic kept it. */
  @property({ attribute: false }) earlier = '';
  /** What stood in the parts and could not be taken yet, as a draft kept it. */
  @property({ attribute: false }) unfinished: unknown;
  /** What was written into the letter, as the clinic kept it. */
  @property({ attribute: false }) written = '';
  @state() private letter: LetterEdits = {};
  @state() private chosen: Extent | undefined;

  constructor() {
    super();
    followLanguage(this);
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('extent')) this.chosen = undefined;
    if (changed.has('written')) this.letter = letterEdits(this.written);
  }

  protected override render(): TemplateResult {
    const whole = (this.chosen ?? this.extent) === 'whole';
    const { value } = this;
    const language = examinationLanguage();
    return html`<div class="examination">
      <h2><label for="examination">${whole ? 'Examination of the limbs' : 'Pulses and bruits'}</label></h2>
      ${this.#choice()}
      ${
        whole
          ? html`<limb-examination
              lang=${language}
              register=${examinationRegister()}
              id="examination"
              name=${EXAMINATION_NAME}
              .pathway=${PATHWAY}
              .earlier=${this.#earlier}
              .value=${value}
              .unfinished=${this.unfinished as LimbExamination['unfinished']}
              .letter=${this.letter}
              @letter-change=${this.#write}
            ></limb-examination>`
          : html`<pulse-map
              lang=${language}
              register=${examinationRegister()}
              id="examination"
              name=${EXAMINATION_NAME}
              .pathway=${PATHWAY}
              .compare=${this.#earlier ?? null}
              .value=${value}
            ></pulse-map>`
      }
      ${
        Object.keys(this.letter).length
          ? html`<input type="hidden" name=${LETTER_NAME} .value=${JSON.stringify(this.letter)} />`
          : nothing
      }
    </div>`;
  }

  readonly #write = ({ edits }: LetterChangeEvent): void => {
    this.letter = edits;
    // The page saves its draft on the same event, so what was written must already be in the form.
    this.performUpdate();
  };

  #choice(): TemplateResult {
    return html`<fieldset class="extent">
      <legend>To record</legend>
      ${EXTENTS.map(
        ([extent, label]) =>
          html`<label
            ><input
              type="radio"
              name=${EXTENT_NAME}
              value=${extent}
              ?checked=${extent === this.extent}
              @change=${() => this.#choose(extent)}
            />
            ${label}</label
          >`,
      )}
    </fieldset>`;
  }

  /** The record of the visit before; none where it cannot be read. */
  get #earlier(): Examination | undefined {
    return recordFrom(this.earlier);
  }

  /** The other element continues with the current record. */
  #choose(extent: Extent): void {
    const control = this.querySelector<HTMLElement & { value: string }>('#examination');
    this.value = control?.value ?? this.value;
    this.chosen = extent;
    // The page saves its draft on the same event, so the control must already be in the form.
    this.performUpdate();
  }
}

if (!customElements.get('examination-field')) customElements.define('examination-field', ExaminationField);

/** The examination of a saved visit to be read; the clinic knows the patient and the examiner, the record need not. */
export function examinationReport(
  fields: Readonly<Record<string, string>>,
  subject: string,
  details: string,
  earlier?: Readonly<Record<string, string>>,
): TemplateResult {
  const text = fields[EXAMINATION_NAME] ?? '';
  const record = recordFrom(text);
  const examiner = fields['examiner'];
  const shown = record && examiner ? { ...record, examiner: record.examiner ?? examiner } : (record ?? text);
  return html`<limb-report
    id="examination"
    lang=${examinationLanguage()}
    register=${examinationRegister()}
    subject=${subject}
    details=${details}
    day=${fields['date'] ?? ''}
    .pathway=${PATHWAY}
    .earlier=${recordFrom(earlier?.[EXAMINATION_NAME]) ?? null}
    .examination=${shown as Examination}
  ></limb-report>`;
}

/** What changed since the visit before; nothing where that one recorded nothing. */
export function changesSince(
  earlier: Readonly<Record<string, string>> | undefined,
  fields: Readonly<Record<string, string>>,
): TemplateResult | typeof nothing {
  const [before, now] = [earlier?.[EXAMINATION_NAME], fields[EXAMINATION_NAME]].map(recordFrom);
  if (!before || !now) return nothing;
  return html`<limb-changes
    lang=${examinationLanguage()}
    register=${examinationRegister()}
    .earlier=${before}
    .examination=${now}
  ></limb-changes>`;
}

/** What the visit before found, for a visit that starts from it: beside the record, and no part of it until it is confirmed. */
export function unconfirmedFrom(earlier: Readonly<Record<string, string>>): TemplateResult | typeof nothing {
  const before = recordFrom(earlier[EXAMINATION_NAME]);
  if (!before) return nothing;
  return html`<limb-unconfirmed
    lang=${examinationLanguage()}
    register=${examinationRegister()}
    for="examination"
    .earlier=${before}
  ></limb-unconfirmed>`;
}

export function examinationControl(
  fields: Readonly<Record<string, string>>,
  unfinished?: unknown,
  earlier?: Readonly<Record<string, string>>,
): TemplateResult {
  return html`<examination-field
    .value=${fields[EXAMINATION_NAME] ?? ''}
    .extent=${extentOf(fields)}
    .unfinished=${unfinished}
    .written=${fields[LETTER_NAME] ?? ''}
    .earlier=${earlier?.[EXAMINATION_NAME] ?? ''}
  ></examination-field>`;
}
