import * as z from 'zod/mini';
import { type EditError, type Fault, MOST_FAULTS, type Refused, refused, show } from './faults.js';
import { type Issue, faultsOf, readsUnknown } from './issues.js';
import { copyJson } from './json.js';
import { fieldsAt, unknownIn } from './known-fields.js';
import { fieldAt } from './patch.js';
import type { Carried, Json } from './types/json.js';
import { TakenOut } from './unknown-words.js';

/** How a reader takes what a later version recorded. */
export interface ParseOptions {
  /** Refuses fields and words of later versions instead of carrying them. */
  readonly strict?: boolean;
}

/** A part that was read, with the words in it that this version does not know, or what is wrong with it. */
export type ParsedPart<T> =
  { readonly ok: true; readonly value: T; readonly carried: readonly Carried[] } | Refused;

/** The first faults, and how many there are. */
class FaultList {
  readonly #first: Fault[] = [];
  #count = 0;

  /** `make` gives the faults in question, `count` of them. */
  add(count: number, make: () => readonly Fault[]): void {
    const room = MOST_FAULTS - this.#first.length;
    if (room > 0) this.#first.push(...make().slice(0, room));
    this.#count += count;
  }

  get refused(): Refused | undefined {
    const faults = this.#first;
    return this.#count ? { ok: false, faults, more: this.#count - faults.length } : undefined;
  }
}

/** A fault for every field that the schema does not have. */
function addUnknown(faults: FaultList, schema: z.ZodMiniType, json: Json): void {
  for (const path of unknownIn(schema, json))
    faults.add(1, () => {
      const names = fieldsAt(schema, path.slice(0, -1));
      const found = show(fieldAt(json, path));
      return [{ code: 'unknown-field', path, found, expected: { code: 'fields', names } }];
    });
}

function issuesOf(schema: z.ZodMiniType, json: Json): readonly Issue[] {
  const result = z.safeParse(schema, json);
  return result.success ? [] : result.error.issues;
}

/**
 * Reads frozen JSON by a schema. The schemas of the record change nothing of what they read, so that what comes out is what went in,
 * without the words that are carried.
 */
export function readJson<T>(
  schema: z.ZodMiniType<T>,
  json: Json,
  { strict = false }: ParseOptions,
): ParsedPart<T> {
  let out = new TakenOut(json);
  let issues = issuesOf(schema, json);
  let pruned = json;
  // Each turn takes at least one more entry out.
  for (let next = strict ? undefined : out.with(issues); next; next = out.with(issues)) {
    out = next;
    pruned = out.rest;
    issues = issuesOf(schema, pruned);
  }
  const faults = new FaultList();
  for (const issue of issues) {
    const own = { ...issue, path: [...out.pathBefore(issue.path)] };
    if (readsUnknown(own, out.paths)) continue;
    const count = own.code === 'unrecognized_keys' ? own.keys.length : 1;
    faults.add(count, () => faultsOf(json, own, (path) => fieldsAt(schema, path)));
  }
  if (strict) addUnknown(faults, schema, json);
  const carried = out.paths.map((path) => ({ path, value: fieldAt(json, path) as Json }));
  return (
    faults.refused ?? {
      ok: true,
      value: copyJson(pruned) as T,
      carried: copyJson(carried) as unknown as readonly Carried[],
    }
  );
}

/** Frozen plain JSON of anything, or the fault that says why there is none. */
export function jsonOf(input: unknown): { readonly json: Json } | Refused {
  // What is no JSON at all is no more wrong than text or a number would be: the schema says what it wants.
  const isWhole = (typeof input === 'object' && input !== null) || typeof input === 'number';
  try {
    return { json: isWhole ? copyJson(input) : (input as Json) };
  } catch (error) {
    return refused((error as EditError).fault);
  }
}

/**
 * Reads a value by a schema of the record or of one of its parts, without ever throwing. What is read is frozen.
 * @returns the value without the words this version does not know, and these beside it; or what is wrong: path, what was found,
 *   what was expected
 */
export function parseWith<T>(
  schema: z.ZodMiniType<T>,
  input: unknown,
  options: ParseOptions = {},
): ParsedPart<T> {
  const copied = jsonOf(input);
  return 'ok' in copied ? copied : readJson(schema, copied.json, options);
}
