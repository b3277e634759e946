import type { Place, Side } from '../../anatomy/index.js';
import { sentence } from '../phrases.js';
import { places } from './places.js';

/** The words of chooser, table, help, legend and pictures, for a reader who is no clinician. */
export const plainMapLater = {
  onset: 'Beginning',
  radioRadial: 'Wrist pulses compared',
  radioFemoral: (side: string) => `Groin after wrist, ${side}`,
  radioFemoralOptions: { delayed: 'Groin later' },
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
  notListenedWord: 'Not listened',
  sidesDiffer: 'sides differ',
  listenAt: (place: Place) => `${sentence(places.place(place))}, listening`,
  noPulse: 'No pulse expected here',
  collaterals: 'Possible natural detours',
  likely: { block: 'Likely blockage', narrowing: 'Likely narrowing' },
};
