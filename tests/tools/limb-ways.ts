import {
  type ArteryId,
  type Level,
  levelOf,
  type Limb,
  LIMBS,
  pathTo,
  stationsOf,
  type Vessel,
  vesselKey,
  vesselOf,
  VESSELS,
} from '../../src/anatomy/index.js';
import type { Grade } from '../../src/examination/index.js';

/** The limbs whose lesions are scored. */
export const SCORED_LIMBS = LIMBS.filter(({ kind }) => kind !== 'head');

/** Everything on the way from the heart to the end of a limb, proximal first. */
export function wayTo(limb: Limb): Vessel[] {
  const way = new Set(
    stationsOf(limb)
      .flat()
      .flatMap((place) => pathTo(vesselOf(place)).map(vesselKey)),
  );
  const own: ArteryId = limb.kind === 'leg' ? 'common-femoral' : 'axillary';
  return VESSELS.filter((vessel) => {
    const path = pathTo(vessel).map(vesselKey);
    return way.has(vesselKey(vessel)) || path.includes(vesselKey({ artery: own, side: limb.side }));
  });
}

/** Levels that count as right for a lesion: one of the common femoral is right at either neighbouring level. */
export const rightLevels = ({ artery }: Vessel, { kind }: Limb): readonly Level[] =>
  artery === 'common-femoral' ? ['aorto-iliac', 'femoro-popliteal'] : [levelOf(artery, kind)];

export const isWeak = (grade: Grade | undefined): boolean => grade === 'absent' || grade === 'reduced';
