import type { BedsideReading, IncompleteReading, NotDoneReading, PositionReading } from '../bedside/index.js';
import type { BedsideTestId, ScaleneWay } from '../examination/index.js';
import type { Side } from '../anatomy/index.js';
import type { BedsideLine, MeasuredStatement } from '../statements/index.js';
import { paragraph } from './phrases.js';
import { render, type Renderings } from './render.js';

/** A reading without a result. */
export type Without = NotDoneReading | IncompleteReading;

/** What a language makes of every reading of every test. */
export type BedsideRenderings = {
  readonly [Id in BedsideTestId]: Renderings<BedsideReading<Id>>;
};

/** Renders what a result means. */
export function bedsideReader(
  readings: BedsideRenderings,
): <Id extends BedsideTestId>(id: Id, reading: BedsideReading<Id>) => string {
  return (id, reading) => render(readings[id] as Renderings<PositionReading>, reading as PositionReading);
}

/** The renderings of a position that was taken up in several ways, from those of one position. */
export function inWays(
  position: Renderings<PositionReading>,
  say: (ways: readonly ScaleneWay[], found: string) => string,
): Renderings<BedsideReading<'scalene'>> {
  const without = (reading: Without): string => render(position, reading);
  const of = (reading: Exclude<BedsideReading<'scalene'>, Without>): string =>
    say(reading.params.ways, render(position, reading));
  return {
    'not-done': without,
    incomplete: without,
    'pulse-and-symptoms': of,
    symptoms: of,
    'pulse-lost': of,
    'pulse-reduced': of,
    negative: of,
  };
}

/** The words of one line of the summary. */
interface LineWords {
  subject(test: BedsideTestId, side: Side): string;
  phrases(measured: readonly MeasuredStatement[]): readonly string[];
  note(note: string): string;
  read<Id extends BedsideTestId>(id: Id, reading: BedsideReading<Id>): string;
}

/** Says one side of one test: what was measured, any note, and what it means. */
export function bedsideLine({ subject, phrases, note, read }: LineWords): (line: BedsideLine) => string {
  return (line) => {
    const what = [...phrases(line.measured), ...(line.note ? [note(line.note)] : [])];
    const found = what.length ? `${what.join('; ')}.` : '';
    return `${subject(line.test, line.side)}: ${paragraph([found, read(line.test, line.reading)])}`;
  };
}
