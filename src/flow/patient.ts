import type { PieceKey, Side, VesselKey } from '../anatomy/index.js';
import type { Spot, Variant } from './tree/types.js';

/** How well collaterals have grown: `fresh` as after an embolus. */
export const COLLATERAL_STATES = ['fresh', 'poor', 'usual', 'good'] as const;
export type CollateralState = (typeof COLLATERAL_STATES)[number];

/** What the patient is doing or going through. */
export const STATES = ['rest', 'walked', 'arm-work', 'cold', 'low-output', 'shock'] as const;
export type PatientState = (typeof STATES)[number];

/** Positions of an arm in which its artery can be pressed. */
export const OUTLET_POSITIONS = ['scalene', 'costoclavicular', 'hyperabduction'] as const;
export type OutletPosition = (typeof OUTLET_POSITIONS)[number];

export const RHYTHM_KINDS = ['regular', 'atrial-fibrillation'] as const;
export type RhythmKind = (typeof RHYTHM_KINDS)[number];

export interface Lesion {
  /** The artery, or the part of it before or beyond its pulse site. */
  readonly piece: PieceKey | VesselKey;
  /** Percent of the diameter; 100 is a block. (50% of the diameter is 75% of the area.) */
  readonly narrowing: number;
  /** Length of a narrowing in cm. */
  readonly length: number;
  /** Where in a long piece; its usual place where none is given. */
  readonly at?: Spot | undefined;
  /** Of a block: at one point, or the whole piece. */
  readonly extent: 'short' | 'whole';
}

export interface PatientVariant {
  readonly variant: Variant;
  readonly side?: Side | undefined;
}

type BySide<T> = Readonly<Partial<Record<Side, T>>>;

/** A patient as a teacher sets one, complete. */
export interface Patient {
  /** Years. */
  readonly age: number;
  /** Mean pressure in the aorta, mmHg. */
  readonly meanPressure: number;
  /** Beats a minute. */
  readonly heartRate: number;
  readonly rhythm: RhythmKind;
  readonly state: PatientState;
  readonly lesions: readonly Lesion[];
  readonly collaterals: CollateralState;
  /** Routes that have grown otherwise than the rest, by anatomical name. */
  readonly routes: Readonly<Record<string, CollateralState>>;
  readonly variants: readonly PatientVariant[];
  /** mmHg that stiff ankle arteries add to a cuff reading; `Infinity` has no place in JSON, use 300 for "cannot be closed". */
  readonly incompressible: BySide<number>;
  /** Percent of the diameter by which each position of the arm narrows its artery. */
  readonly outlet: BySide<Partial<Record<OutletPosition, number>>>;
  /** Arteries pressed shut at the wrist. */
  readonly pressed: readonly { readonly artery: 'radial' | 'ulnar'; readonly side: Side }[];
  /** Arms under a cuff blown up above the systolic pressure. */
  readonly cuffs: readonly Side[];
  /** Degrees by which a leg is raised. */
  readonly raised: BySide<number>;
  /** Decides what chance decides: the beats of an irregular rhythm. */
  readonly seed: number;
}

/** A patient as written down: everything may be left out, of a lesion all but its piece. */
export type PatientInput = Partial<Omit<Patient, 'lesions'>> & {
  readonly lesions?: readonly (Partial<Lesion> & Pick<Lesion, 'piece'>)[];
};

export const DEFAULT_LESION: Omit<Lesion, 'piece'> = { narrowing: 100, length: 2, extent: 'short' };

/** A sound adult of forty at rest. */
export const DEFAULT_PATIENT: Patient = {
  age: 40,
  meanPressure: 95,
  heartRate: 70,
  rhythm: 'regular',
  state: 'rest',
  lesions: [],
  collaterals: 'usual',
  routes: {},
  variants: [],
  incompressible: {},
  outlet: {},
  pressed: [],
  cuffs: [],
  raised: {},
  seed: 1,
};

/** Pressure and rate that a state brings with it unless they are given. */
const STATE_DEFAULTS: Readonly<Partial<Record<PatientState, Partial<Patient>>>> = {
  walked: { meanPressure: 100, heartRate: 95 },
  'arm-work': { heartRate: 85 },
  'low-output': { meanPressure: 75, heartRate: 95 },
  shock: { meanPressure: 50, heartRate: 120 },
};

/** Fills in every default. */
export function patientOf(input: PatientInput = {}): Patient {
  const given = Object.fromEntries(Object.entries(input).filter(([, value]) => value !== undefined));
  return {
    ...DEFAULT_PATIENT,
    ...STATE_DEFAULTS[input.state ?? 'rest'],
    ...given,
    lesions: (input.lesions ?? []).map((lesion) => ({ ...DEFAULT_LESION, ...lesion })),
  };
}
