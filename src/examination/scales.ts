import type { Grade, PulseFinding } from './types/pulses.js';
import type { ScaleId } from './types/record.js';

/** One step of a scale: the numeral shown, the grade it is recorded as, and the source's word for it. */
export interface ScaleStep {
  /** `null` on the scale of words. */
  readonly numeral: number | null;
  readonly grade: Grade;
  /** Set where the scale tells more than the four grades do. */
  readonly increased?: true;
  readonly word: string;
}

export interface Scale {
  readonly id: ScaleId;
  readonly steps: readonly ScaleStep[];
  readonly source: string;
}

/**
 * The scales on which grades are entered and shown, weakest first.
 * Of the published five-level scales the one whose normal is 2 is used, so that 2 is normal on both numeric scales.
 */
export const SCALES: Readonly<Record<ScaleId, Scale>> = {
  '0-3': {
    id: '0-3',
    steps: [
      { numeral: 0, grade: 'absent', word: 'absent' },
      { numeral: 1, grade: 'reduced', word: 'present but reduced' },
      { numeral: 2, grade: 'normal', word: 'normal' },
      { numeral: 3, grade: 'bounding', word: 'bounding' },
    ],
    source: 'Armstrong DWJ et al., Can J Cardiol 2010;26:e346-e350, doi:10.1016/S0828-282X(10)70467-0',
  },
  '0-4': {
    id: '0-4',
    steps: [
      { numeral: 0, grade: 'absent', word: 'absent' },
      { numeral: 1, grade: 'reduced', word: 'diminished' },
      { numeral: 2, grade: 'normal', word: 'normal' },
      { numeral: 3, grade: 'bounding', increased: true, word: 'increased' },
      { numeral: 4, grade: 'bounding', word: 'bounding' },
    ],
    source: 'Swartz MH, Textbook of Physical Diagnosis, 3rd ed., peripheral vascular chapter',
  },
  words: {
    id: 'words',
    steps: [
      { numeral: null, grade: 'absent', word: 'absent' },
      { numeral: null, grade: 'reduced', word: 'reduced' },
      { numeral: null, grade: 'normal', word: 'normal' },
      { numeral: null, grade: 'bounding', word: 'bounding' },
    ],
    source: 'common practice, no source',
  },
};

/** The step of a scale that shows a finding; `undefined` when it has no grade. */
export function stepOf(finding: PulseFinding | undefined, scale: ScaleId): ScaleStep | undefined {
  if (!finding?.grade) return undefined;
  const steps = SCALES[scale].steps.filter((step) => step.grade === finding.grade);
  return steps.find((step) => Boolean(step.increased) === Boolean(finding.increased)) ?? steps[0];
}

/** The step with this numeral; on the scale of words the numerals of the 0-3 scale serve as keys. */
export function stepForDigit(digit: number, scale: ScaleId): ScaleStep | undefined {
  return SCALES[scale].steps[digit];
}
