import type { Tables } from './types.js';

/** How a pulse is handed on, and how findings report it. */
export const findingTables: Omit<
  Tables,
  | 'causes'
  | 'rightShare'
  | 'age'
  | 'mechanism'
  | 'history'
  | 'smoking'
  | 'diabetes'
  | 'injury'
  | 'revascularisation'
> = {
  passage: {
    acute: {
      narrowed: [
        [0.35, 0.57, 0.08],
        [0, 0.6, 0.4],
      ],
      blocked: [
        [0.03, 0.3, 0.67],
        [0, 0.2, 0.8],
      ],
      source: ['fitted'],
    },
    chronic: {
      narrowed: [
        [0.5, 0.44, 0.06],
        [0, 0.65, 0.35],
      ],
      blocked: [
        [0.04, 0.36, 0.6],
        [0, 0.3, 0.7],
      ],
      source: ['mcgeeBoyko', 'judgement'],
    },
    central: [
      [0.5, 0.495, 0.005],
      [0, 0.9, 0.1],
    ],
  },
  palpation: {
    'superficial-temporal': {
      normal: [0.05, 0.06, 0.89],
      reduced: [0.3, 0.5, 0.2],
      absent: [0.9, 0.07, 0.03],
      missing: 0,
      peripheral: true,
      source: ['judgement'],
    },
    carotid: {
      normal: [0.01, 0.03, 0.96],
      reduced: [0.15, 0.6, 0.25],
      absent: [0.88, 0.09, 0.03],
      missing: 0,
      peripheral: false,
      source: ['judgement'],
    },
    subclavian: {
      normal: [0.07, 0.08, 0.85],
      reduced: [0.25, 0.5, 0.25],
      absent: [0.88, 0.08, 0.04],
      missing: 0,
      peripheral: false,
      source: ['judgement'],
    },
    axillary: {
      normal: [0.05, 0.06, 0.89],
      reduced: [0.25, 0.53, 0.22],
      absent: [0.88, 0.09, 0.03],
      missing: 0,
      peripheral: false,
      source: ['judgement'],
    },
    brachial: {
      normal: [0.02, 0.03, 0.95],
      reduced: [0.15, 0.63, 0.22],
      absent: [0.9, 0.08, 0.02],
      missing: 0,
      peripheral: false,
      source: ['judgement'],
    },
    radial: {
      normal: [0.007, 0.023, 0.97],
      reduced: [0.15, 0.65, 0.2],
      absent: [0.9, 0.085, 0.015],
      missing: 0,
      peripheral: true,
      source: ['judgement'],
    },
    ulnar: {
      normal: [0.09, 0.09, 0.82],
      reduced: [0.35, 0.48, 0.17],
      absent: [0.91, 0.07, 0.02],
      missing: 0,
      peripheral: true,
      source: ['judgement'],
    },
    'abdominal-aorta': {
      normal: [0.2, 0.2, 0.6],
      reduced: [0.45, 0.4, 0.15],
      absent: [0.92, 0.06, 0.02],
      missing: 0,
      peripheral: false,
      source: ['judgement'],
    },
    femoral: {
      normal: [0.01, 0.02, 0.97],
      reduced: [0.12, 0.66, 0.22],
      absent: [0.88, 0.1, 0.02],
      missing: 0,
      peripheral: false,
      source: ['brearley', 'mcgeeBoyko', 'judgement'],
    },
    popliteal: {
      normal: [0.05, 0.05, 0.9],
      reduced: [0.35, 0.5, 0.15],
      absent: [0.88, 0.09, 0.03],
      missing: 0,
      peripheral: true,
      source: ['judgement'],
    },
    'posterior-tibial': {
      normal: [0.08, 0.025, 0.895],
      reduced: [0.38, 0.5, 0.12],
      absent: [0.9, 0.08, 0.02],
      missing: 0.002,
      peripheral: true,
      source: ['armstrong', 'robertson', 'criqui', 'judgement'],
    },
    'dorsalis-pedis': {
      normal: [0.125, 0.035, 0.84],
      reduced: [0.4, 0.48, 0.12],
      absent: [0.91, 0.07, 0.02],
      missing: 0.022,
      peripheral: true,
      source: ['armstrong', 'robertson', 'judgement'],
    },
  },
  bounding: { share: [0.05, 0.01, 0.01], source: ['judgement'] },
  lowFlow: {
    central: 0.4,
    peripheral: 0.6,
    source: ['judgement'],
  },
  doppler: {
    triphasic: [0.84, 0.1, 0.02],
    biphasic: [0.13, 0.27, 0.08],
    monophasic: [0.025, 0.58, 0.4],
    absent: [0.005, 0.05, 0.5],
    source: ['judgement'],
  },
  sound: {
    carries: 0.7,
    systolic: [0.015, 0.55],
    carotid: [0.165, 0.53],
    continuous: [0.001, 0.08],
    thrill: [0.002, 0.06],
    heardAt: {
      carotid: 'internal-carotid',
      subclavian: 'subclavian distal',
      axillary: 'axillary distal',
      'abdominal-aorta': 'infrarenal-aorta distal',
      renal: 'renal',
      iliac: 'external-iliac',
      femoral: 'common-femoral distal',
      'adductor-canal': 'superficial-femoral',
      popliteal: 'popliteal distal',
    },
    source: ['mcgeeBoyko', 'khan', 'mccolgan', 'judgement'],
  },
  index: {
    limits: [0.4, 0.9],
    bands: [
      [0.005, 0.12, 0.5],
      [0.055, 0.7, 0.46],
      [0.94, 0.18, 0.04],
    ],
    incompressible: 1.4,
    source: ['aha', 'judgement'],
  },
  claudication: {
    leg: {
      none: { at: 'superficial-femoral', pain: [0.88, 0.5, 0.45] },
      buttock: { at: 'common-iliac', pain: [0.05, 0.3, 0.35] },
      thigh: { at: 'common-femoral proximal', pain: [0.06, 0.35, 0.4] },
      'calf-upper': { at: 'superficial-femoral', pain: [0.1, 0.45, 0.5] },
      'calf-lower': { at: 'popliteal proximal', pain: [0.06, 0.25, 0.3] },
      foot: { at: 'popliteal distal', pain: [0.06, 0.2, 0.25] },
    },
    arm: {
      none: { at: 'axillary proximal', pain: [0.95, 0.6, 0.6] },
      arm: { at: 'axillary proximal', pain: [0.05, 0.4, 0.4] },
    },
    source: ['khan', 'hirsch', 'judgement'],
  },
  delay: { later: [0.03, 0.45, 0.5], none: [0.97, 0.55, 0.5], source: ['judgement'] },
};
