import type { ReactiveController } from 'lit';
import { isPulseSite, type Place, placeFromKey, placeKey } from '../../../anatomy/index.js';
import { bruitAt, stepForDigit } from '../../../examination/index.js';
import type { KeyAct } from '../hand/keys.js';
import { showNormals } from '../normals.js';
import type { Recorder } from '../recorder.js';
import type { Session } from '../session.js';

/** The section of the chooser that is unfolded. */
export type Unfolded = 'none' | 'bruit' | 'reasons' | 'doppler' | 'note';

const FIRST_CHOICE = '[role=radio][tabindex="0"]';
const FIRST_REASON = `.folds ${FIRST_CHOICE}`;

/** State of the chooser, and what is done without its panel: that one's own acts come with it (acts.ts). */
export class Chooser implements ReactiveController {
  unfolded: Unfolded = 'none';
  /** Stays open after a finding is recorded. */
  pinned = false;
  /** Content of the note field while it is being edited. */
  typed: string | undefined;
  /** Selector of the element to focus after the next render. */
  focusNext: string | undefined;

  constructor(
    readonly session: Session,
    readonly recorder: Recorder,
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
    const selector = this.focusNext;
    this.focusNext = undefined;
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
    this.foldNote();
    const key = placeKey(place);
    const heard = bruitAt(this.session.examination, place)?.bruit;
    this.unfolded = unfolded === 'none' && heard ? 'bruit' : unfolded;
    this.focusNext = focusInside ? (unfolded === 'reasons' ? FIRST_REASON : FIRST_CHOICE) : undefined;
    this.session.change({ active: key, open: key });
    this.changed();
  }

  close(refocus: boolean): void {
    const { place } = this;
    if (!place) return;
    this.foldNote();
    const inside = this.panel?.matches(':focus-within');
    this.session.change({ open: undefined });
    if (refocus && inside) this.session.leaveFor(place);
  }

  /** The note field was left: the text is recorded already; ends the undo step and reports it. */
  noteDone(): void {
    this.typed = undefined;
    if (this.place) this.recorder.noteDone(this.place);
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

  changed(): void {
    this.session.element.requestUpdate();
  }

  /** Folds the note. */
  foldNote(): void {
    this.noteDone();
    if (this.unfolded !== 'note') return;
    this.unfolded = 'none';
    this.changed();
  }
}
