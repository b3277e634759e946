import { describe, expect, it } from 'vitest';
import { BEDSIDE_TESTS, holdsAt, readBedside, readRefill } from '../../../src/bedside/index.js';
import {
  type BedsideTestId,
  emptyExamination,
  type Examination,
  parseExamination,
} from '../../../src/examination/index.js';
import { partMessagesFor } from '../../../src/locale/parts.js';
import {
  armsDoubt,
  exerciseReadings,
  indexChanges,
  indexIn,
  methodOf,
  readPressures,
} from '../../../src/pressures/index.js';
import rows from './rows.json' with { type: 'json' };

interface Reading {
  test: string;
  side?: 'left' | 'right';
  verdict: string;
  value?: number;
  fallMmHg?: number;
  fallPercent?: number;
  artery?: string;
  drop?: number;
  level?: string;
  previous?: number;
  code?: string;
  notes?: string[];
  indexRest?: number;
  says?: string[];
  notSays?: string[];
  also?: { armDifference: number; lower: 'left' | 'right' };
  falsePositives?: number[];
  accuracy?: { sensitivity: number; specificity: number };
}
interface Row {
  id: string;
  title: string;
  record: object;
  expect: { reading?: Reading };
  source: string;
}
const ROWS = (rows as unknown as readonly Row[]).filter(({ expect: e }) => e.reading);

function recordOf({ record, id }: Row): Examination {
  const read = parseExamination({ ...emptyExamination(), ...record }, { strict: true });
  if (!read.ok) throw new Error(`${id}: ${JSON.stringify(read.faults)}`);
  return read.value;
}

/** What a row calls a verdict, as the library says it. */
const BEDSIDE_VERDICTS: Readonly<Record<string, readonly string[]>> = {
  // Between two limits, or not enough done.
  indeterminate: ['incomplete', 'borderline'],
  positive: ['abnormal'],
  negative: ['normal'],
  normal: ['normal'],
  abnormal: ['abnormal'],
  severe: ['severe'],
  slow: ['abnormal'],
  'not-positive': ['borderline'],
};

const english = partMessagesFor('en');

function checkExercise(record: Examination, { side, ...row }: Reading): void {
  const settings = methodOf(record);
  const found = exerciseReadings(record.pressures ?? {}, settings).find((one) => one.side === side);
  const code = found?.code;
  if (row.artery) expect(found?.artery).toBe(row.artery);
  if (row.fallMmHg !== undefined) expect(found?.fall).toBe(row.fallMmHg);
  if (row.fallPercent !== undefined) expect(found?.indexFall).toBe(row.fallPercent);
  if (row.indexRest !== undefined) expect(found?.indexRest).toBe(row.indexRest);
  switch (row.verdict) {
    case 'abnormal':
      expect(code).toBe('abnormal');
      break;
    case 'not-abnormal':
      expect(found).toMatchObject({ code: 'normal', met: [] });
      break;
    // Neither fall is beyond its limit; an index of 0.80 afterwards is.
    case 'by-index-after-only':
      expect(found).toMatchObject({ code: 'abnormal', met: ['index-after'] });
      break;
    case 'indeterminate':
      expect(found).toMatchObject({ code: 'incomplete', missing: [{ when: 'rest', side }] });
      break;
    case 'not-abnormal-by-mmHg':
      expect(code).toBe('normal');
      expect(found?.indexFall).toBeUndefined();
      expect(found?.missing.map(({ site, when }) => [site, when])).toContainEqual(['brachial', 'after']);
      break;
    default:
      expect.fail(`no such verdict: ${row.verdict}`);
  }
}

function checkBedside(record: Examination, { test, verdict, code, notes, ...row }: Reading): void {
  const id = test as BedsideTestId;
  const side = record.bedside?.[id]?.left ? 'left' : 'right';
  const found = readBedside(id, side, record.bedside);
  if (verdict === 'within-limit')
    expect(found).toMatchObject({ code: 'one-artery', params: { ulnar: 'patent' } });
  else expect(BEDSIDE_VERDICTS[verdict]).toContain(found?.verdict);
  if (code) expect(found?.code).toBe(code);
  if (notes) expect(found?.notes).toEqual(notes);
  const { falsePositives = [], accuracy: known } = BEDSIDE_TESTS[id];
  // A figure is shown only beside a test that was read with the limit it was counted under.
  if (row.falsePositives)
    expect(
      falsePositives.filter((rate) => holdsAt(rate, found?.limit)).map(({ percent }) => percent),
    ).toEqual(row.falsePositives);
  if (row.accuracy) expect(known).toMatchObject(row.accuracy);
}

const CHECKS: Readonly<Record<string, (record: Examination, reading: Reading) => void>> = {
  exercise: checkExercise,
  'wrist-index': (record, { side = 'left', value, verdict, also }) => {
    const reading = readPressures(record.pressures);
    expect(indexIn(reading, 'wrist', side)).toMatchObject({ value, band: verdict });
    if (also)
      expect(reading.arms).toContainEqual(
        expect.objectContaining({ code: 'arm-difference', side: also.lower, mmHg: also.armDifference }),
      );
  },
  refill: (record, { verdict, says = [], notSays = [] }) => {
    const refill = record.inspection?.leg?.left?.refill ?? 0;
    const { code, limit } = readRefill(refill, record.context?.ageBand);
    expect(code).toBe(verdict === 'slow' ? 'slow' : 'over-traditional');
    const said = english.inspection.refillSaid(code, limit);
    expect(says.length).toBeGreaterThan(0);
    for (const words of says) expect(said).toContain(words);
    for (const word of notSays) expect(said).not.toMatch(new RegExp(`\\b${word}\\b`));
  },
  segment: (record, { side = 'left', drop, verdict, level }) => {
    expect(readPressures(record.pressures).segments).toContainEqual(
      expect.objectContaining({ code: 'drop', side, mmHg: drop, strength: verdict, levels: [level] }),
    );
  },
  'ankle-index': (record, { side = 'left', value, verdict, asks = [] }: Reading & { asks?: string[] }) => {
    const reading = readPressures(record.pressures);
    const band = verdict === 'above-1.40' ? 'incompressible' : verdict;
    expect(indexIn(reading, 'ankle', side)).toMatchObject({ value, band });
    const doubt = armsDoubt(record, reading.settings);
    expect(doubt.map(({ code }) => code)).toEqual(band === 'incompressible' ? ['ankle-above-low-arms'] : []);
    for (const language of ['en', 'de']) {
      const words = partMessagesFor(language).pressures;
      if (doubt.length)
        expect(words.bothArms(doubt, 'mmHg')).toMatch(/Both arm arteries may be diseased|beidseits erkrankt/);
      if (asks.includes('toe')) expect(words.incompressible(side)).toMatch(/toe|Zehen/);
    }
  },
  change: (record, { side, previous = 0, value, verdict }) => {
    const arm = record.pressures?.brachial?.right as number;
    const earlier = { ...record.pressures, 'posterior-tibial': { left: Math.ceil(arm * previous) } };
    const settings = methodOf(record);
    const [change] = indexChanges(earlier, record.pressures ?? {}, settings);
    expect(change).toMatchObject({ side, before: previous, value, real: verdict === 'real-change' });
  },
};

describe('every row of the decision tables on a test or a measurement', () => {
  it('is one of 30', () => expect(ROWS).toHaveLength(30));

  it.each(ROWS.map((row) => [row.id, row.title, row] as const))('%s: %s', (_id, _title, row) => {
    const { reading } = row.expect;
    if (!reading) throw new Error(row.id);
    (CHECKS[reading.test] ?? checkBedside)(recordOf(row), reading);
  });
});

describe('a change of the ankle index between two visits', () => {
  const at = (mmHg: number) => ({ brachial: { right: 100, left: 100 }, 'posterior-tibial': { left: mmHg } });
  const settings = methodOf({});

  // Reporting standards 1997 (from memory): 0.15.
  it.each([
    [95, 80, -0.15, true],
    [95, 81, -0.14, false],
    [80, 95, 0.15, true],
    [80, 80, 0, false],
  ])('%i to %i mmHg: %f, real: %s', (before, after, by, real) => {
    expect(indexChanges(at(before), at(after), settings)).toEqual([
      expect.objectContaining({ side: 'left', by, real }),
    ]);
  });

  it('is not told of an artery that cannot be compressed, or that was measured once', () => {
    expect(indexChanges(at(95), at(150), settings)).toEqual([]);
    expect(indexChanges({}, at(80), settings)).toEqual([]);
  });
});
