import fc from 'fast-check';
import { LIMBS, LISTENING_PLACES, type Place, PULSE_PLACES } from '../../src/anatomy/index.js';
import {
  ARM_DELAYS,
  type BruitFinding,
  BRUITS,
  DOPPLER_SIGNALS,
  emptyExamination,
  type Examination,
  GRADES,
  LEG_DELAYS,
  ONSETS,
  type PulseFinding,
  REASONS,
  SCALE_IDS,
  setBruit,
  setFields,
  setPulse,
} from '../../src/examination/index.js';

/** A note of any text the record takes, odd scripts and control characters included. */
export const noteText = fc.string({ minLength: 1, maxLength: 40, unit: 'binary' });

const yes = fc.constant(true as const);
const anyGrade = fc.constantFrom(...GRADES);
const anyReason = fc.constantFrom(...REASONS);

/** A change to a pulse site, contradictory ones included, fields to take away included. */
export const pulsePatch: fc.Arbitrary<Partial<PulseFinding>> = fc.record(
  {
    grade: fc.option(anyGrade, { nil: undefined }),
    increased: fc.option(yes, { nil: undefined }),
    couldNotExamine: fc.option(anyReason, { nil: undefined }),
    expansile: fc.option(yes, { nil: undefined }),
    thrill: fc.option(yes, { nil: undefined }),
    doppler: fc.option(fc.constantFrom(...DOPPLER_SIGNALS), { nil: undefined }),
    note: fc.option(fc.oneof(fc.constant(''), noteText), { nil: undefined }),
  },
  { requiredKeys: [] },
);

/** A change to a listening site, in the same manner. */
export const bruitPatch: fc.Arbitrary<Partial<BruitFinding>> = fc.record(
  {
    bruit: fc.option(fc.constantFrom(...BRUITS), { nil: undefined }),
    couldNotExamine: fc.option(anyReason, { nil: undefined }),
    note: fc.option(fc.oneof(fc.constant(''), noteText), { nil: undefined }),
  },
  { requiredKeys: [] },
);

export const pulsePlace = fc.constantFrom(...PULSE_PLACES);
export const listeningPlace = fc.constantFrom(...LISTENING_PLACES);
export const anyLimb = fc.constantFrom(...LIMBS);

type Step = (examination: Examination) => Examination;
const pulseStep: fc.Arbitrary<Step> = fc.tuple(pulsePlace, pulsePatch).map(
  ([place, patch]) =>
    (e: Examination) =>
      setPulse(e, place as Place, patch),
);
const bruitStep: fc.Arbitrary<Step> = fc.tuple(listeningPlace, bruitPatch).map(
  ([place, patch]) =>
    (e: Examination) =>
      setBruit(e, place as Place, patch),
);
const fieldStep: fc.Arbitrary<Step> = fc
  .record(
    {
      scale: fc.constantFrom(...SCALE_IDS),
      onset: fc.constantFrom(...ONSETS),
      examiner: noteText,
      delays: fc.record(
        {
          radioRadial: fc.constantFrom(...ARM_DELAYS),
          radioFemoral: fc.record({ right: fc.constantFrom(...LEG_DELAYS) }, { requiredKeys: [] }),
        },
        { requiredKeys: [] },
      ),
    },
    { requiredKeys: [] },
  )
  .map((fields) => (e: Examination) => setFields(e, fields));

/** One edit of any kind. */
export const anyStep: fc.Arbitrary<Step> = fc.oneof(
  { weight: 6, arbitrary: pulseStep },
  { weight: 3, arbitrary: bruitStep },
  { weight: 1, arbitrary: fieldStep },
);

/** An examination as hands make it: any edits, one after another. */
export const anyExamination: fc.Arbitrary<Examination> = fc
  .array(anyStep, { maxLength: 40 })
  .map((steps) => steps.reduce((e, step) => step(e), emptyExamination()));

/** An examination that carries grades and reasons only, densely. */
export const gradedExamination: fc.Arbitrary<Examination> = fc
  .tuple(
    ...PULSE_PLACES.map(() =>
      fc.oneof(
        { weight: 4, arbitrary: anyGrade.map((grade) => ({ grade })) },
        { weight: 1, arbitrary: anyReason.map((couldNotExamine) => ({ couldNotExamine })) },
        { weight: 1, arbitrary: fc.constant({}) },
      ),
    ),
  )
  .map((patches) =>
    (patches as Partial<PulseFinding>[]).reduce(
      (e, patch, i) => setPulse(e, PULSE_PLACES[i] as Place, patch),
      emptyExamination(),
    ),
  );
