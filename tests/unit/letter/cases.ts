/** Twelve invented examinations; nobody in them is real. Each is read as a letter in `letters/`. */
import { at, examiner, type LetterCase, legs, record } from './case.js';
import { OTHER_CASES } from './cases-other.js';

export type { LetterCase };
export const CASES: readonly LetterCase[] = [
  {
    name: '01-claudication',
    subject: 'Marta Lindqvist',
    record: record(
      {
        'left popliteal': 'absent',
        'left posterior-tibial': 'absent',
        'left dorsalis-pedis': 'absent',
        'midline abdominal-aorta': { couldNotExamine: 'other', note: 'abdominal girth' },
      },
      {
        examinedAt: at,
        examiner,
        onset: 'chronic',
        bruits: {
          femoral: { left: { bruit: 'systolic' }, right: { bruit: 'none' } },
          'abdominal-aorta': { midline: { bruit: 'none' } },
        },
        history: {
          ...legs(
            { symptom: 'none' },
            { symptom: 'claudication', distance: 180, severity: 'moderate', onset: 'gradual', hours: 4320 },
          ),
          rhythm: 'regular',
          risks: ['hypertension', 'high-cholesterol'],
        },
        context: {
          ageBand: '60-79',
          smoking: 'current',
          diabetes: false,
          medicines: ['antiplatelet', 'statin'],
          legClaudication: { left: 'calf-upper' },
        },
        inspection: legs(
          { colour: 'normal', temperature: 'warm', ulcer: 'none' },
          {
            colour: 'normal',
            temperature: 'cool',
            temperatureLevel: 'ankle',
            hair: 'sparse',
            ulcer: 'none',
            gangrene: 'none',
            movement: 'normal',
            sensation: 'normal',
          },
        ),
        bedside: {
          elevation: { left: { pallor: true, angle: 50, seconds: 40 } },
          'colour-return': { left: { seconds: 24 } },
        },
        pressures: {
          brachial: { right: 142, left: 138 },
          'posterior-tibial': { right: 148, left: 88 },
          'dorsalis-pedis': { right: 146, left: 84 },
          afterExercise: {
            brachial: { right: 150 },
            'posterior-tibial': { right: 150, left: 54 },
            completed: true,
            minutes: 5,
          },
        },
      },
      'rest-normal',
    ),
  },
  {
    name: '02-acute-embolus',
    subject: 'Chidi Okafor',
    record: record(
      {
        'right femoral': 'normal',
        'right popliteal': 'absent',
        'right posterior-tibial': { grade: 'absent', doppler: 'absent' },
        'right dorsalis-pedis': { grade: 'absent', doppler: 'absent' },
        'left femoral': 'normal',
        'left popliteal': 'normal',
        'left posterior-tibial': 'normal',
        'left dorsalis-pedis': 'normal',
        'left radial': 'normal',
        'right radial': 'normal',
      },
      {
        examinedAt: '2026-11-02T21:10Z',
        examiner,
        onset: 'acute',
        history: {
          leg: {
            right: {
              symptom: 'rest-pain',
              onset: 'sudden',
              suddenPain: true,
              onsetAt: '2026-11-02T18:30Z',
              hours: 2.5,
            },
            left: { symptom: 'none' },
          },
          rhythm: 'atrial-fibrillation',
          risks: ['anticoagulant-stopped'],
        },
        context: { ageBand: '80-over', medicines: ['anticoagulant'] },
        inspection: legs(
          {
            colour: 'pale',
            temperature: 'cold',
            temperatureLevel: 'mid-calf',
            movement: 'weak',
            sensation: 'beyond-digits',
            muscle: 'normal',
            venousDoppler: 'audible',
          },
          { colour: 'normal', temperature: 'warm', movement: 'normal', sensation: 'normal' },
        ),
        calls: [{ team: 'vascular', at: '2026-11-02T21:22Z', limb: 'right leg', whom: 'Dr Marsh' }],
      },
    ),
  },
  {
    name: '03-diabetic-foot',
    subject: 'Elif Yılmaz',
    record: record(
      {
        'left femoral': 'normal',
        'left popliteal': 'normal',
        'left posterior-tibial': { grade: 'absent', doppler: 'monophasic' },
        'left dorsalis-pedis': { grade: 'absent', doppler: 'monophasic' },
        'right femoral': 'normal',
        'right popliteal': 'normal',
        'right posterior-tibial': 'reduced',
        'right dorsalis-pedis': 'reduced',
      },
      {
        examinedAt: at,
        examiner,
        onset: 'chronic',
        history: {
          leg: {
            left: { symptom: 'tissue-loss', onset: 'gradual', hours: 1008 },
            right: { symptom: 'none' },
          },
          risks: ['kidney-disease'],
        },
        context: { ageBand: '60-79', diabetes: true, smoking: 'past' },
        inspection: legs(
          { ulcer: 'none', gangrene: 'none', monofilament: 'not-felt' },
          {
            colour: 'red',
            ulcer: 'deep',
            ulcerPlace: 'forefoot',
            ulcerCause: 'mixed',
            ulcerSizeMm: 22,
            gangrene: 'dry',
            gangreneExtent: 'digits',
            infection: ['redness', 'swelling'],
            rednessCm: 1.5,
            deepInfection: false,
            probeToBone: false,
            systemic: [],
            monofilament: 'not-felt',
            sensation: 'digits',
            movement: 'normal',
          },
        ),
        pressures: {
          brachial: { right: 150, left: 148 },
          'posterior-tibial': { left: 'incompressible', right: 'incompressible' },
          'dorsalis-pedis': { left: 'incompressible', right: 190 },
          toe: { left: 28, right: 70 },
        },
      },
    ),
  },
  {
    name: '04-aorto-iliac',
    subject: 'Per Andersen',
    record: record(
      {
        'midline abdominal-aorta': 'normal',
        'right femoral': 'absent',
        'left femoral': 'reduced',
        'right popliteal': 'absent',
        'left popliteal': 'reduced',
        'right posterior-tibial': 'absent',
        'left posterior-tibial': 'absent',
        'right dorsalis-pedis': 'absent',
        'left dorsalis-pedis': 'reduced',
      },
      {
        examinedAt: at,
        examiner,
        onset: 'chronic',
        bruits: {
          iliac: { left: { bruit: 'systolic' } },
          'abdominal-aorta': { midline: { bruit: 'systolic' } },
        },
        history: legs(
          { symptom: 'claudication', distance: 80, severity: 'severe' },
          { symptom: 'claudication', distance: 150, severity: 'moderate' },
        ),
        context: {
          ageBand: '40-59',
          smoking: 'current',
          legClaudication: { right: 'buttock', left: 'thigh' },
          revascularisations: [],
        },
        pressures: {
          brachial: { right: 130, left: 132 },
          'posterior-tibial': { right: 60, left: 84 },
          'dorsalis-pedis': { right: 58, left: 90 },
        },
      },
      'rest-normal',
    ),
  },
  {
    name: '05-nothing-wrong',
    subject: 'Jonas Weber',
    record: record(
      {},
      {
        examinedAt: at,
        examiner,
        history: { ...legs({ symptom: 'none' }, { symptom: 'none' }), rhythm: 'regular', risks: [] },
        context: { ageBand: '40-59', smoking: 'never', diabetes: false },
        bruits: { carotid: { right: { bruit: 'none' }, left: { bruit: 'none' } } },
        pressures: {
          brachial: { right: 128, left: 126 },
          'posterior-tibial': { right: 140, left: 138 },
        },
      },
      'rest-normal',
    ),
  },
  {
    name: '06-arm-inflow',
    subject: 'Ines Caldeira',
    record: record(
      {
        'left subclavian': { grade: 'reduced', thrill: true },
        'left axillary': 'reduced',
        'left brachial': 'reduced',
        'left radial': 'reduced',
        'left ulnar': 'reduced',
        'right dorsalis-pedis': { couldNotExamine: 'dressing' },
      },
      {
        examinedAt: at,
        examiner,
        onset: 'chronic',
        bruits: { subclavian: { left: { bruit: 'systolic' }, right: { bruit: 'none' } } },
        delays: { radioRadial: 'left-later' },
        history: { arm: { left: { symptom: 'claudication', dizzyOnUse: true }, right: { symptom: 'none' } } },
        context: { ageBand: '40-59', smoking: 'current', armClaudication: { left: 'arm' } },
        inspection: { arm: { left: { colour: 'normal', temperature: 'cool', vertebralFlow: 'reversed' } } },
        pressures: { brachial: { right: 146, left: 104 } },
      },
      'rest-normal',
    ),
  },
  ...OTHER_CASES,
];
