import { type BedsideTest, INCOMPLETE, limitFor, type Limits, NOT_DONE, PRACTICE } from './test.js';

/** How long the foot must hang before a missing rubor means anything, in seconds. */
const limits: Limits = {
  unit: 's',
  usual: 120,
  options: [
    { value: 120, normalAt: false, source: `${PRACTICE}; two minutes also in J Am Osteopath Assoc 2017` },
    { value: 180, normalAt: false, source: PRACTICE },
  ],
};

/** The hanging foot turns dusky red. */
export const dependentRubor: BedsideTest<'dependent-rubor'> = {
  id: 'dependent-rubor',
  eponym: 'Buerger',
  limb: 'leg',
  limits,
  evaluate(result, chosen) {
    if (result.notDone) return NOT_DONE(result.notDone);
    const { rubor, seconds } = result;
    if (rubor === undefined) return INCOMPLETE;
    const { value: limit } = limitFor(limits, result.limit, chosen);
    const base = { limit, params: seconds === undefined ? {} : { seconds } };
    if (rubor) return { verdict: 'abnormal', code: 'rubor', ...base };
    return seconds !== undefined && seconds >= limit
      ? { verdict: 'normal', code: 'no-rubor', limit, params: { seconds } }
      : { verdict: 'incomplete', code: 'hung-too-short', ...base };
  },
};
