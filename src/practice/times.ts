import type { PracticeAct, PracticeActKind, PracticeCuff, PracticeTest } from './acts.js';

/*
 * What an act costs at the bedside, in seconds. Common practice, no source, save where one is named; they are to make a learner choose,
 * not to time anyone.
 */

const OF_KIND: Readonly<Record<Exclude<PracticeActKind, 'cuff' | 'test' | 'feel'>, number>> = {
  ask: 60,
  look: 30,
  feeling: 45,
  circulation: 60,
  /** A full minute, as an irregular pulse is counted. */
  rhythm: 60,
  listen: 20,
  doppler: 45,
  vertebral: 90,
  delay: 20,
  /** Five minutes of walking (Aboyans V et al., Circulation 2012;126:2890, from memory), and the cuffs after it. */
  exercise: 600,
};

/** Feeling for a pulse; those that lie deep take longer. */
const FEEL = 15;
const FEEL_DEEP: Readonly<Record<string, number>> = {
  'abdominal-aorta': 40,
  popliteal: 40,
  'dorsalis-pedis': 20,
  'posterior-tibial': 20,
};

const OF_CUFF: Readonly<Record<PracticeCuff, number>> = {
  arm: 60,
  wrist: 180,
  ankle: 150,
  toe: 180,
  thigh: 270,
};

const OF_TEST: Readonly<Record<PracticeTest, number>> = {
  elevation: 90,
  'colour-return': 60,
  'venous-filling': 60,
  'hand-arch': 60,
  scalene: 60,
  costoclavicular: 60,
  hyperabduction: 60,
  /** Three minutes (Roos DB 1979, from memory). */
  'arm-stress': 180,
};

/** Lying still before the first pressure: five to ten minutes (Aboyans V et al., Circulation 2012;126:2890). */
export const REST_BEFORE_CUFFS = 300;

/** Seconds that one act takes, without the rest before the first cuff. */
export function secondsOf(act: PracticeAct): number {
  if (act.kind === 'cuff') return OF_CUFF[act.cuff];
  if (act.kind === 'test') return OF_TEST[act.test];
  if (act.kind === 'feel') return FEEL_DEEP[act.place.site] ?? FEEL;
  return OF_KIND[act.kind];
}

/** Seconds at the bedside for acts in their order. */
export function secondsFor(acts: readonly PracticeAct[]): number {
  const rest = acts.some(({ kind }) => kind === 'cuff' || kind === 'exercise') ? REST_BEFORE_CUFFS : 0;
  return acts.reduce((sum, act) => sum + secondsOf(act), rest);
}
