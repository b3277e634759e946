import {
  levelOf,
  type Piece,
  PIECES,
  piecesOf,
  piecesTo,
  type Vessel,
  vesselKey,
} from '../../anatomy/index.js';
import type { Context, RevascularisedArtery } from '../../examination/index.js';
import { indexOf } from './tree.js';

/**
 * The piece that stands for a graft that leaves the course of its artery: where it lands, the groin for one that passes the iliac arteries
 * by, else the beginning of the artery it stands in for. Missing where that side has no such artery.
 */
export function landingOf({ artery, side }: RevascularisedArtery): Piece | undefined {
  const iliac = levelOf(artery, 'leg') === 'aorto-iliac' && side !== 'midline';
  const vessel: Vessel = { artery: iliac ? 'common-femoral' : artery, side };
  return piecesOf(vessel)[0];
}

/** What grafts and stents do to the priors of one patient's pieces. */
export interface Grafted {
  /** Pieces that carry a repair, with the share of its risk that lies on each. */
  readonly repaired: readonly {
    readonly piece: number;
    readonly kind: RevascularisedArtery['kind'];
    readonly share: number;
  }[];
  /** Own arteries of the side that the blood passes by: their state decides nothing beyond the graft, and nothing is read of it. */
  readonly passed: readonly number[];
}

export function graftedPieces(context: Context | undefined): Grafted {
  const all = context?.revascularisations ?? [];
  const routed = all.filter(({ route }) => route !== undefined);
  return {
    repaired: all.flatMap((graft) => {
      if (graft.route) {
        const landing = landingOf(graft);
        return landing ? [{ piece: indexOf(landing.key), kind: graft.kind, share: 1 }] : [];
      }
      const key = vesselKey(graft);
      return PIECES.flatMap((piece, i) =>
        vesselKey(piece) === key ? [{ piece: i, kind: graft.kind, share: piece.to - piece.from }] : [],
      );
    }),
    passed: routed.flatMap((graft) => {
      const landing = landingOf(graft);
      if (!landing) return [];
      return piecesTo(landing)
        .filter((piece) => piece !== landing && piece.side === graft.side)
        .map(({ key }) => indexOf(key));
    }),
  };
}
