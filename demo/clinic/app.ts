import { html, LitElement, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { keyed } from 'lit/directives/keyed.js';
import { aboutPage } from './about-page.js';
import { ClinicStore, VisitChangedError } from './database.js';
import { cause, day } from './format.js';
import { followLanguage } from './language.js';
import './lecture-page.js';
import './lesson-writing-page.js';
import './practice-page.js';
import {
  editPage,
  failedPage,
  loadingPage,
  missingPage,
  patientPage,
  patientsPage,
  visitPage,
} from './pages.js';
import type { PatientRow } from './patient-list.js';
import { hashOf, type Route, routeOf } from './routes.js';
import { type Draft, draftKey, type Patient, type Visit } from './types.js';
import './visit-form.js';
import type { VisitSavedEvent } from './visit-form.js';

/** A page with everything it shows. */
type Page =
  | { readonly page: 'loading' }
  | { readonly page: 'failed'; readonly reason: string }
  | { readonly page: 'missing'; readonly what: string }
  | { readonly page: 'about' }
  | {
      readonly page: 'lecture';
      readonly lessonId: string;
      readonly presenter: boolean;
      readonly handOut: boolean;
    }
  | { readonly page: 'lecture-editor' }
  | { readonly page: 'practice'; readonly code: string; readonly examiner: boolean }
  | { readonly page: 'patients'; readonly rows: readonly PatientRow[] }
  | { readonly page: 'patient'; readonly row: PatientRow }
  | {
      readonly page: 'visit';
      readonly patient: Patient;
      readonly visit: Visit;
      /** The visit before. */
      readonly earlier: Visit | undefined;
    }
  | {
      readonly page: 'edit';
      readonly patient: Patient;
      readonly visit: Visit | undefined;
      /** The visit before. */
      readonly earlier: Visit | undefined;
      readonly draft: Draft | undefined;
      /** Whether a new visit starts from the one before. */
      readonly fromLast: boolean;
    };

const CLINIC = 'Alder Row Clinic';

function titleOf(page: Page): string {
  switch (page.page) {
    case 'patients':
      return 'Patients';
    case 'patient':
      return page.row.patient.name;
    case 'visit':
      return `Visit of ${day(page.visit.fields['date'])}, ${page.patient.name}`;
    case 'edit':
      return `${page.visit ? 'Amend visit' : 'New visit'}, ${page.patient.name}`;
    case 'about':
      return 'About this demonstration';
    case 'lecture':
      return page.presenter ? 'Presenter' : page.handOut ? 'Hand-out' : 'Lecture';
    case 'lecture-editor':
      return 'Write a lesson';
    case 'practice':
      return page.examiner ? 'Examiner’s sheet' : 'Practice';
    case 'failed':
      return 'Records cannot be reached';
    case 'missing':
      return 'Not found';
    case 'loading':
      return 'Loading';
  }
}

/** Why a visit was left as it is. */
function refusal(error: unknown): string {
  const why = cause(error);
  return error instanceof VisitChangedError ? `${why} since this page was opened. Load the page again.` : why;
}

/** The record of an invented clinic: reads the location's hash, loads what the page needs, shows it. */
export class ClinicApp extends LitElement {
  /** Name of the browser database. */
  @property() database = 'alder-row-clinic';
  /** Opens the database. */
  @property({ attribute: false }) open: (name: string) => Promise<ClinicStore> = (name) =>
    ClinicStore.open(name);
  @state() private page: Page = { page: 'loading' };
  @state() private said = '';

  #store: ClinicStore | undefined;
  /** Counts page loads, so that an outdated one is dropped. */
  #turn = 0;
  #focusNext = false;

  constructor() {
    super();
    followLanguage(this);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('hashchange', this.#handleHash);
    // Removes the loading placeholder.
    if (!this.hasUpdated) this.replaceChildren();
    void this.#load();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener('hashchange', this.#handleHash);
    this.#turn += 1;
    this.#store?.close();
    this.#store = undefined;
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override render(): TemplateResult {
    const { page } = this.page;
    const here = (name: Page['page']) => (page === name ? 'page' : 'false');
    return html`<header class="top">
        <p class="clinic"><a href=${hashOf({ page: 'patients' })}>${CLINIC}</a></p>
        <nav aria-label="Clinic">
          <a href=${hashOf({ page: 'patients' })} aria-current=${here('patients')}>Patients</a>
          <a href=${hashOf({ page: 'lecture' })} aria-current=${page.startsWith('lecture') ? 'page' : 'false'}
            >Lecture</a
          >
          <a href=${hashOf({ page: 'practice' })} aria-current=${here('practice')}>Practice</a>
          <a href=${hashOf({ page: 'about' })} aria-current=${here('about')}>About this demonstration</a>
        </nav>
        <language-choice></language-choice>
      </header>
      <p class="said" role="status">${this.said}</p>
      ${this.#content()}
      <footer class="foot">
        <p>
          All patients here are invented; enter nothing about a real person. The map supports a clinician’s
          judgement and is not a diagnosis: local pathways and a licensed clinician decide.
        </p>
      </footer>`;
  }

  protected override updated(): void {
    document.title = `${titleOf(this.page)} · ${CLINIC}`;
    if (!this.#focusNext || this.page.page === 'loading') return;
    this.#focusNext = false;
    this.querySelector<HTMLElement>('main h1')?.focus({ preventScroll: true });
    scrollTo({ top: 0, behavior: 'instant' });
  }

  #content(): TemplateResult {
    const { page } = this;
    switch (page.page) {
      case 'loading':
        return loadingPage();
      case 'failed':
        return failedPage(page.reason, () => void this.#load());
      case 'missing':
        return missingPage(page.what);
      case 'about':
        return aboutPage(() => void this.#startAgain());
      case 'lecture':
        return html`<lecture-room
          .lessonId=${page.lessonId}
          .presenter=${page.presenter}
          .handOut=${page.handOut}
        ></lecture-room>`;
      case 'lecture-editor':
        return html`<lesson-writing-room></lesson-writing-room>`;
      case 'practice':
        return html`<practice-room .code=${page.code} .examiner=${page.examiner}></practice-room>`;
      case 'patients':
        return patientsPage(page.rows);
      case 'patient':
        return html`${keyed(
          page.row.patient.id,
          patientPage(page.row, this.#store, (visit) => this.#keepImported(visit)),
        )}`;
      case 'visit':
        return html`${keyed(
          `${page.visit.id} ${page.visit.revision ?? 0}`,
          visitPage(
            page.patient,
            page.visit,
            page.earlier,
            () => void this.#delete(page.visit),
            (visit) => void this.#amend(visit),
          ),
        )}`;
      case 'edit':
        return editPage(
          page.patient,
          page.visit,
          html`${keyed(
            page,
            html`<visit-form
              .store=${this.#store}
              .patient=${page.patient}
              .visit=${page.visit}
              .earlier=${page.earlier}
              .draft=${page.draft}
              .fromLast=${page.fromLast}
              @visit-saved=${this.#handleSaved}
            ></visit-form>`,
          )}`,
        );
    }
  }

  readonly #handleHash = (): void => {
    this.said = '';
    void this.#load(true);
  };

  readonly #handleSaved = ({ visit }: VisitSavedEvent): void => {
    this.#go({ page: 'patient', patientId: visit.patientId }, `Visit of ${day(visit.fields['date'])} saved.`);
  };

  /** Navigates and shows a message on the new page. */
  #go(route: Route, said: string): void {
    const show = (): void => {
      this.said = said;
    };
    if (location.hash === hashOf(route)) {
      void this.#load().then(show);
      return;
    }
    // The listener above, older than this one, clears the line first.
    addEventListener('hashchange', show, { once: true });
    location.hash = hashOf(route);
  }

  async #delete(visit: Visit): Promise<void> {
    const { patientId } = visit;
    try {
      await this.#store?.deleteVisit(visit, draftKey(patientId, visit.id));
    } catch (error) {
      this.said = `The visit was not deleted: ${refusal(error)}`;
      return;
    }
    this.#go({ page: 'patient', patientId }, `Visit of ${day(visit.fields['date'])} deleted.`);
  }

  /** Saves a visit whose record was marked, and shows it again. */
  async #amend(visit: Visit): Promise<void> {
    try {
      await this.#store?.saveVisit(visit, draftKey(visit.patientId, visit.id));
    } catch (error) {
      this.said = `The visit was not marked: ${refusal(error)}`;
      return;
    }
    this.#go({ page: 'visit', patientId: visit.patientId, visitId: visit.id }, 'The visit was marked.');
  }

  /** Keeps a visit that was read from a file, as a visit of its own. */
  async #keepImported(visit: Visit): Promise<void> {
    try {
      await this.#store?.saveVisit(visit, draftKey(visit.patientId, visit.id));
    } catch (error) {
      // Told twice to keep one file: the first time did it.
      if (!(error instanceof VisitChangedError)) throw error;
    }
    this.#go(
      { page: 'visit', patientId: visit.patientId, visitId: visit.id },
      `Visit of ${day(visit.fields['date'])} kept.`,
    );
  }

  async #startAgain(): Promise<void> {
    try {
      await this.#opened().then((store) => store.startAgain());
      this.#go({ page: 'patients' }, 'The invented patients are back as they were.');
    } catch (error) {
      this.said = `Nothing was changed: ${cause(error)}`;
    }
  }

  async #opened(): Promise<ClinicStore> {
    this.#store ??= await this.open(this.database);
    return this.#store;
  }

  /** @param focus whether the heading takes the focus once the page is there */
  async #load(focus = false): Promise<void> {
    const turn = ++this.#turn;
    const route = routeOf(location.hash);
    if (this.page.page === 'failed') this.page = { page: 'loading' };
    let page: Page;
    try {
      page = await this.#pageFor(route);
    } catch (error) {
      // A connection that failed once is not used again.
      this.#store = undefined;
      page = { page: 'failed', reason: cause(error) };
    }
    if (turn !== this.#turn) return;
    this.page = page;
    this.#focusNext ||= focus;
  }

  async #pageFor(route: Route): Promise<Page> {
    if (route.page === 'about' || route.page === 'lecture-editor') return route;
    if (route.page === 'lecture')
      return {
        page: 'lecture',
        lessonId: route.lessonId ?? '',
        presenter: route.presenter === true,
        handOut: route.handOut === true,
      };
    if (route.page === 'practice')
      return { page: 'practice', code: route.code ?? '', examiner: route.examiner === true };
    if (route.page === 'unknown') return { page: 'missing', what: 'There is no page at this address.' };
    const store = await this.#opened();
    if (route.page === 'patients') {
      const patients = await store.patients();
      return {
        page: 'patients',
        rows: await Promise.all(patients.map((patient) => this.#row(store, patient))),
      };
    }
    const patient = await store.patient(route.patientId);
    if (!patient) return { page: 'missing', what: 'This clinic has no patient at this address.' };
    if (route.page === 'patient') return { page: 'patient', row: await this.#row(store, patient) };
    const visit = route.visitId === undefined ? undefined : await store.visit(route.visitId);
    if (route.visitId !== undefined && visit?.patientId !== patient.id) {
      return {
        page: 'missing',
        what: `${patient.name} has no visit at this address. It may have been deleted.`,
      };
    }
    // The latest first: the one after this visit, or the first of all before a new one.
    const visits = await store.visits(patient.id);
    const earlier = visits[visit ? visits.findIndex(({ id }) => id === visit.id) + 1 : 0];
    if (route.page === 'edit') {
      const draft = await store.draft(draftKey(patient.id, visit?.id));
      return { page: 'edit', patient, visit, earlier, draft, fromLast: !visit && route.fromLast === true };
    }
    return visit
      ? { page: 'visit', patient, visit, earlier }
      : { page: 'missing', what: 'There is no visit at this address.' };
  }

  async #row(store: ClinicStore, patient: Patient): Promise<PatientRow> {
    const [visits, draft] = await Promise.all([store.visits(patient.id), store.draft(draftKey(patient.id))]);
    return { patient, visits, draft };
  }
}

customElements.define('clinic-app', ClinicApp);

declare global {
  interface HTMLElementTagNameMap {
    'clinic-app': ClinicApp;
  }
}
