import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const page = readFileSync(new URL('../../../stories/accessibility.mdx', import.meta.url), 'utf8');

/** Criteria of levels A and AA by guideline, and how many of A and AA each has. Source: https://www.w3.org/TR/WCAG22/ (from memory). */
const CRITERIA = [
  ['1.1', [1]],
  ['1.2', [1, 2, 3, 4, 5]],
  ['1.3', [1, 2, 3, 4, 5]],
  ['1.4', [1, 2, 3, 4, 5, 10, 11, 12, 13]],
  ['2.1', [1, 2, 4]],
  ['2.2', [1, 2]],
  ['2.3', [1]],
  ['2.4', [1, 2, 3, 4, 5, 6, 7, 11]],
  ['2.5', [1, 2, 3, 4, 7, 8]],
  ['3.1', [1, 2]],
  ['3.2', [1, 2, 3, 4, 6]],
  ['3.3', [1, 2, 3, 4, 7, 8]],
  ['4.1', [2, 3]],
] as const;

const rows = page
  .split('\n')
  .filter((line) => /^\| \d/.test(line))
  .map((line) => line.split('|').map((cell) => cell.trim()));

/** Criteria that a first cell names: one, a list, or a range within a guideline. */
function named(cell: string): string[] {
  const numbers = cell.match(/\d+\.\d+\.\d+/g) ?? [];
  if (!/ to /.test(cell)) return numbers;
  const [from, to] = numbers.map((number) => number.split('.').map(Number)) as [number[], number[]];
  return Array.from({ length: to[2]! - from[2]! + 1 }, (_, i) => `${from[0]}.${from[1]}.${from[2]! + i}`);
}

describe('the statement of conformance', () => {
  it('speaks of each criterion of WCAG 2.2, levels A and AA, once', () => {
    const all = CRITERIA.flatMap(([guideline, ones]) => ones.map((one) => `${guideline}.${one}`));
    expect(all).toHaveLength(55);
    expect(rows.flatMap(([, cell = '']) => named(cell))).toEqual(all);
  });

  it('says of each whether it holds, and names how it was tested', () => {
    for (const [, criterion, state = '', how] of rows) {
      expect(state, criterion).toMatch(/^(Met|Does not apply|The page’s|\*\*Not tested)/);
      if (state.startsWith('Met')) expect(how, criterion).not.toMatch(/^–?$/);
    }
  });

  it('leans on tests that exist', () => {
    const tests = [...page.matchAll(/`([a-z-]+\/[a-z-]+)`/g)]
      .map(([, name]) => name)
      .filter((name) => name !== 'tests/browser' && name !== 'tests/unit');
    expect(new Set(tests).size).toBeGreaterThan(15);
    const at = (name: string) => new URL(`../../../tests/${name}.test.ts`, import.meta.url);
    const missing = tests.filter(
      (name) => !existsSync(at(`browser/${name}`)) && !existsSync(at(`unit/${name}`)),
    );
    expect(missing).toEqual([]);
  });

  it('says that no screen reader was tried', () => {
    expect(page).toMatch(/Not tried by anyone: a real screen reader/);
  });
});
