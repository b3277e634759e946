import type { Json, RecordPath } from '../../examination/index.js';
import type { UnreadCode } from '../../statements/index.js';
import { saidSides } from '../body-site.js';
import { SYSTEMS, unitOf } from '../codes.js';
import { INDEX, sideOf } from '../fields.js';
import { type Found, joined, type Reading, unread, withLists } from '../found.js';
import { type Kept, type KeptText, readKeptTexts } from '../kept.js';
import { at, isElement, listAt, textAt } from '../resource.js';
import { valueIn, valueNames } from '../values.js';
import { BY_LINK, type FormItem, KEPT, valueFor, YES } from './items.js';

/*
 * Answers to the form, by their linkIds, wherever they stand. What another program answered otherwise is read where it leaves no doubt.
 */

/** The entry of a list that an item stands in. */
interface Entry {
  readonly list: string;
  readonly place: number;
}

/** Deepest nesting that is followed; the form has six levels. */
const DEEPEST = 24;
const ITEM_PARTS = new Set(['linkId', 'id', 'text', 'definition', 'answer', 'item', 'subject']);

const ANSWER_PARTS = /^(id|item|_?value[A-Z].*)$/;

/** The word of an answer: of this form, or the very word as text. */
function wordIn(item: FormItem, answer: unknown): string | undefined {
  const coding = at(answer, 'valueCoding');
  const { code } = item.field;
  const own = textAt(coding, 'code') ?? '';
  const isOwn = textAt(coding, 'system') === SYSTEMS.value && own.startsWith(`${code}.`);
  const text = textAt(answer, 'valueString') ?? String(at(answer, 'valueInteger') ?? '');
  const word = coding === undefined ? text : isOwn ? own.slice(code.length + 1) : '';
  if (item.options.includes(word)) return word;
  return at(answer, 'valueBoolean') === true && item.options[0] === YES ? YES : undefined;
}

/** The value of an answer, or why it is none. */
function answered(item: FormItem, answer: unknown): { readonly value: Json } | { readonly why: UnreadCode } {
  const names = new Set(valueNames(answer).map((name) => name.replace('_', '')));
  if (names.size !== 1) return { why: names.size ? 'contradicts' : 'not-understood' };
  if (item.type === 'choice') {
    const word = wordIn(item, answer);
    if (word !== undefined) return { value: valueFor(item, word) };
    const isNo = at(answer, 'valueBoolean') === false && item.options[0] === YES;
    return { why: isNo ? 'not-kept' : 'not-understood' };
  }
  const bare = at(answer, 'valueDecimal') ?? at(answer, 'valueInteger');
  if (item.type === 'quantity' && typeof bare === 'number')
    return item.role === 'value' && unitOf(item.field.code) === '1' ? { value: bare } : { why: 'unit' };
  if (item.type === 'dateTime' && names.has('valueDate')) return { why: 'partial-time' };
  return valueIn(item.field, answer);
}

class Reader {
  readonly readings: Reading[] = [];
  readonly kept: KeptText[] = [];
  readonly #places = new Map<string, number>();

  /** An entry of a list opens with each item of its group. */
  #entry(item: FormItem, around: Entry | undefined): Entry | undefined {
    if (!(item.type === 'group' && item.repeats)) return around;
    const place = this.#places.get(item.linkId) ?? 0;
    this.#places.set(item.linkId, place + 1);
    return { list: item.linkId, place };
  }

  #answers(item: FormItem, own: Json, path: string, entry: Entry | undefined): void {
    const answers = listAt(own, 'answer');
    const isElsewhere = item.way.includes(INDEX) && entry?.list !== item.list;
    if (answers.length && (item.type === 'group' || isElsewhere)) {
      this.readings.push(unread(path, 'not-understood'));
      return;
    }
    const way: RecordPath = item.way.map((key) => (key === INDEX ? (entry?.place ?? 0) : key));
    const said = saidSides(textAt(own, 'text') ?? '');
    const side = sideOf(way);
    if (answers.length && side !== undefined && said.length === 1 && said[0] !== side) {
      this.readings.push(unread(path, 'sides-differ'));
      return;
    }
    for (const [i, answer] of answers.entries()) {
      const where = `${path}.answer[${i}]`;
      const read = answered(item, answer);
      const strange = isElement(answer) ? Object.keys(answer).filter((name) => !ANSWER_PARTS.test(name)) : [];
      if (strange.includes('modifierExtension')) {
        this.readings.push(unread(where, 'modifier'));
        continue;
      }
      for (const name of strange) this.readings.push(unread(`${where}.${name}`, 'not-kept'));
      this.readings.push(
        'why' in read
          ? unread(where, read.why)
          : { found: [{ path: way, value: read.value, at: where }], unread: [] },
      );
    }
  }

  #keptEntry(own: Json, path: string): void {
    const parts = listAt(own, 'item').flatMap((part) => listAt(part, 'answer'));
    this.kept.push({ text: parts.map((part) => textAt(part, 'valueString') ?? '').join(''), at: path });
  }

  item(own: Json, path: string, around: Entry | undefined, depth: number): void {
    if (at(own, 'modifierExtension') !== undefined || depth > DEEPEST) {
      this.readings.push(unread(path, depth > DEEPEST ? 'not-understood' : 'modifier'));
      return;
    }
    const linkId = textAt(own, 'linkId') ?? '';
    if (linkId === KEPT.group) {
      this.#keptEntry(own, path);
      return;
    }
    const item = BY_LINK.get(linkId);
    const inner = listAt(own, 'item');
    const answers = listAt(own, 'answer');
    // A group of another form is told by what stands in it.
    if (!item && (answers.length || inner.length === 0)) this.readings.push(unread(path, 'unknown-code'));
    const entry = item ? this.#entry(item, around) : around;
    if (item) this.#answers(item, own, path, entry);
    const strange = isElement(own) ? Object.keys(own).filter((name) => !ITEM_PARTS.has(name)) : [];
    for (const name of strange) this.readings.push(unread(`${path}.${name}`, 'not-kept'));
    this.items(inner, path, entry, depth + 1);
    for (const [i, answer] of answers.entries())
      this.items(listAt(answer, 'item'), `${path}.answer[${i}]`, entry, depth + 1);
  }

  items(own: readonly Json[], path: string, around: Entry | undefined, depth: number): void {
    for (const [i, one] of own.entries())
      this.item(one, `${path ? `${path}.` : ''}item[${i}]`, around, depth);
  }
}

/** What the answers of a QuestionnaireResponse say. */
export function readAnswers(
  response: unknown,
  path: string,
): Reading & { readonly found: readonly Found[]; readonly kept: readonly Kept[] } {
  const reader = new Reader();
  reader.items(listAt(response, 'item'), path, undefined, 0);
  const { found, unread: left } = joined(reader.readings);
  const { kept, unread: bad } = readKeptTexts(reader.kept);
  return { found: withLists(found), unread: [...left, ...bad], kept };
}

function hasLink(response: unknown, depth: number): boolean {
  return (
    depth < DEEPEST &&
    listAt(response, 'item').some(
      (item) =>
        BY_LINK.has(textAt(item, 'linkId') ?? '') ||
        hasLink(item, depth + 1) ||
        listAt(item, 'answer').some((answer) => hasLink(answer, depth + 1)),
    )
  );
}

/** Whether something is a QuestionnaireResponse that has a linkId of this form. */
export function isOfForm(response: unknown): boolean {
  return textAt(response, 'resourceType') === 'QuestionnaireResponse' && hasLink(response, 0);
}
