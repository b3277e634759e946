import { css, html, nothing, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import { limbKey, LIMBS } from '../../anatomy/index.js';
import type { Examination } from '../../examination/index.js';
import { partMessagesFor } from '../../locale/parts.js';
import { sentence } from '../../locale/phrases.js';
import type { UnconfirmedWords } from '../../locale/unconfirmed.js';
import { type BodyPart, confirmed, type Unconfirmed, unconfirmed } from '../../report/index.js';
import { GivenRecord } from '../common/given-record.js';
import { intrinsicSize } from '../common/intrinsic-size.js';
import { type Later, LaterController } from '../common/later.js';
import { JoinedRecord } from '../common/joined-record.js';
import { property, RECORD } from '../common/property.js';
import { RecordElement } from '../common/record-element.js';
import type { RecordReader } from '../common/record-value.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { unreadStyles } from '../common/unread-notice.js';
import { reader } from '../pulse-reading/reader.js';

const ORDER: readonly (BodyPart | undefined)[] = [undefined, ...LIMBS.map(limbKey), 'trunk'];

/** What was confirmed last, to be taken back in one act. */
interface Last {
  readonly count: number;
  readonly record: Examination;
}

/**
 * What the visit before found, for a visit that starts from it. Nothing of it is in today's record until a person says that it was found
 * again, one by one or a limb at once; then it is one step to undo. What is recorded anew in any other way leaves the list.
 *
 * It edits the record of another element, named by `for` or handed over as `store`.
 *
 * @tag limb-unconfirmed
 * @attr value - The record as JSON, where it holds its own; what a form reset returns to.
 * @csspart title - The heading.
 * @csspart limb - What belongs to one limb.
 */
export class LimbUnconfirmed extends RecordElement {
  static override styles = [
    tokenStyles,
    controlStyles,
    unreadStyles,
    css`
      :host {
        display: block;
        position: relative;
        container-type: inline-size;
        ${intrinsicSize(320)}
      }
      :host([hidden]) {
        display: none;
      }
      .frame {
        /* What only screen readers see must not widen the page. */
        position: relative;
        padding: 12px 16px;
        border: 1px dashed var(--_edge);
        border-radius: var(--_radius);
      }
      h2 {
        font-size: calc(17 * var(--_text));
        line-height: calc(23 * var(--_text));
        font-weight: 600;
      }
      .limbs {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(100%, 340px), 1fr));
        gap: 0 24px;
      }
      .limb {
        margin-block-start: 8px;
        border-block-start: 1px solid var(--_line);
      }
      h3 {
        margin-block-start: 8px;
        font-size: calc(15 * var(--_text));
      }
      .all {
        margin-block: 4px 8px;
      }
      .row {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        justify-content: space-between;
        gap: 4px 12px;
      }
      .row {
        padding-block: 2px;
        padding-inline-start: 1em;
      }
      .row > span {
        flex: 1 1 200px;
        color: var(--_mute);
        font-style: italic;
        overflow-wrap: anywhere;
      }
      .acts {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 4px 12px;
        min-block-size: 44px;
      }
    `,
  ];

  /** Id of the element in the same tree whose record is confirmed into, such as a `<pulse-map>`. */
  @property({ attribute: 'for' }) htmlFor = '';
  /** The record of the visit before; without one nothing is shown. */
  @property({ attribute: false, shape: RECORD }) earlier: Examination | null = null;
  @state() private last: Last | undefined;
  @state() private takenBack = false;
  readonly #given = new GivenRecord(reader);

  constructor() {
    super();
    new JoinedRecord(this, () => this.htmlFor);
    new LaterController(this, reader, () => this.earlier !== null);
  }

  protected override get reader(): Later<RecordReader> {
    return reader;
  }

  protected override taken(): void {
    this.last = undefined;
    this.takenBack = false;
  }

  protected override render(): TemplateResult | typeof nothing {
    if (!this.earlier || !this.editable) return nothing;
    const { tag, register } = this.language;
    const words = partMessagesFor(tag, register).unconfirmed;
    const held = this.#given.held(this.earlier);
    if (held.state === 'waiting') return nothing;
    if (held.state !== 'readable') return html`<p role="status">${words.table.unread}</p>`;
    const earlier = held.value;
    const open = unconfirmed(earlier, this.examination);
    const when = this.words.map.when(earlier.examinedAt);
    return html`<section class="frame" aria-labelledby="title">
      <h2 id="title" part="title">${words.table.title(when)}</h2>
      <p>${open.length ? words.table.left(open.length) : words.table.none}</p>
      <p class="hint">${words.table.anew}</p>
      <div class="acts">
        <p role="status">${this.#said(words)}</p>
        ${
          this.last?.record === this.examination
            ? html`<button type="button" class="button" id="undo" @click=${this.#takeBack}>
                ${words.table.undo}
              </button>`
            : nothing
        }
      </div>
      <div class="limbs">
        ${this.#groups(open).map(([at, entries]) => this.#limb(at, entries, earlier, words))}
      </div>
    </section>`;
  }

  /** What is about the patient as a whole, then limb by limb. */
  #groups(
    open: readonly Unconfirmed[],
  ): readonly (readonly [BodyPart | undefined, readonly Unconfirmed[]])[] {
    return ORDER.map((at) => [at, open.filter((one) => one.at === at)] as const).filter(
      ([, entries]) => entries.length > 0,
    );
  }

  #limb(
    at: BodyPart | undefined,
    entries: readonly Unconfirmed[],
    earlier: Examination,
    words: UnconfirmedWords,
  ): TemplateResult {
    const name = words.part(at);
    return html`<section class="limb" part="limb" aria-label=${name}>
      <h3>${sentence(name)}</h3>
      <ul>
        ${entries.map(
          (entry) =>
            html`<li class="row">
              <span>${words.found(entry.lines)}</span>
              <button type="button" class="button" @click=${() => this.#confirm(earlier, [entry])}>
                ${words.table.confirm}<span class="hidden-visually">: ${words.found(entry.lines)}</span>
              </button>
            </li>`,
        )}
      </ul>
      ${
        entries.length > 1
          ? html`<button type="button" class="button all" @click=${() => this.#confirm(earlier, entries)}>
              ${words.table.all(entries.length)}<span class="hidden-visually">: ${name}</span>
            </button>`
          : nothing
      }
    </section>`;
  }

  #said(words: UnconfirmedWords): string {
    if (this.last && this.last.record === this.examination) return words.table.confirmed(this.last.count);
    return this.takenBack ? words.table.takenBack : '';
  }

  #confirm(earlier: Examination, entries: readonly Unconfirmed[]): void {
    const focused = (this.renderRoot as ShadowRoot).activeElement as HTMLElement;
    const at = this.#buttons.indexOf(focused);
    if (!this.edit(confirmed(earlier, this.examination, entries))) return;
    this.last = { count: entries.length, record: this.examination };
    this.takenBack = false;
    void this.#focusNear(at);
  }

  readonly #takeBack = (): void => {
    this.undo();
    this.last = undefined;
    this.takenBack = true;
    void this.#focusNear(0);
  };

  get #buttons(): HTMLElement[] {
    return [...this.renderRoot.querySelectorAll<HTMLElement>('.limb button')];
  }

  /** The button pressed is gone; the focus goes to the one that took its place. */
  async #focusNear(at: number): Promise<void> {
    await this.updateComplete;
    const buttons = this.#buttons;
    const next = buttons[Math.min(Math.max(0, at), buttons.length - 1)];
    (next ?? this.renderRoot.querySelector<HTMLElement>('#undo'))?.focus();
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'limb-unconfirmed': LimbUnconfirmed;
  }
}
