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
import { foundFrom, type FoundTable } from '../found.js';
import { tinyName } from '../site-words.js';
import { inRegisters } from '../terms.js';
import { places } from './places.js';
import { examination } from './examination.js';
import { plainFound, plainMap } from './map-plain.js';
import { dateIn, sentence } from './phrases.js';
import { SITES } from './sites.js';

/** What a control says when the form cannot take it. */
export const form = {
  required: 'Record at least one finding.',
  /** The page asks for these places. */
  toState: (places: readonly string[]) =>
    `Still to be stated: ${places.slice(0, 4).join(', ')}${places.length > 4 ? ` and ${places.length - 4} more` : ''}.`,
  /** In place of an entry that is kept and cannot be read. */
  sealed: 'This entry was made by a version that cannot be shown here. It stays exactly as it is.',
  /** In place of something of which nothing can be kept. */
  lost: 'What was handed over for this entry cannot be read or kept. Nothing of it is shown or sent.',
  waiting: 'This entry is being read.',
  notFetched: 'This entry stays exactly as it is. What reads it could not be fetched: check the connection.',
  retry: 'Try again',
  startNew: 'Start a new record',
  startNewAsk: 'The new record replaces the entry that cannot be shown.',
  keep: 'Keep the entry',
  replace: 'Replace it',
};
export type FormWords = typeof form;

const { gradeOf, ...said } = foundFrom(
  inRegisters<FoundTable>(
    {
      couldNotListen: (reason) => `auscultation not possible: ${reason}`,
      bruit: 'bruit',
      thrill: 'thrill',
      doppler: 'Doppler',
      note: (note) => `note: ${note}`,
      was: (now, before) => `${now}, was ${before}`,
      before: (found) => `before: ${found}`,
    },
    plainFound,
  ),
  examination,
);

const shortName = (site: SiteId): string => SITES[site].short ?? sentence(places.sites[site]);

const views = {
  auto: 'Automatic',
  whole: 'Whole body',
  arms: 'Arms',
  legs: 'Legs',
  'right-arm': 'Right arm',
  'left-arm': 'Left arm',
  'right-leg': 'Right leg',
  'left-leg': 'Left leg',
  'right-hand': 'Right hand, palm',
  'left-hand': 'Left hand, palm',
  'right-foot': 'Right foot, dorsal and medial',
  'left-foot': 'Left foot, dorsal and medial',
  'right-sole': 'Right sole',
  'left-sole': 'Left sole',
  'right-knee': 'Right knee, from behind',
  'left-knee': 'Left knee, from behind',
  'legs-behind': 'Legs, from behind',
};
/** The drawings of a part of the body, and the buttons that open them. */
const plates = {
  back: 'Back to the figure',
  /** On the button itself, where the side is seen from where it stands. */
  short: { hand: 'Hand', foot: 'Foot', sole: 'Sole', knee: 'Knee', 'legs-behind': 'Behind' },
  others: 'Larger drawings',
  captions: { dorsum: 'dorsum', 'medial-side': 'medial side', medial: 'medial', lateral: 'lateral' },
};
const portions = {
  head: 'Head and neck',
  trunk: 'Abdomen',
  'right-arm': views['right-arm'],
  'left-arm': views['left-arm'],
  'right-leg': views['right-leg'],
  'left-leg': views['left-leg'],
  'right-hand': 'Right hand',
  'left-hand': 'Left hand',
  'right-foot': 'Right foot',
  'left-foot': 'Left foot',
};

const trade = {
  figure: 'Arteries of the body, seen from the front; the patient’s right is on the left of the drawing',
  /** Short name of the control where the page gives it none. */
  name: 'Pulse map',
  toolbar: 'Pulse map tools',
  undo: 'Undo',
  redo: 'Redo',
  carry: 'Grade several',
  carryStep: (word: string) => `Grade several as ${word}`,
  carrying: (word: string) => `Grading as ${word}.`,
  carryHow: 'Tap sites or draw across them.',
  putDown: 'Stop grading',
  draw: 'Draw on the skin',
  drawShort: 'Draw',
  drawRest: 'on the skin',
  marks: 'Marks on the skin',
  /** Opens the list of what can be stated as normal. */
  markNormal: 'Mark normal',
  normals: 'State as normal what was felt and is shown here',
  /** A portion of the body, and what is written there by one act. */
  portionNormal: (portion: Portion, count: number) => {
    const name = portions['side' in portion ? (`${portion.side}-${portion.part}` as const) : portion.part];
    return `${name}: ${count} ${count === 1 ? 'pulse' : 'pulses'} normal`;
  },
  scale: 'Scale',
  shown: 'Show as',
  figureView: 'Figure',
  tableView: 'Table',
  more: 'Scale, table, help',
  notFetched: 'This part of the map could not be fetched. Check the connection and try again.',
  readingWaits:
    'Recorded. The reading follows once the rest of the map has been fetched; check the connection if this stays.',
  help: 'Help and keys',
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
  notListened: 'not auscultated',
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
  /** A point of time as a date; empty when there is none. */
  when: dateIn('en-GB'),
  earlierFinding: (said: string) => `earlier: ${said}`,
  earlier: (when: string) => `Small beside each site: the earlier record${when && `, ${when}`}.`,
  earlierUnread:
    'The earlier record was made by a version that cannot be shown here, so nothing is compared.',
  sameAsOther: (side: Side) => `Same as ${places.sides[oppositeSide(side)]}`,
  wholeLimbs: 'Whole limbs',
  fillLimb: (limb: Limb) => `Copy the other side to the ungraded sites of the ${places.limbs[limbKey(limb)]}`,
  clearLimb: (limb: Limb) => `Clear ${places.limbs[limbKey(limb)]}`,
  limbFilled: (limb: Limb) => `${sentence(places.limbs[limbKey(limb)])} copied from the other side`,
  limbCleared: (limb: Limb) => `${sentence(places.limbs[limbKey(limb)])} cleared`,
  limbUnchanged: (limb: Limb) => `Nothing to change on the ${places.limbs[limbKey(limb)]}`,
  viewLabel: 'View',
  views,
  plates,
  collateral: (place: Place) => `Collaterals may reconstitute the ${places.place(place)}`,
  ...said,
  /** A site with what is recorded there, as its button is called. */
  siteLabel: (place: Place, said: string) => `${sentence(places.place(place))}: ${said}`,
  listenAt: (place: Place) => `${sentence(places.place(place))}, auscultation`,
  recorded: (place: Place, said: string) => ({ where: sentence(places.place(place)), what: said }),
  cleared: 'cleared',
  /** Why a key had no effect at a site. */
  nothingTo: (place: Place, what: 'feel' | 'hear' | 'expand') => ({
    where: sentence(places.place(place)),
    what: {
      feel: 'is for auscultation only; there is no pulse to grade',
      hear: 'is for palpation only',
      expand: 'is no place to palpate for an aneurysm',
    }[what],
  }),
  notOnScale: (digit: number, scale: ScaleId) => `${digit} is not on the scale ${examination.scales[scale]}`,
  undone: 'One step taken back',
  redone: 'One step taken again',
  /** Said when the last thing wrong was taken back. */
  nothingWrongNow: 'No occlusive lesion suggested now',
  count: (stated: number, total: number, scale: ScaleId) =>
    `${stated} of ${total}, scale ${examination.scales[scale]}`,
  empty: 'Nothing recorded yet. Tap a site, or press Enter on it.',
  onsetAndDelays: 'Onset and delays',
  onset: 'Onset',
  onsetWord: (onset: Onset) => sentence(examination.onsets[onset]),
  notStated: 'Not stated',
  radioRadial: 'Radial pulses compared',
  radioRadialOptions: { none: 'Together', 'right-later': 'Right later', 'left-later': 'Left later' },
  radioFemoral: (side: string) => `Femoral after radial, ${side}`,
  radioFemoralOptions: { none: 'Together', delayed: 'Femoral later' },
  legend: 'Legend',
  caution:
    'Supports a clinician’s judgement; it is not a diagnosis. Your local pathway and a licensed clinician decide what happens next.',
  /** What is drawn on the arteries, for the legend of a picture. */
  likely: { block: 'Likely occlusion', narrowing: 'Likely stenosis' },
  noPulse: 'No pulse expected distally',
  collaterals: 'Possible collaterals',
  /** Title of a mark on the figure. */
  lesionMark: (kind: 'block' | 'narrowing', where: string, percent: string) =>
    `${map.likely[kind]}: ${where}${percent && `, ${percent}`}`,
  /** Site names where there is least room. */
  siteTiny: (site: SiteId) => tinyName(SITES[site]) ?? shortName(site),
  siteShort: shortName,
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
/** The words of the map. */
export type MapWords = typeof trade;
export const map: MapWords = inRegisters(trade, plainMap);
