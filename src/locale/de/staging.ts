import type {
  AcuteClass,
  FontaineStage,
  Overrule,
  RutherfordCategory,
  Staging,
  WifiGrade,
  WifiStage,
} from '../../examination/index.js';
import { RUTHERFORD_GRADES, type WifiRisk } from '../../staging/index.js';
import { ACUTE_TIMING } from '../../triage/index.js';
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
  grades: 'Die drei WIfI-Komponenten',
  wifiTitle: 'Wunde, Ischämie und Fußinfektion (WIfI)',
  meanings,
  notes: {
    'no-single-class':
      'Diese Befunde passen in keine einzelne Rutherford-Klasse; gezeigt wird die niedrigste mögliche.',
    'fixed-mottling': 'Fixierte Marmorierung gehört zur irreversiblen Klasse.',
    'described-for-leg': 'Die Klassen wurden für das Bein beschrieben.',
    'old-deficit': 'Ein bekanntes altes Defizit von Motorik oder Sensibilität zählt nicht.',
    'pressures-not-met':
      'Die Druckkriterien dieser Kategorie sind nicht erfüllt: Beschwerden und Drücke noch einmal prüfen.',
    'pressures-of-rest-pain': 'Drücke im Bereich des Ruheschmerzes; eine Neuropathie kann Schmerz verdecken.',
    'disease-not-shown': 'Pulse und Drücke zeigen keine pAVK: nach anderer Ursache suchen.',
    'disease-untested': 'pAVK nicht nachgewiesen: Pulse, ABI, Zehendruck oder Dopplerkurve sind nötig.',
    'other-causes': 'Vollständige Belastung ohne Druckabfall: an Wirbelsäule, Hüfte und Venen denken.',
    'at-200': 'Genau 200 m legt das Schema nicht fest; die eigene Konvention wählen.',
    'toe-decides': 'ABI und Zehendruck ergeben verschiedene Grade; der Zehendruck gibt den Ausschlag.',
    incompressible: 'Knöchelarterien nicht komprimierbar: nach Zehendruck oder tcpO₂ einstufen.',
    'one-incompressible': 'Eine Knöchelarterie ist nicht komprimierbar: Der Grad kann schlechter sein.',
    'both-arms':
      'Beide Armarterien können verengt sein: Der ABI kann zu hoch ausfallen, der Grad schlechter sein.',
    'not-atherosclerotic':
      'Die bedrohte Extremität ist für die Atherosklerose definiert; als Ursache ist eine andere Krankheit erfasst.',
    'diabetes-ankle':
      'Bei Diabetes kann der Knöchelarteriendruck zu hoch ausfallen: Der Grad kann schlechter sein.',
    'worse-counts': 'ABI und Knöchelarteriendruck ergeben verschiedene Grade; der schlechtere zählt.',
    'at-70': '70 mmHg ist in zwei Graden gedruckt; die eigene Konvention wählen.',
    'one-sign-only': 'Ein einzelnes Zeichen ist nach diesem Schema noch keine Infektion.',
  },
  excluded: {
    amputated: 'Der Fuß ist verloren: Das Schema gilt nicht.',
    acute: 'Nicht für die akute Extremitätenischämie gedacht.',
    vasculitis: 'Nicht für die Vaskulitis gedacht.',
    buerger: 'Nicht für die Thrombangiitis obliterans (Morbus Buerger) gedacht.',
    vasospasm: 'Nicht für den Vasospasmus gedacht.',
    injury: 'Nicht für Verletzungen gedacht.',
    'venous-ulcer': 'Nicht für venöse Ulzera gedacht.',
  },
  risks,
  stage,
  nothing: 'Zu wenig erfasst für eine Aussage',
  unread:
    'Der Befund kann hier nicht gelesen werden; daraus wird kein Stadium abgeleitet. Von Ihnen festgelegte Stadien bleiben, wie sie sind.',
  open: (scheme, candidates) =>
    `${list(candidates.map(String), 'oder')}${
      candidates.length > 2
        ? ''
        : `: ${list(
            candidates.map((c) => meanings[scheme][c] ?? ''),
            'oder',
          )}`
    }`,
  between: (atLeast, atMost) =>
    `Mindestens ${atLeast} (${acute[atLeast]}), höchstens ${atMost} (${acute[atMost]})`,
  ifAcute: 'Falls akut:',
  notAcute:
    'Kein akuter Beginn erfasst: nicht als akute Extremitätenischämie eingestuft. Bestehen die Beschwerden unter 2 Wochen, den Beginn erfassen.',
  acuteUnknown:
    'Gilt für Beschwerden von unter 2 Wochen, wie immer sie begannen. Der Beginn ist nicht erfasst: jetzt klären.',
  timing: (value) => {
    const { hours } = ACUTE_TIMING[value];
    if (!hours)
      return 'Leitlinien: Eine primäre Amputation ist gegebenenfalls zu erwägen; das entscheidet das Gefäßteam. Jetzt rufen.';
    return `Zeitfenster der Leitlinien für die Revaskularisation: ${hours[0] ? `${hours[0]} bis ` : ''}${hours[1]} Stunden. Jetzt rufen.`;
  },
  beside: (phrases) => `Daneben: ${list(phrases)}, im Bereich des Ruheschmerzes.`,
  objective: {
    met: 'Druckkriterien erfüllt.',
    'not-met': 'Druckkriterien nicht erfüllt.',
    'not-measured': 'Druckkriterien nicht gemessen.',
  },
  differ: 'Fontaine und Rutherford stimmen hier nicht überein: die Befunde dahinter vergleichen.',
  from: (phrases) => `Aus: ${list(phrases)}.`,
  risk: (risk) => `Geschätztes 1-Jahres-Risiko einer Majoramputation: ${risks[risk]}.`,
  benefit: (benefit) => `Geschätzter Nutzen einer Revaskularisation: ${risks[benefit]}.`,
  edition: 'WIfI-Tabellen nach Mills 2014.',
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
