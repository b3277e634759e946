import { stagingFrom, type StagingTable } from '../staging.js';
import { inRegisters } from '../terms.js';
import { anatomy } from './anatomy.js';
import { list } from './phrases.js';
import { plainStaging } from './staging-plain.js';

const trade: StagingTable = {
  title: 'Stadien',
  schemes: {
    acute: 'Klasse der akuten Extremitätenischämie (Rutherford)',
    fontaine: 'Fontaine-Stadium',
    rutherford: 'Rutherford-Kategorie',
    wound: 'Wundgrad',
    ischaemia: 'Ischämiegrad',
    infection: 'Grad der Fußinfektion',
    wifi: 'Stadium nach Wunde, Ischämie und Fußinfektion (WIfI)',
  },
  meanings: {
    acute: {
      I: 'lebensfähig, nicht unmittelbar bedroht',
      IIa: 'marginal bedroht',
      IIb: 'unmittelbar bedroht',
      III: 'irreversibel',
    },
    fontaine: {
      I: 'keine Beschwerden',
      IIa: 'leichte Claudicatio',
      IIb: 'mäßige bis schwere Claudicatio',
      III: 'Ruheschmerz',
      IV: 'Ulkus oder Gangrän',
    },
    rutherford: {
      0: 'keine Beschwerden',
      1: 'leichte Claudicatio',
      2: 'mäßige Claudicatio',
      3: 'schwere Claudicatio',
      4: 'Ruheschmerz',
      5: 'kleiner Gewebsdefekt',
      6: 'ausgedehnter Gewebsdefekt',
    },
    wound: {
      0: 'keine Wunde',
      1: 'kleines oder oberflächliches Ulkus',
      2: 'tieferes Ulkus oder Gangrän von Zehen',
      3: 'ausgedehntes Ulkus oder Gangrän',
    },
    degrees: { 0: 'keine', 1: 'leicht', 2: 'mäßig', 3: 'schwer' },
    wifi: {
      1: 'sehr geringes Amputationsrisiko',
      2: 'geringes Amputationsrisiko',
      3: 'mäßiges Amputationsrisiko',
      4: 'hohes Amputationsrisiko',
      5: 'nicht erhaltbarer Fuß',
    },
  },
  notes: {
    'no-single-class':
      'Diese Befunde passen in keine einzelne Rutherford-Klasse; gezeigt wird die niedrigste mögliche.',
    'both-arms':
      'Beide Armarterien können verengt sein: Der ABI kann zu hoch ausfallen, der Grad schlechter sein.',
    'acute-limb':
      'Zeichen einer akuten Extremitätenischämie: Es zählt die akute Klasse. Chronische Stadien gelten für Beschwerden seit mindestens 2 Wochen.',
    'not-atherosclerotic':
      'Die bedrohte Extremität ist für die Atherosklerose definiert; als Ursache ist eine andere Krankheit erfasst.',
    'fixed-mottling': 'Fixierte Marmorierung gehört zur irreversiblen Klasse.',
    'described-for-leg': 'Die Klassen wurden für das Bein beschrieben.',
    'old-deficit': 'Ein bekanntes altes Defizit von Motorik oder Sensibilität zählt nicht.',
    'pressures-not-met':
      'Die Druckkriterien dieser Kategorie sind nicht erfüllt: Beschwerden und Drücke noch einmal prüfen.',
    'pressures-of-rest-pain': 'Drücke im Bereich des Ruheschmerzes; eine Neuropathie kann Schmerz verdecken.',
    'disease-not-shown':
      'Pulse und Drücke zeigen keine arterielle Verschlusskrankheit: nach anderer Ursache suchen.',
    'disease-untested':
      'Arterielle Verschlusskrankheit nicht nachgewiesen: Pulse, ABI, Zehendruck oder Dopplerkurve sind nötig.',
    'other-causes': 'Vollständige Belastung ohne Druckabfall: an Wirbelsäule, Hüfte und Venen denken.',
    'at-200': 'Genau 200 m legt das Schema nicht fest; die eigene Konvention wählen.',
    'toe-decides': 'ABI und Zehendruck ergeben verschiedene Grade; der Zehendruck gibt den Ausschlag.',
    incompressible: 'Knöchelarterien nicht komprimierbar: nach Zehendruck oder tcpO₂ einstufen.',
    'one-incompressible': 'Eine Knöchelarterie ist nicht komprimierbar: Der Grad kann schlechter sein.',
    'diabetes-ankle':
      'Bei Diabetes kann der Knöchelarteriendruck zu hoch ausfallen: Der Grad kann schlechter sein.',
    'diabetes-unasked':
      'Diabetes nicht dokumentiert: Bei Diabetes kann der Grad schlechter sein; dann ist ein Zehendruck nötig.',
    'worse-counts': 'ABI und Knöchelarteriendruck ergeben verschiedene Grade; der schlechtere zählt.',
    'at-70': '70 mmHg ist in zwei Graden gedruckt; die eigene Konvention wählen.',
    'one-sign-only': 'Ein einzelnes Zeichen ist nach diesem Schema noch keine Infektion.',
  },
  excluded: {
    amputated: 'Der Fuß ist verloren: Das Schema gilt nicht.',
    acute: 'Nicht für die akute Extremitätenischämie gedacht.',
    vasculitis: 'Nicht für die Vaskulitis gedacht.',
    injury: 'Nicht für Verletzungen gedacht.',
    'venous-ulcer': 'Nicht für venöse Ulzera gedacht.',
    buerger: 'Nicht für die Thrombangiitis obliterans (Morbus Buerger) gedacht.',
    vasospasm: 'Nicht für den Vasospasmus gedacht.',
  },
  risks: {
    'very-low': 'sehr gering',
    low: 'gering',
    moderate: 'mäßig',
    high: 'hoch',
  },
  acuteTitle: 'Akut',
  grades: 'Die drei Komponenten',
  wifiTitle: 'Fuß',
  grade: (roman) => `Grad ${roman}`,
  nothing: 'Nicht einstufbar: zu wenig erfasst',
  unread:
    'Der Befund kann hier nicht gelesen werden; daraus wird kein Stadium abgeleitet. Von Ihnen festgelegte Stadien bleiben, wie sie sind.',
  or: (items) => list(items, 'oder'),
  between: (least, most) => `Mindestens ${least}, höchstens ${most}`,
  notAcute:
    'Kein akuter Beginn erfasst: nicht als akute Extremitätenischämie eingestuft. Bestehen die Beschwerden unter 2 Wochen, den Beginn erfassen.',
  acuteUnknown:
    'Gilt für Beschwerden von unter 2 Wochen, wie immer sie begannen. Der Beginn ist nicht erfasst: jetzt klären.',
  window: (from, to) =>
    `Zeitfenster der Leitlinien für die Revaskularisation: ${from ? `${from} bis ` : ''}${to} Stunden. Jetzt rufen.`,
  noWindow:
    'Leitlinien: Eine primäre Amputation ist gegebenenfalls zu erwägen; das entscheidet das Gefäßteam. Jetzt rufen.',
  beside: (what) => `Daneben: ${what}, im Bereich des Ruheschmerzes.`,
  objective: {
    met: 'Druckkriterien dieser Kategorie erfüllt.',
    'not-met': 'Druckkriterien dieser Kategorie nicht erfüllt.',
    'not-measured': 'Druckkriterien dieser Kategorie nicht gemessen.',
  },
  differ: 'Fontaine und Rutherford stimmen hier nicht überein: die Befunde dahinter vergleichen.',
  from: (what) => `Aus: ${what}.`,
  risk: (risk) => `Geschätztes 1-Jahres-Risiko einer Majoramputation: ${risk}.`,
  benefit: (benefit) => `Geschätzter Nutzen einer Revaskularisation: ${benefit}.`,
  edition: 'Tabellen zu Wunde, Ischämie und Fußinfektion (WIfI) nach Mills 2014.',
  set: 'Eigene Einstufung',
  setTo: (scheme) => `${scheme}, von Ihnen festgelegt`,
  asDerived: 'Wie berechnet',
  why: 'Warum',
  overrule: {
    to: (stage, derived) => `ärztlich gesetzt auf ${stage} (${derived})`,
    derived: (stage) => `abgeleitet war ${stage}`,
    nothing: 'ableitbar war nichts',
    because: (why) => `, weil: ${why}`,
  },
  yours: {
    to: (stage, derived) => `Ihre Festlegung: ${stage}. ${derived}`,
    derived: (stage) => `Abgeleitet: ${stage}.`,
    nothing: 'Ableitbar war nichts.',
  },
};

export const staging = stagingFrom(inRegisters(trade, plainStaging), { anatomy, list });
