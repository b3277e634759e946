import { SCALENE_WAYS } from '../examination/index.js';
import { NORD, PLEWA, rates, RAYAN, readPosition } from './outlet.js';
import { type BedsideReading, type BedsideTest, INCOMPLETE, NOT_DONE, VERDICTS } from './test.js';

/** Duration of the position, in seconds. */
export const SCALENE_HOLD = { value: 30, source: PLEWA } as const;

/** Deep breath held, neck stretched, head turned: toward the side, away from it, and with the arm drawn down. */
export const scalene: BedsideTest<'scalene'> = {
  id: 'scalene',
  eponym: 'Adson',
  limb: 'arm',
  falsePositives: [
    ...rates(PLEWA, { pulse: 11, pain: 0, tingling: 11 }),
    ...rates(NORD, { positive: 9 }),
    ...rates(`${NORD} (second variant)`, { positive: 20 }),
    ...rates(NORD, { positive: 42 }, { people: 'carpal-tunnel' }),
    ...rates(RAYAN, { pulse: 13.5 }),
  ],
  evaluate(result): BedsideReading<'scalene'> {
    if (result.notDone) return NOT_DONE(result.notDone);
    const readings = SCALENE_WAYS.flatMap((way) => {
      const position = result[way];
      return position ? [{ way, reading: readPosition(position) }] : [];
    });
    const worst = [...readings].sort(
      (a, b) => VERDICTS.indexOf(b.reading.verdict) - VERDICTS.indexOf(a.reading.verdict),
    )[0];
    if (!worst) return INCOMPLETE;
    const positive = readings.filter(({ reading }) => reading.verdict === worst.reading.verdict);
    const { reading: found } = worst;
    if (found.code === 'not-done' || found.code === 'incomplete') return found;
    const ways = positive.map(({ way }) => way);
    // One spread of a union loses which parameters go with which code.
    return { ...found, params: { ...found.params, ways } } as BedsideReading<'scalene'>;
  },
};
