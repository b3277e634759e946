import { isListeningSite, isPulseSite, type Limb, type Place } from '../../anatomy/index.js';
import {
  bruitAt,
  type BruitFinding,
  BRUITS,
  clearBruit,
  clearLimb,
  clearPlace,
  clearPulse,
  copyFromOtherSide,
  type Examination,
  fillFromOtherSide,
  pulseAt,
  type PulseFinding,
  restNormal,
  type ScaleStep,
  setBruit,
  setPulse,
  unstatedPlaces,
} from '../../examination/index.js';
import { readByRule } from '../../localisation/index.js';
import type { Messages } from '../../locale/index.js';
import { ruleLeads } from '../../statements/index.js';
import type { RecordStore } from '../common/record-store.js';

/** What was recorded last, for the status strip: a site with what is there now, or a sentence. */
export interface Said {
  readonly where?: string;
  readonly what: string;
  /** What the rule says now and did not say before. */
  readonly reading?: string;
}

export interface RecorderHost {
  store(): RecordStore;
  words(): Messages;
  editable(): boolean;
  /** Makes an edit one step, or with a field being typed in part of one; false when nothing changed or may change. */
  commit(next: Examination, field?: unknown): boolean;
  said(said: Said): void;
}

/** The field of a note, for edits that are one step. */
const NOTE = 'note';

/** Every act of the map on the record, each one undo step that says what it did. */
export class Recorder {
  constructor(private readonly host: RecorderHost) {}

  get #examination(): Examination {
    return this.host.store().examination;
  }

  grade(place: Place, { grade, increased }: ScaleStep): void {
    this.#commit(place, setPulse(this.#examination, place, { grade, ...(increased && { increased }) }));
  }

  /** The same grade on several sites, as one step. */
  stroke(places: readonly Place[], { grade, increased }: ScaleStep): void {
    const felt = places.filter((place) => isPulseSite(place.site));
    const last = felt.at(-1);
    if (!last) return;
    const patch = { grade, ...(increased && { increased }) };
    this.#commit(
      last,
      felt.reduce((next, place) => setPulse(next, place, patch), this.#examination),
    );
  }

  bruit(place: Place, bruit: BruitFinding['bruit']): void {
    if (isListeningSite(place.site)) this.#commit(place, setBruit(this.#examination, place, { bruit }));
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
    this.#commit(place, setPulse(this.#examination, place, { [field]: now ? undefined : true }));
  }

  doppler(place: Place, doppler: PulseFinding['doppler']): void {
    this.#commit(place, setPulse(this.#examination, place, { doppler }));
  }

  reason(place: Place, couldNotExamine: PulseFinding['couldNotExamine']): void {
    this.#commit(place, this.#set(place, { couldNotExamine }));
  }

  /** Why a bruit could not be listened for, at a site where a pulse is felt too. */
  bruitReason(place: Place, couldNotExamine: BruitFinding['couldNotExamine']): void {
    this.#commit(place, setBruit(this.#examination, place, { couldNotExamine }));
  }

  clearPart(place: Place, of: 'pulse' | 'bruit'): void {
    this.#commit(place, (of === 'pulse' ? clearPulse : clearBruit)(this.#examination, place));
  }

  /** Records at a place what stands at the same site of the other side. */
  sameAsOther(place: Place): void {
    this.#commit(place, copyFromOtherSide(this.#examination, place));
  }

  fillLimb(limb: Limb): void {
    const { map } = this.host.words();
    this.#act(
      () => this.host.commit(fillFromOtherSide(this.#examination, limb)),
      (changed) => ({ what: changed ? map.limbFilled(limb) : map.limbUnchanged(limb) }),
    );
  }

  clearLimb(limb: Limb): void {
    const { map } = this.host.words();
    this.#act(
      () => this.host.commit(clearLimb(this.#examination, limb)),
      (changed) => ({ what: changed ? map.limbCleared(limb) : map.limbUnchanged(limb) }),
    );
  }

  /** Records a note as it is typed; said once it is done. */
  note(place: Place, text: string): void {
    this.host.commit(this.#set(place, { note: text.trim() || undefined }), NOTE);
  }

  /** The note's field was left. */
  noteDone(place: Place): void {
    if (this.host.store().settle()) this.host.said(this.#standing(place));
  }

  clear(...places: readonly Place[]): void {
    const last = places.at(-1);
    if (last) this.#commit(last, places.reduce(clearPlace, this.#examination));
  }

  restNormal(): void {
    const count = unstatedPlaces(this.#examination).length;
    this.#act(
      () => this.host.commit(restNormal(this.#examination)),
      (changed) => (changed ? { what: this.host.words().map.restNormal(count) } : undefined),
    );
  }

  undo(): void {
    this.#act(
      () => this.host.editable() && this.host.store().undo(),
      (changed) => (changed ? { what: this.host.words().map.undone } : undefined),
    );
  }

  redo(): void {
    this.#act(
      () => this.host.editable() && this.host.store().redo(),
      (changed) => (changed ? { what: this.host.words().map.redone } : undefined),
    );
  }

  /** That a digit is no grade of the scale in use. */
  sayNotOnScale(digit: number): void {
    this.host.said({ what: this.host.words().map.notOnScale(digit, this.#examination.scale) });
  }

  /** Why an act had no effect, where a site has no pulse to feel or nothing to listen for. */
  sayNothingTo(place: Place, what: 'feel' | 'hear'): void {
    this.host.said(this.host.words().map.nothingTo(place, what));
  }

  /** What stands at a place now, for the status strip. */
  #standing(place: Place): Said {
    const words = this.host.words();
    const examination = this.#examination;
    const what = words.map.findings(
      pulseAt(examination, place),
      bruitAt(examination, place),
      examination.scale,
    );
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

  #commit(place: Place, next: Examination): void {
    this.#act(
      () => this.host.commit(next),
      () => this.#standing(place),
    );
  }

  /** Where the rule sees something wrong, in its sentences; empty where it sees nothing. */
  #lesions(): readonly string[] {
    const reading = readByRule(this.#examination);
    const any = Object.values(reading).some(({ outcome }) => outcome === 'lesion');
    return any ? ruleLeads(reading).map(this.host.words().rule.lead) : [];
  }

  /** Does an act and says it, with what it changed about the reading. */
  #act(change: () => boolean, said: (changed: boolean) => Said | undefined): void {
    const before = this.#lesions();
    const done = said(change());
    if (!done) return;
    const now = this.#lesions();
    const fresh = now.filter((sentence) => !before.includes(sentence));
    const reading =
      before.length && !now.length ? this.host.words().map.nothingWrongNow : fresh.join('. ') || undefined;
    this.host.said({ ...done, ...(reading && { reading }) });
  }
}
