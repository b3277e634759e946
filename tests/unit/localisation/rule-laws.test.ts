import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  limbKey,
  LIMBS,
  oppositeSide,
  pieceAbove,
  pieceFromKey,
  piecesTo,
  type Place,
  placeKey,
  PULSE_PLACES,
  type PulseSiteId,
  type Side,
  stationsOf,
} from '../../../src/anatomy/index.js';
import { type Examination, type Grade, pulseAt, setPulse } from '../../../src/examination/index.js';
import { type LimbRule, readByRule } from '../../../src/localisation/rule.js';
import { gradedExamination } from '../../tools/arbitraries.js';
import { mirrored } from '../../tools/examinations.js';

type PulsePlace = Place<PulseSiteId>;

const keys = (places: readonly Place[]): string[] => places.map(placeKey);

const STRENGTH: Record<Grade, number> = { absent: 0, reduced: 1, normal: 2, bounding: 2 };
const strength = (e: Examination, at: PulsePlace) => {
  const grade = pulseAt(e, at)?.grade;
  return grade === undefined ? undefined : STRENGTH[grade];
};

describe('for any examination', () => {
  it('a bounding pulse counts as a full one', () => {
    fc.assert(
      fc.property(gradedExamination, (examination) => {
        const plain = PULSE_PLACES.reduce(
          (e, at) => (pulseAt(e, at)?.grade === 'bounding' ? setPulse(e, at, { grade: 'normal' }) : e),
          examination,
        );
        expect(readByRule(plain)).toEqual(readByRule(examination));
      }),
    );
  });

  it('no artery is blamed that leads to a pulse better than the lesion lets through', () => {
    fc.assert(
      fc.property(gradedExamination, (examination) => {
        for (const rule of Object.values(readByRule(examination))) {
          for (const one of rule.lesions) {
            const limit = one.kind === 'block' ? 0 : 1;
            const gates = one.below.map((at) => pieceAbove(at as PulsePlace).key);
            for (const at of PULSE_PLACES) {
              const way = piecesTo(pieceAbove(at)).map((piece) => piece.key);
              if ((strength(examination, at) ?? -1) <= limit || gates.some((gate) => way.includes(gate)))
                continue;
              expect(one.pieces.filter((piece) => way.includes(piece))).toEqual([]);
            }
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  it('every lesion ends at a weak pulse, lies on the way to it, and begins below what was felt', () => {
    fc.assert(
      fc.property(gradedExamination, (examination) => {
        for (const rule of Object.values(readByRule(examination))) {
          for (const one of rule.lesions) {
            const worst = one.below.map((at) => strength(examination, at as PulsePlace) as number);
            expect(Math.max(...worst)).toBe(one.kind === 'block' ? 0 : 1);
            const ways = one.below.flatMap((at) => piecesTo(pieceAbove(at as PulsePlace)));
            for (const key of one.pieces) expect(ways).toContain(pieceFromKey(key));
            for (const at of one.below) expect(one.pieces).toContain(pieceAbove(at as PulsePlace).key);
            if (one.above)
              expect(strength(examination, one.above) as number).toBeGreaterThan(Math.max(...worst));
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  it('a limb has a lesion exactly when a graded pulse of it is weak', () => {
    fc.assert(
      fc.property(gradedExamination, (examination) => {
        const reading = readByRule(examination);
        for (const limb of LIMBS) {
          const grades = stationsOf(limb)
            .flat()
            .map((at) => strength(examination, at));
          const weak = grades.some((value) => value !== undefined && value < 2);
          expect(reading[limbKey(limb)].outcome === 'lesion').toBe(weak);
          expect(reading[limbKey(limb)].unstated.length).toBe(
            grades.filter((value) => value === undefined).length,
          );
        }
      }),
    );
  });

  it('swapping left and right swaps the answer, but for the brachiocephalic trunk', () => {
    const swap = (text: string) => text.replace(/^(right|left)/, (side) => oppositeSide(side as Side));
    const flat = (rule: LimbRule, turn: (text: string) => string) => ({
      outcome: rule.outcome,
      feltTo: keys(rule.feltTo).map(turn),
      unstated: keys(rule.unstated).map(turn),
      contradictions: rule.contradictions.map((c) => [turn(placeKey(c.weaker)), turn(placeKey(c.stronger))]),
      lesions: rule.lesions.map((one) => ({
        kind: one.kind,
        above: one.above && turn(placeKey(one.above)),
        below: keys(one.below).map(turn),
        pieces: one.pieces.filter((piece) => !piece.endsWith('brachiocephalic')).map(turn),
        unstated: keys(one.unstated).map(turn),
        single: one.singleArtery,
        doubt: one.contradictedBy && turn(placeKey(one.contradictedBy)),
      })),
    });
    fc.assert(
      fc.property(gradedExamination, (examination) => {
        const reading = readByRule(examination);
        const other = readByRule(mirrored(examination));
        for (const limb of LIMBS) {
          const here = flat(reading[limbKey(limb)], (text) => text);
          const there = flat(other[limbKey({ ...limb, side: oppositeSide(limb.side) })], swap);
          expect(there).toEqual(here);
        }
      }),
      { numRuns: 200 },
    );
  });
});
