import { html, nothing, type ReactiveController, render, type TemplateResult } from 'lit';
import { type Place, placeFromKey } from '../../../anatomy/index.js';
import { bruitAt, pulseAt } from '../../../examination/index.js';
import { later } from '../fetched.js';
import { isUnknownAt } from '../../../drawing/index.js';
import type { SiteFinder } from '../hand/site-finder.js';
import type { Session } from '../session.js';
import type { ChooserActs } from './acts.js';
import type { Chooser } from './chooser.js';
import { WhileOpen } from './while-open.js';

/** Renders the chooser of the open site, positions it, and closes it on a press elsewhere. */
export class ChooserController implements ReactiveController {
  readonly #whileOpen = new WhileOpen(
    (event) => this.#outside(event),
    () => this.#moved(),
  );
  #acts: ChooserActs | undefined;

  constructor(
    private readonly session: Session,
    private readonly chooser: Chooser,
    private readonly finder: SiteFinder,
  ) {
    session.element.addController(this);
  }

  hostDisconnected(): void {
    this.#whileOpen.set(false);
  }

  hostUpdated(): void {
    this.#whileOpen.set(this.session.now.open !== undefined && this.session.element.isConnected);
    const { panel } = this.chooser;
    if (!panel) return;
    if (!panel.matches(':popover-open')) {
      panel.showPopover();
    }
    if (this.session.narrow) this.#makeRoom(panel);
    this.#hang(panel);
    this.chooser.takeFocus();
  }

  /** Renders a panel that nobody sees, so that the first to be opened finds its templates made. */
  warm(): void {
    const place = placeFromKey('right femoral');
    if (place) render(this.#panelOf(place), document.createDocumentFragment());
  }

  /** The panel of the open site. */
  template(): TemplateResult | typeof nothing {
    const { place } = this.chooser;
    return place ? this.#panelOf(place) : nothing;
  }

  #panelOf(place: Place): TemplateResult | typeof nothing {
    const { session, chooser } = this;
    const { typed, unfolded, pinned } = chooser;
    if (!later.part) return nothing;
    const { examination } = session;
    const acts = (this.#acts ??= new later.part.ChooserActs(chooser));
    return html`<div @keydown=${acts.keydown}>
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
        acts,
      )}
    </div>`;
  }

  get #anchor(): Element | null {
    return this.session.element.renderRoot.querySelector(`[data-anchor="${this.session.now.open}"]`);
  }

  #hang(panel: HTMLElement): void {
    const own = this.#anchor;
    const { narrow, element, now } = this.session;
    if (!narrow && !own) return;
    later.part?.hangPanel(
      panel,
      narrow ? null : own,
      element.renderRoot.querySelectorAll('[data-anchor]'),
      now.open?.startsWith('right') ? -1 : 1,
    );
  }

  /** On a narrow screen the chooser covers the bottom; scrolls the page so that the open site stays visible above it. */
  #makeRoom(panel: HTMLElement): void {
    // Its final place, not its bounding box: it may still be sliding in.
    const top = window.innerHeight - panel.offsetHeight;
    const own = this.#anchor?.getBoundingClientRect();
    if (own && (own.bottom > top - 12 || own.top < 0)) window.scrollBy({ top: own.top - top / 2 });
  }

  #outside(event: Event): void {
    const { panel } = this.chooser;
    if (panel && event.composedPath().includes(panel)) return;
    // A press on a site is handled by the hand.
    if (this.finder.pressed(event as PointerEvent)) return;
    this.chooser.close(false);
  }

  #moved(): void {
    const { panel } = this.chooser;
    if (panel) this.#hang(panel);
  }
}
