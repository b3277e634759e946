import type * as z from 'zod/mini';
import { isObject } from './json.js';
import type { Json, RecordPath } from './types/json.js';

/** What of a schema says which fields it has. */
interface Def {
  readonly innerType?: Schema;
  readonly shape?: Readonly<Record<string, Schema>>;
  readonly element?: Schema;
  /** What further fields hold; `unknown` where they pass as they are. */
  readonly catchall?: { readonly def?: { readonly type?: string } };
}
interface Schema {
  readonly def?: Def;
}

function defOf(schema: Schema | undefined): Def | undefined {
  let def = schema?.def;
  while (def?.innerType) def = def.innerType.def;
  return def;
}

/** The names of the fields a schema has at a path; empty where it is no object there. */
export function fieldsAt(schema: z.ZodMiniType, path: RecordPath): readonly string[] {
  const at = path.reduce<Schema | undefined>((one, key) => {
    const def = defOf(one);
    return def?.shape ? def.shape[key] : def?.element;
  }, schema as Schema);
  return Object.keys(defOf(at)?.shape ?? {});
}

/** Where a value has fields that its schema does not, but lets pass; what is in such a field counts as one with it. */
export function unknownIn(schema: z.ZodMiniType, value: Json): readonly RecordPath[] {
  const found: RecordPath[] = [];
  const look = (at: Schema | undefined, own: unknown, path: RecordPath): void => {
    const def = defOf(at);
    if (def?.element && Array.isArray(own)) own.forEach((one, i) => look(def.element, one, [...path, i]));
    const { shape } = def ?? {};
    if (!shape || !isObject(own)) return;
    for (const [name, field] of Object.entries(own)) {
      if (Object.hasOwn(shape, name)) look(shape[name], field, [...path, name]);
      else if (def?.catchall?.def?.type === 'unknown') found.push([...path, name]);
    }
  };
  look(schema as Schema, value, []);
  return found;
}
