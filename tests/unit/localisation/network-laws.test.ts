import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ARTERIES,
  oppositeSide,
  type PieceKey,
  pieceFromKey,
  pieceAbove,
  piecesTo,
  type Place,
  PULSE_PLACES,
  type PulseSiteId,
} from '../../../src/anatomy/index.js';
import {
  emptyExamination,
  type Examination,
  type Grade,
  GRADES,
  setPulse,
} from '../../../src/examination/index.js';
import {
  localise,
  type NetworkReading,
  TABLES,
  type Tables,
} from '../../../src/localisation/network/index.js';
import { beginnings } from '../../../src/localisation/network/begin.js';
import { findingsOf } from '../../../src/localisation/network/evidence.js';
import { modelOf } from '../../../src/localisation/network/model.js';
import { Propagation } from '../../../src/localisation/network/propagate.js';
import { indexOf } from '../../../src/localisation/network/tree.js';
import { mirrored } from '../../tools/examinations.js';

const RUNS = { numRuns: 40 };

/** Any grades at any of the sites, acute or chronic. */
const anyPulses: fc.Arbitrary<Examination> = fc
  .record({
    onset: fc.constantFrom('acute' as const, 'chronic' as const, 'unknown' as const),
    grades: fc.array(fc.option(fc.constantFrom(...GRADES)), {
      minLength: PULSE_PLACES.length,
      maxLength: PULSE_PLACES.length,
    }),
  })
  .map(({ onset, grades }) =>
    grades.reduce<Examination>(
      (examination, grade, i) => (grade ? setPulse(examination, PULSE_PLACES[i]!, { grade }) : examination),
      { ...emptyExamination(), onset },
    ),
  )
  .filter((examination) => examination.pulses !== undefined);

function read(examination: Examination, tables?: Tables): NetworkReading & { status: 'read' } {
  const reading = localise(examination, { detail: 'posterior', ...(tables && { tables }) });
  if (reading.status !== 'read') throw new Error(`expected a reading, found ${reading.status}`);
  return reading;
}

/** The tables without what sets the sides apart: lesions commoner on one side, and the trunk that only the right has. */
const EVEN: Tables = {
  ...TABLES,
  rightShare: { source: [] },
  causes: Object.fromEntries(
    Object.entries(TABLES.causes).map(([name, cause]) => {
      const { brachiocephalic = 0, ...sites } = cause.sites;
      return [
        name,
        { ...cause, sites: { ...sites, 'common-femoral': (sites['common-femoral'] ?? 0) + brachiocephalic } },
      ];
    }),
  ) as unknown as Tables['causes'],
};

/**
 * Probability that some piece on the way from the heart to a pulse is not patent, with a grade put there, given one cause and
 * one way of reading findings.
 */
function diseaseAbove(
  examination: Examination,
  place: Place<PulseSiteId>,
  grade: Grade,
  column: number,
): number {
  const changed = setPulse(examination, place, { grade });
  // What the pulses say of the cause is left out: an easy popliteal pulse, for one, makes an aneurysm likelier.
  const model = modelOf({ ...emptyExamination(), onset: examination.onset }, TABLES);
  const net = new Propagation(
    model,
    findingsOf(changed, TABLES, {}, []).flatMap((finding) => finding.factors),
  );
  net.live = [column];
  const path = piecesTo(pieceAbove(place)).map((piece) => indexOf(piece.key));
  const found = beginnings(
    net,
    path,
    path.map((_, j) => j),
    new Float64Array(path.length + 1),
  );
  return 1 - found.at(-1)!;
}

describe('The network on the body', () => {
  it('gives every limb a distribution that sums to one, whatever was felt', () => {
    fc.assert(
      fc.property(anyPulses, (examination) => {
        for (const { answers, levels, nothing } of Object.values(read(examination).limbs)) {
          const sum = (list: readonly { probability: number }[]): number =>
            list.reduce((total, one) => total + one.probability, nothing);
          expect(sum(answers)).toBeCloseTo(1, 10);
          expect(sum(levels)).toBeCloseTo(1, 10);
          for (const { probability } of answers) expect(probability).toBeGreaterThanOrEqual(0);
        }
      }),
      RUNS,
    );
  });

  it('swaps its answer when left and right are swapped, but for the brachiocephalic trunk and the commoner side', () => {
    fc.assert(
      fc.property(anyPulses, (examination) => {
        const [one, other] = [read(examination, EVEN), read(mirrored(examination), EVEN)];
        for (const key of Object.keys(one.pieces) as PieceKey[]) {
          const piece = pieceFromKey(key)!;
          if (ARTERIES[piece.artery].occurs === 'right') continue;
          const mirror = key.replace(piece.side, oppositeSide(piece.side)) as PieceKey;
          expect(other.pieces[mirror].narrowed).toBeCloseTo(one.pieces[key].narrowed, 9);
          expect(other.pieces[mirror].blocked).toBeCloseTo(one.pieces[key].blocked, 9);
        }
      }),
      RUNS,
    );
  });

  it('never lowers the probability of disease above a pulse that turns from felt to absent, within a cause', () => {
    // Across causes it may: low flow and shock take any peripheral pulse away, and the fifth absent pulse of a patient may
    // be what tells them from five blocked arteries.
    const columns = modelOf(emptyExamination(), TABLES).weight.length;
    fc.assert(
      fc.property(
        anyPulses,
        fc.constantFrom(...PULSE_PLACES),
        fc.nat(columns - 1),
        (examination, place, column) => {
          expect(diseaseAbove(examination, place, 'absent', column)).toBeGreaterThanOrEqual(
            diseaseAbove(examination, place, 'normal', column) - 1e-9,
          );
        },
      ),
      { numRuns: 200 },
    );
  });

  it('lets more and more absent pulses turn from many blocks to low flow', () => {
    const ends = PULSE_PLACES.filter(({ site }) => /radial|ulnar|tibial|pedis/.test(site));
    const low = (count: number): number => {
      const examination = ends
        .slice(0, count)
        .reduce((next, place) => setPulse(next, place, { grade: 'absent' }), {
          ...emptyExamination(),
          onset: 'acute' as const,
          pressures: { brachial: { right: 78 } },
        } as Examination);
      return read(examination).causes['low-flow'];
    };
    expect(low(ends.length)).toBeGreaterThan(0.9);
    expect(low(ends.length)).toBeGreaterThan(low(1));
  });

  it('claims nothing where nothing was examined', () => {
    expect(localise(emptyExamination())).toEqual({ status: 'nothing-examined' });
    const one = setPulse(emptyExamination(), { site: 'femoral', side: 'left' }, { grade: 'absent' });
    const reading = localise(one);
    expect(reading.status === 'read' && reading.limbs['right leg'].examined).toBe(false);
    expect(reading.status === 'read' && reading.detail['right leg']).toBeUndefined();
  });

  it('signals evidence that its tables call impossible, and names what to feel again', () => {
    const never = {
      ...TABLES.palpation.femoral,
      normal: [0, 0, 1],
      reduced: [0, 0, 1],
      absent: [0, 0, 1],
    } as const;
    const tables: Tables = {
      ...TABLES,
      palpation: { ...TABLES.palpation, femoral: never },
      lowFlow: { ...TABLES.lowFlow, weak: { ...TABLES.lowFlow.weak, central: 0 }, share: 0 },
    };
    const examination = setPulse(emptyExamination(), { site: 'femoral', side: 'left' }, { grade: 'absent' });
    expect(localise(examination, { tables })).toEqual({
      status: 'impossible',
      conflicting: [{ kind: 'pulse', place: { site: 'femoral', side: 'left' }, grade: 'absent' }],
    });
  });
});
