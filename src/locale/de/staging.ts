import type {
  AcuteClass,
  FontaineStage,
  Overrule,
  RutherfordCategory,
  Staging,
  WifiGrade,
  WifiStage,
} from '../../examination/index.js';
import { ACUTE_TIMING, RUTHERFORD_GRADES, type WifiRisk } from '../../staging/index.js';
import type { SchemeId, StagingWords } from '../en/staging.js';
import { anatomy } from './anatomy.js';
import { list, sentence } from './phrases.js';

const fontaine: Record<FontaineStage, string> = {
  I: 'keine Beschwerden',
  IIa: 'leichte Claudicatio',
  IIb: 'mäßige bis schwere Claudicatio',
  III: 'Ruheschmerz',
  IV: 'Ulkus oder Gangrän',
};
const rutherford: Record<RutherfordCategory, string> = {
  0: 'keine Beschwerden',
  1: 'leichte Claudicatio',
  2: 'mäßige Claudicatio',
  3: 'schwere Claudicatio',
  4: 'Ruheschmerz',
  5: 'kleiner Gewebeverlust',
  6: 'großer Gewebeverlust',
};
const acute: Record<AcuteClass, string> = {
  I: 'lebensfähig, nicht unmittelbar bedroht',
  IIa: 'grenzwertig bedroht',
  IIb: 'unmittelbar bedroht',
  III: 'irreversibel',
};
const risks: Record<WifiRisk, string> = {
  'very-low': 'sehr gering',
  low: 'gering',
  moderate: 'mäßig',
  high: 'hoch',
};
const wifi: Record<WifiStage, string> = {
  1: 'sehr geringes Amputationsrisiko',
  2: 'geringes Amputationsrisiko',
  3: 'mäßiges Amputationsrisiko',
  4: 'hohes Amputationsrisiko',
  5: 'nicht zu rettender Fuß',
};
const wound: Record<WifiGrade, string> = {
  0: 'keine Wunde',
  1: 'kleines oder oberflächliches Ulkus',
  2: 'tieferes Ulkus oder Gangrän von Zehen',
  3: 'ausgedehntes Ulkus oder Gangrän',
};
const ischaemia: Record<WifiGrade, string> = { 0: 'keine', 1: 'leicht', 2: 'mäßig', 3: 'schwer' };
const infection: Record<WifiGrade, string> = { 0: 'keine', 1: 'leicht', 2: 'mäßig', 3: 'schwer' };

const schemes: StagingWords['schemes'] = {
  acute: 'Akute Klasse (Rutherford)',
  fontaine: 'Fontaine-Stadium',
  rutherford: 'Rutherford-Kategorie',
  wound: 'Wundgrad',
  ischaemia: 'Ischämiegrad',
  infection: 'Grad der Fußinfektion',
  wifi: 'WIfI-Stadium',
};

const meanings: Record<SchemeId, Readonly<Record<string | number, string>>> = {
  acute,
  fontaine,
  rutherford,
  wound,
  ischaemia,
  infection,
  wifi,
};

/** A stage as one says it: "IIb, unmittelbar bedroht". */
function stage(scheme: SchemeId, value: string | number): string {
  const grade = scheme === 'rutherford' ? ` (Grad ${RUTHERFORD_GRADES[value as RutherfordCategory]})` : '';
  return `${value}${grade}, ${meanings[scheme][value]}`;
}

function overrule(scheme: SchemeId, { stage: own, derived, why }: Overrule<string | number>): string {
  const beside = derived === undefined ? 'ableitbar war nichts' : `abgeleitet war ${derived}`;
  return `ärztlich gesetzt auf ${stage(scheme, own)} (${beside})${why ? `, weil: ${why}` : ''}`;
}

/** Every stage the clinician set, in phrases. */
function said({ leg, arm }: Staging): string[] {
  return [leg, arm].flatMap((limb, i) =>
    (['right', 'left'] as const).flatMap((side) =>
      Object.entries(limb?.[side] ?? {}).flatMap(([scheme, set]) =>
        set
          ? [
              `${anatomy.limbs[`${side} ${i === 0 ? 'leg' : 'arm'}`]}, ${schemes[scheme as SchemeId]}: ${overrule(scheme as SchemeId, set as Overrule<string | number>)}`,
            ]
          : [],
      ),
    ),
  );
}

export const staging: StagingWords = {
  title: 'Stadien',
  schemes,
  eponyms: { acute: 'Rutherford', fontaine: 'Fontaine', rutherford: 'Rutherford', wifi: 'WIfI' },
  chronic: 'Chronisch',
  acuteTitle: 'Akut',
  grades: 'Die drei Grade darin',
  wifiTitle: 'Wunde, Ischämie und Fußinfektion (WIfI)',
  meanings,
  notes: {
    'no-single-class': 'Diese Befunde passen zusammen in keine gedruckte Klasse; keine wird erzwungen.',
    'fixed-mottling': 'Nicht wegdrückbare Marmorierung gehört zur irreversiblen Klasse.',
    'described-for-leg':
      'Die Klassen wurden für das Bein beschrieben; am Arm werden sie nach gängiger Praxis verwendet.',
    'pressures-not-met':
      'Die zu dieser Kategorie gedruckten Druckwerte sind nicht erfüllt: beides noch einmal prüfen.',
    'raised-by-pressures':
      'Durch die Drücke angehoben; die Beschwerden allein sagen weniger. Diabetes kann Schmerz verdecken.',
    'at-200': 'Genau 200 m ordnet keine Quelle zu; die hier getroffene Wahl lässt sich ändern.',
    'toe-decides':
      'Knöchelindex und Zehendruck ergeben verschiedene Grade; der Zehendruck gibt den Ausschlag.',
    'stiff-arteries':
      'Die Knöchelarterien sind zu starr für einen Grad; nötig ist ein Zehen- oder Sauerstoffdruck.',
    'worse-counts': 'Knöchelindex und Knöcheldruck ergeben verschiedene Grade; der schlechtere zählt.',
    'at-70': '70 mmHg ist in zwei Graden gedruckt; die hier getroffene Wahl lässt sich ändern.',
    'one-sign-only': 'Ein einzelnes Zeichen ist nach diesem Schema noch keine Infektion.',
  },
  excluded: {
    amputated: 'Der Fuß ist verloren: Das Schema gilt nicht.',
    acute: 'Nicht für die akute Ischämie gedacht.',
    vasculitis: 'Nicht für die Vaskulitis gedacht.',
    injury: 'Nicht für Verletzungen gedacht.',
  },
  risks,
  stage,
  nothing: 'Zu wenig erfasst für eine Aussage',
  open: (scheme, candidates) =>
    `${list(candidates.map(String), 'oder')}${
      candidates.length > 2
        ? ''
        : `: ${list(
            candidates.map((c) => meanings[scheme][c] ?? ''),
            'oder',
          )}`
    }`,
  atLeast: (value) => `Mindestens ${value}, ${acute[value]}`,
  notAcute: 'Für diese Extremität ist nichts Akutes erfasst.',
  acuteUnknown:
    'Zählt nur, wenn die Beschwerden vor weniger als zwei Wochen begannen: Der Beginn ist nicht erfasst.',
  timing: (value) => {
    const { hours } = ACUTE_TIMING[value];
    if (!hours) return 'Leitlinien erwägen die primäre Amputation.';
    return `Leitlinien verlangen die Wiederherstellung der Durchblutung innerhalb von ${hours[0] ? `${hours[0]} bis ` : ''}${hours[1]} Stunden.`;
  },
  bySymptoms: (scheme, candidates) =>
    candidates.length
      ? `Nach den Beschwerden allein: ${list(
          candidates.map((c) => stage(scheme, c)),
          'oder',
        )}.`
      : 'Nach den Beschwerden allein war nichts zu sagen.',
  objective: {
    met: 'Gedruckte Druckwerte erfüllt.',
    'not-met': 'Gedruckte Druckwerte nicht erfüllt.',
    'not-measured': 'Gedruckte Druckwerte nicht gemessen.',
  },
  differ: 'Die beiden chronischen Schemata passen hier nicht zueinander: sehen, worauf jedes beruht.',
  from: (phrases) => `Aus: ${list(phrases)}.`,
  risk: (risk) => `Amputation innerhalb eines Jahres: Risiko ${risks[risk]}.`,
  benefit: (benefit) => `Nutzen einer Revaskularisation: ${risks[benefit]}.`,
  fromMemory:
    'Die beiden Tabellen dieses Schemas sind aus dem Gedächtnis wiedergegeben, nicht abgelesen: mit den gedruckten vergleichen.',
  set: 'Selbst festlegen',
  setTo: (scheme) => `${scheme}, von Ihnen festgelegt`,
  asDerived: 'Wie abgeleitet',
  why: 'Warum',
  overrule,
  yours: (value, derived) =>
    `Ihre Festlegung: ${value}.${derived === undefined ? ' Ableitbar war nichts.' : ` Abgeleitet: ${derived}.`}`,
  sentence,
  said,
};
