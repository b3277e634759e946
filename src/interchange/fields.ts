import { type Side, SIDES } from '../anatomy/index.js';
import { type Examination, examinationSchema, type Json, type RecordPath } from '../examination/index.js';

/*
 * The fields of the record as its schema has them, so that a field the record gains is exchanged without being named here a second time.
 */

/** What a field holds. `empty` is a list or object in which nothing stands, wherever one may be. */
export type FieldKind =
  | 'word'
  | 'integer'
  | 'words'
  | 'yes'
  | 'boolean'
  | 'number'
  | 'text'
  | 'instant'
  | 'points'
  | 'pressure'
  | 'empty';

/** Stands in a template for a side, and for a place in a list. */
export const SIDE = '$side';
export const INDEX = '$index';

/** One field of the record, the same on each side and in each entry of a list. */
export interface Field {
  /** The names of the fields on the way, without sides and places in lists, joined by dots; `record` for the record itself. */
  readonly code: string;
  readonly template: readonly string[];
  readonly kind: FieldKind | 'object' | 'list';
  /** The words it may hold. */
  readonly words: readonly string[];
  /** The sides its way may lead through. */
  readonly sides: readonly string[];
}

/** One value of a record at its field. */
export interface Leaf {
  readonly field: Field;
  readonly kind: FieldKind;
  readonly path: RecordPath;
  readonly value: Json;
}

interface Def {
  readonly type: string;
  readonly innerType?: { readonly def: Def };
  readonly shape?: Readonly<Record<string, { readonly def: Def }>>;
  readonly element?: { readonly def: Def };
  readonly entries?: Readonly<Record<string, string>>;
  readonly values?: readonly (string | number | boolean)[];
  readonly params?: { readonly expected: { readonly words?: readonly string[] } };
}

const SIDED: readonly string[] = [...SIDES, 'midline'];
/** Points in time: text by type, told apart by a rule that a schema does not show. */
const INSTANTS: readonly string[] = ['examinedAt', 'onsetAt', 'at'];

function codeOf(template: readonly string[]): string {
  return template.filter((key) => !key.startsWith('$')).join('.') || 'record';
}

function inner(def: Def): Def {
  let at = def;
  while (at.innerType) at = at.innerType.def;
  return at;
}

function kindOf(def: Def, name: string): Pick<Field, 'kind' | 'words'> {
  const { type, entries, values, element, params } = def;
  if (type === 'object') return { kind: 'object', words: [] };
  if (type === 'enum') return { kind: 'word', words: Object.values(entries ?? {}) };
  if (type === 'literal')
    return values?.[0] === true
      ? { kind: 'yes', words: [] }
      : { kind: 'integer', words: (values ?? []).map(String) };
  if (type === 'custom')
    return { kind: params?.expected.words ? 'pressure' : 'text', words: params?.expected.words ?? [] };
  if (type === 'array' && element) {
    const of = inner(element.def);
    if (of.type === 'tuple') return { kind: 'points', words: [] };
    return of.type === 'object'
      ? { kind: 'list', words: [] }
      : { kind: 'words', words: Object.values(of.entries ?? {}) };
  }
  if (type === 'string') return { kind: INSTANTS.includes(name) ? 'instant' : 'text', words: [] };
  return { kind: type as 'number' | 'boolean', words: [] };
}

/** The fields below a place of the schema, each level in the order of its schema. */
function visit(outer: Def, template: readonly string[], sides: readonly string[], into: Field[]): void {
  const def = inner(outer);
  const kind = kindOf(def, template.at(-1) ?? '');
  into.push({ code: codeOf(template), template, sides, ...kind });
  const shape = Object.entries(def.shape ?? {});
  if (kind.kind === 'list' && def.element) visit(def.element.def, [...template, INDEX], sides, into);
  else if (shape.length && shape.every(([key]) => SIDED.includes(key)))
    visit(
      (shape[0] as [string, { def: Def }])[1].def,
      [...template, SIDE],
      shape.map(([key]) => key),
      into,
    );
  else for (const [key, one] of shape) visit(one.def, [...template, key], sides, into);
}

function allFields(): readonly Field[] {
  const found: Field[] = [];
  visit((examinationSchema as unknown as { def: Def }).def, [], [], found);
  return found;
}

/** Every field of the record, outer before inner. */
export const FIELDS: readonly Field[] = allFields();

const BY_TEMPLATE: ReadonlyMap<string, Field> = new Map(
  FIELDS.map((field) => [field.template.join(' '), field]),
);

/** The fields of a code, outermost first: a list and its entry, or both sides and one of them, share theirs. */
export const FIELDS_OF: ReadonlyMap<string, readonly Field[]> = (() => {
  const found = new Map<string, Field[]>();
  for (const field of FIELDS) found.set(field.code, [...(found.get(field.code) ?? []), field]);
  return found;
})();

/** The template of a path, with the side and the places in lists that it leads through. */
function templateOf(path: RecordPath): readonly string[] {
  const template: string[] = [];
  for (const key of path) {
    // A side that the field does not have is a name like any other, such as one of a later version.
    const isSide = BY_TEMPLATE.get([...template, SIDE].join(' '))?.sides.includes(String(key)) === true;
    template.push(typeof key === 'number' ? INDEX : isSide ? SIDE : key);
  }
  return template;
}

/** The field at a path of a record, if the record has it. */
export function fieldOf(path: RecordPath): Field | undefined {
  return BY_TEMPLATE.get(templateOf(path).join(' '));
}

/** The side a path leads through. */
export function sideOf(path: RecordPath): Side | 'midline' | undefined {
  const at = templateOf(path).indexOf(SIDE);
  return at < 0 ? undefined : (path[at] as Side | 'midline');
}

/** A path of a template: the side and the place in a list where it wants them. */
export function pathOf(field: Field, side: string | undefined, index: number | undefined): RecordPath {
  return field.template.map((key) => (key === SIDE ? (side ?? '') : key === INDEX ? (index ?? 0) : key));
}

function leavesAt(value: Json, path: RecordPath, into: Leaf[]): void {
  const field = fieldOf(path);
  if (!field) return;
  const { kind } = field;
  const leaf = (as: FieldKind): void => void into.push({ field, kind: as, path, value });
  if (kind !== 'object' && kind !== 'list') {
    leaf(kind === 'words' && (value as readonly Json[]).length === 0 ? 'empty' : kind);
  } else {
    const inside = Object.entries(value as object) as [string, Json][];
    if (inside.length === 0) leaf('empty');
    for (const [key, one] of inside) leavesAt(one, [...path, kind === 'list' ? Number(key) : key], into);
  }
}

/** Every value of a record that its schema knows, in the order of the record. */
export function leavesOf({ carried: _, ...examination }: Examination): readonly Leaf[] {
  const found: Leaf[] = [];
  leavesAt(examination as unknown as Json, [], found);
  return found;
}

/** The part of a record that is exchanged as one: an entry of a list, what was found on one side of something, or an area. */
export function groupOf(path: RecordPath): RecordPath {
  const template = templateOf(path);
  const entry = template.indexOf(INDEX);
  if (entry >= 0) return path.slice(0, entry + 1);
  const side = template.indexOf(SIDE);
  return side >= 0 ? path.slice(0, side + 1) : path.slice(0, -1);
}

type Tree = { [key: string]: unknown };

/** Sets a value at a path of known names; a list or an object that stands there already is not emptied. */
export function put(tree: object, path: RecordPath, value: Json): void {
  let around = tree as Tree;
  path.forEach((key, i) => {
    if (i === path.length - 1) {
      const isEmpty = typeof value === 'object' && value !== null && Object.keys(value).length === 0;
      if (!isEmpty || around[key] === undefined)
        around[key] = isEmpty ? (Array.isArray(value) ? [] : {}) : value;
      return;
    }
    around[key] ??= typeof path[i + 1] === 'number' ? [] : {};
    around = around[key] as Tree;
  });
}
