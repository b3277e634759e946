import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fedPieces,
  feedingPiece,
  leavesAt,
  parentVessel,
  type Piece,
  pieceAbove,
  pieceFromKey,
  PIECES,
  piecesOf,
  piecesTo,
  placeKey,
  PULSE_PLACES,
  siteDefinition,
  vesselKey,
  vesselOf,
  VESSELS,
} from '../../../src/anatomy/index.js';

const anyPiece = fc.constantFrom(...PIECES);

describe('pieces of artery', () => {
  it('cover each artery from end to end without gap or overlap', () => {
    for (const vessel of VESSELS) {
      const own = piecesOf(vessel);
      expect(own[0]?.from).toBe(0);
      expect(own.at(-1)?.to).toBe(1);
      for (const [i, piece] of own.entries()) {
        expect(piece.to).toBeGreaterThan(piece.from);
        if (i) expect(piece.from).toBe(own[i - 1]?.to);
      }
    }
  });

  it('are cut at every pulse place and nowhere else', () => {
    expect(PIECES.length).toBe(VESSELS.length + PULSE_PLACES.length);
    const ends = PIECES.filter((piece) => piece.endsAt).map((piece) => `${piece.side} ${piece.endsAt}`);
    expect(new Set(ends)).toEqual(new Set(PULSE_PLACES.map(placeKey)));
    for (const place of PULSE_PLACES) {
      const above = pieceAbove(place);
      expect(above.to).toBe(siteDefinition(place.site).at);
      expect(vesselKey(above)).toBe(vesselKey(vesselOf(place)));
    }
  });

  it('have keys that find them, and no others do', () => {
    for (const piece of PIECES) expect(pieceFromKey(piece.key)).toBe(piece);
    expect(new Set(PIECES.map((piece) => piece.key)).size).toBe(PIECES.length);
    for (const key of ['left knee', 'left popliteal', 'midline popliteal proximal', '__proto__']) {
      expect(pieceFromKey(key)).toBeUndefined();
    }
  });

  it('refuse a place that carries no pulse', () => {
    expect(() => pieceAbove({ site: 'femoral', side: 'midline' })).toThrow(/midline femoral/);
  });

  it('are fed by the piece before them on the artery, or by that of the parent artery where they leave it', () => {
    fc.assert(
      fc.property(anyPiece, (piece) => {
        const feeder = feedingPiece(piece);
        if (!feeder) return piece.key === 'midline ascending-aorta';
        if (vesselKey(feeder) === vesselKey(piece)) return feeder.to === piece.from;
        const parent = parentVessel(piece);
        return (
          parent !== undefined &&
          vesselKey(parent) === vesselKey(feeder) &&
          feeder.to >= leavesAt(piece) &&
          feeder.from < leavesAt(piece) &&
          piece.from === 0
        );
      }),
    );
  });

  it('feed exactly those pieces that they feed', () => {
    fc.assert(
      fc.property(anyPiece, anyPiece, (a, b) => fedPieces(a).includes(b) === (feedingPiece(b) === a)),
      { numRuns: 2000 },
    );
    expect(PIECES.flatMap(fedPieces).length).toBe(PIECES.length - 1);
  });

  it('stand after the piece that feeds them', () => {
    const rank = (piece: Piece | undefined) => (piece ? PIECES.indexOf(piece) : -1);
    for (const piece of PIECES) expect(rank(feedingPiece(piece))).toBeLessThan(rank(piece));
  });

  it('are reached from the heart by an unbroken chain', () => {
    fc.assert(
      fc.property(anyPiece, (piece) => {
        const path = piecesTo(piece);
        expect(path[0]?.key).toBe('midline ascending-aorta');
        expect(path.at(-1)).toBe(piece);
        for (let i = 1; i < path.length; i += 1) expect(feedingPiece(path[i] as Piece)).toBe(path[i - 1]);
      }),
    );
  });
});
