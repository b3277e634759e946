import { inRegisters, type Otherwise } from '../terms.js';
import { unconfirmedFrom, type UnconfirmedTable } from '../unconfirmed.js';
import { anatomy } from './anatomy.js';
import { whole } from './whole.js';

const befunde = (anzahl: number): string => (anzahl === 1 ? '1 Befund' : `${anzahl} Befunde`);

const fachlich: UnconfirmedTable = {
  title: (wann) =>
    wann ? `Vom ${wann} übernommen, nicht bestätigt` : 'Von der früheren Untersuchung, nicht bestätigt',
  left: (anzahl) =>
    `${befunde(anzahl)} nicht bestätigt und bis dahin weder im Befund noch in Beurteilung und Warnzeichen.`,
  none: 'Alles von der früheren Untersuchung ist bestätigt oder neu erfasst.',
  anew: 'Messwerte, Zeiten, Stadien, Gehstrecke und Beginn werden nie übernommen, sondern neu erfasst.',
  confirm: 'Wieder so',
  all: (anzahl) => `Alle ${anzahl} wieder so`,
  undo: 'Rückgängig',
  confirmed: (anzahl) => `${befunde(anzahl)} bestätigt.`,
  takenBack: 'Zurückgenommen, wieder unbestätigt.',
  trunk: 'Rumpf',
  patient: 'Patient',
  unread: 'Diese Version kann den früheren Befund nicht lesen und bietet daher nichts daraus an.',
};

const einfach: Otherwise<UnconfirmedTable> = {
  left: (anzahl) => `${anzahl} noch nicht wieder geprüft; bis dahin zählen sie nicht.`,
  anew: 'Gemessenes, Zeiten und Gehstrecke werden nie übernommen.',
};

export const unconfirmed = unconfirmedFrom(inRegisters(fachlich, einfach), {
  anatomy,
  summary: whole.summary,
});
