import * as z from 'zod/mini';
import { PIECES, SIDES } from '../anatomy/index.js';
import { rule } from '../examination/schema/common.js';
import {
  COLLATERAL_STATES,
  DEFAULT_LESION,
  DEFAULT_PATIENT,
  OUTLET_POSITIONS,
  RHYTHM_KINDS,
  STATES,
} from './patient.js';
import { HUMAN } from './tree/network.js';
import { SPOTS, VARIANTS } from './tree/types.js';

/*
 * The patient's JSON. The physics does not load this module; published as JSON Schema by {@link patientJsonSchema}.
 */

/** Names by which a lesion's artery may be called: every piece, and every artery that is cut into two. */
export const PIECE_NAMES = [
  ...new Set(PIECES.flatMap(({ key }) => [key.replace(/ (proximal|distal)$/, ''), key])),
] as [string, ...string[]];

const spots = new Map<string, Set<string>>();
for (const { piece, spot } of HUMAN.sections) {
  if (!piece || !spot) continue;
  for (const name of [piece, piece.replace(/ (proximal|distal)$/, '')]) {
    const known = spots.get(name) ?? new Set<string>();
    spots.set(name, known.add(spot));
  }
}

const range = (low: number, high: number) => z.number().check(z.minimum(low), z.maximum(high));
const bySide = <T extends z.ZodMiniType>(schema: T) =>
  z.strictObject({ right: z.optional(schema), left: z.optional(schema) });
/** Highest angle, cuff and seed that mean anything. */
const LIMITS = { degrees: 90, stiff: 300, lesions: 24 };

const lesionSchema = z
  .strictObject({
    piece: z.enum(PIECE_NAMES),
    /** Percent of the diameter; 100 is a block. */
    narrowing: z._default(range(0, 100), DEFAULT_LESION.narrowing),
    /** Length of a narrowing in cm. */
    length: z._default(range(0.1, 30), DEFAULT_LESION.length),
    at: z.optional(z.enum(SPOTS)),
    extent: z._default(z.enum(['short', 'whole']), DEFAULT_LESION.extent),
  })
  .check(
    rule(
      'spot-of-artery',
      ['at', 'piece'],
      ({ piece, at }) => at === undefined || spots.get(piece)?.has(at) === true,
    ),
  );

/** A patient as written down, with every default filled in. */
export const patientSchema = z.strictObject({
  age: z._default(range(15, 100), DEFAULT_PATIENT.age),
  meanPressure: z.optional(range(35, 160)),
  heartRate: z.optional(range(35, 180)),
  rhythm: z._default(z.enum(RHYTHM_KINDS), DEFAULT_PATIENT.rhythm),
  state: z._default(z.enum(STATES), DEFAULT_PATIENT.state),
  lesions: z._default(z.array(lesionSchema).check(z.maxLength(LIMITS.lesions)), []),
  collaterals: z._default(z.enum(COLLATERAL_STATES), DEFAULT_PATIENT.collaterals),
  routes: z._default(z.record(z.string(), z.enum(COLLATERAL_STATES)), {}),
  variants: z._default(
    z.array(z.strictObject({ variant: z.enum(VARIANTS), side: z.optional(z.enum(SIDES)) })),
    [],
  ),
  incompressible: z._default(bySide(range(0, LIMITS.stiff)), {}),
  outlet: z._default(bySide(z.partialRecord(z.enum(OUTLET_POSITIONS), range(0, 100))), {}),
  pressed: z._default(
    z.array(z.strictObject({ artery: z.enum(['radial', 'ulnar']), side: z.enum(SIDES) })),
    [],
  ),
  cuffs: z._default(z.array(z.enum(SIDES)), []),
  raised: z._default(bySide(range(0, LIMITS.degrees)), {}),
  seed: z._default(z.number().check(z.int(), z.minimum(0), z.maximum(0xffffffff)), DEFAULT_PATIENT.seed),
});

/** The schema of a patient as JSON Schema (draft 2020-12), for editors and other programs. */
export function patientJsonSchema(): unknown {
  return z.toJSONSchema(patientSchema, { io: 'input' });
}
