import type { ReadingsTable } from '../bedside-readings.js';
import type { Otherwise } from '../terms.js';
import { anatomy } from './anatomy.js';

/** What the tests mean, for a reader who is no clinician. */
export const plainReadings: Otherwise<ReadingsTable> = {
  notes: {
    'incompetent-veins': 'Die Venen sind undicht: Eine frühe Füllung sagt nichts.',
    'rewarming-slow': 'Die Finger werden langsam wieder warm.',
    'rewarming-between': 'Die Finger werden langsamer als üblich wieder warm.',
    'rewarming-usual': 'Die Finger werden in der üblichen Zeit wieder warm.',
    'rewarming-no-limit':
      'Die Grenzen des Erwärmens gelten für Eiswasser über 20 s: Für dieses Vorgehen gibt es keine Grenze.',
    'absent-before': 'Der Puls war schon vorher nicht da: Er kann nicht verschwinden.',
  },
  elevation: {
    belowLimit: (pale, limit) => `${pale}: Zeichen schwerer Erkrankung, unter ${limit}.`,
    inRange: (pale, limit) =>
      `${pale}: ein schlecht durchblutetes Bein wird zwischen 15° und 30° blass; unter ${limit} ist es schwer.`,
  },
  colourReturn: {
    prolonged: (time, limit) => `Rosig nach ${time}: langsam, Grenze ${limit}.`,
    severe: (time, limit) => `Rosig nach ${time}: sehr langsam, über ${limit}.`,
    'not-returned': (time, limit) => `Nach ${time} noch blass: langsam, Grenze ${limit}.`,
  },
  venousFilling: {
    prolonged: (time, limit) => `Vene gefüllt nach ${time}: langsam, über ${limit}.`,
    severe: (time, limit) => `Vene gefüllt nach ${time}: sehr langsam, über ${limit}.`,
    'not-filled': (time, limit) => `Vene nach ${time} noch leer: langsam, über ${limit}.`,
    unreliable: (time) => `Vene gefüllt nach ${time}: ohne Aussage, weil die Venen undicht sind.`,
  },
  rubor: { seen: (after) => `Düster rot${after}: passt zu erkrankten Schlagadern.` },
  hand: {
    artery: (artery) => anatomy.arteries[artery],
    released: {
      'not-yet': (artery) => `${artery} noch nicht losgelassen`,
      blocked: (artery) =>
        `${artery} losgelassen: Handfläche bleibt weiß, also ist diese Schlagader oder der Bogen in der Hand möglicherweise verschlossen`,
      patent: (artery, after) => `${artery} losgelassen: rosig${after}`,
      slow: (artery, after) => `${artery} losgelassen: rosig${after}`,
    },
    tracingLost: (pressed) =>
      `Der Fingerclip zeigt zwei Minuten keinen Schlag (Klasse D), während die ${pressed} abgedrückt ist: Die andere kann die Hand möglicherweise nicht allein versorgen.`,
    tracingKept:
      'Der Fingerclip zeigt einen Schlag oder innerhalb von zwei Minuten wieder einen: Die andere Schlagader versorgt die Hand.',
  },
  cold: { noChange: 'Die Farbe ändert sich nicht.' },
  position: {
    both: (pulse, symptoms) => `Puls ${pulse}, dazu ${symptoms}: Der Test löst die Beschwerden aus.`,
    symptoms: (symptoms) => `${symptoms}: Der Test löst die Beschwerden aus.`,
    negative: 'Puls bleibt, keine Beschwerden: normal.',
  },
  stress: {
    stoppedEarly: (time, of, why) =>
      `Bei ${time} von ${of} beendet wegen: ${why}. Der Test löst die Beschwerden aus.`,
    symptomsEarly: (time, of, symptoms) =>
      `Bei ${time} von ${of} beendet, mit ${symptoms}: Der Test löst die Beschwerden aus.`,
    symptoms: (symptoms) => `Vollendet, mit ${symptoms}: Der Test löst die Beschwerden aus.`,
    fatigueOnly: (time) =>
      `Bei ${time} nur wegen müder Arme beendet: Das entscheidet nichts, der Test ist nicht abgeschlossen.`,
    completed: (time) => `${time} ohne Beschwerden vollendet: normal.`,
  },
};
