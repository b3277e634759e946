import type { BedsideTable } from '../bedside.js';
import type { Otherwise } from '../terms.js';
import type { BedsideLabels } from './bedside-labels.js';
import { sentence } from './phrases.js';

/** What was measured in the tests, for a reader who is no clinician. */
export const plainBedside: Otherwise<BedsideTable> = {
  outcomes: { positive: 'have a test that looks abnormal' },
  people: { 'transradial-access': 'people before a catheter through the wrist' },
  among: { 'transradial-access': 'people before a catheter through the wrist' },
  bounds: { 'upper-95': 'upper limit of the 95% range' },
  found: {
    'arterial-disease': 'of people with diseased arteries are found',
    'inadequate-collateral': 'of hands that one artery cannot supply alone are found',
  },
  cleared: {
    'arterial-disease': 'of people without it have a normal test',
    'inadequate-collateral': 'of hands that it can supply have a normal test',
  },
  sensitivity: (share, of) => `${share} ${of}`,
  specificity: (share, of) => `${share} ${of}`,
  measured: {
    red: 'dusky red when it hangs',
    incompetent: 'veins that leak',
    methods: { modified: 'newer form of the test', original: 'older form of the test' },
    releasedPink: (artery, time) => `${artery} let go: pink after ${time}`,
    releasedWhite: (artery, time) => `${artery} let go: palm white for ${time}`,
    tracing: (artery, barbeau) => `finger clip, ${artery} pressed: class ${barbeau}`,
    water: (celsius) => `water at ${celsius} °C`,
  },
};

export const plainBedsideLabels: Otherwise<BedsideLabels> = {
  title: 'Simple tests',
  rates: 'How often it misleads',
  elevation: {
    range: 'A leg short of blood pales in the thick part of the arc.',
    paleAgain: 'Mark paleness again',
  },
  venous: { incompetent: 'Veins leak' },
  hand: {
    methods: { modified: 'Newer', original: 'Older' },
    released: { radial: 'Thumb side let go', ulnar: 'Little-finger side let go' },
    figure: (side, name) => `${sentence(side)} palm; let go: ${name}`,
    start: 'Let go: start',
    tracing: 'Finger clip',
    barbeau: 'Thumb side pressed',
    barbeauReverse: 'Little-finger side pressed',
    classes: {
      A: 'A, beats as before',
      B: 'B, beats weaker',
      C: 'C, gone, back within 2 min',
      D: 'D, gone for 2 min',
    },
  },
};
