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
    /** A block of the subclavian before its branches: the vertebral artery of the other side feeds the arm. */
    steal: [
      [0.05, 0.65, 0.3],
      [0, 0.6, 0.4],
    ],
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
      normal: [0.004, 0.021, 0.975],
      reduced: [0.15, 0.65, 0.2],
      absent: [0.9, 0.085, 0.015],
      missing: 0,
      peripheral: true,
      source: ['judgement'],
    },
    ulnar: {
      normal: [0.05, 0.07, 0.88],
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
      normal: [0.002, 0.02, 0.978],
      reduced: [0.17, 0.6, 0.23],
      absent: [0.88, 0.1, 0.02],
      missing: 0,
      peripheral: false,
      source: ['brearley', 'mcgeeBoyko', 'judgement'],
    },
    popliteal: {
      normal: [0.05, 0.05, 0.9],
      reduced: [0.32, 0.46, 0.22],
      absent: [0.88, 0.09, 0.03],
      missing: 0,
      peripheral: true,
      source: ['judgement'],
    },
    'posterior-tibial': {
      normal: [0.08, 0.025, 0.895],
      reduced: [0.36, 0.45, 0.19],
      absent: [0.9, 0.08, 0.02],
      missing: 0.002,
      peripheral: true,
      source: ['armstrong', 'robertson', 'criqui', 'judgement'],
    },
    'dorsalis-pedis': {
      normal: [0.125, 0.035, 0.84],
      reduced: [0.38, 0.43, 0.19],
      absent: [0.91, 0.07, 0.02],
      missing: 0.022,
      peripheral: true,
      source: ['armstrong', 'robertson', 'judgement'],
    },
  },
  bounding: { share: [0.05, 0.01, 0.01], source: ['judgement'] },
  lowFlow: {
    weak: { central: 0.4, peripheral: 0.6 },
    gone: {
      central: [
        [0.12, 0.55, 0.33],
        [0.5, 0.4, 0.1],
        [0.92, 0.07, 0.01],
      ],
      peripheral: [
        [0.75, 0.2, 0.05],
        [0.9, 0.08, 0.02],
        [0.97, 0.02, 0.01],
      ],
    },
    share: 0.4,
    systolic: [
      [60, 150],
      [80, 60],
      [90, 20],
      [100, 4],
      [110, 1],
      [300, 0.3],
    ],
    shock: 100,
    coldLimbs: 12,
    cold: { weak: 0.25, gone: 0.5 },
    source: ['judgement'],
  },
  hardToFeel: {
    sites: {
      'dorsalis-pedis': { share: 0.142, normal: [0.8466, 0.06, 0.0934], reduced: [0.95, 0.03, 0.02] },
      'posterior-tibial': { share: 0.0835, normal: [0.85, 0.06, 0.09], reduced: [0.95, 0.03, 0.02] },
    },
    both: 0.026,
    source: ['armstrong', 'fitted'],
  },
  besideCuff: { power: 0.7, source: ['armstrong', 'judgement'] },
  earlier: { power: 0.3, source: ['judgement'] },
  doppler: {
    triphasic: [0.84, 0.1, 0.02],
    biphasic: [0.13, 0.27, 0.08],
    monophasic: [0.025, 0.58, 0.4],
    absent: [0.005, 0.05, 0.5],
    source: ['judgement'],
  },
  sound: {
    carries: 0.7,
    systolic: [0.0135, 0.55],
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
    cuffs: {
      thigh: [
        [1.12, 0.12],
        [0.8, 0.15],
        [0.5, 0.18],
      ],
      calf: [
        [1.08, 0.12],
        [0.72, 0.16],
        [0.45, 0.2],
      ],
      ankle: [
        [1.1, 0.11],
        [0.72, 0.16],
        [0.38, 0.2],
      ],
      toe: [
        [0.85, 0.15],
        [0.45, 0.15],
        [0.2, 0.14],
      ],
      arm: [
        [0.97, 0.035],
        [0.76, 0.11],
        [0.5, 0.2],
      ],
      wrist: [
        [1.02, 0.1],
        [0.74, 0.15],
        [0.4, 0.2],
      ],
      finger: [
        [0.9, 0.13],
        [0.55, 0.17],
        [0.25, 0.17],
      ],
    },
    blunder: 0.004,
    widest: 1.6,
    incompressible: 1.4,
    stiff: [0.06, 0.38, 0.38],
    fallsAfterExercise: [0.03, 0.75, 0.9],
    source: ['aha', 'suominen', 'tbi', 'clark', 'judgement'],
  },
  seen: {
    coldLeg: {
      groin: { at: 'external-iliac', pain: [0.01, 0.1, 0.25] },
      'mid-thigh': { at: 'common-femoral proximal', pain: [0.01, 0.1, 0.3] },
      knee: { at: 'common-femoral distal', pain: [0.015, 0.12, 0.35] },
      'mid-calf': { at: 'superficial-femoral', pain: [0.02, 0.15, 0.35] },
      ankle: { at: 'popliteal distal', pain: [0.05, 0.2, 0.4] },
      forefoot: { at: 'popliteal distal', pain: [0.06, 0.15, 0.25] },
      toes: { at: 'popliteal distal', pain: [0.06, 0.1, 0.15] },
    },
    coldArm: {
      shoulder: { at: 'subclavian proximal', pain: [0.01, 0.1, 0.2] },
      'mid-arm': { at: 'axillary proximal', pain: [0.01, 0.1, 0.3] },
      elbow: { at: 'axillary distal', pain: [0.01, 0.12, 0.35] },
      'mid-forearm': { at: 'brachial proximal', pain: [0.02, 0.15, 0.35] },
      wrist: { at: 'brachial distal', pain: [0.03, 0.2, 0.4] },
      hand: { at: 'brachial distal', pain: [0.05, 0.2, 0.4] },
      fingers: { at: 'brachial distal', pain: [0.08, 0.15, 0.2] },
    },
    spared: {
      'mid-calf': { at: 'external-iliac', pain: [0.95, 0.75, 0.45] },
      ankle: { at: 'common-femoral proximal', pain: [0.95, 0.7, 0.4] },
      forefoot: { at: 'common-femoral proximal', pain: [0.95, 0.7, 0.35] },
      toes: { at: 'common-femoral proximal', pain: [0.95, 0.65, 0.3] },
      'mid-arm': { at: 'subclavian proximal', pain: [0.95, 0.7, 0.4] },
      elbow: { at: 'subclavian proximal', pain: [0.95, 0.7, 0.4] },
      'mid-forearm': { at: 'axillary proximal', pain: [0.95, 0.7, 0.4] },
      wrist: { at: 'axillary proximal', pain: [0.95, 0.7, 0.4] },
      hand: { at: 'axillary proximal', pain: [0.95, 0.7, 0.4] },
      fingers: { at: 'axillary proximal', pain: [0.95, 0.7, 0.4] },
    },
    cold: [0.05, 0.2, 0.4],
    warm: [0.85, 0.75, 0.45],
    wound: [0.03, 0.1, 0.2],
    numb: [0.06, 0.15, 0.35],
    archWhite: [0.08, 0.4, 0.75],
    archFills: [0.92, 0.6, 0.25],
    source: ['khan', 'practice', 'judgement'],
  },
  onset: {
    unknown: -3,
    signs: {
      sudden: 3.5,
      gradual: -2.5,
      days: 2.5,
      weeks: -2,
      deficit: 1,
      claudication: -1.5,
      wound: -1,
      'embolic-source': 1.5,
      'sudden-mechanism': 3,
      'newly-weak': 1,
      'weak-as-before': -1.5,
    },
    source: ['judgement'],
  },
  aneurysm: { known: 8, felt: 25, lesions: 1, source: ['judgement'] },
  taken: { access: 0.3, cannula: 0.4, source: ['judgement'] },
  claudication: {
    leg: {
      none: { at: 'superficial-femoral', pain: [0.84, 0.5, 0.45] },
      buttock: { at: 'common-iliac', pain: [0.05, 0.3, 0.35] },
      thigh: { at: 'common-femoral proximal', pain: [0.06, 0.35, 0.4] },
      'calf-upper': { at: 'superficial-femoral', pain: [0.14, 0.45, 0.5] },
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
  graftPulse: { present: [0.95, 0.7, 0.06], absent: [0.05, 0.3, 0.94], source: ['judgement'] },
  steal: {
    flow: {
      forward: [0.985, 0.45, 0.2],
      alternating: [0.01, 0.3, 0.2],
      reversed: [0.005, 0.25, 0.6],
    },
    dizzy: [0.02, 0.12, 0.15],
    chestPain: [0.015, 0.05, 0.06],
    shared: 0.5,
    source: ['judgement'],
  },
};
