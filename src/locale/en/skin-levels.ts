import type { ARM_LEVELS, LEG_LEVELS } from '../../examination/index.js';

/** Where the skin of a limb changes from warm to cold. */
export const skinLevels: Readonly<Record<(typeof LEG_LEVELS)[number] | (typeof ARM_LEVELS)[number], string>> =
  {
    groin: 'groin',
    'mid-thigh': 'mid-thigh',
    knee: 'knee',
    'mid-calf': 'mid-calf',
    ankle: 'ankle',
    forefoot: 'forefoot',
    toes: 'toes',
    shoulder: 'shoulder',
    'mid-arm': 'mid-arm',
    elbow: 'elbow',
    'mid-forearm': 'mid-forearm',
    wrist: 'wrist',
    hand: 'hand',
    fingers: 'fingers',
  };
