import { readingFrom, type ReadingTable } from '../reading.js';
import { inRegisters, type Otherwise } from '../terms.js';
import { anatomy } from './anatomy.js';
import { speech } from './phrases.js';

const table: ReadingTable = {
  titles: { elsewhere: 'Other limbs' },
  open: (place) => `Open ${place}`,
  noBlock: (percent) => `No occlusive lesion suggested: ${percent}.`,
  levelsOf: (limb) => `${limb}, by arterial level`,
};

const plain: Otherwise<ReadingTable> = {
  titles: { elsewhere: 'The other arms and legs' },
  noBlock: (percent) => `No blockage found so far: ${percent}.`,
  levelsOf: (limb) => `${limb}, by part of the limb`,
};

export const reading = readingFrom(inRegisters(table, plain), anatomy, speech);
