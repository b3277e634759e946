import { css, html, nothing, type TemplateResult } from 'lit';
import type { Level, LimbKey } from '../../anatomy/index.js';
import {
  actsOf,
  type HiddenPatient,
  informationOf,
  leftUndone,
  type MarkSheet,
  markRound,
  pathsOf,
  pickedOf,
  type PracticeAnswer,
  practiceActId,
  recordKnown,
  revealed,
  type RightAnswer,
  type Round,
  TOLD_NOTHING,
} from '../../practice/index.js';
import { textIn } from '../../lesson/index.js';
import { flagWordsFor } from '../../locale/flags.js';
import type { RedFlag } from '../../triage/index.js';
import { styled } from '../common/styled.js';
import { stageSaid } from './answering.js';
import { actSaid, foundSaid, ruleSaid, type Speech, timeSaid } from './said.js';

/** What is worked out of a round once it has its answer; kept while the same is shown. */
interface Worked {
  readonly sheet: MarkSheet;
  readonly told: ReturnType<typeof informationOf>;
  readonly undone: ReturnType<typeof leftUndone>;
}
const worked = new WeakMap<Round, Worked>();

function workedOut(patient: HiddenPatient, round: Round): Worked {
  const known = worked.get(round) ?? {
    sheet: markRound(patient, round),
    told: informationOf(patient, round),
    undone: leftUndone(patient, round),
  };
  worked.set(round, known);
  return known;
}

type Lesions = readonly { readonly limb: LimbKey; readonly levels: readonly Level[] }[];

function lesionsSaid(lesions: Lesions | undefined, { messages, parts }: Speech): string {
  const words = parts.practice;
  if (!lesions) return words.unanswered;
  if (!lesions.length) return words.noDisease;
  const { limbs, levels } = messages.anatomy;
  return lesions
    .map((one) => `${limbs[one.limb]}: ${one.levels.map((level) => levels[level]).join(` ${words.or} `)}`)
    .join('; ');
}

/** The limbs alone. */
function limbsSaid(
  lesions: readonly { readonly limb: LimbKey }[] | undefined,
  { messages, parts }: Speech,
): string {
  if (!lesions) return parts.practice.unanswered;
  const limbs = [...new Set(lesions.map(({ limb }) => messages.anatomy.limbs[limb]))];
  return limbs.length ? limbs.join(', ') : parts.practice.noDisease;
}

type Said = Readonly<Record<keyof PracticeAnswer | 'limbs', string>>;

/** What is right, part by part, in words. */
export function rightSaid(right: RightAnswer, speech: Speech): Said {
  const words = speech.parts.practice;
  const either = (texts: readonly string[]): string => texts.join(` ${words.or} `);
  return {
    limbs: limbsSaid(right.lesions, speech),
    lesions: lesionsSaid(right.lesions, speech),
    cause: either(right.causes.map((cause) => words.causes[cause])),
    stage: either(right.stages.map((stage) => stageSaid(stage, speech))),
    urgency: words.urgencies[right.urgency],
    first: either(right.first.map((first) => words.firsts[first])),
  };
}

function answerSaid(answer: PracticeAnswer, speech: Speech): Said {
  const words = speech.parts.practice;
  const { lesions, cause, stage, urgency, first } = answer;
  return {
    limbs: limbsSaid(lesions, speech),
    lesions: lesionsSaid(
      lesions?.map(({ limb, level }) => ({ limb, levels: [level] })),
      speech,
    ),
    cause: cause ? words.causes[cause] : words.unanswered,
    stage: stage ? stageSaid(stage, speech) : words.unanswered,
    urgency: urgency ? words.urgencies[urgency] : words.unanswered,
    first: first ? words.firsts[first] : words.unanswered,
  };
}

const FIELD_OF = {
  side: 'limbs',
  level: 'lesions',
  cause: 'cause',
  stage: 'stage',
  urgency: 'urgency',
  first: 'first',
  thrift: undefined,
} as const;

function marksTable({ sheet }: Worked, round: Round, speech: Speech): TemplateResult {
  const words = speech.parts.practice;
  const [right, yours] = [rightSaid(sheet.right, speech), answerSaid(round.answer ?? {}, speech)];
  return html`<table class="marks wide">
    <thead>
      <tr>
        <td></td>
        <th scope="col">${words.yours}</th>
        <th scope="col">${words.truth}</th>
        <th scope="col">${words.mark}</th>
      </tr>
    </thead>
    <tbody>
      ${sheet.parts.map(({ part, points, of, open, ungrounded }) => {
        const field = FIELD_OF[part];
        return html`<tr class=${open ? 'open' : points < of ? 'less' : ''}>
          <th scope="row">${words.parts[part]}</th>
          <td>
            ${field ? yours[field] : nothing}${ungrounded ? html` <i>${words.ungrounded}</i>` : nothing}
          </td>
          <td>${field ? right[field] : nothing}</td>
          <td class="n">${open ? words.openPart(of) : words.points(points, of)}</td>
        </tr>`;
      })}
    </tbody>
  </table>`;
}

/** That a cause cannot be told, where it cannot. */
function causeNote(
  { causes, cause }: RightAnswer,
  answer: PracticeAnswer | undefined,
  { parts }: Speech,
): TemplateResult | typeof nothing {
  const words = parts.practice;
  if (cause && causes.length > 1)
    return html`<p class="hint" data-note="cause">${words.causesFit(words.causes[cause])}</p>`;
  if (!cause && answer?.cause) return html`<p class="hint" data-note="cause">${words.causeUntold}</p>`;
  return nothing;
}

/** A heading with what stands under it, or with the sentence that there is none of it. */
function section(
  heading: string,
  content: TemplateResult | readonly TemplateResult[] | undefined,
  none: string,
): TemplateResult {
  return html`<h4>${heading}</h4>
    ${content ?? html`<p>${none}</p>`}`;
}

function warnings({ right, missed, cautions, taken }: MarkSheet, speech: Speech): TemplateResult {
  const words = speech.parts.practice;
  const flags = flagWordsFor(speech.tag);
  const isMissed = (flag: RedFlag): boolean => missed.includes(flag);
  const all = [...right.flags].sort((a, b) => Number(isMissed(b)) - Number(isMissed(a)));
  return html`${section(
    words.flags,
    all.length
      ? html`<ul class="flags">
          ${all.map(
            (flag) =>
              html`<li class=${isMissed(flag) ? 'missed' : ''}>
                <b>${isMissed(flag) ? words.flagMissed : words.flagFound}:</b> ${flags.heading(flag)}
              </li>`,
          )}
        </ul>`
      : undefined,
    words.noFlags,
  )}
  ${section(
    words.cautions,
    cautions.length
      ? html`<ul class="flags">
          ${cautions.map(({ code, act, first, seconds = 0 }) => {
            const what = act ? actSaid(act, speech) : first && words.firsts[first];
            return html`<li class="missed">
              ${words.caution(code, what, Math.floor(seconds / 60), seconds % 60)}
            </li>`;
          })}
        </ul>`
      : undefined,
    words.noCautions,
  )}
  ${taken ? html`<p class="hint">${words.taken(taken)}</p>` : nothing}`;
}

function tellings({ told, undone }: Worked, speech: Speech): TemplateResult {
  const words = speech.parts.practice;
  if (!told.length) return section(words.told, undefined, words.nothingDone);
  const sorted = [...told].sort((a, b) => b.told - a.told);
  const most = Math.max(...sorted.map((one) => one.told), 1e-9);
  const telling = sorted.filter((one) => one.told >= TOLD_NOTHING).slice(0, MOST_TELLING);
  const nothingTold = sorted.filter((one) => one.told < TOLD_NOTHING);
  const names = (acts: readonly { readonly act: string }[]): TemplateResult | undefined =>
    acts.length ? html`<p>${acts.map(({ act }) => actSaid(act, speech)).join('; ')}</p>` : undefined;
  const bars = html`<ul class="told">
    ${telling.map(
      ({ act, told: nats }) =>
        html`<li>
          <span>${actSaid(act, speech)}</span
          ><span class="bar" aria-hidden="true"
            ><i ${styled({ 'inline-size': `${Math.max(3, (100 * nats) / most).toFixed(0)}%` })}></i
          ></span>
        </li>`,
    )}
  </ul>`;
  return html`${section(words.told, telling.length ? bars : undefined, words.noneTold)}
  ${section(words.toldNothing, names(nothingTold), words.allTold)}
  ${section(words.undone, undone && names(undone), undone ? words.noneUndone : words.undoneUnknown)}`;
}

/** Acts whose telling is drawn. */
const MOST_TELLING = 8;

function comparison(patient: HiddenPatient, round: Round, speech: Speech): TemplateResult {
  const words = speech.parts.practice;
  const truth = revealed(patient, round);
  const acts = actsOf(round);
  if (!acts.length) return section(words.expected, undefined, words.nothingDone);
  return html`<details class="compared">
    <summary>${words.expected}</summary>
    <table class="marks wide">
      <thead>
        <tr>
          <th scope="col">${words.done}</th>
          <th scope="col">${words.found}</th>
          <th scope="col">${words.expected}</th>
        </tr>
      </thead>
      <tbody>
        ${acts.map((act) => {
          const found = foundSaid(patient.find(act), speech);
          const there = foundSaid(pickedOf(truth.record, pathsOf(act)), speech);
          return html`<tr class=${found === there ? '' : 'less'}>
            <th scope="row">${actSaid(practiceActId(act), speech)}</th>
            <td>${found}</td>
            <td>${there}${found === there ? nothing : html` <i>${words.erred}</i>`}</td>
          </tr>`;
        })}
      </tbody>
    </table>
  </details>`;
}

/** Everything that is told once the answer was given. */
export function renderSheet(
  patient: HiddenPatient,
  round: Round,
  seconds: number,
  speech: Speech,
): TemplateResult {
  const words = speech.parts.practice;
  const out = workedOut(patient, round);
  const { points, of, right } = out.sheet;
  const { text } = revealed(patient, round);
  const rule = ruleSaid(recordKnown(patient, round), speech);
  return html`<section class="sheet" part="sheet">
    <h3 tabindex="-1">${words.sheet}</h3>
    <p class="total"><b>${points}</b> ${words.points(points, of).replace(String(points), '')}</p>
    <p class="hint">${words.patient(patient.code)}. ${words.bedside}: ${timeSaid(seconds, speech)}.</p>
    ${warnings(out.sheet, speech)} ${marksTable(out, round, speech)} ${causeNote(right, round.answer, speech)}
    ${text ? html`<p class="author">${textIn(text, speech.tag)}</p>` : nothing}
    ${right.silent.length ? html`<p>${words.silent}: ${lesionsSaid(right.silent, speech)}.</p>` : nothing}
    ${section(words.rule, rule.length ? rule.map((one) => html`<p>${one}</p>`) : undefined, words.ruleNothing)}
    ${tellings(out, speech)} ${comparison(patient, round, speech)}
    <p class="hint">${words.invented} ${words.notAdvice}</p>
  </section>`;
}

export const sheetStyles = css`
  .sheet {
    container-type: inline-size;
  }
  /* Four columns do not fit a narrow sheet: what is marked stands above what was answered and what is there. */
  @container (max-width: 460px) {
    .wide tr {
      display: grid;
      grid-template-columns: repeat(2, minmax(0, 1fr)) minmax(0, auto);
      border-block-start: 1px solid var(--_line);
    }
    .compared .wide tr {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
    .wide th,
    .wide td {
      border: 0;
    }
    .wide thead tr > :first-child {
      display: none;
    }
    .wide tbody th {
      grid-column: 1 / -1;
      padding-block-end: 0;
    }
  }
`;
