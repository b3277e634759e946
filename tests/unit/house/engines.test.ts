import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beyond, isBeyond, LIMITS } from '../../tools/engines/beyond.mjs';
import { countSessions } from '../../tools/wtr-count-reporter.mjs';

interface Told {
  name: string;
  passed: boolean;
  skipped: boolean;
  error?: { message: string };
}

const UNREACHED = { message: beyond('webkit', 'accessibility tree').message };
const WRONG = { message: 'expected 1 to equal 2' };

/** What the runner tells of a test, by what became of it. */
const TESTS: Record<'passed' | 'failed' | 'beyond' | 'skipped' | 'leftOut', Omit<Told, 'name'>> = {
  passed: { passed: true, skipped: false },
  failed: { passed: false, skipped: false, error: WRONG },
  beyond: { passed: false, skipped: false, error: UNREACHED },
  skipped: { passed: false, skipped: true },
  leftOut: { passed: false, skipped: false },
};
type Outcome = keyof typeof TESTS;

function session(outcomes: readonly Outcome[], hooks: readonly { message: string }[] = []) {
  return {
    testFile: 'a.test.ts',
    passed: hooks.length === 0 && outcomes.every((outcome) => outcome === 'passed'),
    errors: hooks,
    testResults: {
      name: '',
      tests: [],
      suites: [{ name: 'a', suites: [], tests: outcomes.map((name) => ({ name, ...TESTS[name] })) }],
    },
  };
}

const counts = (...sessions: object[]) => {
  const { passed, failed, beyond: apart } = countSessions(sessions);
  return { passed, failed, beyond: apart };
};

describe('the counts of a browser test run', () => {
  it('set apart what an engine cannot be told', () => {
    expect(counts(session(['passed', 'beyond', 'failed']))).toEqual({ passed: 1, failed: 1, beyond: 1 });
  });

  it('set apart the tests that a hook left out because it asked for that', () => {
    expect(counts(session(['passed', 'leftOut', 'leftOut'], [UNREACHED]))).toEqual({
      passed: 1,
      failed: 0,
      beyond: 2,
    });
  });

  it('do not so where any hook of the file failed otherwise', () => {
    expect(counts(session(['leftOut', 'leftOut'], [UNREACHED, WRONG]))).toEqual({
      passed: 0,
      failed: 2,
      beyond: 0,
    });
  });

  it('take a test that is skipped on purpose as failed, whatever a hook says', () => {
    expect(counts(session(['skipped'], [UNREACHED]))).toEqual({ passed: 0, failed: 1, beyond: 0 });
  });

  it('miss neither a file that cannot be loaded nor a hook that fails after the last test', () => {
    const unloaded = { testFile: 'b.test.ts', passed: false, errors: [WRONG], testResults: undefined };
    expect(counts(unloaded)).toEqual({ passed: 0, failed: 1, beyond: 0 });
    expect(counts(session(['passed'], [WRONG]))).toEqual({ passed: 1, failed: 1, beyond: 0 });
    expect(counts(session(['passed', 'beyond'], [WRONG]))).toEqual({ passed: 1, failed: 1, beyond: 1 });
  });

  it('count every test once, and no file that did not pass as nothing', () => {
    const outcome = fc.constantFrom(...(Object.keys(TESTS) as Outcome[]));
    const hook = fc.constantFrom(UNREACHED, WRONG);
    fc.assert(
      fc.property(fc.array(outcome), fc.array(hook, { maxLength: 2 }), (outcomes, hooks) => {
        const told = session(outcomes, hooks);
        const { passed, failed, beyond: apart } = counts(told);
        const sum = passed + failed + apart;
        expect(sum === outcomes.length || (sum === outcomes.length + 1 && failed === 1)).toBe(true);
        expect(passed).toBe(outcomes.filter((one) => one === 'passed').length);
        expect(failed + apart > 0).toBe(!told.passed);
        if (hooks.includes(WRONG)) expect(failed).toBeGreaterThan(0);
      }),
    );
  });
});

describe('what lies beyond an engine', () => {
  const rows = readFileSync(new URL('../../../DEVELOPERS.md', import.meta.url), 'utf8')
    .split('### What lies beyond an engine')[1]
    ?.split('\n#')[0]
    ?.split('\n')
    .filter((line) => /^\| (?!engine|-)/.test(line))
    .map((line) =>
      line
        .split('|')
        .slice(1, 4)
        .map((cell) => cell.trim()),
    );

  it('stands in the guide as in the list', () => {
    const listed = Object.entries(LIMITS).flatMap(([engine, limits]) =>
      Object.entries(limits).map(([what, why]) => [engine, what, why]),
    );
    expect(rows).toEqual(listed);
  });

  it.each(Object.keys(LIMITS))('is what the commands for %s refuse, no more and no less', (engine) => {
    const source = readFileSync(new URL(`../../tools/engines/${engine}.mjs`, import.meta.url), 'utf8');
    const refused = [...source.matchAll(/beyond\('(\w+)', '([^']+)'\)/g)];
    expect(new Set(refused.map(([, whose]) => whose))).toEqual(new Set([engine]));
    const named = [...new Set(refused.map(([, , what]) => what))].sort();
    expect(named).toEqual(Object.keys(LIMITS[engine as keyof typeof LIMITS]).sort());
  });

  it('needs a line in the list', () => {
    expect(() => beyond('firefox', 'pen')).toThrow('no line in LIMITS');
    expect(isBeyond(beyond('firefox', 'tagged PDF').message)).toBe(true);
    expect(isBeyond('expected 1 to equal 2')).toBe(false);
  });
});
