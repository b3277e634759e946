import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Digit,
  DIGIT_STATES,
  type DigitLimb,
  DIGITS,
  digitsAt,
  type DigitState,
  EditError,
  emptyExamination,
  type Examination,
  formatExamination,
  parseExamination,
  patchAt,
  setDigit,
} from '../../../src/examination/index.js';
import { anyExamination } from '../../tools/arbitraries.js';

const LIMBS: readonly DigitLimb[] = (['arm', 'leg'] as const).flatMap((kind) =>
  (['right', 'left'] as const).map((side) => ({ kind, side })),
);

const act = fc.record({
  limb: fc.constantFrom(...LIMBS),
  digit: fc.constantFrom(...DIGITS),
  state: fc.option(fc.constantFrom(...DIGIT_STATES), { nil: undefined }),
});

describe('setDigit()', () => {
  it('sets one digit and nothing else, in any record, and leaves one that can be read again', () => {
    fc.assert(
      fc.property(anyExamination, act, (examination, { limb, digit, state }) => {
        const next = setDigit(examination, limb, digit, state);
        expect(digitsAt(next, limb)[digit]).toBe(state);
        for (const other of LIMBS)
          for (const one of DIGITS)
            if (other !== limb || one !== digit)
              expect(digitsAt(next, other)[one]).toBe(digitsAt(examination, other)[one]);
        const { inspection: _now, ...rest } = next;
        const { inspection: _before, ...was } = examination;
        expect(rest).toEqual(was);
        expect(parseExamination(JSON.parse(formatExamination(next)), { strict: true }).ok).toBe(true);
      }),
    );
  });

  it('takes back what it set, to the very record of before', () => {
    fc.assert(
      fc.property(act, ({ limb, digit, state }) => {
        const empty = emptyExamination();
        expect(setDigit(setDigit(empty, limb, digit, state), limb, digit, undefined)).toEqual(empty);
        expect(setDigit(empty, limb, digit, undefined)).toBe(empty);
      }),
    );
  });

  it('takes cause and size of an ulcer along with the last ulcer, and no sooner', () => {
    const limb = { kind: 'leg', side: 'right' } as const;
    const two = (['first', 'second'] as const).reduce<Examination>(
      (record, digit) => setDigit(record, limb, digit, 'ulcer'),
      emptyExamination(),
    );
    const known = {
      ...two,
      inspection: patchAt(two.inspection, ['leg', 'right', 'ulcerCause'], 'arterial'),
    } as Examination;
    const one = setDigit(known, limb, 'first', 'normal');
    expect(one.inspection?.leg?.right?.ulcerCause).toBe('arterial');
    const none = setDigit(one, limb, 'second', undefined);
    expect(none.inspection?.leg?.right).toEqual({ digits: { first: 'normal' } });
  });

  it('refuses a digit and a state that do not exist', () => {
    const limb = { kind: 'arm', side: 'left' } as const;
    expect(() => setDigit(emptyExamination(), limb, 'sixth' as Digit, 'pale')).toThrow(EditError);
    expect(() => setDigit(emptyExamination(), limb, 'first', 'green' as DigitState)).toThrow(EditError);
  });

  it('leaves alone what a later version recorded', () => {
    const limb = { kind: 'arm', side: 'left' } as const;
    const parsed = parseExamination({
      ...emptyExamination(),
      inspection: { arm: { left: { digits: { first: 'white-and-cold' } } } },
    });
    if (!parsed.ok) throw new Error('found a record that cannot be read');
    expect(setDigit(parsed.value, limb, 'first', 'pale')).toBe(parsed.value);
    expect(digitsAt(setDigit(parsed.value, limb, 'second', 'pale'), limb)).toEqual({ second: 'pale' });
  });
});
