import type { BruitFinding, PulseFinding, ScaleId, ScaleStep } from '../examination/index.js';
import {
  earlierStatement,
  type FoundStatement,
  foundStatements,
  type ShortStatement,
  shortStatements,
} from '../statements/index.js';
import type { ExaminationWords } from './examination.js';
import { render, type Renderings } from './render.js';

/** The words in which a language says what was found at a site, beside those of the record. */
export interface FoundTable {
  couldNotListen(reason: string): string;
  readonly bruit: string;
  readonly thrill: string;
  readonly doppler: string;
  note(note: string): string;
  /** What is recorded now, with what was recorded before. */
  was(now: string, before: string): string;
  /** What was recorded before, where nothing is recorded now. */
  before(found: string): string;
}

/** Says what was found at a site, in full, in short, and compared with an earlier record. */
export function foundFrom(table: FoundTable, examination: ExaminationWords) {
  const { bruits, dopplers, grades, reasons } = examination;
  const gradeOf = ({ grade, increased }: ScaleStep): string =>
    increased ? examination.increased : grades[grade];
  const found: Renderings<FoundStatement> = {
    step: ({ step }) => examination.step(step),
    'could-not-feel': ({ reason }) => examination.couldNot(reason),
    'could-not-listen': ({ reason }) => table.couldNotListen(reasons[reason]),
    thrill: () => table.thrill,
    expansile: () => examination.expansile,
    doppler: ({ signal }) => `${table.doppler} ${dopplers[signal]}`,
    bruit: ({ bruit }) => bruits[bruit],
    note: ({ note }) => table.note(note),
  };
  const short: Renderings<ShortStatement> = {
    grade: ({ step }) => gradeOf(step),
    reason: ({ reason }) => reasons[reason],
    unheard: ({ reason }) => reasons[reason],
    heard: ({ bruit }) => bruits[bruit],
    bruit: () => table.bruit,
    thrill: () => table.thrill,
    expansile: () => examination.expansile,
  };
  const shortly = (statement: ShortStatement): string => render(short, statement);
  /** Beside another finding a reason alone would read as one: it was "absent", or a "dressing". */
  const told = (statement: ShortStatement): string =>
    statement.code === 'reason'
      ? examination.couldNot(statement.reason)
      : statement.code === 'unheard'
        ? table.couldNotListen(reasons[statement.reason])
        : shortly(statement);
  return {
    gradeOf,
    found: (statement: FoundStatement) => render(found, statement),
    /** What was found at a place, as one says it: "2, normal; systolic bruit; thrill". */
    findings: (
      pulse: PulseFinding | undefined,
      bruit: BruitFinding | undefined,
      scale: ScaleId,
      between = '; ',
    ): string =>
      foundStatements(pulse, bruit, scale)
        .map((one) => render(found, one))
        .join(between),
    /** The same in as few words as stand under a site's name; a normal pulse needs none on a scale of numbers. */
    findingShort: (
      pulse: PulseFinding | undefined,
      bruit: BruitFinding | undefined,
      scale: ScaleId,
    ): string => shortStatements(pulse, bruit, scale).map(shortly).join(', '),
    /** A changed finding with what it was: "absent, was normal"; "absent, before: not assessable: dressing". */
    changed: (
      pulse: PulseFinding | undefined,
      bruit: BruitFinding | undefined,
      before: PulseFinding | undefined,
      heard: BruitFinding | undefined,
      scale: ScaleId,
    ): string => {
      const now = shortStatements(pulse, bruit, scale);
      const is = now.map(told).join(', ') || (pulse?.grade ? grades[pulse.grade] : '');
      const earlier = earlierStatement(before, heard, scale);
      if (!earlier) return is || examination.notExamined;
      if (!is) return table.before(told(earlier));
      const graded = ![earlier, ...now].some((one) => 'reason' in one);
      return graded ? table.was(is, told(earlier)) : `${is}, ${table.before(told(earlier))}`;
    },
    /** What an earlier record found at a place; empty where nobody examined it. */
    before: (pulse: PulseFinding | undefined, bruit: BruitFinding | undefined, scale: ScaleId): string => {
      const earlier = earlierStatement(pulse, bruit, scale);
      return earlier ? table.before(told(earlier)) : '';
    },
  };
}
