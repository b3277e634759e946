/** Invented records in which everything that can be said of an examination is there to be said. */
import { PULSE_PLACES } from '../../src/anatomy/index.js';
import {
  type Bedside,
  emptyExamination,
  type Examination,
  type OutletPosition,
  type Pressures,
  restNormal,
  setBruit,
} from '../../src/examination/index.js';
import { examined, place } from './examinations.js';

const ABSENT_LEG = {
  'left popliteal': 'absent',
  'left posterior-tibial': 'absent',
  'left dorsalis-pedis': 'absent',
} as const;

/** Records that bring every kind of answer of both voices. */
export const READ: readonly Examination[] = [
  emptyExamination(),
  restNormal(emptyExamination()),
  restNormal(examined(ABSENT_LEG)),
  restNormal(examined({ ...ABSENT_LEG, 'left femoral': 'reduced' })),
  restNormal(examined({ 'left dorsalis-pedis': 'absent' })),
  restNormal(examined({ 'left posterior-tibial': 'reduced' })),
  restNormal(examined({ 'left femoral': 'absent', 'right femoral': 'absent' })),
  restNormal(
    examined({
      ...ABSENT_LEG,
      'right popliteal': 'absent',
      'right posterior-tibial': 'absent',
      'right dorsalis-pedis': 'absent',
      'left femoral': 'absent',
      'right femoral': 'absent',
    }),
  ),
  restNormal(examined({ 'right subclavian': 'absent', 'right carotid': 'reduced', 'left radial': 'absent' })),
  restNormal(
    examined({
      'right radial': 'absent',
      'right ulnar': 'absent',
      'left radial': 'absent',
      'left ulnar': 'absent',
    }),
  ),
  examined({ 'left posterior-tibial': 'absent', 'left dorsalis-pedis': 'absent' }),
  examined({ 'midline abdominal-aorta': 'absent' }),
  examined({ 'midline abdominal-aorta': 'normal' }),
  examined({ 'midline abdominal-aorta': 'normal', 'right femoral': 'bounding' }),
  examined({
    'right femoral': { couldNotExamine: 'dressing' },
    'midline abdominal-aorta': 'normal',
    'right popliteal': 'absent',
  }),
  examined({ 'left femoral': 'absent', 'left popliteal': 'reduced' }),
  restNormal(examined({ 'left femoral': 'absent', 'left popliteal': 'normal' })),
  examined(Object.fromEntries(PULSE_PLACES.map(({ side, site }) => [`${side} ${site}`, 'absent']))),
  examined(Object.fromEntries(PULSE_PLACES.map(({ side, site }) => [`${side} ${site}`, 'reduced']))),
];

export const PRESSURES: readonly Pressures[] = [
  {},
  { brachial: { right: 142 }, 'posterior-tibial': { left: 82, right: 'incompressible' } },
  {
    unit: 'kPa',
    brachial: { right: 150, left: 120 },
    radial: { right: 100 },
    ulnar: { right: 140 },
    finger: { left: 90 },
    'high-thigh': { left: 120, right: 180 },
    'low-thigh': { left: 110 },
    calf: { left: 70 },
    'posterior-tibial': { left: 60, right: 'dressing' },
    'dorsalis-pedis': { left: 50, right: 220 },
    toe: { left: 25, right: 90 },
    tcpo2: { left: 20 },
    afterExercise: { 'posterior-tibial': { left: 20 }, completed: false, minutes: 2.5, note: 'xyz' },
    note: 'xyz',
  },
  {
    brachial: { right: 150, left: 148 },
    'posterior-tibial': { left: 130, right: 150 },
    afterExercise: { 'posterior-tibial': { left: 80 }, brachial: { right: 160 }, completed: true },
  },
];

const position: OutletPosition = {
  before: 'normal',
  during: 'absent',
  symptoms: ['tingling', 'pain'],
  seconds: 12.5,
};

/** Each test with its results, right and left. */
export const BEDSIDE: readonly Bedside[] = [
  {
    elevation: {
      right: { pallor: true, angle: 12, seconds: 20 },
      left: { pallor: false, angle: 90, seconds: 60 },
    },
    'colour-return': { right: { seconds: 12.5 }, left: { seconds: 40, returned: false } },
    'dependent-rubor': { right: { rubor: true, seconds: 90 }, left: { rubor: false, seconds: 130 } },
    'venous-filling': { right: { seconds: 30 }, left: { seconds: 10, incompetentVeins: true } },
    'hand-arch': {
      right: { method: 'modified', radial: { seconds: 4 }, ulnar: { seconds: 30, returned: false } },
      left: { method: 'original', barbeau: 'D', barbeauReverse: 'A' },
    },
    'cold-provocation': {
      right: { water: 12, immersed: 60, white: 10, blue: 40, red: 90, rewarm: 25.5 },
      left: { noChange: true, rewarm: 12 },
    },
    scalene: {
      right: { toward: position, away: { before: 'normal', during: 'reduced', symptoms: [] } },
      left: { traction: position },
    },
    hyperabduction: { right: position, left: { before: 'normal', during: 'reduced', symptoms: [] } },
    costoclavicular: {
      right: { symptoms: ['heaviness'] },
      left: { before: 'normal', during: 'normal', symptoms: [] },
    },
    'arm-stress': {
      right: {
        seconds: 90,
        stopped: 'pain',
        felt: { tingling: 30, pain: 60 },
        before: 'normal',
        during: 'absent',
      },
      left: { seconds: 180, nothingFelt: true },
    },
  },
  {
    elevation: { right: { pallor: true, angle: 25 }, left: { pallor: true, angle: 50, seconds: 5 } },
    'colour-return': { right: { seconds: 11 }, left: { seconds: 60 } },
    'dependent-rubor': { right: { rubor: false }, left: { rubor: false, seconds: 20 } },
    'venous-filling': { right: { seconds: 17 }, left: { seconds: 50, filled: false } },
    'hand-arch': { right: { radial: { seconds: 12 } }, left: { barbeau: 'B', barbeauReverse: 'C' } },
    'cold-provocation': { right: { white: 10, blue: 40 }, left: { blue: 40 } },
    hyperabduction: { right: { before: 'absent', symptoms: ['fatigue'] }, left: { notDone: 'pain' } },
    'arm-stress': {
      right: { seconds: 100, stopped: 'fatigue' },
      left: { seconds: 90, stopped: 'other', felt: { heaviness: 20 } },
    },
  },
  {
    elevation: { right: { notDone: 'line-in-place', note: 'xyz' }, left: { pallor: false, angle: 60 } },
    'colour-return': { right: { seconds: 8 }, left: { seconds: 5, returned: false } },
    'venous-filling': { right: { seconds: 8 }, left: { seconds: 5, filled: false } },
    'cold-provocation': { left: { rewarm: 5 }, right: { rewarm: 60 } },
    'hand-arch': {
      left: { radial: { seconds: 4 }, ulnar: { seconds: 3 } },
      right: { ulnar: { seconds: 2, returned: false } },
    },
    'arm-stress': { right: { seconds: 100 }, left: { seconds: 180, felt: { pain: 100 } } },
  },
];

/** One examination with every part filled in. */
export const WHOLE: Examination = {
  ...setBruit(
    examined({
      'left femoral': {
        grade: 'bounding',
        increased: true,
        thrill: true,
        expansile: true,
        doppler: 'biphasic',
        note: 'xyz',
      },
      'right femoral': { couldNotExamine: 'cast', note: 'xyz' },
      'right dorsalis-pedis': 'absent',
      'right posterior-tibial': { grade: 'absent', doppler: 'absent' },
    }),
    place('left femoral'),
    { bruit: 'systolic' },
  ),
  onset: 'acute',
  history: {
    leg: {
      left: { symptom: 'claudication', distance: 150.5, severity: 'moderate', onset: 'gradual', note: 'xyz' },
      right: { symptom: 'rest-pain', onset: 'sudden', hours: 5 },
    },
    arm: { right: { symptom: 'none' }, left: { symptom: 'tissue-loss', hours: 72, severity: 'severe' } },
    rhythm: 'atrial-fibrillation',
    risks: ['hypertension', 'stroke'],
    operations: 'xyz',
  },
  inspection: {
    leg: {
      right: {
        colour: 'mottled',
        temperature: 'cold',
        temperatureLevel: 'mid-calf',
        refill: 4.5,
        hair: 'sparse',
        nails: 'brittle',
        muscle: 'wasted',
        oedema: 'pitting',
        ulcer: 'deep',
        ulcerPlace: 'heel',
        gangrene: 'wet',
        gangreneExtent: 'digits',
        infection: ['redness', 'pus'],
        rednessCm: 2.5,
        deepInfection: true,
        systemic: ['temperature', 'heart-rate'],
        movement: 'weak',
        sensation: 'beyond-digits',
        venousDoppler: 'inaudible',
        lymphNodes: 'enlarged',
        note: 'xyz',
      },
      left: {
        couldNotExamine: 'dressing',
        infection: [],
        systemic: [],
        sensation: 'lost',
        movement: 'paralysed',
      },
    },
    arm: {
      left: {
        colour: 'fixed-mottled',
        temperature: 'cool',
        temperatureLevel: 'fingers',
        sensation: 'digits',
      },
    },
  },
  bedside: BEDSIDE[0] as Bedside,
  pressures: PRESSURES[2] as Pressures,
  staging: {
    leg: { left: { acute: { stage: 'IIb', derived: 'IIa', why: 'xyz' }, rutherford: { stage: 3 } } },
    arm: { right: { acute: { stage: 'I' } } },
  },
};
