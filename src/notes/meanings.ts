import type { Laterality, ListeningSiteId, PulseSiteId, SiteId } from '../anatomy/index.js';
import type { Bruit, DopplerSignal, Reason } from '../examination/index.js';

/** How strong a pulse is in the words of a note: the record's grades, and words that leave it open. */
export type Strength =
  | 'absent'
  | 'reduced'
  | 'normal'
  | 'bounding'
  /** Felt, and not said how strongly. */
  | 'present'
  /** Strong: normal to most, bounding to some. */
  | 'strong'
  /** Not normal, and not said in which way. */
  | 'abnormal'
  /** The writer was not sure that a pulse was felt. */
  | 'doubtful'
  /** Large: strong, or an aneurysm. */
  | 'prominent';

export type NoteSide = 'right' | 'left' | 'both';

/** A part of the body that a note speaks of as a whole. */
export type Part = 'leg' | 'arm' | 'foot' | 'hand' | 'knee' | 'groin';

/** What a word or phrase of a note means. The reader knows meanings only; a language says by which words they are meant. */
export type Meaning =
  | { readonly is: 'site'; readonly sites: readonly SiteId[]; readonly plural?: true; readonly foot?: true }
  /** One letter that is a site among other sites ("F P DP PT"), and nothing alone. */
  | { readonly is: 'letter'; readonly sites: readonly SiteId[] }
  | { readonly is: 'part'; readonly part: Part; readonly side?: NoteSide; readonly plural?: true }
  /** `loose`: "both" may mean both sides or both of two arteries. */
  | { readonly is: 'side'; readonly side: NoteSide; readonly loose?: true }
  | { readonly is: 'grade'; readonly grade: Strength }
  /** How well something is felt: hardly, or surely. */
  | { readonly is: 'degree'; readonly degree: 'little' | 'sure' | 'doubtful' }
  | { readonly is: 'not' }
  | {
      readonly is: 'bruit';
      readonly bruit: Exclude<Bruit, 'none'>;
      readonly sites?: readonly SiteId[];
      readonly plural?: true;
    }
  /** "Clear": no bruit where one listens. */
  | { readonly is: 'clear' }
  | { readonly is: 'mark'; readonly mark: 'thrill' | 'expansile' }
  | { readonly is: 'doppler'; readonly signal?: DopplerSignal; readonly only?: true }
  | { readonly is: 'reason'; readonly reason: Reason; readonly from?: 'foot' | 'below-knee' | 'above-knee' }
  /** Could not be examined; `skipped`: was not examined, which says nothing without a reason. */
  | { readonly is: 'could-not'; readonly skipped?: true }
  | { readonly is: 'pulse'; readonly plural?: true }
  | { readonly is: 'all' }
  | { readonly is: 'rest' }
  | { readonly is: 'except' }
  /** Than the other side: the side behind it is not the one spoken of. */
  | { readonly is: 'than' }
  | { readonly is: 'same' }
  | { readonly is: 'and' }
  | { readonly is: 'over' }
  | { readonly is: 'but' }
  /** Of another time, or what may be; of another person. */
  /** `once`: a state after something ("status post"), which covers no more than its own words. */
  | { readonly is: 'past'; readonly once?: true }
  | { readonly is: 'kin' }
  | { readonly is: 'now' }
  /** `below`: beyond the place named; `from`: it and what lies beyond; `to`: down to it; `distal`: beyond what was named last. */
  | { readonly is: 'reach'; readonly reach: 'below' | 'from' | 'to' | 'distal' }
  /** A disease or operation of an artery: "fem-pop bypass" names no pulse. */
  | { readonly is: 'lesion' }
  /** Something else that is examined: skin, feeling, an index. */
  | { readonly is: 'other' }
  /** What makes a measure of the number before it. */
  | { readonly is: 'unit' }
  /** Spoken or written punctuation. */
  | { readonly is: 'stop'; readonly stop: Stop }
  /** Nothing: articles, verbs, "pulse volume". */
  | { readonly is: 'filler' }
  /** A figure not yet on a scale; `of`: on which it stands, "2/4". */
  | { readonly is: 'figure'; readonly figure: number; readonly of?: number }
  /** A row of plus signs, not yet on a scale. */
  | { readonly is: 'pluses'; readonly count: number }
  | { readonly is: 'number' }
  /** A word that no lexicon knows. `near`: it may be a misspelt word that matters, so nothing may be read across it. */
  | { readonly is: 'unknown'; readonly near: boolean };

export type Stop =
  | 'sentence'
  | 'semicolon'
  | 'line'
  | 'comma'
  | 'colon'
  | 'slash'
  | 'cell'
  | 'dash'
  | 'open'
  | 'close'
  | 'question';

/** A word, figure or sign of a note, with what it means and where it stands (UTF-16 offsets). */
export interface Token {
  readonly means: Meaning;
  readonly start: number;
  readonly end: number;
  /** No space stands before it. */
  readonly glued: boolean;
  /** No space stands after it. */
  readonly tight: boolean;
}

export type TokenOf<Is extends Meaning['is']> = Token & { readonly means: Extract<Meaning, { is: Is }> };

export function means<Is extends Meaning['is']>(token: Token | undefined, ...is: Is[]): token is TokenOf<Is> {
  return token !== undefined && (is as string[]).includes(token.means.is);
}

/** Whether a token is one of these stops. */
export function stops(token: Token | undefined, ...at: Stop[]): boolean {
  return token?.means.is === 'stop' && at.includes(token.means.stop);
}

/** One place in the sense of a note: the site, and the side or the midline. */
export interface NotePlace<S extends SiteId = SiteId> {
  readonly site: S;
  readonly side: Laterality;
}
export type PulsePlace = NotePlace<PulseSiteId>;
export type BruitPlace = NotePlace<ListeningSiteId>;

/**
 * The words of one language by which a note says each meaning: phrases separated by `|`, folded to lower case without accents when
 * read, dots and hyphens between their words left out; dots after `short` words end no sentence.
 */
export interface Lexicon {
  readonly phrases: readonly (readonly [Meaning, string])[];
  /** Words that stand for small figures. */
  readonly figures: Readonly<Record<string, number>>;
  /** Spoken plus and minus. */
  readonly plus: readonly string[];
  readonly minus: readonly string[];
  /** Abbreviations after which a dot ends no sentence. */
  readonly short: string;
  /** Nouns begin with a capital, so that a capital after a dot does not tell a new sentence. */
  readonly capitals: boolean;
  /** Endings by which one word means the pulse of a site ("Femoralispuls"), and whether there are several. */
  readonly pulseEndings: Readonly<Record<string, boolean>>;
}
