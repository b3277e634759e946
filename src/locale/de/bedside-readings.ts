import type {
  BedsideTestId,
  OutletSymptom,
  Reason,
  ScaleneWay,
  StopReason,
} from '../../examination/index.js';
import type { BedsideCodes, BedsideNote, BedsideReading } from '../../bedside/index.js';
import { anatomy } from './anatomy.js';
import { examination } from './examination.js';
import { decimal, list, sentence } from './phrases.js';

type Value = string | number | boolean | undefined;
type P = Readonly<Record<string, string | number | boolean>>;
type Say = (p: P, limit: number | undefined) => string;

export const symptoms: Record<OutletSymptom, string> = {
  heaviness: 'Schwere',
  tingling: 'Kribbeln',
  pain: 'Schmerz',
  fatigue: 'Müdigkeit',
};
export const ways: Record<ScaleneWay, string> = {
  toward: 'Kopf zur getesteten Seite',
  away: 'Kopf abgewandt',
  traction: 'Arm herabgezogen',
};
export const stops: Record<StopReason, string> = {
  pain: 'Schmerz',
  tingling: 'Kribbeln',
  fatigue: 'Müdigkeit',
  other: 'etwas anderes',
};
const phaseNames: Record<string, string> = { white: 'weiß', blue: 'blau', red: 'rot' };

function spoken(table: Readonly<Record<string, string>>, words: Value): string {
  return list(
    String(words ?? '')
      .split(' ')
      .filter(Boolean)
      .map((w) => table[w] ?? w),
  );
}

export const secs = (n: Value): string => `${decimal(n)} s`;
const after = (p: P): string => (p['seconds'] === undefined ? '' : ` nach ${secs(p['seconds'])}`);

const watched: Record<'watched-too-short', Say> = {
  'watched-too-short': (p, limit) => `Nur ${secs(p['seconds'])} beobachtet; die Grenze ist ${secs(limit)}.`,
};

const position: Record<BedsideCodes['hyperabduction'], Say> = {
  'pulse-and-symptoms': (p) =>
    `Puls ${p['pulse'] === 'lost' ? 'verschwunden' : 'schwächer'}, dazu ${spoken(symptoms, p['symptoms'])}: positiv.`,
  symptoms: (p) => `${spoken(symptoms, p['symptoms'])} ausgelöst: positiv.`,
  'pulse-lost': () => 'Puls verschwunden, ohne Beschwerden: bei Gesunden häufig.',
  'pulse-reduced': () => 'Puls schwächer, ohne Beschwerden: bei Gesunden häufig.',
  negative: () => 'Puls erhalten, keine Beschwerden: negativ.',
};

function artery(site: 'radial' | 'ulnar', verdict: Value, seconds: Value): string {
  const name = anatomy.sites[site];
  if (verdict === undefined) return `${name} noch nicht freigegeben`;
  if (verdict === 'blocked')
    return `${name} freigegeben: Handfläche bleibt weiß, also ist die ${name} oder der Bogen möglicherweise verschlossen`;
  if (verdict === 'incomplete') return `${name}: zu kurz beobachtet`;
  return `${name} freigegeben: rosig${seconds === undefined ? '' : ` nach ${secs(seconds)}`}`;
}
const arteries: Say = (p, limit) =>
  `${artery('radial', p['radial'], p['radialSeconds'])}; ${artery('ulnar', p['ulnar'], p['ulnarSeconds'])}. Grenze ${secs(limit)}.`;

/** What each reading means, in a sentence that names the limit it used. */
const readings: { readonly [Id in BedsideTestId]: Readonly<Record<BedsideCodes[Id], Say>> } = {
  elevation: {
    'keeps-colour': () => 'Behält bei 90° die Farbe: normal.',
    'not-raised-fully': (p) =>
      `Behält bei ${decimal(p['angle'])}° die Farbe; erst bei 90° gilt das als normal.`,
    'pale-below-limit': (p, limit) =>
      `Blass bei ${decimal(p['angle'])}°${after(p)}: schwer, unter ${decimal(limit)}°.`,
    'pale-in-range': (p, limit) =>
      `Blass bei ${decimal(p['angle'])}°${after(p)}: ein ischämisches Bein wird zwischen 15° und 30° blass; unter ${decimal(limit)}° ist es schwer.`,
    'pale-high': (p, limit) =>
      `Blass bei ${decimal(p['angle'])}°${after(p)}: ein gesundes Bein behält die Farbe; unter ${decimal(limit)}° ist es schwer.`,
  },
  'colour-return': {
    usual: (p) => `Rosig nach ${secs(p['seconds'])}: üblich sind etwa 10 s.`,
    'slower-than-usual': (p, limit) =>
      `Rosig nach ${secs(p['seconds'])}: langsamer als üblich, innerhalb von ${secs(limit)}.`,
    prolonged: (p, limit) => `Rosig nach ${secs(p['seconds'])}: verlängert, Grenze ${secs(limit)}.`,
    severe: (p, limit) => `Rosig nach ${secs(p['seconds'])}: schwer, über ${secs(limit)}.`,
    'not-returned': (p, limit) => `Nach ${secs(p['seconds'])} noch blass: verlängert, Grenze ${secs(limit)}.`,
    ...watched,
  },
  'dependent-rubor': {
    rubor: (p) => `Düster rot${after(p)}: passt zu einer Arterienerkrankung.`,
    'no-rubor': (p) => `Keine Rötung in ${secs(p['seconds'])}.`,
    'hung-too-short': (p, limit) =>
      `${p['seconds'] === undefined ? 'Bisher keine Rötung' : `Keine Rötung in ${secs(p['seconds'])}`}; ${secs(limit)} hängen lassen.`,
  },
  'venous-filling': {
    usual: (p) => `Vene gefüllt nach ${secs(p['seconds'])}: üblich sind etwa 15 s.`,
    'slower-than-usual': (p, limit) =>
      `Vene gefüllt nach ${secs(p['seconds'])}: langsamer als üblich, innerhalb von ${secs(limit)}.`,
    prolonged: (p, limit) => `Vene gefüllt nach ${secs(p['seconds'])}: verlängert, über ${secs(limit)}.`,
    severe: (p, limit) => `Vene gefüllt nach ${secs(p['seconds'])}: schwer, über ${secs(limit)}.`,
    'not-filled': (p, limit) => `Vene nach ${secs(p['seconds'])} noch leer: verlängert, über ${secs(limit)}.`,
    ...watched,
    unreliable: (p) => `Vene gefüllt nach ${secs(p['seconds'])}: bei insuffizienten Venen ohne Aussage.`,
  },
  'hand-arch': {
    patent: arteries,
    slow: (p, limit) => `Langsam. ${arteries(p, limit)}`,
    blocked: arteries,
    'tracing-lost': (p) =>
      `Kurve zwei Minuten verschwunden (Klasse D), während die ${p['barbeau'] === 'D' ? 'Radialis' : 'Ulnaris'} abgedrückt ist: Die andere kann die Hand möglicherweise nicht allein versorgen.`,
    'tracing-kept': () =>
      'Kurve erhalten oder innerhalb von zwei Minuten zurück: Die andere Arterie versorgt die Hand.',
    'one-artery': arteries,
  },
  'cold-provocation': {
    'three-phases': () => 'Nacheinander weiß, blau und rot: ein voller Anfall.',
    'two-phases': () => 'Weiß und blau: genug für einen Anfall.',
    'single-phase': (p) =>
      `Nur ${spoken(phaseNames, p['phases'])}: weiß und blau ist das Mindeste, das zählt.`,
    'slow-rewarming': (p, limit) =>
      `Wieder warm nach ${decimal(p['rewarm'])} min: langsam, über ${decimal(limit)} min.`,
    'no-change': () => 'Kein Farbwechsel.',
    'rewarming-only': (p) => `Wieder warm nach ${decimal(p['rewarm'])} min.`,
  },
  scalene: Object.fromEntries(
    Object.entries(position).map(([code, say]) => [
      code,
      (p: P, limit: number | undefined) => `${sentence(spoken(ways, p['ways']))}: ${say(p, limit)}`,
    ]),
  ) as typeof position,
  hyperabduction: position,
  costoclavicular: position,
  'arm-stress': {
    'stopped-early': (p, limit) =>
      `Bei ${secs(p['seconds'])} von ${decimal(limit)} beendet wegen: ${spoken(stops, p['stopped'])}. Positiv.`,
    'symptoms-early': (p, limit) =>
      `Bei ${secs(p['seconds'])} von ${decimal(limit)} beendet, mit ${spoken(symptoms, p['symptoms'])}: positiv.`,
    symptoms: (p) => `Vollendet, mit ${spoken(symptoms, p['symptoms'] ?? p['stopped'])}: positiv.`,
    'fatigue-only': (p) => `Bei ${secs(p['seconds'])} allein wegen Müdigkeit beendet: normal.`,
    'too-short': (p, limit) =>
      `Bei ${secs(p['seconds'])} von ${decimal(limit)} ohne Beschwerden beendet: ohne Aussage.`,
    completed: (p) => `${secs(p['seconds'])} ohne Beschwerden vollendet: negativ.`,
  },
};

export const notes: Record<BedsideNote, string> = {
  'pallor-within-seconds': 'Blässe innerhalb von Sekunden passt zu schwerer Erkrankung.',
  'pallor-minutes': 'Blässe erst nach Minuten passt zu leichter Erkrankung.',
  'incompetent-veins': 'Die Venen sind insuffizient: Eine frühe Füllung sagt nichts.',
  'rewarming-slow': 'Die Wiedererwärmung ist langsam.',
  'rewarming-between': 'Die Wiedererwärmung ist langsamer als üblich.',
  'rewarming-usual': 'Die Wiedererwärmung dauert die übliche Zeit.',
  'absent-before': 'Der Puls fehlte schon vorher: Er kann nicht verschwinden.',
  'symptoms-not-asked': 'Nach Beschwerden nicht gefragt.',
  'pulse-not-compared': 'Puls nicht verglichen.',
};

/** What a result means; the words of the reading come first, then what weakens or completes it. */
export function readingWords<Id extends BedsideTestId>(
  id: Id,
  reading: BedsideReading<BedsideCodes[Id]>,
): string {
  const { code, params = {}, limit } = reading;
  if (code === 'not-done') return `Nicht durchgeführt: ${examination.reasons[params['reason'] as Reason]}.`;
  if (code === 'incomplete') return 'Noch nicht vollständig.';
  return readings[id][code](params, limit);
}
