import type { SiteId } from '../anatomy/index.js';

/** What a language says of one site. */
export interface SiteWords {
  readonly name: string;
  /** Where the name does not fit: on the figure, and at a smaller size beside the line of a limb. */
  readonly short?: string;
  readonly tiny?: string;
  /** Two letters for where no name fits; a legend explains them. */
  readonly code: string;
  /** Where and how to examine it, in one sentence. */
  readonly technique: string;
}

export type SiteTable<More = unknown> = Readonly<Record<SiteId, SiteWords & More>>;

/** The tables by which the rest of a language looks its words up. */
export function columnsOf(
  sites: SiteTable,
): Readonly<Record<'sites' | 'codes' | 'technique', Record<SiteId, string>>> {
  const column = (of: (words: SiteWords) => string): Record<SiteId, string> =>
    Object.fromEntries(Object.entries(sites).map(([site, words]) => [site, of(words)])) as Record<
      SiteId,
      string
    >;
  return {
    sites: column(({ name }) => name),
    codes: column(({ code }) => code),
    technique: column(({ technique }) => technique),
  };
}
