import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { keyed } from 'lit/directives/keyed.js';
import './ask-first.js';
import { type ClinicStore, VisitChangedError } from './database.js';
import { DraftKeeper } from './draft-keeper.js';
import { examinationControl, unconfirmedFrom } from './examination.js';
import { fieldControl } from './field.js';
import { AFTER, type Field, LONG, SHORT } from './form-fields.js';
import { amendedFields, WHY_NAME } from './amend.js';
import { cause, localDate, moment } from './format.js';
import { followLanguage } from './language.js';
import { type Holding, OneTab } from './one-tab.js';
import { hashOf } from './routes.js';
import { saveFile } from './save-file.js';
import {
  type Draft,
  draftKey,
  FROM_NAME,
  newId,
  type Patient,
  type Visit,
  type VisitFields,
} from './types.js';

export class VisitSavedEvent extends Event {
  constructor(readonly visit: Visit) {
    super('visit-saved', { bubbles: true });
  }
}

/** Why a saved visit is changed. */
const WHY = html`<div class="field">
  <label for="why">Reason for the change</label>
  <input id="why" name=${WHY_NAME} autocomplete="off" maxlength="2000" />
</div>`;

/** The text fields of a form by name. A date or number that is half typed in reads as empty; what it held before stands. */
function fieldsOf(form: HTMLFormElement, before: VisitFields = {}): VisitFields {
  const entries = [...new FormData(form)].filter(
    (entry): entry is [string, string] => typeof entry[1] === 'string',
  );
  const half = [...form.elements].filter(
    (field): field is HTMLInputElement =>
      field instanceof HTMLInputElement && field.name !== '' && field.validity.badInput,
  );
  return {
    ...Object.fromEntries(entries),
    ...Object.fromEntries(half.map(({ name }) => [name, before[name] ?? ''])),
  };
}

/** What stands in the examination and could not be taken yet. */
function unfinishedIn(form: HTMLFormElement): unknown {
  return form.querySelector('limb-examination')?.unfinished;
}

/** The form of a new visit, or of a visit to amend. Every change is kept as a draft at once. */
export class VisitForm extends LitElement {
  @property({ attribute: false }) store!: ClinicStore;
  @property({ attribute: false }) patient!: Patient;
  @property({ attribute: false }) visit: Visit | undefined;
  /** The visit before, for what changed since. */
  @property({ attribute: false }) earlier: Visit | undefined;
  /** A draft to go on with. */
  @property({ attribute: false }) draft: Draft | undefined;
  /** Whether a new visit starts from the one before, everything found then still to be confirmed. */
  @property({ attribute: false }) fromLast = false;
  @state() private kept = '';
  @state() private draftError = '';
  @state() private saveError: unknown;
  @state() private holding: Holding = 'asked';
  @state() private saving = false;
  /** Increment to rebuild the form. */
  @state() private generation = 0;

  #keeper: DraftKeeper | undefined;
  #oneTab: OneTab | undefined;
  /** The fields as they were last kept. */
  #fields: VisitFields | undefined;

  constructor() {
    super();
    followLanguage(this);
  }

  protected override createRenderRoot(): this {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#oneTab = new OneTab(
      `${this.store.name} ${this.#key}`,
      (holding) => {
        this.holding = holding;
        const form = this.querySelector('form');
        if (holding === 'here' && this.#fields && form) this.#keep(form);
      },
      async () =>
        (await this.store.draft(this.#key))?.keptAt === (this.kept || this.draft?.keptAt || undefined),
    );
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#oneTab?.leave();
  }

  get #key(): string {
    return draftKey(this.patient.id, this.visit?.id);
  }

  protected override render(): TemplateResult {
    const fields = this.draft?.fields ?? this.visit?.fields ?? { date: localDate(new Date()) };
    const control = (field: Field) => fieldControl(field, fields[field.name] ?? '');
    return html`${this.#restored()} ${this.#elsewhere()}
    ${keyed(
      this.generation,
      html`<form
        autocomplete="off"
        aria-label=${this.visit ? 'Visit to amend' : 'New visit'}
        @input=${this.#handleChange}
        @change=${this.#handleChange}
        @unfinished-change=${this.#handleChange}
        @letter-change=${this.#handleChange}
        @submit=${this.#handleSubmit}
      >
        <div class="fields short">${SHORT.map(control)}</div>
        <div class="fields">${LONG.map(control)}</div>
        ${this.#fromLast(fields)} ${examinationControl(fields, this.draft?.unfinished, this.earlier?.fields)}
        <div class="fields">${AFTER.map(control)}</div>
        ${this.visit ? WHY : nothing} ${this.#failed()}
        <div class="actions">
          <button type="submit" class="button solid" ?disabled=${this.saving}>
            ${this.saving ? 'Saving…' : this.visit ? 'Save changes' : 'Save visit'}
          </button>
          <a class="button" href=${this.#backTo}>Back, and keep the draft</a>
          <p class="hint">${this.#draftLine()}</p>
        </div>
      </form>`,
    )}`;
  }

  /** What the visit before found, until it is confirmed; the draft remembers that the visit started from it. */
  #fromLast(fields: VisitFields): TemplateResult | typeof nothing {
    const { earlier } = this;
    if (!earlier || this.visit || (!this.fromLast && fields[FROM_NAME] !== earlier.id)) return nothing;
    return html`<input
        type="hidden"
        name=${FROM_NAME}
        value=${earlier.id}
      />${unconfirmedFrom(earlier.fields)}`;
  }

  /** The fields as they are saved: a visit that was saved before gets an amendment in its record. */
  #amended({ [WHY_NAME]: why = '', ...fields }: VisitFields): VisitFields {
    return this.visit ? amendedFields(fields, 'amended', fields['examiner'] ?? '', why.trim()) : fields;
  }

  get #backTo(): string {
    const patientId = this.patient.id;
    return this.visit
      ? hashOf({ page: 'visit', patientId, visitId: this.visit.id })
      : hashOf({ page: 'patient', patientId });
  }

  #restored(): TemplateResult | typeof nothing {
    if (!this.draft) return nothing;
    return html`<div class="notice">
      <p>You left this unfinished on ${moment(this.draft.keptAt)}. Everything entered is here again.</p>
      <ask-first
        label="Discard the draft"
        question="Discard everything entered since the last save?"
        confirm="Discard"
        @confirmed=${this.#handleDiscard}
      ></ask-first>
    </div>`;
  }

  #elsewhere(): TemplateResult {
    return html`<div role="alert">
      ${
        this.holding === 'elsewhere'
          ? html`<div class="notice">
              <p>
                This visit is being entered in another tab or window too. The draft of that one is kept; what
                you enter here is not, until you save it or go on here.
              </p>
              <button type="button" class="button" @click=${() => void this.#oneTab?.take()}>
                Go on here
              </button>
            </div>`
          : nothing
      }
    </div>`;
  }

  #failed(): TemplateResult {
    const error = this.saveError;
    return html`<div role="alert">
      ${
        error === undefined
          ? nothing
          : html`<div class="error">
              <h2>The visit was not saved</h2>
              ${error instanceof VisitChangedError ? this.#changed(error) : html`<p>The browser’s database said: ${cause(error)}</p>`}
              <p>
                Nothing you entered is lost; it still stands in this form.
                ${error instanceof VisitChangedError ? nothing : 'Try again, print the page, or keep it as a file.'}
              </p>
              <button type="button" class="button" @click=${this.#handleFile}>Keep it as a file</button>
            </div>`
      }
    </div>`;
  }

  /** What stands in the way of a save, and how to go on: never over what nobody here has seen. */
  #changed({ kept }: VisitChangedError): TemplateResult {
    if (!kept)
      return html`<p>It was deleted in another tab or window while it was open here.</p>
        <ask-first
          label="Save it as a new visit"
          question="Save what stands here as a new visit?"
          confirm="Save"
          @confirmed=${() => void this.#save(undefined, newId())}
        ></ask-first>`;
    const { patientId, id } = kept;
    return html`<p>
        It was changed in another tab or window on ${moment(kept.savedAt)}, while it was open here.
      </p>
      <p>
        <a href=${hashOf({ page: 'visit', patientId, visitId: id })} target="_blank"
          >Read what was saved there</a
        >
      </p>
      <ask-first
        label="Save this over it"
        question="Replace what was saved there by what stands here?"
        confirm="Replace it"
        @confirmed=${() => void this.#save(kept.revision)}
      ></ask-first>`;
  }

  #draftLine(): string {
    if (this.draftError)
      return `The draft cannot be kept (${this.draftError}). Save before you leave the page.`;
    return this.kept
      ? `Draft kept, ${moment(this.kept)}.`
      : 'What you enter is kept as a draft; a reload loses nothing.';
  }

  readonly #handleChange = (event: Event): void => {
    if (this.saving) return;
    this.#keep(event.currentTarget as HTMLFormElement);
  };

  #keep(form: HTMLFormElement): void {
    this.#fields = fieldsOf(form, this.#fields ?? this.draft?.fields ?? this.visit?.fields);
    if (this.holding !== 'here') return;
    this.#keeper ??= new DraftKeeper(this.store, (outcome) => {
      this.kept = 'keptAt' in outcome ? outcome.keptAt : this.kept;
      this.draftError = 'error' in outcome ? cause(outcome.error) : '';
    });
    const unfinished = unfinishedIn(form);
    this.#keeper.keep({
      key: this.#key,
      patientId: this.patient.id,
      fields: this.#fields,
      ...(unfinished !== undefined && { unfinished }),
      keptAt: new Date().toISOString(),
    });
  }

  readonly #handleSubmit = (event: SubmitEvent): void => {
    event.preventDefault();
    void this.#save(this.visit?.revision);
  };

  /** What stands in the form, as a visit. */
  #visitNow(id = this.visit?.id ?? newId()): Visit {
    return {
      id,
      patientId: this.patient.id,
      fields: this.#amended(fieldsOf(this.querySelector('form') as HTMLFormElement)),
      savedAt: new Date().toISOString(),
    };
  }

  /** @param revision the one that is replaced; none for a visit that is new */
  async #save(revision: number | undefined, id?: string): Promise<void> {
    const visit = { ...this.#visitNow(id), ...(revision !== undefined && { revision }) };
    this.saving = true;
    this.saveError = undefined;
    // A late draft must not be written after the save and be offered as unfinished.
    await this.#keeper?.close();
    this.#keeper = undefined;
    try {
      await this.store.saveVisit(visit, this.#key);
      this.dispatchEvent(new VisitSavedEvent(visit));
    } catch (error) {
      this.saveError = error;
    } finally {
      this.saving = false;
    }
  }

  readonly #handleFile = (): void => {
    const { fields } = this.#visitNow();
    const text = JSON.stringify({ patient: this.patient, fields }, null, 2);
    saveFile(text, `visit-${fields['date'] ?? ''}.json`, 'application/json');
  };

  readonly #handleDiscard = async (): Promise<void> => {
    await this.#keeper?.close();
    this.#keeper = undefined;
    try {
      await this.store.deleteDraft(this.#key);
    } catch (error) {
      this.draftError = cause(error);
      return;
    }
    this.draft = undefined;
    this.#fields = undefined;
    this.kept = '';
    this.generation += 1;
    await this.updateComplete;
    this.querySelector<HTMLElement>('input, select, textarea')?.focus();
  };
}

customElements.define('visit-form', VisitForm);

declare global {
  interface HTMLElementTagNameMap {
    'visit-form': VisitForm;
  }
}
