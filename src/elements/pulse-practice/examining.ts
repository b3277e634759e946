import { html, nothing, type TemplateResult } from 'lit';
import { type PlaceKey, placeFromKey } from '../../anatomy/index.js';
import {
  findsAnything,
  type HiddenPatient,
  PRACTICE_ACTS,
  type PracticeAct,
  type PracticeActId,
  practiceActId,
  practiceActOf,
  type Round,
  secondsOf,
} from '../../practice/index.js';
import { actSaid, findingsSaid, foundSaid, type Speech, timeSaid } from './said.js';

/** What is in the learner's hand. */
export const TOOLS = ['feel', 'listen', 'doppler'] as const;
export type Tool = (typeof TOOLS)[number];

export interface ExaminingView {
  readonly patient: HiddenPatient;
  readonly round: Round;
  /** Site last touched. */
  readonly open: PlaceKey | undefined;
  readonly last: PracticeActId | undefined;
  readonly speech: Speech;
  readonly perform: (id: PracticeActId) => void;
  readonly close: () => void;
  readonly name: () => void;
}

type Group = 'ask' | 'look' | 'hand' | 'pressures' | 'tests';
const GROUP_OF: Readonly<Partial<Record<PracticeAct['kind'], Group>>> = {
  ask: 'ask',
  look: 'look',
  feeling: 'look',
  circulation: 'hand',
  rhythm: 'hand',
  delay: 'hand',
  vertebral: 'hand',
  cuff: 'pressures',
  exercise: 'pressures',
  test: 'tests',
};
const GROUPS: readonly Group[] = ['ask', 'look', 'hand', 'pressures', 'tests'];

/** What can be done at a site, in the order of the tools; nothing that there is no act for. */
const actsAt = (place: PlaceKey): readonly PracticeActId[] =>
  TOOLS.map((tool) => `${tool} ${place}`).filter((id) => practiceActOf(id));

/** What one act found: with the tools that can also be put there. */
function card({
  patient,
  round,
  open,
  last,
  speech,
  perform,
  close,
}: ExaminingView): TemplateResult | typeof nothing {
  const act = last === undefined ? undefined : practiceActOf(last);
  if (!last || !act) return nothing;
  const words = speech.parts.practice;
  const more = open ? actsAt(open).filter((id) => !round.acts.includes(id)) : [];
  return html`<section class="card" role="dialog" aria-label=${actSaid(last, speech)}>
    <p class="head"><b>${actSaid(last, speech)}</b><span>${timeSaid(secondsOf(act), speech)}</span></p>
    <p class="finding">${foundSaid(patient.find(act), speech)}</p>
    <p class="row">
      ${
        more.length
          ? html`<span class="hint">${words.hereToo}</span>
              ${more.map((id) => actButton(id, speech, perform))}`
          : nothing
      }
      <button type="button" class="button bare" @click=${close}>${words.close}</button>
    </p>
  </section>`;
}

function actButton(id: PracticeActId, speech: Speech, perform: (id: PracticeActId) => void): TemplateResult {
  const act = practiceActOf(id)!;
  const tool = act.kind === 'feel' || act.kind === 'listen' || act.kind === 'doppler' ? act.kind : undefined;
  return html`<button type="button" class="button" @click=${() => perform(id)}>
    ${tool ? speech.parts.practice.tool[tool] : actSaid(id, speech)}
    <span class="hint">${timeSaid(secondsOf(act), speech)}</span>
  </button>`;
}

/** What else can be done, by kind; what was done is told, not offered again. */
function menu({ patient, round, speech, perform }: ExaminingView): TemplateResult {
  const words = speech.parts.practice;
  return html`<h3>${words.acts}</h3>
    ${GROUPS.map((group) => {
      const acts = PRACTICE_ACTS.filter((act) => GROUP_OF[act.kind] === group).filter((act) =>
        offered(act, patient),
      );
      return html`<details>
        <summary>${words.groups[group]}</summary>
        <ul class="acts">
          ${acts.map((act) => {
            const id = practiceActId(act);
            const done = round.acts.includes(id);
            return html`<li>
              <button
                type="button"
                class="button"
                data-act=${id}
                ?disabled=${done}
                @click=${() => perform(id)}
              >
                <span>${words.act(act)}</span>
                <span class="hint">${timeSaid(secondsOf(act), speech)}</span>
              </button>
            </li>`;
          })}
        </ul>
      </details>`;
    })}`;
}

/** Limbs that a lesson leaves out are not offered; whether an act finds anything is never told by whether it is offered. */
function offered(act: PracticeAct, { limbs }: HiddenPatient): boolean {
  if (act.kind === 'look' || act.kind === 'feeling') return limbs.includes(act.limb.kind);
  return true;
}

function isAtWrist(id: PracticeActId): boolean {
  const act = practiceActOf(id);
  return act?.kind === 'doppler' && (act.place.site === 'radial' || act.place.site === 'ulnar');
}

/** What was found so far, the latest first. */
export function foundList({
  patient,
  round,
  speech,
}: Pick<ExaminingView, 'patient' | 'round' | 'speech'>): TemplateResult {
  const words = speech.parts.practice;
  return html`<h3>${words.found}</h3>
    ${
      round.acts.length
        ? html`<ol class="log" reversed>
            ${[...round.acts].reverse().map((id) => {
              const act = practiceActOf(id)!;
              const lines = findingsSaid(patient.find(act), speech);
              const abnormal = lines.some(({ weight }) => weight === 'abnormal');
              return html`<li class=${abnormal ? 'abnormal' : ''}>
                <span class="did">${actSaid(id, speech)}</span>
                <span
                  >${findsAnything(patient, act) ? lines.map(({ text }) => text).join(' ') : words.nothingFound}</span
                >
              </li>`;
            })}
          </ol>`
        : html`<p class="hint">${words.nothingYet}</p>`
    }
    ${round.acts.some(isAtWrist) ? html`<p class="hint">${words.wristSignal}</p>` : nothing}`;
}

/** The side of the map while the patient is examined. */
export function renderExamining(view: ExaminingView): TemplateResult {
  const words = view.speech.parts.practice;
  return html`<div class="card-room" aria-live="polite">${card(view)}</div>
    ${view.round.acts.length ? nothing : html`<p class="hint">${words.touch}</p>`} ${menu(view)}
    ${foundList(view)}
    <p class="row end">
      <button type="button" class="button solid" @click=${view.name}>${words.nameIt}</button>
    </p>`;
}

/** The act that a tool does at a site: its own where there is one, else what can be done there. */
export function actFor(tool: Tool, place: PlaceKey): PracticeActId | undefined {
  if (!placeFromKey(place)) return undefined;
  const id = `${tool} ${place}`;
  return practiceActOf(id) ? id : actsAt(place)[0];
}
