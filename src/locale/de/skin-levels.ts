import type { ARM_LEVELS, LEG_LEVELS } from '../../examination/index.js';

/** Where the skin of a limb changes from warm to cold. */
export const skinLevels: Readonly<Record<(typeof LEG_LEVELS)[number] | (typeof ARM_LEVELS)[number], string>> =
  {
    groin: 'Leiste',
    'mid-thigh': 'Mitte Oberschenkel',
    knee: 'Knie',
    'mid-calf': 'Mitte Wade',
    ankle: 'Knöchel',
    forefoot: 'Vorfuß',
    toes: 'Zehen',
    shoulder: 'Schulter',
    'mid-arm': 'Mitte Oberarm',
    elbow: 'Ellenbogen',
    'mid-forearm': 'Mitte Unterarm',
    wrist: 'Handgelenk',
    hand: 'Hand',
    fingers: 'Finger',
  };
