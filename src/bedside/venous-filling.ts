import { type BedsideTest, INCOMPLETE, limitFor, type Limits, MEMORY, NOT_DONE, over } from './test.js';

const MCGEE = 'McGee SR, Boyko EJ, Arch Intern Med 1998;158:1357-1364, doi:10.1001/archinte.158.12.1357';

/** The veins of the foot fill late above this time, in seconds. */
const limits: Limits = {
  unit: 's',
  usual: 20,
  options: [
    { value: 20, normalAt: true, source: MCGEE },
    { value: 15, normalAt: true, source: "Bates' Guide type teaching" },
  ],
};

/** The usual time, and the time above which it is severe, in seconds. */
export const USUAL_FILLING = { value: 15, source: "Bates' Guide type teaching" } as const;
export const SEVERE_FILLING = {
  value: 40,
  source: `Fairbairn JF, Juergens JL, Spittell JA, Peripheral Vascular Diseases (${MEMORY})`,
} as const;

/** Time until a vein on the back of the foot fills after the raised leg is lowered. */
export const venousFilling: BedsideTest<'venous-filling'> = {
  id: 'venous-filling',
  limb: 'leg',
  limits,
  accuracy: {
    of: 'arterial-disease',
    sensitivity: 0.22,
    specificity: 0.94,
    condition: { over: 20 },
    source: MCGEE,
  },
  evaluate(result, chosen) {
    if (result.notDone) return NOT_DONE(result.notDone);
    const { seconds } = result;
    if (seconds === undefined) return INCOMPLETE;
    const option = limitFor(limits, result.limit, chosen);
    const notes = result.incompetentVeins ? (['incompetent-veins'] as const) : [];
    const base = { limit: option.value, params: { seconds }, notes };
    const severe = seconds > SEVERE_FILLING.value;
    if (result.filled === false) {
      if (severe) return { verdict: 'severe', code: 'not-filled', ...base };
      return over(seconds, option)
        ? { verdict: 'abnormal', code: 'not-filled', ...base }
        : { verdict: 'incomplete', code: 'watched-too-short', ...base };
    }
    if (severe) return { verdict: 'severe', code: 'severe', ...base, limit: SEVERE_FILLING.value };
    if (over(seconds, option)) return { verdict: 'abnormal', code: 'prolonged', ...base };
    // Veins with incompetent valves fill from above, so early filling proves nothing.
    if (result.incompetentVeins) return { verdict: 'incomplete', code: 'unreliable', ...base };
    return seconds > USUAL_FILLING.value
      ? { verdict: 'borderline', code: 'slower-than-usual', ...base }
      : { verdict: 'normal', code: 'usual', ...base };
  },
};
