import {
  type Level,
  type Limb,
  pieceFromKey,
  type PieceKey,
  stationsOf,
  vesselKey,
  type VesselKey,
} from '../../src/anatomy/index.js';
import { type Examination, pulseAt } from '../../src/examination/index.js';
import { COUNTS_FROM, type Generated } from '../../src/flow/index.js';
import { isWeak, rightLevels, SCORED_LIMBS, wayTo } from '../tools/limb-ways.js';

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

const WAYS = new Map(SCORED_LIMBS.map((limb) => [limb, wayTo(limb)]));

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
  return SCORED_LIMBS.map((limb) => {
    const truth = WAYS.get(limb)!.find((vessel) => diseased.has(vesselKey(vessel)));
    const grades = stationsOf(limb)
      .flat()
      .filter(({ side }) => side !== 'midline')
      .map((place) => pulseAt(examination, place)?.grade);
    const levels = truth ? rightLevels(truth, limb) : [];
    return { limb, truth: truth && vesselKey(truth), levels, weak: grades.some(isWeak) };
  });
}
