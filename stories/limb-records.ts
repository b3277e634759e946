import { emptyExamination, type Examination } from 'pulse-map/core';
import { examined } from './records.js';

/*
 * Examinations with history, inspection, tests, pressures and stages. All patients are invented.
 */

/** An invented patient whose left leg lost its blood six hours ago. */
export const threatened: Examination = {
  ...examined(
    {
      'right femoral': 'normal',
      'left femoral': 'normal',
      'left popliteal': 'absent',
      'left posterior-tibial': { grade: 'absent', doppler: 'absent' },
      'left dorsalis-pedis': { grade: 'absent', doppler: 'absent' },
    },
    emptyExamination(),
  ),
  onset: 'acute',
  history: {
    leg: { left: { symptom: 'rest-pain', onset: 'sudden', hours: 6 } },
    rhythm: 'atrial-fibrillation',
    risks: ['hypertension', 'anticoagulant-stopped'],
  },
  inspection: {
    leg: {
      left: {
        colour: 'pale',
        temperature: 'cold',
        temperatureLevel: 'mid-calf',
        refill: 6,
        sensation: 'beyond-digits',
        movement: 'weak',
        venousDoppler: 'audible',
      },
    },
  },
  pressures: { brachial: { right: 142, left: 138 }, 'posterior-tibial': { right: 146, left: 0 } },
};

/** An invented patient with diabetes, an ulcer on the right forefoot, and years of claudication on the left. */
export const chronic: Examination = {
  ...emptyExamination(),
  onset: 'chronic',
  context: { diabetes: true, legClaudication: { left: 'calf-upper' } },
  history: {
    leg: {
      right: { symptom: 'tissue-loss', onset: 'gradual' },
      left: { symptom: 'claudication', distance: 180, severity: 'moderate', onset: 'gradual' },
    },
    rhythm: 'regular',
    risks: ['hypertension', 'kidney-disease'],
    operations: 'Varicose veins on the left, 1999',
  },
  inspection: {
    leg: {
      right: {
        colour: 'red',
        temperature: 'cool',
        temperatureLevel: 'forefoot',
        hair: 'absent',
        nails: 'thickened',
        ulcer: 'deep',
        ulcerPlace: 'forefoot',
        gangrene: 'none',
        infection: ['redness', 'pus'],
        rednessCm: 1.5,
        systemic: [],
        sensation: 'normal',
        movement: 'normal',
      },
      left: { colour: 'normal', ulcer: 'none', gangrene: 'none', infection: [] },
    },
  },
  bedside: {
    elevation: {
      right: { pallor: true, angle: 25, seconds: 34, limit: 20 },
      left: { pallor: false, angle: 90, seconds: 60, limit: 20 },
    },
    'colour-return': { right: { seconds: 32, limit: 15 }, left: { seconds: 12, limit: 15 } },
    'venous-filling': { right: { notDone: 'oedema' } },
  },
  pressures: {
    brachial: { right: 142, left: 138 },
    'dorsalis-pedis': { right: 'incompressible', left: 110 },
    'posterior-tibial': { right: 96, left: 104 },
    toe: { right: 38, left: 84 },
    afterExercise: { completed: true, brachial: { right: 150 }, 'posterior-tibial': { left: 70 } },
  },
  staging: {
    leg: { right: { rutherford: { stage: 6, derived: 5, why: 'bone probes beyond the forefoot' } } },
  },
};

/** An invented patient with diseased veins: arteries well on the left, and not known on the right. */
export const venous: Examination = {
  ...emptyExamination(),
  onset: 'chronic',
  context: { diabetes: false },
  history: { risks: ['hypertension'] },
  inspection: {
    leg: {
      right: { varices: true, oedema: 'pitting', ulcer: 'shallow', ulcerPlace: 'shin', ulcerCause: 'venous' },
      left: { varices: true, pigment: true, sensation: 'normal', thrombosisSigns: [] },
    },
  },
  pressures: { brachial: { right: 140, left: 138 }, 'dorsalis-pedis': { left: 133 } },
};

/*
 * As a later version would write it: words in known fields that this version does not know, and a whole record of another form.
 * Typed as what a host hands over, since the types know neither.
 */

/** A colour and a pressure recorded in words of a later version, among findings that can be read. */
export const laterWords = {
  ...chronic,
  pulses: {
    femoral: { left: { grade: 'normal' }, right: { grade: 'normal' } },
    popliteal: { left: { grade: 'bounding-hard' }, right: { grade: 'reduced' } },
    'dorsalis-pedis': { left: { grade: 'absent' }, right: { couldNotExamine: 'exoskeleton' } },
  },
  inspection: {
    leg: {
      right: { ...chronic.inspection?.leg?.right, colour: 'marbled' },
      left: { ...chronic.inspection?.leg?.left, temperature: 'icy' },
    },
  },
  pressures: { ...chronic.pressures, toe: { right: 'probe-lost', left: 84 } },
};

/** A record of the next major version, as text. */
export const laterRecord = JSON.stringify({ format: 'pulse-map/2', limbs: [] });

/** An invented patient whose left hand tingles when the arm is up. */
export const armTests: Examination = {
  ...emptyExamination(),
  bedside: {
    'hand-arch': {
      right: {
        method: 'modified',
        radial: { seconds: 6.2 },
        ulnar: { seconds: 22, returned: false },
        limit: 9,
      },
      left: { radial: { seconds: 3 }, ulnar: { seconds: 4 }, barbeau: 'B', limit: 9 },
    },
    'cold-provocation': {
      left: { water: 15, immersed: 60, white: 40, blue: 120, red: 400, rewarm: 24, limit: 20 },
    },
    scalene: { left: { toward: { before: 'normal', during: 'absent', symptoms: [], seconds: 30 } } },
    hyperabduction: { left: { before: 'normal', during: 'reduced', symptoms: ['tingling'], seconds: 60 } },
    costoclavicular: { left: { before: 'normal', during: 'normal', symptoms: [], seconds: 30 } },
    'arm-stress': {
      right: { seconds: 102, nothingFelt: true, limit: 180 },
      left: { seconds: 102, stopped: 'tingling', felt: { heaviness: 38, tingling: 51 }, limit: 180 },
    },
  },
};
