import type { Place, Side } from '../../anatomy/index.js';
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
  bruit: 'Whooshing noise',
  bruitOptions: { systolic: 'With each beat', continuous: 'Continuous' },
  thrill: 'Buzzing',
  expansile: 'Swells outwards',
  doppler: 'Blood-flow sound',
  couldNotExamine: 'Could not be checked',
  keys: [
    ['Up, Down', 'towards the heart, away from it'],
    ['Left, Right', 'to the neighbouring place and the other side'],
    ['Page Up, Page Down', 'previous, next place in the order of examination'],
    ['0 to 4', 'how strong the pulse is, on the scale in use'],
    ['B', 'whooshing noise: none, with each beat, continuous'],
    ['T', 'buzzing'],
    ['E', 'swells outwards'],
    ['X', 'could not be checked, and why'],
    ['Enter', 'open the place'],
    ['Delete', 'clear the place'],
    ['A', 'state as normal, limb by limb'],
    ['Ctrl Z, Ctrl Y', 'undo, redo'],
    ['Escape', 'close, stop entering the same for several places'],
    ['?', 'this list'],
  ] as const,
  tableName: 'Pulses and whooshing noises, from the trunk outward',
  bruitColumn: (side: Side) => `${sentence(places.sides[side])} noise`,
  bruitOf: (place: Place) => `${sentence(places.place(place))}, whooshing noise`,
  moreOf: (place: Place) => `${sentence(places.place(place))}: buzzing, blood-flow sound, note and more`,
  onsetAndDelays: 'Beginning and delays',
  onset: 'Beginning',
  radioRadial: 'Wrist pulses compared',
  radioFemoral: (side: string) => `Groin after wrist, ${side}`,
  radioFemoralOptions: { delayed: 'Groin later' },
  notListened: 'not listened',
  notListenedWord: 'Not listened',
  sidesDiffer: 'sides differ',
  collateral: (place: Place) => `Natural detours may fill the ${places.place(place)}`,
  listenAt: (place: Place) => `${sentence(places.place(place))}, listening`,
  nothingTo: (place: Place, what: 'feel' | 'hear' | 'expand') => ({
    where: sentence(places.place(place)),
    what: {
      feel: 'is only listened at; there is no pulse to feel',
      hear: 'is only felt, not listened at',
      expand: 'is too slender to swell outwards',
    }[what],
  }),
  nothingWrongNow: 'No blockage or narrowing found now',
  noPulse: 'No pulse expected here',
  collaterals: 'Possible natural detours',
  likely: { block: 'Likely blockage', narrowing: 'Likely narrowing' },
};
