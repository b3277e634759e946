import { PULSE_LOSS_ANYWHERE, rates, RAYAN, readPosition } from './outlet.js';
import { type BedsideTest, NOT_DONE } from './test.js';

/** Duration of the position, in seconds. */
export const HYPERABDUCTION_HOLD = { value: 60, source: 'Physiopedia, Wright test' } as const;

/** The arm is taken out and up to the full. */
export const hyperabduction: BedsideTest<'hyperabduction'> = {
  id: 'hyperabduction',
  eponym: 'Wright',
  limb: 'arm',
  falsePositives: [...rates(RAYAN, { pulse: 57 }), PULSE_LOSS_ANYWHERE],
  evaluate(result) {
    return result.notDone ? NOT_DONE(result.notDone) : readPosition(result);
  },
};
