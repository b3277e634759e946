import * as z from 'zod/mini';
import { type Fault, faultsOf, type Parsed, show } from './faults.js';
import { type Examination, examinationSchema, FORMAT, FORMAT_NAME, FORMAT_VERSION } from './schema/record.js';

/** The names of the fields a schema allows at a path; empty where the schema is no object there. */
function fieldsAt(schema: z.ZodMiniType, path: readonly PropertyKey[]): string[] {
  let at = schema as unknown as { def?: Def } | undefined;
  for (const key of path) {
    at = inner(at);
    at = at?.def?.shape ? at.def.shape[key] : at?.def?.element;
  }
  const shape = inner(at)?.def?.shape;
  return shape ? Object.keys(shape as object) : [];
}

interface Def {
  innerType?: { def?: Def };
  shape?: Record<PropertyKey, { def?: Def }>;
  element?: { def?: Def };
}

function inner(schema: { def?: Def } | undefined): { def?: Def } | undefined {
  let at = schema;
  while (at?.def?.innerType) at = at.def.innerType;
  return at;
}

function laterVersion(input: unknown): Fault | undefined {
  if (typeof input !== 'object' || input === null) return undefined;
  const { format } = input as { format?: unknown };
  if (typeof format !== 'string') return undefined;
  const version = new RegExp(`^${FORMAT_NAME}/(\\d+)$`).exec(format)?.[1];
  if (version === undefined || Number(version) <= FORMAT_VERSION) return undefined;
  return { code: 'later-version', path: ['format'], found: show(format), expected: [show(FORMAT)] };
}

/**
 * Reads a value against any schema of this library, without ever throwing.
 * @returns the value, or every fault with its path, what was found and what was expected
 */
export function parseWith<T extends z.ZodMiniType>(schema: T, input: unknown): Parsed<z.infer<T>> {
  try {
    const result = z.safeParse(schema, input);
    if (result.success) return { ok: true, value: result.data };
    return { ok: false, faults: faultsOf(input, result.error.issues, (path) => fieldsAt(schema, path)) };
  } catch {
    return {
      ok: false,
      faults: [{ code: 'unreadable', path: [], found: typeof input, expected: ['plain JSON'] }],
    };
  }
}

/**
 * Reads an unknown value as an examination. Never throws.
 * @param input plain data, for instance from `JSON.parse`
 */
export function parseExamination(input: unknown): Parsed<Examination> {
  try {
    const later = laterVersion(input);
    if (later) return { ok: false, faults: [later] };
  } catch {
    // A hostile getter: the schema's own reading below reports it.
  }
  return parseWith(examinationSchema, input);
}

/** Reads the text form of an examination, as forms carry it. Never throws. */
export function parseExaminationText(text: string): Parsed<Examination> {
  let input: unknown;
  try {
    input = JSON.parse(text);
  } catch {
    return { ok: false, faults: [{ code: 'unreadable', path: [], found: show(text), expected: ['JSON'] }] };
  }
  return parseExamination(input);
}
