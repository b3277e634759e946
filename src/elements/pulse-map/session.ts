import type { LitElement, ReactiveController } from 'lit';
import { type Place, type PlaceKey, placeKey } from '../../anatomy/index.js';
import { aroundPlate, isPlateView, placesIn, travel, type View, VIEWS } from '../../drawing/index.js';
import type { Examination, ScaleStep } from '../../examination/index.js';
import type { Messages } from '../../locale/index.js';
import type { ShownMessages } from '../../locale/shown.js';
import type { RecordStore } from '../common/record-store.js';
import { WidthController } from '../common/width-controller.js';
import { barHeight, type Crop, cropShown, type NarrowCrop, NARROW, readingRoom } from './crops.js';
import type { DrawingPoint } from './hand/site-finder.js';
import { plateFor } from './plate/fetched.js';

/** The message in the status strip: a site with its present finding, or a sentence. */
export interface Said {
  readonly where?: string;
  readonly what: string;
  /** What the rule newly says. */
  readonly reading?: string;
}

/** State of the interaction: what the hand does now, and what is open. */
export interface HandState {
  /** What a press on the figure does: record at sites, or draw on the skin. */
  readonly mode: 'sites' | 'skin';
  /** The grade that every tap and stroke records. */
  readonly brush: ScaleStep | undefined;
  /** The site in the tab order. */
  readonly active: PlaceKey;
  /** The site whose chooser is open. */
  readonly open: PlaceKey | undefined;
  /** The site that a press would act on, highlighted on hover. */
  readonly preview: PlaceKey | undefined;
  /** Sites crossed by the brush stroke in progress, not recorded yet. */
  readonly painted: readonly PlaceKey[];
  /** Start and end of a drag that may mirror a finding; empty when there is none. */
  readonly drag: readonly DrawingPoint[];
  readonly said: Said | undefined;
  /** The part of the body that a narrow screen shows. */
  readonly crop: NarrowCrop;
  /** Whether the list of keys is shown. */
  readonly help: boolean;
  /** Whether the list of what can be stated as normal is shown. */
  readonly normals: boolean;
  /** Whether the second row of tools is shown. */
  readonly more: boolean;
}

/** What the controllers use of the element. */
export interface MapElement extends LitElement {
  view: View | 'auto';
  display: 'figure' | 'table';
}

/** Live access to what the element keeps protected. */
export interface RecordAccess {
  store(): RecordStore;
  words(): ShownMessages;
  allWords(): Messages | undefined;
  editable(): boolean;
}

/** No traces of a press. */
export const NOTHING_DRAWN: Pick<HandState, 'preview' | 'painted' | 'drag'> = {
  preview: undefined,
  painted: [],
  drag: [],
};

/** The button that leaves a plate. */
const BACK = '[data-tool=back]';

/** Width assumed until the element has one, in px. */
const UNMEASURED = 820;

const AT_REST: HandState = {
  ...NOTHING_DRAWN,
  mode: 'sites',
  brush: undefined,
  active: 'right femoral',
  open: undefined,
  said: undefined,
  crop: 'legs',
  help: false,
  normals: false,
  more: false,
};

/** The interaction of one map: its state, its record and its size. Controllers share it instead of passing callbacks. */
export class Session implements ReactiveController {
  /** Replaced, never mutated, so states can be compared by reference. */
  now = AT_REST;
  readonly #measure: WidthController;
  #bar = 0;
  #focusActive = false;
  /** The view from which a person opened a plate, and the control that opened it. */
  #cameFrom: { readonly view: View | 'auto'; readonly opener: string } | undefined;
  /** The control to focus after the next render. */
  #focusNext: string | undefined;

  constructor(
    readonly element: MapElement,
    private readonly access: RecordAccess,
  ) {
    this.#measure = new WidthController(element, UNMEASURED, () => (this.#bar = barHeight(element)));
    element.addController(this);
  }

  get store(): RecordStore {
    return this.access.store();
  }

  get examination(): Examination {
    return this.store.examination;
  }

  /** What is shown from the first paint on. */
  get words(): ShownMessages {
    return this.access.words();
  }

  /**
   * Every word of the map and its reading, for code that is fetched together with them.
   * @throws Error until they have been fetched
   */
  get allWords(): Messages {
    const words = this.access.allWords();
    if (!words) throw new Error('words: found those of readings and marks not fetched yet');
    return words;
  }

  get editable(): boolean {
    return this.access.editable();
  }

  /**
   * Makes a person's edit one step of the history.
   * @param field the field being typed in: edits of the same one are one step
   * @returns false when nothing changed or nothing may change
   */
  edit(next: Examination, field?: unknown): boolean {
    return this.editable && this.store.commit(next, field);
  }

  /** Width of the element in px. */
  get width(): number {
    return this.#measure.width;
  }

  /** Height of the bar that a form around keeps over the map, in px, as it was when the width was measured. */
  get bar(): number {
    return this.#bar;
  }

  /** Too narrow for the whole body and for a panel beside a site. */
  get narrow(): boolean {
    return this.width < NARROW;
  }

  /** Wide enough for the reading beside the figure and all tools in one row. */
  get wide(): boolean {
    return readingRoom(this.width) > 0;
  }

  /** The part of the body shown where not all of it fits. */
  get crop(): Crop {
    return cropShown(this.now.crop, this.width);
  }

  /** The view that the page asks for; `auto` for a word that is none. */
  get chosenView(): View | 'auto' {
    return VIEWS.find((view) => view === this.element.view) ?? 'auto';
  }

  /** The view shown now. */
  get view(): View {
    const { chosenView } = this;
    if (chosenView === 'auto') return this.narrow ? this.crop : 'whole';
    return isPlateView(chosenView) && !plateFor(chosenView) ? aroundPlate(chosenView) : chosenView;
  }

  /** Whether a person opened the plate that is shown, and so can go back to what was shown before. */
  get canGoBack(): boolean {
    return this.#cameFrom !== undefined && isPlateView(this.chosenView);
  }

  /**
   * Shows a view that a person asks for.
   * @param opener selector of the control that did, to which the focus returns
   * @param stays whether the control is still there, so that it keeps the focus meanwhile
   */
  show(view: View | 'auto', opener: string, stays = false): void {
    const { chosenView } = this;
    if (isPlateView(view) && !isPlateView(chosenView)) this.#cameFrom = { view: chosenView, opener };
    if (isPlateView(view) && !stays) this.#focusNext = BACK;
    this.element.view = view;
  }

  /**
   * Leaves a plate that a person opened.
   * @param focus whether the focus returns to what opened it
   * @returns whether there was one to leave
   */
  back(focus = true): boolean {
    if (!this.canGoBack || !this.#cameFrom) return false;
    const { view, opener } = this.#cameFrom;
    this.#cameFrom = undefined;
    this.#focusNext = focus ? opener : undefined;
    this.element.view = view;
    return true;
  }

  /** The places shown, in the order of examination. */
  get shown(): readonly Place[] {
    return placesIn(this.view);
  }

  change(patch: Partial<HandState>): void {
    const keys = Object.keys(patch) as (keyof HandState)[];
    if (keys.every((key) => patch[key] === this.now[key])) return;
    this.now = { ...this.now, ...patch };
    this.element.requestUpdate();
  }

  say(said: Said): void {
    this.change({ said });
  }

  /** The site that comes after a place in the order of examination. */
  next(place: Place): Place | undefined {
    return travel(place, 'next', this.shown);
  }

  /**
   * Moves the focus to a site from what is about to go: at once where the site is the tab stop, since a browser that has to take the
   * focus off what is removed works out the style of the whole page for it.
   */
  leaveFor(place: Place): void {
    const stop = this.element.renderRoot.querySelector<HTMLElement>('.site[tabindex="0"]');
    if (stop?.dataset.place === placeKey(place)) stop.focus();
    else this.focusSite(place);
  }

  /** Makes a site active and focuses it after the next render. */
  focusSite(place: Place): void {
    this.#focusActive = true;
    this.change({ active: placeKey(place) });
    this.element.requestUpdate();
  }

  hostUpdated(): void {
    const wanted = this.#focusNext && this.element.renderRoot.querySelector<HTMLElement>(this.#focusNext);
    if (wanted) {
      this.#focusNext = undefined;
      wanted.focus();
    }
    if (!this.#focusActive) return;
    this.#focusActive = false;
    const { renderRoot } = this.element;
    // In the table, the site's button takes its place.
    const button = `.table [data-anchor="${this.now.active}"]`;
    (
      renderRoot.querySelector<HTMLElement>('.site[tabindex="0"]') ??
      renderRoot.querySelector<HTMLElement>(button)
    )?.focus();
  }
}
