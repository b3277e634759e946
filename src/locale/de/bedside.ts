import type { Accuracy, FalsePositives, Limits, RatePeople } from '../../bedside/index.js';
import type { MeasuredStatement, RateRange } from '../../statements/index.js';
import { bedsideLine } from '../bedside.js';
import type { BedsideWords } from '../en/bedside.js';
import { render, type Renderings } from '../render.js';
import { anatomy } from './anatomy.js';
import { bedsideHow } from './bedside-how.js';
import { notes, phases, readingWords, secs, stops, symptoms, ways } from './bedside-readings.js';
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

const people: Record<RatePeople, readonly [of: string, among: string]> = {
  healthy: ['der Gesunden', 'Gesunden'],
  'transradial-access': ['der Patienten vor transradialem Zugang', 'Patienten vor transradialem Zugang'],
  'carpal-tunnel': ['der Menschen mit Karpaltunnelsyndrom', 'Menschen mit Karpaltunnelsyndrom'],
};
const bounds: Record<NonNullable<FalsePositives['bound']>, string> = {
  'highest-reported': 'höchste berichtete Zahl',
  'upper-95': 'obere 95-%-Konfidenzgrenze',
};

/** Bedingung des Tests, Schranke und Zahl der Untersuchten. */
function provided({ condition: { over, posture } = {}, bound, count }: Partial<FalsePositives>): string {
  const notes = [
    ...(over === undefined ? [] : [`über ${decimal(over)} s`]),
    ...(posture ? ['Hand gestreckt'] : []),
    ...(bound ? [bounds[bound]] : []),
    ...(count === undefined ? [] : [`n = ${count}`]),
  ];
  return notes.length ? ` (${notes.join(', ')})` : '';
}
const upTo = (bound: FalsePositives['bound']): string => (bound ? 'höchstens ' : '');

const rate = (figure: FalsePositives): string =>
  `${sentence(upTo(figure.bound))}${decimal(figure.percent)} % ${people[figure.people][0]} ${outcomes[figure.outcome]}${provided(figure)}`;

/** One rate; where sources differ, from the least to the most. */
const range = ({ outcome, least, most, bound, condition }: RateRange): string =>
  `${upTo(bound)}${least === most ? '' : `${decimal(least)} bis `}${decimal(most)} % ${outcomes[outcome]}${provided({ bound, condition })}`;

const targets: Record<Accuracy['of'], readonly [found: string, cleared: string]> = {
  'arterial-disease': ['Menschen mit arterieller Erkrankung', 'Menschen ohne sie'],
  'inadequate-collateral': [
    'Hände mit plethysmographisch unzureichendem Kollateralfluss',
    'Hände mit ausreichendem Fluss',
  ],
};

const units: Record<Limits['unit'], string> = { s: 's', min: 'min', deg: '°' };
const withUnit = (value: number, unit: Limits['unit']): string =>
  `${decimal(value)}${unit === 'deg' ? '' : ' '}${units[unit]}`;

const methods = { modified: 'modifizierter Test', original: 'ursprünglicher Test' };

const measured: Renderings<MeasuredStatement> = {
  pale: 'blass',
  'not-pale': 'nicht blass',
  red: 'düster rot',
  'not-red': 'keine Rötung',
  'incompetent-veins': 'insuffiziente Venen',
  'no-change': 'kein Farbwechsel',
  angle: ({ angle }) => `bei ${decimal(angle)}°`,
  time: ({ seconds }) => secs(seconds),
  held: ({ seconds }) => `${secs(seconds)} gehalten`,
  'arms-up': ({ seconds }) => `Arme ${secs(seconds)} oben`,
  immersed: ({ seconds }) => `${secs(seconds)} eingetaucht`,
  pink: ({ seconds }) => `rosig nach ${secs(seconds)}`,
  'still-pale': ({ seconds }) => `nach ${secs(seconds)} noch blass`,
  filled: ({ seconds }) => `gefüllt nach ${secs(seconds)}`,
  'still-empty': ({ seconds }) => `nach ${secs(seconds)} noch leer`,
  'hand-method': ({ method }) => methods[method],
  'released-pink': ({ artery, seconds }) =>
    `${anatomy.sites[artery]} freigegeben: rosig nach ${secs(seconds)}`,
  'released-white': ({ artery, seconds }) =>
    `${anatomy.sites[artery]} freigegeben: ${secs(seconds)} lang weiß`,
  tracing: ({ pressed, barbeau }) =>
    `Plethysmographie, ${anatomy.sites[pressed]} abgedrückt: Klasse ${barbeau}`,
  water: ({ celsius }) => `Wasser ${decimal(celsius)} °C`,
  phase: ({ phase, seconds }) => `${phases[phase]} nach ${secs(seconds)}`,
  rewarmed: ({ minutes }) => `wieder warm nach ${decimal(minutes)} min`,
  'pulse-before': ({ grade }) => `Puls vorher ${examination.grades[grade]}`,
  'pulse-during': ({ grade }) => `dabei ${examination.grades[grade]}`,
  symptoms: ({ symptoms: felt }) => felt.map((one) => symptoms[one]).join(', '),
  'symptom-at': ({ symptom, seconds }) => `${symptoms[symptom]} bei ${secs(seconds)}`,
  stopped: ({ by }) => `beendet wegen: ${stops[by]}`,
  'no-symptoms': 'keine Beschwerden',
  'nothing-felt': 'nichts gespürt',
  way: ({ way, found }) => `${ways[way]}: ${phrases(found).join(', ')}`,
};
const phrases = (found: readonly MeasuredStatement[]): string[] => found.map((one) => render(measured, one));

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
  limitOption: withUnit,
  units,
  rates: 'Veröffentlichte Häufigkeiten',
  ratesInShort: (ranges) => `Von ${people[ranges[0]?.people ?? 'healthy'][1]}: ${list(ranges.map(range))}.`,
  accuracy: ({ of, sensitivity, specificity, condition }: Accuracy) =>
    `Sensitivität ${Math.round(sensitivity * 100)} % (${targets[of][0]}), Spezifität ${Math.round(specificity * 100)} % (${targets[of][1]})${provided({ condition })}.`,
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
  line: bedsideLine({
    subject: (test, side) => `${bedsideHow[test].name}, ${anatomy.sides[side]}`,
    phrases,
    note: (note) => `Notiz: ${note}`,
    read: readingWords,
  }),
};
