import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { emptyExamination, type Examination } from '../../../src/examination/index.js';
import { recordDifferences } from '../../../src/examination/changes.js';
import { TypedNumber, WHOLE_AFTER } from '../../../src/elements/limb-flags/typed-number.js';
import { anyExamination, anyStep } from '../../tools/arbitraries.js';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

/** A bar without a page: what counts after each record it was given. */
function bar(): { give(next: Examination): void; counts(): Examination; leave(): void } {
  const host = {
    addController() {},
    removeController() {},
    requestUpdate() {},
    updateComplete: Promise.resolve(true),
  };
  const typed = new TypedNumber(host);
  let given = emptyExamination();
  return {
    give(next) {
      typed.follow(given, next);
      given = next;
    },
    counts: () => typed.counting(given),
    leave: () => typed.hostDisconnected(),
  };
}

function ankle(
  mmHg: number | undefined,
  record = emptyExamination(),
  side: 'left' | 'right' = 'right',
): Examination {
  const { [side]: _, ...others } = record.pressures?.['dorsalis-pedis'] ?? {};
  const sides = mmHg === undefined ? others : { ...others, [side]: mmHg };
  return { ...record, pressures: { ...record.pressures, 'dorsalis-pedis': sides } };
}

describe('a number that is typed in', () => {
  it('counts when it has stood for a second, and each key starts the second anew', () => {
    const { give, counts } = bar();
    for (const mmHg of [1, 14, 140]) {
      give(ankle(mmHg));
      vi.advanceTimersByTime(WHOLE_AFTER - 1);
      expect(counts()).toEqual(emptyExamination());
    }
    give(ankle(140));
    vi.advanceTimersByTime(1);
    expect(counts()).toEqual(ankle(140));
  });

  it('counts at once when another field changes, of numbers or not, and when the bar is taken away', () => {
    const { give, counts, leave } = bar();
    give(ankle(34));
    give(ankle(1, ankle(34), 'left'));
    expect(counts()).toEqual(ankle(34));
    give({ ...ankle(34), examiner: 'Somebody' });
    expect(counts()).toEqual({ ...ankle(34), examiner: 'Somebody' });
    give({ ...ankle(3), examiner: 'Somebody' });
    leave();
    expect(counts()).toEqual({ ...ankle(3), examiner: 'Somebody' });
  });

  it('is all that is ever left out, for no longer than it changes and a second', () => {
    const isNumber = (value: unknown): boolean => value === undefined || typeof value === 'number';
    const keys = fc.record({ mmHg: fc.option(fc.integer({ min: 0, max: 300 }), { nil: undefined }) });
    fc.assert(
      fc.property(
        anyExamination,
        fc.array(fc.tuple(fc.oneof(anyStep, keys), fc.nat({ max: 2 * WHOLE_AFTER }))),
        (start, acts) => {
          const { give, counts, leave } = bar();
          let record = start;
          give(record);
          for (const [act, wait] of acts) {
            record = typeof act === 'function' ? act(record) : ankle(act.mmHg, record);
            give(record);
            const behind = recordDifferences(counts(), record);
            expect(behind.length).toBeLessThanOrEqual(1);
            for (const { from, to } of behind) expect([from, to].every(isNumber)).toBe(true);
            vi.advanceTimersByTime(wait);
            if (wait >= WHOLE_AFTER) expect(counts()).toBe(record);
          }
          leave();
        },
      ),
    );
  });
});
