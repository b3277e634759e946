import { html, LitElement, type TemplateResult } from 'lit';
import { emptyExamination, type Examination } from '../../examination/index.js';
import { messagesFor } from '../../locale/index.js';
import { partMessagesFor } from '../../locale/parts.js';
import type { Pathway } from '../../triage/index.js';
import { GivenRecord } from '../common/given-record.js';
import { LANG, LanguageController } from '../common/language.js';
import { LaterController, updateAfter } from '../common/later.js';
import { addStyles } from '../common/more-styles.js';
import { ownRoot } from '../common/own-root.js';
import { pathwayOf } from '../common/pathway.js';
import { PrintController } from '../common/printing.js';
import { OBJECT, property, RECORD } from '../common/property.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { unreadStyles } from '../common/unread-notice.js';
import { reportSheet } from './sheet-reader.js';

/**
 * A finished examination to be read: red flags first, the conclusion in a sentence, the affected limb, findings by exception with what is
 * normal collapsed and counted, pressures, tests, stages, and what was not examined and why. The same page on the screen, on paper
 * and as PDF; an ordinary case is one page of A4. What was entered in error says so before everything else.
 *
 * @tag limb-report
 * @csspart report - The whole report.
 * @csspart flag - One red flag.
 * @csspart conclusion - What the findings come to.
 * @csspart figure - The affected limb as a picture.
 */
export class LimbReport extends LitElement {
  static override styles = [tokenStyles, controlStyles, unreadStyles];

  /** The record that is reported. One that cannot be read, such as one of a later version, is said to be so and not interpreted. */
  @property({ attribute: false, shape: RECORD }) examination: Examination = emptyExamination();
  /** An earlier record of the same patient, which conclusion and indices take into account. */
  @property({ attribute: false, shape: RECORD }) earlier: Examination | null = null;
  /** The hospital's own pathway, of which the limits count here. */
  @property({ attribute: false, shape: OBJECT }) pathway: Pathway | undefined = undefined;
  /** The patient's name as the page gives it; the record itself names nobody. */
  @property() subject = '';
  /** What stands under the name, such as a number and a date of birth. */
  @property() details = '';
  /**
   * The day of the examination, as `2026-03-05`, where the page knows it and the record has no time of its own. It is shown as a day
   * without a time; nothing is counted from it.
   */
  @property() day = '';
  /** Language of the words, a BCP 47 tag; without it the nearest `lang` in the page counts. */
  @property(LANG) override lang = '';
  /** Whom the words address: `trade` for clinicians, `plain` for patients; empty, as the closest ancestor with one says, else `trade`. */
  @property(LANG) register: '' | 'trade' | 'plain' = '';

  readonly #language = new LanguageController(this);
  readonly #print = new PrintController(this);
  readonly #given = new GivenRecord(reportSheet);
  readonly #before = new GivenRecord(reportSheet);
  readonly #later = new LaterController(this, reportSheet, () => true);

  /** The first paint shows the whole report. */
  protected override scheduleUpdate(): void | Promise<unknown> {
    return updateAfter(this, this.#later.missing, () => super.scheduleUpdate());
  }

  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    return ownRoot(this, super.createRenderRoot());
  }

  protected override render(): TemplateResult {
    const { tag, register } = this.#language;
    const words = messagesFor(tag, register);
    const held = this.#given.held(this.examination);
    if (held.state !== 'readable' || !reportSheet.part)
      return html`<div class="unread">
        <p role="status">${held.state === 'sealed' ? words.form.sealed : words.form.waiting}</p>
      </div>`;
    const before = this.earlier ? this.#before.held(this.earlier) : undefined;
    addStyles(this.renderRoot, reportSheet.part.sheetStyles);
    return reportSheet.part.renderSheet({
      examination: held.value,
      earlier: before?.state === 'readable' ? before.value : undefined,
      settings: pathwayOf(this.pathway).settings ?? {},
      subject: this.subject,
      details: this.details,
      day: this.day,
      printing: this.#print.printing,
      words,
      parts: partMessagesFor(tag, register),
    });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'limb-report': LimbReport;
  }
}
