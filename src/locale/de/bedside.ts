import type {
  Bedside,
  BedsideResult,
  BedsideTestId,
  OutletPosition,
  OutletSymptom,
} from '../../examination/index.js';
import { type Accuracy, type FalsePositives, type Limits, readBedside } from '../../bedside/index.js';
import type { BedsideWords } from '../en/bedside.js';
import { anatomy } from './anatomy.js';
import { bedsideHow } from './bedside-how.js';
import { notes, readingWords, secs, stops, symptoms, ways } from './bedside-readings.js';
import { examination } from './examination.js';
import { decimal, list, sentence } from './phrases.js';

/** What so many percent of people do; the verb agrees with "%" in the plural. */
const outcomes: Record<FalsePositives['outcome'], string> = {
  pulse: 'verlieren den Puls oder er ändert sich',
  pain: 'spüren Schmerz',
  tingling: 'spüren Kribbeln',
  positive: 'sind im Test positiv',
  stopped: 'brechen vorzeitig ab',
  'pulse-any-test': 'verlieren den Puls in der einen oder anderen Stellung',
};

function rate({ outcome, percent, bound, people }: FalsePositives): string {
  const how = bound === undefined ? '' : 'bis zu ';
  const who = people === 'healthy' ? 'der Gesunden' : 'der Menschen mit Karpaltunnelsyndrom';
  return `${how}${decimal(percent)} % ${who} ${outcomes[outcome]}`;
}

function ratesInShort(rates: readonly FalsePositives[]): string {
  const by = new Map<FalsePositives['outcome'], number[]>();
  for (const { outcome, percent } of rates) by.set(outcome, [...(by.get(outcome) ?? []), percent]);
  const parts = [...by].map(([outcome, all]) => {
    const [least, most] = [Math.min(...all), Math.max(...all)];
    return `${least === most ? '' : `${decimal(least)} bis `}${decimal(most)} % ${outcomes[outcome]}`;
  });
  return `Von Gesunden: ${list(parts)}.`;
}

const units: Record<Limits['unit'], string> = { s: 's', min: 'min', deg: '°' };
const withUnit = (value: number, unit: Limits['unit']): string =>
  `${decimal(value)}${unit === 'deg' ? '' : ' '}${units[unit]}`;

/** Sources are cited as printed; only what we say of them ourselves is German. */
const SAID_OF_SOURCES: readonly (readonly [string, string])[] = [
  ['common practice, no source', 'gängige Praxis, ohne Quelle'],
  ['from memory', 'aus dem Gedächtnis'],
  ['set by the examiner', 'selbst festgelegt'],
];
const cited = (source: string): string =>
  SAID_OF_SOURCES.reduce((text, [english, german]) => text.replace(english, german), source);

function seen(p: OutletPosition): string[] {
  return [
    ...(p.before ? [`Puls vorher ${examination.grades[p.before]}`] : []),
    ...(p.during ? [`dabei ${examination.grades[p.during]}`] : []),
    ...(p.symptoms
      ? [p.symptoms.length ? p.symptoms.map((s) => symptoms[s]).join(', ') : 'keine Beschwerden']
      : []),
    ...(p.seconds === undefined ? [] : [`${secs(p.seconds)} gehalten`]),
  ];
}

const opt = (value: number | undefined, say: (n: string) => string): string[] =>
  value === undefined ? [] : [say(decimal(value))];

/** What was measured in each test, in phrases. */
const measured: { readonly [Id in BedsideTestId]: (r: BedsideResult<Id>) => string[] } = {
  elevation: (r) => [
    ...(r.pallor === undefined ? [] : [r.pallor ? 'blass' : 'nicht blass']),
    ...opt(r.angle, (n) => `bei ${n}°`),
    ...opt(r.seconds, (n) => `${n} s`),
  ],
  'colour-return': (r) =>
    opt(r.seconds, (n) => (r.returned === false ? `nach ${n} s noch blass` : `rosig nach ${n} s`)),
  'dependent-rubor': (r) => [
    ...(r.rubor === undefined ? [] : [r.rubor ? 'düster rot' : 'keine Rötung']),
    ...opt(r.seconds, (n) => `${n} s`),
  ],
  'venous-filling': (r) => [
    ...opt(r.seconds, (n) => (r.filled === false ? `nach ${n} s noch leer` : `gefüllt nach ${n} s`)),
    ...(r.incompetentVeins ? ['insuffiziente Venen'] : []),
  ],
  'hand-arch': (r) => [
    ...(r.method ? [r.method === 'modified' ? 'modifizierter Test' : 'ursprünglicher Test'] : []),
    ...(['radial', 'ulnar'] as const).flatMap((a) =>
      opt(
        r[a]?.seconds,
        (n) =>
          `${anatomy.sites[a]} freigegeben: ${r[a]?.returned === false ? `${n} s lang weiß` : `rosig nach ${n} s`}`,
      ),
    ),
    ...(r.barbeau ? [`Plethysmographie, Radialis abgedrückt: Klasse ${r.barbeau}`] : []),
    ...(r.barbeauReverse ? [`Plethysmographie, Ulnaris abgedrückt: Klasse ${r.barbeauReverse}`] : []),
  ],
  'cold-provocation': (r) => [
    ...opt(r.water, (n) => `Wasser ${n} °C`),
    ...opt(r.immersed, (n) => `${n} s eingetaucht`),
    ...opt(r.white, (n) => `weiß nach ${n} s`),
    ...opt(r.blue, (n) => `blau nach ${n} s`),
    ...opt(r.red, (n) => `rot nach ${n} s`),
    ...(r.noChange ? ['kein Farbwechsel'] : []),
    ...opt(r.rewarm, (n) => `wieder warm nach ${n} min`),
  ],
  scalene: (r) =>
    (['toward', 'away', 'traction'] as const).flatMap((way) => {
      const p = r[way];
      return p ? [`${ways[way]}: ${seen(p).join(', ')}`] : [];
    }),
  hyperabduction: seen,
  costoclavicular: seen,
  'arm-stress': (r) => [
    ...opt(r.seconds, (n) => `Arme ${n} s oben`),
    ...(r.stopped ? [`beendet wegen: ${stops[r.stopped]}`] : []),
    ...(Object.keys(r.felt ?? {}) as OutletSymptom[]).flatMap((s) =>
      opt(r.felt?.[s], (n) => `${symptoms[s]} bei ${n} s`),
    ),
    ...(r.nothingFelt ? ['nichts gespürt'] : []),
    ...(r.before ? [`Puls vorher ${examination.grades[r.before]}`] : []),
    ...(r.during ? [`dabei ${examination.grades[r.during]}`] : []),
  ],
};

/** Everything recorded of the tests, one line a test and side, with what it means. */
function said(bedside: Bedside): string[] {
  return (Object.keys(bedsideHow) as BedsideTestId[]).flatMap((id) =>
    (['right', 'left'] as const).flatMap((side) => {
      const result = bedside[id]?.[side];
      const reading = readBedside(id, side, bedside);
      if (!result || !reading) return [];
      const what = result.notDone ? [] : (measured[id] as (r: typeof result) => string[])(result);
      const note = result.note ? [`Notiz: ${result.note}`] : [];
      return [
        `${bedsideHow[id].name}, ${anatomy.sides[side]}: ${[...what, ...note].join('; ')}${what.length || note.length ? '. ' : ''}${readingWords(id, reading as never)}`,
      ];
    }),
  );
}

export const bedside: BedsideWords = {
  title: 'Klinische Tests',
  how: bedsideHow,
  named: (id, eponym) => (eponym ? `${bedsideHow[id].name} (${eponym})` : bedsideHow[id].name),
  sides: 'Seite',
  steps: 'Durchführung',
  notDone: 'Nicht durchgeführt, und warum',
  done: 'Doch durchgeführt',
  note: 'Notiz',
  read: readingWords,
  notes,
  limit: 'Verwendete Grenze',
  limitOption: (value, unit, source) => `${withUnit(value, unit)}: ${cited(source)}`,
  units,
  rates: 'Veröffentlichte Häufigkeiten und ihre Quellen',
  ratesInShort,
  accuracy: ({ sensitivity, specificity }: Accuracy) =>
    `Erkennt ${Math.round(sensitivity * 100)} % der Kranken und entlastet ${Math.round(specificity * 100)} % der Gesunden.`,
  rate,
  ways,
  symptoms,
  stops,
  clear: 'Diesen Test leeren',
  correct: 'Von Hand berichtigen',
  correctSide: (what, side) => `${what} berichtigen, ${side}`,
  again: 'Noch einmal',
  start: 'Start',
  stop: 'Stopp',
  lap: 'Runde',
  notDoneWhy: 'Warum',
  wasDone: 'Durchgeführt',
  reset: 'Zurücksetzen',
  seconds: 'Sekunden',
  keys: 'Läuft weiter, während der Bildschirm ruht.',
  otherSide: (side, text) => `${sentence(side)}: ${text}`,
  usualLimit: (value, unit) => `Üblich, ${withUnit(value, unit)}`,
  timer: 'Stoppuhr',
  laps: 'Runden',
  time: 'Zeit in Sekunden',
  refusedTime: (typed, highest, unit) =>
    `„${typed}“ wurde nicht übernommen. Erwartet wird eine Zahl von 0 bis ${decimal(highest)} ${unit}.`,
  elevation: {
    figure: (side, angle) => `Bein ${side} von der Seite, um ${decimal(angle)} Grad angehoben`,
    angle: 'Winkel',
    handle: (side) => `Winkel des Beins ${side}`,
    degrees: (angle) => `${decimal(angle)} Grad`,
    raise: 'Um 5 Grad heben',
    lower: 'Um 5 Grad senken',
    drag: 'Das Bein ziehen oder die Pfeiltasten verwenden',
    pale: 'Hier blass geworden',
    paleAgain: 'Blässe neu festhalten',
    kept: 'Farbe behalten',
    paleMark: 'Blass',
    raised: 'gehoben',
    start: 'Bein ist oben: Start',
    sensor: 'Mit dem Telefon am Schienbein messen',
    sensorOn: 'Das Telefon bestimmt den Winkel; längs auf das Schienbein legen',
    sensorOff: 'Telefon nicht mehr verwenden',
    sensorRefused:
      'Der Sensor des Telefons darf hier nicht verwendet werden. Den Winkel von Hand einstellen.',
    sensorMissing: 'Dieses Gerät liefert keinen Winkel. Von Hand einstellen.',
    range: 'Ein ischämisches Bein wird im dicken Teil des Bogens blass.',
  },
  colourReturn: {
    start: 'Fuß ist unten: Start',
    stop: 'Wieder rosig',
    never: 'Noch blass',
    label: 'seit dem Senken',
  },
  rubor: { start: 'Füße hängen: Start', red: 'Düster rot', none: 'Keine Rötung' },
  venous: {
    start: 'Fuß ist unten: Start',
    stop: 'Vene ist gefüllt',
    never: 'Noch leer',
    incompetent: 'Insuffiziente Venen',
  },
  hand: {
    method: 'Form des Tests',
    methods: { modified: 'Modifiziert', original: 'Ursprünglich' },
    fist: (seconds) => `${decimal(seconds)} s Faust, dann öffnen.`,
    released: { radial: 'Radialis freigegeben', ulnar: 'Ulnaris freigegeben' },
    figure: (side, name) => `Handfläche ${side}, ${name} freigegeben`,
    start: 'Freigeben: Start',
    stop: 'Farbe ist zurück',
    never: 'Bleibt weiß',
    within: (limit) => `Handfläche rosig innerhalb von ${decimal(limit)} s`,
    beyond: (limit) => `Über ${decimal(limit)} s`,
    stillPale: 'noch blass',
    white: 'Handfläche bleibt weiß',
    tracing: 'Plethysmographie (Barbeau)',
    barbeau: 'Radialis abgedrückt',
    barbeauReverse: 'Ulnaris abgedrückt',
    classes: {
      A: 'A, nicht gedämpft',
      B: 'B, gedämpft',
      C: 'C, verschwunden, in 2 min zurück',
      D: 'D, 2 min verschwunden',
    },
  },
  cold: {
    start: 'Aus dem Wasser: Start',
    warm: 'Wieder warm',
    since: 'seit die Hand aus dem Wasser ist',
    usual: (celsius, seconds) => `Üblich: ${decimal(celsius)} °C für ${decimal(seconds)} s.`,
    water: 'Wasser',
    immersed: 'Zeit im Wasser',
    phases: { white: 'Weiß', blue: 'Blau', red: 'Rot' },
    noChange: 'Kein Farbwechsel',
    rewarm: 'Wieder warm nach',
  },
  position: {
    before: 'Puls vorher',
    during: 'Puls in der Stellung',
    symptoms: 'Beschwerden',
    none: 'Keine',
    hold: (seconds) => `${decimal(seconds)} s halten`,
    start: 'In Stellung: Start',
  },
  stress: {
    start: 'Arme oben: Start',
    stop: 'Hier beenden',
    left: (text, of) => `noch ${text} von ${of}`,
    leftOf: (of) => `übrig von ${of}`,
    ready: 'Bereit',
    said: 'Ja',
    up: 'Arm blieb oben',
    beat: { open: 'Öffnen', close: 'Schließen' },
    pace: (seconds) => `ein Wechsel alle ${decimal(seconds)} s`,
    soundOff: 'Ton aus',
    soundOn: 'Ton an',
    felt: 'Bisher gespürt',
    feltAt: (symptom, side) => `${sentence(symptom)}, ${side}`,
    mark: '+',
    nothing: 'Nichts gespürt',
    why: 'Beendet wegen',
    over: 'Drei Minuten sind um.',
  },
  said,
};
