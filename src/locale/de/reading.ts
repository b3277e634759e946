import { readingFrom, type ReadingTable } from '../reading.js';
import { inRegisters, type Otherwise } from '../terms.js';
import { anatomy } from './anatomy.js';
import { speech } from './phrases.js';

const table: ReadingTable = {
  titles: { elsewhere: 'Übrige Gliedmaßen' },
  open: (place) => `${place} öffnen`,
  noBlock: (percent) => `Kein Verschluss erkennbar: ${percent}.`,
  levelsOf: (limb) => `${limb}, nach Etagen`,
};

const plain: Otherwise<ReadingTable> = {
  titles: { elsewhere: 'Die übrigen Arme und Beine' },
  noBlock: (percent) => `Kein Verschluss gefunden: ${percent}.`,
  levelsOf: (limb) => `${limb}, nach Abschnitt`,
};

export const reading = readingFrom(inRegisters(table, plain), anatomy, speech);
