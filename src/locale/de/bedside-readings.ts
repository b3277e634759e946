import { bedsideReadingsFrom, type ReadingsTable } from '../bedside-readings.js';
import { inRegisters } from '../terms.js';
import { anatomy } from './anatomy.js';
import { plainReadings } from './bedside-readings-plain.js';
import { examination } from './examination.js';
import { speech } from './phrases.js';

const table: ReadingsTable = {
  symptoms: {
    heaviness: 'Schwere',
    tingling: 'Kribbeln',
    pain: 'Schmerz',
    fatigue: 'Müdigkeit',
  },
  ways: {
    toward: 'Kopf zur getesteten Seite',
    away: 'Kopf abgewandt',
    traction: 'Arm herabgezogen',
  },
  stops: {
    pain: 'Schmerz',
    tingling: 'Kribbeln',
    fatigue: 'Müdigkeit',
    other: 'etwas anderes',
  },
  phases: { white: 'weiß', blue: 'blau', red: 'rot' },
  notes: {
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
  },
  notDone: (reason) => `Nicht durchgeführt: ${reason}.`,
  incomplete: 'Noch nicht vollständig.',
  after: (time) => ` nach ${time}`,
  held: (time) => ` über ${time}`,
  watchedTooShort: (time, limit) => `Nur ${time} beobachtet; die Grenze ist ${limit}.`,
  elevation: {
    keepsColour: (angle) => `Behält bei ${angle} die Farbe: nach diesem Vorgehen normal.`,
    notRaisedFully: (angle) =>
      `Behält bei ${angle} die Farbe; bei 60° über 60 s oder bei 90° gilt das als normal.`,
    paleAt: (angle) => `Blass bei ${angle}`,
    belowLimit: (pale, limit) => `${pale}: schwer, unter ${limit}.`,
    inRange: (pale, limit) =>
      `${pale}: ein ischämisches Bein wird zwischen 15° und 30° blass; unter ${limit} ist es schwer.`,
    high: (pale, limit) => `${pale}: ein gesundes Bein behält die Farbe; unter ${limit} ist es schwer.`,
  },
  colourReturn: {
    usual: (time) => `Rosig nach ${time}: üblich sind etwa 10 s.`,
    'slower-than-usual': (time, limit) => `Rosig nach ${time}: langsamer als üblich, innerhalb von ${limit}.`,
    prolonged: (time, limit) => `Rosig nach ${time}: verlängert, Grenze ${limit}.`,
    severe: (time, limit) => `Rosig nach ${time}: schwer, über ${limit}.`,
    'not-returned': (time, limit) => `Nach ${time} noch blass: verlängert, Grenze ${limit}.`,
  },
  venousFilling: {
    usual: (time) => `Vene gefüllt nach ${time}: üblich sind etwa 15 s.`,
    'slower-than-usual': (time, limit) =>
      `Vene gefüllt nach ${time}: langsamer als üblich, innerhalb von ${limit}.`,
    prolonged: (time, limit) => `Vene gefüllt nach ${time}: verlängert, über ${limit}.`,
    severe: (time, limit) => `Vene gefüllt nach ${time}: schwer, über ${limit}.`,
    'not-filled': (time, limit) => `Vene nach ${time} noch leer: verlängert, über ${limit}.`,
    unreliable: (time) => `Vene gefüllt nach ${time}: bei insuffizienten Venen ohne Aussage.`,
  },
  rubor: {
    seen: (after) => `Düster rot${after}: passt zu einer Arterienerkrankung.`,
    none: (time) => `Keine Rötung in ${time}`,
    noneSoFar: 'Bisher keine Rötung',
    letHang: (none, limit) => `${none}; ${limit} hängen lassen.`,
  },
  hand: {
    artery: (artery) => anatomy.sites[artery],
    released: {
      'not-yet': (artery) => `${artery} noch nicht freigegeben`,
      blocked: (artery) =>
        `${artery} freigegeben: Handfläche bleibt weiß, also ist die ${artery} oder der Bogen möglicherweise verschlossen`,
      incomplete: (artery) => `${artery}: zu kurz beobachtet`,
      patent: (artery, after) => `${artery} freigegeben: rosig${after}`,
      slow: (artery, after) => `${artery} freigegeben: rosig${after}`,
    },
    limit: (limit) => `Grenze ${limit}.`,
    slow: (arteries) => `Langsam. ${arteries}`,
    tracingLost: (pressed) =>
      `Kurve zwei Minuten verschwunden (Klasse D), während die ${pressed} abgedrückt ist: Die andere kann die Hand möglicherweise nicht allein versorgen.`,
    tracingKept:
      'Kurve erhalten oder innerhalb von zwei Minuten zurück: Die andere Arterie versorgt die Hand.',
  },
  cold: {
    threePhases: 'Nacheinander weiß, blau und rot: ein voller Anfall.',
    twoPhases: 'Weiß und blau: genug für einen Anfall.',
    only: (phases) => `Nur ${phases}: weiß und blau ist das Mindeste, das zählt.`,
    slow: (minutes, limit) => `Wieder warm nach ${minutes} min: langsam, über ${limit} min.`,
    noChange: 'Kein Farbwechsel.',
    warm: (minutes) => `Wieder warm nach ${minutes} min.`,
  },
  position: {
    pulse: { lost: 'verschwunden', reduced: 'schwächer' },
    both: (pulse, symptoms) => `Puls ${pulse}, dazu ${symptoms}: positiv.`,
    symptoms: (symptoms) => `${symptoms} ausgelöst: positiv.`,
    lost: 'Puls verschwunden, ohne Beschwerden: bei Gesunden häufig.',
    reduced: 'Puls schwächer, ohne Beschwerden: bei Gesunden häufig.',
    negative: 'Puls erhalten, keine Beschwerden: negativ.',
    inWays: (ways, found) => `${ways}: ${found}`,
  },
  stress: {
    stoppedEarly: (time, of, why) => `Bei ${time} von ${of} beendet wegen: ${why}. Positiv.`,
    symptomsEarly: (time, of, symptoms) => `Bei ${time} von ${of} beendet, mit ${symptoms}: positiv.`,
    symptoms: (symptoms) => `Vollendet, mit ${symptoms}: positiv.`,
    fatigueOnly: (time) =>
      `Bei ${time} allein wegen Ermüdung beendet: nicht verwertbar, der Test ist nicht abgeschlossen.`,
    tooShort: (time, of) => `Bei ${time} von ${of} ohne Beschwerden beendet: ohne Aussage.`,
    completed: (time) => `${time} ohne Beschwerden vollendet: negativ.`,
  },
};

export const readings = bedsideReadingsFrom(inRegisters(table, plainReadings), { examination, speech });
