import { type Side, SIDES } from '../anatomy/index.js';
import {
  BEDSIDE_TEST_IDS,
  type BedsideReading,
  type ColdPhase,
  COLD_PHASES,
  type FalsePositives,
  holdsAt,
  readBedside,
} from '../bedside/index.js';
import {
  type BarbeauClass,
  type Bedside,
  type BedsideResult,
  type BedsideTestId,
  type Grade,
  OUTLET_SYMPTOMS,
  type OutletPosition,
  type OutletSymptom,
  SCALENE_WAYS,
  type ScaleneWay,
  type StopReason,
} from '../examination/index.js';
import { stated } from './stated.js';

type HandArtery = 'radial' | 'ulnar';

/** One thing that was seen or measured in a test. Times in seconds, `minutes` in minutes, angles in degrees. */
export type MeasuredStatement =
  | { readonly code: 'pale' | 'not-pale' | 'red' | 'not-red' | 'incompetent-veins' | 'no-change' }
  | { readonly code: 'angle'; readonly angle: number }
  | { readonly code: 'time' | 'held' | 'arms-up' | 'immersed'; readonly seconds: number }
  | { readonly code: 'pink' | 'still-pale' | 'filled' | 'still-empty'; readonly seconds: number }
  | { readonly code: 'hand-method'; readonly method: NonNullable<BedsideResult<'hand-arch'>['method']> }
  | {
      readonly code: 'released-pink' | 'released-white';
      readonly artery: HandArtery;
      readonly seconds: number;
    }
  | { readonly code: 'tracing'; readonly pressed: HandArtery; readonly barbeau: BarbeauClass }
  | { readonly code: 'water'; readonly celsius: number }
  | { readonly code: 'phase'; readonly phase: ColdPhase; readonly seconds: number }
  | { readonly code: 'rewarmed'; readonly minutes: number }
  | { readonly code: 'pulse-before' | 'pulse-during'; readonly grade: Grade }
  | { readonly code: 'symptoms'; readonly symptoms: readonly OutletSymptom[] }
  | { readonly code: 'symptom-at'; readonly symptom: OutletSymptom; readonly seconds: number }
  | { readonly code: 'stopped'; readonly by: StopReason }
  | { readonly code: 'no-symptoms' | 'nothing-felt' }
  | { readonly code: 'way'; readonly way: ScaleneWay; readonly found: readonly MeasuredStatement[] };

type Told = readonly MeasuredStatement[];

const when = <V>(value: V | undefined, say: (value: V) => MeasuredStatement): Told => stated(value, say);

const pulses = (position: Pick<OutletPosition, 'before' | 'during'>): Told => [
  ...when(position.before, (grade) => ({ code: 'pulse-before', grade })),
  ...when(position.during, (grade) => ({ code: 'pulse-during', grade })),
];

const inPosition = (position: OutletPosition): Told => [
  ...pulses(position),
  ...when(position.symptoms, (symptoms) =>
    symptoms.length ? { code: 'symptoms', symptoms } : { code: 'no-symptoms' },
  ),
  ...when(position.seconds, (seconds) => ({ code: 'held', seconds })),
];

function released(result: BedsideResult<'hand-arch'>, artery: HandArtery): Told {
  const white = result[artery]?.returned === false;
  return when(result[artery]?.seconds, (seconds) => ({
    code: white ? 'released-white' : 'released-pink',
    artery,
    seconds,
  }));
}

const MEASURED: { readonly [Id in BedsideTestId]: (result: BedsideResult<Id>) => Told } = {
  elevation: ({ pallor, angle, seconds }) => [
    ...when(pallor, (pale) => ({ code: pale ? 'pale' : 'not-pale' })),
    ...when(angle, (value) => ({ code: 'angle', angle: value })),
    ...when(seconds, (value) => ({ code: 'time', seconds: value })),
  ],
  'colour-return': ({ seconds, returned }) =>
    when(seconds, (value) => ({ code: returned === false ? 'still-pale' : 'pink', seconds: value })),
  'dependent-rubor': ({ rubor, seconds }) => [
    ...when(rubor, (red) => ({ code: red ? 'red' : 'not-red' })),
    ...when(seconds, (value) => ({ code: 'time', seconds: value })),
  ],
  'venous-filling': ({ seconds, filled, incompetentVeins }) => [
    ...when(seconds, (value) => ({ code: filled === false ? 'still-empty' : 'filled', seconds: value })),
    ...(incompetentVeins ? [{ code: 'incompetent-veins' as const }] : []),
  ],
  'hand-arch': (result) => [
    ...when(result.method, (method) => ({ code: 'hand-method', method })),
    ...released(result, 'radial'),
    ...released(result, 'ulnar'),
    ...when(result.barbeau, (barbeau) => ({ code: 'tracing', pressed: 'radial', barbeau })),
    ...when(result.barbeauReverse, (barbeau) => ({ code: 'tracing', pressed: 'ulnar', barbeau })),
  ],
  'cold-provocation': (result) => [
    ...when(result.water, (celsius) => ({ code: 'water', celsius })),
    ...when(result.immersed, (seconds) => ({ code: 'immersed', seconds })),
    ...COLD_PHASES.value.flatMap((phase) =>
      when(result[phase], (seconds) => ({ code: 'phase', phase, seconds })),
    ),
    ...(result.noChange ? [{ code: 'no-change' as const }] : []),
    ...when(result.rewarm, (minutes) => ({ code: 'rewarmed', minutes })),
  ],
  scalene: (result) =>
    SCALENE_WAYS.flatMap((way) =>
      when(result[way], (position) => ({ code: 'way', way, found: inPosition(position) })),
    ),
  hyperabduction: inPosition,
  costoclavicular: inPosition,
  'arm-stress': (result) => [
    ...when(result.seconds, (seconds) => ({ code: 'arms-up', seconds })),
    ...when(result.stopped, (by) => ({ code: 'stopped', by })),
    ...OUTLET_SYMPTOMS.flatMap((symptom) =>
      when(result.felt?.[symptom], (seconds) => ({ code: 'symptom-at', symptom, seconds })),
    ),
    ...(result.nothingFelt ? [{ code: 'nothing-felt' as const }] : []),
    ...pulses(result),
  ],
};

/** One side of one test, as a line of the summary. */
export interface BedsideLine {
  readonly test: BedsideTestId;
  readonly side: Side;
  readonly measured: Told;
  readonly note?: string;
  readonly reading: BedsideReading;
}

/** Everything recorded of the tests, a line for each test and side, in the order of the bedside. */
export function bedsideLines(bedside: Bedside): BedsideLine[] {
  return BEDSIDE_TEST_IDS.flatMap((test) =>
    SIDES.flatMap((side): BedsideLine[] => {
      const result = bedside[test]?.[side];
      const reading = readBedside(test, side, bedside);
      if (!result || !reading) return [];
      const measure = MEASURED[test] as (of: typeof result) => Told;
      const { note } = result;
      return [
        { test, side, measured: result.notDone ? [] : measure(result), reading, ...(note && { note }) },
      ];
    }),
  );
}

/** How often people without the disease have one outcome, in percent; where sources differ, from the least to the most. */
export interface RateRange extends Pick<FalsePositives, 'outcome' | 'people' | 'bound' | 'condition'> {
  readonly least: number;
  readonly most: number;
}

/**
 * Published rates that hold for a test read with `limit`, by people, in the order in which they first stand. Rates counted under
 * different conditions, and bounds, are never drawn together. People with another disease are left out.
 */
export function rateRanges(rates: readonly FalsePositives[], limit?: number): RateRange[][] {
  const told = rates.filter((rate) => rate.people !== 'carpal-tunnel' && holdsAt(rate, limit));
  const alike = ({ outcome, people, bound, condition }: FalsePositives): string =>
    JSON.stringify([outcome, people, bound, condition]);
  const ranges = [...new Set(told.map(alike))].map((key): RateRange => {
    const same = told.filter((rate) => alike(rate) === key);
    const percents = same.map(({ percent }) => percent);
    const { outcome, people, bound, condition } = same[0] as FalsePositives;
    return {
      outcome,
      people,
      ...(bound && { bound }),
      ...(condition && { condition }),
      least: Math.min(...percents),
      most: Math.max(...percents),
    };
  });
  const people = [...new Set(ranges.map((range) => range.people))];
  return people.map((who) => ranges.filter((range) => range.people === who));
}
