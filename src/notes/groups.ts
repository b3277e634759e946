import type { SiteId } from '../anatomy/index.js';
import type { Bruit, DopplerSignal, Reason } from '../examination/index.js';
import type { NoteSide } from './meanings.js';
import type { StrengthRead } from './strength.js';

/** A stretch of the text, in UTF-16 units. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** How closely a word names its site: a later closer word wins over an earlier general one. */
export const CLOSENESS = { all: 1, group: 2, own: 3 } as const;

/** Sites that are named together, with the side if one is said. */
export interface Item extends Span {
  readonly sites: readonly SiteId[];
  side?: NoteSide;
  /** "Both": both sides, unless one side is meant and both of two arteries. */
  readonly loose?: boolean;
  /** "Femorals": both, where nothing says otherwise. */
  readonly plural?: boolean;
  /** "Femoral pulses": the same, unless several sites share the word. */
  readonly pulses?: boolean;
  readonly closeness: number;
  /** The rest: never contradicts what is said of one of them. */
  readonly rest?: boolean;
  /** Which arteries are meant is not sure. */
  readonly vague?: boolean;
}

export type Says =
  | { readonly what: 'pulse'; readonly read: StrengthRead }
  | { readonly what: 'bruit'; readonly bruit: Bruit }
  /** `orAbsent`: "not felt, oedema" may mean either. */
  | { readonly what: 'could-not'; readonly reason: Reason; readonly orAbsent?: true; readonly open?: true }
  | { readonly what: 'doppler'; readonly signal?: DopplerSignal; readonly only?: true }
  | { readonly what: 'mark'; readonly mark: 'thrill' | 'expansile' }
  /** As the other side. */
  | { readonly what: 'same' }
  /** Taken out of what was said of all, and not said what it is. */
  | { readonly what: 'except' };

/** One statement of a note: what is said, and of which sites. */
export interface Group {
  items: Item[];
  says: Says | undefined;
  /** The side that stands behind all of it. */
  side?: NoteSide | undefined;
  /** That side is "both", which may mean both of two arteries. */
  looseSide?: boolean;
  /** Its side stands at its column or row: it holds for nothing outside. */
  inTable?: boolean;
  /** It comes from a list or table. */
  listed?: boolean;
  /** Its side stood behind what it says. */
  trails?: boolean;
  /** A word that was not understood stands within: to be asked. */
  blocked?: boolean;
  /** The side cannot be taken from what stands before. */
  sideless?: boolean;
  /** Two readings of which side or grade belongs where. */
  torn?: boolean;
  /** Two values for one site, of which it is not said which side each is. */
  pair?: readonly [StrengthRead, StrengthRead];
  /** A strength word stood before its sites: more sites may follow. */
  opens?: boolean;
  spans: Span[];
}

/** The place of something in the text, and nothing else of it. */
export const spanOf = ({ start, end }: Span): Span => ({ start, end });

/** Whether a group says for certain that no pulse was felt. */
export const isAbsent = ({ says }: Group): boolean =>
  says?.what === 'pulse' && !says.read.doubt && says.read.grades[0]?.grade === 'absent';
