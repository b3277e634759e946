import { type Place, type SiteId } from '../../anatomy/index.js';
import type { ScaleId } from '../../examination/index.js';
import { foundFrom, type FoundTable } from '../found.js';
import { inRegisters } from '../terms.js';
import { places } from './places.js';
import { examination } from './examination.js';
import { plainFound, plainMap } from './map-plain.js';
import { dateIn, sentence } from '../phrases.js';
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

export { gradeOf };

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
  legend: 'Legend',
  /** Opens the list of what can be stated as normal. */
  markNormal: 'Mark normal',
  scale: 'Scale',
  shown: 'Show as',
  figureView: 'Figure',
  tableView: 'Table',
  more: 'Scale, table, help',
  notFetched: 'This part of the map could not be fetched. Check the connection and try again.',
  readingWaits:
    'Recorded. The reading follows once the rest of the map has been fetched; check the connection if this stays.',
  help: 'Help and keys',
  notListened: 'not auscultated',
  /** A point of time as a date; empty when there is none. */
  when: dateIn('en-GB'),
  earlierFinding: (said: string) => `earlier: ${said}`,
  earlier: (when: string) => `Small beside each site: the earlier record${when && `, ${when}`}.`,
  earlierUnread:
    'The earlier record was made by a version that cannot be shown here, so nothing is compared.',
  wholeLimbs: 'Whole limbs',
  viewLabel: 'View',
  views,
  plates,
  collateral: (place: Place) => `Collaterals may reconstitute the ${places.place(place)}`,
  ...said,
  /** A site with what is recorded there, as its button is called. */
  siteLabel: (place: Place, said: string) => `${sentence(places.place(place))}: ${said}`,
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
  siteShort: shortName,
};
/** The words of the map before anything else of it has been fetched. */
export type ShownMapWords = typeof trade;
export const map: ShownMapWords = inRegisters(trade, plainMap);
