import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ARM_DELAYS,
  EditError,
  emptyExamination,
  LEG_DELAYS,
  ONSETS,
  parseExamination,
  SCALE_IDS,
  setDelays,
  setFields,
  setOnset,
  setScale,
} from '../../../src/examination/index.js';

const maybe = <T extends string>(words: readonly T[]) =>
  fc.option(fc.constantFrom(...words), { nil: undefined });

describe('scale, onset and delays without the schema', () => {
  it('write what setFields writes, and what any reader takes', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...SCALE_IDS),
        maybe(ONSETS),
        maybe(ARM_DELAYS),
        fc.record({ right: maybe(LEG_DELAYS), left: maybe(LEG_DELAYS) }),
        (scale, onset, radioRadial, radioFemoral) => {
          const light = setDelays(setOnset(setScale(emptyExamination(), scale), onset), {
            radioRadial,
            radioFemoral,
          } as never);
          const whole = setFields(emptyExamination(), {
            scale,
            onset,
            delays: { radioRadial, radioFemoral } as never,
          });
          expect(parseExamination(light)).toMatchObject({ ok: true, value: light });
          expect(JSON.parse(JSON.stringify(light))).toEqual(JSON.parse(JSON.stringify(parsed(whole))));
        },
      ),
      { numRuns: 60 },
    );
  });

  it('refuse words that do not exist, by the name of the field', () => {
    const at = emptyExamination();
    for (const edit of [
      () => setScale(at, '0-9' as never),
      () => setOnset(at, 'soon' as never),
      () => setDelays(at, { radioRadial: 'both' as never }),
      () => setDelays(at, { radioFemoral: { left: 'late' as never } }),
    ])
      expect(edit).toThrow(EditError);
  });

  it('leave what a later version recorded as it is', () => {
    const read = parseExamination({
      ...emptyExamination(),
      onset: 'creeping',
      delays: { radioRadial: 'odd' },
    });
    if (!read.ok) throw new Error('not read');
    expect(setOnset(read.value, 'acute')).toBe(read.value);
    expect(setDelays(read.value, { radioFemoral: { left: 'none' } })).toBe(read.value);
  });
});

/** The record without delays in which nothing is said. */
function parsed({ delays, ...rest }: ReturnType<typeof setFields>): object {
  const said =
    delays && (delays.radioRadial !== undefined || Object.keys(delays.radioFemoral ?? {}).length > 0);
  return said ? { ...rest, delays: tidy(delays) } : rest;
}

function tidy(delays: object): object {
  return Object.fromEntries(
    Object.entries(delays).filter(([, value]) => Object.keys(value as object).length > 0),
  );
}
