import type { Place } from '../../anatomy/index.js';

/** A person wants to see or fill in a site. Bubbles and leaves the shadow tree, so that a map around or beside can open it. */
export class OpenPlaceEvent extends Event {
  constructor(readonly place: Place) {
    super('open-place', { bubbles: true, composed: true });
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'open-place': OpenPlaceEvent;
  }
}
