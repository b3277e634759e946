import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import { limbKey, type LimbKey, placeFromKey } from '../../anatomy/index.js';
import { type DrawnFlow, drawnRecord, type LesionMark } from '../../drawing/index.js';
import { emptyExamination, type Examination } from '../../examination/index.js';
import { anythingGraded, type LimbRule, type Reading, readExamination } from '../../localisation/index.js';
import { messagesFor, type Messages } from '../../locale/index.js';
import { glyphStyles } from '../common/glyph.js';
import { LANG, LanguageController } from '../common/language.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { limbLine, limbLineStyles } from './limb-line.js';
import {
  beginsSection,
  downstreamSection,
  evidenceSection,
  firmSection,
  nextSection,
  numbersSection,
  openButton,
  type ReadNetwork,
} from './sections.js';
import { readingStyles } from './styles.js';

/**
 * Says where the block is and why, in two voices that are never blended: the bedside rule's sentence for each limb with what
 * bounds it, and the belief network's probabilities with what speaks for and against, what contradicts, what to do next and
 * how firm it all is.
 *
 * @tag pulse-reading
 * @fires open-place - A person wants to see or fill in a site; `event.place` names it.
 * @csspart lead - The sentence of a limb.
 * @cssprop --pulse-map-ink - Colour of the text.
 * @cssprop --pulse-map-paper - Ground of the panel.
 */
export class PulseReading extends LitElement {
  static override styles = [tokenStyles, controlStyles, glyphStyles, limbLineStyles, readingStyles];

  /** The record to read. */
  @property({ attribute: false }) examination: Examination = emptyExamination();
  /** Shows the figures behind the words: levels, causes, weights, the likeliest story. */
  @property({ type: Boolean, reflect: true }) numbers = false;
  /** Says it without pictures and without what speaks for and against, for paper and small places. */
  @property({ type: Boolean, reflect: true }) brief = false;
  /** Language of the words, a BCP 47 tag; without it the nearest `lang` in the page counts. */
  @property(LANG) override lang = '';

  readonly #language = new LanguageController(this);

  protected override render(): TemplateResult {
    const words = messagesFor(this.#language.tag);
    const reading = readExamination(this.examination);
    const { network } = reading;
    const blank = network.status === 'nothing-examined' && !anythingGraded(this.examination);
    const caution = html`<section class="caution">${words.map.caution}</section>`;
    return html`<div class="all">${blank ? this.#start(words) : this.#limbs(reading, words)}${caution}</div>`;
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
                ${openButton(place, words.reading.open(place), words.localisation.openNow)}
              </div>
            </section>`
          : nothing
      }`;
  }

  #limbs(reading: Reading, words: Messages): TemplateResult {
    const { examination } = this;
    const network = reading.network.status === 'read' ? reading.network : undefined;
    const { marks, flow } = drawnRecord(examination);
    const all = Object.values(reading.rule);
    const talking = all.filter((rule) => {
      const limb = network?.limbs[limbKey(rule.limb)];
      return rule.outcome === 'lesion' || rule.contradictions.length > 0 || (limb?.examined && limb.first);
    });
    const everywhere = talking.length ? words.rule.everywhere(reading.rule) : '';
    return html`${this.#impossible(reading, words)}
    ${everywhere ? html`<section class="wide"><h3 part="lead">${everywhere}</h3></section>` : nothing}
    ${
      talking.length
        ? talking.map((rule) => this.#limb(rule, network, marks, flow, words))
        : html`<section>
            ${words.rule.leads(reading.rule).map((lead) => html`<h3 part="lead">${lead}</h3>`)}
          </section>`
    }
    ${this.#others(all, talking, network, words)} ${network ? nextSection(network.next, words) : nothing}
    ${network ? this.#numbers(network, talking, words) : nothing}`;
  }

  /** Findings that no state of the arteries explains. */
  #impossible({ network }: Reading, words: Messages): TemplateResult | typeof nothing {
    if (network.status !== 'impossible') return nothing;
    return html`<section class="check">
      <h4>${words.rule.checkAgain}</h4>
      <p>${words.localisation.impossible} ${words.localisation.impossibleWhy(network.conflicting)}</p>
    </section>`;
  }

  #limb(
    rule: LimbRule,
    network: ReadNetwork | undefined,
    marks: readonly LesionMark[],
    flow: readonly DrawnFlow[],
    words: Messages,
  ): TemplateResult {
    const { examination } = this;
    const key = limbKey(rule.limb);
    const limb = network?.limbs[key].examined ? network.limbs[key] : undefined;
    const detail = network?.detail[key];
    return html`<section data-limb=${key}>
      <h3 part="lead">${words.rule.lead(rule)}</h3>
      ${this.brief ? nothing : this.#picture(rule, marks, flow, words)}
      ${words.rule
        .reasons(examination, rule)
        .map((reason) => html`<p class="why"><b>${words.rule.heading}:</b> ${reason}</p>`)}
      ${limb ? beginsSection(limb, rule, words) : nothing}
      ${limb && network ? downstreamSection(network, limb, rule, words) : nothing}
      ${detail && !this.brief ? evidenceSection(detail, this.numbers, words) : nothing}
      ${this.#contradictions(rule, words)}
      ${detail ? firmSection(detail, rule.unstated.length, key, words) : nothing}
    </section>`;
  }

  /** The limb laid flat. */
  #picture(
    rule: LimbRule,
    marks: readonly LesionMark[],
    flow: readonly DrawnFlow[],
    words: Messages,
  ): TemplateResult {
    const key = limbKey(rule.limb);
    return html`<figure>
      <figcaption class="hint">${words.reading.limbTitle(rule.limb)}</figcaption>
      ${limbLine(
        this.examination,
        rule.limb,
        marks.filter((mark) => mark.limb === key),
        flow,
        words,
      )}
    </figure>`;
  }

  #contradictions(rule: LimbRule, words: Messages): TemplateResult | typeof nothing {
    if (!rule.contradictions.length) return nothing;
    return html`<div class="check part">
      <h4>${words.rule.checkAgain}</h4>
      ${rule.contradictions.map(
        (c) =>
          html`<p>${words.rule.contradiction(c)}</p>
            <p class="row">
              ${[c.weaker, c.stronger].map((place) =>
                openButton(place, words.reading.open(place), words.reading.open(place)),
              )}
            </p>`,
      )}
    </div>`;
  }

  /** The limbs in which nothing is wrong so far, in a line each. */
  #others(
    all: readonly LimbRule[],
    told: readonly LimbRule[],
    network: ReadNetwork | undefined,
    words: Messages,
  ): TemplateResult | typeof nothing {
    const rest = all.filter((rule) => !told.includes(rule) && rule.outcome !== 'nothing');
    if (!rest.length) return nothing;
    return html`<section>
      <h4>${told.length ? words.reading.elsewhere : words.localisation.begins}</h4>
      <ul class="others">
        ${rest.map((rule) => {
          const limb = network?.limbs[limbKey(rule.limb)];
          const shown = limb?.examined ? ` ${words.reading.noBlock(limb.nothing)}` : '';
          return html`<li data-limb=${limbKey(rule.limb)}>
            ${words.rule.lead(rule)}.<span class="hint">${shown}</span>
          </li>`;
        })}
      </ul>
    </section>`;
  }

  #numbers(network: ReadNetwork, told: readonly LimbRule[], words: Messages): TemplateResult {
    const keys = told.map((rule): LimbKey => limbKey(rule.limb));
    return html`<section class="toggle">
        <button
          type="button"
          class="button"
          aria-pressed=${this.numbers ? 'true' : 'false'}
          @click=${() => (this.numbers = !this.numbers)}
        >
          ${words.localisation.numbers}
        </button>
      </section>
      ${this.numbers ? numbersSection(network, keys, words) : nothing}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'pulse-reading': PulseReading;
  }
}
