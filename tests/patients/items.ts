import {
  type ArteryId,
  type Level,
  levelOf,
  type Limb,
  LIMBS,
  pathTo,
  pieceFromKey,
  type PieceKey,
  stationsOf,
  type Vessel,
  vesselKey,
  type VesselKey,
  vesselOf,
  VESSELS,
} from '../../src/anatomy/index.js';
import { type Examination, type Grade, pulseAt } from '../../src/examination/index.js';
import { COUNTS_FROM, type Generated } from '../../src/flow/index.js';

/** One limb of a generated patient. */
export interface LimbItem {
  readonly limb: Limb;
  /** The first artery on the way from the heart that is diseased; none in a limb without arterial disease. */
  readonly truth: VesselKey | undefined;
  /** Levels that count as right. */
  readonly levels: readonly Level[];
  /** Whether at least one pulse of the limb is reported as not normal. */
  readonly weak: boolean;
}

const SCORED = LIMBS.filter(({ kind }) => kind !== 'head');
const isWeak = (grade: Grade | undefined): boolean => grade === 'absent' || grade === 'reduced';

/** Everything on the way from the heart to the end of a limb, proximal first. */
function wayTo(limb: Limb): Vessel[] {
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
const WAYS = new Map(SCORED.map((limb) => [limb, wayTo(limb)]));

const vesselNameOf = (piece: string): string => {
  const found = pieceFromKey(piece as PieceKey) ?? pieceFromKey(`${piece} proximal` as PieceKey);
  return found ? vesselKey(found) : piece;
};

/**
 * The limbs of a patient with their true answers. As disease counts a narrowing of half the diameter or more. In the published
 * cases, and so here, a lesion of the common femoral is right at either neighbouring level.
 */
export function itemsOf({ patient }: Generated, examination: Examination): LimbItem[] {
  const diseased = new Set(
    patient.lesions
      .filter(({ narrowing }) => narrowing >= COUNTS_FROM)
      .map(({ piece }) => vesselNameOf(piece)),
  );
  return SCORED.map((limb) => {
    const truth = WAYS.get(limb)!.find((vessel) => diseased.has(vesselKey(vessel)));
    const grades = stationsOf(limb)
      .flat()
      .filter(({ side }) => side !== 'midline')
      .map((place) => pulseAt(examination, place)?.grade);
    const levels: Level[] = !truth
      ? []
      : truth.artery === 'common-femoral'
        ? ['aorto-iliac', 'femoro-popliteal']
        : [levelOf(truth.artery, limb.kind)];
    return { limb, truth: truth && vesselKey(truth), levels, weak: grades.some(isWeak) };
  });
}
