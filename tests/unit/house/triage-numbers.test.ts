import { readdirSync, readFileSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { DEFAULT_TRIAGE_SETTINGS } from '../../../src/core.js';

const folder = new URL('../../../src/triage/', import.meta.url);

/** Files whose numbers are settings themselves. */
const SETTINGS = ['settings.ts', 'compression-limits.ts'];

/** Numbers that no rule weighs, and why. 0 and 1 count and index, and are let pass. */
const NO_RULE: readonly (readonly [file: string, numbers: readonly number[], why: string])[] = [
  ['infection.ts', [38, 36, 90, 20, 4.3, 12, 4, 10], 'definitions of signs that the examiner ticks'],
  ['infection.ts', [2, 3], 'names of grades'],
  ['onset.ts', [3_600_000, 100], 'units'],
  ['facts.ts', [2], 'the two ends of a limb'],
  ['chronic.ts', [4], 'a category of Rutherford'],
  ['pathway.ts', [120, 60, 59], 'lengths of text'],
  ['observations.ts', [60, 10, 60_000], 'what may be entered, a first interval that hosts set, and units'],
];

/** Every number written in a file but 0 and 1. */
function numbersIn(file: string): number[] {
  const text = readFileSync(new URL(file, folder), 'utf8');
  const found: number[] = [];
  const look = (node: ts.Node): void => {
    if (ts.isNumericLiteral(node)) found.push(Number(node.text));
    ts.forEachChild(node, look);
  };
  look(ts.createSourceFile(file, text, ts.ScriptTarget.Latest));
  return found.filter((value) => value > 1 || (value > 0 && value < 1));
}

const leaves = (value: unknown, path: string): readonly string[] =>
  typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([key, inner]) => leaves(inner, path ? `${path}.${key}` : key))
    : [path];

describe('every number of the triage is a setting', () => {
  const files = readdirSync(folder).filter((file) => file.endsWith('.ts') && !SETTINGS.includes(file));

  it.each(files)('%s weighs by no number of its own', (file) => {
    const allowed = NO_RULE.filter(([of]) => of === file).flatMap(([, numbers]) => numbers);
    expect(numbersIn(file).filter((value) => !allowed.includes(value))).toEqual([]);
  });

  it('finds a number where there is one, and every exception still stands', () => {
    expect(numbersIn('settings.ts')).toContain(336);
    for (const [file, numbers] of NO_RULE)
      expect(numbersIn(file), file).toEqual(expect.arrayContaining([...numbers]));
  });

  it('names every setting on the page of the triage', () => {
    const page = readFileSync(new URL('../../../stories/triage.mdx', import.meta.url), 'utf8');
    const missing = leaves(DEFAULT_TRIAGE_SETTINGS, '').filter((path) => {
      const parts = path.split('.');
      return !parts.some((_, i) => page.includes(`\`${parts.slice(0, i + 1).join('.')}\``));
    });
    expect(missing).toEqual([]);
  });
});
