import type { LimbKey, Place } from '../anatomy/index.js';
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
  SummaryLine,
  SummaryPartId,
  SummaryPartStatement,
} from '../statements/index.js';
import { sentence } from './phrases.js';
import { render, type Renderings } from './render.js';

/** One part of the summary: its heading and a line for each thing recorded. */
export interface SummaryPart {
  readonly id: SummaryPartId;
  readonly heading: string;
  readonly lines: readonly string[];
}

/** How a language says each thing that a summary holds, as a phrase. */
interface SummaryWords {
  readonly parts: Readonly<Record<SummaryPartId, string>>;
  call(call: TeamCall): string;
  onset(onset: Onset): string;
  limb(key: LimbKey): string;
  place(place: Place): string;
  limbHistory(statement: LimbHistoryStatement): string;
  history(statement: HistoryStatement): string;
  circulation(statement: CirculationStatement): string;
  context(statement: ContextStatement): string;
  inspection(statement: InspectionStatement): string;
  found(statement: FoundStatement): string;
  /** A whole line. */
  bedside(line: BedsideLine): string;
  pressure(statement: PressureStatement, unit: 'mmHg' | 'kPa'): string;
  method(statement: MethodStatement): string;
  staging(staging: Staging): readonly string[];
}

const line = (phrase: string): string => `${sentence(phrase)}.`;
const about = (subject: string, phrases: readonly string[]): string =>
  line(`${subject}: ${phrases.join('; ')}`);

/** Says a summary: every line a sentence, each part under its heading. */
export function summaryFrom(words: SummaryWords): (parts: readonly SummaryPartStatement[]) => SummaryPart[] {
  const lines: Renderings<SummaryLine, readonly string[]> = {
    call: ({ call }) => [
      call.limb ? about(words.limb(call.limb), [words.call(call)]) : line(words.call(call)),
    ],
    onset: ({ onset }) => [line(words.onset(onset))],
    'limb-history': ({ limb, statements }) => [about(words.limb(limb), statements.map(words.limbHistory))],
    history: ({ statement }) => [line(words.history(statement))],
    circulation: ({ statement }) => [line(words.circulation(statement))],
    context: ({ statement }) => [line(words.context(statement))],
    'limb-inspection': ({ limb, statements }) => [about(words.limb(limb), statements.map(words.inspection))],
    site: ({ place, statements }) => [about(words.place(place), statements.map(words.found))],
    bedside: (one) => [words.bedside(one)],
    pressure: ({ statement, unit }) => [line(words.pressure(statement, unit))],
    method: ({ statement }) => [line(words.method(statement))],
    staging: ({ staging }) => words.staging(staging).map(line),
  };
  return (parts) =>
    parts.map((part) => ({
      id: part.id,
      heading: words.parts[part.id],
      lines: part.lines.flatMap((one) => render(lines, one)),
    }));
}
