import type { ArteryId, Laterality, ListeningSiteId, Place, PulseSiteId, Side } from '../anatomy/index.js';
import type {
  AcuteClass,
  BedsideTestId,
  Bruit,
  DopplerSignal,
  FontaineStage,
  Grade,
  RutherfordCategory,
  WifiStage,
} from '../examination/index.js';
import type { RedFlag, StagedLimb, Urgent } from '../triage/index.js';
import type { Verdict } from '../bedside/index.js';

/** What a change asks for, gravest first: see to it now, weigh it, take note, or read it as scatter. */
export const CHANGE_WEIGHTS = ['urgent', 'matters', 'minor', 'chance'] as const;
export type ChangeWeight = (typeof CHANGE_WEIGHTS)[number];

/** Which way it went; `other` where neither is worse. */
export type ChangeWay = 'worse' | 'better' | 'other';

/** Stages that are compared. */
export interface StageValues {
  readonly fontaine: FontaineStage;
  readonly rutherford: RutherfordCategory;
  readonly wifi: WifiStage;
  readonly acute: AcuteClass;
}
export type ComparedScheme = keyof StageValues;

interface Told {
  readonly weight: ChangeWeight;
  readonly way: ChangeWay;
}

type FromTo<T> = { readonly from: T; readonly to: T };

type StageChange = {
  [S in ComparedScheme]: { readonly code: 'stage'; readonly scheme: S; readonly limb: StagedLimb } & FromTo<
    StageValues[S]
  >;
}[ComparedScheme];

/** One thing that is otherwise than at the visit before, and was known both times. */
export type Change = Told &
  (
    | ({ readonly code: 'pulse'; readonly place: Place<PulseSiteId> } & FromTo<Grade>)
    | ({ readonly code: 'doppler'; readonly place: Place<PulseSiteId> } & FromTo<DopplerSignal>)
    | ({ readonly code: 'bruit'; readonly place: Place<ListeningSiteId> } & FromTo<Bruit>)
    | ({
        readonly code: 'index';
        readonly side: Side;
        /** Least change of the index that is more than scatter. */
        readonly limit: number;
        readonly by: number;
      } & FromTo<number>)
    | ({
        readonly code: 'graft-pulse';
        readonly artery: ArteryId;
        readonly side: Laterality;
      } & FromTo<'present' | 'absent'>)
    /** In mmHg. */
    | ({ readonly code: 'toe-pressure'; readonly side: Side } & FromTo<number>)
    /** In metres. */
    | ({ readonly code: 'distance'; readonly side: Side } & FromTo<number>)
    | ({ readonly code: 'bedside'; readonly test: BedsideTestId; readonly side: Side } & FromTo<Verdict>)
    | StageChange
    | ({ readonly code: 'flag'; readonly flag: RedFlag } & FromTo<Urgent>)
  );
export type ChangeCode = Change['code'];

/** Two visits side by side: what changed, and what nothing can be claimed of. */
export interface Comparison {
  /** Gravest first; within one weight in the order of the examination. */
  readonly changes: readonly Change[];
  /** Places known before and not examined now, and the other way round: nothing is claimed of them. */
  readonly notExaminedNow: readonly Place[];
  readonly notExaminedBefore: readonly Place[];
  /** Places felt or heard both times, and found alike. */
  readonly same: number;
}
