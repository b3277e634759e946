import type { Place } from '../../anatomy/index.js';
import type { Reading } from '../../localisation/index.js';

/** A person wants to see or fill in a site. Bubbles and leaves the shadow tree, so that a map around or beside can open it. */
export class OpenPlaceEvent extends Event {
  constructor(readonly place: Place) {
    super('open-place', { bubbles: true, composed: true });
  }
}

/**
 * What is shown of where the arteries are occluded has changed. Bubbles and leaves the shadow tree, so that a page can fill a field of its
 * own with it.
 */
export class ReadingChangeEvent extends Event {
  constructor(
    /** Both voices as data; `undefined` while nothing is recorded. */
    readonly reading: Reading | undefined,
    /** The headlines as they are shown, limb by limb, in the language and register of the element. */
    readonly sentences: readonly string[],
  ) {
    super('reading-change', { bubbles: true, composed: true });
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'open-place': OpenPlaceEvent;
    'reading-change': ReadingChangeEvent;
  }
}
