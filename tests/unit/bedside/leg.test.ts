import { describe, expect, it } from 'vitest';
import type { BedsideResult } from '../../../src/examination/index.js';
import {
  BEDSIDE_TESTS,
  type PallorGrade,
  pallorGrade,
  readBedside,
  readRefill,
} from '../../../src/bedside/index.js';

const {
  elevation,
  'colour-return': colour,
  'dependent-rubor': rubor,
  'venous-filling': filling,
} = BEDSIDE_TESTS;

describe('elevation test (Buerger)', () => {
  // Browse: below 20 degrees severe; 15 to 30 ischaemic; a normal leg keeps its colour at 90. 30: common practice, no source.
  it.each([
    [19, undefined, 'pale-below-limit', 'severe'],
    [20, undefined, 'pale-in-range', 'abnormal'],
    [21, undefined, 'pale-in-range', 'abnormal'],
    [29, undefined, 'pale-in-range', 'abnormal'],
    [30, undefined, 'pale-in-range', 'abnormal'],
    [31, undefined, 'pale-high', 'abnormal'],
    [29, 30, 'pale-below-limit', 'severe'],
    [30, 30, 'pale-in-range', 'abnormal'],
    [14, 15, 'pale-below-limit', 'severe'],
    [15, 15, 'pale-in-range', 'abnormal'],
    [90, undefined, 'pale-high', 'abnormal'],
  ])('pale at %i degrees by the limit %s is %s', (angle, limit, code, verdict) => {
    const reading = elevation.evaluate({ pallor: true, angle, ...(limit !== undefined && { limit }) });
    expect(reading).toMatchObject({ code, verdict, limit: limit ?? 20 });
  });

  it('the limit kept with a result wins over the one chosen for the practice, and that over the usual one', () => {
    const result: BedsideResult<'elevation'> = { pallor: true, angle: 25 };
    expect(elevation.evaluate(result).limit).toBe(20);
    expect(elevation.evaluate(result, 30)).toMatchObject({ limit: 30, verdict: 'severe' });
    expect(elevation.evaluate({ ...result, limit: 15 }, 30)).toMatchObject({
      limit: 15,
      verdict: 'abnormal',
    });
  });

  // Browse: to 90 degrees; Spittell-type grading: none within 60 s at 60 degrees.
  it.each([
    [45, 120, 'not-raised-fully', 'incomplete'],
    [60, 59, 'not-raised-fully', 'incomplete'],
    [60, 60, 'keeps-colour', 'normal'],
    [89, 60, 'not-raised-fully', 'incomplete'],
    [90, 60, 'keeps-colour', 'normal'],
  ])('no pallor at %i degrees for %i s is %s', (angle, seconds, code, verdict) => {
    expect(elevation.evaluate({ pallor: false, angle, seconds })).toMatchObject({ code, verdict });
  });

  // Common practice, no source: within seconds in severe, after two to three minutes in mild disease.
  it.each([
    [29, ['pallor-within-seconds']],
    [30, ['pallor-within-seconds']],
    [31, []],
    [119, []],
    [120, ['pallor-minutes']],
    [180, ['pallor-minutes']],
  ])('pallor after %i s carries the notes %j', (seconds, notes) => {
    expect(elevation.evaluate({ pallor: true, angle: 40, seconds }).notes).toEqual(notes);
  });

  // Spittell-type grading as restated by Stephens: 0 none in 60 s at 60 degrees, 1 at 60 s, 2 under 60, 3 within 30, 4 lying level.
  it.each<[boolean, number, number | undefined, PallorGrade | undefined]>([
    [false, 60, 60, 0],
    [false, 60, 59, undefined],
    [true, 60, 61, 0],
    [true, 60, 60, 1],
    [true, 60, 59, 2],
    [true, 60, 31, 2],
    [true, 60, 30, 3],
    [true, 60, 29, 3],
    [true, 0, undefined, 4],
    [true, 45, 20, undefined],
    [true, 60, undefined, undefined],
  ])('pallor %s at %i degrees after %s s is grade %s', (pallor, angle, seconds, grade) => {
    expect(pallorGrade({ pallor, angle, seconds })).toBe(grade);
  });

  it('is incomplete without an angle or a colour, and not done with a reason', () => {
    expect(elevation.evaluate({ pallor: true }).verdict).toBe('incomplete');
    expect(elevation.evaluate({ angle: 30 }).verdict).toBe('incomplete');
    expect(elevation.evaluate({ notDone: 'pain' })).toMatchObject({
      verdict: 'not-done',
      params: { reason: 'pain' },
    });
  });
});

describe('colour return', () => {
  // About 10 s usual (Bates-type teaching); from 15 s prolonged (common practice, no source); over 40 s severe (from memory).
  it.each([
    [9, undefined, 'usual', 'normal'],
    [10, undefined, 'usual', 'normal'],
    [11, undefined, 'slower-than-usual', 'borderline'],
    [14.9, undefined, 'slower-than-usual', 'borderline'],
    [15, undefined, 'prolonged', 'abnormal'],
    [30, undefined, 'prolonged', 'abnormal'],
    [40, undefined, 'prolonged', 'abnormal'],
    [40.1, undefined, 'severe', 'severe'],
    [10, 10, 'usual', 'normal'],
    [10.1, 10, 'prolonged', 'abnormal'],
  ])('%f s by the limit %s is %s', (seconds, limit, code, verdict) => {
    expect(colour.evaluate({ seconds, ...(limit !== undefined && { limit }) })).toMatchObject({
      code,
      verdict,
    });
  });

  it.each([
    [14, 'watched-too-short', 'incomplete'],
    [15, 'not-returned', 'abnormal'],
    [41, 'not-returned', 'severe'],
  ])('still pale after %i s is %s', (seconds, code, verdict) => {
    expect(colour.evaluate({ seconds, returned: false })).toMatchObject({ code, verdict });
  });
});

describe('dependent redness', () => {
  // Two to three minutes: common practice, no source.
  it.each([
    [false, 119, undefined, 'hung-too-short'],
    [false, 120, undefined, 'no-rubor'],
    [false, 121, undefined, 'no-rubor'],
    [false, 179, 180, 'hung-too-short'],
    [false, 180, 180, 'no-rubor'],
    [true, 60, undefined, 'rubor'],
    [true, undefined, undefined, 'rubor'],
  ])('red %s after %s s by the limit %s is %s', (red, seconds, limit, code) => {
    const result = {
      rubor: red,
      ...(seconds !== undefined && { seconds }),
      ...(limit !== undefined && { limit }),
    };
    expect(rubor.evaluate(result).code).toBe(code);
  });

  it('is incomplete while nobody said whether it reddened', () => {
    expect(rubor.evaluate({ seconds: 120 }).verdict).toBe('incomplete');
  });
});

describe('venous filling time', () => {
  // About 15 s usual (Bates-type teaching); over 20 s prolonged (McGee and Boyko 1998); over 40 s severe (from memory).
  it.each([
    [14, undefined, 'usual', 'normal'],
    [15, undefined, 'usual', 'normal'],
    [16, undefined, 'slower-than-usual', 'borderline'],
    [20, undefined, 'slower-than-usual', 'borderline'],
    [20.1, undefined, 'prolonged', 'abnormal'],
    [40, undefined, 'prolonged', 'abnormal'],
    [41, undefined, 'severe', 'severe'],
    [15, 15, 'usual', 'normal'],
    [15.1, 15, 'prolonged', 'abnormal'],
  ])('%f s by the limit %s is %s', (seconds, limit, code, verdict) => {
    expect(filling.evaluate({ seconds, ...(limit !== undefined && { limit }) })).toMatchObject({
      code,
      verdict,
    });
  });

  it('an early filling says nothing where the veins are incompetent, a late one still does', () => {
    expect(filling.evaluate({ seconds: 5, incompetentVeins: true })).toMatchObject({
      code: 'unreliable',
      verdict: 'incomplete',
    });
    expect(filling.evaluate({ seconds: 25, incompetentVeins: true }).verdict).toBe('abnormal');
  });

  it.each([
    [20, 'watched-too-short'],
    [21, 'not-filled'],
  ])('still empty after %i s is %s', (seconds, code) => {
    expect(filling.evaluate({ seconds, filled: false }).code).toBe(code);
  });
});

describe('readBedside', () => {
  it('keeps the sides apart and says nothing of a side not tested', () => {
    const bedside = { 'colour-return': { left: { seconds: 23 } } };
    expect(readBedside('colour-return', 'left', bedside)?.verdict).toBe('abnormal');
    expect(readBedside('colour-return', 'right', bedside)).toBeUndefined();
    expect(readBedside('elevation', 'left', undefined)).toBeUndefined();
  });

  it('takes the limit chosen for the practice', () => {
    const bedside = { 'colour-return': { left: { seconds: 12 } } };
    expect(readBedside('colour-return', 'left', bedside, { 'colour-return': 10 })?.verdict).toBe('abnormal');
  });
});

// Schriger and Baraff 1988: 95% limits 2.9 s in adult women and 4.5 s in the elderly.
describe('capillary refill', () => {
  it.each([
    [2, undefined, 'short'],
    [2.1, undefined, 'over-traditional'],
    [2.9, undefined, 'over-traditional'],
    [3, undefined, 'slow'],
    [2.9, '40-59', 'over-traditional'],
    [3, '40-59', 'slow'],
    [4.4, '60-79', 'over-traditional'],
    [4.4, '80-over', 'over-traditional'],
    [4.5, '60-79', 'over-traditional'],
    [4.6, '60-79', 'slow'],
    [4.6, '80-over', 'slow'],
  ] as const)('%f s at age %s is %s', (seconds, age, code) => {
    expect(readRefill(seconds, age).code).toBe(code);
  });
});

// McGee and Boyko 1998: filling beyond 20 s has a sensitivity of 22% and a specificity of 94%.
describe('accuracy of venous filling', () => {
  it('is the published one', () => {
    expect(filling.accuracy).toMatchObject({ sensitivity: 0.22, specificity: 0.94 });
  });
});
