import type { MapWords } from '../en/map.js';
import type { FoundTable } from '../found.js';
import type { Otherwise } from '../terms.js';
import { anatomy } from './anatomy.js';
import { sentence } from './phrases.js';

/** What was found at a site, for a reader who is no clinician. */
export const plainFound: Otherwise<FoundTable> = {
  couldNotListen: (reason) => `konnte nicht abgehört werden: ${reason}`,
};

/** The words of the map, for a reader who is no clinician. */
export const plainMap: Otherwise<MapWords> = {
  notListened: 'nicht abgehört',
  notListenedWord: 'Nicht abgehört',
  sidesDiffer: 'Seiten unterschiedlich',
  collateral: (place) => `Möglicherweise über Umgehungsgefäße gefüllt: ${anatomy.place(place)}`,
  listenAt: (place) => `${sentence(anatomy.place(place))}, Abhören`,
  nothingWrongNow: 'Jetzt kein Verschluss und keine Engstelle erkennbar',
  noPulse: 'Hier ist kein Puls zu erwarten',
  collaterals: 'Mögliche Umgehungsgefäße',
  likely: { narrowing: 'Wahrscheinliche Engstelle' },
};
