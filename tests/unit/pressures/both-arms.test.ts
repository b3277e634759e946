import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyExamination, type Examination } from '../../../src/examination/index.js';
import { armsDoubt, DEFAULT_ARMS_DOUBT, DEFAULT_PRESSURE_SETTINGS } from '../../../src/pressures/index.js';
import { stageLeg } from '../../../src/staging/index.js';

const record = (parts: object): Examination =>
  ({ ...emptyExamination(), ...parts }) as unknown as Examination;
const codes = (parts: object) => armsDoubt(record(parts), DEFAULT_PRESSURE_SETTINGS).map(({ code }) => code);
const arms = (right: number, left: number, ankle: number) => ({
  brachial: { right, left },
  'posterior-tibial': { left: ankle },
});
const weak = (...sides: string[]) => Object.fromEntries(sides.map((side) => [side, { grade: 'reduced' }]));

/* An index over arms that are both obstructed reads too high. Laboratory criteria; the limits: common practice, no source. */
describe('arms that may both be obstructed', () => {
  it.each<[string, object, string[]]>([
    ['both low, ankle above the range', { pressures: arms(90, 92, 130) }, ['ankle-above-low-arms']],
    ['low by 1 mmHg only on one side', { pressures: arms(90, 100, 141) }, []],
    ['apart by 16, ankle normal', { pressures: arms(140, 124, 150) }, ['arms-apart']],
    ['apart by 15, ankle normal', { pressures: arms(140, 125, 150) }, []],
    ['apart, ankle low', { pressures: arms(140, 110, 90) }, []],
    [
      'weak pulses in both arms',
      { pressures: arms(110, 110, 115), pulses: { radial: weak('right', 'left') } },
      ['arm-pulses'],
    ],
    ['weak pulses in one arm', { pressures: arms(110, 110, 115), pulses: { radial: weak('left') } }, []],
    [
      'the same in shock',
      {
        pressures: arms(80, 80, 85),
        pulses: { radial: weak('right', 'left') },
        circulation: { shock: true },
      },
      [],
    ],
    [
      'one radial artery harvested',
      {
        pressures: arms(110, 110, 115),
        pulses: { radial: weak('right', 'left') },
        context: { radialHarvested: ['left'] },
      },
      [],
    ],
    [
      'low in a hypertensive person',
      { pressures: arms(95, 95, 95), history: { risks: ['hypertension'] } },
      ['low-though-hypertensive'],
    ],
    [
      'below the blood pressure on record',
      { pressures: arms(110, 105, 100), circulation: { systolic: 131 } },
      ['below-recorded'],
    ],
    ['within 20 of it', { pressures: arms(110, 105, 100), circulation: { systolic: 130 } }, []],
    [
      'no index at all',
      { pressures: { brachial: { right: 80, left: 80 } }, history: { risks: ['hypertension'] } },
      [],
    ],
  ])('%s', (_title, parts, expected) => {
    expect(codes(parts)).toEqual(expected);
  });

  it('are told alike for left and right', () => {
    const mmHg = fc.integer({ min: 40, max: 220 });
    fc.assert(
      fc.property(mmHg, mmHg, mmHg, (right, left, ankle) => {
        const mirrored = { brachial: { right: left, left: right }, 'posterior-tibial': { right: ankle } };
        expect(codes({ pressures: arms(right, left, ankle) })).toEqual(codes({ pressures: mirrored }));
      }),
    );
  });

  it('are judged by limits of one’s own', () => {
    const apart = record({ pressures: arms(140, 120, 150) });
    expect(armsDoubt(apart, DEFAULT_PRESSURE_SETTINGS, { ...DEFAULT_ARMS_DOUBT, apartOver: 20 })).toEqual([]);
  });

  it('weaken a grade of ischaemia by the index, and exclude no disease', () => {
    const full = { left: { grade: 'normal' } };
    const leg = (right: number, left: number) =>
      stageLeg(
        record({
          context: { diabetes: false },
          pulses: { 'dorsalis-pedis': full, 'posterior-tibial': full },
          pressures: arms(right, left, 140),
        }),
        'left',
      );
    expect(leg(130, 130).wifi.ischaemia.notes).not.toContain('both-arms');
    expect(leg(130, 130).fontaine.disease).toBe('not-shown');
    expect(leg(130, 100).wifi.ischaemia.notes).toContain('both-arms');
    expect(leg(130, 100).fontaine.disease).toBe('untested');
  });
});
