/** A language the package ships: what it is called, and how it writes numbers. */
export interface LanguageEntry {
  /** BCP 47 tag, also the name of its folder. */
  readonly tag: string;
  /** Its name in itself. */
  readonly name: string;
  /** What stands between a number and its decimals. */
  readonly decimal: string;
  /** The forms a counted noun takes. */
  readonly plurals: readonly Intl.LDMLPluralRule[];
  /** Regional variants with words of their own. */
  readonly regions: readonly string[];
}

/** Every language the package ships, English first: it is built in, and every other is checked against it. */
export const LANGUAGES = [
  { tag: 'en', name: 'English', decimal: '.', plurals: ['one', 'other'], regions: ['en-US'] },
  { tag: 'de', name: 'Deutsch', decimal: ',', plurals: ['one', 'other'], regions: [] },
] as const satisfies readonly LanguageEntry[];

/** The tag of a language that this library is written in. */
export type LanguageTag = (typeof LANGUAGES)[number]['tag'];
