import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PULSE_PLACES } from '../../../src/anatomy/index.js';
import { emptyExamination, type Examination, GRADES, setPulse } from '../../../src/examination/index.js';
import { ANSWER_KEYS, answerProbabilities } from '../../../src/localisation/network/answers.js';
import { findingsOf } from '../../../src/localisation/network/evidence.js';
import { feetOf, withFeet } from '../../../src/localisation/network/feet.js';
import { TABLES } from '../../../src/localisation/network/index.js';
import { marginals } from '../../../src/localisation/network/marginals.js';
import { modelOf, READINGS } from '../../../src/localisation/network/model.js';
import { blame } from '../../../src/localisation/network/occluded.js';
import { Propagation } from '../../../src/localisation/network/propagate.js';

/** Records in which a foot artery was felt on both sides and is weak on one, with anything elsewhere. */
const records: fc.Arbitrary<Examination> = fc
  .tuple(
    fc.array(fc.tuple(fc.constantFrom(...PULSE_PLACES), fc.constantFrom(...GRADES)), { maxLength: 12 }),
    fc.constantFrom('dorsalis-pedis' as const, 'posterior-tibial' as const),
    fc.constantFrom(...GRADES),
  )
  .map(([pulses, site, other]) => {
    const all = pulses.reduce(
      (record, [place, grade]) => setPulse(record, place, { grade }),
      emptyExamination(),
    );
    return setPulse(
      setPulse(all, { site, side: 'right' }, { grade: 'absent' }),
      { site, side: 'left' },
      {
        grade: other,
      },
    );
  });

function seen(net: Propagation): number[] {
  const { narrowed, blocked } = marginals(net);
  return [
    net.total(),
    ...narrowed,
    ...blocked,
    ...ANSWER_KEYS.flatMap((key) => {
      const { absent, reduced, bothAbsent, bothReduced } = blame(net, key.way.fork);
      return [...answerProbabilities(net, key), ...absent, ...reduced, bothAbsent, bothReduced];
    }),
  ];
}

function expectAlike(one: readonly number[], other: readonly number[]): void {
  expect(one.length).toBe(other.length);
  one.forEach((value, i) => expect(Math.abs(value - other[i]!)).toBeLessThan(1e-10 + 1e-9 * Math.abs(value)));
}

describe('Columns that share messages', () => {
  it('say what columns with messages of their own say, in every pass and in what-ifs', () => {
    fc.assert(
      fc.property(records, fc.nat(), (record, any) => {
        const feet = feetOf(record, TABLES);
        const factors = findingsOf(record, TABLES).flatMap((finding) => finding.factors);
        const model = modelOf(record, TABLES);
        const division = withFeet(model, feet, (c) => (['divide', 'keep', 'divide'] as const)[c % 3]!);
        const sharing = new Propagation(model, factors, READINGS.gone + 1 + feet.length);
        sharing.divide(division);
        expect(sharing.firsts.length).toBeLessThan(sharing.live.length);
        const { weight, cause, reading } = division;
        const apart = new Propagation({ ...model, weight, cause, reading }, factors);
        expectAlike(seen(sharing), seen(apart));
        const piece = any % sharing.n;
        const factor = { piece, by: [[0.9, 0.5, 0.1, 0.2, 0.7, 0.3]] };
        const changed = (net: Propagation): number[] =>
          net.whatIf(
            [piece],
            () => net.multiply(factor),
            () => [net.total(), ...ANSWER_KEYS.flatMap((key) => [...answerProbabilities(net, key)])],
          );
        expectAlike(changed(sharing), changed(apart));
        sharing.focus(0.02);
        apart.focus(0.02);
        expectAlike(changed(sharing), changed(apart));
      }),
      { numRuns: 12 },
    );
  });
});
