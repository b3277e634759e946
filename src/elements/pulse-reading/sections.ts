import { html, nothing, svg, type TemplateResult } from 'lit';
import { limbKey, type LimbKey, type Place } from '../../anatomy/index.js';
import { type Examination, isBruitLocked, isPulseLocked } from '../../examination/index.js';
import type { ActKind, LimbDetail, LimbReading, LimbRule, Whereabouts } from '../../localisation/index.js';
import { firstUses } from '../../locale/first-use.js';
import type { FlagWords } from '../../locale/flags.js';
import type { Messages } from '../../locale/index.js';
import { sentence } from '../../locale/phrases.js';
import {
  beginsStatements,
  causeStatements,
  evidenceStatements,
  firmStatement,
  furtherStatements,
  flagQuestions,
  nextStatements,
  occludedStatements,
  natureStatements,
  type ReadNetwork,
  storyStatement,
  voicesStatement,
} from '../../statements/index.js';
import { styled } from '../common/styled.js';
import { openButton } from './open-button.js';

/** Least weight that fills its half of the axis, in nats; a heavier finding fills it instead. */
const FULL_WEIGHT = 1.5;

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

const BLAMED = { entry: 'trouble', open: 'fine', elsewhere: 'rest' } as const;

/** Which stretch takes the pulse away, how that divides, and whether the two voices agree on it. */
export function occludedSection(
  reading: LimbReading,
  where: Whereabouts | undefined,
  rule: LimbRule,
  words: Messages,
): TemplateResult {
  const { localisation } = words;
  const voices = voicesStatement(rule, reading);
  return html`<div class="part">
    <h4>${localisation.occludedHeading}</h4>
    ${
      where
        ? html`<ul class="bars">
              ${bar(localisation.stretch(where), where.probability, 'trouble', true, words)}
            </ul>
            <h5>${localisation.byArtery}</h5>`
        : nothing
    }
    <ul class="bars ${where ? 'within' : ''}">
      ${occludedStatements(reading).map((row, i) =>
        bar(localisation.occluded(row), row.probability, BLAMED[row.code], i === 0 && !where, words),
      )}
    </ul>
    ${voices ? agreement(localisation.voices(voices)) : nothing}
  </div>`;
}

const ROWS = { answer: 'trouble', nothing: 'fine', elsewhere: 'rest' } as const;

/** Where disease begins in a limb, told where that is not what takes the pulse away. */
export function beginsSection(reading: LimbReading, words: Messages): TemplateResult | typeof nothing {
  const { localisation } = words;
  const { first, headline } = reading;
  if (!first || first.pieces.some((piece) => headline?.pieces.includes(piece))) return nothing;
  return html`<div class="part">
    <h4>${localisation.beginsHeading}</h4>
    <ul class="bars">
      ${beginsStatements(reading).map((row, i) =>
        bar(localisation.begins(row), row.probability, ROWS[row.code], i === 0, words),
      )}
    </ul>
  </div>`;
}

function agreement({ claim, why }: { claim: string; why: string }): TemplateResult {
  return html`<p class="why">${claim ? html`<b>${claim}</b> ` : nothing}${why}</p>`;
}

/** Lesions beside the first, where likely enough. */
export function furtherSection(
  detail: LimbDetail,
  rule: LimbRule,
  words: Messages,
): TemplateResult | typeof nothing {
  const told = furtherStatements(detail);
  if (!told.length) return nothing;
  return html`<div class="part" data-limb=${limbKey(rule.limb)}>
    <h4>${words.localisation.furtherHeading}</h4>
    <ul class="bars">
      ${told.map((one) => bar(words.localisation.further(one), one.probability, 'trouble', false, words))}
    </ul>
  </div>`;
}

/** What normal pulses leave open. */
export function notExcludedLine(reading: LimbReading, words: Messages): TemplateResult | typeof nothing {
  const { notExcluded } = reading;
  return notExcluded.length
    ? html`<p class="why">${words.localisation.notExcluded(notExcluded)}</p>`
    : nothing;
}

/** Findings that can hardly be right together. */
export function conflictSection(network: ReadNetwork, words: Messages): TemplateResult | typeof nothing {
  const { conflicts } = network;
  if (!conflicts.length) return nothing;
  return html`<section class="check">
    <h4>${words.rule.checkAgain}</h4>
    ${conflicts.map((one) => html`<p>${words.localisation.conflict(one)}</p>`)}
  </section>`;
}

/** What lies behind the findings, in words. */
export function natureSection(network: ReadNetwork, words: Messages): TemplateResult | typeof nothing {
  const told = natureStatements(network);
  if (!told.length) return nothing;
  return html`<section class="nature">
    <h4>${words.localisation.natureHeading}</h4>
    ${told.map((one) => html`<p>${words.localisation.nature(one)}</p>`)}
  </section>`;
}

/** What each finding speaks for, on one axis. */
export function evidenceSection(
  detail: LimbDetail,
  numbers: boolean,
  { localisation }: Messages,
): TemplateResult | typeof nothing {
  const told = evidenceStatements(detail);
  if (!told.length) return nothing;
  const full = Math.max(FULL_WEIGHT, ...told.map(({ weight }) => Math.abs(weight)));
  return html`<div class="part">
    <h4>${localisation.evidenceHeading}</h4>
    <div class="axis" aria-hidden="true">
      <span><span>${localisation.ways.against}</span><span>${localisation.ways.for}</span></span>
    </div>
    <ul class="evidence">
      ${told.map((one) => {
        const width = `${((Math.abs(one.weight) / full) * 50).toFixed(1)}%`;
        return html`<li>
          <span class="tick ${one.way === 'for' ? 'pro' : 'contra'}" aria-hidden="true"
            ><i ${styled({ 'inline-size': width })}></i
          ></span>
          <span
            >${localisation.finding(one.finding)}<span class=${numbers ? 'hint weight' : 'hidden-visually'}
              >${numbers ? localisation.weight(one) : `, ${localisation.ways[one.way]}`}</span
            ></span
          >
        </li>`;
      })}
    </ul>
  </div>`;
}

const SQUARES = { firm: 3, 'fairly-firm': 2, 'not-firm': 1 } as const;

export function firmSection(detail: LimbDetail, rule: LimbRule, { localisation }: Messages): TemplateResult {
  const firm = firmStatement(detail, rule);
  const filled = SQUARES[firm.code];
  return html`<div class="part">
    <h4>${localisation.howFirm}</h4>
    <p class="firm">
      <svg width="42" height="12" viewBox="0 0 42 12" aria-hidden="true">
        ${[0, 1, 2].map(
          (i) =>
            svg`<rect class=${i < filled ? 'full' : 'blank'} x=${1 + i * 14} y="1" width="10" height="10" rx="1.5"></rect>`,
        )}
      </svg>
      <span>${localisation.firm(firm)}</span>
    </p>
  </div>`;
}

interface NextView {
  readonly examination: Examination;
  readonly can?: readonly ActKind[] | undefined;
  readonly words: Messages;
  readonly flagWords: FlagWords;
}

/** What to do next, with a button where a site has to be opened for it. */
function ask(
  { name, why, place }: { name: string; why: string; place?: Place | undefined },
  { localisation, anatomy }: Messages,
): TemplateResult {
  return html`<section class="next">
    <h4>${localisation.nextHeading}</h4>
    <div class="ask">
      <p><b>${name}</b><span class="hint">${why}</span></p>
      ${place ? openButton(place, `${localisation.openNow}: ${anatomy.place(place)}`, localisation.openNow) : nothing}
    </div>
  </section>`;
}

/** Whether what an act would record stands there already, in a way that this version cannot read or change. */
function isActLocked(examination: Examination, act: ReadNetwork['next'][number]['act']): boolean {
  if (!('place' in act) || !act.place) return false;
  return (act.kind === 'listen' ? isBruitLocked : isPulseLocked)(examination, act.place);
}

/**
 * What to do next: first what a red flag asks, then what localises best, or at the bedside would change much.
 * @param can the kinds of act that the form around can record; a form that only shows asks for nothing
 */
export function nextSection(
  network: ReadNetwork,
  { examination, can, words, flagWords }: NextView,
): TemplateResult | typeof nothing {
  if (can?.length === 0) return nothing;
  const [asked] = flagQuestions(examination, network, can);
  if (asked) {
    const question = firstUses(flagWords.abbreviations)(flagWords.questions[asked.code]);
    const name = asked.limb ? `${sentence(words.anatomy.limbs[limbKey(asked.limb)])}: ${question}` : question;
    return ask({ name, why: words.localisation.flagAsks() }, words);
  }
  const next = network.next.filter(
    ({ act }) => (!can || can.includes(act.kind)) && !isActLocked(examination, act),
  );
  // What only another form can record is still left at the bedside.
  if (!next.length && network.next.length && !network.settle) return nothing;
  const [told] = nextStatements({ ...network, next });
  if (!told) return nothing;
  const { name, why } = words.localisation.next(told);
  const place = told.code === 'act' && 'place' in told.act ? told.act.place : undefined;
  return ask({ name, why, place }, words);
}

/** All probabilities as numbers. */
export function numbersSection(
  network: ReadNetwork,
  told: readonly LimbKey[],
  words: Messages,
): TemplateResult {
  const { localisation, anatomy, reading } = words;
  const story = storyStatement(network);
  return html`<section>
    <h4>${localisation.numbers}</h4>
    <p class="why">${localisation.story(story)} ${reading.percent(story.probability)}</p>
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
                  <td>${reading.percent(probability)}</td>
                </tr>`,
            )}
            <tr>
              <th scope="row">${localisation.nothing}</th>
              <td>${reading.percent(network.limbs[limb].nothing)}</td>
            </tr>
          </tbody>
        </table>`,
    )}
    <table class="numbers">
      <caption>
        ${localisation.causesHeading}
      </caption>
      <tbody>
        ${causeStatements(network).map(
          ({ cause, probability }) =>
            html`<tr>
              <th scope="row">${localisation.causes[cause]}</th>
              <td>${reading.percent(probability)}</td>
            </tr>`,
        )}
      </tbody>
    </table>
  </section>`;
}
