import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyExamination, record, redo, startHistory, undo } from '../../../src/examination/index.js';
import { anyStep } from '../../tools/arbitraries.js';

describe('history', () => {
  it('undoes and redoes any number of edits exactly', () => {
    fc.assert(
      fc.property(fc.array(anyStep, { maxLength: 60 }), (steps) => {
        const states = [emptyExamination()];
        let history = startHistory(states[0]);
        for (const step of steps) {
          const next = step(history.present ?? emptyExamination());
          if (next !== history.present) states.push(next);
          history = record(history, next);
        }
        for (let i = states.length - 2; i >= 0; i -= 1) {
          history = undo(history);
          expect(history.present).toBe(states[i]);
        }
        expect(undo(history)).toBe(history);
        for (let i = 1; i < states.length; i += 1) {
          history = redo(history);
          expect(history.present).toBe(states[i]);
        }
        expect(redo(history)).toBe(history);
      }),
    );
  });

  it('forgets what was undone once something new is done', () => {
    const history = record(undo(record(startHistory('a'), 'b')), 'c');
    expect(history).toEqual({ past: ['a'], present: 'c', future: [] });
    expect(redo(history)).toBe(history);
  });

  it('makes no step for an act without effect', () => {
    const history = startHistory('a');
    expect(record(history, 'a')).toBe(history);
  });

  it('keeps its earlier states untouched', () => {
    const first = record(startHistory('a'), 'b');
    undo(first);
    record(first, 'c');
    expect(first).toEqual({ past: ['a'], present: 'b', future: [] });
  });
});
