import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { type Examination, formatExamination } from 'pulse-map/core';
import type { FhirVersion, Unread } from 'pulse-map/fhir';
import { summaryOf, summaryText } from 'pulse-map/letter';
import { recordFrom } from './examination.js';
import { EXCHANGE_WORDS } from './exchange-words.js';
import { cause } from './format.js';
import { examinationLanguage, examinationRegister, followLanguage } from './language.js';
import { fetchWords } from './languages.js';
import { saveFile } from './save-file.js';
import { EXAMINATION_NAME, EXTENT_NAME, newId, type Patient, type Visit } from './types.js';

/** Keeps a visit and shows it; rejects where it could not be kept. */
export type KeepVisit = (visit: Visit) => Promise<void>;

const words = () => EXCHANGE_WORDS[examinationLanguage()];
const referenceTo = (patient: Patient): string => `Patient/${patient.id}`;

/** Carries every word of the record, so it is fetched only by those who exchange. */
const fetchFhir = () => import('pulse-map/fhir');

/** A choice of one; the first stands chosen. */
const radios = (
  name: string,
  legend: string,
  options: readonly (readonly [value: string, text: string])[],
): TemplateResult =>
  html`<fieldset class="field choice-field">
    <legend>${legend}</legend>
    <div class="choices">
      ${options.map(
        ([value, text], index) =>
          html`<label class="choice"
            ><input type="radio" name=${name} value=${value} ?checked=${index === 0} />
            <span>${text}</span></label
          >`,
      )}
    </div>
  </fieldset>`;

/** A saved visit as a FHIR file. */
export function visitExport(examination: Examination, patient: Patient, visit: Visit): TemplateResult {
  const said = words();
  const save = async (event: SubmitEvent): Promise<void> => {
    event.preventDefault();
    const form = event.currentTarget as HTMLFormElement;
    const fault = form.querySelector('[role=alert]') as HTMLElement;
    const chosen = new FormData(form);
    const fhirVersion = chosen.get('fhir-version') as FhirVersion;
    const asAnswers = chosen.get('fhir-content') === 'answers';
    const language = examinationLanguage();
    fault.textContent = '';
    try {
      const [{ toBundle, toResponse }] = await Promise.all([fetchFhir(), fetchWords(language)]);
      const subject = { reference: referenceTo(patient), display: patient.name };
      const options = { fhirVersion, subject, language, id: visit.id };
      const resource = asAnswers
        ? toResponse(examination, options)
        : toBundle(examination, { ...options, snomed: chosen.has('snomed') });
      saveFile(
        JSON.stringify(resource, null, 2),
        `visit-${visit.fields['date'] ?? ''}-${asAnswers ? 'form-' : ''}${fhirVersion.toLowerCase()}.json`,
        'application/fhir+json',
      );
    } catch (error) {
      fault.textContent = said.failed(cause(error));
    }
  };
  return html`<details class="letter exchange" lang=${examinationLanguage()}>
    <summary>${said.exportTitle}</summary>
    <form aria-label=${said.exportTitle} @submit=${save}>
      ${radios('fhir-content', said.content, [
        ['findings', said.findingsBundle],
        ['answers', said.formAnswers],
      ])}
      ${radios('fhir-version', said.version, [
        ['R4', 'R4'],
        ['R5', 'R5'],
      ])}
      <div class="field">
        <label class="choice"
          ><input type="checkbox" name="snomed" aria-describedby="fhir-licence" />
          <span>${said.snomed}</span></label
        >
        <p class="hint" id="fhir-licence">${said.licence}</p>
      </div>
      <button type="submit" class="button">${said.save}</button>
      <p class="fault" role="alert"></p>
    </form>
  </details>`;
}

/** A file that was chosen, before anything of it is kept. */
interface Chosen {
  /** Of the visit that it becomes, its own: no file overwrites a visit, and keeping twice makes no second one. */
  readonly id: string;
  readonly name: string;
  readonly json: unknown;
}

/** What a file holds for one patient. */
interface Read {
  readonly examination: Examination;
  /** Places and sides, tests, pressures, limbs and entries of lists that hold something. */
  readonly count: number;
  readonly unread: readonly (Unread & { readonly about: string; readonly sentence: string })[];
  /** Of all findings of the file, whoever they are about. */
  readonly days: readonly string[];
  /** Whether some finding does not say whom it is about. */
  readonly nobody: boolean;
}

/** The value at a path of names and numbers; nothing where the JSON has another shape. */
const at = (value: unknown, ...path: readonly (string | number)[]): unknown =>
  path.reduce<unknown>(
    (found, name) =>
      typeof found === 'object' && found !== null && Object.hasOwn(found, name)
        ? (found as Record<string | number, unknown>)[name]
        : undefined,
    value,
  );
const textAt = (value: unknown, ...path: readonly (string | number)[]): string => {
  const found = at(value, ...path);
  return typeof found === 'string' ? found : '';
};

const isForm = (json: unknown): boolean => textAt(json, 'resourceType') === 'QuestionnaireResponse';

/** What says of whom and of which day it is: the observations of a bundle, or the form itself. */
function observationsOf(json: unknown): readonly unknown[] {
  if (isForm(json)) return [json];
  const entries = at(json, 'entry');
  return (Array.isArray(entries) ? entries : [])
    .map((entry) => at(entry, 'resource'))
    .filter((resource) => textAt(resource, 'resourceType') === 'Observation');
}

async function readFile({ json }: Chosen, patient: Patient, day: string): Promise<Read> {
  const language = examinationLanguage();
  const [{ fromBundle, fromResponse, toBundle, unreadText }] = await Promise.all([
    fetchFhir(),
    fetchWords(language),
  ]);
  const { examination, unread } = (isForm(json) ? fromResponse : fromBundle)(json, {
    subject: referenceTo(patient),
    ...(day && { day }),
  });
  const about = (path: string): string => {
    const code = at(json, 'entry', Number(/^entry\[(\d+)\]/.exec(path)?.[1] ?? -1), 'resource', 'code');
    return textAt(code, 'text') || textAt(code, 'coding', 0, 'display');
  };
  const observations = observationsOf(json);
  const days = observations.map((one) =>
    (
      textAt(one, 'effectiveDateTime') ||
      textAt(one, 'effectiveInstant') ||
      textAt(one, 'effectivePeriod', 'start')
    ).slice(0, 10),
  );
  return {
    examination,
    // Without the panel, which says that this is a record.
    count: toBundle(examination, { derived: false }).entry.length - 1,
    unread: unread.map((one) => ({
      ...one,
      about: about(one.path),
      sentence: unreadText(one.why, language, examinationRegister()),
    })),
    days: [...new Set(days.filter(Boolean))].sort(),
    nobody: observations.some(
      (one) => !textAt(one, 'subject', 'reference') && !textAt(one, 'subject', 'identifier', 'value'),
    ),
  };
}

/** Reads a FHIR file for a patient, shows what was and was not read, and keeps it as a visit of its own when told to. */
export class FhirImport extends LitElement {
  @property({ attribute: false }) patient!: Patient;
  /** The patient's visits that are kept. */
  @property({ attribute: false }) visits: readonly Visit[] = [];
  @property({ attribute: false }) keep!: KeepVisit;
  @state() private chosen: Chosen | undefined;
  @state() private read: Read | undefined;
  @state() private day = '';
  @state() private fault = '';
  /** Counts readings, so that an outdated one is dropped. */
  #turn = 0;

  constructor() {
    super();
    followLanguage(this, () => {
      this.requestUpdate();
      void this.#readAgain();
    });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#turn += 1;
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override render(): TemplateResult {
    const said = words();
    return html`<details class="letter exchange" lang=${examinationLanguage()}>
      <summary>${said.importTitle}</summary>
      <div class="field">
        <label for="fhir-file">${said.file}</label>
        <input
          id="fhir-file"
          type="file"
          accept=".json,application/json,application/fhir+json"
          aria-describedby="fhir-file-hint"
          @change=${this.#handleFile}
        />
        <p class="hint" id="fhir-file-hint">${said.first}</p>
      </div>
      <p class="fault" role="alert">${this.fault || nothing}</p>
      ${this.chosen && this.read ? this.#shown(this.chosen, this.read) : nothing}
    </details>`;
  }

  #shown({ name }: Chosen, read: Read): TemplateResult {
    const said = words();
    const { whole, why } = this.#standing(name, read);
    const several = read.unread.some((one) => one.why === 'several-days') || this.day !== '';
    return html`<section class="read" aria-labelledby="fhir-read">
      <h3 id="fhir-read" tabindex="-1">${said.read(name)}</h3>
      ${why ? html`<p class="fault">${why}</p>` : nothing} ${several ? this.#days(read) : nothing}
      ${whole ? this.#found(read) : nothing}
      ${read.unread.length ? this.#unread(read) : whole ? html`<p>${said.allRead}</p>` : nothing}
      <div class="actions">
        ${
          whole
            ? html`<button type="submit" form="fhir-keep" class="button solid">${said.keep}</button>`
            : nothing
        }
        <button type="button" class="button" @click=${this.#handleDiscard}>${said.discard}</button>
      </div>
    </section>`;
  }

  /** Whether there is something to keep, and the sentence that says why not. */
  #standing(name: string, read: Read): { readonly whole: boolean; readonly why: string } {
    const said = words();
    const about = (why: string): boolean => read.unread.some((one) => one.why === why);
    if (about('no-bundle')) return { whole: false, why: said.noBundle(name) };
    if (read.count > 0) return { whole: true, why: about('other-patient') ? said.someStranger : '' };
    if (about('several-days')) return { whole: false, why: '' };
    return {
      whole: false,
      why: about('other-patient') ? said.stranger(this.patient.name) : said.nothing(name),
    };
  }

  #days({ days }: Read): TemplateResult {
    const said = words();
    return html`<div class="field">
      <label for="fhir-day">${said.whichDay}</label>
      <select id="fhir-day" @change=${this.#handleDay}>
        <option value="" ?selected=${this.day === ''}>${said.chooseDay}</option>
        ${days.map((day) => html`<option value=${day} ?selected=${day === this.day}>${day}</option>`)}
      </select>
    </div>`;
  }

  #found({ examination, count, days, nobody }: Read): TemplateResult {
    const said = words();
    const date = examination.examinedAt?.slice(0, 10) ?? (this.day || (days.length === 1 ? days[0]! : ''));
    const text = formatExamination(examination);
    const already = this.visits.some(({ fields }) => {
      const kept = recordFrom(fields[EXAMINATION_NAME]);
      return kept !== undefined && formatExamination(kept) === text;
    });
    const summary = summaryText(
      summaryOf(examination, {
        language: examinationLanguage(),
        register: examinationRegister(),
      }),
    );
    return html`${nobody ? html`<p class="fault">${said.nobody(this.patient.name)}</p>` : nothing}
      ${already ? html`<p class="fault">${said.already}</p>` : nothing}
      <form id="fhir-keep" @submit=${this.#handleKeep}>
        <div class="field">
          <label for="fhir-date">${said.date}</label>
          <input id="fhir-date" name="date" type="date" required .value=${date} />
          ${date ? nothing : html`<p class="hint">${said.noDate}</p>`}
        </div>
      </form>
      <p>${said.findings}: ${count}</p>
      <h4>${said.summary}</h4>
      <p class="summary">${summary}</p>`;
  }

  #unread({ unread }: Read): TemplateResult {
    const said = words();
    return html`<h4 id="fhir-unread">${said.unread(unread.length)}</h4>
      <p class="hint">${said.notKept}</p>
      <ul class="unread" aria-labelledby="fhir-unread">
        ${unread.map(
          ({ path, about, sentence }) =>
            html`<li>${about ? html`<b>${about}</b>: ` : nothing}${sentence} <code>${path}</code></li>`,
        )}
      </ul>`;
  }

  readonly #handleFile = async (event: Event): Promise<void> => {
    const file = (event.target as HTMLInputElement).files?.[0];
    const turn = this.#clear();
    if (!file) return;
    try {
      const text = await file.text();
      if (turn !== this.#turn) return;
      let json: unknown;
      try {
        // Some programs begin UTF-8 with a mark, which is no JSON.
        json = JSON.parse(text.replace(/^\uFEFF/, ''));
      } catch {
        this.fault = words().badJson(file.name);
        return;
      }
      this.chosen = { id: newId(), name: file.name, json };
    } catch (error) {
      this.fault = words().unreadable(cause(error));
      return;
    }
    await this.#readAgain();
    await this.updateComplete;
    this.querySelector<HTMLElement>('#fhir-read')?.focus();
  };

  readonly #handleDay = (event: Event): void => {
    this.day = (event.target as HTMLSelectElement).value;
    void this.#readAgain();
  };

  async #readAgain(): Promise<void> {
    if (!this.chosen) return;
    const turn = ++this.#turn;
    try {
      const read = await readFile(this.chosen, this.patient, this.day);
      if (turn === this.#turn) this.read = read;
    } catch (error) {
      if (turn === this.#turn) this.fault = words().unreadable(cause(error));
    }
  }

  readonly #handleKeep = async (event: SubmitEvent): Promise<void> => {
    event.preventDefault();
    if (!this.chosen || !this.read) return;
    const { id } = this.chosen;
    const { examination } = this.read;
    const date = String(new FormData(event.currentTarget as HTMLFormElement).get('date') ?? '');
    const fields = {
      date,
      examiner: examination.examiner ?? '',
      reason: 'Other',
      [EXTENT_NAME]: 'whole',
      [EXAMINATION_NAME]: formatExamination(examination),
    };
    try {
      await this.keep({ id, patientId: this.patient.id, fields, savedAt: new Date().toISOString() });
    } catch (error) {
      this.fault = cause(error);
    }
  };

  readonly #handleDiscard = (): void => {
    this.#clear();
    const input = this.querySelector<HTMLInputElement>('#fhir-file');
    if (input) input.value = '';
    input?.focus();
  };

  /** Forgets the file. */
  #clear(): number {
    this.chosen = undefined;
    this.read = undefined;
    this.day = '';
    this.fault = '';
    return ++this.#turn;
  }
}

if (!customElements.get('fhir-import')) customElements.define('fhir-import', FhirImport);

declare global {
  interface HTMLElementTagNameMap {
    'fhir-import': FhirImport;
  }
}
