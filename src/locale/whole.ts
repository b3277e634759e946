import type { LimbKey, Place, Side } from '../anatomy/index.js';
import type { Onset, Staging, TeamCall } from '../examination/index.js';
import type {
  BedsideLine,
  CirculationStatement,
  ContextStatement,
  FoundStatement,
  HistoryStatement,
  InspectionStatement,
  LimbHistoryStatement,
  MethodStatement,
  PressureStatement,
  SummaryPartId,
} from '../statements/index.js';
import { type SummaryPart, summaryFrom } from './summary.js';
import { together } from './terms.js';
import { type Of, without } from './words.js';

export type { SummaryPart };
/** A part of the examination. */
export type PartId = SummaryPartId | 'summary';

/** The words of the examination as a whole. */
export interface WholeTable {
  readonly name: string;
  readonly parts: Of<PartId>;
  readonly toolbar: string;
  readonly undo: string;
  readonly redo: string;
  readonly contents: string;
  /** How much is recorded in a part. */
  count(recorded: number): string;
  readonly nothingYet: string;
  open(part: string): string;
  readonly keys: string;
  readonly legs: string;
  readonly arms: string;
  readonly limb: string;
  readonly right: string;
  readonly left: string;
  readonly notStated: string;
  readonly nothing: string;
  /** What stands between a number and its decimals. */
  readonly point: string;
  onset(onset: string): string;
}

/** The areas of a language that a summary is made of. */
export interface Areas {
  readonly anatomy: {
    readonly limbs: Readonly<Record<LimbKey, string>>;
    readonly sideLetters: Readonly<Record<Side, string>>;
    place(place: Place): string;
  };
  readonly examination: { readonly onsets: Readonly<Record<Onset, string>> };
  readonly flags: { called(call: TeamCall, by: 'date'): string };
  readonly history: {
    limb(statement: LimbHistoryStatement): string;
    whole(statement: HistoryStatement): string;
    circulation(statement: CirculationStatement): string;
  };
  readonly context: { said(statement: ContextStatement): string };
  readonly inspection: { limb(statement: InspectionStatement): string };
  readonly map: { found(statement: FoundStatement): string };
  readonly bedside: { line(line: BedsideLine): string };
  readonly pressures: {
    said(statement: PressureStatement, unit: 'mmHg' | 'kPa'): string;
    method(statement: MethodStatement): string;
  };
  readonly staging: { said(staging: Staging): readonly string[] };
  decimal(value: number, digits?: number): string;
}

/** The words of the examination as a whole, with its summary. */
export function wholeFrom(table: WholeTable, areas: Areas) {
  const words = without(table, 'nothingYet', 'open', 'onset');
  return together(words, {
    /** A part and how far it is, as its button is called. */
    part: (id: PartId, recorded: number): string =>
      `${words.parts[id]}, ${recorded ? words.count(recorded) : table.nothingYet}`,
    open: (id: PartId): string => table.open(words.parts[id]),
    /** Letters that stand for the sides where there is least room, as on the figure. */
    letters: areas.anatomy.sideLetters,
    /** A number as one writes it, with `digits` to so many decimals. */
    number: (value: number, digits?: number): string => areas.decimal(value, digits),
    onset: (of: Onset): string => table.onset(areas.examination.onsets[of]),
    /** Everything recorded, part by part. */
    summary: summaryFrom({
      parts: words.parts,
      call: (call) => areas.flags.called(call, 'date'),
      onset: (of) => table.onset(areas.examination.onsets[of]),
      limb: (key) => areas.anatomy.limbs[key],
      place: areas.anatomy.place,
      limbHistory: areas.history.limb,
      history: areas.history.whole,
      circulation: areas.history.circulation,
      context: areas.context.said,
      inspection: areas.inspection.limb,
      found: areas.map.found,
      bedside: areas.bedside.line,
      pressure: areas.pressures.said,
      method: areas.pressures.method,
      staging: areas.staging.said,
    }),
  });
}
export type WholeWords = ReturnType<typeof wholeFrom>;
