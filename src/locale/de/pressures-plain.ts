import type { PressureLabels } from '../en/pressures-labels.js';
import type { PressureTable } from '../pressures.js';
import type { Otherwise } from '../terms.js';

/** What the pressures tell, for a reader who is no clinician. */
export const plainPressures: Otherwise<PressureTable> = {
  sites: {
    radial: 'Handgelenk, Daumenseite',
    ulnar: 'Handgelenk, Kleinfingerseite',
    'dorsalis-pedis': 'Fußrücken',
    'posterior-tibial': 'Innenknöchel',
    toe: 'große Zehe',
  },
  kinds: {
    ankle: 'Knöchel im Vergleich zum Arm',
    toe: 'Zehe im Vergleich zum Arm',
    wrist: 'Handgelenk im Vergleich zum Arm',
    finger: 'Finger im Vergleich zum Arm',
  },
  bands: { abnormal: 'zu niedrig', incompressible: 'zu hart zum Messen' },
  severe: 'viel zu niedrig',
  curves: { 'notch-lost': 'die Kerbe fehlt' },
  noPressure: { incompressible: 'Schlagader zu hart zum Messen' },
  atAfter: (site, side) => `${site} nach dem Gehen ${side}`,
  pointsTo: (levels) => `spricht für diesen Abschnitt: ${levels}`,
  anyLevel: 'sagt nicht, wo: Jeder Abschnitt bis dahin ist möglich',
  thighLow: (index, limit) => `Oberschenkel im Vergleich zum Arm ${index}, unter ${limit}`,
  strengths: { suspicious: 'vielleicht von Bedeutung', significant: 'von Bedeutung' },
  indexChange: (way, percent) => `im Vergleich zum Arm ${way} er um ${percent} %`,
  indexAfter: (index) => `Knöchel im Vergleich zum Arm danach ${index}`,
  verdicts: { abnormal: 'passt zu verengten oder verschlossenen Schlagadern' },
  afterExercise: (side) => `${side}, nach dem Gehen`,
  measures: { tcpo2: 'Sauerstoff in der Haut', index: 'Knöchel im Vergleich zum Arm' },
  indexSince: (now, before, by, fell) =>
    `Druck am Knöchel im Vergleich zum Arm ${now}, beim früheren Besuch ${before}: um ${by} ${fell ? 'gefallen' : 'gestiegen'}, mehr als zwei Messungen von sich aus abweichen.`,
  flatCurve:
    'Pulswelle am Knöchel flach: Arm oder Bein kann gefährdet sein, wenn es auch in Ruhe schmerzt oder eine Wunde hat.',
  threat: (measured) =>
    `${measured}: so niedrig, dass Arm oder Bein gefährdet sein kann, wenn es auch in Ruhe schmerzt oder eine Wunde hat.`,
  ankleAboveLowArms: (side, index, below) =>
    `Knöchel ${side} im Vergleich zum Arm ${index} bei Armdrücken unter ${below} beidseits`,
  armsApart: (by) => `Arme um ${by} verschieden, obwohl die Knöchel nicht niedrig sind`,
  armPulses: 'Pulse an beiden Armen schwach oder nicht zu tasten',
  lowThoughHypertensive: (below) => `beide Armdrücke unter ${below} trotz bekannten Bluthochdrucks`,
  bothArms: (doubts) =>
    `Die Schlagadern beider Arme können erkrankt sein (${doubts}): Jeder Vergleich mit dem Arm kann dann zu hoch ausfallen. Die Drücke an Knöchel und Zehe selbst und die Form der Kurven hängen nicht von den Armen ab.`,
  cuffReasons: {
    acute: 'vielleicht plötzlich schlecht durchblutet',
    access: 'Zugang für die Dialyse (Blutwäsche)',
    lymphoedema: 'gestaute Lymphe oder Lymphknoten entfernt',
    thrombosis: 'Zeichen eines Gerinnsels in einer tiefen Vene',
    infection: 'Zeichen einer Infektion',
  },
  cuffRules: {
    'call-first': 'der Anruf um Hilfe wartet nie auf eine Messung',
    'no-cuff': 'keine Manschette an diesem Arm oder Bein',
    'ask-first':
      'vor einer Manschette entscheidet die örtliche Regel; stattdessen Zehendruck oder Form der Kurve',
    elsewhere: 'keine Manschette darüber; sie kommt an eine andere Stelle, oder die Zehe wird gemessen',
  },
  methodLabels: {
    standard: 'Leitlinie für Knöchel und Arm',
    ankle: 'Welche Knöchelarterie zählt',
    arm: 'Welcher Arm zählt',
    incompressible: 'Zu hart zum Messen über',
    toe: 'Zehe im Vergleich zum Arm zu niedrig',
    exercise: 'Abfall beim Gehen',
    armDifference: 'Unterschied der Arme',
    threat: 'Arm oder Bein gefährdet nach',
    severeIndex: 'Knöchel im Vergleich zum Arm viel zu niedrig',
    wrist: 'Handgelenk im Vergleich zum Arm zu niedrig',
    finger: 'Finger im Vergleich zum Arm zu niedrig',
  },
  methodOptions: {
    ankle: { lower: 'Die mit dem tieferen Druck (übersieht weniger)' },
    arm: {
      higher: 'Der Arm mit dem höheren Druck',
      mean: 'Der Durchschnitt beider Arme, außer bei 10 mmHg Unterschied',
    },
    drop: { '30': 'über 30 mmHg (vielleicht von Bedeutung ab 20)' },
  },
  byDefault: 'die übliche Wahl',
  oxygen: (side) => `Sauerstoff in der Haut des Fußes ${side}`,
  volumeCurve: (side, shape) => `Form der Pulskurve am Knöchel ${side}: ${shape}`,
  walked: { 'walk-completed': 'ganze Strecke gegangen', 'walk-not-completed': 'vorzeitig stehen geblieben' },
  noteAfter: (note) => `nach dem Gehen: ${note}`,
  mean: (figures) => `Durchschnitt beider Arme (${figures})`,
  higher: (side, figure) => `Arm mit dem höheren Druck, ${side} (${figure})`,
  denominator: (arms) => `Verglichen mit: ${arms}.`,
  oneArm: (side) =>
    `Armdruck ${side} nicht erfasst: Ist er höher, liegt jeder Vergleich niedriger als angegeben.`,
  incompressible: 'Schlagadern am Knöchel zu hart zum Messen; der Zehendruck sollte gemessen werden.',
  siteAfter: (site) => `${site} nach dem Gehen`,
  refused: (field, typed, highest) =>
    `${field}: „${typed}“ wurde nicht übernommen. Erwartet wird eine Zahl von 0 bis ${highest}; 0, wo nichts zu hören ist.`,
};

export const plainPressureLabels: Otherwise<PressureLabels> = {
  how: 'Oberer Blutdruckwert, im Liegen, nach 5 bis 10 Minuten Ruhe.',
  segments: 'Drücke entlang des Beins',
  tcpo2: 'Sauerstoff in der Haut des Fußes',
  afterExercise: 'Nach dem Gehen',
  noArm: 'Ohne einen Druck am Arm gibt es nichts zu vergleichen.',
  refusedArms:
    'Beide Arme bei 0: Damit lässt sich nichts vergleichen. Erwartet wird ein Druck über 0 an mindestens einem Arm.',
  volumeCurve: 'Form der Pulskurve am Knöchel',
  cuffs:
    'Keine Manschette über einem Zugang für die Dialyse, an einem geschwollenen Arm oder nach Entfernung der Lymphknoten, an einem Bein, das ein Gerinnsel in einer tiefen Vene haben kann. Über oder hinter einem Bypass oder Stent entscheidet erst die örtliche Regel; bei offener Wunde, Verbrennung, Knochenbruch oder starkem Schmerz kommt die Manschette an eine andere Stelle, oder die Zehe wird gemessen. Der Anruf um Hilfe für einen plötzlich schlecht durchbluteten Arm oder ein solches Bein wartet nie auf einen Druck.',
  technique:
    'Auf dem Rücken liegend, 5 bis 10 Minuten Ruhe, Fersen gestützt, Raum 19 bis 22 °C, 2 Stunden nicht geraucht; Manschette mindestens 40 % des Umfangs breit; Sonde 8 bis 10 MHz. Reihenfolge: rechter Arm, rechter Innenknöchel, rechter Fußrücken, linker Innenknöchel, linker Fußrücken, linker Arm; dann noch einmal der erste Arm.',
  caution:
    'Verhärtete Schlagadern (Diabetes, Nierenerkrankung, Alter) ergeben zu hohe Drücke am Knöchel: Ein normaler Wert schließt verengte Schlagadern nicht aus.',
};
