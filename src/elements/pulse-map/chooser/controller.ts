import {
  html,
  nothing,
  type ReactiveController,
  type ReactiveControllerHost,
  type TemplateResult,
} from 'lit';
import { isPulseSite, type Place, placeFromKey, type PlaceKey, placeKey } from '../../../anatomy/index.js';
import { bruitAt, type Examination, pulseAt, stepForDigit } from '../../../examination/index.js';
import type { Messages } from '../../../locale/index.js';
import type { ChooserActs, Unfolded } from './panel.js';
import { later } from '../fetched.js';
import { type KeyAct, keyAct } from '../hand/keys.js';
import type { Recorder } from '../recorder.js';

export interface ChooserHost {
  readonly element: ReactiveControllerHost & { readonly renderRoot: HTMLElement | DocumentFragment };
  examination(): Examination;
  words(): Messages;
  /** Whether the chooser is a sheet at the foot of the screen. */
  sheet(): boolean;
  /** Whether a press at this point of the window falls on a site, which then decides itself what opens. */
  onSite(event: PointerEvent): boolean;
  next(place: Place): Place | undefined;
  focusSite(key: PlaceKey): void;
}

const FIRST_CHOICE = '[role=radio][tabindex="0"]';
const FIRST_REASON = `.folds ${FIRST_CHOICE}`;
const NOTE = 'textarea';
/** The note's line while it is folded, last of the folds. */
const NOTE_FOLD = '.folds > .fold:last-child';

/** Opens, places and closes the chooser, and takes its keys. */
export class ChooserController implements ReactiveController {
  open: PlaceKey | undefined;
  unfolded: Unfolded = 'none';
  pinned = false;
  /** What stands in the note's field while it is typed in. */
  #typed: string | undefined;
  /** What takes the focus once drawn. */
  #focusNext: string | undefined;

  constructor(
    private readonly host: ChooserHost,
    private readonly recorder: Recorder,
  ) {
    host.element.addController(this);
  }

  get place(): Place | undefined {
    return this.open && placeFromKey(this.open);
  }

  hostDisconnected(): void {
    this.#listen(false);
    this.open = undefined;
  }

  hostUpdated(): void {
    const panel = this.#panel;
    if (!panel) return;
    if (!panel.matches(':popover-open')) {
      panel.showPopover();
    }
    if (this.host.sheet()) this.#makeRoom(panel);
    this.#hang(panel);
    if (this.#focusNext) {
      panel.querySelector<HTMLElement>(this.#focusNext)?.focus({ preventScroll: true });
      this.#focusNext = undefined;
    }
  }

  openAt(key: PlaceKey, focusInside: boolean, unfolded: Unfolded = 'none'): void {
    this.#foldNote();
    const place = placeFromKey(key);
    this.open = key;
    const heard = place && bruitAt(this.host.examination(), place)?.bruit;
    this.unfolded = unfolded === 'none' && heard ? 'bruit' : unfolded;
    this.#focusNext = focusInside ? (unfolded === 'reasons' ? FIRST_REASON : FIRST_CHOICE) : undefined;
    this.#listen(true);
    this.host.element.requestUpdate();
  }

  close(refocus: boolean): void {
    const key = this.open;
    if (!key) return;
    this.#foldNote();
    const inside = this.#panel?.matches(':focus-within');
    this.open = undefined;
    this.#listen(false);
    this.host.element.requestUpdate();
    if (refocus && inside) this.host.focusSite(key);
  }

  /** The panel of the open site. */
  template(): TemplateResult | typeof nothing {
    const { host, place, unfolded, pinned } = this;
    if (!place || !later.part) return nothing;
    const examination = host.examination();
    return html`<div @keydown=${this.keydown}>
      ${later.part.renderChooser(
        {
          place,
          pulse: pulseAt(examination, place),
          bruit: bruitAt(examination, place),
          typed: this.#typed,
          scale: examination.scale,
          unfolded,
          pinned,
          next: host.next(place),
          words: host.words(),
          sheet: host.sheet(),
        },
        this.acts(place),
      )}
    </div>`;
  }

  acts(place: Place): ChooserActs {
    const { recorder } = this;
    const done = (): void => {
      if (!this.pinned) this.close(true);
    };
    return {
      grade: (step) => {
        recorder.grade(place, step);
        done();
      },
      bruit: (bruit) => {
        recorder.bruit(place, bruit);
        if (!isPulseSite(place.site)) done();
      },
      toggle: (field) => recorder.toggle(place, field),
      doppler: (signal) => recorder.doppler(place, signal),
      reason: (reason) => {
        recorder.reason(place, reason);
        done();
      },
      note: (text) => {
        this.#typed = text;
        recorder.note(place, text);
      },
      noteDone: () => this.#noteDone(),
      clear: () => recorder.clear(place),
      sameAsOther: () => {
        recorder.sameAsOther(place);
        done();
      },
      next: () => {
        const next = this.host.next(place);
        if (next) this.openAt(placeKey(next), true);
      },
      close: () => this.close(true),
      pin: () => {
        this.pinned = !this.pinned;
        this.host.element.requestUpdate();
      },
      unfold: (part) => {
        this.#foldNote();
        this.unfolded = part;
        if (part === 'note') this.#focusNext = NOTE;
        this.host.element.requestUpdate();
      },
    };
  }

  /** Records by key at a place, open or not. */
  recordByKey(place: Place, act: KeyAct): void {
    const { recorder } = this;
    switch (act.kind) {
      case 'open':
        return this.openAt(placeKey(place), true);
      case 'grade': {
        const step = stepForDigit(act.digit, this.host.examination().scale);
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
        return this.openAt(placeKey(place), true, 'reasons');
      case 'clear':
        return recorder.clear(place);
      case 'rest':
        return recorder.restNormal();
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
    if (act.kind === 'grade' && !this.pinned) this.close(true);
  };

  /** What was typed is recorded already: this ends the step, and says what was noted. */
  #noteDone(): void {
    this.#typed = undefined;
    if (this.place) this.recorder.noteDone(this.place);
  }

  /** Folds the note away. */
  #foldNote(): void {
    this.#noteDone();
    if (this.unfolded !== 'note') return;
    this.unfolded = 'none';
    this.host.element.requestUpdate();
  }

  get #panel(): HTMLElement | null {
    return this.host.element.renderRoot.querySelector('.chooser');
  }

  #box(selector: string): DOMRect | undefined {
    return this.host.element.renderRoot.querySelector(selector)?.getBoundingClientRect();
  }

  #hang(panel: HTMLElement): void {
    if (this.host.sheet()) {
      panel.style.removeProperty('left');
      panel.style.removeProperty('top');
      return;
    }
    const own = this.#box(`[data-anchor="${this.open}"]`);
    if (!own || !later.part) return;
    const others = [
      ...this.host.element.renderRoot.querySelectorAll(`[data-anchor]:not([data-anchor="${this.open}"])`),
    ];
    // Its own measures are those before it is enlarged on a wall.
    const zoom = panel.currentCSSZoom ?? 1;
    const { left, top } = later.part.placeChooser(
      own,
      others.map((other) => other.getBoundingClientRect()),
      { width: panel.offsetWidth * zoom, height: panel.offsetHeight * zoom },
      { width: document.documentElement.clientWidth, height: window.innerHeight },
      this.open?.startsWith('right') ? -1 : 1,
    );
    panel.style.left = `${left / zoom}px`;
    panel.style.top = `${top / zoom}px`;
  }

  /** The sheet covers the foot of a narrow screen; the page is scrolled so that the open site stays seen above it. */
  #makeRoom(panel: HTMLElement): void {
    // Not where it is drawn: it may still be on its way in.
    const top = window.innerHeight - panel.offsetHeight;
    const own = this.#box(`[data-anchor="${this.open}"]`);
    if (own && (own.bottom > top - 12 || own.top < 0)) window.scrollBy({ top: own.top - top / 2 });
  }

  #listen(on: boolean): void {
    const change = on ? 'addEventListener' : 'removeEventListener';
    document[change]('pointerdown', this.#outside, true);
    window[change]('scroll', this.#moved, true);
    window[change]('resize', this.#moved);
  }

  readonly #outside = (event: Event): void => {
    const panel = this.#panel;
    if (panel && event.composedPath().includes(panel)) return;
    if (this.host.onSite(event as PointerEvent)) return;
    this.close(false);
  };

  readonly #moved = (): void => {
    const panel = this.#panel;
    if (panel) this.#hang(panel);
  };
}

/** Arrow keys walk the choices of a group; Enter or Space takes one, so that passing by records nothing. */
function moveInGroup(event: KeyboardEvent, from: HTMLElement): void {
  const group = from.closest('[role=radiogroup]');
  if (!group) return;
  event.preventDefault();
  const all = [...group.querySelectorAll<HTMLElement>('[role=radio]')];
  const onward = getComputedStyle(group).direction === 'rtl' ? 'ArrowLeft' : 'ArrowRight';
  const step = event.key === onward || event.key === 'ArrowDown' ? 1 : -1;
  all[(all.indexOf(from) + step + all.length) % all.length]?.focus();
}
