import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import {
  addMark,
  emptyExamination,
  type Examination,
  formatExamination,
  setPulse,
} from '../../../src/examination/index.js';
import { anyNewMark, pulsePatch, pulsePlace } from '../../tools/arbitraries.js';

describe('formatExamination', () => {
  it('writes what JSON would, whatever was written before', () => {
    const step = fc.oneof(
      anyNewMark.map((mark) => (e: Examination) => addMark(e, mark)),
      fc.tuple(pulsePlace, pulsePatch).map(([place, patch]) => (e: Examination) => {
        try {
          return setPulse(e, place, patch);
        } catch {
          return e;
        }
      }),
    );
    fc.assert(
      fc.property(fc.array(step, { maxLength: 8 }), (steps) => {
        let examination = emptyExamination();
        const all = [examination];
        for (const edit of steps) all.push((examination = edit(examination)));
        // Back and forth, as undo does.
        for (const one of [...all, ...all.toReversed()])
          expect(formatExamination(one)).toBe(JSON.stringify(one));
      }),
    );
  });

  it('writes no mark again for a pulse', () => {
    const corners = Array.from({ length: 60 }, (_, i) => [600 + i, 900 + (i % 7)] as const);
    const marked = addMark(emptyExamination(), { kind: 'ulcer', points: corners });
    formatExamination(marked);
    const stringify = vi.spyOn(JSON, 'stringify');
    formatExamination(setPulse(marked, { site: 'femoral', side: 'left' }, { grade: 'absent' }));
    const longest = Math.max(...stringify.mock.results.map(({ value }) => String(value).length));
    stringify.mockRestore();
    expect(longest).toBeLessThan(200);
  });

  it('writes what others made and may change anew each time', () => {
    const pulses = { femoral: { left: { grade: 'absent' } } } as { femoral: { left: { grade: string } } };
    const own = { ...emptyExamination(), pulses } as unknown as Examination;
    expect(formatExamination(own)).toContain('absent');
    pulses.femoral.left.grade = 'normal';
    expect(formatExamination(own)).toContain('normal');
  });
});
