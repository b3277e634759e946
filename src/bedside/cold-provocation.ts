import {
  type BedsideNote,
  type BedsideReading,
  type BedsideTest,
  INCOMPLETE,
  limitFor,
  type Limits,
  MEMORY,
  NOT_DONE,
} from './test.js';

const MAVERAKIS = 'Maverakis E et al., J Autoimmun 2014;48-49:60-65, doi:10.1016/j.jaut.2014.01.020';
const LABORATORY = `vascular laboratory texts, digital temperature recovery after ice water (${MEMORY})`;

/** Rewarming takes longer than this in an abnormal hand, in minutes. */
const limits: Limits = {
  unit: 'min',
  usual: 20,
  options: [
    { value: 20, normalAt: true, source: LABORATORY },
    { value: 10, normalAt: true, source: LABORATORY },
  ],
};

/** Usual rewarming time of a finger after ice water, in minutes, and the usual cold challenge. */
export const USUAL_REWARMING = { value: 15, source: LABORATORY } as const;
export const COLD_CHALLENGE = {
  celsius: 2,
  seconds: 20,
  source: LABORATORY,
} as const;
/** Colours of an attack, in order; white and blue are the minimum that counts. */
export const COLD_PHASES = { value: ['white', 'blue', 'red'], source: MAVERAKIS } as const;

/** The rewarming times belong to ice water for about 20 s; other water, 15 °C for 60 s say, has no limit of its own. */
export const ICE_WATER = { celsiusTo: 5, secondsTo: 30, source: LABORATORY } as const;

function isIceWater({ water, immersed }: { readonly water?: number; readonly immersed?: number }): boolean {
  return (
    (water === undefined || water <= ICE_WATER.celsiusTo) &&
    (immersed === undefined || immersed <= ICE_WATER.secondsTo)
  );
}

function pace(minutes: number, limit: number): 'slow' | 'between' | 'usual' {
  if (minutes > limit) return 'slow';
  return minutes > USUAL_REWARMING.value ? 'between' : 'usual';
}

/** Cold provocation: the colours that follow, their times, and the rewarming time. */
export const coldProvocation: BedsideTest<'cold-provocation'> = {
  id: 'cold-provocation',
  eponym: 'Raynaud',
  limb: 'arm',
  limits,
  evaluate(result, chosen): BedsideReading<'cold-provocation'> {
    if (result.notDone) return NOT_DONE(result.notDone);
    const phases = COLD_PHASES.value.filter((phase) => result[phase] !== undefined);
    const { rewarm } = result;
    const { value: limit } = limitFor(limits, result.limit, chosen);
    const params = { phases, ...(rewarm !== undefined && { rewarm }) };
    // A limit chosen by the examiner stands for the protocol used.
    const judged = isIceWater(result) || result.limit !== undefined;
    const notes: BedsideNote[] =
      rewarm === undefined ? [] : [judged ? `rewarming-${pace(rewarm, limit)}` : 'rewarming-no-limit'];
    const base = { limit, params, notes };
    if (phases.length === 3) return { verdict: 'abnormal', code: 'three-phases', ...base };
    if (result.white !== undefined && result.blue !== undefined) {
      return { verdict: 'abnormal', code: 'two-phases', ...base };
    }
    if (phases.length) return { verdict: 'borderline', code: 'single-phase', ...base };
    const warm = rewarm === undefined ? undefined : { limit, notes, params: { phases, rewarm } };
    if (warm && judged && warm.params.rewarm > limit)
      return { verdict: 'abnormal', code: 'slow-rewarming', ...warm };
    if (result.noChange) return { verdict: 'normal', code: 'no-change', ...base };
    if (!warm) return INCOMPLETE;
    if (!judged) return { verdict: 'incomplete', code: 'rewarming-only', ...warm };
    return warm.params.rewarm > USUAL_REWARMING.value
      ? { verdict: 'borderline', code: 'rewarming-only', ...warm }
      : { verdict: 'normal', code: 'rewarming-only', ...warm };
  },
};
