import { examinationFrom, type ExaminationTable } from '../examination.js';
import { inRegisters } from '../terms.js';
import { plainExamination } from './examination-plain.js';
import { list } from './phrases.js';

const trade: ExaminationTable = {
  grades: {
    absent: 'fehlend',
    // Short enough to stand beside four others on a button; the sentences of the rule say "abgeschwächt tastbar".
    reduced: 'schwach',
    normal: 'normal',
    bounding: 'hebend',
  },
  increased: 'stark',
  expansile: 'expansiv',
  reasons: {
    dressing: 'Verband',
    cast: 'Gips',
    oedema: 'Ödem',
    pain: 'Schmerzen',
    amputated: 'amputiert',
    'line-in-place': 'liegender Zugang',
    'no-cuff': 'an diesem Arm keine Manschette',
    'dialysis-access': 'Fistel oder Dialysezugang',
    declined: 'abgelehnt',
    other: 'anderer Grund',
  },
  bruits: {
    none: 'kein Strömungsgeräusch',
    systolic: 'systolisches Strömungsgeräusch',
    continuous: 'kontinuierliches Strömungsgeräusch',
  },
  dopplers: {
    triphasic: 'triphasisch',
    biphasic: 'biphasisch',
    monophasic: 'monophasisch',
    absent: 'kein Signal',
  },
  scales: { '0-3': '0 bis 3', '0-4': '0 bis 4', words: 'Worte' },
  onsets: { acute: 'akut', chronic: 'chronisch', unknown: 'unbekannt' },
  notExamined: 'nicht untersucht',
  couldNotExamine: 'nicht beurteilbar',
  unknownHere: 'in einer Form festgehalten, die diese Version nicht kennt',
  unknownEntries: (count) =>
    count === 1
      ? 'Der Befund enthält 1 Eintrag einer neueren Version. Er lässt sich hier nicht anzeigen und bleibt erhalten.'
      : `Der Befund enthält ${count} Einträge einer neueren Version. Sie lassen sich hier nicht anzeigen und bleiben erhalten.`,
  faults: {
    types: {
      object: 'ein Objekt',
      list: 'eine Liste',
      text: 'Text',
      number: 'eine Zahl',
      boolean: 'true oder false',
      json: 'reines JSON',
    },
    counted: {
      characters: (value) => `${value} Zeichen`,
      entries: (value) => (value === 1 ? '1 Eintrag' : `${value} Einträge`),
      values: (value) => `insgesamt ${value} Werte`,
      levels: (value) => `${value} Ebenen`,
    },
    bounds: { 'at-least': 'mindestens', 'at-most': 'höchstens', 'more-than': 'mehr als' },
    rules: {
      instant: 'Datum und Uhrzeit mit „Z“ oder Abweichung, etwa „2026-05-01T10:30+02:00“',
      'one-decimal': 'höchstens eine Nachkommastelle',
      'each-once': 'jedes Wort einmal',
      'ids-differ': 'jede Kennung einmal',
      'area-points': 'mindestens 3 Punkte für eine Fläche',
      'on-plate': 'Punkte innerhalb der Zeichnung, auf der sie liegen',
      'grade-or-reason': 'ein Grad oder ein Grund, nicht beides',
      'bruit-or-reason': 'ein Geräusch oder ein Grund, nicht beides',
      'thrill-only-felt': 'kein Schwirren, wo die Stelle nicht untersuchbar war',
      'expansile-only-felt': 'kein expansiver Puls, wo die Stelle nicht untersuchbar war',
      'increased-only-bounding': 'dies nur zusammen mit dem Grad „bounding“',
      'cause-only-with-ulcer': 'eine Ursache nur bei einem Ulkus',
      'size-only-with-ulcer': 'eine Größe nur bei einem Ulkus',
      'route-only-of-bypass': 'ein Verlauf nur bei einem Bypass',
      'diastolic-below-systolic': 'ein diastolischer Druck nicht über dem systolischen',
      'distance-only-with-symptom': 'keine Gehstrecke, wo es keine Beschwerden gibt',
      'place-only-with-ulcer': 'ein Ort nur bei einem Ulkus',
      'extent-only-with-gangrene': 'eine Ausdehnung nur bei Gangrän',
      'reach-only-with-redness': 'eine Ausdehnung der Rötung nur bei Rötung',
      'level-only-where-cool': 'eine Höhe nur, wo die Extremität kühl oder kalt ist',
      'one-arm-above-zero': 'ein Druck über 0 an mindestens einem Arm',
      'colours-or-no-change': 'Farben oder keine Änderung, nicht beides',
      'place-is-free': 'eine Stelle des Befunds, an der noch nichts steht',
      'sums-to-one': 'Werte, die zusammen eins ergeben',
      'acute-weights-sum-to-one': 'Gewichte der Ursachen, die bei akutem Beginn zusammen eins ergeben',
      'chronic-weights-sum-to-one': 'Gewichte der Ursachen, die bei chronischem Beginn zusammen eins ergeben',
      'signals-sum-to-one': 'vier Signale, die für jede Stärke zusammen eins ergeben',
      'bands-sum-to-one': 'Bereiche, die für jede Stärke zusammen eins ergeben',
      'one-band-more': 'ein Bereich mehr, als es Grenzen gibt',
      'shares-at-most-one': 'verengt und verschlossen zusammen höchstens eins',
      'strength-never-rises': 'nichts Normales weitergegeben, wo ein schwacher Puls ankommt',
      stretch: 'eine Arterie, oder eine Arterie mit Tastort und „proximal“ oder „distal“',
      'stretches-as-keys': 'als Schlüssel nur Arterien oder Abschnitte von Arterien mit Tastort',
    },
    faults: {
      unreadable: (found) => `gefunden ${found}, das nicht lesbar ist; erwartet`,
      'later-version': (found) => `gefunden ${found}, von einer neueren Version geschrieben; erwartet`,
      missing: () => 'nichts vorhanden; erwartet',
      'unknown-field': () => 'dieses Feld oder diese Stelle gibt es nicht; erwartet',
      'wrong-type': (found) => `gefunden ${found}; erwartet`,
      'not-allowed': (found) => `gefunden ${found}; erwartet`,
      conflict: (found) => `gefunden ${found}; erwartet`,
    },
    pressure: (least, most, words) =>
      `0, eine Zahl von ${least} bis ${most} in mmHg oder eines von ${list(words)}`,
    or: (items) => list(items, 'oder'),
    nothing: 'nichts',
    theValue: 'der Wert',
  },
};

export const examination = examinationFrom(inRegisters(trade, plainExamination));
