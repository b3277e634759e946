import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  limbKey,
  LIMBS,
  type Piece,
  pieceAbove,
  PIECES,
  type PieceKey,
  piecesTo,
  placeKey,
  type Place,
  type PulseSiteId,
} from '../../../src/anatomy/index.js';
import { drawnFlow, type Flow, marksOf } from '../../../src/drawing/index.js';
import { emptyExamination, type Examination, restNormal } from '../../../src/examination/index.js';
import { readExamination } from '../../../src/localisation/index.js';
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
const SILENT_FOOT = restNormal(examined({ 'right dorsalis-pedis': { grade: 'absent', doppler: 'absent' } }));

describe('drawnFlow', () => {
  it('is full everywhere while nothing is recorded, and while all is normal', () => {
    for (const examination of [emptyExamination(), restNormal(emptyExamination())]) {
      expect(new Set(drawn(examination).flow.map(({ flow }) => flow))).toEqual(new Set(['full']));
    }
  });

  it('stops at a block of the superficial femoral, on its side only', () => {
    // The block may lie in the last of the common femoral, but hardly does: it is all but full.
    const [, end] =
      drawn(LEFT_SFA).flow.find(({ piece }) => piece.key === 'left common-femoral distal')?.width ?? [];
    expect(end).toBeGreaterThan(0.75);
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
        expect(byPiece.size).toBe(PIECES.length);
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

describe('marksOf', () => {
  const bounded: readonly (readonly [string, Examination, above: string, below: string])[] = [
    ['left superficial femoral', LEFT_SFA, 'left femoral', 'left popliteal'],
    ['right anterior tibial', SILENT_FOOT, 'right popliteal', 'right dorsalis-pedis'],
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
    'lays a block (%s) on the stretch between the sites that bound it',
    (_, examination, above, below) => {
      const network = readExamination(examination).network;
      if (network.status !== 'read') throw new Error('not read');
      const marks = drawn(examination).marks.filter(({ further }) => !further);
      expect(marks.length).toBeGreaterThan(0);
      for (const mark of marks) {
        const { between, pieces } = mark;
        expect(between?.above && placeKey(between.above)).toBe(above);
        expect(between?.below.map(placeKey)).toEqual([below]);
        const way = piecesTo(pieceAbove(place(below) as Place<PulseSiteId>));
        const before = piecesTo(pieceAbove(place(above) as Place<PulseSiteId>));
        expect(pieces.map(({ piece }) => piece)).toEqual(way.filter((piece) => !before.includes(piece)));
      }
    },
  );

  it('lays none for a foot pulse that is absent alone, which many healthy people have', () => {
    expect(drawn(ANTERIOR_TIBIAL).marks).toEqual([]);
  });

  it('divides the probability of a mark among its pieces, inflow first', () => {
    fc.assert(
      fc.property(anyExamination, (examination) => {
        for (const { pieces, strength } of drawn(examination).marks) {
          expect(pieces.length).toBeGreaterThan(0);
          pieces.forEach(({ piece, weight }, i) => {
            expect(weight).toBeGreaterThanOrEqual(0);
            for (const later of pieces.slice(i + 1)) expect(piecesTo(piece)).not.toContain(later.piece);
          });
          if (strength === undefined) continue;
          const sum = pieces.reduce((total, { weight }) => total + weight, 0);
          expect(strength).toBeLessThanOrEqual(1);
          expect(strength).toBeGreaterThanOrEqual(0.3);
          expect(sum).toBeCloseTo(strength, 2);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('marks each limb whose pulse is lost once, and nothing on a normal record', () => {
    expect(drawn(restNormal(emptyExamination())).marks).toEqual([]);
    fc.assert(
      fc.property(anyExamination, (examination) => {
        const { network } = readExamination(examination);
        if (network.status !== 'read') return;
        const limbs = LIMBS.map(limbKey).filter(
          (limb) => network.limbs[limb].examined && network.limbs[limb].headline,
        );
        const marked = drawn(examination).marks.filter(({ further }) => !further);
        expect(marked.map(({ limb }) => limb).sort()).toEqual([...limbs].sort());
      }),
      { numRuns: 40 },
    );
  });
});
