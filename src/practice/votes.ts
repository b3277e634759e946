/** Most hands that can be counted for one choice. */
export const MOST_HANDS = 9999;

/** Hands raised, choice by choice, and each as a share of all. */
export interface Spread {
  readonly counts: readonly number[];
  readonly total: number;
  /** 0 to 1; all 0 where no hand was raised. */
  readonly shares: readonly number[];
}

/**
 * Reads hand counts as they are called out and typed in one go: `12 3 0 5`, `12, 3, 0, 5`, `12/3/0/5`. Counts that are left out at the end
 * are 0.
 * @param choices how many choices there are
 * @returns `undefined` where a count is no whole number from 0 to {@link MOST_HANDS}, or where there are more than choices
 */
export function parseCounts(text: string, choices: number): readonly number[] | undefined {
  const parts = text.trim() === '' ? [] : text.trim().split(/[\s,;/+|]+/);
  if (parts.length === 0 || parts.length > choices) return undefined;
  const counts = parts.map((part) => (/^[0-9]{1,4}$/.test(part) ? Number(part) : Number.NaN));
  if (counts.some(Number.isNaN)) return undefined;
  return Array.from({ length: choices }, (_, i) => counts[i] ?? 0);
}

/** The spread of a vote. */
export function spreadOf(counts: readonly number[]): Spread {
  const total = counts.reduce((sum, count) => sum + count, 0);
  return { counts, total, shares: counts.map((count) => (total ? count / total : 0)) };
}
