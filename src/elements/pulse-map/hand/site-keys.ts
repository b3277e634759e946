import { type Place, placeFromKey } from '../../../anatomy/index.js';
import { travel } from '../../../drawing/index.js';
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
      const to = travel(place, act.direction, session.shown);
      if (to) session.focusSite(to);
    } else if (act.kind === 'help') session.change({ help: !session.now.help });
    else if (act.kind === 'escape') {
      session.change({ help: false, brush: undefined });
      this.skin.leave();
      chooser.close(false);
    } else if (session.editable) chooser.recordByKey(place, act);
  };

  readonly focusin = (event: FocusEvent): void => {
    const key = this.finder.of(event);
    if (key) this.session.change({ active: key });
  };

  #placeOf(event: Event): Place | undefined {
    const key = this.finder.of(event);
    return key && placeFromKey(key);
  }
}
