import type {
  Bruit,
  DopplerSignal,
  Fault,
  Grade,
  Onset,
  PulseFinding,
  Reason,
  ScaleId,
  ScaleStep,
} from '../../examination/index.js';
import type { ExaminationWords } from '../en/examination.js';
import { list } from './phrases.js';

const grades: Record<Grade, string> = {
  absent: 'fehlend',
  // Short enough to stand beside four others on a button; the sentences of the rule say "abgeschwächt tastbar".
  reduced: 'schwach',
  normal: 'normal',
  bounding: 'hebend',
};
const INCREASED = 'stark';

const reasons: Record<Reason, string> = {
  dressing: 'Verband',
  cast: 'Gips',
  oedema: 'Ödem',
  pain: 'Schmerzen',
  amputated: 'amputiert',
  'line-in-place': 'liegender Zugang',
  declined: 'abgelehnt',
  other: 'anderer Grund',
};

const bruits: Record<Bruit, string> = {
  none: 'kein Strömungsgeräusch',
  systolic: 'systolisches Strömungsgeräusch',
  continuous: 'kontinuierliches Strömungsgeräusch',
};

const dopplers: Record<DopplerSignal, string> = {
  triphasic: 'triphasisch',
  biphasic: 'biphasisch',
  monophasic: 'monophasisch',
  absent: 'kein Signal',
};

const scales: Record<ScaleId, string> = { '0-3': '0 bis 3', '0-4': '0 bis 4', words: 'Worte' };
const onsets: Record<Onset, string> = { acute: 'akut', chronic: 'chronisch', unknown: 'unbekannt' };

/** A step of a scale as one says it: "2, normal", or the word alone. */
function step({ numeral, grade, increased }: ScaleStep): string {
  const word = increased ? INCREASED : grades[grade];
  return numeral === null ? word : `${numeral}, ${word}`;
}

/** What is felt beside the grade. */
function pulseExtras(finding: PulseFinding): string[] {
  return [
    ...(finding.thrill ? ['Schwirren'] : []),
    ...(finding.expansile ? ['expansiv'] : []),
    ...(finding.doppler ? [`Doppler ${dopplers[finding.doppler]}`] : []),
  ];
}

/** What the record's rules expect, which they say in plain English words. */
const EXPECTED: Readonly<Record<string, string>> = {
  'plain JSON': 'reines JSON',
  object: 'ein Objekt',
  array: 'eine Liste',
  string: 'Text',
  number: 'eine Zahl',
  boolean: 'true oder false',
  'each word once': 'jedes Wort einmal',
  'each id once': 'jede Kennung einmal',
  'at most one decimal': 'höchstens eine Nachkommastelle',
  'at least 3 points for an area': 'mindestens 3 Punkte für eine Fläche',
  'a date and time with "Z" or an offset, such as "2026-05-01T10:30+02:00"':
    'Datum und Uhrzeit mit „Z“ oder Abweichung, etwa „2026-05-01T10:30+02:00“',
  'a grade or a reason, not both': 'ein Grad oder ein Grund, nicht beides',
  'a bruit or a reason, not both': 'ein Geräusch oder ein Grund, nicht beides',
  'no thrill where the site could not be examined': 'kein Schwirren, wo die Stelle nicht untersuchbar war',
  'no expansile pulse where the site could not be examined':
    'kein expansiver Puls, wo die Stelle nicht untersuchbar war',
  'only together with grade "bounding"': 'nur zusammen mit dem Grad „bounding“',
  'no walking distance where there is no symptom': 'keine Gehstrecke, wo es keine Beschwerden gibt',
  'a place only with an ulcer': 'ein Ort nur bei einem Ulkus',
  'an extent only with gangrene': 'eine Ausdehnung nur bei Gangrän',
  'a reach of redness only with redness': 'eine Ausdehnung der Rötung nur bei Rötung',
  'a level only where the limb is cool or cold': 'eine Höhe nur, wo die Extremität kühl oder kalt ist',
  'a pressure above 0 in at least one arm': 'ein Druck über 0 an mindestens einem Arm',
  'colours or no change, not both': 'Farben oder keine Änderung, nicht beides',
};

function expectation(text: string): string {
  const bound = /^at (least|most) (\S+?)( characters?)?$/.exec(text);
  if (!bound) return EXPECTED[text] ?? text;
  return `${bound[1] === 'least' ? 'mindestens' : 'höchstens'} ${bound[2]}${bound[3] ? ' Zeichen' : ''}`;
}

/** One thing wrong with a value, in a sentence that names the field, what was found and what was expected. */
function fault({ code, path, found, expected }: Fault): string {
  const where = path.length ? path.join(' › ') : 'der Wert';
  const wanted = list(expected.map(expectation), 'oder');
  switch (code) {
    case 'unreadable':
      return `${where}: gefunden ${found}, das nicht lesbar ist; erwartet ${wanted}.`;
    case 'later-version':
      return `${where}: gefunden ${found}, von einer neueren Version geschrieben; erwartet ${wanted}.`;
    case 'missing':
      return `${where}: nichts vorhanden; erwartet ${wanted}.`;
    case 'unknown-field':
      return `${where}: dieses Feld oder diese Stelle gibt es nicht; erwartet ${wanted || 'nichts'}.`;
    default:
      return `${where}: gefunden ${found === 'nothing' ? 'nichts' : found}; erwartet ${wanted}.`;
  }
}

export const examination: ExaminationWords = {
  grades,
  increased: INCREASED,
  expansile: 'expansiv',
  reasons,
  bruits,
  dopplers,
  scales,
  onsets,
  notExamined: 'nicht untersucht',
  couldNotExamine: 'nicht untersuchbar',
  couldNot: (reason: Reason) => `nicht untersuchbar: ${reasons[reason]}`,
  step,
  pulseExtras,
  fault,
};
