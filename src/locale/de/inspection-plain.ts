import type { InspectionTable } from '../inspection.js';
import type { Otherwise } from '../terms.js';
import { yesNo } from '../words.js';

/** What is seen and touched, for a reader who is no clinician. */
export const plainInspection: Otherwise<InspectionTable> = {
  title: 'Ansehen und Tasten',
  nerves: 'Kraft und Gefühl',
  rest: 'Haare, Nägel und Übriges',
  colour: {
    words: { mottled: 'fleckig, wird beim Drücken blass', 'fixed-mottled': 'fleckig, bleibt beim Drücken' },
  },
  temperatureLevel: 'Wechselt auf Höhe',
  refill: 'Farbe zurück nach Drücken',
  hair: { label: 'Haare' },
  muscle: {
    label: 'Muskeln',
    words: { wasted: 'dünn', tender: 'schmerzhaft', tense: 'hart', rigid: 'steif' },
  },
  oedema: { label: 'Schwellung', words: { none: 'keine', pitting: 'Delle bleibt' } },
  lymphNodes: { words: { none: 'nicht zu tasten', tender: 'schmerzhaft' } },
  lymphoedema: { label: 'Schwellung durch gestaute Lymphe', words: { none: 'keine' } },
  vertebralFlow: {
    label: 'Blutfluss in der Halsschlagader an der Wirbelsäule',
    words: { forward: 'zum Kopf hin', alternating: 'hin und her', reversed: 'rückwärts, in den Arm' },
  },
  ulcer: { label: 'Offene Wunde', words: { none: 'keine', shallow: 'flach' } },
  ulcers: { none: 'keine', shallow: 'flach' },
  ulcerPlace: { label: 'Offene Wunde liegt an' },
  ulcerCause: {
    label: 'Ursache der offenen Wunde',
    words: {
      arterial: 'Schlagadern',
      venous: 'Venen',
      neuropathic: 'fehlendes Gefühl',
      mixed: 'mehrere',
    },
  },
  ulcerSize: 'Offene Wunde groß',
  gangrene: { label: 'Abgestorbenes Gewebe', words: { none: 'keines', wet: 'feucht' } },
  gangreneExtent: { label: 'Abgestorbenes Gewebe reicht bis' },
  infection: {
    label: 'Zeichen einer Infektion',
    words: { tenderness: 'Schmerz bei Druck', warmth: 'Wärme' },
  },
  deepInfection: 'Unter der Haut',
  systemic: {
    label: 'Ganzer Körper',
    words: {
      'heart-rate': 'Puls über 90',
      'white-cells': 'weiße Blutkörperchen über 12 oder unter 4 × 10⁹/l',
    },
  },
  systemicShort: { 'heart-rate': 'Puls > 90', 'white-cells': 'weiße Blutkörperchen > 12 oder < 4' },
  movement: { label: 'Kraft', words: { paralysed: 'nicht zu bewegen' } },
  sensation: {
    label: 'Gefühl',
    words: {
      digits: 'nur an Zehen oder Fingern weg',
      'beyond-digits': 'über Zehen oder Finger hinaus weg',
      lost: 'ganz weg',
    },
  },
  legSensations: { digits: 'an Zehen weg', lost: 'ganz weg' },
  armSensations: { digits: 'an Fingern weg', lost: 'ganz weg' },
  venousDoppler: {
    label: 'Blutfluss in den Venen',
    words: { audible: 'zu hören', inaudible: 'nicht zu hören' },
  },
  probeToBone: 'Knochen in der Wunde zu spüren',
  charcot: 'Knochen des Fußes geben vielleicht nach',
  deficit: 'Schwäche oder Taubheit',
  filament: { label: '10-g-Faden an der Sohle' },
  compartmentOf: { leg: 'Muskeln und Verletzung, Beine', arm: 'Muskeln und Verletzung, Arme' },
  stretchPain: 'Schmerz, wenn jemand Zehen oder Finger bewegt',
  outOfProportion: 'Viel mehr Schmerz als zu erwarten',
  injurySigns: 'Zeichen einer verletzten Schlagader',
  falseAneurysm: 'Schwellung an Einstich oder Bypass',
  varices: 'Krampfadern',
  pigment: 'Braune Flecken',
  thrombosis: { label: 'Zeichen eines Gerinnsels in tiefen Venen' },
  couldNotExamine: 'Nicht zu prüfen',
  said: {
    refill: (is) => `Farbe zurück ${is} s nach Drücken`,
    hair: (is) => `Haare ${is}`,
    muscle: (is) => `Muskeln ${is}`,
    oedema: (is) => `Schwellung: ${is}`,
    ulcer: (is, at) => `offene Wunde: ${is}${at ? `, ${at}` : ''}`,
    gangrene: (is, at) => `abgestorbenes Gewebe: ${is}${at ? `, ${at}` : ''}`,
    infection: (is) => `Zeichen einer Infektion: ${is}`,
    deepInfection: yesNo('Infektion unter der Haut', 'Infektion nicht unter der Haut'),
    systemic: (is) => `Zeichen des ganzen Körpers: ${is}`,
    ulcerCause: (is) => `Ursache der offenen Wunde: ${is}`,
    ulcerSizeMm: (is) => `offene Wunde ${is} mm groß`,
    probeToBone: yesNo('in der Wunde ist Knochen zu spüren', 'in der Wunde ist kein Knochen zu spüren'),
    charcotSuspected: yesNo(
      'heißer geschwollener Fuß, Knochen geben vielleicht nach',
      'kein heißer geschwollener Fuß',
    ),
    deficitKnown: 'Schwäche oder Taubheit ist alt und unverändert',
    monofilament: (is) => `10-g-Faden ${is}`,
    stretchPain: yesNo(
      'Schmerz, wenn jemand Zehen oder Finger bewegt',
      'kein Schmerz, wenn jemand Zehen oder Finger bewegt',
    ),
    painOutOfProportion: yesNo('viel mehr Schmerz als zu erwarten', 'nicht mehr Schmerz als zu erwarten'),
    injurySigns: (is) => `Zeichen einer verletzten Schlagader: ${is}`,
    falseAneurysmSigns: (is) => `Schwellung über der Schlagader: ${is}`,
    varices: yesNo('Krampfadern', 'keine Krampfadern'),
    pigment: yesNo('braune Flecken', 'keine braunen Flecken'),
    thrombosisSigns: (is) => `Zeichen eines Gerinnsels in tiefen Venen: ${is}`,
    movement: (is) => `Kraft ${is}`,
    sensation: (is) => `Gefühl ${is}`,
    venousDoppler: (is) => `Blutfluss in den Venen ${is}`,
    lymphoedema: {
      none: 'keine Schwellung durch gestaute Lymphe, keine Lymphknoten entfernt',
      'nodes-removed': 'Lymphknoten dieser Seite entfernt oder bestrahlt',
      present: 'Schwellung durch gestaute Lymphe',
    },
    vertebralFlow: (is) => `Blutfluss in der Halsschlagader an der Wirbelsäule: ${is}`,
  },
  refillSaid: {
    short: () => 'bis 2 s. Mit der anderen Seite vergleichen; sagt wenig über verengte Schlagadern.',
    'over-traditional': (limit) =>
      `über 2 s, innerhalb der 95-%-Grenze gesunder Menschen dieses Alters (${limit} s). Mit der anderen Seite vergleichen; sagt wenig über verengte Schlagadern.`,
    slow: (limit) =>
      `über 2 s und über ${limit} s, der 95-%-Grenze gesunder Menschen dieses Alters. Mit der anderen Seite vergleichen.`,
  },
};
