import { type Place, placeFromKey, type PlaceKey, placeKey } from '../../../anatomy/index.js';
import { travel } from '../../../drawing/index.js';
import { type KeyAct, keyAct } from './keys.js';
import type { SiteFinder } from './site-finder.js';

export interface SiteKeysHost {
  readonly sites: SiteFinder;
  editable(): boolean;
  shown(): readonly Place[];
  focusSite(key: PlaceKey): void;
  help(): void;
  escape(): void;
  record(place: Place, act: KeyAct): void;
}

/** Hears the keys of the site that has the focus. */
export function siteKeydown(host: SiteKeysHost): (event: KeyboardEvent) => void {
  return (event) => {
    const key = host.sites.of(event);
    const place = key && placeFromKey(key);
    const act = place && keyAct(event);
    if (!place || !act) return;
    event.preventDefault();
    event.stopPropagation();
    if (act.kind === 'travel') {
      const to = travel(place, act.direction, host.shown());
      if (to) host.focusSite(placeKey(to));
    } else if (act.kind === 'help') host.help();
    else if (act.kind === 'escape') host.escape();
    else if (host.editable()) host.record(place, act);
  };
}
