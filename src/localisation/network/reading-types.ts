import type { ArteryId, Level, LimbKey, PieceKey } from '../../anatomy/index.js';
import type { NotExcluded, SettlingQuestion } from './besides.js';
import type { Conflict } from './conflicts.js';
import type { FindingId } from './finding.js';
import type { Assumption } from './firmness.js';
import type { NextAct } from './rank.js';
import type { Occluded, Occlusion } from './stretch.js';
import type { Cause, State } from './types.js';

/** A place where the disease of a limb may begin, as one would name it: an artery, or a part of one where parts matter. */
export interface Answer {
  readonly pieces: readonly PieceKey[];
  readonly artery: ArteryId;
  readonly level: Level;
  readonly probability: number;
}

/** How much one finding speaks for (above 0) or against the level of the first answer: log ratio of its odds, in nats. */
export interface FindingWeight {
  readonly finding: FindingId;
  readonly weight: number;
}

/** A lesion that stands beside the one that takes the pulse away. */
export interface Further {
  readonly pieces: readonly PieceKey[];
  readonly artery: ArteryId;
  readonly level: Level;
  readonly where: 'above' | 'beyond';
  readonly state: Exclude<State, 'patent'>;
  /** Probability that the artery is narrowed or blocked. */
  readonly probability: number;
}

export interface LimbReading {
  /** Whether anything was found on this limb. Where not, the figures only say what other limbs and the context imply. */
  readonly examined: boolean;
  /** Where disease begins: every answer, most probable first. With `nothing` they sum to one. */
  readonly answers: readonly Answer[];
  /** Probability that no artery on the way to this limb's last pulse sites is narrowed or blocked. */
  readonly nothing: number;
  readonly levels: readonly { readonly level: Level; readonly probability: number }[];
  /** The most probable beginning; missing where "nothing shown" is the most probable. */
  readonly first?: Answer;
  /** Which stretch takes the pulse away: what headline, figure and first row speak of. */
  readonly occluded: Occluded;
  /** The most probable such place; missing where it is more probable that the pulses at the limb's end are normal. */
  readonly headline?: Occlusion;
  /** What an open main artery does not exclude here. */
  readonly notExcluded: readonly NotExcluded[];
}

export interface LimbDetail {
  /** Findings that matter for this limb's first answer, heaviest first. */
  readonly evidence: readonly FindingWeight[];
  /** Lesions beside the first, most probable first. */
  readonly further: readonly Further[];
  readonly firm: {
    readonly grade: 'firm' | 'fairly-firm' | 'not-firm';
    /** Assumptions whose halving or doubling alone puts another level first. */
    readonly overturned: readonly { readonly assumption: Assumption; readonly factor: 0.5 | 2 }[];
    /** Joint variations of all assumptions that leave the level first, of so many tried. */
    readonly held: number;
    readonly tried: number;
    /** How likely a pulse not yet felt for puts another level first. */
    readonly flips: number;
  };
}

/** The most probable assignment of every artery that agrees with the first answers, with its cause and its probability. */
export interface Story {
  readonly cause: Cause;
  readonly lesions: readonly { readonly piece: PieceKey; readonly state: Exclude<State, 'patent'> }[];
  readonly probability: number;
}

/** What the belief network makes of an examination; plain data, words are made by the locale. */
export type NetworkReading =
  | { readonly status: 'nothing-examined' }
  /** No state of the arteries explains the findings; `conflicting` are those without any one of which one would. */
  | { readonly status: 'impossible'; readonly conflicting: readonly FindingId[] }
  | {
      readonly status: 'read';
      readonly limbs: Readonly<Record<LimbKey, LimbReading>>;
      readonly pieces: Readonly<Record<PieceKey, { readonly narrowed: number; readonly blocked: number }>>;
      readonly causes: Readonly<Record<Cause, number>>;
      /** How much of the belief holds that the trouble is acute; 1 or 0 where the record says. */
      readonly acute: number;
      readonly story: Story;
      /** By limb, for the limbs examined. */
      readonly detail: Readonly<Partial<Record<LimbKey, LimbDetail>>>;
      /** Findings that can hardly be right together, least expected first: these are to be checked again. */
      readonly conflicts: readonly Conflict[];
      /** Most worth first; empty where nothing left at the bedside would change much. */
      readonly next: readonly NextAct[];
      /** The question that settles most weak pulses without arterial disease, where it would be of use. */
      readonly settle?: SettlingQuestion;
    };
