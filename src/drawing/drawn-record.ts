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

function draw(examination: Examination, earlier?: Examination): DrawnRecord {
  const reading = readExamination(examination, earlier);
  const marks = marksOf(reading);
  return { marks, flow: drawnFlow(examination, marks), collaterals: collateralsOf(reading.rule) };
}

const alone = remembered((examination) => draw(examination));
const beside = new WeakMap<Examination, (examination: Examination) => DrawnRecord>();

/** Marks, flow and collaterals of a record, read beside an earlier one of the patient if there is one; memoized. */
export function drawnRecord(examination: Examination, earlier?: Examination): DrawnRecord {
  if (!earlier) return alone(examination);
  const known = beside.get(earlier) ?? remembered((one) => draw(one, earlier));
  beside.set(earlier, known);
  return known(examination);
}
