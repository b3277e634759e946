/** How a text of a person's own stands behind the record. */
export interface Behind {
  /** Sentences that the record says since, and the text does not. */
  readonly missing: readonly string[];
  /** Sentences in the text that the record says no longer. */
  readonly outdated: readonly string[];
}

/**
 * Compares a person's text with what the record says now. A sentence that the person left out or rewrote, and that the record says as
 * before, is nobody's business.
 * @param own the person's text
 * @param then the sentences that were composed when the person wrote
 * @param now those composed of the record as it is
 * @returns `undefined` where the record says the same as then
 */
export function behindOf(own: string, then: readonly string[], now: readonly string[]): Behind | undefined {
  const [before, after] = [new Set(then), new Set(now)];
  const added = now.filter((one) => !before.has(one));
  const gone = then.filter((one) => !after.has(one));
  if (!added.length && !gone.length) return undefined;
  return {
    missing: added.filter((one) => !own.includes(one)),
    outdated: gone.filter((one) => own.includes(one)),
  };
}

/** A text with a sentence in its place: after the nearest one before it that stands there, else at the end. */
export function withSentence(
  own: string,
  sentence: string,
  now: readonly string[],
): { text: string; at: number } {
  const before = now.slice(0, now.indexOf(sentence)).reverse();
  const last = before.find((one) => own.includes(one));
  const at = last === undefined ? own.length : own.indexOf(last) + last.length;
  const gap = at === 0 || /\s$/.test(own.slice(0, at)) ? '' : ' ';
  return { text: `${own.slice(0, at)}${gap}${sentence}${own.slice(at)}`, at: at + gap.length };
}

/** A text without a sentence, and without the blank before it. */
export function withoutSentence(own: string, sentence: string): { text: string; at: number } {
  const at = own.indexOf(sentence);
  if (at < 0) return { text: own, at: own.length };
  const end = at + sentence.length;
  const start = own[at - 1] === ' ' ? at - 1 : at;
  // A sentence that began its line takes the blank behind it instead.
  const until = start === at && own[end] === ' ' ? end + 1 : end;
  return { text: own.slice(0, start) + own.slice(until), at: start };
}
