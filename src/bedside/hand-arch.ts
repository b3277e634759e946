import type { BarbeauClass, BedsideResult } from '../examination/index.js';
import {
  type ArteryVerdict,
  type BedsideReading,
  type BedsideTest,
  INCOMPLETE,
  limitFor,
  type Limits,
  NOT_DONE,
  over,
} from './test.js';

const BARBEAU = 'Barbeau GR et al., Am Heart J 2004;147:489-493, doi:10.1016/j.ahj.2003.10.038';
const EJRUP = 'Ejrup B, Fischer B, Wright IS, Circulation 1966;33:778-780';

/** Upper limit of the palm's refill time, in seconds. Published limits range from 5 to 15. */
const limits: Limits = {
  unit: 's',
  usual: 9,
  options: [
    { value: 9, normalAt: true, source: BARBEAU },
    { value: 5, normalAt: false, source: 'surgical text chapter on radial artery harvest, Taylor & Francis' },
    { value: 6, normalAt: true, source: EJRUP },
    { value: 10, normalAt: true, source: 'anaesthesia texts (from memory)' },
    { value: 15, normalAt: true, source: 'encyclopaedia summary (5 to 15 s)' },
  ],
};

/** How long the fist is kept closed with both arteries pressed (modified test), or one of them (original test), in seconds. */
export const FIST_SECONDS = {
  modified: { value: 30, source: 'Wright IS 1952, as summarised' },
  original: { value: 60, source: 'Allen EV, Am J Med Sci 1929;178:237-244' },
} as const;

/** How the plethysmographic tracing behaves while the artery is pressed; D speaks against relying on the other artery. */
export const BARBEAU_TYPES: Readonly<
  Record<
    BarbeauClass,
    { tracing: 'undamped' | 'damped' | 'lost-recovers' | 'lost'; acceptable: boolean; source: string }
  >
> = {
  A: { tracing: 'undamped', acceptable: true, source: BARBEAU },
  B: { tracing: 'damped', acceptable: true, source: BARBEAU },
  C: { tracing: 'lost-recovers', acceptable: true, source: BARBEAU },
  D: { tracing: 'lost', acceptable: false, source: BARBEAU },
};
type Released = BedsideResult<'hand-arch'>['radial'];

/**
 * Verdict on the artery that was released: pink in time, pink late, or white throughout.
 * A palm that stays white means that this artery is blocked (common practice, no source).
 */
export function releasedArtery(release: Released, chosen?: number): ArteryVerdict | undefined {
  if (!release) return undefined;
  const { seconds, returned } = release;
  const option = limitFor(limits, chosen);
  if (returned === false) return seconds === undefined || over(seconds, option) ? 'blocked' : 'incomplete';
  if (seconds === undefined) return 'incomplete';
  return over(seconds, option) ? 'slow' : 'patent';
}

/** Both arteries of the hand are compressed, then one is released: does the palm turn pink? */
export const handArch: BedsideTest<'hand-arch'> = {
  id: 'hand-arch',
  eponym: 'Allen',
  limb: 'arm',
  limits,
  accuracy: {
    of: 'inadequate-collateral',
    sensitivity: 0.25,
    specificity: 0.828,
    source:
      'Di Santo P et al., CMAJ 2018;190:E380-E388, doi:10.1503/cmaj.170432 (modified form, against plethysmography)',
  },
  falsePositives: [
    {
      outcome: 'positive',
      percent: 34,
      people: 'healthy',
      count: 50,
      condition: { over: 5, posture: 'hand-straight' },
      source: EJRUP,
    },
    {
      outcome: 'positive',
      percent: 6.3,
      people: 'transradial-access',
      count: 1010,
      condition: { over: 9 },
      source: BARBEAU,
    },
  ],
  evaluate(result, chosen): BedsideReading<'hand-arch'> {
    if (result.notDone) return NOT_DONE(result.notDone);
    const { value: limit } = limitFor(limits, result.limit, chosen);
    const radial = releasedArtery(result.radial, limit);
    const ulnar = releasedArtery(result.ulnar, limit);
    const { barbeau, barbeauReverse } = result;
    const params = {
      ...(radial && { radial }),
      ...(ulnar && { ulnar }),
      ...(barbeau && { barbeau }),
      ...(barbeauReverse && { barbeauReverse }),
      ...(result.radial?.seconds !== undefined && { radialSeconds: result.radial.seconds }),
      ...(result.ulnar?.seconds !== undefined && { ulnarSeconds: result.ulnar.seconds }),
    };
    const types = [barbeau, barbeauReverse].flatMap((type) => type ?? []);
    const verdicts = [radial, ulnar];
    const base = { limit, params };
    const lost = types.some((type) => !BARBEAU_TYPES[type].acceptable);
    if (verdicts.includes('blocked')) return { verdict: 'severe', code: 'blocked', ...base };
    if (lost) {
      const pressed = barbeau && !BARBEAU_TYPES[barbeau].acceptable ? 'radial' : 'ulnar';
      return { verdict: 'severe', code: 'tracing-lost', limit, params: { ...params, pressed } };
    }
    if (verdicts.includes('slow')) return { verdict: 'abnormal', code: 'slow', ...base };
    if (radial === 'patent' && ulnar === 'patent') return { verdict: 'normal', code: 'patent', ...base };
    if (types.length && !verdicts.includes('incomplete') && !radial && !ulnar) {
      return { verdict: 'normal', code: 'tracing-kept', ...base };
    }
    return radial || ulnar || types.length
      ? { verdict: 'incomplete', code: 'one-artery', ...base }
      : INCOMPLETE;
  },
};
