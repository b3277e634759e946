import { describe, expect, it } from 'vitest';
import { GRADES, SCALE_IDS, SCALES, stepForDigit, stepOf } from '../../../src/examination/index.js';

/** Labels as published, numeral by numeral. */
const PUBLISHED = {
  /** Source: Armstrong DWJ et al., Can J Cardiol 2010;26:e346-e350, doi:10.1016/S0828-282X(10)70467-0. */
  '0-3': ['absent', 'present but reduced', 'normal', 'bounding'],
  /** Source: Swartz MH, Textbook of Physical Diagnosis, 3rd ed., chapter on the peripheral vascular system. */
  '0-4': ['absent', 'diminished', 'normal', 'increased', 'bounding'],
  /** Common practice, no source. */
  words: ['absent', 'reduced', 'normal', 'bounding'],
} as const;

describe('the scales', () => {
  for (const id of SCALE_IDS) {
    it(`carry the published labels on ${id}`, () => {
      expect(SCALES[id].steps.map((step) => step.word)).toEqual(PUBLISHED[id]);
    });

    it(`number the steps from 0 upward on ${id}, or not at all`, () => {
      const numerals = SCALES[id].steps.map((step) => step.numeral);
      expect(numerals).toEqual(id === 'words' ? [null, null, null, null] : numerals.map((_, i) => i));
    });

    it(`know a step for every grade on ${id}, weakest first`, () => {
      const ranks = SCALES[id].steps.map((step) => GRADES.indexOf(step.grade));
      expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
      for (const grade of GRADES) expect(stepOf({ grade }, id)?.grade).toBe(grade);
    });
  }

  it('have 2 for normal on both numeric scales', () => {
    expect(stepOf({ grade: 'normal' }, '0-3')?.numeral).toBe(2);
    expect(stepOf({ grade: 'normal' }, '0-4')?.numeral).toBe(2);
  });

  it('tell increased from bounding on the scale that knows both, and show one as the other where not', () => {
    expect(stepOf({ grade: 'bounding', increased: true }, '0-4')?.numeral).toBe(3);
    expect(stepOf({ grade: 'bounding' }, '0-4')?.numeral).toBe(4);
    expect(stepOf({ grade: 'bounding', increased: true }, '0-3')?.numeral).toBe(3);
  });

  it('name their source', () => {
    for (const id of SCALE_IDS) expect(SCALES[id].source.length).toBeGreaterThan(10);
  });

  it('show no step without a grade', () => {
    expect(stepOf(undefined, '0-3')).toBeUndefined();
    expect(stepOf({ couldNotExamine: 'cast' }, '0-3')).toBeUndefined();
  });
});

describe('stepForDigit', () => {
  it('finds the step by its numeral, by place on the scale of words, and none beyond the scale', () => {
    expect(stepForDigit(1, '0-3')?.grade).toBe('reduced');
    expect(stepForDigit(3, '0-4')).toMatchObject({ grade: 'bounding', increased: true });
    expect(stepForDigit(0, 'words')?.grade).toBe('absent');
    expect(stepForDigit(4, '0-3')).toBeUndefined();
    expect(stepForDigit(-1, '0-3')).toBeUndefined();
  });
});
