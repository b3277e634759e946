import { inRegisters, type Otherwise } from '../terms.js';
import { visitsFrom, type VisitsTable } from '../visits.js';
import { anatomy } from './anatomy.js';
import { decimal, list } from './phrases.js';

const fachlich: VisitsTable = {
  dates: 'de',
  name: 'Untersuchungen',
  count: (anzahl) => (anzahl === 1 ? '1 Untersuchung' : `${anzahl} Untersuchungen`),
  empty: 'Noch ist keine Untersuchung erfasst.',
  alone: 'Nur eine Untersuchung, noch ist nichts zu vergleichen.',
  chooseTwo: 'Zum Vergleichen zwei Untersuchungen wählen.',
  ways: { figure: 'Abbildung', table: 'Tabelle' },
  way: 'Darstellung',
  open: 'Öffnen:',
  pick: 'Vergleichen',
  earlier: 'A, die frühere',
  later: 'B, die spätere',
  noDate: 'ohne Datum',
  first: 'Erste Untersuchung',
  unread: 'Diese Version kann den Befund nicht lesen.',
  inError: 'Irrtümlich eingetragen',
  changes: (anzahl) => (anzahl === 1 ? '1 Stelle verändert' : `${anzahl} Stellen verändert`),
  noChange: 'Keine Stelle verändert',
  weights: {
    urgent: 'dringend',
    matters: 'verändert',
    minor: 'sonstiger Unterschied',
    chance: 'vielleicht Zufall',
  },
  measures: {
    'ankle-index': 'Knöchel-Arm-Index',
    'toe-index': 'Zehen-Arm-Index',
    'ankle-pressure': 'Knöcheldruck',
    'toe-pressure': 'Zehendruck',
    distance: 'Schmerzfreie Gehstrecke',
  },
  short: {
    'ankle-index': 'ABI',
    'toe-index': 'TBI',
    'ankle-pressure': 'Knöchel',
    'toe-pressure': 'Zehe',
    distance: 'Geht',
  },
  unknown: 'nicht untersucht',
  incompressible: 'nicht komprimierbar',
  metres: (anzahl) => `${anzahl} m`,
  reader: 'Abgelesene Untersuchung',
  at: (wann) => `Am ${wann}:`,
  bands: {
    difference: (wert, wann) =>
      `Grau: bis ${wert} neben dem Wert vom ${wann}; so weit streuen Messungen allein.`,
    factor: (wert, wann) =>
      `Grau: bis zum ${wert}-Fachen mehr oder weniger als am ${wann}; so weit streuen Wiederholungen.`,
    'of-arm': (wert, wann) =>
      `Grau: bis zum ${wert}-Fachen des Armdrucks neben dem Wert vom ${wann}; so weit streuen Messungen allein.`,
  },
  keys: 'Pfeil links und rechts: vorige oder nächste Untersuchung; Bild auf und ab: weiter; Pos1 und Ende: erste und letzte.',
  reading: (fertig, alle) => `Bisher ${fertig} von ${alle} Befunden gelesen.`,
  visit: 'Untersuchung',
  changed: 'Verändert seit der vorigen',
};

const einfach: Otherwise<VisitsTable> = {
  measures: {
    'ankle-index': 'Knöchel im Vergleich zum Arm',
    'toe-index': 'Zehe im Vergleich zum Arm',
    'ankle-pressure': 'Blutdruck am Knöchel',
    'toe-pressure': 'Blutdruck an der Zehe',
    distance: 'Gehen ohne Schmerzen',
  },
  short: {
    'ankle-index': 'Knöchel/Arm',
    'toe-index': 'Zehe/Arm',
    'ankle-pressure': 'Knöchel',
    'toe-pressure': 'Zehe',
    distance: 'Geht',
  },
  unknown: 'nicht geprüft',
  incompressible: 'zu hart zum Messen',
};

export const visits = visitsFrom(inRegisters(fachlich, einfach), { anatomy, decimal, list });
