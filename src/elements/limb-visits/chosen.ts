import type { PatientVisit } from '../../comparison/visits.js';

/** Numbers of the visits to compare, the earlier first: those that were chosen, else the last two that count. */
export function pairOf(
  order: readonly PatientVisit[],
  counts: (at: number) => boolean,
  chosen: readonly string[] | undefined,
): readonly number[] {
  if (chosen) {
    const ids = new Set(chosen);
    return order.flatMap(({ id }, at) => (ids.has(id) && counts(at) ? [at] : [])).slice(0, 2);
  }
  const pair: number[] = [];
  for (let at = order.length - 1; at >= 0 && pair.length < 2; at--) if (counts(at)) pair.unshift(at);
  return pair;
}

/** Which of two compared visits one is. */
export function letterOf(at: number, pair: readonly number[]): 'a' | 'b' | undefined {
  const place = pair.indexOf(at);
  if (place < 0) return undefined;
  return place === 0 && pair.length > 1 ? 'a' : 'b';
}

/**
 * What is chosen once a person presses a visit: a chosen one is let go; of two, the one that was chosen longer ago makes room.
 * @param chosen in the order of the visits
 * @param last the one pressed before, if it is known
 */
export function pressed(chosen: readonly string[], id: string, last: string | undefined): readonly string[] {
  if (chosen.includes(id)) return chosen.filter((one) => one !== id);
  if (chosen.length < 2) return [...chosen, id];
  return [last !== undefined && chosen.includes(last) ? last : chosen[1]!, id];
}
