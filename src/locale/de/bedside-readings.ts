import type { OutletSymptom, ScaleneWay, StopReason } from '../../examination/index.js';
import type {
  ArteryVerdict,
  BedsideNote,
  ColdPhase,
  HandArteries,
  PositionReading,
} from '../../bedside/index.js';
import { bedsideReader, type BedsideRenderings, inWays, type Without } from '../bedside.js';
import type { Renderings } from '../render.js';
import { anatomy } from './anatomy.js';
import { examination } from './examination.js';
import { decimal, list, sentence } from './phrases.js';

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
export const phases: Record<ColdPhase, string> = { white: 'weiß', blue: 'blau', red: 'rot' };
const lost: Record<'lost' | 'reduced', string> = { lost: 'verschwunden', reduced: 'schwächer' };

export const secs = (n: number): string => `${decimal(n)} s`;
const after = (seconds: number | undefined): string =>
  seconds === undefined ? '' : ` nach ${secs(seconds)}`;
const held = ({ seconds }: { seconds?: number }): string =>
  seconds === undefined ? '' : ` über ${secs(seconds)}`;
const paled = ({ params }: { params: { angle: number; seconds?: number } }): string =>
  `Blass bei ${decimal(params.angle)}°${after(params.seconds)}`;

const without: Renderings<Without> = {
  'not-done': ({ params }) => `Nicht durchgeführt: ${examination.reasons[params.reason]}.`,
  incomplete: 'Noch nicht vollständig.',
};

const named = (of: readonly OutletSymptom[]): string => list(of.map((one) => symptoms[one]));

const watched = ({ params, limit }: { params: { seconds: number }; limit: number }): string =>
  `Nur ${secs(params.seconds)} beobachtet; die Grenze ist ${secs(limit)}.`;

const position: Renderings<PositionReading> = {
  ...without,
  'pulse-and-symptoms': ({ params }) =>
    `Puls ${lost[params.pulse]}, dazu ${named(params.symptoms)}: positiv.`,
  symptoms: ({ params }) => `${named(params.symptoms)} ausgelöst: positiv.`,
  'pulse-lost': 'Puls verschwunden, ohne Beschwerden: bei Gesunden häufig.',
  'pulse-reduced': 'Puls schwächer, ohne Beschwerden: bei Gesunden häufig.',
  negative: 'Puls erhalten, keine Beschwerden: negativ.',
};

type Released = (artery: string, seconds: number | undefined) => string;
const released: Record<ArteryVerdict | 'not-yet', Released> = {
  'not-yet': (artery) => `${artery} noch nicht freigegeben`,
  blocked: (artery) =>
    `${artery} freigegeben: Handfläche bleibt weiß, also ist die ${artery} oder der Bogen möglicherweise verschlossen`,
  incomplete: (artery) => `${artery}: zu kurz beobachtet`,
  patent: (artery, seconds) => `${artery} freigegeben: rosig${after(seconds)}`,
  slow: (artery, seconds) => `${artery} freigegeben: rosig${after(seconds)}`,
};

function arteries({ params, limit }: { params: HandArteries; limit: number }): string {
  const { radial = 'not-yet', radialSeconds, ulnar = 'not-yet', ulnarSeconds } = params;
  const { sites } = anatomy;
  return `${released[radial](sites.radial, radialSeconds)}; ${released[ulnar](sites.ulnar, ulnarSeconds)}. Grenze ${secs(limit)}.`;
}

/** What each reading means, in a sentence that names the limit it used. */
const readings: BedsideRenderings = {
  elevation: {
    ...without,
    'keeps-colour': ({ params }) =>
      `Behält bei ${decimal(params.angle)}°${held(params)} die Farbe: nach diesem Vorgehen normal.`,
    'not-raised-fully': ({ params }) =>
      `Behält bei ${decimal(params.angle)}° die Farbe; bei 60° über 60 s oder bei 90° gilt das als normal.`,
    'pale-below-limit': (r) => `${paled(r)}: schwer, unter ${decimal(r.limit)}°.`,
    'pale-in-range': (r) =>
      `${paled(r)}: ein ischämisches Bein wird zwischen 15° und 30° blass; unter ${decimal(r.limit)}° ist es schwer.`,
    'pale-high': (r) =>
      `${paled(r)}: ein gesundes Bein behält die Farbe; unter ${decimal(r.limit)}° ist es schwer.`,
  },
  'colour-return': {
    ...without,
    usual: ({ params }) => `Rosig nach ${secs(params.seconds)}: üblich sind etwa 10 s.`,
    'slower-than-usual': ({ params, limit }) =>
      `Rosig nach ${secs(params.seconds)}: langsamer als üblich, innerhalb von ${secs(limit)}.`,
    prolonged: ({ params, limit }) =>
      `Rosig nach ${secs(params.seconds)}: verlängert, Grenze ${secs(limit)}.`,
    severe: ({ params, limit }) => `Rosig nach ${secs(params.seconds)}: schwer, über ${secs(limit)}.`,
    'not-returned': ({ params, limit }) =>
      `Nach ${secs(params.seconds)} noch blass: verlängert, Grenze ${secs(limit)}.`,
    'watched-too-short': watched,
  },
  'dependent-rubor': {
    ...without,
    rubor: ({ params }) => `Düster rot${after(params.seconds)}: passt zu einer Arterienerkrankung.`,
    'no-rubor': ({ params }) => `Keine Rötung in ${secs(params.seconds)}.`,
    'hung-too-short': ({ params: { seconds }, limit }) =>
      `${seconds === undefined ? 'Bisher keine Rötung' : `Keine Rötung in ${secs(seconds)}`}; ${secs(limit)} hängen lassen.`,
  },
  'venous-filling': {
    ...without,
    usual: ({ params }) => `Vene gefüllt nach ${secs(params.seconds)}: üblich sind etwa 15 s.`,
    'slower-than-usual': ({ params, limit }) =>
      `Vene gefüllt nach ${secs(params.seconds)}: langsamer als üblich, innerhalb von ${secs(limit)}.`,
    prolonged: ({ params, limit }) =>
      `Vene gefüllt nach ${secs(params.seconds)}: verlängert, über ${secs(limit)}.`,
    severe: ({ params, limit }) => `Vene gefüllt nach ${secs(params.seconds)}: schwer, über ${secs(limit)}.`,
    'not-filled': ({ params, limit }) =>
      `Vene nach ${secs(params.seconds)} noch leer: verlängert, über ${secs(limit)}.`,
    'watched-too-short': watched,
    unreliable: ({ params }) =>
      `Vene gefüllt nach ${secs(params.seconds)}: bei insuffizienten Venen ohne Aussage.`,
  },
  'hand-arch': {
    ...without,
    patent: arteries,
    slow: (reading) => `Langsam. ${arteries(reading)}`,
    blocked: arteries,
    'one-artery': arteries,
    'tracing-lost': ({ params }) =>
      `Kurve zwei Minuten verschwunden (Klasse D), während die ${anatomy.sites[params.pressed]} abgedrückt ist: Die andere kann die Hand möglicherweise nicht allein versorgen.`,
    'tracing-kept':
      'Kurve erhalten oder innerhalb von zwei Minuten zurück: Die andere Arterie versorgt die Hand.',
  },
  'cold-provocation': {
    ...without,
    'three-phases': 'Nacheinander weiß, blau und rot: ein voller Anfall.',
    'two-phases': 'Weiß und blau: genug für einen Anfall.',
    'single-phase': ({ params }) =>
      `Nur ${list(params.phases.map((one) => phases[one]))}: weiß und blau ist das Mindeste, das zählt.`,
    'slow-rewarming': ({ params, limit }) =>
      `Wieder warm nach ${decimal(params.rewarm)} min: langsam, über ${decimal(limit)} min.`,
    'no-change': 'Kein Farbwechsel.',
    'rewarming-only': ({ params }) => `Wieder warm nach ${decimal(params.rewarm)} min.`,
  },
  scalene: inWays(position, (taken, found) => `${sentence(list(taken.map((way) => ways[way])))}: ${found}`),
  hyperabduction: position,
  costoclavicular: position,
  'arm-stress': {
    ...without,
    'stopped-early': ({ params, limit }) =>
      `Bei ${secs(params.seconds)} von ${decimal(limit)} beendet wegen: ${stops[params.stopped]}. Positiv.`,
    'symptoms-early': ({ params, limit }) =>
      `Bei ${secs(params.seconds)} von ${decimal(limit)} beendet, mit ${named(params.symptoms)}: positiv.`,
    symptoms: ({ params }) => `Vollendet, mit ${named(params.symptoms)}: positiv.`,
    'fatigue-only': ({ params }) =>
      `Bei ${secs(params.seconds)} allein wegen Ermüdung beendet: nicht verwertbar, der Test ist nicht abgeschlossen.`,
    'too-short': ({ params, limit }) =>
      `Bei ${secs(params.seconds)} von ${decimal(limit)} ohne Beschwerden beendet: ohne Aussage.`,
    completed: ({ params }) => `${secs(params.seconds)} ohne Beschwerden vollendet: negativ.`,
  },
};

export const notes: Record<BedsideNote, string> = {
  'pallor-within-seconds': 'Blässe innerhalb von Sekunden passt zu schwerer Erkrankung.',
  'pallor-minutes': 'Blässe erst nach Minuten passt zu leichter Erkrankung.',
  'incompetent-veins': 'Die Venen sind insuffizient: Eine frühe Füllung sagt nichts.',
  'rewarming-slow': 'Die Wiedererwärmung ist langsam.',
  'rewarming-between': 'Die Wiedererwärmung ist langsamer als üblich.',
  'rewarming-usual': 'Die Wiedererwärmung dauert die übliche Zeit.',
  'rewarming-no-limit':
    'Die Grenzen der Wiedererwärmung gelten für Eiswasser über 20 s: keine Grenze für dieses Protokoll.',
  'absent-before': 'Der Puls fehlte schon vorher: Er kann nicht verschwinden.',
  'symptoms-not-asked': 'Nach Beschwerden nicht gefragt.',
  'pulse-not-compared': 'Puls nicht verglichen.',
};

/** What a result means; the words of the reading come first, then what weakens or completes it. */
export const readingWords = bedsideReader(readings);
