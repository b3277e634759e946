import { NORD, PLEWA, rates, RAYAN, readPosition } from './outlet.js';
import { type BedsideTest, NOT_DONE } from './test.js';

/** Duration of the position, in seconds. */
export const COSTOCLAVICULAR_HOLD = { value: 30, source: PLEWA } as const;

/** Shoulders drawn back and down, as a soldier stands. */
export const costoclavicular: BedsideTest<'costoclavicular'> = {
  id: 'costoclavicular',
  eponym: 'Eden',
  limb: 'arm',
  falsePositives: [
    ...rates(PLEWA, { pulse: 11, pain: 0, tingling: 15 }),
    ...rates(NORD, { positive: 16 }),
    ...rates(NORD, { positive: 48 }, { people: 'carpal-tunnel' }),
    ...rates(RAYAN, { pulse: 47 }),
  ],
  evaluate(result) {
    return result.notDone ? NOT_DONE(result.notDone) : readPosition(result);
  },
};
