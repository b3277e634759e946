import type { PatientVisit } from '../../comparison/visits.js';
import type { VisitsWords } from '../../locale/visits.js';
import type { VisitLog } from './log.js';
import type { Pictures } from './pictures.js';

/** All that a rendering of the visits is made from. */
export interface Scene {
  /** From the first to the last. */
  readonly order: readonly PatientVisit[];
  /** What the records tell, once they may be read. */
  readonly log: VisitLog | undefined;
  readonly pictures: Pictures;
  /** Numbers of the visits that are compared, the earlier first. */
  readonly pair: readonly number[];
  /** The visit that the keys are at and that the plots read. */
  readonly active: number;
  readonly words: VisitsWords;
  readonly counts: (at: number) => boolean;
}

/** Whether visits lie so close that their dates alone do not tell them apart. */
function sameDays(order: readonly PatientVisit[]): boolean {
  const days = order.slice(-50).map(({ at }) => at?.slice(0, 10));
  return new Set(days).size < days.length;
}

/** The date of a visit, with its time where several visits share a day. */
export const whenOf = ({ order, words }: Pick<Scene, 'order' | 'words'>, at: number): string =>
  words.when(order[at]?.at, sameDays(order));
