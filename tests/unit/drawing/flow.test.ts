import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Piece,
  pieceAbove,
  type PieceKey,
  piecesTo,
  type Place,
  type PulseSiteId,
} from '../../../src/anatomy/index.js';
import {
  courseOf,
  drawnFlow,
  type Flow,
  type LesionMark,
  marksOf,
  positionOf,
  sampleAt,
} from '../../../src/drawing/index.js';
import { emptyExamination, type Examination, restNormal } from '../../../src/examination/index.js';
import { readByRule, readExamination } from '../../../src/localisation/index.js';
import { anyExamination } from '../../tools/arbitraries.js';
import { examined, graded, outwardFrom, place } from '../../tools/examinations.js';

/** The marks of a record and the flow drawn with them. */
function drawn(examination: Examination) {
  const marks = marksOf(readExamination(examination));
  return { marks, flow: drawnFlow(examination, marks) };
}

/** The flow at the far end of a piece. */
function flowAt(examination: Examination, key: PieceKey): Flow | undefined {
  return drawn(examination)
    .flow.filter(({ piece }) => piece.key === key)
    .at(-1)?.flow;
}

const LEFT_SFA = restNormal(examined(graded(outwardFrom('left popliteal'), 'absent')));
const BOTH_FEMORALS = restNormal(
  examined(graded(['right femoral', 'left femoral'].flatMap(outwardFrom), 'absent')),
);
const WEAK_ARM = restNormal(examined(graded(outwardFrom('left subclavian'), 'reduced')));
const ANTERIOR_TIBIAL = restNormal(examined({ 'right dorsalis-pedis': 'absent' }));

describe('drawnFlow', () => {
  it('is full everywhere while nothing is recorded, and while all is normal', () => {
    for (const examination of [emptyExamination(), restNormal(emptyExamination())]) {
      expect(new Set(drawn(examination).flow.map(({ flow }) => flow))).toEqual(new Set(['full']));
    }
  });

  it('stops at a block of the superficial femoral, on its side only', () => {
    expect(flowAt(LEFT_SFA, 'left common-femoral distal')).toBe('full');
    expect(flowAt(LEFT_SFA, 'left deep-femoral')).toBe('full');
    expect(flowAt(LEFT_SFA, 'left popliteal distal')).toBe('none');
    expect(flowAt(LEFT_SFA, 'left tibioperoneal-trunk')).toBe('none');
    expect(flowAt(LEFT_SFA, 'left dorsalis-pedis distal')).toBe('none');
    expect(flowAt(LEFT_SFA, 'right popliteal distal')).toBe('full');
    expect(flowAt(LEFT_SFA, 'left radial distal')).toBe('full');
  });

  it('stops in both legs and in nothing above when no femoral is felt', () => {
    for (const side of ['right', 'left'] as const) {
      expect(flowAt(BOTH_FEMORALS, `${side} common-femoral distal`)).toBe('none');
      expect(flowAt(BOTH_FEMORALS, `${side} renal`)).toBe('full');
    }
    expect(flowAt(BOTH_FEMORALS, 'midline infrarenal-aorta proximal')).toBe('full');
  });

  it('is reduced down a whole arm behind a narrowing of its inflow', () => {
    expect(flowAt(WEAK_ARM, 'left subclavian distal')).toBe('reduced');
    expect(flowAt(WEAK_ARM, 'left radial distal')).toBe('reduced');
    expect(flowAt(WEAK_ARM, 'left common-carotid distal')).toBe('full');
    expect(flowAt(WEAK_ARM, 'right radial distal')).toBe('full');
  });

  it('leaves the foot its other artery when one is blocked alone', () => {
    expect(flowAt(ANTERIOR_TIBIAL, 'right dorsalis-pedis proximal')).toBe('none');
    expect(flowAt(ANTERIOR_TIBIAL, 'right posterior-tibial distal')).toBe('full');
    expect(flowAt(ANTERIOR_TIBIAL, 'right popliteal distal')).toBe('full');
  });

  it('is what is felt at every graded site, whatever else the record says', () => {
    const expected = { absent: 'none', reduced: 'reduced', normal: 'full', bounding: 'full' } as const;
    fc.assert(
      fc.property(anyExamination, (examination) => {
        const { flow } = drawn(examination);
        for (const [site, sides] of Object.entries(examination.pulses ?? {})) {
          for (const [side, finding] of Object.entries(sides ?? {})) {
            const { grade } = finding as { grade?: keyof typeof expected };
            if (!grade) continue;
            const piece = pieceAbove({ site, side } as Place<PulseSiteId>);
            const felt = flow.filter((part) => part.piece === piece).at(-1)?.flow;
            // An arch that another artery joins may fill from there beyond the site, never at it.
            expect(felt, `${side} ${site}`).toBe(expected[grade]);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it('covers every artery once, without gap or overlap', () => {
    fc.assert(
      fc.property(anyExamination, (examination) => {
        const byPiece = new Map<Piece, { from: number; to: number }[]>();
        for (const { piece, from, to } of drawn(examination).flow) {
          byPiece.set(piece, [...(byPiece.get(piece) ?? []), { from, to }]);
        }
        for (const [piece, parts] of byPiece) {
          expect(parts[0]?.from).toBe(piece.from);
          expect(parts.at(-1)?.to).toBe(piece.to);
          parts.slice(1).forEach(({ from }, i) => expect(from).toBe(parts[i]?.to));
        }
      }),
      { numRuns: 60 },
    );
  });
});

/** How far along the way from the heart to a place a mark lies, in pieces; undefined when off the way. */
function onTheWay({ piece }: LesionMark, to: Place<PulseSiteId>): number | undefined {
  const at = piecesTo(pieceAbove(to)).indexOf(piece);
  return at < 0 ? undefined : at;
}

describe('marksOf', () => {
  const bounded: readonly (readonly [string, Examination, above: string, below: string])[] = [
    ['left superficial femoral', LEFT_SFA, 'left femoral', 'left popliteal'],
    ['right anterior tibial', ANTERIOR_TIBIAL, 'right popliteal', 'right dorsalis-pedis'],
    [
      'left iliac',
      restNormal(examined(graded(outwardFrom('left femoral'), 'absent'))),
      'midline abdominal-aorta',
      'left femoral',
    ],
    [
      'right brachial',
      restNormal(examined(graded(outwardFrom('right brachial'), 'absent'))),
      'right axillary',
      'right brachial',
    ],
  ];

  it.each(bounded)(
    'puts the mark of a block (%s) between the sites that bound it',
    (_, examination, above, below) => {
      const limb = drawn(examination).marks.filter(({ kind }) => kind === 'block');
      expect(limb).toHaveLength(1);
      const mark = limb[0] as LesionMark;
      const down = piecesTo(pieceAbove(place(below) as Place<PulseSiteId>));
      expect(onTheWay(mark, place(below) as Place<PulseSiteId>)).toBeDefined();
      expect(down.indexOf(mark.piece)).toBeGreaterThan(
        down.indexOf(pieceAbove(place(above) as Place<PulseSiteId>)),
      );
      const spot = sampleAt(courseOf(mark.piece), mark.at);
      expect(spot.y).toBeGreaterThan(positionOf(place(above)).y);
      expect(spot.y).toBeLessThan(positionOf(place(below)).y);
    },
  );

  it('lies on its own piece of artery', () => {
    fc.assert(
      fc.property(anyExamination, (examination) => {
        for (const { piece, at, strength } of drawn(examination).marks) {
          expect(at).toBeGreaterThanOrEqual(piece.from);
          expect(at).toBeLessThanOrEqual(piece.to);
          if (strength !== undefined) {
            expect(strength).toBeGreaterThanOrEqual(0);
            expect(strength).toBeLessThanOrEqual(1);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it('marks every lesion that the rule sees, and nothing on a normal record', () => {
    expect(drawn(restNormal(emptyExamination())).marks).toEqual([]);
    for (const [, examination] of bounded) {
      const lesions = Object.values(readByRule(examination)).flatMap((rule) => rule.lesions);
      expect(drawn(examination).marks).toHaveLength(lesions.length);
    }
  });
});
