import { html, type TemplateResult } from 'lit';
import { type Level, type LimbKey, SIDES } from '../../anatomy/index.js';
import { ACUTE_CLASSES, FONTAINE_STAGES } from '../../examination/index.js';
import {
  FIRST_STEPS,
  type HiddenPatient,
  type NamedStage,
  PRACTICE_CAUSES,
  type PracticeAnswer,
} from '../../practice/index.js';
import { URGENCY_ORDER } from '../../triage/index.js';
import type { Speech } from './said.js';

/** Levels that can be named of each limb. */
const LEVELS_OF: Readonly<Record<'leg' | 'arm', readonly Level[]>> = {
  leg: ['central', 'aorto-iliac', 'femoro-popliteal', 'infrapopliteal'],
  arm: ['arm-inflow', 'axillo-brachial', 'forearm-hand'],
};

const NAMED_STAGES: readonly NamedStage[] = [
  ...FONTAINE_STAGES.map((stage): NamedStage => `fontaine ${stage}`),
  ...ACUTE_CLASSES.map((stage): NamedStage => `acute ${stage}`),
];

/** A stage with the name of its scheme. */
export function stageSaid(stage: NamedStage, { parts }: Speech): string {
  const [scheme, value] = stage.split(' ');
  return `${scheme === 'acute' ? parts.practice.acuteStage : 'Fontaine'} ${value}`;
}

/** The questions with one choice, each with its choices in words, in their order. */
export function choicesOf(speech: Speech): {
  readonly name: 'cause' | 'stage' | 'urgency' | 'first';
  readonly legend: string;
  readonly choices: readonly (readonly [value: string, text: string])[];
}[] {
  const words = speech.parts.practice;
  return [
    { name: 'cause', legend: words.cause, choices: PRACTICE_CAUSES.map((one) => [one, words.causes[one]]) },
    { name: 'stage', legend: words.stage, choices: NAMED_STAGES.map((one) => [one, stageSaid(one, speech)]) },
    {
      name: 'urgency',
      legend: words.urgency,
      choices: URGENCY_ORDER.map((one) => [one, words.urgencies[one]]),
    },
    { name: 'first', legend: words.first, choices: FIRST_STEPS.map((one) => [one, words.firsts[one]]) },
  ];
}

export interface AnsweringView {
  readonly patient: HiddenPatient;
  readonly answer: PracticeAnswer;
  readonly speech: Speech;
  /** Changes what stands at that moment, however many changes come at once. */
  readonly change: (change: (answer: PracticeAnswer) => PracticeAnswer) => void;
  readonly back: () => void;
  readonly show: () => void;
}

function places({ patient, answer, speech, change }: AnsweringView): TemplateResult {
  const { messages, parts } = speech;
  const words = parts.practice;
  const { lesions } = answer;
  const named = (limb: LimbKey, level: Level): boolean =>
    lesions?.some((one) => one.limb === limb && one.level === level) ?? false;
  const toggle = (limb: LimbKey, level: Level, on: boolean): void =>
    change(({ lesions: before = [], ...others }) => {
      const rest = before.filter((one) => one.limb !== limb || one.level !== level);
      const next = on ? [...rest, { limb, level }] : rest;
      return next.length ? { ...others, lesions: next } : others;
    });
  const none = (on: boolean): void =>
    change(({ lesions: _before, ...others }) => (on ? { ...others, lesions: [] } : others));
  return html`<fieldset>
    <legend>${words.where}</legend>
    <div class="limbs">
      ${(['leg', 'arm'] as const)
        .filter((kind) => patient.limbs.includes(kind))
        .flatMap((kind) =>
          SIDES.map((side) => {
            const limb: LimbKey = `${side} ${kind}`;
            return html`<div class="limb" role="group" aria-label=${messages.anatomy.limbs[limb]}>
              <p class="hint">${messages.anatomy.limbs[limb]}</p>
              ${LEVELS_OF[kind].map(
                (level) =>
                  html`<label class="chip"
                    ><input
                      type="checkbox"
                      name=${`${limb} ${level}`}
                      .checked=${named(limb, level)}
                      @change=${(event: Event) => toggle(limb, level, (event.target as HTMLInputElement).checked)}
                    /><span>${messages.anatomy.levels[level]}</span></label
                  >`,
              )}
            </div>`;
          }),
        )}
    </div>
    <label class="chip"
      ><input
        type="checkbox"
        name="none"
        .checked=${lesions?.length === 0}
        @change=${(event: Event) => none((event.target as HTMLInputElement).checked)}
      /><span>${words.noDisease}</span></label
    >
  </fieldset>`;
}

/** The form in which the learner names what is wrong. */
export function renderAnswering(view: AnsweringView): TemplateResult {
  const { answer, speech, change, back, show } = view;
  const words = speech.parts.practice;
  return html`<form
    class="answer"
    @submit=${(event: Event) => {
      event.preventDefault();
      show();
    }}
  >
    <h3 tabindex="-1">${words.nameIt}</h3>
    ${places(view)}
    ${choicesOf(speech).map(
      ({ name, legend, choices }) =>
        html`<fieldset>
          <legend>${legend}</legend>
          <div class="chips">
            ${choices.map(
              ([value, text]) =>
                html`<label class="chip"
                  ><input
                    type="radio"
                    name=${name}
                    value=${value}
                    .checked=${answer[name] === value}
                    @change=${() => change((before) => ({ ...before, [name]: value }))}
                  /><span>${text}</span></label
                >`,
            )}
          </div>
        </fieldset>`,
    )}
    <p class="hint">${words.once}</p>
    <p class="row end">
      <button type="button" class="button" @click=${back}>${words.back}</button>
      <button class="button solid">${words.show}</button>
    </p>
  </form>`;
}
