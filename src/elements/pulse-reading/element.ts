import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { placeFromKey } from '../../anatomy/index.js';
import { emptyExamination, type Examination, isEmptyRecord } from '../../examination/index.js';
import { type ActKind, readByRule, type Reading } from '../../localisation/index.js';
import { messagesFor, type Messages } from '../../locale/index.js';
import { ruleLeads } from '../../statements/index.js';
import { GivenRecord } from '../common/given-record.js';
import { LANG, LanguageController } from '../common/language.js';
import { LaterController, updateAfter } from '../common/later.js';
import { addStyles } from '../common/more-styles.js';
import { ReadingChangeEvent } from './events.js';
import { openButton } from './open-button.js';
import { reader } from './reader.js';
import { ownRoot } from '../common/own-root.js';
import { property, RECORD, TEXTS } from '../common/property.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { readingStyles } from './styles.js';

/**
 * Says where the block is and why, in two voices that are never blended: the bedside rule's sentence for each limb with what
 * bounds it, and the belief network's probabilities with what speaks for and against, what contradicts, what to do next and
 * how firm it all is.
 *
 * @tag pulse-reading
 * @fires {ReadingChangeEvent} reading-change - The reading shown has changed; `event.sentences` are its headlines.
 * @fires {OpenPlaceEvent} open-place - A person wants to see or fill in a site; `event.place` names it.
 * @csspart lead - The sentence of a limb.
 */
export class PulseReading extends LitElement {
  static override styles = [tokenStyles, controlStyles, readingStyles];

  /** The record to read. One that cannot be read, such as one of a later version, is said to be so and not interpreted. */
  @property({ attribute: false, shape: RECORD }) examination: Examination = emptyExamination();
  /** Shows the figures behind the words: levels, causes, weights, the likeliest story. */
  @property({ type: Boolean, reflect: true }) numbers = false;
  /** A short form without pictures and evidence, for print and small containers. */
  @property({ type: Boolean, reflect: true }) brief = false;
  /** An earlier record of the same patient: what is stable supports the reading, what is new dates the event. */
  @property({ attribute: false, shape: RECORD }) earlier: Examination | null = null;
  /** The kinds of act that the form around can record, for what to do next; all where not given, none for a record only shown. */
  @property({ attribute: false, shape: TEXTS }) can: readonly ActKind[] | undefined = undefined;
  /** Language of the words, a BCP 47 tag; without it the nearest `lang` in the page counts. */
  @property(LANG) override lang = '';
  /** Whom the words address: `trade` for clinicians, `plain` for patients; empty, as the closest ancestor with one says, else `trade`. */
  @property(LANG) register: '' | 'trade' | 'plain' = '';

  readonly #language = new LanguageController(this);
  readonly #given = new GivenRecord(reader);
  readonly #before = new GivenRecord(reader);
  readonly #later = new LaterController(this, reader, () => {
    const held = this.#given.held(this.examination);
    return held.state === 'waiting' || (held.state === 'readable' && !isEmptyRecord(held.value));
  });

  #shown = '';

  /** Both voices on the record as data; `undefined` while nothing is recorded or the engine is not there yet. */
  get reading(): Reading | undefined {
    const held = this.#given.held(this.examination);
    if (held.state !== 'readable' || isEmptyRecord(held.value)) return undefined;
    return reader.part?.readExamination(held.value, this.#earlier);
  }

  /** The headlines as they are shown, limb by limb; none while nothing is recorded. */
  get sentences(): readonly string[] {
    if (!this.reading) return [];
    const leads = this.renderRoot.querySelectorAll('[part~="lead"]');
    return [...leads].map((lead) => lead.textContent?.replace(/\s+/g, ' ').trim() ?? '');
  }

  get #earlier(): Examination | undefined {
    const before = this.earlier ? this.#before.held(this.earlier) : undefined;
    return before?.state === 'readable' ? before.value : undefined;
  }

  protected override updated(changed: PropertyValues): void {
    super.updated(changed);
    const { sentences } = this;
    const shown = sentences.join('\n');
    if (shown === this.#shown) return;
    this.#shown = shown;
    this.dispatchEvent(new ReadingChangeEvent(this.reading, sentences));
  }

  /** If there is something to read, the first paint shows the whole reading. */
  protected override scheduleUpdate(): void | Promise<unknown> {
    return updateAfter(this, this.#later.missing, () => super.scheduleUpdate());
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    const done = await super.getUpdateComplete();
    const { missing } = this.#later;
    if (!missing) return done;
    await missing;
    this.requestUpdate();
    return super.getUpdateComplete();
  }

  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    return ownRoot(this, super.createRenderRoot());
  }

  protected override render(): TemplateResult {
    const words = messagesFor(this.#language.tag, this.#language.register);
    const caution = html`<section class="caution">${words.map.caution}</section>`;
    return html`<div class="all">${this.#said(words) ?? this.#start(words)}${caution}</div>`;
  }

  /** The reading; only the bedside rule's sentences while the engine is loading. */
  #said(words: Messages): TemplateResult | undefined {
    const { numbers, brief } = this;
    const held = this.#given.held(this.examination);
    if (held.state !== 'readable')
      return html`<section>
        <p role="status">${held.state === 'waiting' ? words.form.waiting : words.form.sealed}</p>
      </section>`;
    const examination = held.value;
    if (isEmptyRecord(examination)) return undefined;
    if (!reader.part)
      return html`<section>
        ${ruleLeads(readByRule(examination)).map(
          (lead) => html`<h3 part="lead">${words.rule.lead(lead)}</h3>`,
        )}
      </section>`;
    addStyles(this.renderRoot, reader.part.limbStyles);
    const toggleNumbers = (): void => void (this.numbers = !this.numbers);
    return reader.part.renderLimbs({
      examination,
      earlier: this.#earlier,
      can: this.can,
      numbers,
      brief,
      words,
      flagWords: reader.part.flagWordsFor(this.#language.tag, this.#language.register),
      toggleNumbers,
    });
  }

  #start(words: Messages): TemplateResult {
    const place = placeFromKey('right femoral');
    return html`<section>
        <h3 part="lead">${words.rule.nothing}</h3>
        <p class="why">${words.rule.nothingMore}</p>
      </section>
      ${
        place
          ? html`<section>
              <h4>${words.localisation.start}</h4>
              <div class="ask">
                <p>
                  <b>${words.localisation.where(place)}</b
                  ><span class="hint">${words.anatomy.technique[place.site]}</span>
                </p>
                ${openButton(place, `${words.localisation.openNow}: ${words.anatomy.place(place)}`, words.localisation.openNow)}
              </div>
            </section>`
          : nothing
      }`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'pulse-reading': PulseReading;
  }
}
