import { type Limb, limbKey, oppositeSide, type Place } from '../../anatomy/index.js';
import type { ScaleId, ScaleStep } from '../../examination/index.js';
import type { FormWords, MapWords } from '../en/map.js';
import { foundFrom } from '../found.js';
import { say, termsFrom } from '../terms.js';
import { anatomy, atLimb } from './anatomy.js';
import { examination } from './examination.js';
import { sentence } from './phrases.js';
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

const gradeOf = ({ grade, increased }: ScaleStep): string =>
  increased ? examination.increased : examination.grades[grade];

const said = foundFrom({
  found: {
    step: ({ step }) => examination.step(step),
    'could-not-feel': ({ reason }) => examination.couldNot(reason),
    'could-not-listen': ({ reason }) =>
      `${say('Auskultation nicht möglich', 'konnte nicht abgehört werden')}: ${examination.reasons[reason]}`,
    thrill: 'Schwirren',
    expansile: examination.expansile,
    doppler: ({ signal }) => `Doppler ${examination.dopplers[signal]}`,
    bruit: ({ bruit }) => examination.bruits[bruit],
    note: ({ note }) => `Notiz: ${note}`,
  },
  short: {
    grade: ({ step }) => gradeOf(step),
    reason: ({ reason }) => examination.reasons[reason],
    heard: ({ bruit }) => examination.bruits[bruit],
    bruit: 'Geräusch',
    thrill: 'Schwirren',
    expansile: examination.expansile,
  },
  grades: examination.grades,
  notExamined: examination.notExamined,
  was: (now, before) => `${now}, war ${before}`,
});

const onScale = (scale: ScaleId): string =>
  scale === 'words' ? 'Skala in Worten' : `Skala ${examination.scales[scale]}`;

const likely = termsFrom({
  block: 'Wahrscheinlicher Verschluss',
  narrowing: { trade: 'Wahrscheinliche Stenose', plain: 'Wahrscheinliche Engstelle' },
});

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
  'right-hand': 'Rechte Hand',
  'left-hand': 'Linke Hand',
  'right-foot': 'Rechter Fuß',
  'left-foot': 'Linker Fuß',
};
const portions = { head: 'Kopf und Hals', trunk: 'Bauch' };

export const map: MapWords = {
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
  markNormal: 'Normal setzen',
  normals: 'Als normal erfassen, was getastet wurde und hier zu sehen ist',
  portionNormal: (portion, count) => {
    const name = 'side' in portion ? views[`${portion.side}-${portion.part}`] : portions[portion.part];
    return `${name}: ${count} ${count === 1 ? 'Puls' : 'Pulse'} normal`;
  },
  scale: 'Skala',
  shown: 'Darstellen als',
  figureView: 'Figur',
  tableView: 'Tabelle',
  more: 'Skala, Tabelle, Hilfe',
  notFetched:
    'Dieser Teil der Karte konnte nicht geladen werden. Verbindung prüfen und noch einmal versuchen.',
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
  get notListened() {
    return say('nicht auskultiert', 'nicht abgehört');
  },
  get notListenedWord() {
    return say('Nicht auskultiert', 'Nicht abgehört');
  },
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
  get sidesDiffer() {
    return say('seitendifferent', 'Seiten unterschiedlich');
  },
  was: (step) => `war ${step ? examination.step(step) : examination.notExamined}`,
  when: (time) =>
    time
      ? new Intl.DateTimeFormat('de-DE', { day: 'numeric', month: 'long', year: 'numeric' }).format(
          Date.parse(time),
        )
      : '',
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
  collateral: (place) =>
    `${say('Kollateralen füllen möglicherweise', 'Möglicherweise über Umgehungsgefäße gefüllt')}: ${anatomy.place(place)}`,
  ...said,
  siteLabel: (place, said) => `${placed(place)}: ${said}`,
  listenAt: (place) => `${placed(place)}, ${say('Auskultation', 'Abhören')}`,
  recorded: (place, said) => ({ where: placed(place), what: said }),
  cleared: 'geleert',
  nothingTo: (place, what) => ({
    where: placed(place),
    what:
      what === 'feel'
        ? 'wird nur auskultiert; dort gibt es keinen Puls zu bewerten'
        : 'wird nur getastet, nicht auskultiert',
  }),
  notOnScale: (digit, scale) => `${digit} gibt es nicht auf der ${onScale(scale)}`,
  undone: 'Ein Schritt zurückgenommen',
  redone: 'Ein Schritt wiederhergestellt',
  get nothingWrongNow() {
    return `Jetzt kein Verschluss und keine ${say('Stenose', 'Engstelle')} erkennbar`;
  },
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
  likely,
  get noPulse() {
    return say('Kein Puls distal zu erwarten', 'Hier ist kein Puls zu erwarten');
  },
  get collaterals() {
    return say('Mögliche Kollateralen', 'Mögliche Umgehungsgefäße');
  },
  lesionMark: (kind, where, percent) => `${likely[kind]}: ${where}${percent && `, ${percent}`}`,
  siteTiny: (site) => SITES[site].tiny ?? anatomy.sites[site],
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
