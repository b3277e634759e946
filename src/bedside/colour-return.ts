import {
  type BedsideTest,
  INCOMPLETE,
  limitFor,
  type Limits,
  MEMORY,
  NOT_DONE,
  over,
  PRACTICE,
} from './test.js';

/** Colour return is prolonged from this time on, in seconds. */
const limits: Limits = {
  unit: 's',
  usual: 15,
  options: [
    { value: 15, normalAt: false, source: PRACTICE },
    { value: 10, normalAt: true, source: "Bates' Guide type teaching" },
  ],
};

/** The usual time, and the time above which it is severe, in seconds. */
export const USUAL_RETURN = { value: 10, source: "Bates' Guide type teaching" } as const;
export const SEVERE_RETURN = {
  value: 40,
  source: `Fairbairn JF, Juergens JL, Spittell JA, Peripheral Vascular Diseases (${MEMORY})`,
} as const;

/** Time until the sole is pink again after the raised leg is lowered. */
export const colourReturn: BedsideTest<'colour-return'> = {
  id: 'colour-return',
  eponym: 'Buerger',
  limb: 'leg',
  limits,
  evaluate(result, chosen) {
    if (result.notDone) return NOT_DONE(result.notDone);
    const { seconds } = result;
    if (seconds === undefined) return INCOMPLETE;
    const option = limitFor(limits, result.limit, chosen);
    const base = { limit: option.value, params: { seconds } };
    const severe = seconds > SEVERE_RETURN.value;
    if (result.returned === false) {
      if (severe) return { verdict: 'severe', code: 'not-returned', ...base };
      return over(seconds, option)
        ? { verdict: 'abnormal', code: 'not-returned', ...base }
        : { verdict: 'incomplete', code: 'watched-too-short', ...base };
    }
    if (severe) return { verdict: 'severe', code: 'severe', ...base, limit: SEVERE_RETURN.value };
    if (over(seconds, option)) return { verdict: 'abnormal', code: 'prolonged', ...base };
    return seconds > USUAL_RETURN.value
      ? { verdict: 'borderline', code: 'slower-than-usual', ...base }
      : { verdict: 'normal', code: 'usual', ...base };
  },
};
