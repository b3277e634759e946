import type { PartId, WholeWords } from '../en/whole.js';
import { summaryFrom } from '../summary.js';
import { anatomy } from './anatomy.js';
import { bedside } from './bedside.js';
import { examination as words } from './examination.js';
import { context } from './context.js';
import { history } from './history.js';
import { inspection } from './inspection.js';
import { map } from './map.js';
import { decimal } from './phrases.js';
import { pressures } from './pressures.js';
import { staging } from './staging.js';

const parts: Record<PartId, string> = {
  history: 'Anamnese',
  inspection: 'Inspektion und Palpation',
  pulses: 'Pulse und Geräusche',
  bedside: 'Klinische Tests',
  pressures: 'Drücke',
  staging: 'Stadien',
  summary: 'Zusammenfassung',
};

const summary = summaryFrom({
  parts,
  onset: (onset) => `Beginn ${words.onsets[onset]}`,
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

const count = (recorded: number): string => (recorded === 1 ? '1 Eintrag' : `${recorded} Einträge`);

export const whole: WholeWords = {
  name: 'Untersuchung der Extremitäten',
  parts,
  toolbar: 'Werkzeuge der Untersuchung',
  undo: 'Rückgängig',
  redo: 'Wiederherstellen',
  contents: 'Teile der Untersuchung',
  part: (id, recorded) => `${parts[id]}, ${recorded ? count(recorded) : 'noch nichts'}`,
  count,
  open: (id) => `${parts[id]} öffnen`,
  keys: 'Strg mit Ab oder Auf geht zum nächsten oder vorigen Teil; Strg Z nimmt zurück.',
  legs: 'Beine',
  arms: 'Arme',
  limb: 'Extremität',
  right: 'Rechts',
  left: 'Links',
  letters: anatomy.sideLetters,
  notStated: 'Nicht angegeben',
  nothing: 'Noch nichts erfasst.',
  point: ',',
  number: decimal,
  summary,
};
