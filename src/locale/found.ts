import type { BruitFinding, Grade, PulseFinding, ScaleId } from '../examination/index.js';
import {
  earlierStatement,
  type FoundStatement,
  foundStatements,
  type ShortStatement,
  shortStatements,
} from '../statements/index.js';
import { render, type Renderings } from './render.js';

/** The words in which a language says what was found at a site. */
interface FoundWords {
  readonly found: Renderings<FoundStatement>;
  readonly short: Renderings<ShortStatement>;
  readonly grades: Readonly<Record<Grade, string>>;
  readonly notExamined: string;
  /** What is recorded now, with what was recorded before. */
  was(now: string, before: string): string;
}

/** Says what was found at a site, in full, in short, and compared with an earlier record. */
export function foundFrom({ found, short, grades, notExamined, was }: FoundWords) {
  const shortly = (statement: ShortStatement): string => render(short, statement);
  return {
    found: (statement: FoundStatement) => render(found, statement),
    /** What was found at a place, as one says it: "2, normal; systolic bruit; thrill". */
    findings: (pulse: PulseFinding | undefined, bruit: BruitFinding | undefined, scale: ScaleId): string =>
      foundStatements(pulse, bruit, scale)
        .map((one) => render(found, one))
        .join('; '),
    /** The same in as few words as stand under a site's name; a normal pulse needs none on a scale of numbers. */
    findingShort: (
      pulse: PulseFinding | undefined,
      bruit: BruitFinding | undefined,
      scale: ScaleId,
    ): string => shortStatements(pulse, bruit, scale).map(shortly).join(', '),
    /** A changed finding with what it was: "absent, was normal". */
    changed: (
      now: string,
      grade: Grade | undefined,
      before: PulseFinding | undefined,
      heard: BruitFinding | undefined,
      scale: ScaleId,
    ): string => {
      const is = now || (grade ? grades[grade] : notExamined);
      const earlier = earlierStatement(before, heard, scale);
      return earlier ? was(is, shortly(earlier)) : is;
    },
  };
}
