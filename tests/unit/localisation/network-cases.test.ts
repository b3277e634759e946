import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { localise } from '../../../src/localisation/network/index.js';
import { recordOf } from '../../cases/convert.js';
import { figuresOf } from '../../cases/figures.js';
import { readCases } from '../../cases/form.js';

/* Sources of the cases stand in the file, beside each case. */
const FILE = fileURLToPath(new URL('../../cases/published-cases.json', import.meta.url));
const cases = readCases(FILE);
const figures = figuresOf(cases);

describe('The network on 63 published cases', () => {
  it('puts the level first in at least 52 of 59 limbs, and in all 16 that their pulses can decide', () => {
    expect(cases).toHaveLength(63);
    expect(figures.items).toBe(59);
    expect(figures.decidable.items).toBe(16);
    expect(figures.network.levelFirst).toBeGreaterThanOrEqual(52);
    expect(figures.network.levelFirstDecidable).toBe(16);
  });

  it('puts the true segment first in at least 37 limbs, and among the first three in 51', () => {
    expect(figures.network.segmentFirst).toBeGreaterThanOrEqual(37);
    expect(figures.network.segmentTop3).toBeGreaterThanOrEqual(51);
  });

  it('spreads its belief honestly: a log loss of at most 0.73, far below the rule’s', () => {
    expect(figures.network.logLoss).toBeLessThan(0.73);
    expect(figures.network.logLoss).toBeLessThan(figures.rule.logLoss / 2);
  });

  it('never puts a block on a side with normal pulses, nor claims one where every pulse is normal', () => {
    expect(figures.sideMoved).toBe(0);
    expect(figures.normalsBlocked).toBe(0);
  });

  it('keeps to the side as written where a source contradicts itself', () => {
    const { examination, pressures } = recordOf(cases.find(({ id }) => id === 'pc-022')!);
    const reading = localise(examination, { pressures });
    if (reading.status !== 'read') throw new Error('expected a reading');
    expect(reading.limbs['right leg'].first?.pieces.every((piece) => !piece.startsWith('left'))).toBe(true);
    expect(reading.limbs['left leg'].first).toBeUndefined();
  });

  it('prints the figures as one JSON object, and a clear error for a file that is none', () => {
    const program = fileURLToPath(new URL('../../cases/score.ts', import.meta.url));
    const run = (...args: string[]): string =>
      execFileSync(process.execPath, ['--import', 'tsx', program, ...args], {
        encoding: 'utf8',
        stdio: 'pipe',
      });
    expect(JSON.parse(run(FILE, '--json'))).toEqual(JSON.parse(JSON.stringify(figures)));
    expect(() => run('no-such-file.json')).toThrow(/no-such-file\.json: cannot be read as JSON/);
  }, 60_000);
});

describe('The network on both files of cases, 89 reports', () => {
  const more = readCases(fileURLToPath(new URL('../../cases/given-2.json', import.meta.url)));
  const all = figuresOf([...cases, ...more]);
  const everyday = figuresOf(more);

  it('puts the level first in at least 66 of 77 limbs, 14 of the 18 everyday ones, 25 of the 26 decidable', () => {
    expect(cases.length + more.length).toBe(89);
    expect([all.items, everyday.items, all.decidable.items]).toEqual([77, 18, 26]);
    expect(all.network.levelFirst).toBeGreaterThanOrEqual(66);
    expect(everyday.network.levelFirst).toBeGreaterThanOrEqual(14);
    expect(all.network.levelFirstDecidable).toBeGreaterThanOrEqual(25);
    const counted = Object.values(all.byLevel).reduce((sum, { items }) => sum + items, 0);
    expect(counted).toBe(77);
  });

  it('blames at most one in five of the limbs without arterial disease', () => {
    expect(all.negatives.items).toBeGreaterThanOrEqual(6);
    expect(all.negatives.blamed / all.negatives.items).toBeLessThanOrEqual(0.2);
  });

  it('says what it is right about: a calibration error of at most 0.12 in five bins', () => {
    expect(all.calibration.bins).toHaveLength(5);
    expect(all.calibration.ece).toBeLessThanOrEqual(0.12);
  });

  it('keeps the promise of its words: firm is right in nine of ten, fairly firm in seven', () => {
    expect(all.firm.firm.items).toBeGreaterThan(10);
    expect(all.firm.firm.right / all.firm.firm.items).toBeGreaterThanOrEqual(0.9);
    expect(all.firm.fairly.right / all.firm.fairly.items).toBeGreaterThanOrEqual(0.7);
  });
});
