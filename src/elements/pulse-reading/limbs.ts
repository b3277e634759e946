import { html, nothing, type TemplateResult } from 'lit';
import { limbKey, type LimbKey } from '../../anatomy/index.js';
import {
  arteryPaths,
  type DrawnFlow,
  drawnRecord,
  earlierSpots,
  isHealthy,
  placeRidges,
} from '../../drawing/index.js';
import {
  emptyExamination,
  type Examination,
  parseExaminationText,
  setPulse,
} from '../../examination/index.js';
import {
  type ActKind,
  anythingGraded,
  type LimbRule,
  type Reading,
  readExamination,
  whereaboutsOf,
} from '../../localisation/index.js';
import { type FlagWords, flagWordsFor } from '../../locale/flags.js';
import { type Messages, messagesFor } from '../../locale/index.js';
import {
  everywhereLead,
  impossibleStatement,
  type LeadStatement,
  lesionReasons,
  limbLead,
  type ReadNetwork,
  ruleLeads,
  talkingLimbs,
} from '../../statements/index.js';
import { glyphStyles } from '../common/glyph.js';
import { limbLine, limbLineStyles } from './limb-line.js';
import { lesionSentences } from './lesion-sentences.js';
import { openButton } from './open-button.js';
import {
  beginsSection,
  conflictSection,
  evidenceSection,
  firmSection,
  furtherSection,
  natureSection,
  nextSection,
  notExcludedLine,
  numbersSection,
  occludedSection,
} from './sections.js';

export {
  arteryPaths,
  earlierSpots,
  drawnRecord,
  flagWordsFor,
  lesionSentences,
  messagesFor,
  parseExaminationText,
  placeRidges,
  readExamination,
};

/**
 * Reads a record part by part. What each works out is kept until the record is drawn and told, which comes in a part of its own. None lasts
 * longer than a hand may wait: reading, each limb, the lesions beside the first, marks, then the arteries some at a time.
 */
export function* readInParts(examination: Examination, earlier?: Examination): Generator<void> {
  const { rule, network } = readExamination(examination, earlier);
  yield;
  if (network.status === 'read') {
    for (const limb of Object.keys(rule) as LimbKey[]) {
      whereaboutsOf(network, limb);
      yield;
    }
    if (network.detail) yield;
  }
  const { flow } = drawnRecord(examination, earlier);
  yield;
  // Healthy ones are there ready.
  if (isHealthy(flow)) return;
  for (const some of byArteries(flow)) {
    arteryPaths(some, true);
    yield;
  }
}

/** Arteries whose ribbons are drawn in one part. */
const AT_ONCE = 12;

/** What is drawn of arteries, some arteries at a time; what is drawn of one stays together. */
function* byArteries(flow: readonly DrawnFlow[]): Generator<readonly DrawnFlow[]> {
  let begun = 0;
  let arteries = 0;
  for (let i = 1; i <= flow.length; i++) {
    const [last, next] = [flow[i - 1]?.piece, flow[i]?.piece];
    if (next && next.artery === last?.artery && next.side === last.side) continue;
    if (++arteries % AT_ONCE && next) continue;
    yield flow.slice(begun, i);
    begun = i;
  }
}

/** Reads a small record, so that the first reading of a real one finds code and tables ready. */
export function* warm(): Generator<void> {
  const empty = emptyExamination();
  readExamination(empty);
  yield;
  yield* readInParts(setPulse(empty, { site: 'femoral', side: 'left' }, { grade: 'absent' }));
}

export const limbStyles = [glyphStyles, limbLineStyles];

export interface LimbsView {
  readonly examination: Examination;
  readonly brief: boolean;
  readonly numbers: boolean;
  readonly words: Messages;
  /** Words of the red flags, whose questions come first in what to do next. */
  readonly flagWords: FlagWords;
  /** An earlier record of the same patient. */
  readonly earlier?: Examination | undefined;
  /** The kinds of act that the form around can record; all where not given, none where it only shows. */
  readonly can?: readonly ActKind[] | undefined;
  /** Shows or hides the figures behind the words. */
  toggleNumbers(): void;
}

/** Both voices, limb by limb; nothing for a limb without findings. */
export function renderLimbs(view: LimbsView): TemplateResult | undefined {
  const reading = readExamination(view.examination, view.earlier);
  const blank = reading.network.status === 'nothing-examined' && !anythingGraded(view.examination);
  return blank ? undefined : limbs(reading, view);
}

function limbs(reading: Reading, view: LimbsView): TemplateResult {
  const { words } = view;
  const network = reading.network.status === 'read' ? reading.network : undefined;
  const all = Object.values(reading.rule);
  const talking = talkingLimbs(reading);
  const everywhere = talking.length ? everywhereLead(reading.rule) : undefined;
  return html`${impossible(reading, words)}
  ${everywhere ? html`<section class="wide">${lead(everywhere, words)}</section>` : nothing}
  ${
    talking.length
      ? talking.map((rule) => oneLimb(rule, network, view))
      : html`<section>${ruleLeads(reading.rule).map((one) => lead(one, words))}</section>`
  }
  ${others(all, talking, network, words)}
  ${
    network
      ? html`${natureSection(network, words)} ${conflictSection(network, words)} ${nextSection(network, view)}`
      : nothing
  }
  ${network ? numbers(network, talking, view) : nothing}`;
}

function lead(statement: LeadStatement, words: Messages): TemplateResult {
  return html`<h3 part="lead">${words.rule.lead(statement)}</h3>`;
}

/** Findings that no state of the arteries explains. */
function impossible({ network }: Reading, words: Messages): TemplateResult | typeof nothing {
  if (network.status !== 'impossible') return nothing;
  return html`<section class="check">
    <h4>${words.rule.checkAgain}</h4>
    <p>${words.localisation.impossible(impossibleStatement(network))}</p>
  </section>`;
}

function oneLimb(rule: LimbRule, network: ReadNetwork | undefined, view: LimbsView): TemplateResult {
  const { examination, words, brief } = view;
  const key = limbKey(rule.limb);
  const limb = network?.limbs[key].examined ? network.limbs[key] : undefined;
  const detail = network?.detail[key];
  const where = network && whereaboutsOf(network, key);
  // A lesion that is more likely none must not be headlined as found.
  const ruleAlone = limb && !where && rule.lesions.length > 0;
  return html`<section data-limb=${key}>
    <h3 part="lead">
      ${
        where
          ? words.localisation.headline(where)
          : html`${ruleAlone ? `${words.rule.heading}: ` : nothing}${words.rule.lead(limbLead(rule))}`
      }
    </h3>
    ${brief ? nothing : picture(rule, view)}
    ${rule.lesions.map(
      (lesion, i) =>
        html`<p class="why">
          <b>${words.rule.heading}:</b>
          ${where && i === 0 ? `${words.rule.lead(limbLead(rule))}. ` : nothing}${words.rule.reason(lesionReasons(examination, lesion))}
        </p>`,
    )}
    ${limb ? occludedSection(limb, where, rule, words) : nothing}
    ${detail ? furtherSection(detail, rule, words) : nothing} ${limb ? beginsSection(limb, words) : nothing}
    ${limb ? notExcludedLine(limb, words) : nothing}
    ${detail && !brief ? evidenceSection(detail, view.numbers, words) : nothing}
    ${contradictions(rule, words)} ${detail ? firmSection(detail, rule, words) : nothing}
  </section>`;
}

/** The limb as a straight line. */
function picture(rule: LimbRule, { examination, earlier, words }: LimbsView): TemplateResult {
  const key = limbKey(rule.limb);
  const { marks, flow } = drawnRecord(examination, earlier);
  return html`<figure>
    <figcaption class="hint">${words.reading.limbTitle(rule.limb)}</figcaption>
    ${limbLine(
      examination,
      rule.limb,
      marks.filter((mark) => mark.limb === key),
      flow,
      words,
    )}
  </figure>`;
}

function contradictions(rule: LimbRule, words: Messages): TemplateResult | typeof nothing {
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
function others(
  all: readonly LimbRule[],
  told: readonly LimbRule[],
  network: ReadNetwork | undefined,
  words: Messages,
): TemplateResult | typeof nothing {
  const rest = all.filter((rule) => !told.includes(rule) && rule.outcome !== 'nothing');
  if (!rest.length) return nothing;
  return html`<section>
    <h4>${told.length ? words.reading.elsewhere : words.localisation.beginsHeading}</h4>
    <ul class="others">
      ${rest.map((rule) => {
        const limb = network?.limbs[limbKey(rule.limb)];
        const shown = limb?.examined ? ` ${words.reading.noBlock(limb.nothing)}` : '';
        return html`<li data-limb=${limbKey(rule.limb)}>
          ${words.rule.lead(limbLead(rule))}.<span class="hint">${shown}</span>
        </li>`;
      })}
    </ul>
  </section>`;
}

function numbers(network: ReadNetwork, told: readonly LimbRule[], view: LimbsView): TemplateResult {
  const keys = told.map((rule): LimbKey => limbKey(rule.limb));
  return html`<section class="toggle">
      <button
        type="button"
        class="button"
        aria-pressed=${view.numbers ? 'true' : 'false'}
        @click=${() => view.toggleNumbers()}
      >
        ${view.words.localisation.numbers}
      </button>
    </section>
    ${view.numbers ? numbersSection(network, keys, view.words) : nothing}`;
}
