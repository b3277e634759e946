import type { Place } from '../../anatomy/index.js';
import type { FoundTable } from '../found.js';
import type { Otherwise } from '../terms.js';
import { places } from './places.js';
import { sentence } from './phrases.js';

/** What was found at a site, for a reader who is no clinician. */
export const plainFound: Otherwise<FoundTable> = {
  bruit: 'whooshing noise',
  thrill: 'buzzing',
  doppler: 'blood-flow sound:',
  couldNotListen: (reason) => `could not listen here: ${reason}`,
};

/** The words of the map, for a reader who is no clinician. */
export const plainMap = {
  plates: {
    captions: {
      dorsum: 'top of the foot',
      'medial-side': 'inner side',
      medial: 'inner side',
      lateral: 'outer side',
    },
  },
  views: {
    'right-foot': 'Right foot, from the front and the inside',
    'left-foot': 'Left foot, from the front and the inside',
  },
  onsetAndDelays: 'Beginning and delays',
  notListened: 'not listened',
  collateral: (place: Place) => `Natural detours may fill the ${places.place(place)}`,
  nothingTo: (place: Place, what: 'feel' | 'hear' | 'expand') => ({
    where: sentence(places.place(place)),
    what: {
      feel: 'is only listened at; there is no pulse to feel',
      hear: 'is only felt, not listened at',
      expand: 'is too slender to swell outwards',
    }[what],
  }),
  nothingWrongNow: 'No blockage or narrowing found now',
};
