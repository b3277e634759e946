import type { Examination } from '../../examination/index.js';
import type { NoteAnswer, NoteDoubt, NoteEffect, NoteFinding, NoteReading } from '../../notes/index.js';
import type * as Notes from '../../notes/index.js';

/** One finding that a note would write, with what that does to the record. */
export interface Planned {
  readonly finding: NoteFinding;
  readonly effect: NoteEffect;
  /** Known by this while the note is being mended. */
  readonly key: string;
}

/** A question with its answer. */
export interface Asked {
  readonly doubt: NoteDoubt;
  readonly number: number;
  readonly key: string;
  /** Missing while the question is open. */
  readonly answer: NoteAnswer | undefined;
  /** What the answer would write. */
  readonly planned: readonly Planned[];
}

/** What a note would do to a record by the answers given so far. */
export interface Plan {
  readonly sure: readonly Planned[];
  readonly asked: readonly Asked[];
  /** Numbers of the questions that are open. */
  readonly open: readonly number[];
  /** What would be written. */
  readonly writes: readonly NoteFinding[];
}

const keyOf = ({ part, place, patch }: NoteFinding): string =>
  `${part} ${place.side} ${place.site} ${Object.keys(patch).join()}`;

/**
 * Joins a reading with what the person chose. What replaces something recorded is written only where it was ticked.
 * @param answers by the key of a question, so that they outlast an edit elsewhere in the note
 * @param replacing keys of the findings that may replace
 */
export function planOf(
  { noteEffect }: Pick<typeof Notes, 'noteEffect'>,
  examination: Examination,
  text: string,
  reading: NoteReading,
  answers: ReadonlyMap<string, NoteAnswer>,
  replacing: ReadonlySet<string>,
): Plan {
  const planned = (finding: NoteFinding): Planned => ({
    finding,
    effect: noteEffect(examination, finding),
    key: keyOf(finding),
  });
  const seen = new Map<string, number>();
  const asked = reading.doubts.map((doubt, i): Asked => {
    const words = doubt.spans.map(({ start, end }) => text.slice(start, end)).join(' ');
    const alike = `${doubt.code} ${words} ${doubt.choices.map((choice) => choice.map(keyOf).join()).join('|')}`;
    const nth = seen.get(alike) ?? 0;
    seen.set(alike, nth + 1);
    const key = `${alike} ${nth}`;
    const answer = answers.get(key) ?? (doubt.taken ? 0 : undefined);
    const chosen = typeof answer === 'number' ? (doubt.choices[answer] ?? []) : [];
    return { doubt, number: i + 1, key, answer, planned: chosen.map(planned) };
  });
  const sure = reading.findings.map(planned);
  return {
    sure,
    asked,
    open: asked.flatMap(({ answer, number }) => (answer === undefined ? [number] : [])),
    writes: [...sure, ...asked.flatMap((one) => one.planned)].flatMap(({ effect, key, finding }) =>
      effect === 'adds' || (effect === 'replaces' && replacing.has(key)) ? [finding] : [],
    ),
  };
}
