import { type Json, NO_PRESSURE } from '../../examination/index.js';
import { type Field, FIELDS, INDEX, SIDE } from '../fields.js';

/*
 * The record as a form: each field an item, each side an item of its own, each list a group that repeats. Made from the schema, so that a
 * field the record gains is asked without being named here.
 */

export type ItemType = 'group' | 'choice' | 'boolean' | 'quantity' | 'string' | 'text' | 'dateTime';

/** What of the value at its place an item holds: all of it, that it is empty, or of a pressure its figure or the word in its place. */
export type ItemRole = 'value' | 'empty' | 'figure' | 'word';

/** One item of the form. */
export interface FormItem {
  /** The names on the way to the field, with the side and without places in lists: `pulses.femoral.left.grade`. */
  readonly linkId: string;
  readonly field: Field;
  /** The template of the field with its side in place. */
  readonly way: readonly string[];
  /** The list in an entry of which it stands, by its linkId. */
  readonly list: string | undefined;
  readonly type: ItemType;
  readonly role: ItemRole;
  /** What may be chosen, each as a word of the field. */
  readonly options: readonly string[];
  readonly repeats: boolean;
  readonly items: readonly FormItem[];
}

/** Words beside those of the field: that a list or a part is empty, and that something is so where it cannot be said not to be. */
export const EMPTY_LIST = 'empty-list';
export const EMPTY = 'empty';
export const YES = 'true';

const TYPES: Readonly<Partial<Record<Field['kind'], ItemType>>> = {
  object: 'group',
  list: 'group',
  boolean: 'boolean',
  number: 'quantity',
  instant: 'dateTime',
  points: 'string',
  text: 'string',
};

const CHILDREN: ReadonlyMap<string, readonly Field[]> = (() => {
  const found = new Map<string, Field[]>();
  for (const field of FIELDS.filter(({ template }) => template.length > 0)) {
    const around = field.template.slice(0, -1).join(' ');
    found.set(around, [...(found.get(around) ?? []), field]);
  }
  return found;
})();
const childrenOf = (template: readonly string[]): readonly Field[] => CHILDREN.get(template.join(' ')) ?? [];

const linkIdOf = (way: readonly string[]): string => way.filter((key) => key !== INDEX).join('.');

function typeOf({ kind, template }: Field): ItemType {
  return template.at(-1) === 'note' ? 'text' : (TYPES[kind] ?? 'choice');
}

function optionsOf({ kind, words }: Field): readonly string[] {
  if (kind === 'yes') return [YES];
  return kind === 'words' ? [...words, EMPTY_LIST] : words;
}

function itemsIn(template: readonly string[], way: readonly string[]): readonly FormItem[] {
  return childrenOf(template).flatMap((field) => {
    const key = field.template.at(-1) as string;
    return key === SIDE
      ? field.sides.flatMap((side) => itemsOf(field, [...way, side]))
      : itemsOf(field, [...way, key]);
  });
}

/** The items of one field: one, or one beside it for what a single type of answer cannot say. */
function itemsOf(field: Field, way: readonly string[]): readonly FormItem[] {
  const { kind, template } = field;
  const at = way.indexOf(INDEX);
  const own: FormItem = {
    linkId: linkIdOf(way),
    field,
    way,
    list: at < 0 ? undefined : linkIdOf(way.slice(0, at)),
    type: typeOf(field),
    role: 'value',
    options: optionsOf(field),
    repeats: kind === 'words' || kind === 'list',
    items: [],
  };
  const beside = (end: string, role: ItemRole, options: readonly string[]): FormItem => ({
    ...own,
    linkId: `${own.linkId}.${end}`,
    type: 'choice',
    role,
    options,
    repeats: false,
  });
  if (kind === 'pressure')
    return [{ ...own, type: 'quantity', role: 'figure', options: [] }, beside('word', 'word', NO_PRESSURE)];
  if (kind === 'list') {
    const entry = childrenOf(template)[0] as Field;
    const inEntry = { ...own, field: entry, list: own.linkId };
    const none: FormItem = {
      ...inEntry,
      way: [...way, INDEX],
      linkId: `${own.linkId}.no-more`,
      type: 'choice',
      role: 'empty',
      options: [EMPTY],
      repeats: false,
    };
    return [
      beside('none', 'empty', [EMPTY_LIST]),
      { ...own, items: [none, ...itemsIn(entry.template, [...way, INDEX])] },
    ];
  }
  if (kind === 'object')
    return [{ ...own, items: [beside('no-more', 'empty', [EMPTY]), ...itemsIn(template, way)] }];
  return [own];
}

/** The items of the form, as they stand in the record. */
export const FORM: readonly FormItem[] = itemsIn([], []);

function flat(items: readonly FormItem[]): readonly FormItem[] {
  return items.flatMap((item) => [item, ...flat(item.items)]);
}

/** Every item by its linkId. */
export const BY_LINK: ReadonlyMap<string, FormItem> = new Map(flat(FORM).map((item) => [item.linkId, item]));

/** Entries of later versions, as JSON in parts; no question to a person. */
export const KEPT = { group: 'kept', part: 'kept.part' } as const;

const isEmpty = (value: Json): boolean =>
  typeof value === 'object' && value !== null && Object.keys(value).length === 0;

/** Whether an item holds a value that stands at its place. */
export function holds({ role, type }: FormItem, value: Json): boolean {
  if (role === 'empty') return isEmpty(value);
  if (role === 'figure') return typeof value === 'number';
  return role === 'word' ? typeof value === 'string' : type !== 'group';
}

/** The words that say a value. */
export function wordsFor({ role, field }: FormItem, value: Json): readonly string[] {
  if (Array.isArray(value)) return value.length ? value.map(String) : [EMPTY_LIST];
  return role === 'empty' ? [EMPTY] : [field.kind === 'yes' ? YES : String(value)];
}

/** The value that a word says. */
export function valueFor({ field: { kind } }: FormItem, word: string): Json {
  if (word === EMPTY_LIST) return [];
  if (word === EMPTY) return {};
  if (kind === 'yes') return true;
  if (kind === 'integer') return Number(word);
  return kind === 'words' ? [word] : word;
}
