import { inRegisters } from '../terms.js';
import { wholeFrom, type WholeTable } from '../whole.js';
import { anatomy } from './anatomy.js';
import { bedside } from './bedside.js';
import { context } from './context.js';
import { examination } from './examination.js';
import { flags } from './flags.js';
import { history } from './history.js';
import { inspection } from './inspection.js';
import { map } from './map.js';
import { decimal } from './phrases.js';
import { pressures } from './pressures.js';
import { staging } from './staging.js';
import { plainWhole } from './whole-plain.js';

const trade: WholeTable = {
  name: 'Limb examination',
  parts: {
    history: 'History',
    inspection: 'Inspection and touch',
    pulses: 'Pulses and bruits',
    bedside: 'Bedside tests',
    pressures: 'Pressures',
    staging: 'Stages',
    summary: 'Summary',
  },
  toolbar: 'Examination tools',
  undo: 'Undo',
  redo: 'Redo',
  contents: 'Parts of the examination',
  count: (recorded) => (recorded === 1 ? '1 entry' : `${recorded} entries`),
  nothingYet: 'nothing yet',
  open: (part) => `Open ${part.toLowerCase()}`,
  keys: 'Ctrl and Down or Up go to the next or previous part; Ctrl Z undoes.',
  legs: 'Legs',
  arms: 'Arms',
  limb: 'Limb',
  right: 'Right',
  left: 'Left',
  notStated: 'Not stated',
  nothing: 'Nothing recorded yet.',
  point: '.',
  onset: (onset) => `onset ${onset}`,
};

/** What summary and report are made of. */
export const areas = {
  anatomy,
  bedside,
  context,
  examination,
  flags,
  history,
  inspection,
  map,
  pressures,
  staging,
  decimal,
};

export const whole = wholeFrom(inRegisters(trade, plainWhole), areas);
