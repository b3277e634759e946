import { html, nothing, type ReactiveController, type TemplateResult } from 'lit';
import { bruitAt, pulseAt } from '../../../examination/index.js';
import { later } from '../fetched.js';
import { isUnknownAt } from '../../../drawing/index.js';
import type { SiteFinder } from '../hand/site-finder.js';
import type { Session } from '../session.js';
import type { Chooser } from './chooser.js';

/** Renders the chooser of the open site, positions it, and closes it on a press elsewhere. */
export class ChooserController implements ReactiveController {
  #listens = false;

  constructor(
    private readonly session: Session,
    private readonly chooser: Chooser,
    private readonly finder: SiteFinder,
  ) {
    session.element.addController(this);
  }

  hostDisconnected(): void {
    this.#listen(false);
  }

  hostUpdated(): void {
    this.#listen(this.session.now.open !== undefined && this.session.element.isConnected);
    const { panel } = this.chooser;
    if (!panel) return;
    if (!panel.matches(':popover-open')) {
      panel.showPopover();
    }
    if (this.session.narrow) this.#makeRoom(panel);
    this.#hang(panel);
    this.chooser.takeFocus();
  }

  /** The panel of the open site. */
  template(): TemplateResult | typeof nothing {
    const { session, chooser } = this;
    const { place, typed, unfolded, pinned } = chooser;
    if (!place || !later.part) return nothing;
    const { examination } = session;
    return html`<div @keydown=${chooser.keydown}>
      ${later.part.renderChooser(
        {
          place,
          pulse: pulseAt(examination, place),
          bruit: bruitAt(examination, place),
          unknown: isUnknownAt(examination, place),
          typed,
          scale: examination.scale,
          unfolded,
          pinned,
          next: session.next(place),
          words: session.allWords,
          sheet: session.narrow,
        },
        chooser,
      )}
    </div>`;
  }

  get #anchor(): Element | null {
    return this.session.element.renderRoot.querySelector(`[data-anchor="${this.session.now.open}"]`);
  }

  #hang(panel: HTMLElement): void {
    if (this.session.narrow) {
      panel.style.removeProperty('left');
      panel.style.removeProperty('top');
      return;
    }
    const own = this.#anchor;
    if (!own || !later.part) return;
    const all = [...this.session.element.renderRoot.querySelectorAll('[data-anchor]')];
    // offsetWidth and offsetHeight are those before CSS zoom on large screens.
    const zoom = panel.currentCSSZoom ?? 1;
    const { left, top } = later.part.placeChooser(
      own.getBoundingClientRect(),
      all.filter((other) => other !== own).map((other) => other.getBoundingClientRect()),
      { width: panel.offsetWidth * zoom, height: panel.offsetHeight * zoom },
      { width: document.documentElement.clientWidth, height: window.innerHeight },
      this.session.now.open?.startsWith('right') ? -1 : 1,
    );
    panel.style.left = `${left / zoom}px`;
    panel.style.top = `${top / zoom}px`;
  }

  /** On a narrow screen the chooser covers the bottom; scrolls the page so that the open site stays visible above it. */
  #makeRoom(panel: HTMLElement): void {
    // Its final place, not its bounding box: it may still be sliding in.
    const top = window.innerHeight - panel.offsetHeight;
    const own = this.#anchor?.getBoundingClientRect();
    if (own && (own.bottom > top - 12 || own.top < 0)) window.scrollBy({ top: own.top - top / 2 });
  }

  #listen(on: boolean): void {
    if (on === this.#listens) return;
    this.#listens = on;
    const change = on ? 'addEventListener' : 'removeEventListener';
    document[change]('pointerdown', this.#outside, true);
    window[change]('scroll', this.#moved, true);
    window[change]('resize', this.#moved);
  }

  readonly #outside = (event: Event): void => {
    const { panel } = this.chooser;
    if (panel && event.composedPath().includes(panel)) return;
    // A press on a site is handled by the hand.
    if (this.finder.pressed(event as PointerEvent)) return;
    this.chooser.close(false);
  };

  readonly #moved = (): void => {
    const { panel } = this.chooser;
    if (panel) this.#hang(panel);
  };
}
