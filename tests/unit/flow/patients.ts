import fc from 'fast-check';
import { oppositeSide, pieceFromKey, type Laterality } from '../../../src/anatomy/index.js';
import type { Lesion, PatientInput } from '../../../src/flow/patient.js';
import { PIECE_NAMES } from '../../../src/flow/schema.js';

/** Any lesion that the schema accepts, but those of the arch and above, which starve the whole body. */
const anyLesion: fc.Arbitrary<Lesion> = fc.record({
  piece: fc.constantFrom(
    ...(PIECE_NAMES.filter((name) => !/ascending|arch$|suprarenal/.test(name)) as Lesion['piece'][]),
  ),
  narrowing: fc.oneof(fc.integer({ min: 0, max: 96 }), fc.constant(100)),
  length: fc.double({ min: 0.3, max: 8, noNaN: true }),
  extent: fc.constantFrom('short' as const, 'whole' as const),
});

/** Any patient: up to five lesions, any age, pressure, rate and growth of collaterals. */
export const anyPatient: fc.Arbitrary<PatientInput> = fc.record({
  age: fc.integer({ min: 18, max: 95 }),
  meanPressure: fc.integer({ min: 50, max: 130 }),
  heartRate: fc.integer({ min: 45, max: 130 }),
  lesions: fc.array(anyLesion, { maxLength: 5 }),
  collaterals: fc.constantFrom('fresh' as const, 'poor' as const, 'usual' as const, 'good' as const),
});

export const mirrored = (patient: PatientInput): PatientInput => ({
  ...patient,
  lesions: (patient.lesions ?? []).map((lesion) => {
    const [side, ...rest] = lesion.piece.split(' ');
    return { ...lesion, piece: [oppositeSide(side as Laterality), ...rest].join(' ') as Lesion['piece'] };
  }),
});

export const isLegPiece = (name: string): boolean => {
  const piece = pieceFromKey(name) ?? pieceFromKey(`${name} proximal`);
  return /iliac|femoral|popliteal|tibi|peroneal|pedis|plantar/.test(piece?.artery ?? '');
};
