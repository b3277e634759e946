import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type ArteryId,
  pieceFromKey,
  piecesTo,
  PULSE_PLACES,
  type Side,
} from '../../../src/anatomy/index.js';
import { emptyExamination, type Examination, GRADES, setPulse } from '../../../src/examination/index.js';
import { localise, TABLES } from '../../../src/localisation/network/index.js';
import { beginnings } from '../../../src/localisation/network/begin.js';
import { findingsOf } from '../../../src/localisation/network/evidence.js';
import { modelOf } from '../../../src/localisation/network/model.js';
import { Propagation } from '../../../src/localisation/network/propagate.js';
import { indexOf } from '../../../src/localisation/network/tree.js';
import { examined } from '../../tools/examinations.js';

const OF_ARMS = PULSE_PLACES.filter(({ site }) => !/femoral|popliteal|tibial|pedis|aorta/.test(site));

const anyArms: fc.Arbitrary<Examination> = fc
  .record({
    onset: fc.constantFrom('acute' as const, 'chronic' as const, 'unknown' as const),
    grades: fc.array(fc.option(fc.constantFrom(...GRADES)), {
      minLength: OF_ARMS.length,
      maxLength: OF_ARMS.length,
    }),
    access: fc.boolean(),
  })
  .map(({ onset, grades, access }) =>
    grades.reduce<Examination>(
      (examination, grade, i) => (grade ? setPulse(examination, OF_ARMS[i]!, { grade }) : examination),
      {
        ...emptyExamination(),
        onset,
        ...(access && { context: { access: [{ side: 'left' as const, kind: 'fistula' as const }] } }),
      },
    ),
  );

type Signs = Readonly<Record<string, Partial<Examination>>>;
const signsOf = (side: Side): Signs => ({
  dizzy: { history: { arm: { [side]: { dizzyOnUse: true } } } },
  'chest pain': { history: { arm: { [side]: { chestPainOnUse: true } } } },
  alternating: { inspection: { arm: { [side]: { vertebralFlow: 'alternating' } } } },
  reversed: { inspection: { arm: { [side]: { vertebralFlow: 'reversed' } } } },
});

/** Probability of disease between the heart and the origin of the vertebral of a side. */
function beforeVertebral(examination: Examination, side: Side): number {
  const net = new Propagation(
    modelOf(examination, TABLES),
    findingsOf(examination, TABLES, {}, []).flatMap(({ factors }) => factors),
  );
  const path = piecesTo(pieceFromKey(`${side} subclavian proximal`)!).map(({ key }) => indexOf(key));
  const order = path.map((_, j) => j);
  return 1 - beginnings(net, path, order, new Float64Array(path.length + 1)).at(-1)!;
}

function inflow(examination: Examination, side: Side): number {
  const reading = localise(examination);
  if (reading.status !== 'read') throw new Error(reading.status);
  const arteries: readonly ArteryId[] = ['brachiocephalic', 'subclavian'];
  return reading.limbs[`${side} arm`].occluded.entries
    .filter((entry) => entry.arteries.some((artery) => arteries.includes(artery)))
    .reduce((sum, { probability }) => sum + probability, 0);
}

/* Subclavian steal: the vertebral of the side runs backward into the arm. Textbook sign, no source. */
describe('steal by the vertebral artery', () => {
  it.each(['right', 'left'] as const)(
    'never lowers the probability of disease before the origin of the %s vertebral, whatever else was found',
    (side) => {
      fc.assert(
        fc.property(anyArms, fc.constantFrom(...Object.keys(signsOf(side))), (examination, sign) => {
          const more = { ...examination, ...signsOf(side)[sign] };
          expect(beforeVertebral(more, side)).toBeGreaterThanOrEqual(
            beforeVertebral(examination, side) - 1e-9,
          );
        }),
        { numRuns: 150 },
      );
    },
  );

  it('points to the subclavian in an arm that is weak throughout, each sign more than none', () => {
    const weak = examined({ 'left radial': 'reduced', 'left brachial': 'reduced', 'right radial': 'normal' });
    const without = inflow(weak, 'left');
    for (const [sign, parts] of Object.entries(signsOf('left')))
      expect(inflow({ ...weak, ...parts }, 'left'), sign).toBeGreaterThan(without);
    const both = { ...signsOf('left').dizzy, ...signsOf('left').reversed };
    expect(inflow({ ...weak, ...both }, 'left')).toBeGreaterThan(0.9);
  });

  it('speaks against it where the vertebral runs towards the head', () => {
    const weak = examined({ 'left radial': 'reduced', 'left brachial': 'reduced' });
    const forward = { ...weak, inspection: { arm: { left: { vertebralFlow: 'forward' as const } } } };
    expect(inflow(forward, 'left')).toBeLessThan(inflow(weak, 'left'));
  });

  it('counts for less where a dialysis access or a graft to the groin draws on the same arm', () => {
    const weak = { ...examined({ 'left radial': 'reduced' }), ...signsOf('left').reversed };
    const graft = {
      artery: 'external-iliac',
      side: 'left',
      kind: 'bypass',
      route: 'axillo-femoral',
    } as const;
    const alone = inflow(weak, 'left');
    expect(
      inflow({ ...weak, context: { access: [{ side: 'left', kind: 'fistula' }] } }, 'left'),
    ).toBeLessThan(alone);
    expect(beforeVertebral({ ...weak, context: { revascularisations: [graft] } }, 'left')).toBeLessThan(
      beforeVertebral(weak, 'left'),
    );
  });

  it('is named among the evidence of the arm', () => {
    const examination = {
      ...examined({ 'left radial': 'absent', 'left brachial': 'reduced' }),
      ...signsOf('left').reversed,
    };
    const reading = localise(examination);
    const evidence = reading.status === 'read' ? (reading.detail['left arm']?.evidence ?? []) : [];
    expect(evidence.map(({ finding }) => finding.kind)).toContain('vertebral');
  });
});
