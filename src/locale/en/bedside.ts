import { bedsideFrom, type BedsideTable } from '../bedside.js';
import { inRegisters } from '../terms.js';
import { anatomy } from './anatomy.js';
import { bedsideHow } from './bedside-how.js';
import { plainHow } from './bedside-how-plain.js';
import { bedsideLabels } from './bedside-labels.js';
import { plainBedside, plainBedsideLabels } from './bedside-plain.js';
import { readings } from './bedside-readings.js';
import { examination } from './examination.js';
import { speech } from './phrases.js';

const people = {
  healthy: 'healthy people',
  'transradial-access': 'patients before transradial access',
  'carpal-tunnel': 'people with carpal tunnel syndrome',
};

const table: BedsideTable = {
  outcomes: {
    pulse: 'lose or change the pulse',
    pain: 'feel pain',
    tingling: 'feel tingling',
    positive: 'test positive',
    stopped: 'stop early',
    'pulse-any-test': 'lose the pulse in one or other position',
  },
  bounds: { 'highest-reported': 'highest reported figure', 'upper-95': 'upper 95% confidence limit' },
  over: (seconds) => `over ${seconds} s`,
  posture: 'hand held straight',
  upTo: 'at most ',
  share: (percent) => `${percent}%`,
  fromTo: (least, most) => `${least} to ${most}`,
  people,
  among: people,
  rate: (share, of, outcome) => `${share} of ${of} ${outcome}`,
  rates: (among, ranges) => `Of ${among} ${ranges}.`,
  found: {
    'arterial-disease': 'people with arterial disease',
    'inadequate-collateral': 'hands with inadequate collateral flow by plethysmography',
  },
  cleared: {
    'arterial-disease': 'those without it',
    'inadequate-collateral': 'hands with adequate flow',
  },
  sensitivity: (share, of) => `Sensitivity ${share} (${of})`,
  specificity: (share, of) => `specificity ${share} (${of})`,
  measured: {
    pale: 'pale',
    notPale: 'not pale',
    red: 'dependent rubor',
    notRed: 'no redness',
    incompetent: 'incompetent veins',
    noChange: 'no change of colour',
    noSymptoms: 'no symptoms',
    nothingFelt: 'nothing felt',
    methods: { modified: 'modified test', original: 'original test' },
    at: (angle) => `at ${angle}°`,
    held: (time) => `held ${time}`,
    armsUp: (time) => `arms up ${time}`,
    immersed: (time) => `immersed ${time}`,
    pink: (time) => `pink after ${time}`,
    stillPale: (time) => `still pale after ${time}`,
    filled: (time) => `full after ${time}`,
    stillEmpty: (time) => `still empty after ${time}`,
    releasedPink: (artery, time) => `${artery} released: pink after ${time}`,
    releasedWhite: (artery, time) => `${artery} released: no palmar flush for ${time}`,
    tracing: (artery, barbeau) => `plethysmography, ${artery} pressed: class ${barbeau}`,
    water: (celsius) => `water ${celsius} °C`,
    phase: (phase, time) => `${phase} after ${time}`,
    rewarmed: (minutes) => `warm again after ${minutes} min`,
    pulseBefore: (grade) => `pulse ${grade} before`,
    pulseDuring: (grade) => `${grade} during`,
    symptomAt: (symptom, time) => `${symptom} at ${time}`,
    stopped: (by) => `stopped by ${by}`,
  },
  note: (note) => `note: ${note}`,
  usual: (limit) => `Usual, ${limit}`,
};

export const bedside = bedsideFrom(
  inRegisters(bedsideLabels, plainBedsideLabels),
  inRegisters(table, plainBedside),
  { anatomy, examination, speech, how: inRegisters(bedsideHow, plainHow), readings },
);
export type BedsideWords = typeof bedside;
