import {
  type LimbKind,
  LISTENING_SITE_IDS,
  placeKey,
  PULSE_PLACES,
  type SiteId,
  siteDefinition,
} from '../anatomy/index.js';
import { BEDSIDE_TEST_IDS, BEDSIDE_TESTS } from '../bedside/index.js';
import type { BedsideTestId } from '../examination/index.js';
import type { Lesson, LessonAct, LessonStep, StepId } from './lesson.js';

/** The limb that a site is examined with: the trunk's belong to the legs. */
export function limbOfSite(site: SiteId): LimbKind {
  const { region } = siteDefinition(site);
  return region === 'trunk' ? 'leg' : region;
}

/** Tests done in every examination of their limb; the others only where the findings have them. */
const USUAL: readonly BedsideTestId[] = ['elevation', 'colour-return', 'venous-filling', 'hand-arch'];

export function stepIdOf(act: LessonAct): StepId {
  switch (act.kind) {
    case 'test':
      return `test ${act.test}`;
    case 'pulse':
      return `pulse ${placeKey(act.place)}`;
    case 'listen':
      return `listen ${act.site}`;
    default:
      return act.kind;
  }
}

/**
 * The whole sequence of the examination: history, inspection, elevation, every pulse from the trunk outward and right before left,
 * delays, listening along each artery, timed tests of leg and arm, pressures, conclusion.
 */
export const SEQUENCE: readonly LessonAct[] = [
  { kind: 'history' },
  { kind: 'inspection' },
  { kind: 'test', test: 'elevation' },
  ...PULSE_PLACES.map((place): LessonAct => ({ kind: 'pulse', place })),
  { kind: 'delays' },
  ...LISTENING_SITE_IDS.map((site): LessonAct => ({ kind: 'listen', site })),
  ...BEDSIDE_TEST_IDS.filter((test) => test !== 'elevation').map((test): LessonAct => ({
    kind: 'test',
    test,
  })),
  { kind: 'pressures' },
  { kind: 'conclusion' },
];

/** Every name that a step can have. */
export const STEP_IDS: readonly StepId[] = SEQUENCE.map(stepIdOf);

/** The limb that an act belongs to; none where it is about the patient as a whole. */
export function limbOfAct(act: LessonAct): LimbKind | undefined {
  if (act.kind === 'pulse') return limbOfSite(act.place.site);
  if (act.kind === 'listen') return limbOfSite(act.site);
  return act.kind === 'test' ? BEDSIDE_TESTS[act.test].limb : undefined;
}

/**
 * The steps of a lesson, in order.
 * @param tests tests of which there are findings; the usual ones come without
 */
export function sequenceOf(
  { limbs, without, steps }: Pick<Lesson, 'limbs' | 'without' | 'steps'>,
  tests: ReadonlySet<string>,
): readonly LessonStep[] {
  return SEQUENCE.flatMap((act): LessonStep[] => {
    const id = stepIdOf(act);
    const limb = limbOfAct(act);
    if (without.includes(id) || (limb && !limbs.includes(limb))) return [];
    if (act.kind === 'test' && !USUAL.includes(act.test) && !tests.has(act.test)) return [];
    return [{ id, act, ...steps[id] }];
  });
}
