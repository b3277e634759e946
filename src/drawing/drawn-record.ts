import { type Examination, remembered } from '../examination/index.js';
import { readExamination } from '../localisation/index.js';
import { type Collateral, collateralsOf } from './collaterals.js';
import { type DrawnFlow, drawnFlow, type LesionMark } from './flow.js';
import { marksOf } from './marks-of-reading.js';

/** What a record adds to the arteries, independent of the view. */
export interface DrawnRecord {
  readonly marks: readonly LesionMark[];
  readonly flow: readonly DrawnFlow[];
  readonly collaterals: readonly Collateral[];
}

/** Marks, flow and collaterals of a record; memoized by record. */
export const drawnRecord = remembered((examination: Examination): DrawnRecord => {
  const reading = readExamination(examination);
  const marks = marksOf(reading);
  return { marks, flow: drawnFlow(examination, marks), collaterals: collateralsOf(reading.rule) };
});
