import {
  COMPRESSION_ASKS,
  type CompressionGround,
  type CompressionReading,
  DEFAULT_COMPRESSION_LIMITS,
} from '../../src/triage/index.js';

const GROUNDS: readonly CompressionGround[] = [
  { code: 'index-within', value: 0.95, from: 0.8, to: 1.3 },
  { code: 'index-below', value: 0.72, limit: 0.8 },
  { code: 'index-above', value: 1.35, limit: 1.3 },
  { code: 'toe-index-below', value: 0.55 },
  { code: 'pressure-within', measure: 'toe', mmHg: 80, limit: 60 },
  { code: 'pressure-below', measure: 'ankle', mmHg: 50, limit: 60 },
  { code: 'pressure-below', measure: 'toe', mmHg: 50, limit: 60 },
  { code: 'pressure-below', measure: 'tcpo2', mmHg: 15, limit: 20 },
  { code: 'incompressible' },
  { code: 'arms-doubted' },
  { code: 'graft' },
  { code: 'heart-failure' },
  { code: 'filament' },
  { code: 'feeling', value: 'normal' },
  { code: 'feeling', value: 'digits' },
  { code: 'feeling', value: 'beyond-digits' },
  { code: 'feeling', value: 'lost' },
  { code: 'thrombosis', signs: ['calf-wider'] },
  { code: 'flags', flags: ['chronic-limb-threat'] },
];

const EMPTY: CompressionReading = {
  side: 'left',
  verdict: 'not-known',
  grounds: [],
  missing: [],
  venous: [],
  limits: DEFAULT_COMPRESSION_LIMITS,
  ownLimits: false,
};

/** A reading for every ground, question and reason. */
export const COMPRESSED: readonly CompressionReading[] = [
  EMPTY,
  { ...EMPTY, ownLimits: true },
  ...GROUNDS.map((ground) => ({ ...EMPTY, grounds: [ground] })),
  ...COMPRESSION_ASKS.map((ask) => ({ ...EMPTY, missing: [ask] })),
  { ...EMPTY, venous: ['varices', 'pigment', 'oedema', 'ulcer'] },
];
