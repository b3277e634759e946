import { readFileSync } from 'node:fs';
import * as z from 'zod/mini';

/*
 * The form of a published case, as the file holds it. Only what scoring reads is checked; sources and notes are for people.
 */

const pulse = z.enum(['absent', 'reduced', 'normal', 'bounding', 'not stated']);

const maybe = <T extends z.ZodMiniType>(schema: T) => z.optional(z.nullable(schema));

/** What was known beforehand, typed; a field left out or null was not said. */
const contextSchema = z.object({
  mechanism: maybe(z.string()),
  injury_place: maybe(z.string()),
  diabetes: maybe(z.boolean()),
  smoking: maybe(z.string()),
  atrial_fibrillation: maybe(z.boolean()),
  systolic_pressure_mmHg: maybe(z.number()),
  shock: maybe(z.boolean()),
  known_aneurysm: maybe(z.string()),
  earlier_graft: maybe(z.string()),
  coldness_level: maybe(z.string()),
  sensation: maybe(z.string()),
  movement: maybe(z.string()),
  ulcer: maybe(z.string()),
});

const caseSchema = z.object({
  id: z.string(),
  /** No arterial lesion is there to find. */
  negative: z.optional(z.boolean()),
  context: z.optional(contextSchema),
  side: z.optional(z.string()),
  strength: z.enum(['good', 'fair', 'weak', 'pressure only']),
  age_band: z.nullable(z.string()),
  course: z.nullable(z.string()),
  pulses: z.record(z.string(), z.partialRecord(z.enum(['right', 'left', 'affected', 'midline']), pulse)),
  bruits: z.array(z.object({ site: z.string(), side: z.string() })),
  pressures: z.record(z.string(), z.unknown()),
  other: z.array(z.string()),
  lesion: z.array(z.object({ segment: z.string(), side: z.string(), kind: z.string() })),
});
export type PublishedCase = z.infer<typeof caseSchema>;

/**
 * Reads a file of cases.
 * @throws Error that names the file, the case and the field, what was found and what was expected
 */
export function readCases(file: string): PublishedCase[] {
  let input: unknown;
  try {
    input = JSON.parse(readFileSync(file, 'utf8'));
  } catch (error) {
    throw new Error(
      `${file}: cannot be read as JSON (${(error as Error).message}); expected an array of cases`,
      { cause: error },
    );
  }
  if (!Array.isArray(input)) throw new Error(`${file}: found ${typeof input}; expected an array of cases`);
  return input.map((one: unknown, i) => {
    const result = z.safeParse(caseSchema, one);
    if (result.success) return result.data;
    const [issue] = result.error.issues;
    const name = (one as { id?: unknown } | null)?.id ?? `number ${i + 1}`;
    throw new Error(`${file}: case ${String(name)}, field ${issue?.path.join('.')}: ${issue?.message}`);
  });
}
