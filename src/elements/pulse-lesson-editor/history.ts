/** Most texts that can be gone back to. */
const MOST = 500;

/** What stands in a field, and every text before and after it that undo and redo lead to. */
export interface TextHistory {
  readonly text: string;
  readonly before: readonly string[];
  readonly after: readonly string[];
  /** What the last change was; a further one of the same kind belongs to the same step. */
  readonly kind?: string;
}

export const historyOf = (text: string): TextHistory => ({ text, before: [], after: [] });

/**
 * The history after a change.
 * @param kind what was done, where several of them make one step; without one the change is a step of its own
 */
export function changed(history: TextHistory, text: string, kind?: string): TextHistory {
  if (text === history.text) return history;
  const goesOn = kind !== undefined && kind === history.kind;
  const before = goesOn ? history.before : [...history.before, history.text].slice(-MOST);
  return { text, before, after: [], ...(kind !== undefined && { kind }) };
}

/** The history one step back, as it is where there is none. */
export function undone({ text, before, after }: TextHistory): TextHistory {
  const last = before.at(-1);
  return last === undefined
    ? { text, before, after }
    : { text: last, before: before.slice(0, -1), after: [text, ...after] };
}

/** The history one step forward again, as it is where there is none. */
export function redone({ text, before, after }: TextHistory): TextHistory {
  const [next, ...rest] = after;
  return next === undefined
    ? { text, before, after }
    : { text: next, before: [...before, text], after: rest };
}
