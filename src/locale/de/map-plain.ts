import type { MapWords } from '../en/map-later.js';
import type { FoundTable } from '../found.js';
import type { Otherwise } from '../terms.js';
import { anatomy } from './anatomy.js';
import { sentence } from './phrases.js';

/** What was found at a site, for a reader who is no clinician. */
export const plainFound: Otherwise<FoundTable> = {
  bruit: 'Rauschen',
  doppler: 'Strömungsgeräusch:',
  couldNotListen: (reason) => `konnte nicht abgehört werden: ${reason}`,
};

/** The words of the map, for a reader who is no clinician. */
export const plainMap: Otherwise<MapWords> = {
  plates: { captions: { 'medial-side': 'Innenseite', medial: 'innen', lateral: 'außen' } },
  views: { 'right-foot': 'Rechter Fuß, von vorn und innen', 'left-foot': 'Linker Fuß, von vorn und innen' },
  bruit: 'Rauschen',
  bruitOptions: { systolic: 'Bei jedem Herzschlag' },
  thrill: 'Schwirren',
  expansile: 'Drückt nach außen',
  doppler: 'Strömungsgeräusch',
  couldNotExamine: 'Nicht zu prüfen',
  keys: [
    ['Auf, Ab', 'zum Herzen hin, vom Herzen weg'],
    ['Links, Rechts', 'zur Nachbarstelle und zur anderen Seite'],
    ['Bild auf, Bild ab', 'vorige, nächste Stelle in der Reihenfolge der Untersuchung'],
    ['0 bis 4', 'wie kräftig der Puls ist, auf der gewählten Skala'],
    ['B', 'Rauschen: keines, bei jedem Herzschlag, dauernd'],
    ['T', 'Schwirren'],
    ['E', 'drückt nach außen'],
    ['X', 'nicht zu prüfen, und warum'],
    ['Eingabe', 'Stelle öffnen'],
    ['Entf', 'Stelle zurücksetzen'],
    ['A', 'als normal erfassen, Arm für Arm, Bein für Bein'],
    ['Strg Z, Strg Y', 'rückgängig, wiederherstellen'],
    ['Esc', 'schließen, Eintragen an mehreren Stellen beenden'],
    ['?', 'diese Liste'],
  ],
  tableName: 'Pulse und Rauschen, vom Rumpf nach außen',
  bruitColumn: (side) => `Rauschen ${anatomy.sides[side]}`,
  bruitOf: (place) => `${sentence(anatomy.place(place))}, Rauschen`,
  moreOf: (place) => `${sentence(anatomy.place(place))}: Schwirren, Strömungsgeräusch, Notiz und mehr`,
  nothingTo: (place, what) => ({
    where: sentence(anatomy.place(place)),
    what: {
      feel: 'wird nur abgehört; dort ist kein Puls zu tasten',
      hear: 'wird nur getastet, nicht abgehört',
      expand: 'ist zu dünn, um nach außen zu drücken',
    }[what],
  }),
  radioRadial: 'Pulse der Handgelenke im Vergleich',
  radioFemoral: (side) => `Leiste nach Handgelenk, ${side}`,
  radioFemoralOptions: { delayed: 'Leiste später' },
  notListened: 'nicht abgehört',
  notListenedWord: 'Nicht abgehört',
  sidesDiffer: 'Seiten unterschiedlich',
  collateral: (place) => `Möglicherweise über Umgehungsgefäße gefüllt: ${anatomy.place(place)}`,
  listenAt: (place) => `${sentence(anatomy.place(place))}, Abhören`,
  nothingWrongNow: 'Jetzt kein Verschluss und keine Engstelle erkennbar',
  noPulse: 'Hier ist kein Puls zu erwarten',
  collaterals: 'Mögliche Umgehungsgefäße',
  likely: { narrowing: 'Wahrscheinliche Engstelle' },
};
