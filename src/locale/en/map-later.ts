import {
  type Laterality,
  type Limb,
  limbKey,
  oppositeSide,
  type Place,
  type Side,
  type SiteId,
} from '../../anatomy/index.js';
import type { DopplerSignal, Onset, Portion, Reason, ScaleId, ScaleStep } from '../../examination/index.js';
import { sentence } from '../phrases.js';
import { tinyName } from '../site-words.js';
import { inRegisters } from '../terms.js';
import { examination } from './examination.js';
import { gradeOf, map, type ShownMapWords } from './map.js';
import { plainMapLater } from './map-later-plain.js';
import { places } from './places.js';
import { SITES } from './sites.js';

const portions = {
  head: 'Head and neck',
  trunk: 'Abdomen',
  'right-arm': map.views['right-arm'],
  'left-arm': map.views['left-arm'],
  'right-leg': map.views['right-leg'],
  'left-leg': map.views['left-leg'],
  'right-hand': 'Right hand',
  'left-hand': 'Left hand',
  'right-foot': 'Right foot',
  'left-foot': 'Left foot',
};

const trade = {
  onsetWord: (onset: Onset) => sentence(examination.onsets[onset]),
  /** A portion of the body, and what is written there by one act. */
  portionNormal: (portion: Portion, count: number) => {
    const name = portions['side' in portion ? (`${portion.side}-${portion.part}` as const) : portion.part];
    return `${name}: ${count} ${count === 1 ? 'pulse' : 'pulses'} normal`;
  },
  fillLimb: (limb: Limb) => `Copy the other side to the ungraded sites of the ${places.limbs[limbKey(limb)]}`,
  clearLimb: (limb: Limb) => `Clear ${places.limbs[limbKey(limb)]}`,
  limbFilled: (limb: Limb) => `${sentence(places.limbs[limbKey(limb)])} copied from the other side`,
  limbCleared: (limb: Limb) => `${sentence(places.limbs[limbKey(limb)])} cleared`,
  limbUnchanged: (limb: Limb) => `Nothing to change on the ${places.limbs[limbKey(limb)]}`,
  onset: 'Onset',
  notStated: 'Not stated',
  radioRadial: 'Radial pulses compared',
  radioRadialOptions: { none: 'Together', 'right-later': 'Right later', 'left-later': 'Left later' },
  radioFemoral: (side: string) => `Femoral after radial, ${side}`,
  radioFemoralOptions: { none: 'Together', delayed: 'Femoral later' },
  normals: 'State as normal what was felt and is shown here',
  close: 'Close',
  pin: 'Keep open for several entries',
  pulse: 'Pulse',
  pulseOn: (scale: ScaleId) => (scale === 'words' ? 'Pulse' : `Pulse, ${examination.scales[scale]}`),
  bruit: 'Bruit',
  bruitOptions: { none: 'None', systolic: 'Systolic', continuous: 'Continuous' },
  thrill: 'Thrill',
  expansile: 'Expansile',
  doppler: 'Doppler signal',
  couldNotExamine: 'Not assessable',
  note: 'Note',
  addNote: 'Add a note',
  /** Title of the chooser. */
  siteTitle: (place: Place) => sentence(places.place(place)),
  gradeWord: (step: ScaleStep) => sentence(gradeOf(step)),
  reasonWord: (reason: Reason) => sentence(examination.reasons[reason]),
  dopplerWord: (signal: DopplerSignal) => sentence(examination.dopplers[signal]),
  clear: 'Clear this site',
  next: (place: Place) => `Next: ${places.place(place)}`,
  notListenedWord: 'Not auscultated',
  notExamined: 'Not examined',
  tableName: 'Pulses and bruits, from the trunk outward',
  site: 'Site',
  siteName: (site: SiteId) => sentence(places.sites[site]),
  headAndArms: 'Head and arms',
  trunkAndLegs: 'Trunk and legs',
  pulseColumn: (side: Side) => `${sentence(places.sides[side])} pulse`,
  bruitColumn: (side: Side) => `${sentence(places.sides[side])} bruit`,
  pulseOf: (place: Place) => `${sentence(places.place(place))}, pulse`,
  bruitOf: (place: Place) => `${sentence(places.place(place))}, bruit`,
  moreOf: (place: Place) => `${sentence(places.place(place))}: thrill, Doppler, note and more`,
  noteOf: (side: Laterality, note: string) =>
    side === 'midline' ? note : `${sentence(places.sides[side])}: ${note}`,
  sidesDiffer: 'asymmetrical',
  sameAsOther: (side: Side) => `Same as ${places.sides[oppositeSide(side)]}`,
  listenAt: (place: Place) => `${sentence(places.place(place))}, auscultation`,
  caution:
    'Supports a clinician’s judgement; it is not a diagnosis. Your local pathway and a licensed clinician decide what happens next.',
  /** What is drawn on the arteries, for the legend of a picture. */
  likely: { block: 'Likely occlusion', narrowing: 'Likely stenosis' },
  noPulse: 'No pulse expected distally',
  collaterals: 'Possible collaterals',
  /** Title of a mark on the figure. */
  lesionMark: (kind: 'block' | 'narrowing', where: string, percent: string) =>
    `${mapLater.likely[kind]}: ${where}${percent && `, ${percent}`}`,
  /** Site names where there is least room. */
  siteTiny: (site: SiteId) => tinyName(SITES[site]) ?? map.siteShort(site),
  keys: [
    ['Up, Down', 'towards the heart, away from it'],
    ['Left, Right', 'to the neighbouring site and the other side'],
    ['Page Up, Page Down', 'previous, next site in the order of examination'],
    ['0 to 4', 'grade, on the scale in use'],
    ['B', 'bruit: none, systolic, continuous'],
    ['T', 'thrill'],
    ['E', 'expansile'],
    ['X', 'not assessable, and why'],
    ['Enter', 'open the site'],
    ['Delete', 'clear the site'],
    ['A', 'state as normal, limb by limb'],
    ['Ctrl Z, Ctrl Y', 'undo, redo'],
    ['Escape', 'close, stop grading'],
    ['?', 'this list'],
  ] as readonly (readonly [string, string])[],
};

/** The words of the map that an empty one does not show: of chooser, table, list of what is normal, help, legend and pictures. */
export const mapLater = inRegisters(trade, plainMapLater);
/** Every word of the map. */
export type MapWords = ShownMapWords & typeof trade;
