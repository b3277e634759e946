import { parseExamination, partMessagesFor, summaryStatements, triage } from 'pulse-map/core';
import { PATHWAY } from './flag-line.js';
import { EXAMINATION_NAME, type Patient, type Visit } from './types.js';

/** What a search can find in a visit, a sentence a line: the form's fields, every line of the summary, the red flags. */
const LINES = new WeakMap<Visit, readonly string[]>();

function recordLines(text: string): readonly string[] {
  let record: unknown;
  try {
    record = JSON.parse(text);
  } catch {
    return [];
  }
  const parsed = parseExamination(record);
  if (!parsed.ok) return [];
  const { whole, flags } = partMessagesFor('en');
  return [
    ...triage(parsed.value, PATHWAY.settings).flags.map((flag) => flags.heading(flag)),
    ...whole.summary(summaryStatements(parsed.value)).flatMap(({ lines }) => lines),
  ];
}

function linesOf(visit: Visit): readonly string[] {
  const known = LINES.get(visit);
  if (known) return known;
  const { [EXAMINATION_NAME]: record, ...fields } = visit.fields;
  const lines = [...Object.values(fields).filter(Boolean), ...(record ? recordLines(record) : [])];
  LINES.set(visit, lines);
  return lines;
}

/** A visit that a search found, with the first line in which it did. */
export interface Found {
  readonly visit: Visit;
  readonly line: string;
}

const wordsOf = (query: string): readonly string[] => query.toLowerCase().split(/\s+/).filter(Boolean);

/**
 * Where the words of a query stand: in the patient's own data, or all of them in one visit.
 * @returns `undefined` where nothing was found; an empty list where the patient's data match and no visit does
 */
export function searched(
  patient: Patient,
  visits: readonly Visit[],
  query: string,
): readonly Found[] | undefined {
  const words = wordsOf(query);
  const holds = (text: string) => words.every((word) => text.includes(word));
  const found = visits.flatMap((visit): Found[] => {
    const lines = linesOf(visit);
    if (!holds(lines.join(' ').toLowerCase())) return [];
    const line = lines.find((one) => words.some((word) => one.toLowerCase().includes(word)));
    return line === undefined ? [] : [{ visit, line }];
  });
  const self = holds([patient.name, patient.number, patient.summary].join(' ').toLowerCase());
  return found.length || self ? found : undefined;
}
