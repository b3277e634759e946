import type { SiteId } from '../anatomy/index.js';
import { say, type Term, termsFrom } from './terms.js';

/** What a language says of one site. */
export interface SiteWords {
  readonly name: string;
  /** Where the name does not fit: on the figure, and at a smaller size beside the line of a limb. */
  readonly short?: string;
  readonly tiny?: string;
  /** Two letters for where no name fits; a legend explains them. */
  readonly code: string;
  /** The same for a reader who is no clinician. */
  readonly plain: { readonly name: string; readonly tiny?: string };
}

export type SiteTable<More = unknown> = Readonly<Record<SiteId, SiteWords & More>>;

/** The name of a site for the least room, where it has one. */
export const tinyName = ({ tiny, plain }: SiteWords): string | undefined =>
  tiny === undefined ? undefined : say(tiny, plain.tiny);

/** The tables by which the rest of a language looks its words up. */
export function columnsOf(
  sites: SiteTable,
): Readonly<Record<'sites' | 'codes', Readonly<Record<SiteId, string>>>> {
  const column = (of: (words: SiteWords) => Term): Readonly<Record<SiteId, string>> =>
    termsFrom(
      Object.fromEntries(Object.entries(sites).map(([site, words]) => [site, of(words)])) as Record<
        SiteId,
        Term
      >,
    );
  return {
    sites: column(({ name, plain }) => ({ trade: name, plain: plain.name })),
    codes: column(({ code }) => ({ trade: code })),
  };
}
