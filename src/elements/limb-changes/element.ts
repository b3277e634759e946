import { html, LitElement, nothing, type TemplateResult } from 'lit';
import {
  type Change,
  CHANGE_WEIGHTS,
  type ChangeWeight,
  compareExaminations,
} from '../../comparison/index.js';
import { emptyExamination, type Examination, parseExaminationText } from '../../examination/index.js';
import { messagesFor } from '../../locale/index.js';
import type { ComparisonWords } from '../../locale/comparison.js';
import { partMessagesFor } from '../../locale/parts.js';
import { GivenRecord } from '../common/given-record.js';
import { LANG, LanguageController } from '../common/language.js';
import { Later } from '../common/later.js';
import { ownRoot } from '../common/own-root.js';
import { property, RECORD, shape } from '../common/property.js';
import { tokenStyles } from '../common/tokens.js';
import { changesStyles } from './styles.js';

const READER = Later.ready({ parseExaminationText });

const DATE = shape(
  'an ISO date or point of time',
  (value) => typeof value === 'string' && !Number.isNaN(Date.parse(value)),
);

/**
 * What changed since an earlier visit, gravest first: what is urgent, what changed, other differences, and what may be chance. Only what
 * was known both times is compared; what was not examined at one of the visits is named, and nothing is claimed of it. It shows
 * nothing while there is no earlier record.
 *
 * @tag limb-changes
 * @csspart title - The heading.
 * @csspart changes - The changes of one weight.
 */
export class LimbChanges extends LitElement {
  static override styles = [tokenStyles, changesStyles];

  /** The record of the earlier visit; without one nothing is shown. */
  @property({ attribute: false, shape: RECORD }) earlier: Examination | null = null;
  /** When the earlier visit was, an ISO date or point of time, where its record does not say. */
  @property({ shape: DATE }) since = '';
  /** The record that is compared with it. */
  @property({ attribute: false, shape: RECORD }) examination: Examination = emptyExamination();
  /** Language of the words, a BCP 47 tag; without it the nearest `lang` in the page counts. */
  @property(LANG) override lang = '';
  /** Whom the words address: `trade` for clinicians, `plain` for patients; empty, as the closest ancestor with one says, else `trade`. */
  @property(LANG) register: '' | 'trade' | 'plain' = '';
  readonly #before = new GivenRecord(READER);
  readonly #now = new GivenRecord(READER);
  readonly #language = new LanguageController(this);

  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    return ownRoot(this, super.createRenderRoot());
  }

  protected override render(): TemplateResult | typeof nothing {
    if (!this.earlier) return nothing;
    const { tag, register } = this.#language;
    const words = partMessagesFor(tag, register).comparison;
    const before = this.#before.held(this.earlier);
    const now = this.#now.held(this.examination);
    if (before.state !== 'readable' || now.state !== 'readable')
      return html`<p role="status">${words.unread}</p>`;
    const comparison = compareExaminations(before.value, now.value);
    const when = messagesFor(tag).map.when(before.value.examinedAt ?? (this.since || undefined));
    return html`<h2 class="title" part="title">${words.title(when)}</h2>
      ${CHANGE_WEIGHTS.map((weight) => this.#group(weight, comparison.changes, words))}
      ${words.rest(comparison).map((said) => html`<p>${said}</p>`)}`;
  }

  #group(
    weight: ChangeWeight,
    changes: readonly Change[],
    words: ComparisonWords,
  ): TemplateResult | typeof nothing {
    const own = changes.filter((change) => change.weight === weight);
    if (!own.length) return nothing;
    return html`<section class=${weight} part="changes" aria-labelledby=${weight}>
      <h3 class="weight" id=${weight}>${words.weight(weight)}</h3>
      ${weight === 'chance' ? html`<p>${words.scatter}</p>` : nothing}
      <ul>
        ${own.map((change) => html`<li>${words.change(change)}</li>`)}
      </ul>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'limb-changes': LimbChanges;
  }
}
