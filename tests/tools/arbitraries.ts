import fc from 'fast-check';
import {
  FIGURE_HEIGHT,
  FIGURE_WIDTH,
  LIMBS,
  LISTENING_PLACES,
  type Place,
  PLATE_BOXES,
  PLATE_VIEWS,
  plateOf,
  PULSE_PLACES,
} from '../../src/anatomy/index.js';
import {
  addMark,
  ARM_DELAYS,
  type BruitFinding,
  BRUITS,
  DOPPLER_SIGNALS,
  emptyExamination,
  type Examination,
  fewestPoints,
  GRADES,
  LEG_DELAYS,
  type Mark,
  MARK_KINDS,
  type MarkKind,
  type MarkOnPlate,
  type NewMark,
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

function tenths(most: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: most * 10 }).map((value) => value / 10);
}

const figurePoint = fc.tuple(tenths(FIGURE_WIDTH), tenths(FIGURE_HEIGHT));

const pointsOf = (kind: MarkKind, point: fc.Arbitrary<[number, number]>): fc.Arbitrary<[number, number][]> =>
  fc.array(point, { minLength: fewestPoints(kind), maxLength: 12 });

const onPlateOf = (kind: MarkKind): fc.Arbitrary<MarkOnPlate> =>
  fc.constantFrom(...PLATE_VIEWS).chain((plate) => {
    const [width, height] = PLATE_BOXES[plateOf(plate).name];
    return fc.record({
      plate: fc.constant(plate),
      points: pointsOf(kind, fc.tuple(tenths(width), tenths(height))),
    });
  });

/** A mark anywhere on the figure or on a plate, off the body included. */
export const anyNewMark: fc.Arbitrary<NewMark> = fc
  .constantFrom(...MARK_KINDS)
  .chain((kind) =>
    fc.oneof(
      fc.record(
        { kind: fc.constant(kind), points: pointsOf(kind, figurePoint), note: noteText },
        { requiredKeys: ['kind', 'points'] },
      ),
      fc.record(
        { kind: fc.constant(kind), on: onPlateOf(kind), note: noteText },
        { requiredKeys: ['kind', 'on'] },
      ),
    ),
  );

/** The same with an id, as a record holds it. */
export const anyMark: fc.Arbitrary<Mark> = fc
  .tuple(fc.string({ minLength: 1, maxLength: 12 }), anyNewMark)
  .map(([id, mark]) => ({ ...(addMark(emptyExamination(), mark).marks?.[0] as Mark), id }));

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

const markStep: fc.Arbitrary<Step> = anyNewMark.map((mark) => (e: Examination) => addMark(e, mark));

/** One edit of any kind. */
export const anyStep: fc.Arbitrary<Step> = fc.oneof(
  { weight: 6, arbitrary: pulseStep },
  { weight: 3, arbitrary: bruitStep },
  { weight: 1, arbitrary: fieldStep },
  { weight: 1, arbitrary: markStep },
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
