import { isPulseSite, type Place } from '../../../anatomy/index.js';
import type { BruitFinding, PulseFinding, ScaleStep } from '../../../examination/index.js';
import { keyAct } from '../hand/keys.js';
import type { Chooser, Unfolded } from './chooser.js';

const NOTE = 'textarea';
/** The folded note, last of the folds. */
const NOTE_FOLD = '.folds > .fold:last-child';

/** What can be done in the open panel, by pointer and by key; fetched with it. */
export class ChooserActs {
  constructor(private readonly chooser: Chooser) {}

  get #place(): Place | undefined {
    return this.chooser.place;
  }

  grade(step: ScaleStep): void {
    if (this.#place) this.chooser.recorder.grade(this.#place, step);
    this.#done();
  }

  bruit(bruit: BruitFinding['bruit']): void {
    const { place } = this.chooser;
    if (!place) return;
    this.chooser.recorder.bruit(place, bruit);
    if (!isPulseSite(place.site)) this.#done();
  }

  toggle(field: 'thrill' | 'expansile'): void {
    if (this.#place) this.chooser.recorder.toggle(this.#place, field);
  }

  doppler(signal: PulseFinding['doppler']): void {
    if (this.#place) this.chooser.recorder.doppler(this.#place, signal);
  }

  reason(reason: PulseFinding['couldNotExamine']): void {
    if (this.#place) this.chooser.recorder.reason(this.#place, reason);
    this.#done();
  }

  /** Records the content of the note field. */
  note(text: string): void {
    this.chooser.typed = text;
    if (this.#place) this.chooser.recorder.note(this.#place, text);
  }

  noteDone(): void {
    this.chooser.noteDone();
  }

  clear(): void {
    if (this.#place) this.chooser.recorder.clear(this.#place);
  }

  sameAsOther(): void {
    if (this.#place) this.chooser.recorder.sameAsOther(this.#place);
    this.#done();
  }

  next(): void {
    const next = this.#place && this.chooser.session.next(this.#place);
    if (next) this.chooser.openAt(next, true);
  }

  pin(): void {
    this.chooser.pinned = !this.chooser.pinned;
    this.chooser.changed();
  }

  unfold(what: Unfolded): void {
    this.chooser.foldNote();
    this.chooser.unfolded = what;
    if (what === 'note') this.chooser.focusNext = NOTE;
    this.chooser.changed();
  }

  close(refocus: boolean): void {
    this.chooser.close(refocus);
  }

  readonly keydown = (event: KeyboardEvent): void => {
    const { place } = this.chooser;
    const from = event.composedPath()[0] as HTMLElement;
    if (!place) return;
    if (event.key === 'Escape') {
      event.preventDefault();
      event.stopPropagation();
      this.close(true);
      return;
    }
    if (from instanceof HTMLTextAreaElement) {
      if (event.key === 'Enter' && !event.shiftKey) {
        event.preventDefault();
        this.chooser.foldNote();
        this.chooser.focusNext = NOTE_FOLD;
      }
      return;
    }
    if (event.key.startsWith('Arrow')) {
      moveInGroup(event, from);
      return;
    }
    const act = keyAct(event);
    if (!act || act.kind === 'open' || act.kind === 'travel' || act.kind === 'help') return;
    event.preventDefault();
    event.stopPropagation();
    this.chooser.recordByKey(place, act);
    if (act.kind === 'grade') this.#done();
  };

  #done(): void {
    if (!this.chooser.pinned) this.close(true);
  }
}

/** Arrow keys move through a group; Enter or Space chooses, so that moving records nothing. */
function moveInGroup(event: KeyboardEvent, from: HTMLElement): void {
  const group = from.closest('[role=radiogroup]');
  if (!group) return;
  event.preventDefault();
  const all = [...group.querySelectorAll<HTMLElement>('[role=radio]')];
  const onward = getComputedStyle(group).direction === 'rtl' ? 'ArrowLeft' : 'ArrowRight';
  const step = event.key === onward || event.key === 'ArrowDown' ? 1 : -1;
  all[(all.indexOf(from) + step + all.length) % all.length]?.focus();
}
