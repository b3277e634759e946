import { inRegisters, type Otherwise } from '../terms.js';
import { visitsFrom, type VisitsTable } from '../visits.js';
import { anatomy } from './anatomy.js';
import { decimal, list } from './phrases.js';

const trade: VisitsTable = {
  dates: 'en-GB',
  name: 'Visits',
  count: (visits) => (visits === 1 ? '1 visit' : `${visits} visits`),
  empty: 'No visit has been recorded yet.',
  alone: 'One visit: there is nothing to compare it with yet.',
  chooseTwo: 'Choose two visits to compare.',
  ways: { figure: 'Figure', table: 'Table' },
  way: 'Show as',
  open: 'Open the visit of',
  pick: 'Compare',
  earlier: 'A, the earlier',
  later: 'B, the later',
  noDate: 'no date',
  first: 'First visit',
  unread: 'This version cannot read the record.',
  inError: 'Entered in error',
  changes: (count) => (count === 1 ? '1 site changed' : `${count} sites changed`),
  noChange: 'No site changed',
  weights: { urgent: 'urgent', matters: 'changed', minor: 'other difference', chance: 'may be chance' },
  measures: {
    'ankle-index': 'Ankle-brachial pressure index',
    'toe-index': 'Toe-brachial pressure index',
    'ankle-pressure': 'Ankle pressure',
    'toe-pressure': 'Toe pressure',
    distance: 'Pain-free walking distance',
  },
  short: {
    'ankle-index': 'ABPI',
    'toe-index': 'TBPI',
    'ankle-pressure': 'Ankle',
    'toe-pressure': 'Toe',
    distance: 'Walks',
  },
  unknown: 'not examined',
  incompressible: 'incompressible',
  metres: (count) => `${count} m`,
  reader: 'Visit read in the plots',
  at: (when) => `${when}.`,
  bands: {
    difference: (value, when) => `Shaded: within ${value} of ${when}, which measuring alone can differ by.`,
    factor: (value, when) =>
      `Shaded: up to ${value} times more or less than on ${when}, as repeated tests differ.`,
    'of-arm': (value, when) =>
      `Shaded: within ${value} times the arm pressure of ${when}, which measuring alone can differ by.`,
  },
  keys: 'Left and Right go to the visit before or after, Page Up and Page Down further, Home and End to the first and last.',
  reading: (done, all) => `${done} of ${all} records read so far.`,
  visit: 'Visit',
  changed: 'Changed since the visit before',
};

const plain: Otherwise<VisitsTable> = {
  measures: {
    'ankle-index': 'Ankle compared with arm',
    'toe-index': 'Toe compared with arm',
    'ankle-pressure': 'Blood pressure at the ankle',
    'toe-pressure': 'Blood pressure at the toe',
    distance: 'Distance walked without pain',
  },
  short: {
    'ankle-index': 'Ankle to arm',
    'toe-index': 'Toe to arm',
    'ankle-pressure': 'Ankle',
    'toe-pressure': 'Toe',
    distance: 'Walks',
  },
  changes: (count) => (count === 1 ? '1 place changed' : `${count} places changed`),
  noChange: 'No place changed',
  unknown: 'not checked',
  incompressible: 'too stiff to measure',
};

export const visits = visitsFrom(inRegisters(trade, plain), { anatomy, decimal, list });
