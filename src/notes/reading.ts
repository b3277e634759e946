import type { ListeningSiteId, Place, PulseSiteId } from '../anatomy/index.js';
import type { BruitFinding, PulseFinding } from '../examination/index.js';
import type { Span } from './groups.js';

/** One finding of a note: what to write at one place, and the words it was read from. */
export type NoteFinding =
  | {
      readonly part: 'pulses';
      readonly place: Place<PulseSiteId>;
      readonly patch: PulseFinding;
      readonly spans: readonly Span[];
    }
  | {
      readonly part: 'bruits';
      readonly place: Place<ListeningSiteId>;
      readonly patch: BruitFinding;
      readonly spans: readonly Span[];
    };

/** What may be in doubt, and so is asked. */
export const NOTE_DOUBTS = [
  /** On which scale a figure or a row of plus signs stands. */
  'scale',
  /** How strong a pulse is of which only is said that it is felt, or strong. */
  'strength',
  /** Whether a pulse was felt at all. */
  'felt',
  /** Which side is meant. */
  'side',
  /** Absent, or impossible to examine. */
  'could-not',
  /** Two statements about one place contradict each other. */
  'contradiction',
  /** A word within was not understood, or it is not clear what belongs to what. */
  'unclear',
] as const;
export type NoteDoubtCode = (typeof NOTE_DOUBTS)[number];

/** A question that a note leaves open. Besides its choices there is always the one to leave it out. */
export interface NoteDoubt {
  readonly code: NoteDoubtCode;
  /** The words it is about. */
  readonly spans: readonly Span[];
  /** What each answer would write; the likeliest first. */
  readonly choices: readonly (readonly NoteFinding[])[];
  /** The likeliest counts until something else is chosen. Never where another choice turns felt into absent, or changes the side. */
  readonly taken: boolean;
}

/** What a note says. Nothing of it is written until `writeNote` is called. */
export interface NoteReading {
  /** What is certain, in the order of the text. */
  readonly findings: readonly NoteFinding[];
  readonly doubts: readonly NoteDoubt[];
  /** Words and figures from which nothing was understood. What is of another time or person is understood, and says nothing. */
  readonly unread: readonly Span[];
}

/** The answer to a doubt: the number of a choice, or to leave it out. */
export type NoteAnswer = number | 'leave';

/** What a note writes: its certain findings, and what is chosen for each doubt; without an answer, the likeliest where it is taken. */
export function chosenFindings(
  { findings, doubts }: NoteReading,
  answers: ReadonlyMap<NoteDoubt, NoteAnswer> = new Map(),
): readonly NoteFinding[] {
  const chosen = doubts.flatMap((doubt) => {
    const answer = answers.get(doubt) ?? (doubt.taken ? 0 : 'leave');
    return answer === 'leave' ? [] : (doubt.choices[answer] ?? []);
  });
  return [...findings, ...chosen];
}
