import { type Limb, limbKey, oppositeSide, type Place } from '../../anatomy/index.js';
import type { ScaleId } from '../../examination/index.js';
import type { FormWords } from '../en/map.js';
import type { MapWords } from '../en/map-later.js';
import { foundFrom, type FoundTable } from '../found.js';
import { tinyName } from '../site-words.js';
import { inRegisters } from '../terms.js';
import { anatomy, atLimb } from './anatomy.js';
import { examination } from './examination.js';
import { plainFound, plainMap } from './map-plain.js';
import { dateIn, sentence } from './phrases.js';
import { SITES } from './sites.js';

/** What a control says when the form cannot take it. */
export const form: FormWords = {
  required: 'Mindestens einen Befund erfassen.',
  toState: (places) =>
    `Noch anzugeben: ${places.slice(0, 4).join(', ')}${places.length > 4 ? ` und ${places.length - 4} weitere` : ''}.`,
  sealed:
    'Dieser Eintrag stammt aus einer Version, die hier nicht angezeigt werden kann. Er bleibt genau so, wie er ist.',
  lost: 'Was für diesen Eintrag übergeben wurde, lässt sich weder lesen noch aufbewahren. Nichts davon wird gezeigt oder gesendet.',
  waiting: 'Dieser Eintrag wird gelesen.',
  notFetched:
    'Dieser Eintrag bleibt genau so, wie er ist. Was ihn liest, konnte nicht geladen werden: bitte die Verbindung prüfen.',
  retry: 'Noch einmal versuchen',
  startNew: 'Neue Aufzeichnung beginnen',
  startNewAsk: 'Die neue Aufzeichnung ersetzt den Eintrag, der nicht angezeigt werden kann.',
  keep: 'Eintrag behalten',
  replace: 'Ersetzen',
};

const { gradeOf, ...said } = foundFrom(
  inRegisters<FoundTable>(
    {
      couldNotListen: (reason) => `Auskultation nicht möglich: ${reason}`,
      bruit: 'Geräusch',
      thrill: 'Schwirren',
      doppler: 'Doppler',
      note: (note) => `Notiz: ${note}`,
      was: (now, before) => `${now}, war ${before}`,
      before: (found) => `vorher: ${found}`,
    },
    plainFound,
  ),
  examination,
);

const onScale = (scale: ScaleId): string =>
  scale === 'words' ? 'Skala in Worten' : `Skala ${examination.scales[scale]}`;

const placed = (place: Place): string => sentence(anatomy.place(place));

const views = {
  auto: 'Automatisch',
  whole: 'Ganzer Körper',
  arms: 'Arme',
  legs: 'Beine',
  'right-arm': 'Rechter Arm',
  'left-arm': 'Linker Arm',
  'right-leg': 'Rechtes Bein',
  'left-leg': 'Linkes Bein',
  'right-hand': 'Rechte Hand, Hohlhand',
  'left-hand': 'Linke Hand, Hohlhand',
  'right-foot': 'Rechter Fuß, dorsal und medial',
  'left-foot': 'Linker Fuß, dorsal und medial',
  'right-sole': 'Rechte Fußsohle',
  'left-sole': 'Linke Fußsohle',
  'right-knee': 'Rechtes Knie, von hinten',
  'left-knee': 'Linkes Knie, von hinten',
  'legs-behind': 'Beine, von hinten',
};
const plates: MapWords['plates'] = {
  back: 'Zurück zur Figur',
  short: { hand: 'Hand', foot: 'Fuß', sole: 'Sohle', knee: 'Knie', 'legs-behind': 'Hinten' },
  others: 'Größere Zeichnungen',
  captions: { dorsum: 'Fußrücken', 'medial-side': 'mediale Seite', medial: 'medial', lateral: 'lateral' },
};
const portions = {
  head: 'Kopf und Hals',
  trunk: 'Bauch',
  'right-arm': views['right-arm'],
  'left-arm': views['left-arm'],
  'right-leg': views['right-leg'],
  'left-leg': views['left-leg'],
  'right-hand': 'Rechte Hand',
  'left-hand': 'Linke Hand',
  'right-foot': 'Rechter Fuß',
  'left-foot': 'Linker Fuß',
};

const trade: MapWords = {
  figure: 'Arterien des Körpers von vorn; was am Patienten rechts ist, liegt in der Zeichnung links',
  name: 'Pulskarte',
  toolbar: 'Werkzeuge der Pulskarte',
  undo: 'Rückgängig',
  redo: 'Wiederherstellen',
  carry: 'Mehrere bewerten',
  carryStep: (word) => `Mehrere bewerten als ${word}`,
  carrying: (word) => `Wird als ${word} bewertet.`,
  carryHow: 'Stellen antippen oder darüber ziehen.',
  putDown: 'Beenden',
  draw: 'Haut markieren',
  drawShort: 'Haut',
  drawRest: 'markieren',
  marks: 'Markierungen auf der Haut',
  markNormal: 'Normal setzen',
  normals: 'Als normal erfassen, was getastet wurde und hier zu sehen ist',
  portionNormal: (portion, count) => {
    const name = portions['side' in portion ? (`${portion.side}-${portion.part}` as const) : portion.part];
    return `${name}: ${count} ${count === 1 ? 'Puls' : 'Pulse'} normal`;
  },
  scale: 'Skala',
  shown: 'Darstellen als',
  figureView: 'Figur',
  tableView: 'Tabelle',
  more: 'Skala, Tabelle, Hilfe',
  notFetched:
    'Dieser Teil der Karte konnte nicht geladen werden. Verbindung prüfen und noch einmal versuchen.',
  readingWaits:
    'Erfasst. Die Beurteilung folgt, sobald der Rest der Karte geladen ist; bleibt es so, bitte die Verbindung prüfen.',
  help: 'Hilfe und Tasten',
  close: 'Schließen',
  pin: 'Für mehrere Einträge offen halten',
  pulse: 'Puls',
  pulseOn: (scale) => (scale === 'words' ? 'Puls' : `Puls, ${examination.scales[scale]}`),
  bruit: 'Geräusch',
  bruitOptions: { none: 'Keines', systolic: 'Systolisch', continuous: 'Dauernd' },
  thrill: 'Schwirren',
  expansile: 'Expansiv',
  doppler: 'Dopplersignal',
  couldNotExamine: 'Nicht beurteilbar',
  note: 'Notiz',
  addNote: 'Notiz hinzufügen',
  siteTitle: placed,
  gradeWord: (step) => sentence(gradeOf(step)),
  reasonWord: (reason) => sentence(examination.reasons[reason]),
  dopplerWord: (signal) => sentence(examination.dopplers[signal]),
  clear: 'Stelle zurücksetzen',
  next: (place) => `Weiter: ${anatomy.place(place)}`,
  notListened: 'nicht auskultiert',
  notListenedWord: 'Nicht auskultiert',
  notExamined: 'Nicht untersucht',
  tableName: 'Pulse und Strömungsgeräusche, vom Rumpf nach außen',
  site: 'Stelle',
  siteName: (site) => anatomy.sites[site],
  headAndArms: 'Kopf und Arme',
  trunkAndLegs: 'Rumpf und Beine',
  pulseColumn: (side) => `Puls ${anatomy.sides[side]}`,
  bruitColumn: (side) => `Geräusch ${anatomy.sides[side]}`,
  pulseOf: (place) => `${placed(place)}, Puls`,
  bruitOf: (place) => `${placed(place)}, Geräusch`,
  moreOf: (place) => `${placed(place)}: Schwirren, Doppler, Notiz und mehr`,
  noteOf: (side, note) => (side === 'midline' ? note : `${sentence(anatomy.sides[side])}: ${note}`),
  sidesDiffer: 'seitendifferent',
  when: dateIn('de-DE'),
  earlierFinding: (said) => `früher: ${said}`,
  earlier: (when) => `Klein neben jeder Stelle: die frühere Aufzeichnung${when && ` vom ${when}`}.`,
  earlierUnread:
    'Die frühere Aufzeichnung stammt aus einer Version, die hier nicht angezeigt werden kann; verglichen wird nichts.',
  sameAsOther: (side) => `Wie ${anatomy.sides[oppositeSide(side)]}`,
  wholeLimbs: 'Ganze Extremitäten',
  fillLimb: (limb: Limb) => `Nicht bewertete Stellen ${atLimb[limbKey(limb)]} von der Gegenseite übernehmen`,
  clearLimb: (limb) => `${sentence(atLimb[limbKey(limb)])} alles leeren`,
  limbFilled: (limb) => `${sentence(atLimb[limbKey(limb)])} von der Gegenseite übernommen`,
  limbCleared: (limb) => `${sentence(atLimb[limbKey(limb)])} alles geleert`,
  limbUnchanged: (limb) => `${sentence(atLimb[limbKey(limb)])} gibt es nichts zu ändern`,
  viewLabel: 'Ausschnitt',
  views,
  plates,
  collateral: (place) => `Kollateralen füllen möglicherweise: ${anatomy.place(place)}`,
  ...said,
  siteLabel: (place, said) => `${placed(place)}: ${said}`,
  listenAt: (place) => `${placed(place)}, Auskultation`,
  recorded: (place, said) => ({ where: placed(place), what: said }),
  cleared: 'geleert',
  nothingTo: (place, what) => ({
    where: placed(place),
    what: {
      feel: 'wird nur auskultiert; dort gibt es keinen Puls zu bewerten',
      hear: 'wird nur getastet, nicht auskultiert',
      expand: 'wird nicht auf ein Aneurysma getastet',
    }[what],
  }),
  notOnScale: (digit, scale) => `${digit} gibt es nicht auf der ${onScale(scale)}`,
  undone: 'Ein Schritt zurückgenommen',
  redone: 'Ein Schritt wiederhergestellt',
  nothingWrongNow: 'Jetzt kein Verschluss und keine Stenose erkennbar',
  count: (stated, total, scale) => `${stated} von ${total}, ${onScale(scale)}`,
  empty: 'Noch nichts erfasst. Eine Stelle antippen oder dort die Eingabetaste drücken.',
  onsetAndDelays: 'Beginn und Pulsverzögerung',
  onset: 'Beginn',
  onsetWord: (onset) => sentence(examination.onsets[onset]),
  notStated: 'Nicht angegeben',
  radioRadial: 'Radialispulse im Vergleich',
  radioRadialOptions: { none: 'Gleichzeitig', 'right-later': 'Rechts später', 'left-later': 'Links später' },
  radioFemoral: (side) => `Femoralis nach Radialis, ${side}`,
  radioFemoralOptions: { none: 'Gleichzeitig', delayed: 'Femoralis später' },
  legend: 'Legende',
  caution:
    'Unterstützt das ärztliche Urteil und ist keine Diagnose. Was als Nächstes geschieht, entscheiden der örtliche Behandlungspfad und eine approbierte Fachkraft.',
  likely: { block: 'Wahrscheinlicher Verschluss', narrowing: 'Wahrscheinliche Stenose' },
  noPulse: 'Kein Puls distal zu erwarten',
  collaterals: 'Mögliche Kollateralen',
  lesionMark: (kind, where, percent) => `${map.likely[kind]}: ${where}${percent && `, ${percent}`}`,
  siteTiny: (site) => tinyName(SITES[site]) ?? anatomy.sites[site],
  siteShort: (site) => anatomy.sites[site],
  keys: [
    ['Auf, Ab', 'zum Herzen hin, vom Herzen weg'],
    ['Links, Rechts', 'zur Nachbarstelle und zur anderen Seite'],
    ['Bild auf, Bild ab', 'vorige, nächste Stelle in der Reihenfolge der Untersuchung'],
    ['0 bis 4', 'Grad, auf der gewählten Skala'],
    ['B', 'Geräusch: keines, systolisch, dauernd'],
    ['T', 'Schwirren'],
    ['E', 'expansiv'],
    ['X', 'nicht beurteilbar, und warum'],
    ['Eingabe', 'Stelle öffnen'],
    ['Entf', 'Stelle zurücksetzen'],
    ['A', 'als normal erfassen, Glied für Glied'],
    ['Strg Z, Strg Y', 'rückgängig, wiederherstellen'],
    ['Esc', 'schließen, Bewerten beenden'],
    ['?', 'diese Liste'],
  ],
};

export const map = inRegisters(trade, plainMap);
