import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyExamination, type Examination, parseExaminationText } from '../../../src/examination/index.js';
import {
  faultsIn,
  type Held,
  hold,
  isLost,
  reread,
  sameHeld,
  textOf,
} from '../../../src/elements/common/record-value.js';
import { examined } from '../../tools/examinations.js';

const read = parseExaminationText;
const take = (input: unknown, reader: typeof read | 'none' = read): Held<Examination> =>
  hold(input, emptyExamination(), reader === 'none' ? undefined : reader);
const text = (held: Held<Examination>): string => textOf(held, JSON.stringify);

/** Values that no reader of this version takes. */
const UNREADABLE: readonly (readonly [string, unknown])[] = [
  ['a later major version', '{"format":"pulse-map/2","pulses":{}}'],
  ['a field of a wrong type', '{ "format": "pulse-map/1", "scale": "0-3", "pulses": 7 }'],
  ['broken JSON', '{"format":"pulse-map/1",'],
  ['a text that is no record', 'left femoral absent'],
  ['a list', '[1, 2]'],
  ['a number', 7],
  ['an object of a later version', { format: 'pulse-map/2' }],
];

describe('what a control holds', () => {
  it.each([null, undefined, '', '  \n'])('is nothing for %j', (input) => {
    expect(take(input)).toEqual({ state: 'readable', value: emptyExamination() });
    expect(take(input, 'none').state, 'nothing to wait for').toBe('readable');
  });

  it.each(UNREADABLE)('is sealed for %s, with its faults and the very text', (_, input) => {
    const held = take(input);
    expect(held.state).toBe('sealed');
    expect(faultsIn(held).length).toBeGreaterThan(0);
    expect(text(held)).toBe(typeof input === 'string' ? input : JSON.stringify(input));
    expect(isLost(held)).toBe(false);
  });

  it('keeps any text that is not a record unchanged, read or waiting', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string(), fc.json(), fc.constantFrom(...UNREADABLE.map(([, v]) => v))),
        (input) => {
          const waiting = take(input, 'none');
          const held = take(input);
          fc.pre(held.state === 'sealed');
          const given = typeof input === 'string' ? input : JSON.stringify(input);
          expect(waiting.state).toBe('waiting');
          expect([text(waiting), text(held), text(reread(waiting, read))]).toEqual([given, given, given]);
          expect(sameHeld(reread(waiting, read), held)).toBe(true);
        },
      ),
    );
  });

  it('reads a waiting record as one given with the reader there', () => {
    const record = examined({ 'left femoral': 'absent' });
    for (const input of [record, JSON.stringify(record)]) {
      const waiting = take(input, 'none');
      expect(text(waiting)).toBe(JSON.stringify(record));
      expect(reread(waiting, read)).toEqual({ state: 'readable', value: record });
      expect(take(input)).toEqual({ state: 'readable', value: record });
    }
  });

  it('never throws, and says that nothing can be kept of what has no text', () => {
    const cycle: Record<string, unknown> = { format: 'pulse-map/1' };
    cycle['self'] = cycle;
    const hostile = {
      get pulses(): never {
        throw new Error('no');
      },
    };
    for (const input of [cycle, hostile, 7n, Symbol('x'), () => 1]) {
      for (const reader of [read, 'none'] as const) {
        const held = take(input, reader);
        expect(held.state).toBe('sealed');
        expect(isLost(held)).toBe(true);
        expect(text(held)).toBe('');
        expect(faultsIn(held)).toHaveLength(1);
      }
    }
    expect(sameHeld(take(cycle), take(null)), 'lost is not empty').toBe(false);
  });
});
