import type { ArteryId } from './arteries.js';
import type { LimbKind } from './limbs.js';

/** Levels of arterial disease, as surgeons name them. */
export const LEVELS = [
  'central',
  'aorto-iliac',
  'femoro-popliteal',
  'infrapopliteal',
  'arm-inflow',
  'axillo-brachial',
  'forearm-hand',
  'carotid',
] as const;
export type Level = (typeof LEVELS)[number];

/** The level each artery belongs to; the arch counts as inflow when an arm or the head is asked about. */
const LEVEL_OF: Record<ArteryId, Level> = {
  'ascending-aorta': 'central',
  'aortic-arch': 'central',
  'thoracic-aorta': 'central',
  'suprarenal-aorta': 'central',
  renal: 'central',
  'infrarenal-aorta': 'aorto-iliac',
  'common-iliac': 'aorto-iliac',
  'internal-iliac': 'aorto-iliac',
  'external-iliac': 'aorto-iliac',
  'common-femoral': 'femoro-popliteal',
  'superficial-femoral': 'femoro-popliteal',
  'deep-femoral': 'femoro-popliteal',
  popliteal: 'femoro-popliteal',
  'anterior-tibial': 'infrapopliteal',
  'tibioperoneal-trunk': 'infrapopliteal',
  'posterior-tibial': 'infrapopliteal',
  peroneal: 'infrapopliteal',
  'dorsalis-pedis': 'infrapopliteal',
  'plantar-arch': 'infrapopliteal',
  brachiocephalic: 'arm-inflow',
  subclavian: 'arm-inflow',
  'internal-thoracic': 'arm-inflow',
  axillary: 'axillo-brachial',
  brachial: 'axillo-brachial',
  radial: 'forearm-hand',
  ulnar: 'forearm-hand',
  'deep-palmar-arch': 'forearm-hand',
  'superficial-palmar-arch': 'forearm-hand',
  'common-carotid': 'carotid',
  'internal-carotid': 'carotid',
  'external-carotid': 'carotid',
  'superficial-temporal': 'carotid',
  vertebral: 'carotid',
};

/**
 * The level an artery belongs to, seen from a limb: for a leg the arch is central, for an arm or the head it is inflow.
 * Common practice (three levels of a leg, three of an arm), no source.
 */
export function levelOf(artery: ArteryId, kind: LimbKind): Level {
  const level = LEVEL_OF[artery];
  return level === 'central' && kind !== 'leg' ? 'arm-inflow' : level;
}
