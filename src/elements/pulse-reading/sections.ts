import { html, nothing, svg, type TemplateResult } from 'lit';
import { limbKey, type LimbKey, pieceFromKey, piecesTo } from '../../anatomy/index.js';
import type { LimbDetail, LimbReading, LimbRule, NetworkReading, NextAct } from '../../localisation/index.js';
import { voicesAgree } from '../../localisation/index.js';
import type { Messages } from '../../locale/index.js';
import { styled } from '../common/styled.js';
import { openButton } from './open-button.js';

export type ReadNetwork = NetworkReading & { status: 'read' };

/** Answers are shown until they hold this much of the probability, at most so many. */
const ENOUGH = 0.9;
const MOST_ANSWERS = 4;
/** A second lesion is told from this probability on. */
const LEAST_DOWNSTREAM = 0.3;
/** Least weight that fills its half of the axis, in nats; a heavier finding fills it instead. */
const FULL_WEIGHT = 1.5;
/** Lighter findings are not told. */
const LEAST_WEIGHT = 0.1;
const MOST_FINDINGS = 5;

function bar(
  name: string,
  probability: number,
  kind: 'trouble' | 'fine' | 'rest',
  first: boolean,
  { reading }: Messages,
): TemplateResult {
  return html`<li class="bar ${kind} ${first ? 'first' : ''}">
    <span>${name}</span>
    <span class="track" aria-hidden="true"
      ><i ${styled({ 'inline-size': percentWidth(probability) })}></i
    ></span>
    <span class="figure">${reading.percent(probability)}</span>
  </li>`;
}

function percentWidth(probability: number): string {
  return `${Math.max(probability * 100, probability > 0 ? 1.5 : 0).toFixed(1)}%`;
}

/** Where trouble begins in a limb, most probable first, "no block shown" among the answers; sums to all. */
export function beginsSection(reading: LimbReading, rule: LimbRule, words: Messages): TemplateResult {
  const { localisation } = words;
  const shown: LimbReading['answers'][number][] = [];
  let sum = 0;
  for (const answer of reading.answers) {
    if (shown.length === MOST_ANSWERS || sum + reading.nothing >= ENOUGH) break;
    shown.push(answer);
    sum += answer.probability;
  }
  if (!shown.length && reading.answers[0]) {
    shown.push(reading.answers[0]);
    sum += reading.answers[0].probability;
  }
  const rows = [
    ...shown.map((answer) => ({
      name: localisation.answer(answer),
      probability: answer.probability,
      kind: 'trouble' as const,
    })),
    { name: localisation.nothing, probability: reading.nothing, kind: 'fine' as const },
  ].sort((a, b) => b.probability - a.probability);
  const rest = Math.max(0, 1 - sum - reading.nothing);
  return html`<div class="part">
    <h4>${localisation.begins}</h4>
    <ul class="bars">
      ${rows.map((row, i) => bar(row.name, row.probability, row.kind, i === 0, words))}
      ${rest >= 0.005 ? bar(localisation.elsewhere, rest, 'rest', false, words) : nothing}
    </ul>
    ${agreement(reading, rule, words)}
  </div>`;
}

function agreement(
  reading: LimbReading,
  rule: LimbRule,
  { localisation }: Messages,
): TemplateResult | typeof nothing {
  if (voicesAgree(rule, reading)) {
    return rule.lesions.length ? html`<p class="why">${localisation.agree}</p>` : nothing;
  }
  if (!reading.first) {
    return html`<p class="why"><b>${localisation.disagree}</b> ${localisation.disagreeNone}</p>`;
  }
  const answer = localisation.pieces(reading.first.pieces);
  if (!rule.lesions.length) return html`<p class="why"><b>${localisation.ruleSilent(answer)}</b></p>`;
  return html`<p class="why"><b>${localisation.disagree}</b> ${localisation.disagreeWhy(answer)}</p>`;
}

/** A second lesion beyond the first answer, where one is likely enough. */
export function downstreamSection(
  network: ReadNetwork,
  reading: LimbReading,
  rule: LimbRule,
  words: Messages,
): TemplateResult | typeof nothing {
  const { first } = reading;
  const last = first?.pieces.at(-1);
  if (!first || !last) return nothing;
  const limb = limbKey(rule.limb);
  // Other pieces of the stretch that the first lesion lies in are other answers, not further lesions.
  const own = rule.lesions[0]?.pieces ?? [];
  const beyond = reading.answers
    .flatMap((answer) => answer.pieces)
    .filter((key) => {
      const piece = pieceFromKey(key);
      if (!piece || own.includes(key) || first.pieces.includes(key)) return false;
      return piecesTo(piece).some((above) => above.key === last);
    })
    .map((piece) => {
      const { narrowed, blocked } = network.pieces[piece];
      const state = blocked >= narrowed ? ('blocked' as const) : ('narrowed' as const);
      return { piece, state, probability: narrowed + blocked };
    })
    .filter((one) => one.probability >= LEAST_DOWNSTREAM)
    .sort((a, b) => b.probability - a.probability)
    .slice(0, 2);
  if (!beyond.length) return nothing;
  return html`<div class="part" data-limb=${limb}>
    <h4>${words.localisation.downstream}</h4>
    <ul class="bars">
      ${beyond.map((one) =>
        bar(
          words.localisation.downstreamState(one.piece, one.state),
          one.probability,
          'trouble',
          false,
          words,
        ),
      )}
    </ul>
  </div>`;
}

/** What each finding speaks for, on one axis. */
export function evidenceSection(
  { evidence }: LimbDetail,
  numbers: boolean,
  { localisation }: Messages,
): TemplateResult | typeof nothing {
  const told = evidence.filter(({ weight }) => Math.abs(weight) >= LEAST_WEIGHT).slice(0, MOST_FINDINGS);
  if (!told.length) return nothing;
  const full = Math.max(FULL_WEIGHT, ...told.map(({ weight }) => Math.abs(weight)));
  return html`<div class="part">
    <h4>${localisation.evidence}</h4>
    <div class="axis" aria-hidden="true">
      <span><span>${localisation.against}</span><span>${localisation.for}</span></span>
    </div>
    <ul class="evidence">
      ${told.map(({ finding, weight }) => {
        const width = `${((Math.abs(weight) / full) * 50).toFixed(1)}%`;
        const way = weight > 0 ? 'pro' : 'contra';
        return html`<li>
          <span class="tick ${way}" aria-hidden="true"><i ${styled({ 'inline-size': width })}></i></span>
          <span
            >${localisation.finding(finding)}<span class=${numbers ? 'hint weight' : 'hidden-visually'}
              >${numbers ? localisation.weight(weight) : `, ${weight > 0 ? localisation.for : localisation.against}`}</span
            ></span
          >
        </li>`;
      })}
    </ul>
  </div>`;
}

const SQUARES = { firm: 3, 'fairly-firm': 2, 'not-firm': 1 } as const;

export function firmSection(
  { firm }: LimbDetail,
  unstated: number,
  limb: LimbKey,
  { localisation }: Messages,
): TemplateResult {
  const filled = SQUARES[firm.grade];
  return html`<div class="part">
    <h4>${localisation.howFirm}</h4>
    <p class="firm">
      <svg width="42" height="12" viewBox="0 0 42 12" aria-hidden="true">
        ${[0, 1, 2].map(
          (i) =>
            svg`<rect class=${i < filled ? 'full' : 'blank'} x=${1 + i * 14} y="1" width="10" height="10" rx="1.5"></rect>`,
        )}
      </svg>
      <span>${localisation.firm(firm.grade, firm.overturned, unstated, limb)}</span>
    </p>
  </div>`;
}

/** The act that would tell most. */
export function nextSection(next: readonly NextAct[], words: Messages): TemplateResult | typeof nothing {
  const [first] = next;
  if (!first) return nothing;
  const { name, why } = words.localisation.act(first.act);
  const { act } = first;
  return html`<section class="next">
    <h4>${words.localisation.next}</h4>
    <div class="ask">
      <p><b>${name}</b><span class="hint">${why}</span></p>
      ${
        'place' in act
          ? openButton(act.place, words.reading.open(act.place), words.localisation.openNow)
          : nothing
      }
    </div>
  </section>`;
}

/** Everything as figures, for those who want them. */
export function numbersSection(
  network: ReadNetwork,
  told: readonly LimbKey[],
  words: Messages,
): TemplateResult {
  const { localisation, anatomy, reading } = words;
  const causes = Object.entries(network.causes)
    .filter(([, probability]) => probability >= 0.01)
    .sort(([, a], [, b]) => b - a) as [keyof typeof localisation.causes, number][];
  return html`<section>
    <h4>${localisation.numbers}</h4>
    <p class="why">
      ${localisation.story(network.story.cause, network.story.lesions)}
      ${reading.percent(network.story.probability)}
    </p>
    ${told.map(
      (limb) =>
        html`<table class="numbers">
          <caption>
            ${words.reading.levelsOf(limb)}
          </caption>
          <tbody>
            ${network.limbs[limb].levels.map(
              ({ level, probability }) =>
                html`<tr>
                  <th scope="row">${anatomy.levels[level]}</th>
                  <td>${reading.exactPercent(probability)}</td>
                </tr>`,
            )}
            <tr>
              <th scope="row">${localisation.nothing}</th>
              <td>${reading.exactPercent(network.limbs[limb].nothing)}</td>
            </tr>
          </tbody>
        </table>`,
    )}
    <table class="numbers">
      <caption>
        ${localisation.causesHeading}
      </caption>
      <tbody>
        ${causes.map(
          ([cause, probability]) =>
            html`<tr>
              <th scope="row">${localisation.causes[cause]}</th>
              <td>${reading.exactPercent(probability)}</td>
            </tr>`,
        )}
      </tbody>
    </table>
  </section>`;
}
