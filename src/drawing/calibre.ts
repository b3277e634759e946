import type { ArteryId } from '../anatomy/index.js';

/**
 * Inner radius of each artery in millimetres, at its origin and at its end, of one idealised adult.
 * Source: ADAN56 network (Boileau E et al., Int J Numer Method Biomed Eng 2015;31(10):e02732, doi:10.1002/cnm.2732; left
 * side), rounded to 0.1 mm. Superficial temporal, internal thoracic, dorsalis pedis, peroneal and the arches are in none of the usual network
 * models at this detail and are drawn schematically (common practice, no source).
 */
export const RADII_MM: Readonly<Record<ArteryId, readonly [origin: number, end: number]>> = {
  'ascending-aorta': [16, 14.5],
  'aortic-arch': [13, 10.6],
  brachiocephalic: [6.7, 6.2],
  'common-carotid': [4.5, 3.3],
  'internal-carotid': [2.8, 2.8],
  'external-carotid': [2.3, 2.3],
  'superficial-temporal': [1.3, 0.9],
  subclavian: [4.9, 2.3],
  vertebral: [1.3, 1.3],
  'internal-thoracic': [1.1, 0.8],
  axillary: [2.3, 2.1],
  brachial: [2.1, 1.8],
  radial: [1.4, 1.4],
  ulnar: [1.4, 1.4],
  'deep-palmar-arch': [1, 0.7],
  'superficial-palmar-arch': [1, 0.7],
  'thoracic-aorta': [10.6, 7.5],
  'suprarenal-aorta': [7.5, 7.3],
  renal: [2.7, 2.7],
  'infrarenal-aorta': [7.1, 5.9],
  'common-iliac': [4.5, 4.1],
  'internal-iliac': [2.8, 2.8],
  'external-iliac': [3.4, 3.2],
  'common-femoral': [3.2, 3.1],
  'deep-femoral': [2.1, 2.1],
  'superficial-femoral': [3.1, 2.7],
  popliteal: [2.7, 2.3],
  'anterior-tibial': [1.2, 1.2],
  'dorsalis-pedis': [1.2, 0.8],
  'tibioperoneal-trunk': [2.3, 2.3],
  'posterior-tibial': [1.2, 1.2],
  peroneal: [1.1, 0.8],
  'plantar-arch': [0.9, 0.6],
};

/** The law of drawn widths: a power of the calibre, so that small arteries stay visible beside the aorta. */
export const CALIBRE_LAW = { units: 2.9, power: 0.6 } as const;

/** Half the width at which an artery of this inner radius is drawn, in figure units. */
export function drawnRadius(mm: number): number {
  return CALIBRE_LAW.units * mm ** CALIBRE_LAW.power;
}
