import type { Examination } from '../examination/index.js';
import type { LimbState } from './limb.js';
import type { StagedLimb } from './record.js';
import type { TriageSettings } from './settings.js';

/** What can be asked or examined next, in the order in which it is asked. */
export const QUESTION_CODES = [
  'onset',
  'movement',
  'sensation',
  'arterial-doppler',
  'venous-doppler',
  'other-pulses',
  'passive-stretch',
  'background',
  'distal-pulses',
  'ankle-index',
  'forearm-index',
  'other-side-index',
  'abdominal-or-back-pain',
  'chest-or-back-pain',
  'other-popliteal-and-aorta',
  'pad-tests',
  'toe',
  'diabetes',
  'old-deficit',
  'marks-unrecorded',
] as const;
export type QuestionCode = (typeof QUESTION_CODES)[number];

/** A question on its own: it calls for nobody yet. */
export interface Question {
  readonly code: QuestionCode;
  readonly limb?: StagedLimb;
}

/** The questions on a limb's circulation, in order, that the record does not answer yet. */
export function openQuestions(
  state: LimbState,
  limbs: readonly LimbState[],
  { history }: Pick<Examination, 'history'>,
): QuestionCode[] {
  const { facts, began } = state;
  const { inspection, flow, ends, kind, pulses } = facts;
  const other = limbs.find(({ limb }) => limb.kind === kind && limb.side !== facts.side);
  const unfelt = (site: string) => pulses.some((pulse) => pulse.site === site && pulse.state === 'unknown');
  const timed = began.hours !== undefined && began.state !== 'unknown';
  const asked: readonly (readonly [QuestionCode, boolean])[] = [
    ['onset', !timed && began.state !== 'chronic' && !began.cannotTell],
    ['movement', inspection.movement === undefined],
    ['sensation', inspection.sensation === undefined],
    // What was felt says too little here: a signal is wanted at each end.
    ['arterial-doppler', ends.length > 0 && !flow.silent && !ends.some((end) => end.audible)],
    ['venous-doppler', ends.length > 0 && inspection.venousDoppler === undefined],
    [
      'other-pulses',
      unfelt(kind === 'leg' ? 'femoral' : 'brachial') ||
        other?.facts.ends.every(({ state: end }) => end === 'unknown') === true,
    ],
    ['passive-stretch', inspection.muscle === undefined || inspection.stretchPain === undefined],
    ['background', history?.rhythm === undefined],
  ];
  return asked.filter(([, open]) => open).map(([code]) => code);
}

/** The questions a limb calls for: the onset first, everything from more points on. */
export function limbQuestions(
  state: LimbState,
  limbs: readonly LimbState[],
  examination: Pick<Examination, 'history'>,
  { ask }: TriageSettings,
): QuestionCode[] {
  const open = openQuestions(state, limbs, examination);
  if (state.sum >= ask.all || state.urgency === 'now') return open;
  return state.sum >= ask.onset ? open.filter((code) => code === 'onset') : [];
}
