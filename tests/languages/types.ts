import type { Language } from '../../src/locale/index.js';
import type { LanguageTag } from '../../src/locale/list.js';

/** What the tests need to know of a language beside its words. */
export interface LanguageSamples {
  readonly tag: LanguageTag;
  /** Its name in English, for titles. */
  readonly english: string;
  load(): Promise<Language>;
  /** Words of other languages that are never its own, in lower case. */
  readonly foreign: ReadonlySet<string>;
  /** Words spelt as in English: what consists of nothing else may be said alike. */
  readonly alike: ReadonlySet<string>;
  /** What is quoted of other languages in its texts. */
  readonly quoted: RegExp;
  /** A number as it must not be written. */
  readonly wrongNumber: RegExp;
  /** 1 May 2026 in full. */
  readonly date: string;
  /** Two faults of a record: a grade beside a reason, and the bound of a text. */
  readonly faults: { readonly conflict: string; readonly atLeastOne: string };
  /** How the map's figure is called, and what is said of a left superficial femoral block. */
  readonly figure: RegExp;
  readonly block: string;
  /** What its plain register must hold: see `plain.test.ts`. */
  readonly plain: {
    /** Words of the trade that no plain text holds. */
    readonly trade: RegExp;
    /** The patient's sides, however they are declined. */
    readonly sides: readonly [right: RegExp, left: RegExp];
  };
  /** Notes of those who wrote the tables, which no clinician and no patient reads. */
  readonly notes: RegExp;
  /** Parts of a site's chooser that unfold. */
  readonly chooser: { readonly leftFemoral: string; readonly folds: readonly RegExp[] };
}
