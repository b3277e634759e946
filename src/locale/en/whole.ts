import { type SummaryPart, summaryFrom } from '../summary.js';
import { anatomy } from './anatomy.js';
import { bedside } from './bedside.js';
import { context } from './context.js';
import { examination as words } from './examination.js';
import { history } from './history.js';
import { inspection } from './inspection.js';
import { map } from './map.js';
import { decimal } from './phrases.js';
import { pressures } from './pressures.js';
import { staging } from './staging.js';

export type { SummaryPart };

const parts = {
  history: 'History',
  inspection: 'Inspection and touch',
  pulses: 'Pulses and bruits',
  bedside: 'Bedside tests',
  pressures: 'Pressures',
  staging: 'Stages',
  summary: 'Summary',
};
export type PartId = keyof typeof parts;

const summary = summaryFrom({
  parts,
  onset: (onset) => `onset ${words.onsets[onset]}`,
  limb: (key) => anatomy.limbs[key],
  place: anatomy.place,
  limbHistory: history.limb,
  history: history.whole,
  circulation: history.circulation,
  context: context.said,
  inspection: inspection.limb,
  found: map.found,
  bedside: bedside.line,
  pressure: pressures.said,
  method: pressures.method,
  staging: staging.said,
});

const count = (recorded: number): string => (recorded === 1 ? '1 entry' : `${recorded} entries`);

export const whole = {
  name: 'Limb examination',
  parts,
  toolbar: 'Examination tools',
  undo: 'Undo',
  redo: 'Redo',
  contents: 'Parts of the examination',
  /** A part and how far it is, as its button is called. */
  part: (id: PartId, recorded: number) => `${parts[id]}, ${recorded ? count(recorded) : 'nothing yet'}`,
  count,
  open: (id: PartId) => `Open ${parts[id].toLowerCase()}`,
  keys: 'Ctrl and Down or Up go to the next or previous part; Ctrl Z undoes.',
  legs: 'Legs',
  arms: 'Arms',
  limb: 'Limb',
  right: 'Right',
  left: 'Left',
  /** Letters that stand for the sides where there is least room, as on the figure. */
  letters: anatomy.sideLetters,
  notStated: 'Not stated',
  nothing: 'Nothing recorded yet.',
  /** What stands between a number and its decimals. */
  point: '.',
  /** A number as one writes it, with `digits` to so many decimals. */
  number: (value: number, digits?: number) => decimal(value, digits),
  /** Everything recorded, part by part. */
  summary,
};
export type WholeWords = typeof whole;
