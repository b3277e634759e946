import { html, noChange, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import type { Side } from '../../anatomy/index.js';
import {
  type BedsideTestId,
  type Examination,
  parseExaminationText,
  patchAt,
  setFields,
  unknownFields,
} from '../../examination/index.js';
import type { PartId } from '../../locale/whole.js';
import { partMessagesFor, type PartMessages } from '../../locale/parts.js';
import type { FlagSettings, Pathway } from '../../triage/index.js';
import type { LetterEdits } from '../limb-letter/edits.js';
import { ICONS } from '../common/icons.js';
import { LabelClickController } from '../common/label-click.js';
import { Later } from '../common/later.js';
import { partStyles } from '../common/part-styles.js';
import { checked, OBJECT, property, RECORD } from '../common/property.js';
import { RecordElement } from '../common/record-element.js';
import type { RecordReader } from '../common/record-value.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { unknownNote } from '../common/unknown-note.js';
import { unreadStyles } from '../common/unread-notice.js';
import { pathwayOf } from '../common/pathway.js';
import { renderContents } from './contents.js';
import { renderFlags } from './flags.js';
import { CurrentPart } from './current-part.js';
import { focusPart } from './focus-part.js';
import { partEvents } from './part-events.js';
import {
  HistorySlice,
  ofPressuresPart,
  PARTS,
  pressuresPart,
  RECORDED,
  recordedIn,
  toggled,
  withUnknown,
} from './parts.js';
import { examinationStyles } from './styles.js';
import { pressed } from './keys.js';
import { ReportController, renderReport } from './report.js';
import { showSide, worstSide } from './side-in-sight.js';
import { renderNote } from './note.js';
import { renderSummary } from './summary.js';
import { renderTests } from './tests.js';
import { forgetIn, handOut, opensFor, type UnfinishedParts, unfinishedIn } from './unfinished.js';

/** The parts check what they edit, so that what reads a record is there from the start. */
const READER: Later<RecordReader> = Later.ready({ parseExaminationText });

/**
 * The whole examination of limbs that get too little blood, in the order of the bedside: history, inspection, pulses on the map, tests,
 * pressures, stages, summary. One form control, one record, one undo. The worst red flag stands first in the sticky bar. Read-only and on
 * paper it is the report of the examination.
 *
 * @tag limb-examination
 * @attr value - The record as JSON; what a form reset returns to.
 * @fires {LetterChangeEvent} letter-change - A person changed the summary; it carries what they wrote.
 * @fires {UnfinishedChangeEvent} unfinished-change - Text that no field can take yet was typed, mended or taken away.
 * @slot tools - Buttons of the page, at the end of the row of tools.
 * @csspart contents - The row of buttons that opens the parts.
 * @csspart part - One part.
 * @csspart summary - The record in words, to be changed and copied.
 */
export class LimbExamination extends RecordElement {
  static override styles = [tokenStyles, controlStyles, unreadStyles, partStyles, examinationStyles];

  /**
   * The hospital's own pathway: whom each flag calls, and its limits. Parts that cannot be used are left out with a warning;
   * without it a flag calls "by your local pathway".
   */
  @property({ attribute: false, shape: OBJECT }) pathway: Pathway | undefined = undefined;
  /** The record of the visit before: what changed since is told beside the pressures. */
  @property({ attribute: false, shape: RECORD }) earlier: Examination | undefined = undefined;

  /**
   * Id of the encounter with the patient, never that of the form. With it running watches are kept in the tab over a reload;
   * without it nothing is kept. Reset, another record and another id set them to zero.
   */
  @property() keep: string | undefined = undefined;

  /** The patient's name, and what stands under it, in the report that stands in place of the form on paper and read-only. */
  @property() subject = '';
  @property() details = '';

  /**
   * What a person wrote in the summary, as `letter-change` told it: a page that keeps drafts sets it again. Another record comes without,
   * unless the page gives it one.
   */
  @property({ attribute: false, shape: OBJECT }) letter: LetterEdits = {};

  @state() private opened: ReadonlySet<PartId> = new Set(['history']);
  @state() private openTests: ReadonlySet<BedsideTestId> = new Set();
  /** Parts stay rendered once opened, so that running timers continue. */
  readonly #drawn = new Set<PartId>();
  readonly #history = new HistorySlice();
  readonly #current = new CurrentPart(this);
  readonly #report = new ReportController(this);
  #kept: UnfinishedParts | undefined;
  /** Whether another record was taken since the last update. */
  #isAnother = false;

  constructor() {
    super();
    this.addEventListener('keydown', this.#keydown);
    new LabelClickController(this);
  }

  /**
   * Opens a part and moves the focus to its first control.
   * @param side brought into sight where there is room for one; without it that of the worst red flag
   */
  async openPart(part: PartId, side?: Side): Promise<void> {
    this.opened = new Set([...this.opened, part]);
    await this.updateComplete;
    const body = this.renderRoot.querySelector<HTMLElement>(`#part-${part}`);
    showSide(body, side ?? worstSide(this.examination, this.#choices));
    await focusPart(body);
  }

  /**
   * What was typed in the parts and could not be taken: it stands in the form and not in the record. A page that keeps drafts stores it
   * (`unfinished-change`) and sets it again after the value; the parts that hold it then stand open.
   */
  @checked(OBJECT)
  get unfinished(): UnfinishedParts | undefined {
    const drawn = unfinishedIn(this.renderRoot);
    return drawn || this.#kept ? { ...this.#kept, ...drawn } : undefined;
  }

  set unfinished(unfinished: UnfinishedParts | null | undefined) {
    this.#kept = unfinished ?? undefined;
    const { parts, tests } = opensFor(unfinished ?? {});
    this.opened = new Set([...this.opened, ...parts]);
    this.openTests = new Set([...this.openTests, ...(tests as BedsideTestId[])]);
    this.requestUpdate();
  }

  protected override updated(changed: PropertyValues): void {
    super.updated(changed);
    if (this.#kept) this.#kept = handOut(this.renderRoot, this.#kept);
  }

  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    const root = super.createRenderRoot();
    // Parts fire their own events; the page gets one event for the whole record.
    root.addEventListener('change', (event) => event.stopPropagation());
    return root;
  }

  protected override taken(): void {
    this.#kept = undefined;
    this.#isAnother = true;
    forgetIn(this.renderRoot);
    this.requestUpdate();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    if (this.#isAnother && !changed.has('letter')) this.letter = {};
    this.#isAnother = false;
  }

  protected override get reader(): Later<RecordReader> {
    return READER;
  }

  protected override render(): TemplateResult {
    const { examination, parts: words, unreadNotice } = this;
    if (unreadNotice) return unreadNotice;
    if (this.readOnly) return renderReport(this);
    const { printed } = this.#report;
    return html`${printed ? renderReport(this) : nothing}
      <div
        role="group"
        class=${printed ? 'unprinted' : nothing}
        aria-label=${this.labelText || words.whole.name}
      >
        <div class="head">
          ${renderFlags({
            examination,
            pathway: this.pathway,
            editable: this.editable,
            lang: this.lang,
            register: this.register,
            open: (part, side) => void this.openPart(part, side),
            edit: (next) => void this.edit(next),
          })}
          <div class="tools" role="toolbar" aria-label=${words.whole.toolbar}>
            ${renderContents({
              examination,
              words: words.whole,
              disabled: this.barred,
              current: this.#current.part,
              open: (part) => void this.openPart(part),
            })}
            <span class="undo">
              <slot name="tools"></slot>
              <button
                type="button"
                class="button icon"
                aria-label=${words.whole.undo}
                ?disabled=${!this.editable || !this.store.canUndo}
                @click=${() => this.undo()}
              >
                ${ICONS.undo}
              </button>
              <button
                type="button"
                class="button icon"
                aria-label=${words.whole.redo}
                ?disabled=${!this.editable || !this.store.canRedo}
                @click=${() => this.redo()}
              >
                ${ICONS.redo}
              </button>
            </span>
          </div>
        </div>
        ${PARTS.map((part) => this.#part(part))}
        ${this.ownsRecord ? unknownNote(examination, unknownFields, this.words) : nothing}
        <p class="hint keys">${words.whole.keys}</p>
      </div>`;
  }

  private get parts(): PartMessages {
    return partMessagesFor(this.language.tag, this.language.register);
  }

  /** The limits of the pathway, by which pressures, stages and flags are read alike. */
  get #choices(): FlagSettings {
    return pathwayOf(this.pathway).settings ?? {};
  }

  #part(part: PartId): TemplateResult {
    const { whole } = this.parts;
    const open = this.opened.has(part);
    if (open) this.#drawn.add(part);
    const recorded = recordedIn(part, this.examination);
    return html`<section part="part" class="part" id="part-${part}" aria-label=${whole.parts[part]}>
      <h2>
        <button
          type="button"
          class="heading"
          aria-expanded=${open}
          ?disabled=${this.barred}
          @click=${() => void this.#toggle(part)}
        >
          ${whole.parts[part]} <span class="hint">${recorded ? whole.count(recorded) : nothing}</span>
        </button>
      </h2>
      <div class="body" ?hidden=${!open}>${this.#drawn.has(part) ? this.#body(part) : nothing}</div>
    </section>`;
  }

  async #toggle(part: PartId): Promise<void> {
    this.opened = toggled(this.opened, part);
    await this.updateComplete;
    const body = this.renderRoot.querySelector(`#part-${part}`);
    if (this.opened.has(part)) showSide(body, worstSide(this.examination, this.#choices));
  }

  #body(part: PartId): TemplateResult {
    const { examination, lang, readOnly, barred } = this;
    switch (part) {
      case 'history':
        return html`<limb-history
            .lang=${lang}
            .register=${this.register}
            .readOnly=${readOnly}
            ?disabled=${barred}
            .examinedAt=${examination.examinedAt}
            .value=${this.#history.of(examination)}
            ${this.#entered<'limb-history'>(({ recorded: { onset, history, context, circulation } = {} }) => ({ onset, history, context, circulation }))}
          ></limb-history>
          <details
            class="fold"
            ?open=${Object.keys(examination.context ?? {}).some((key) => !/Claudication$/.test(key)) || noChange}
          >
            <summary>${this.parts.context.title}</summary>
            <limb-context
              no-claudication
              .lang=${lang}
              .register=${this.register}
              .readOnly=${readOnly}
              ?disabled=${barred}
              .value=${withUnknown(examination.context, examination, 'context')}
              ${this.#entered<'limb-context'>(({ recorded }) => ({ context: recorded }))}
            ></limb-context>
          </details>`;
      case 'inspection':
        return html`<limb-inspection
          .lang=${lang}
          .register=${this.register}
          .readOnly=${readOnly}
          ?disabled=${barred}
          .age=${examination.context?.ageBand}
          .value=${withUnknown(examination.inspection, examination, 'inspection')}
          ${this.#entered<'limb-inspection'>(({ recorded }) => ({ inspection: recorded }))}
        ></limb-inspection>`;
      case 'pulses':
        return html`${renderNote({ store: this.store, words: this.parts, lang, register: this.register, editable: this.editable, kept: !!this.#kept?.['limb-note'] })}
          <pulse-map
            .can=${RECORDED}
            no-flags
            .lang=${lang}
            .register=${this.register}
            .readOnly=${readOnly}
            ?disabled=${barred}
            .compare=${this.earlier ?? null}
            .store=${this.store}
          ></pulse-map>`;
      case 'bedside':
        return renderTests({
          examination,
          words: this.parts,
          letters: this.words.anatomy.sideLetters,
          disabled: barred,
          isOpen: (id) => this.openTests.has(id),
          toggle: (id) => (this.openTests = toggled(this.openTests, id)),
          test: (id, open) => this.#test(id, open),
        });
      case 'pressures':
        return html`<limb-pressures
          .lang=${lang}
          .register=${this.register}
          .readOnly=${readOnly}
          ?disabled=${barred}
          .settings=${this.#choices.pressures ?? {}}
          .triage=${this.#choices.triage ?? {}}
          .earlier=${this.earlier?.pressures}
          .examination=${examination}
          .value=${pressuresPart(examination)}
          ${this.#entered<'limb-pressures'>(({ recorded }) => ofPressuresPart(recorded))}
        ></limb-pressures>`;
      case 'staging':
        return html`<limb-staging
          .lang=${lang}
          .register=${this.register}
          .readOnly=${readOnly}
          ?disabled=${barred}
          .pathway=${this.pathway}
          .examination=${examination}
          .value=${withUnknown(examination.staging, examination, 'staging')}
          ${this.#entered<'limb-staging'>(({ recorded }) => ({ staging: recorded }))}
        ></limb-staging>`;
      case 'summary':
        return renderSummary(this);
    }
  }

  #test(id: BedsideTestId, open: boolean): TemplateResult {
    return html`<bedside-test
      test=${id}
      ?hidden=${!open}
      .lang=${this.lang}
      .register=${this.register}
      .readOnly=${this.readOnly}
      ?disabled=${this.barred}
      .keep=${this.keep}
      .watchesCleared=${'around'}
      .value=${withUnknown<object>(this.examination.bedside?.[id], this.examination, 'bedside', id)}
      ${this.#entered<'bedside-test'>(({ recorded }) => ({ bedside: patchAt(this.examination.bedside, [id], recorded) }))}
    ></bedside-test>`;
  }

  /** Applies a part's edits: each `input` at once, all up to the next `change` as one undo step. */
  #entered<Tag extends keyof HTMLElementTagNameMap>(
    fields: (part: HTMLElementTagNameMap[Tag]) => Partial<Record<keyof Examination, unknown>>,
  ): unknown {
    return partEvents({
      input: (part) =>
        this.edit(
          setFields(this.examination, fields(part as HTMLElementTagNameMap[Tag]) as Partial<Examination>),
          part,
        ),
      change: () => this.store.settle(),
    });
  }

  readonly #keydown = (event: KeyboardEvent): void => {
    pressed(event, this.renderRoot as ShadowRoot, {
      open: (part) => void this.openPart(part),
      undo: () => this.undo(),
      redo: () => this.redo(),
    });
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'limb-examination': LimbExamination;
  }
}
