import type { Place } from '../../anatomy/index.js';
import type { FoundTable } from '../found.js';
import type { Otherwise } from '../terms.js';
import { anatomy } from './anatomy.js';
import { sentence } from './phrases.js';

/** What was found at a site, for a reader who is no clinician. */
export const plainFound: Otherwise<FoundTable> = {
  couldNotListen: (reason) => `could not listen here: ${reason}`,
};

/** The words of the map, for a reader who is no clinician. */
export const plainMap = {
  notListened: 'not listened',
  notListenedWord: 'Not listened',
  sidesDiffer: 'sides differ',
  collateral: (place: Place) => `Natural detours may fill the ${anatomy.place(place)}`,
  listenAt: (place: Place) => `${sentence(anatomy.place(place))}, listening`,
  nothingTo: (place: Place, what: 'feel' | 'hear') => ({
    where: sentence(anatomy.place(place)),
    what:
      what === 'feel' ? 'is only listened at; there is no pulse to feel' : 'is only felt, not listened at',
  }),
  nothingWrongNow: 'No blockage or narrowing found now',
  noPulse: 'No pulse expected here',
  collaterals: 'Possible natural detours',
  likely: { block: 'Likely blockage', narrowing: 'Likely narrowing' },
};
