import { chartFrom, type ChartTable } from '../chart.js';
import { inRegisters, type Otherwise } from '../terms.js';
import { anatomy } from './anatomy.js';
import { decimal } from './phrases.js';

const trade: ChartTable = {
  dates: 'en-GB',
  title: (limb) => `Limb observations: ${limb}`,
  fields: {
    signal: 'Doppler signal',
    colour: 'Colour',
    sensation: 'Sensation',
    movement: 'Movement',
    refill: 'Capillary refill, s',
    pain: 'Pain, 0 to 10',
  },
  notLooked: 'not examined',
  units: { refill: ' s', pain: '' },
  due: (time, minutes) => `Next round due at ${time}, in ${minutes} min.`,
  overdue: (time, minutes) => `Overdue: the round of ${time} is ${minutes} min late.`,
  first: 'No round recorded yet. The first one is due now.',
  every: (minutes) => `Every ${minutes} min, unless your local pathway says otherwise.`,
  record: 'Record this round',
  undo: 'Undo',
  recorded: (time) => `Round of ${time} recorded.`,
  takenBack: 'Round taken back.',
  nothing: 'Nothing is entered for this round.',
  rounds: 'Rounds so far, the latest first',
  course: 'Course over the hours',
  key: 'Upper line: normal, or none. Diamond: not normal. Crossed square: signal lost. Gap: not examined.',
  unread: 'This version cannot read the chart, so it stays as it is.',
  caution: 'Supports a clinician’s judgement; your local pathway decides what happens next.',
};

const plain: Otherwise<ChartTable> = {
  title: (limb) => `Checks of the ${limb}`,
  fields: {
    signal: 'Flow sound',
    colour: 'Colour',
    sensation: 'Feeling',
    movement: 'Movement',
    refill: 'Seconds until pink again',
    pain: 'Pain, 0 to 10',
  },
  notLooked: 'not checked',
  key: 'Upper line: as it should be, or none. Diamond: not as it should be. Crossed square: no flow heard. Gap: not checked.',
};

export const chart = chartFrom(inRegisters(trade, plain), { anatomy, decimal });
