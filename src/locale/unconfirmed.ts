import type { SummaryLine } from '../statements/index.js';
import type { BodyPart } from '../report/index.js';
import type { AnatomyWords } from './anatomy.js';
import type { SummaryPart } from './summary.js';

/** The words in which a language offers what an earlier visit found for confirmation. */
export interface UnconfirmedTable {
  /** Heads the list; `when` is empty where the earlier visit has no date. */
  title(when: string): string;
  /** How many are left, and that they count for nothing. */
  left(count: number): string;
  readonly none: string;
  /** What is never offered. */
  readonly anew: string;
  readonly confirm: string;
  all(count: number): string;
  readonly undo: string;
  confirmed(count: number): string;
  readonly takenBack: string;
  readonly trunk: string;
  readonly patient: string;
  readonly unread: string;
}

interface Areas {
  readonly anatomy: Pick<AnatomyWords, 'limbs'>;
  readonly summary: (
    parts: readonly { readonly id: 'pulses'; readonly lines: readonly SummaryLine[] }[],
  ) => SummaryPart[];
}

/** Builds the words for what is to be confirmed: one builder for every language. */
export function unconfirmedFrom(table: UnconfirmedTable, { anatomy, summary }: Areas) {
  return {
    table,
    part: (at: BodyPart | undefined): string =>
      at === undefined ? table.patient : at === 'trunk' ? table.trunk : anatomy.limbs[at],
    /** What was found, as the summary says it. */
    found: (lines: readonly SummaryLine[]): string =>
      summary([{ id: 'pulses', lines }])
        .flatMap((part) => part.lines)
        .join(' '),
  };
}
export type UnconfirmedWords = ReturnType<typeof unconfirmedFrom>;
