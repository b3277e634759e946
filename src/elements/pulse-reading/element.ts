import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import { limbKey, type Place, placeKey } from '../../anatomy/index.js';
import { drawnFlow, type LesionMark, ruleMarks } from '../../drawing/index.js';
import { emptyExamination, type Examination } from '../../examination/index.js';
import { anythingGraded, type LimbRule, readByRule, type RuleReading } from '../../localisation/index.js';
import { messagesFor, type Messages } from '../../locale/index.js';
import { glyphStyles } from '../shared/glyph.js';
import { controlStyles, tokenStyles } from '../shared/tokens.js';
import { OpenPlaceEvent } from './events.js';
import { limbLine, limbLineStyles } from './limb-line.js';

/**
 * Says where the block is and why: the bedside rule's sentence for each limb, the limb laid flat, what bounds the block, what
 * was not examined, and what contradicts.
 *
 * @tag pulse-reading
 * @fires open-place - A person wants to see or fill in a site; `event.place` names it.
 * @csspart lead - The sentence of a limb.
 * @cssprop --pulse-map-ink - Colour of the text.
 * @cssprop --pulse-map-paper - Ground of the panel.
 */
export class PulseReading extends LitElement {
  static override styles = [
    tokenStyles,
    controlStyles,
    glyphStyles,
    limbLineStyles,
    css`
      :host {
        display: block;
        container-type: inline-size;
      }
      section {
        padding-block: 14px;
        border-block-start: 1px solid var(--_line);
      }
      section:first-child {
        padding-block-start: 0;
        border-block-start: 0;
      }
      h3 {
        font-size: 21px;
        line-height: 27px;
        font-weight: 600;
        letter-spacing: -0.006em;
        text-wrap: balance;
      }
      h4 {
        margin-block: 0 6px;
        font-size: 13px;
        line-height: 18px;
        font-weight: 600;
        color: var(--_ink-2);
      }
      figure {
        margin-block-start: 8px;
      }
      .why {
        margin-block-start: 6px;
        font-size: 14px;
        line-height: 20px;
        color: var(--_ink-2);
      }
      .check {
        padding-inline-start: 12px;
        border-inline-start: 4px double var(--_ink);
      }
      .check .row {
        display: flex;
        gap: 8px;
        flex-wrap: wrap;
        margin-block-start: 8px;
      }
      .caution {
        font-size: 13px;
        line-height: 18px;
        color: var(--_ink-2);
      }
      @container (min-width: 640px) {
        .all {
          display: grid;
          grid-template-columns: repeat(auto-fit, minmax(300px, 1fr));
          column-gap: 44px;
        }
        .caution {
          grid-column: 1 / -1;
        }
      }
    `,
  ];

  /** The record to read. */
  @property({ attribute: false }) examination: Examination = emptyExamination();
  /** Language of the words, a BCP 47 tag; without it the nearest `lang` in the page counts. */
  @property({ reflect: true }) override lang = '';

  protected override render(): TemplateResult {
    const words = messagesFor(
      this.lang || this.closest('[lang]')?.getAttribute('lang') || globalThis.navigator?.language || 'en',
    );
    const { examination } = this;
    const reading = readByRule(examination);
    const caution = html`<section class="caution">${words.map.caution}</section>`;
    if (!anythingGraded(examination)) {
      return html`<div class="all">
        <section>
          <h3 part="lead">${words.rule.nothing}</h3>
          <p class="why">${words.rule.nothingMore}</p>
        </section>
        ${caution}
      </div>`;
    }
    return html`<div class="all">${this.#limbs(reading, words)}${caution}</div>`;
  }

  #limbs(reading: RuleReading, words: Messages): TemplateResult {
    const marks = ruleMarks(reading);
    const all = Object.values(reading);
    const talking = all.filter((rule) => rule.outcome === 'lesion' || rule.contradictions.length);
    if (talking.length) {
      return html`${talking.map((rule) => this.#limb(rule, marks, words))}${this.#others(all, talking, words)}`;
    }
    return html`${words.rule
      .leads(reading)
      .map((lead) => html`<section><h3 part="lead">${lead}</h3></section>`)}`;
  }

  #limb(rule: LimbRule, marks: readonly LesionMark[], words: Messages): TemplateResult {
    const { examination } = this;
    const flow = drawnFlow(examination, marks);
    return html`<section>
      <h3 part="lead">${words.rule.lead(rule)}</h3>
      <figure>
        <figcaption class="hint">${words.reading.limbTitle(rule.limb)}</figcaption>
        ${limbLine(examination, rule.limb, marks, flow, words)}
      </figure>
      ${words.rule
        .reasons(examination, rule)
        .map((reason) => html`<p class="why"><b>${words.rule.heading}:</b> ${reason}</p>`)}
      ${
        rule.contradictions.length
          ? html`<div class="check why">
              <h4>${words.rule.checkAgain}</h4>
              ${rule.contradictions.map(
                (c) =>
                  html`<p>${words.rule.contradiction(c)}</p>
                    <p class="row">
                      ${[c.weaker, c.stronger].map((place) => this.#openButton(place, words))}
                    </p>`,
              )}
            </div>`
          : nothing
      }
    </section>`;
  }

  #openButton(place: Place, words: Messages): TemplateResult {
    return html`<button
      type="button"
      class="button"
      data-place=${placeKey(place)}
      @click=${() => this.dispatchEvent(new OpenPlaceEvent(place))}
    >
      ${words.reading.open(place)}
    </button>`;
  }

  /** The limbs in which nothing is wrong so far, in a line each. */
  #others(
    all: readonly LimbRule[],
    told: readonly LimbRule[],
    words: Messages,
  ): TemplateResult | typeof nothing {
    const rest = all.filter((rule) => !told.includes(rule) && rule.outcome !== 'nothing');
    if (!rest.length) return nothing;
    return html`<section>
      <h4>${words.reading.elsewhere}</h4>
      <ul>
        ${rest.map((rule) => html`<li data-limb=${limbKey(rule.limb)}>${words.rule.lead(rule)}</li>`)}
      </ul>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'pulse-reading': PulseReading;
  }
}
