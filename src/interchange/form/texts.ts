import { INDEX } from '../fields.js';
import { type Language, wordOf } from '../labels.js';
import { legible } from '../resource.js';
import { titleOf } from '../speech.js';
import { EMPTY, EMPTY_LIST, type FormItem, YES } from './items.js';

/** What an item asks, with its side: an answer is often shown away from the group that it stands in. */
export function itemText(language: Language, { way, role, options }: FormItem): string {
  const { exchange } = language.parts;
  const title = titleOf(
    language,
    way.map((key) => (key === INDEX ? 0 : key)),
  );
  const beside = {
    value: '',
    figure: '',
    empty: options.includes(EMPTY) ? exchange.noMore : exchange.none,
    word: exchange.fields.noFigure,
  }[role];
  return legible(beside ? `${title}: ${beside}` : title);
}

/** A word that may be chosen, as a person reads it. */
export function optionText(language: Language, { field }: FormItem, word: string): string {
  const { exchange } = language.parts;
  const beside: Readonly<Record<string, string>> = {
    [EMPTY_LIST]: exchange.none,
    [EMPTY]: exchange.noMore,
    [YES]: exchange.yes,
  };
  return legible(beside[word] ?? wordOf(language, field.code, word) ?? word);
}
