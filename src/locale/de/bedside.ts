import { bedsideFrom, type BedsideTable } from '../bedside.js';
import type { BedsideWords } from '../en/bedside.js';
import { inRegisters } from '../terms.js';
import { anatomy } from './anatomy.js';
import { bedsideHow } from './bedside-how.js';
import { plainHow } from './bedside-how-plain.js';
import { bedsideLabels } from './bedside-labels.js';
import { plainBedside, plainBedsideLabels } from './bedside-plain.js';
import { readings } from './bedside-readings.js';
import { examination } from './examination.js';
import { speech } from './phrases.js';

const table: BedsideTable = {
  // What so many percent of people do; the verb agrees with "%" in the plural.
  outcomes: {
    pulse: 'verlieren den Puls oder er ändert sich',
    pain: 'spüren Schmerz',
    tingling: 'spüren Kribbeln',
    positive: 'sind im Test positiv',
    stopped: 'brechen vorzeitig ab',
    'pulse-any-test': 'verlieren den Puls in der einen oder anderen Stellung',
  },
  bounds: { 'highest-reported': 'höchste berichtete Zahl', 'upper-95': 'obere 95-%-Konfidenzgrenze' },
  over: (seconds) => `über ${seconds} s`,
  posture: 'Hand gestreckt',
  upTo: 'höchstens ',
  share: (percent) => `${percent} %`,
  fromTo: (least, most) => `${least} bis ${most}`,
  people: {
    healthy: 'der Gesunden',
    'transradial-access': 'der Patienten vor transradialem Zugang',
    'carpal-tunnel': 'der Menschen mit Karpaltunnelsyndrom',
  },
  among: {
    healthy: 'Gesunden',
    'transradial-access': 'Patienten vor transradialem Zugang',
    'carpal-tunnel': 'Menschen mit Karpaltunnelsyndrom',
  },
  rate: (share, people, outcome) => `${share} ${people} ${outcome}`,
  rates: (among, ranges) => `Von ${among}: ${ranges}.`,
  found: {
    'arterial-disease': 'Menschen mit arterieller Erkrankung',
    'inadequate-collateral': 'Hände mit plethysmographisch unzureichendem Kollateralfluss',
  },
  cleared: {
    'arterial-disease': 'Menschen ohne sie',
    'inadequate-collateral': 'Hände mit ausreichendem Fluss',
  },
  sensitivity: (share, people) => `Sensitivität ${share} (${people})`,
  specificity: (share, people) => `Spezifität ${share} (${people})`,
  measured: {
    pale: 'blass',
    notPale: 'nicht blass',
    red: 'düster rot',
    notRed: 'keine Rötung',
    incompetent: 'insuffiziente Venen',
    noChange: 'kein Farbwechsel',
    noSymptoms: 'keine Beschwerden',
    nothingFelt: 'nichts gespürt',
    methods: { modified: 'modifizierter Test', original: 'ursprünglicher Test' },
    at: (angle) => `bei ${angle}°`,
    held: (time) => `${time} gehalten`,
    armsUp: (time) => `Arme ${time} oben`,
    immersed: (time) => `${time} eingetaucht`,
    pink: (time) => `rosig nach ${time}`,
    stillPale: (time) => `nach ${time} noch blass`,
    filled: (time) => `gefüllt nach ${time}`,
    stillEmpty: (time) => `nach ${time} noch leer`,
    releasedPink: (artery, time) => `${artery} freigegeben: rosig nach ${time}`,
    releasedWhite: (artery, time) => `${artery} freigegeben: ${time} lang weiß`,
    tracing: (artery, barbeau) => `Plethysmographie, ${artery} abgedrückt: Klasse ${barbeau}`,
    water: (celsius) => `Wasser ${celsius} °C`,
    phase: (phase, time) => `${phase} nach ${time}`,
    rewarmed: (minutes) => `wieder warm nach ${minutes} min`,
    pulseBefore: (grade) => `Puls vorher ${grade}`,
    pulseDuring: (grade) => `dabei ${grade}`,
    symptomAt: (symptom, time) => `${symptom} bei ${time}`,
    stopped: (by) => `beendet wegen: ${by}`,
  },
  note: (note) => `Notiz: ${note}`,
  usual: (limit) => `Üblich, ${limit}`,
};

export const bedside: BedsideWords = bedsideFrom(
  inRegisters(bedsideLabels, plainBedsideLabels),
  inRegisters(table, plainBedside),
  {
    anatomy,
    examination,
    speech,
    how: inRegisters(bedsideHow, plainHow),
    readings,
  },
);
