/** Which question a note leaves open; the reader of notes has the same codes, one for one. */
type Question = 'scale' | 'strength' | 'felt' | 'side' | 'could-not' | 'contradiction' | 'unclear';

/** The words in which a typed or dictated note is read back. */
export interface NoteWords {
  readonly title: string;
  readonly label: string;
  /** What may be written, with an example in the manner of the language; which language is read. */
  readonly hint: string;
  readonly caution: string;
  /** How much was read, in one line. */
  summary(findings: number, open: number, unread: number): string;
  readonly understood: string;
  /** The words of the note that a finding was read from. */
  from(quotes: readonly string[]): string;
  /** What was found, at one place or at several. */
  at(places: readonly string[], said: string): string;
  readonly recordedAlready: string;
  readonly locked: string;
  /** The record says something else: what it says, and the choice to take the note instead. */
  now(recorded: string): string;
  readonly replace: string;
  question(number: number, code: Question): string;
  readonly leaveOut: string;
  /** Questions that must be answered first. */
  open(numbers: readonly number[]): string;
  readonly notUnderstood: string;
  readonly changesNothing: string;
  record(count: number): string;
  readonly nothingToRecord: string;
  recorded(count: number): string;
  undo(count: number): string;
  readonly takenBack: string;
  readonly clear: string;
  readonly dictate: string;
  readonly stopDictating: string;
  readonly onDevice: string;
  readonly dictationFailed: string;
  readonly notLoaded: string;
  readonly tryAgain: string;
}
