import { chartFrom, type ChartTable } from '../chart.js';
import { inRegisters, type Otherwise } from '../terms.js';
import { anatomy } from './anatomy.js';
import { decimal } from './phrases.js';

const fachlich: ChartTable = {
  dates: 'de-DE',
  title: (glied) => `Extremitätenkontrolle: ${glied}`,
  fields: {
    signal: 'Dopplersignal',
    colour: 'Hautfarbe',
    sensation: 'Sensibilität',
    movement: 'Motorik',
    refill: 'Rekapillarisierung, s',
    pain: 'Schmerz, 0 bis 10',
  },
  notLooked: 'nicht untersucht',
  units: { refill: ' s', pain: '' },
  due: (uhr, minuten) => `Nächste Kontrolle um ${uhr} Uhr, in ${minuten} min.`,
  overdue: (uhr, minuten) => `Überfällig: Die Kontrolle von ${uhr} Uhr fehlt seit ${minuten} min.`,
  first: 'Noch keine Kontrolle erfasst. Die erste ist jetzt fällig.',
  every: (minuten) => `Alle ${minuten} min, sofern der Behandlungspfad Ihres Hauses nichts anderes vorgibt.`,
  record: 'Kontrolle erfassen',
  undo: 'Rückgängig machen',
  recorded: (uhr) => `Kontrolle von ${uhr} Uhr erfasst.`,
  takenBack: 'Kontrolle zurückgenommen.',
  nothing: 'Für diese Kontrolle ist nichts eingetragen.',
  rounds: 'Bisherige Kontrollen, die letzte zuerst',
  course: 'Verlauf über die Stunden',
  key: 'Obere Linie: normal oder keiner. Raute: nicht normal. Quadrat mit Kreuz: Signal verloren. Lücke: nicht untersucht.',
  unread: 'Diese Version kann den Verlaufsbogen nicht lesen; er bleibt, wie er ist.',
  caution: 'Stützt das ärztliche Urteil; was geschieht, entscheidet der Behandlungspfad Ihres Hauses.',
};

const einfach: Otherwise<ChartTable> = {
  title: (glied) => `Kontrollen: ${glied}`,
  fields: {
    signal: 'Strömungsgeräusch',
    colour: 'Farbe',
    sensation: 'Gefühl',
    movement: 'Bewegung',
    refill: 'Sekunden bis wieder rosa',
    pain: 'Schmerzen, 0 bis 10',
  },
  notLooked: 'nicht geprüft',
  key: 'Obere Linie: wie es sein soll oder keine. Raute: nicht wie es sein soll. Quadrat mit Kreuz: kein Strömungsgeräusch. Lücke: nicht geprüft.',
};

export const chart = chartFrom(inRegisters(fachlich, einfach), { anatomy, decimal });
