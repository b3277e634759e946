import type { Bruit, DopplerSignal, Grade, Onset, Reason, ScaleId, ScaleStep } from '../examination/index.js';
import { together } from './terms.js';
import type { Of } from './words.js';

/** The words of what is recorded at a site. */
export interface ExaminationTable {
  readonly grades: Of<Grade>;
  /** A step between normal and bounding, on the scale that has one. */
  readonly increased: string;
  readonly expansile: string;
  readonly reasons: Of<Reason>;
  readonly bruits: Of<Bruit>;
  readonly dopplers: Of<DopplerSignal>;
  readonly scales: Of<ScaleId>;
  readonly onsets: Of<Onset>;
  readonly notExamined: string;
  readonly couldNotExamine: string;
  /** Said of a place or field that holds a word of a later version. */
  readonly unknownHere: string;
  /** How many entries of a later version a record holds. */
  unknownEntries(count: number): string;
}

/** The words of what is recorded at a site. */
export function recordedFrom(table: ExaminationTable) {
  return together(table, {
    couldNot: (reason: Reason): string => `${table.couldNotExamine}: ${table.reasons[reason]}`,
    /** A step of a scale as one says it: "2, normal", or the word alone. */
    step: ({ numeral, grade, increased }: ScaleStep): string => {
      const word = increased ? table.increased : table.grades[grade];
      return numeral === null ? word : `${numeral}, ${word}`;
    },
  });
}
export type ExaminationWords = ReturnType<typeof recordedFrom>;
