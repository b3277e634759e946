import { describe, expect, it } from 'vitest';
import * as fc from 'fast-check';
import type { Pressures } from '../../../src/examination/index.js';
import {
  type Band,
  DEFAULT_PRESSURE_SETTINGS,
  indexIn,
  type PressureSettings,
  readPressures,
} from '../../../src/pressures/index.js';
import { rightIndex, rightLeg } from './right-leg.js';

/*
 * Worked examples. 1: clinical question page citing the 2012 AHA standard; 2 and 3: how-to page on the index; 4: formula
 * page; 5 to 12: arithmetic from the rule of Aboyans 2012 (higher ankle over higher arm, two decimals).
 */
const EXAMPLES: [string, Pressures, 'right' | 'left', number, Band][] = [
  [
    'example 1',
    {
      brachial: { right: 130, left: 125 },
      'posterior-tibial': { right: 120 },
      'dorsalis-pedis': { right: 115 },
    },
    'right',
    0.92,
    'borderline',
  ],
  [
    'example 2',
    { brachial: { left: 130, right: 128 }, 'posterior-tibial': { left: 125 } },
    'left',
    0.96,
    'borderline',
  ],
  [
    'example 3',
    { brachial: { left: 130, right: 128 }, 'dorsalis-pedis': { right: 120 } },
    'right',
    0.92,
    'borderline',
  ],
  ['example 4', { brachial: { right: 140 }, 'posterior-tibial': { right: 120 } }, 'right', 0.86, 'abnormal'],
  [
    'example 5, the arm of the other side is higher',
    { brachial: { right: 140, left: 150 }, 'posterior-tibial': { left: 80 }, 'dorsalis-pedis': { left: 60 } },
    'left',
    0.53,
    'abnormal',
  ],
  [
    'example 6, exactly 0.90',
    {
      brachial: { right: 120, left: 118 },
      'posterior-tibial': { right: 108 },
      'dorsalis-pedis': { right: 100 },
    },
    'right',
    0.9,
    'abnormal',
  ],
  [
    'example 7, 0.91',
    {
      brachial: { right: 100, left: 96 },
      'posterior-tibial': { right: 91 },
      'dorsalis-pedis': { right: 88 },
    },
    'right',
    0.91,
    'borderline',
  ],
  [
    'example 8, 1.00',
    {
      brachial: { right: 110, left: 110 },
      'posterior-tibial': { left: 110 },
      'dorsalis-pedis': { left: 104 },
    },
    'left',
    1,
    'normal',
  ],
  [
    'example 9, 1.40',
    {
      brachial: { right: 100, left: 100 },
      'posterior-tibial': { left: 140 },
      'dorsalis-pedis': { left: 136 },
    },
    'left',
    1.4,
    'normal',
  ],
  [
    'example 10, 1.41',
    {
      brachial: { right: 100, left: 100 },
      'posterior-tibial': { left: 141 },
      'dorsalis-pedis': { left: 136 },
    },
    'left',
    1.41,
    'incompressible',
  ],
  [
    'example 11, one ankle artery silent',
    {
      brachial: { right: 152, left: 120 },
      'posterior-tibial': { right: 52 },
      'dorsalis-pedis': { right: 0 },
    },
    'right',
    0.34,
    'abnormal',
  ],
  [
    'example 12, 0.902 is rounded before it is banded',
    {
      brachial: { right: 133, left: 130 },
      'posterior-tibial': { right: 120 },
      'dorsalis-pedis': { right: 118 },
    },
    'right',
    0.9,
    'abnormal',
  ],
];

describe('settings', () => {
  it('readPressures takes an undefined setting as the default', () => {
    const pressures = { brachial: { right: 120 }, 'posterior-tibial': { right: 90 } };
    const settings = { standard: undefined, ankle: undefined } as never;
    expect(readPressures(pressures, settings)).toEqual(readPressures(pressures));
  });
});

describe('ankle index, published and derived worked examples', () => {
  it.each(EXAMPLES)('%s', (_, pressures, side, value, band) => {
    for (const standard of ['2016', '2024'] as const) {
      const index = indexIn(readPressures(pressures, { standard }), 'ankle', side);
      expect(index?.value).toBe(value);
      expect(index?.band).toBe(band);
    }
  });
});

// Bands: 2016 AHA/ACC and 2024 ACC/AHA guidelines, for values already rounded to two decimals.
describe('ankle index, each band at, just under and just over its edge', () => {
  it.each<[number, Band]>([
    [0, 'abnormal'],
    [0.89, 'abnormal'],
    [0.9, 'abnormal'],
    [0.91, 'borderline'],
    [0.98, 'borderline'],
    [0.99, 'borderline'],
    [1, 'normal'],
    [1.01, 'normal'],
    [1.39, 'normal'],
    [1.4, 'normal'],
    [1.41, 'incompressible'],
    [2, 'incompressible'],
  ])('%f is %s', (value, band) => {
    expect(rightIndex(rightLeg(value * 100))).toMatchObject({ value, band });
  });

  it('takes 1.30 for the upper limit when the older limit is chosen', () => {
    const older = { incompressible: '1.30' } as const;
    expect(rightIndex(rightLeg(130), older)?.band).toBe('normal');
    expect(rightIndex(rightLeg(131), older)?.band).toBe('incompressible');
    expect(rightIndex(rightLeg(131))?.band).toBe('normal');
  });

  // 2005 ACC/AHA guideline: 0.41 to 0.90 mild to moderate, up to 0.40 severe. One variant: Hong Kong Practitioner 2004.
  it.each<[number, '0.40' | '0.30', boolean]>([
    [41, '0.40', false],
    [40, '0.40', true],
    [39, '0.40', true],
    [31, '0.30', false],
    [30, '0.30', true],
    [29, '0.30', true],
  ])('%i hundredths by the limit %s is severe: %s', (ankle, severeIndex, severe) => {
    expect(rightIndex(rightLeg(ankle), { severeIndex })?.severe ?? false).toBe(severe);
  });

  it('rounds an exact half up: 189 over 200 is 0.95', () => {
    const index = rightIndex({ brachial: { right: 200 }, 'posterior-tibial': { right: 189 } });
    expect(index?.value).toBe(0.95);
  });
});

describe('which pressures go into the ankle index', () => {
  const both: Pressures = {
    brachial: { right: 120, left: 132 },
    'dorsalis-pedis': { right: 60 },
    'posterior-tibial': { right: 90 },
  };

  it('takes the higher ankle artery and the higher arm by default', () => {
    const index = rightIndex(both);
    expect(index?.numerator).toEqual({ site: 'posterior-tibial', side: 'right', mmHg: 90 });
    expect(index?.denominator?.from).toEqual([{ site: 'brachial', side: 'left', mmHg: 132 }]);
  });

  it('takes the lower ankle artery when that method is chosen (Aboyans 2012)', () => {
    expect(rightIndex(both, { ankle: 'lower' })).toMatchObject({ numerator: { mmHg: 60 }, value: 0.45 });
  });

  // Lange 2007 (getABI): mean of both arms unless they differ by 10 mmHg or more.
  it.each([
    [120, 129, 124.5],
    [120, 130, 130],
    [120, 131, 131],
  ])('arms of %i and %i give a denominator of %f by the mean rule', (right, left, expected) => {
    expect(readPressures({ brachial: { right, left } }, { arm: 'mean' }).denominator?.mmHg).toBe(expected);
  });

  it('tells a missing arm and uses the other', () => {
    const index = rightIndex({ brachial: { left: 150 }, 'posterior-tibial': { right: 75 } });
    expect(index?.value).toBe(0.5);
    expect(index?.missing).toContainEqual({ site: 'brachial', side: 'right' });
  });

  it('gives no index without any arm, and says both are missing', () => {
    const index = rightIndex({ 'posterior-tibial': { right: 75 } });
    expect(index).toMatchObject({ numerator: { mmHg: 75 } });
    expect(index?.value).toBeUndefined();
    expect(index?.missing).toEqual(
      expect.arrayContaining([
        { site: 'brachial', side: 'right' },
        { site: 'brachial', side: 'left' },
      ]),
    );
  });

  it('does not count an arm that could not be measured as zero', () => {
    const index = rightIndex({
      brachial: { right: 'line-in-place', left: 140 },
      'dorsalis-pedis': { right: 70 },
    });
    expect(index?.value).toBe(0.5);
    expect(index?.missing).toContainEqual({ site: 'brachial', side: 'right' });
  });

  it('calls an artery that no cuff closes incompressible, whatever its twin measures', () => {
    const index = rightIndex({
      brachial: { right: 140, left: 140 },
      'dorsalis-pedis': { right: 'incompressible' },
      'posterior-tibial': { right: 90 },
    });
    expect(index?.band).toBe('incompressible');
    expect(index?.value).toBeUndefined();
  });

  it('says nothing of a leg that was not measured', () => {
    expect(readPressures({ brachial: { right: 120, left: 120 } }).indices).toEqual([]);
    expect(readPressures(undefined).indices).toEqual([]);
  });
});

// Toe: 2016 guideline, abnormal at or below 0.70; Suominen 2008, below 0.60. Wrist and finger: laboratory criteria.
describe('toe, wrist and finger index, each limit at, just under and just over', () => {
  const cases: [
    'toe' | 'wrist' | 'finger',
    'toe' | 'radial' | 'finger',
    Partial<PressureSettings>,
    [number, Band][],
  ][] = [
    [
      'toe',
      'toe',
      {},
      [
        [69, 'abnormal'],
        [70, 'abnormal'],
        [71, 'normal'],
      ],
    ],
    [
      'toe',
      'toe',
      { toe: '0.60' },
      [
        [59, 'abnormal'],
        [60, 'normal'],
        [61, 'normal'],
      ],
    ],
    [
      'wrist',
      'radial',
      { wrist: '1.00' },
      [
        [99, 'abnormal'],
        [100, 'normal'],
        [101, 'normal'],
        [130, 'normal'],
        [131, 'incompressible'],
      ],
    ],
    [
      'wrist',
      'radial',
      {},
      [
        [89, 'abnormal'],
        [90, 'borderline'],
        [95, 'borderline'],
        [99, 'borderline'],
        [100, 'normal'],
      ],
    ],
    [
      'wrist',
      'radial',
      { wrist: '0.85' },
      [
        [84, 'abnormal'],
        [85, 'borderline'],
        [99, 'borderline'],
      ],
    ],
    [
      'finger',
      'finger',
      {},
      [
        [79, 'abnormal'],
        [80, 'abnormal'],
        [81, 'normal'],
      ],
    ],
    [
      'finger',
      'finger',
      { finger: '0.75' },
      [
        [74, 'abnormal'],
        [75, 'abnormal'],
        [76, 'normal'],
      ],
    ],
  ];
  const flat = cases.flatMap(([kind, site, settings, edges]) =>
    edges.map(([mmHg, band]) => [kind, mmHg, band, site, settings] as const),
  );
  it.each(flat)('%s of %i over 100 is %s', (kind, mmHg, band, site, settings) => {
    const reading = readPressures(
      { brachial: { right: 100, left: kind === 'wrist' ? 100 : 90 }, [site]: { left: mmHg } },
      settings,
    );
    expect(indexIn(reading, kind, 'left')?.band).toBe(band);
  });
});

describe('readPressures, properties', () => {
  const pressure = fc.option(fc.integer({ min: 0, max: 300 }), { nil: undefined });
  const sides = fc.record({ right: pressure, left: pressure });
  const pressures = fc.record({
    brachial: sides,
    'dorsalis-pedis': sides,
    'posterior-tibial': sides,
    toe: sides,
  });
  const swap = (p: Record<string, { right?: number | undefined; left?: number | undefined }>): Pressures =>
    Object.fromEntries(
      Object.entries(p).map(([site, { right, left }]) => [site, { right: left, left: right }]),
    );

  it('swapping right and left swaps every index and changes none', () => {
    fc.assert(
      fc.property(pressures, (p) => {
        const [one, other] = [readPressures(p), readPressures(swap(p))];
        for (const { kind, side, value, band } of one.indices) {
          const mirrored = indexIn(other, kind, side === 'right' ? 'left' : 'right');
          expect([mirrored?.value, mirrored?.band]).toEqual([value, band]);
        }
        expect(one.indices.length).toBe(other.indices.length);
      }),
    );
  });

  it('is the printed quotient wherever both pressures are known', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 0, max: 300 }), (arm, ankle) => {
        const index = rightIndex({ brachial: { left: arm }, 'dorsalis-pedis': { right: ankle } });
        expect(Math.abs((index?.value ?? NaN) - ankle / arm)).toBeLessThanOrEqual(0.005 + 1e-9);
      }),
    );
  });

  it('names the guideline of 2024 and the higher pressures as its defaults', () => {
    expect(DEFAULT_PRESSURE_SETTINGS).toMatchObject({ standard: '2024', ankle: 'higher', arm: 'higher' });
  });
});
