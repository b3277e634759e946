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

  it('puts the true segment first in at least 39 limbs, and among the first three in 56', () => {
    expect(figures.network.segmentFirst).toBeGreaterThanOrEqual(39);
    expect(figures.network.segmentTop3).toBeGreaterThanOrEqual(56);
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
    expect(JSON.parse(run(FILE, '--json'))).toEqual(figures);
    expect(run()).toContain('52 of 59 (88%)');
    expect(() => run('no-such-file.json')).toThrow(/no-such-file\.json: cannot be read as JSON/);
  }, 30_000);
});
