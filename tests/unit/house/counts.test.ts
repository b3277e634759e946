import { describe, expect, it } from 'vitest';
import { failureLines, failuresInFull, vitestCounts } from '../../tools/counts.mjs';

const ROOT = '/project';

/** What vitest writes of a file, as far as it is read. */
function file(name: string, statuses: readonly string[], message = '') {
  const failed = message !== '' || statuses.includes('failed');
  return {
    name: `${ROOT}/${name}`,
    status: failed ? 'failed' : 'passed',
    message,
    assertionResults: statuses.map((status, at) => ({
      status,
      fullName: `test ${at + 1}`,
      failureMessages: status === 'failed' ? ['expected 1 to be 2\n    at a.test.ts:3'] : [],
    })),
  };
}

function counted(...files: ReturnType<typeof file>[]) {
  const passed = files.flatMap((one) => one.assertionResults).filter((test) => test.status === 'passed');
  return vitestCounts({ numPassedTests: passed.length, testResults: files }, ROOT);
}

describe('the end of a run', () => {
  it('names each failed test, what was left out, and a file that could not be loaded', () => {
    const result = counted(
      file('tests/a.test.ts', ['passed', 'failed', 'pending']),
      file('tests/b.test.ts', [], 'Cannot find module'),
      file('tests/c.test.ts', ['passed']),
    );
    expect(result).toMatchObject({ passed: 2, failed: 3 });
    expect(failureLines('unit tests', result)).toEqual([
      'unit tests: tests/a.test.ts > test 2: expected 1 to be 2',
      'unit tests: tests/a.test.ts > test 3: left out',
      'unit tests: tests/b.test.ts: Cannot find module',
    ]);
    expect(failuresInFull(result.failures)).toContain(
      'test 2\n    expected 1 to be 2\n        at a.test.ts:3',
    );
  });

  it('is empty where nothing failed', () => {
    expect(failureLines('unit tests', counted(file('tests/a.test.ts', ['passed'])))).toEqual([]);
  });

  it('gives the last line of a step that counts no tests, without its colours', () => {
    const output = 'checking\n\u001b[31m2 errors\u001b[39m\n';
    expect(failureLines('lint', { failed: 1, output })).toEqual(['lint: 2 errors']);
  });
});
