import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  changed,
  historyOf,
  redone,
  type TextHistory,
  undone,
} from '../../../src/elements/pulse-lesson-editor/history.js';

type Act = { readonly put: string; readonly kind?: string } | 'undo' | 'redo';
const anyActs: fc.Arbitrary<readonly Act[]> = fc.array(
  fc.oneof(
    fc.record(
      { put: fc.string({ maxLength: 3 }), kind: fc.constantFrom('a', 'b') },
      { requiredKeys: ['put'] },
    ),
    fc.constantFrom<Act>('undo', 'redo'),
  ),
  { maxLength: 40 },
);
const after = (acts: readonly Act[]): TextHistory =>
  acts.reduce<TextHistory>(
    (history, act) =>
      act === 'undo'
        ? undone(history)
        : act === 'redo'
          ? redone(history)
          : changed(history, act.put, act.kind),
    historyOf(''),
  );

describe('the history of a text', () => {
  it('leads back to the beginning and forward again to where it was', () => {
    fc.assert(
      fc.property(anyActs, (acts) => {
        let history = after(acts);
        const there = history.text;
        const steps = history.before.length;
        for (let i = 0; i < steps; i++) history = undone(history);
        expect(history.text).toBe('');
        expect(undone(history).text).toBe('');
        for (let i = 0; i < steps; i++) history = redone(history);
        expect(history.text).toBe(there);
      }),
    );
  });

  it('loses no text that was put as a step of its own', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.string({ minLength: 1 }), { minLength: 1, maxLength: 20 }), (texts) => {
        const history = after(texts.map((put) => ({ put })));
        expect([...history.before, history.text]).toEqual(['', ...texts]);
      }),
    );
  });

  it('takes letters typed in a row as one step', () => {
    const history = after(['a', 'ab', 'abc'].map((put) => ({ put, kind: 'type' })));
    expect(undone(history).text).toBe('');
  });
});
