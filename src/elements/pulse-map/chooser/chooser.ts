import type { ReactiveController } from 'lit';
import { isPulseSite, type Place, placeFromKey, placeKey } from '../../../anatomy/index.js';
import {
  bruitAt,
  type BruitFinding,
  type PulseFinding,
  type ScaleStep,
  stepForDigit,
} from '../../../examination/index.js';
import { type KeyAct, keyAct } from '../hand/keys.js';
import { showNormals } from '../normals.js';
import type { Recorder } from '../recorder.js';
import type { Session } from '../session.js';

/** The section of the chooser that is unfolded. */
export type Unfolded = 'none' | 'bruit' | 'reasons' | 'doppler' | 'note';

const FIRST_CHOICE = '[role=radio][tabindex="0"]';
const FIRST_REASON = `.folds ${FIRST_CHOICE}`;
const NOTE = 'textarea';
/** The folded note, last of the folds. */
const NOTE_FOLD = '.folds > .fold:last-child';

/** State of the chooser, and everything that can be done in it by pointer and by key. */
export class Chooser implements ReactiveController {
  unfolded: Unfolded = 'none';
  /** Stays open after a finding is recorded. */
  pinned = false;
  /** Content of the note field while it is being edited. */
  typed: string | undefined;
  /** Selector of the element to focus after the next render. */
  #focusNext: string | undefined;

  constructor(
    private readonly session: Session,
    private readonly recorder: Recorder,
  ) {
    session.element.addController(this);
  }

  get place(): Place | undefined {
    const { open } = this.session.now;
    return open && placeFromKey(open);
  }

  get panel(): HTMLElement | null {
    return this.session.element.renderRoot.querySelector('.chooser');
  }

  hostDisconnected(): void {
    this.session.change({ open: undefined });
  }

  /** Moves the focus into the panel, once it is positioned. */
  takeFocus(): void {
    const selector = this.#focusNext;
    this.#focusNext = undefined;
    if (selector) this.panel?.querySelector<HTMLElement>(selector)?.focus({ preventScroll: true });
  }

  /** Toggles the chooser of a site. */
  tap(place: Place): void {
    if (this.session.now.open !== placeKey(place)) return this.openAt(place, false);
    this.session.change({ active: placeKey(place) });
    this.close(true);
  }

  openAt(place: Place, focusInside: boolean, unfolded: Unfolded = 'none'): void {
    if (!this.session.editable) return;
    this.#foldNote();
    const key = placeKey(place);
    const heard = bruitAt(this.session.examination, place)?.bruit;
    this.unfolded = unfolded === 'none' && heard ? 'bruit' : unfolded;
    this.#focusNext = focusInside ? (unfolded === 'reasons' ? FIRST_REASON : FIRST_CHOICE) : undefined;
    this.session.change({ active: key, open: key });
    this.#changed();
  }

  close(refocus: boolean): void {
    const { place } = this;
    if (!place) return;
    this.#foldNote();
    const inside = this.panel?.matches(':focus-within');
    this.session.change({ open: undefined });
    if (refocus && inside) this.session.leaveFor(place);
  }

  grade(step: ScaleStep): void {
    if (this.place) this.recorder.grade(this.place, step);
    this.#done();
  }

  bruit(bruit: BruitFinding['bruit']): void {
    const { place } = this;
    if (!place) return;
    this.recorder.bruit(place, bruit);
    if (!isPulseSite(place.site)) this.#done();
  }

  toggle(field: 'thrill' | 'expansile'): void {
    if (this.place) this.recorder.toggle(this.place, field);
  }

  doppler(signal: PulseFinding['doppler']): void {
    if (this.place) this.recorder.doppler(this.place, signal);
  }

  reason(reason: PulseFinding['couldNotExamine']): void {
    if (this.place) this.recorder.reason(this.place, reason);
    this.#done();
  }

  /** Records the content of the note field. */
  note(text: string): void {
    this.typed = text;
    if (this.place) this.recorder.note(this.place, text);
  }

  /** The note field was left: the text is recorded already; ends the undo step and reports it. */
  noteDone(): void {
    this.typed = undefined;
    if (this.place) this.recorder.noteDone(this.place);
  }

  clear(): void {
    if (this.place) this.recorder.clear(this.place);
  }

  sameAsOther(): void {
    if (this.place) this.recorder.sameAsOther(this.place);
    this.#done();
  }

  next(): void {
    const next = this.place && this.session.next(this.place);
    if (next) this.openAt(next, true);
  }

  pin(): void {
    this.pinned = !this.pinned;
    this.#changed();
  }

  unfold(what: Unfolded): void {
    this.#foldNote();
    this.unfolded = what;
    if (what === 'note') this.#focusNext = NOTE;
    this.#changed();
  }

  /** Handles a key at a place, open or not. */
  recordByKey(place: Place, act: KeyAct): void {
    const { recorder } = this;
    switch (act.kind) {
      case 'open':
        return this.openAt(place, true);
      case 'grade': {
        const step = stepForDigit(act.digit, this.session.examination.scale);
        if (!isPulseSite(place.site)) recorder.sayNothingTo(place, 'feel');
        else if (step) recorder.grade(place, step);
        else recorder.sayNotOnScale(act.digit);
        return;
      }
      case 'bruit':
        return recorder.cycleBruit(place);
      case 'thrill':
      case 'expansile':
        return recorder.toggle(place, act.kind);
      case 'reason':
        return this.openAt(place, true, 'reasons');
      case 'clear':
        return recorder.clear(place);
      case 'rest':
        this.close(false);
        return showNormals(this.session, true);
      case 'undo':
        return recorder.undo();
      case 'redo':
        return recorder.redo();
      case 'travel':
      case 'help':
      case 'escape':
        return;
    }
  }

  readonly keydown = (event: KeyboardEvent): void => {
    const { place } = this;
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
        this.#foldNote();
        this.#focusNext = NOTE_FOLD;
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
    this.recordByKey(place, act);
    if (act.kind === 'grade') this.#done();
  };

  #done(): void {
    if (!this.pinned) this.close(true);
  }

  #changed(): void {
    this.session.element.requestUpdate();
  }

  /** Folds the note. */
  #foldNote(): void {
    this.noteDone();
    if (this.unfolded !== 'note') return;
    this.unfolded = 'none';
    this.#changed();
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
