import { type Place, placeFromKey, placeKey } from '../../../anatomy/index.js';
import { siteIn, travel } from '../../../drawing/index.js';
import type { Chooser } from '../chooser/chooser.js';
import type { Session } from '../session.js';
import type { SkinController } from '../skin/controller.js';
import { keyAct } from './keys.js';
import type { SiteFinder } from './site-finder.js';

/** Handles the keys pressed on the focused site. */
export class SiteKeys {
  constructor(
    private readonly session: Session,
    private readonly chooser: Chooser,
    private readonly skin: SkinController,
    private readonly finder: SiteFinder,
  ) {}

  readonly keydown = (event: KeyboardEvent): void => {
    const { session, chooser } = this;
    const place = this.#placeOf(event);
    const act = place && keyAct(event);
    if (!place || !act) return;
    event.preventDefault();
    event.stopPropagation();
    if (act.kind === 'travel') {
      const to = travel(place, act.direction, session.shown, this.#across);
      if (to) session.focusSite(to);
    } else if (act.kind === 'help') session.change({ help: !session.now.help });
    else if (act.kind === 'escape') {
      const { help, brush, open } = session.now;
      if (!help && !brush && !open && !this.skin.on && session.back()) return;
      session.change({ help: false, brush: undefined });
      this.skin.leave();
      chooser.close(false);
    } else if (session.editable) chooser.recordByKey(place, act);
  };

  readonly focusin = (event: FocusEvent): void => {
    const key = this.finder.of(event);
    if (key) this.session.change({ active: key });
  };

  /** Where a place lies from left to right in what is drawn: from behind, the sides stand the other way round. */
  readonly #across = (place: Place): number | undefined =>
    this.finder.layout && siteIn(this.finder.layout, placeKey(place))?.x;

  #placeOf(event: Event): Place | undefined {
    const key = this.finder.of(event);
    return key && placeFromKey(key);
  }
}
