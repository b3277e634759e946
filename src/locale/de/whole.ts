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
  name: 'Untersuchung der Extremitäten',
  parts: {
    history: 'Anamnese',
    inspection: 'Inspektion und Palpation',
    pulses: 'Pulse und Geräusche',
    bedside: 'Klinische Tests',
    pressures: 'Drücke',
    staging: 'Stadien',
    summary: 'Zusammenfassung',
  },
  toolbar: 'Werkzeuge der Untersuchung',
  undo: 'Rückgängig',
  redo: 'Wiederherstellen',
  contents: 'Teile der Untersuchung',
  count: (recorded) => (recorded === 1 ? '1 Eintrag' : `${recorded} Einträge`),
  nothingYet: 'noch nichts',
  open: (part) => `${part} öffnen`,
  keys: 'Strg mit Ab oder Auf geht zum nächsten oder vorigen Teil; Strg Z nimmt zurück.',
  legs: 'Beine',
  arms: 'Arme',
  limb: 'Extremität',
  right: 'Rechts',
  left: 'Links',
  notStated: 'Nicht angegeben',
  nothing: 'Noch nichts erfasst.',
  point: ',',
  onset: (onset) => `Beginn ${onset}`,
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
