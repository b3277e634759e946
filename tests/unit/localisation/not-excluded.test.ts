import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Limb, limbKey, LIMBS, PULSE_PLACES, type Side, SIDES } from '../../../src/anatomy/index.js';
import {
  emptyExamination,
  type Examination,
  GRADES,
  INJURY_PLACES,
  type InjuryPlace,
  type LimbInspection,
  setPulse,
} from '../../../src/examination/index.js';
import { localise } from '../../../src/localisation/index.js';
import { notExcluded } from '../../../src/localisation/network/besides.js';

/* Common practice, no source: what open main arteries leave open. */

const LEG = new Set<InjuryPlace>(['pelvis', 'groin', 'thigh', 'knee', 'lower-leg', 'ankle-foot']);

const BLUE: readonly Partial<LimbInspection>[] = [
  { colour: 'blue' },
  { colour: 'mottled' },
  { colour: 'fixed-mottled' },
  { digits: { second: 'blue' } },
];
const WOUNDS: readonly Partial<LimbInspection>[] = [
  { ulcer: 'shallow' },
  { gangrene: 'dry' },
  { digits: { first: 'ulcer' } },
  { digits: { fifth: 'gangrene' } },
];

/** Any pulses, normal ones above all, and whatever else a record may say of a limb. */
const records = fc
  .tuple(
    fc.array(fc.tuple(fc.constantFrom(...PULSE_PLACES), fc.constantFrom(...GRADES, 'normal' as const)), {
      maxLength: 14,
    }),
    fc.constantFrom(undefined, 'acute' as const, 'chronic' as const),
    fc.constantFrom(undefined, 'cold' as const, 'warm' as const),
  )
  .map(([pulses, onset, temperature]): Examination => {
    const start: Examination = {
      ...emptyExamination(),
      ...(onset && { onset }),
      ...(temperature && { inspection: { leg: { left: { temperature } }, arm: { right: { temperature } } } }),
    };
    return pulses.reduce((one, [place, grade]) => setPulse(one, place, { grade }), start);
  });

const sides = fc.constantFrom(...SIDES);
const kinds = fc.constantFrom('leg' as const, 'arm' as const);

function seen(record: Examination, { kind, side }: Limb, found: object): Examination {
  const { inspection } = record;
  const own = (inspection as Record<string, Record<Side, object>> | undefined)?.[kind];
  return {
    ...record,
    inspection: { ...inspection, [kind]: { ...own, [side]: { ...own?.[side], ...found } } },
  } as Examination;
}

describe('What open main arteries do not exclude', () => {
  it('are emboli and small arteries where digits are blue or the skin is mottled, whatever the pulses', () => {
    fc.assert(
      fc.property(records, sides, kinds, fc.constantFrom(...BLUE), (record, side, kind, found) => {
        expect(notExcluded(seen(record, { side, kind }, found), { side, kind })).toEqual(
          expect.arrayContaining(['emboli', 'small-arteries']),
        );
      }),
    );
  });

  it('are small arteries where there is an ulcer or gangrene, whatever the pulses', () => {
    fc.assert(
      fc.property(records, sides, kinds, fc.constantFrom(...WOUNDS), (record, side, kind, found) => {
        expect(notExcluded(seen(record, { side, kind }, found), { side, kind })).toContain('small-arteries');
      }),
    );
  });

  it('are emboli beyond a pulsating lump, on the limb that has it', () => {
    fc.assert(
      fc.property(records, fc.constantFrom(...PULSE_PLACES), (record, place) => {
        const found = setPulse(record, place, { grade: 'normal', expansile: true });
        const kind = LIMBS.filter((limb) => limb.kind !== 'head').some((limb) =>
          notExcluded(found, limb).includes('emboli'),
        );
        const head = place.site === 'carotid' || place.site === 'superficial-temporal';
        expect(kind).toBe(!head);
      }),
    );
  });

  it('after an injury is the injury: no pulse, normal or not, ever takes the warning away', () => {
    fc.assert(
      fc.property(
        records,
        sides,
        fc.constantFrom(...INJURY_PLACES),
        fc.constantFrom(...PULSE_PLACES),
        (record, side, injured, place) => {
          const kind = LEG.has(injured) ? 'leg' : 'arm';
          const hurt: Examination = { ...record, context: { injury: { [side]: injured } } };
          const before = notExcluded(hurt, { side, kind });
          expect(before).toContain('injury');
          for (const grade of GRADES) {
            expect(notExcluded(setPulse(hurt, place, { grade }), { side, kind })).toEqual(before);
          }
        },
      ),
    );
  });

  it('stands in the reading of every limb, be it examined or not', () => {
    fc.assert(
      fc.property(records, sides, fc.constantFrom(...INJURY_PLACES), (record, side, injured) => {
        const hurt: Examination = { ...record, context: { injury: { [side]: injured } } };
        const reading = localise(hurt, { detail: 'posterior' });
        fc.pre(reading.status === 'read');
        for (const limb of LIMBS) {
          expect(reading.limbs[limbKey(limb)].notExcluded).toEqual(notExcluded(hurt, limb));
        }
      }),
      { numRuns: 25 },
    );
  });

  it('says nothing of a limb of which nothing is recorded but its pulses', () => {
    fc.assert(
      fc.property(records, fc.constantFrom(...LIMBS), (record, limb) => {
        expect(notExcluded(record, limb)).toEqual([]);
      }),
    );
  });
});

describe('The place of an ulcer', () => {
  const ill = (ulcerPlace: LimbInspection['ulcerPlace'], artery: string): number => {
    const pulses = PULSE_PLACES.filter(({ site, side }) => side === 'right' && site === 'femoral');
    const felt = pulses.reduce(
      (one, place) => setPulse(one, place, { grade: 'normal' }),
      emptyExamination() as Examination,
    );
    const found = ulcerPlace && { ulcer: 'shallow', ulcerPlace };
    const reading = localise(found ? seen(felt, { kind: 'leg', side: 'right' }, found) : felt, {
      detail: 'posterior',
    });
    if (reading.status !== 'read') throw new Error(reading.status);
    const { narrowed, blocked } = reading.pieces[`right ${artery}` as keyof typeof reading.pieces];
    return narrowed + blocked;
  };

  it('points to the posterior tibial artery at heel and sole, to both at the toes', () => {
    for (const place of ['heel', 'sole'] as const) {
      expect(ill(place, 'posterior-tibial proximal')).toBeGreaterThan(
        ill('digits', 'posterior-tibial proximal'),
      );
      expect(ill(place, 'dorsalis-pedis proximal')).toBeLessThan(ill('digits', 'dorsalis-pedis proximal'));
    }
    expect(ill('digits', 'dorsalis-pedis proximal')).toBeGreaterThan(
      ill(undefined, 'dorsalis-pedis proximal'),
    );
  });

  it('says nothing of arteries on shin and calf, where veins make as many', () => {
    for (const place of ['shin', 'back-of-leg'] as const) {
      for (const artery of ['posterior-tibial proximal', 'dorsalis-pedis proximal', 'superficial-femoral']) {
        expect(ill(place, artery)).toBeCloseTo(ill(undefined, artery), 2);
      }
    }
  });
});
