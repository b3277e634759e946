import { isListeningSite, isPulseSite, mayExpand, type Place } from '../../anatomy/index.js';
import {
  bruitAt,
  type BruitFinding,
  BRUITS,
  clearBruit,
  clearPlace,
  clearPulse,
  copyFromOtherSide,
  type Examination,
  pulseAt,
  type PulseFinding,
  type ScaleStep,
  setBruit,
  setPulse,
} from '../../examination/index.js';
import { wordsAt } from '../../drawing/index.js';
import type { Messages } from '../../locale/index.js';
import { memoizeLast } from '../common/memoize-last.js';
import { reader } from '../pulse-reading/reader.js';
import type { Said, Session } from './session.js';

/** Identifies the note field: consecutive edits of it are one undo step. */
const NOTE = 'note';

/** Every edit that the map makes: one undo step each, reported in the status strip. */
export class Recorder {
  constructor(private readonly session: Session) {}

  get #examination(): Examination {
    return this.session.examination;
  }

  grade(place: Place, { grade, increased }: ScaleStep): void {
    this.#record(place, setPulse(this.#examination, place, { grade, ...(increased && { increased }) }));
  }

  /** The same grade on several sites, as one step. */
  stroke(places: readonly Place[], { grade, increased }: ScaleStep): void {
    const felt = places.filter((place) => isPulseSite(place.site));
    const last = felt.at(-1);
    if (!last) return;
    const patch = { grade, ...(increased && { increased }) };
    this.#record(
      last,
      felt.reduce((next, place) => setPulse(next, place, patch), this.#examination),
    );
  }

  bruit(place: Place, bruit: BruitFinding['bruit']): void {
    if (isListeningSite(place.site)) this.#record(place, setBruit(this.#examination, place, { bruit }));
  }

  /** The next bruit in turn: not listened, none, systolic, continuous. */
  cycleBruit(place: Place): void {
    if (!isListeningSite(place.site)) return this.sayNothingTo(place, 'hear');
    const turns = [undefined, ...BRUITS];
    const at = turns.indexOf(bruitAt(this.#examination, place)?.bruit);
    this.bruit(place, turns[(at + 1) % turns.length]);
  }

  toggle(place: Place, field: 'thrill' | 'expansile'): void {
    if (!isPulseSite(place.site)) return this.sayNothingTo(place, 'feel');
    const now = pulseAt(this.#examination, place)?.[field];
    // What a record holds can be taken back.
    if (field === 'expansile' && !now && !mayExpand(place.site)) return this.sayNothingTo(place, 'expand');
    this.#record(place, setPulse(this.#examination, place, { [field]: now ? undefined : true }));
  }

  doppler(place: Place, doppler: PulseFinding['doppler']): void {
    this.#record(place, setPulse(this.#examination, place, { doppler }));
  }

  reason(place: Place, couldNotExamine: PulseFinding['couldNotExamine']): void {
    this.#record(place, this.#set(place, { couldNotExamine }));
  }

  /** Why a bruit could not be listened for, at a site where a pulse is felt too. */
  bruitReason(place: Place, couldNotExamine: BruitFinding['couldNotExamine']): void {
    this.#record(place, setBruit(this.#examination, place, { couldNotExamine }));
  }

  clearPart(place: Place, of: 'pulse' | 'bruit'): void {
    this.#record(place, (of === 'pulse' ? clearPulse : clearBruit)(this.#examination, place));
  }

  /** Copies the findings of the other side. */
  sameAsOther(place: Place): void {
    this.#record(place, copyFromOtherSide(this.#examination, place));
  }

  /** Records a note as it is typed. */
  note(place: Place, text: string): void {
    this.session.edit(this.#set(place, { note: text.trim() || undefined }), NOTE);
  }

  /** The note field was left: ends the undo step and reports it. */
  noteDone(place: Place): void {
    if (this.session.store.settle()) this.session.say(this.#standing(place));
  }

  clear(...places: readonly Place[]): void {
    const last = places.at(-1);
    if (last) this.#record(last, places.reduce(clearPlace, this.#examination));
  }

  /**
   * Records an edit of more than a place as one step.
   * @param told what is reported of it, by whether it changed anything; nothing reports nothing
   */
  whole(next: Examination, told: (changed: boolean) => string | undefined): void {
    const before = this.#lesions();
    const what = told(this.session.edit(next));
    if (what) this.#tell({ what }, before);
  }

  undo(): void {
    const before = this.#lesions();
    const changed = this.session.editable && this.session.store.undo();
    if (changed) this.#tell({ what: this.session.words.map.undone }, before);
  }

  redo(): void {
    const before = this.#lesions();
    const changed = this.session.editable && this.session.store.redo();
    if (changed) this.#tell({ what: this.session.words.map.redone }, before);
  }

  /** Reports that a digit is not on the present scale. */
  sayNotOnScale(digit: number): void {
    this.session.say({ what: this.session.words.map.notOnScale(digit, this.#examination.scale) });
  }

  /** Reports why a key had no effect at a site. */
  sayNothingTo(place: Place, what: 'feel' | 'hear' | 'expand'): void {
    this.session.say(this.session.words.map.nothingTo(place, what));
  }

  /** The present findings of a place, for the status strip. */
  #standing(place: Place): Said {
    const words = this.session.words;
    const what = wordsAt(this.#examination, place, words);
    return words.map.recorded(place, what || words.map.cleared);
  }

  #set(
    place: Place,
    patch: { couldNotExamine?: PulseFinding['couldNotExamine']; note?: string | undefined },
  ): Examination {
    return isPulseSite(place.site)
      ? setPulse(this.#examination, place, patch)
      : setBruit(this.#examination, place, patch);
  }

  /** Commits an edit at a place and reports the present findings there. */
  #record(place: Place, next: Examination): void {
    const before = this.#lesions();
    this.session.edit(next);
    this.#tell(this.#standing(place), before);
  }

  /** The rule's sentences about lesions; empty when it finds none, and until it has been fetched. */
  #lesions(): readonly string[] {
    return reader.part ? this.#sentences(reader.part, this.#examination, this.session.allWords) : [];
  }

  /** What stood after one act is what stands before the next. */
  readonly #sentences = memoizeLast(
    (part: NonNullable<typeof reader.part>, examination: Examination, words: Messages) =>
      part.lesionSentences(examination, words),
  );

  /** Reports an edit, and what it changed about the reading. */
  #tell(said: Said, before: readonly string[]): void {
    const now = this.#lesions();
    const fresh = now.filter((sentence) => !before.includes(sentence));
    const reading =
      before.length && !now.length ? this.session.words.map.nothingWrongNow : fresh.join('. ') || undefined;
    this.session.say({ ...said, ...(reading && { reading }) });
  }
}
