import type {
  BarbeauClass,
  BedsideTestId,
  OutletSymptom,
  Reason,
  ScaleneWay,
  StopReason,
} from '../examination/index.js';

/** What a reading carries beside its code, by what the test measures. Times are in seconds, angles in degrees. */
interface Raised {
  readonly angle: number;
  readonly seconds?: number;
  /** Grade of pallor, 0 (none) to 4. */
  readonly grade?: number;
}
interface Timed {
  readonly seconds: number;
}
export type ArteryVerdict = 'patent' | 'slow' | 'blocked' | 'incomplete';
/** What the colour and the tracing say of each artery of the hand; an artery that was not let go has no verdict. */
export interface HandArteries {
  readonly radial?: ArteryVerdict;
  readonly radialSeconds?: number;
  readonly ulnar?: ArteryVerdict;
  readonly ulnarSeconds?: number;
  readonly barbeau?: BarbeauClass;
  readonly barbeauReverse?: BarbeauClass;
}
export type ColdPhase = 'white' | 'blue' | 'red';
interface Cooled {
  /** The colours seen, in the order of an attack. */
  readonly phases: readonly ColdPhase[];
  /** Minutes until the hand was warm again. */
  readonly rewarm?: number;
}
export type PulseChange = 'lost' | 'reduced' | 'kept' | 'absent-before';
/** What happened in a position of the arm. */
interface Positioned {
  readonly pulse?: PulseChange;
  /** The symptoms that count, each once. */
  readonly symptoms: readonly OutletSymptom[];
  readonly seconds?: number;
}
interface Stressed extends Positioned {
  readonly seconds: number;
  readonly stopped?: StopReason;
}

type Judged<P> = { readonly params: P };
/** With the limit that was used, in the unit of the test. */
type Limited<P> = Judged<P> & { readonly limit: number };
type Codes<C extends string, Carried> = Readonly<Record<C, Carried>>;

type Positions<P extends Positioned> = Codes<
  'symptoms' | 'pulse-lost' | 'pulse-reduced' | 'negative',
  Judged<P>
> &
  Codes<'pulse-and-symptoms', Judged<P & { readonly pulse: 'lost' | 'reduced' }>>;

/** What each test can say besides that it was not done or is incomplete, and what goes with it. */
export interface BedsideCodes {
  elevation: Codes<'keeps-colour' | 'not-raised-fully', Judged<Raised>> &
    Codes<'pale-below-limit' | 'pale-in-range' | 'pale-high', Limited<Raised>>;
  'colour-return': Codes<
    'usual' | 'slower-than-usual' | 'prolonged' | 'severe' | 'not-returned' | 'watched-too-short',
    Limited<Timed>
  >;
  'dependent-rubor': Codes<'rubor' | 'hung-too-short', Limited<Partial<Timed>>> &
    Codes<'no-rubor', Limited<Timed>>;
  'venous-filling': Codes<
    | 'usual'
    | 'slower-than-usual'
    | 'prolonged'
    | 'severe'
    | 'not-filled'
    | 'watched-too-short'
    | 'unreliable',
    Limited<Timed>
  >;
  'hand-arch': Codes<'patent' | 'slow' | 'blocked' | 'tracing-kept' | 'one-artery', Limited<HandArteries>> &
    Codes<'tracing-lost', Limited<HandArteries & { readonly pressed: 'radial' | 'ulnar' }>>;
  'cold-provocation': Codes<'three-phases' | 'two-phases' | 'single-phase' | 'no-change', Limited<Cooled>> &
    Codes<'slow-rewarming' | 'rewarming-only', Limited<Cooled & { readonly rewarm: number }>>;
  scalene: Positions<Positioned & { readonly ways: readonly ScaleneWay[] }>;
  hyperabduction: Positions<Positioned>;
  costoclavicular: Positions<Positioned>;
  'arm-stress': Codes<
    'symptoms-early' | 'symptoms' | 'fatigue-only' | 'too-short' | 'completed',
    Limited<Stressed>
  > &
    Codes<'stopped-early', Limited<Stressed & { readonly stopped: StopReason }>>;
}

/** Verdicts; from `normal` on, ordered by increasing severity. */
export const VERDICTS = ['not-done', 'incomplete', 'normal', 'borderline', 'abnormal', 'severe'] as const;
export type Verdict = (typeof VERDICTS)[number];

/** Things that weaken or complete a reading. */
export const BEDSIDE_NOTES = [
  'pallor-within-seconds',
  'pallor-minutes',
  'incompetent-veins',
  'rewarming-slow',
  'rewarming-between',
  'rewarming-usual',
  'rewarming-no-limit',
  'absent-before',
  'symptoms-not-asked',
  'pulse-not-compared',
] as const;
export type BedsideNote = (typeof BEDSIDE_NOTES)[number];

interface Common {
  readonly verdict: Verdict;
  /** The limit that was used, where the test has one. */
  readonly limit?: number;
  readonly notes?: readonly BedsideNote[];
}
export type NotDoneReading = Common & {
  readonly code: 'not-done';
  readonly params: { readonly reason: Reason };
};
export type IncompleteReading = Common & { readonly code: 'incomplete' };

type ReadingOf<C> =
  | { [K in keyof C & string]: Common & { readonly code: K } & C[K] }[keyof C & string]
  | NotDoneReading
  | IncompleteReading;

/** What one test of one side says, as a statement: a code, and the figures that go with it. */
export type BedsideReading<Id extends BedsideTestId = BedsideTestId> = Id extends BedsideTestId
  ? ReadingOf<BedsideCodes[Id]>
  : never;

/** What a position of the arm says, without the way it was taken up. */
export type PositionReading = BedsideReading<'hyperabduction'>;
