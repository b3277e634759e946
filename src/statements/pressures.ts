import { type Side, SIDES } from '../anatomy/index.js';
import {
  type Method,
  METHODS,
  type Pressure,
  PRESSURE_SITES,
  type Pressures,
  type PressureSite,
  type VolumeCurve,
} from '../examination/index.js';
import type { ExerciseReading } from '../pressures/index.js';
import { stated } from './stated.js';

/** A choice of method or limit that the examiner made. */
export type MethodStatement = {
  readonly [K in keyof Method]-?: {
    readonly code: 'method';
    readonly field: K;
    readonly option: NonNullable<Method[K]>;
  };
}[keyof Method];

/** A pressure recorded, or something about the walk. */
export type PressureStatement =
  | {
      readonly code: 'pressure' | 'pressure-after';
      readonly site: PressureSite;
      readonly side: Side;
      readonly value: Pressure;
    }
  | { readonly code: 'oxygen'; readonly side: Side; readonly value: Pressure }
  | { readonly code: 'volume-curve'; readonly side: Side; readonly shape: VolumeCurve }
  | { readonly code: 'walk-completed' | 'walk-not-completed' }
  | { readonly code: 'walked'; readonly minutes: number }
  | { readonly code: 'note' | 'note-after'; readonly note: string };

type Sides = { readonly [S in Side]?: Pressure | undefined };

const bySide = <S>(sides: Sides | undefined, say: (side: Side, value: Pressure) => S): S[] =>
  SIDES.flatMap((side) => stated(sides?.[side], (value) => say(side, value)));

const AFTER_EXERCISE = ['brachial', 'dorsalis-pedis', 'posterior-tibial'] as const;

/** Everything recorded among the pressures. */
export function pressureStatements(pressures: Pressures): PressureStatement[] {
  const { afterExercise: after } = pressures;
  const at = (code: 'pressure' | 'pressure-after', site: PressureSite, sides: Sides | undefined) =>
    bySide(sides, (side, value): PressureStatement => ({ code, site, side, value }));
  return [
    ...PRESSURE_SITES.flatMap((site) => at('pressure', site, pressures[site])),
    ...bySide(pressures.tcpo2, (side, value): PressureStatement => ({ code: 'oxygen', side, value })),
    ...SIDES.flatMap((side) =>
      stated(pressures.volumeCurve?.[side], (shape): PressureStatement => ({
        code: 'volume-curve',
        side,
        shape,
      })),
    ),
    ...AFTER_EXERCISE.flatMap((site) => at('pressure-after', site, after?.[site])),
    ...stated(after?.completed, (yes): PressureStatement => ({
      code: yes ? 'walk-completed' : 'walk-not-completed',
    })),
    ...stated(after?.minutes, (minutes) => ({ code: 'walked' as const, minutes })),
    ...stated(after?.note, (note) => ({ code: 'note-after' as const, note })),
    ...stated(pressures.note, (note) => ({ code: 'note' as const, note })),
  ];
}

/** Which way a figure went on exercise. */
export type Way = 'falls' | 'rises';

/** What exercise changed in one leg. */
export type ExerciseChange =
  | { readonly code: 'ankle'; readonly way: Way; readonly mmHg: number }
  | { readonly code: 'index'; readonly way: Way; readonly percent: number }
  | { readonly code: 'index-after'; readonly index: number };

const way = (fall: number): Way => (fall >= 0 ? 'falls' : 'rises');

/** What exercise changed in one leg, as far as it could be worked out. */
export function exerciseChanges({ fall, indexFall, indexAfter }: ExerciseReading): ExerciseChange[] {
  return [
    ...stated(fall, (mmHg) => ({ code: 'ankle' as const, way: way(mmHg), mmHg: Math.abs(mmHg) })),
    ...stated(indexFall, (percent) => ({
      code: 'index' as const,
      way: way(percent),
      percent: Math.abs(percent),
    })),
    ...stated(indexAfter, (index) => ({ code: 'index-after' as const, index })),
  ];
}

const METHOD_FIELDS = Object.keys(METHODS) as (keyof Method)[];

/** Every choice of method or limit that stands in a record. */
export function methodStatements(method: Method): MethodStatement[] {
  return METHOD_FIELDS.flatMap((field) =>
    stated(method[field], (option) => ({ code: 'method', field, option }) as MethodStatement),
  );
}
