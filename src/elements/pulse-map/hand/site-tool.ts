import {
  isPulseSite,
  oppositeSide,
  type Place,
  placeFromKey,
  type PlaceKey,
  placeKey,
} from '../../../anatomy/index.js';
import type { Chooser } from '../chooser/chooser.js';
import type { Recorder } from '../recorder.js';
import { NOTHING_DRAWN, type Session } from '../session.js';
import type { Press, Tool } from './press.js';
import type { DrawingPoint, SiteFinder } from './site-finder.js';

/** A press that moved less than this many px is a tap. */
const TAP_SLOP = 10;

function placesOf(keys: readonly PlaceKey[]): readonly Place[] {
  return keys.flatMap((key) => placeFromKey(key) ?? []);
}

/**
 * The bare hand: a tap opens a site, a stroke from a site to its counterpart on the other side copies what stands there. With
 * a brush, taps and strokes record its grade.
 */
export class SiteTool implements Tool {
  readonly erases = false;
  /** The site on which the press began. */
  #from: PlaceKey | undefined;
  /** The site under the pointer now. */
  #over: PlaceKey | undefined;
  #crossed: readonly PlaceKey[] = [];

  constructor(
    private readonly session: Session,
    private readonly recorder: Recorder,
    private readonly chooser: Chooser,
    private readonly finder: SiteFinder,
  ) {}

  get draws(): boolean {
    return this.session.now.brush !== undefined && this.session.editable;
  }

  slop(): number {
    return TAP_SLOP;
  }

  hover(event: PointerEvent | undefined): void {
    const { editable } = this.session;
    this.session.change({ preview: event && editable ? this.finder.under(event) : undefined });
  }

  begin(_press: Press, event: PointerEvent): void {
    const site = this.finder.under(event);
    this.#from = this.#over = site;
    this.#crossed = site ? [site] : [];
  }

  captures(): boolean {
    return this.draws || this.#from !== undefined;
  }

  reach(point: DrawingPoint): void {
    const site = this.finder.at(point);
    this.#over = site;
    if (site && !this.#crossed.includes(site)) this.#crossed = [...this.#crossed, site];
  }

  show({ points, erase }: Press): void {
    if (this.draws) this.session.change({ painted: this.#crossed });
    else if (this.#from && !erase) {
      const [start, last] = [points[0], points.at(-1)] as [DrawingPoint, DrawingPoint];
      this.session.change({ preview: this.#mirror && this.#over, drag: [start, last] });
    }
  }

  tap(): void {
    const { session, recorder, chooser } = this;
    const place = this.#from && placeFromKey(this.#from);
    if (!place || !session.editable) return;
    const { brush } = session.now;
    if (brush && isPulseSite(place.site)) {
      session.change({ active: placeKey(place) });
      recorder.grade(place, brush);
    } else chooser.tap(place);
  }

  stroke(): void {
    const { session, recorder } = this;
    if (!session.editable) return;
    const to = this.#mirror;
    if (session.now.brush) recorder.stroke(placesOf(this.#crossed), session.now.brush);
    else if (to) recorder.sameAsOther(to);
  }

  erase(): void {
    if (this.session.editable) this.recorder.clear(...placesOf(this.#crossed));
  }

  end(): void {
    this.#from = this.#over = undefined;
    this.#crossed = [];
    this.session.change(NOTHING_DRAWN);
  }

  activate(event: MouseEvent): void {
    this.#from = this.finder.of(event);
    this.tap();
    this.end();
  }

  /** The counterpart on the other side of the site where the drag began, while the pointer is over it. */
  get #mirror(): Place | undefined {
    const from = this.#from && placeFromKey(this.#from);
    const over = this.#over && placeFromKey(this.#over);
    if (!from || !over || from.side === 'midline' || from.site !== over.site) return undefined;
    return over.side === oppositeSide(from.side) ? over : undefined;
  }
}
