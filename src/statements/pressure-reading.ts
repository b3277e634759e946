import { type Side, SIDES } from '../anatomy/index.js';
import type { Examination, Method, Pressures } from '../examination/index.js';
import {
  type ArmFinding,
  armsDoubt,
  type ArmsDoubtLimits,
  type ArmsDoubt,
  type Denominator,
  type ExerciseReading,
  type IndexChange,
  indexChanges,
  type IndexReading,
  isFlatThreat,
  limbThreats,
  mmHgAt,
  type PressureChoices,
  type PressureReading,
  type PressureSettings,
  type SegmentFinding,
  type Threat,
} from '../pressures/index.js';
import { type MethodStatement, methodStatements } from './pressures.js';

/** What the pressures of one visit point to. */
export type PressureVerdict =
  /** Everything measured on one side that lies beyond its limit. */
  | { readonly code: 'threat'; readonly side: Side; readonly threats: readonly Threat[] }
  | { readonly code: 'flat-curve'; readonly side: Side }
  | { readonly code: 'index-change'; readonly change: IndexChange }
  | { readonly code: 'segment'; readonly finding: SegmentFinding }
  | { readonly code: 'arm'; readonly finding: ArmFinding }
  | { readonly code: 'exercise'; readonly reading: ExerciseReading };

/** How far the verdicts can be relied on: how an index was worked out, and what limits or lacks. */
export type PressureNote =
  | { readonly code: 'sums'; readonly denominator: Denominator; readonly indices: readonly IndexReading[] }
  | { readonly code: 'no-arm' }
  | { readonly code: 'one-arm'; readonly missing: Side }
  | { readonly code: 'both-arms'; readonly doubts: readonly ArmsDoubt[] }
  | { readonly code: 'incompressible'; readonly side: Side }
  | { readonly code: 'methods'; readonly used: readonly UsedMethod[] };

/** A method or limit that a verdict rests on, and whether anyone chose it. */
export interface UsedMethod {
  readonly method: MethodStatement;
  readonly byDefault: boolean;
}

/**
 * What the pressures point to, in the order in which it is told.
 * @param earlier pressures of the visit before, for what changed since
 * @param tissueLoss sides whose leg has a wound that counts as one of the arteries; most criteria set higher limits then
 */
export function pressureVerdicts(
  pressures: Pressures,
  reading: PressureReading,
  tissueLoss: readonly Side[] = [],
  earlier: Pressures = {},
): PressureVerdict[] {
  const changes = indexChanges(earlier, pressures, reading.settings).filter(({ real }) => real);
  return [
    ...SIDES.flatMap((side) => {
      const threats = limbThreats(pressures, side, tissueLoss.includes(side), reading.settings);
      return threats.length ? [{ code: 'threat' as const, side, threats }] : [];
    }),
    ...SIDES.filter((side) => isFlatThreat(pressures, side, reading.settings)).map((side) => ({
      code: 'flat-curve' as const,
      side,
    })),
    ...changes.map((change) => ({ code: 'index-change' as const, change })),
    ...reading.segments.map((finding) => ({ code: 'segment' as const, finding })),
    ...reading.arms.map((finding) => ({ code: 'arm' as const, finding })),
    ...reading.exercise.map((exercise) => ({ code: 'exercise' as const, reading: exercise })),
  ];
}

type MethodField = keyof Method;

/** The methods and limits that the verdicts of a reading rest on. */
function fieldsUsed(pressures: Pressures, reading: PressureReading): MethodField[] {
  const { indices, segments, exercise } = reading;
  const both = (sides: { readonly [S in Side]?: unknown } | undefined): boolean =>
    SIDES.every((side) => typeof sides?.[side] === 'number');
  const index = (kind: IndexReading['kind']): boolean =>
    indices.some((one) => one.kind === kind && one.value !== undefined);
  const twoAnkles = SIDES.some((side) =>
    (['dorsalis-pedis', 'posterior-tibial'] as const).every(
      (site) => mmHgAt(pressures[site], side) !== undefined,
    ),
  );
  const given = (['dorsalis-pedis', 'posterior-tibial', 'toe', 'tcpo2'] as const).some((site) =>
    SIDES.some((side) => typeof pressures[site]?.[side] === 'number'),
  );
  const used: Readonly<Record<MethodField, boolean>> = {
    standard: index('ankle'),
    ankle: index('ankle') && twoAnkles,
    arm: (index('ankle') || index('toe') || index('finger')) && both(pressures.brachial),
    incompressible: indices.some(({ kind, band, value }) =>
      Boolean(kind === 'ankle' && band === 'incompressible' && value !== undefined),
    ),
    severeIndex: indices.some(({ severe }) => severe === true),
    toe: index('toe'),
    wrist: index('wrist'),
    finger: index('finger'),
    armDifference: reading.arms.some(({ code }) => code === 'arm-difference'),
    wristDifference: reading.arms.some(({ code }) => code === 'wrist-difference'),
    armDrop: reading.arms.some(({ code }) => code === 'arm-drop'),
    drop: segments.some(({ code }) => code === 'drop'),
    sideDifference: segments.some(({ code }) => code === 'side-difference'),
    exercise: exercise.length > 0,
    threat: given,
  };
  return (Object.keys(used) as MethodField[]).filter((field) => used[field]);
}

/**
 * Some of the methods in force, each with what was chosen for it or the default.
 * @param chosen what the record and the page chose; the rest of `settings` are defaults
 */
export function usedMethods(
  settings: PressureSettings,
  fields: readonly MethodField[],
  ...chosen: readonly (PressureChoices | undefined)[]
): UsedMethod[] {
  return methodStatements(settings)
    .filter(({ field }) => fields.includes(field))
    .map((method) => ({ method, byDefault: chosen.every((own) => own?.[method.field] === undefined) }));
}

/**
 * How the indices were worked out, what they lack, and by which methods; in the order in which it is told.
 * @param record the pressures, and what is known beside them
 * @param chosen what the record and the page chose; the rest of `reading.settings` are defaults
 */
export function pressureNotes(
  record: Omit<Examination, 'format' | 'scale'>,
  reading: PressureReading,
  doubt: ArmsDoubtLimits | undefined,
  ...chosen: readonly (PressureChoices | undefined)[]
): PressureNote[] {
  const { pressures = {} } = record;
  const { indices, denominator, missingArms } = reading;
  const [missing] = missingArms;
  const divided = indices.filter((index) => index.numerator && index.denominator);
  const doubts = armsDoubt(record, reading.settings, doubt);
  const used = usedMethods(reading.settings, fieldsUsed(pressures, reading), ...chosen);
  const notes: readonly (PressureNote | false | undefined)[] = [
    denominator && divided.length > 0 && { code: 'sums', denominator, indices: divided },
    indices.length > 0 && !denominator && { code: 'no-arm' },
    indices.length > 0 && denominator && missing && { code: 'one-arm', missing: missing.side },
    doubts.length > 0 && { code: 'both-arms', doubts },
    ...indices
      .filter(({ kind, band }) => kind === 'ankle' && band === 'incompressible')
      .map(({ side }): PressureNote => ({ code: 'incompressible', side })),
    used.length > 0 && { code: 'methods', used },
  ];
  return notes.filter((note): note is PressureNote => Boolean(note));
}
