import type { Laterality } from '../../anatomy/index.js';
import { placesFrom } from '../places.js';
import { SITES } from './sites.js';

const sides: Record<Laterality, string> = { right: 'right', left: 'left', midline: 'midline' };

/** A name with the patient's side. */
export const sided = (name: string, side: Laterality): string => `${sides[side]} ${name}`;

export const places = placesFrom({
  sites: SITES,
  sides,
  sideLetters: { right: 'R', left: 'L' },
  limbs: {
    'right leg': 'right leg',
    'left leg': 'left leg',
    'right arm': 'right arm',
    'left arm': 'left arm',
    'right head': 'right head and neck',
    'left head': 'left head and neck',
  },
  sided,
});
