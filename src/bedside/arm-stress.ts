import { countingSymptoms, NORD, PLEWA, pulseChange, rates } from './outlet.js';
import {
  type BedsideReading,
  type BedsideTest,
  INCOMPLETE,
  limitFor,
  type Limits,
  NOT_DONE,
} from './test.js';

/** How long the arms stay up and the hands open and close, in seconds. */
const limits: Limits = {
  unit: 's',
  usual: 180,
  options: [{ value: 180, normalAt: true, source: `Roos DB; ${PLEWA}` }],
};

/** Pace of opening and closing, in seconds a cycle. */
export const BEAT_SECONDS = { value: 2, source: 'common practice, no source' } as const;

const COMPLAINTS = ['heaviness', 'tingling', 'pain', 'fatigue'] as const;

/** Arms out and up, elbows bent, hands opened and closed for three minutes. */
export const armStress: BedsideTest<'arm-stress'> = {
  id: 'arm-stress',
  eponym: 'Roos',
  limb: 'arm',
  limits,
  falsePositives: [
    ...rates(PLEWA, { pulse: 62, pain: 21, tingling: 36 }),
    ...rates(PLEWA, { stopped: 16 }, { bound: 'upper-95' }),
    ...rates(NORD, { positive: 47 }),
    ...rates(NORD, { positive: 77 }, { people: 'carpal-tunnel' }),
  ],
  evaluate(result, chosen): BedsideReading<'arm-stress'> {
    if (result.notDone) return NOT_DONE(result.notDone);
    const { seconds, stopped, felt = {} } = result;
    if (seconds === undefined) return INCOMPLETE;
    const { value: limit } = limitFor(limits, result.limit, chosen);
    const complaints = COMPLAINTS.filter((symptom) => felt[symptom] !== undefined);
    const symptoms = countingSymptoms(complaints);
    const pulse = pulseChange({
      ...(result.before && { before: result.before }),
      ...(result.during && { during: result.during }),
    });
    const params = {
      seconds,
      ...(stopped && { stopped }),
      symptoms,
      ...(pulse && { pulse }),
    };
    const base = { limit, params };
    const early = seconds < limit;
    // Stopped for pain or tingling is positive; stopped early for tiredness alone the test was not completed (Roos; Plewa 1998).
    const hurt = stopped === 'pain' || stopped === 'tingling';
    if (early && hurt) {
      return { verdict: 'abnormal', code: 'stopped-early', limit, params: { ...params, stopped } };
    }
    if (hurt || symptoms.length) {
      const told = symptoms.length || !hurt ? symptoms : [stopped];
      const code = early ? 'symptoms-early' : 'symptoms';
      return { verdict: 'abnormal', code, limit, params: { ...params, symptoms: told } };
    }
    if (early && stopped === 'fatigue') return { verdict: 'incomplete', code: 'fatigue-only', ...base };
    if (early) return { verdict: 'incomplete', code: 'too-short', ...base };
    // Nobody said that nothing was felt: a button that was not pressed is no answer.
    const asked = complaints.length > 0 || result.nothingFelt;
    return asked
      ? { verdict: 'normal', code: 'completed', ...base }
      : { ...INCOMPLETE, notes: ['symptoms-not-asked'] };
  },
};
