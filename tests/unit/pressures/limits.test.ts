import { describe, expect, it } from 'vitest';
import * as fc from 'fast-check';
import type { Level } from '../../../src/anatomy/index.js';
import {
  emptyExamination,
  NO_PRESSURE,
  parseWith,
  type Pressures,
  pressuresSchema,
} from '../../../src/examination/index.js';
import {
  armFindings,
  cuffRatios,
  fromMmHg,
  limbThreats,
  pressureEvidence,
  type PressureSettings,
  pressureSettings,
  readPressures,
  segmentFindings,
  toMmHg,
} from '../../../src/pressures/index.js';
import { expectedIn } from '../../tools/faults.js';
import { readExamination } from '../../../src/localisation/index.js';

const chosen = (settings: Partial<PressureSettings> = {}) => pressureSettings(settings);

// PARC 2015; Second European Consensus 1991 and TASC II as restated by GVG 2019 and Ghirardini 2024; ESC 2017; IWGDF 2023;
// ACC/AHA. "Below" unless the consensus prints "at or below".
describe('limbThreats, each absolute limit at, just under and just over', () => {
  type Measure = 'ankle' | 'toe' | 'tcpo2' | 'index';
  const limits: [PressureSettings['threat'], boolean, Measure, number, boolean][] = [
    ['gvg-2019', false, 'ankle', 50, false],
    ['gvg-2019', true, 'ankle', 50, false],
    ['gvg-2019', false, 'toe', 30, false],
    ['gvg-2019', false, 'tcpo2', 30, false],
    ['parc-2015', false, 'ankle', 50, false],
    ['parc-2015', false, 'toe', 30, false],
    ['parc-2015', false, 'tcpo2', 20, false],
    ['parc-2015', true, 'ankle', 70, false],
    ['parc-2015', true, 'toe', 50, false],
    ['parc-2015', true, 'tcpo2', 40, false],
    ['consensus-1991', false, 'ankle', 50, true],
    ['consensus-1991', false, 'toe', 30, true],
    ['tasc-2', false, 'ankle', 50, false],
    ['tasc-2', false, 'toe', 30, false],
    ['tasc-2', true, 'ankle', 70, false],
    ['tasc-2', true, 'toe', 50, false],
    ['esc-2017', false, 'ankle', 50, false],
    ['esc-2017', false, 'toe', 30, false],
    ['esc-2017', false, 'tcpo2', 30, false],
    ['iwgdf-2023', false, 'ankle', 50, false],
    ['iwgdf-2023', true, 'toe', 30, false],
    ['iwgdf-2023', true, 'tcpo2', 30, false],
    ['acc-aha', false, 'toe', 30, false],
    ['acc-aha', false, 'tcpo2', 30, false],
  ];
  it.each(limits)(
    '%s, tissue loss %s: %s of %i counts at the limit: %s',
    (threat, loss, measure, limit, at) => {
      const met = (mmHg: number) => {
        const site = measure === 'ankle' ? 'posterior-tibial' : measure;
        const pressures = { [site]: { left: mmHg } } as Pressures;
        return limbThreats(pressures, 'left', loss, chosen({ threat })).map((t) => t.measure);
      };
      expect(met(limit - 1)).toEqual([measure]);
      expect(met(limit)).toEqual(at ? [measure] : []);
      expect(met(limit + 1)).toEqual([]);
    },
  );

  it.each(['esc-2017', 'iwgdf-2023'] as const)('%s also counts an index below 0.40', (threat) => {
    const met = (ankle: number) =>
      limbThreats(
        { brachial: { right: 200 }, 'dorsalis-pedis': { right: ankle } },
        'right',
        false,
        chosen({ threat }),
      ).some((t) => t.measure === 'index');
    expect([met(78), met(80), met(82)]).toEqual([true, false, false]);
  });

  it('leaves the ankle out where its arteries are incompressible, but not the toe', () => {
    const stiff: Pressures = {
      brachial: { right: 30, left: 30 },
      'posterior-tibial': { left: 45 },
      toe: { left: 20 },
    };
    expect(limbThreats(stiff, 'left', false, chosen()).map((t) => t.measure)).toEqual(['toe']);
  });

  it('ACC/AHA names no ankle limit', () => {
    const low: Pressures = { 'posterior-tibial': { left: 10 } };
    expect(limbThreats(low, 'left', false, chosen({ threat: 'acc-aha' }))).toEqual([]);
  });
});

// Clark 2012 (10 and 15 at or above), Shadman 2004 (15 at or above), 2016 guideline (over 15), laboratory (over 20).
describe('armFindings, difference between the arms', () => {
  it.each<[PressureSettings['armDifference'], number, boolean]>([
    ['10', 9, false],
    ['10', 10, true],
    ['10', 11, true],
    ['15', 14, false],
    ['15', 15, true],
    ['15', 16, true],
    ['over-15', 15, false],
    ['over-15', 16, true],
    ['over-20', 20, false],
    ['over-20', 21, true],
  ])('by the limit %s a difference of %i counts: %s', (armDifference, mmHg, counts) => {
    const found = armFindings({ brachial: { right: 140, left: 140 - mmHg } }, chosen({ armDifference }));
    expect(found.length > 0).toBe(counts);
    if (counts)
      expect(found[0]).toMatchObject({ side: 'left', mmHg, levels: ['arm-inflow', 'axillo-brachial'] });
  });

  it('says nothing with one arm missing', () => {
    expect(armFindings({ brachial: { right: 200 } }, chosen())).toEqual([]);
    expect(readPressures({ brachial: { right: 200 } }).missingArms).toEqual([
      { site: 'brachial', side: 'left' },
    ]);
  });

  // Two laboratories: 30 and 20 mmHg between the arteries of one wrist; not more than 10 between upper arm and wrist.
  it.each<[PressureSettings['wristDifference'], number, boolean]>([
    ['30', 29, false],
    ['30', 30, true],
    ['30', 31, true],
    ['20', 19, false],
    ['20', 20, true],
    ['20', 21, true],
  ])('by the limit %s radial and ulnar %i apart count: %s', (wristDifference, apart, counts) => {
    const found = armFindings(
      { radial: { right: 120 - apart }, ulnar: { right: 120 } },
      chosen({ wristDifference }),
    );
    expect(found.length).toBe(counts ? 1 : 0);
    if (counts) expect(found[0]).toMatchObject({ code: 'wrist-difference', artery: 'radial' });
  });

  it.each<[PressureSettings['armDrop'], number, boolean]>([
    ['10', 9, false],
    ['10', 10, false],
    ['10', 11, true],
    ['20', 20, false],
    ['20', 21, true],
  ])('by the limit %s a fall of %i from upper arm to wrist counts: %s', (armDrop, fall, counts) => {
    const found = armFindings({ brachial: { left: 130 }, radial: { left: 130 - fall } }, chosen({ armDrop }));
    expect(found.map(({ code }) => code)).toEqual(counts ? ['arm-drop'] : []);
  });
});

// Laboratory criteria: below 20 normal, 20 to 30 suspicious, above 30 significant; study guide: above 20.
describe('segmentFindings', () => {
  it.each<[PressureSettings['drop'], number, string | undefined]>([
    ['30', 19, undefined],
    ['30', 20, 'suspicious'],
    ['30', 21, 'suspicious'],
    ['30', 29, 'suspicious'],
    ['30', 30, 'suspicious'],
    ['30', 31, 'significant'],
    ['20', 19, undefined],
    ['20', 20, undefined],
    ['20', 21, 'significant'],
  ])('by the limit %s a fall of %i from thigh to calf is %s', (drop, mmHg, strength) => {
    const found = segmentFindings(
      { 'low-thigh': { right: 150 }, calf: { right: 150 - mmHg } },
      chosen({ drop }),
    );
    expect(found.map((f) => f.strength)).toEqual(strength ? [strength] : []);
  });

  // Which drop points where: laboratory criteria and study guide.
  it.each([
    ['high-thigh', 'low-thigh', ['femoro-popliteal']],
    ['low-thigh', 'calf', ['femoro-popliteal']],
    ['calf', 'posterior-tibial', ['infrapopliteal']],
    ['low-thigh', 'posterior-tibial', ['femoro-popliteal', 'infrapopliteal']],
  ] as const)('a fall from %s to %s points to %j', (from, to, levels) => {
    const found = segmentFindings({ [from]: { left: 140 }, [to]: { left: 100 } } as Pressures, chosen());
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ code: 'drop', side: 'left', mmHg: 40, levels });
  });

  // Laboratory criteria: lowest normal thigh index 1.2 with two thigh cuffs, 1.0 with one.
  it.each([
    [119, true],
    [120, false],
    [121, false],
  ])('with two thigh cuffs a thigh of %i over 100 is low: %s', (high, low) => {
    const found = segmentFindings(
      { brachial: { right: 100, left: 100 }, 'high-thigh': { right: high }, 'low-thigh': { right: high } },
      chosen(),
    );
    expect(found.filter((f) => f.code === 'thigh-low').length > 0).toBe(low);
  });

  it.each([
    [99, true],
    [100, false],
    [101, false],
  ])('with one thigh cuff a thigh of %i over 100 is low: %s', (thigh, low) => {
    const found = segmentFindings(
      { brachial: { right: 100, left: 100 }, 'high-thigh': { right: thigh } },
      chosen(),
    );
    expect(found.length > 0).toBe(low);
  });

  it('low thighs on both sides point to the aorto-iliac level alone, on one side also to the groin', () => {
    const arm = { right: 140, left: 138 };
    const both = segmentFindings({ brachial: arm, 'high-thigh': { right: 100, left: 96 } }, chosen());
    expect(both.map((f) => [f.side, f.levels])).toEqual([
      ['right', ['aorto-iliac']],
      ['left', ['aorto-iliac']],
    ]);
    const one = segmentFindings(
      { brachial: arm, 'high-thigh': { right: 160, left: 150 }, calf: {} },
      chosen(),
    );
    expect(one).toEqual([]);
    const left = segmentFindings({ brachial: arm, 'high-thigh': { left: 96 } }, chosen());
    expect(left.map((f) => f.levels)).toEqual([['aorto-iliac', 'femoro-popliteal']]);
  });

  // Study guide: more than 20 to 30 mmHg between the legs at one level.
  it.each<[PressureSettings['sideDifference'], number, boolean]>([
    ['20', 20, false],
    ['20', 21, true],
    ['30', 30, false],
    ['30', 31, true],
  ])('by the limit %s calves %i apart point to the lower side: %s', (sideDifference, apart, counts) => {
    const found = segmentFindings({ calf: { right: 140, left: 140 - apart } }, chosen({ sideDifference }));
    expect(found.map((f) => [f.code, f.side])).toEqual(counts ? [['side-difference', 'left']] : []);
  });

  it('gives every finding on as evidence with the limb and its levels', () => {
    const reading = readPressures({
      brachial: { right: 150, left: 120 },
      'low-thigh': { left: 160 },
      calf: { left: 100 },
    });
    expect(
      pressureEvidence(reading).map(({ side, limb, levels, strength }) => [side, limb, levels, strength]),
    ).toEqual([
      ['left', 'leg', ['femoro-popliteal'], 'significant'],
      ['left', 'arm', ['arm-inflow', 'axillo-brachial'], 'significant'],
    ]);
  });
});

describe('segmental pressures in the localisation', () => {
  const leftLeg = (cuffs: Pressures) => {
    const { network } = readExamination({
      ...emptyExamination(),
      onset: 'chronic',
      pulses: { femoral: { left: { grade: 'reduced' } } },
      pressures: { brachial: { right: 140, left: 140 }, 'posterior-tibial': { left: 84 }, ...cuffs },
    });
    if (network.status !== 'read') throw new Error('not read');
    return (level: Level) =>
      network.limbs['left leg'].levels.find((l) => l.level === level)?.probability ?? 0;
  };

  it('a fall from a good thigh to the calf moves the answer to the femoro-popliteal level', () => {
    const without = leftLeg({});
    const fallen = leftLeg({ 'high-thigh': { left: 170 }, calf: { left: 90 } });
    expect(fallen('femoro-popliteal')).toBeGreaterThan(1.5 * without('femoro-popliteal'));
    expect(fallen('aorto-iliac')).toBeLessThan(without('aorto-iliac'));
  });

  it('a low thigh moves it to the aorto-iliac level', () => {
    const without = leftLeg({});
    const low = leftLeg({ 'high-thigh': { left: 90 } });
    expect(low('aorto-iliac')).toBeGreaterThan(without('aorto-iliac'));
  });

  // Lowest normal thigh index 1.2 with two thigh cuffs, 1.0 with one: laboratory criteria.
  it('puts the thigh in relation to its own lowest normal index', () => {
    const arm = { right: 100, left: 100 };
    const ratios = (more: Pressures) => cuffRatios({ brachial: arm, ...more }, 'left', chosen());
    expect(ratios({ 'high-thigh': { left: 120 }, 'low-thigh': { left: 118 } })).toEqual({ femoral: 1 });
    expect(ratios({ 'high-thigh': { left: 100 }, calf: { left: 90 } })).toEqual({
      femoral: 1,
      popliteal: 0.9,
    });
    expect(cuffRatios({ calf: { left: 90 } }, 'left', chosen())).toEqual({});
  });
});

describe('units', () => {
  // 1 mmHg = 133.322387415 Pa (ISO 80000-4): 16.0 kPa is 120.0 mmHg.
  it.each([
    [16, 120],
    [10, 75],
    [13.3, 99.8],
  ])('%f kPa is %f mmHg', (kPa, mmHg) => expect(toMmHg(kPa, 'kPa')).toBe(mmHg));

  it('every tenth of a kPa and every whole mmHg comes back as entered', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 400 }), (tenths) => {
        expect(fromMmHg(toMmHg(tenths / 10, 'kPa'), 'kPa')).toBe(tenths / 10);
      }),
    );
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 300 }), (mmHg) => {
        expect(fromMmHg(toMmHg(mmHg, 'mmHg'), 'mmHg')).toBe(mmHg);
      }),
    );
  });
});

describe('impossible pressures', () => {
  const refused = (value: unknown) => parseWith(pressuresSchema, { toe: { left: value } }, { strict: true });
  it.each([
    [-1],
    [300.1],
    [0.5],
    [5e-324],
    [Number.NaN],
    [Number.POSITIVE_INFINITY],
    ['120'],
    ['no signal'],
    [null],
  ])('%j is refused at its place, with what would be right', (value) => {
    const result = refused(value);
    expect(result.ok).toBe(false);
    if (result.ok) return;
    expect(result.faults[0]?.path).toEqual(['toe', 'left']);
    expect(result.faults.map(({ expected }) => expectedIn(expected))).toEqual([
      typeof value === 'number' && !Number.isFinite(value) ? 'json' : `0|1 to 300|${NO_PRESSURE.join('|')}`,
    ]);
  });

  it.each([[0], [1], [300], ['incompressible'], ['amputated']])('%j is taken', (value) => {
    expect(refused(value).ok).toBe(true);
  });

  it('two arms without a pressure are a contradiction: nothing could be divided by them', () => {
    const result = parseWith(pressuresSchema, { brachial: { right: 0, left: 0 } });
    expect(result.ok ? [] : result.faults.map(({ path }) => path)).toEqual([['brachial']]);
  });
});
