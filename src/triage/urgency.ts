/** How soon someone must see it: at once, the same day, within days. */
export const URGENCIES = ['now', 'today', 'soon'] as const;
export type Urgency = (typeof URGENCIES)[number];

/** An urgency, or that nothing calls for anyone. */
export type Urgent = Urgency | 'none';

/** Mildest first, for comparing. */
export const URGENCY_ORDER: readonly Urgent[] = ['none', 'soon', 'today', 'now'];

export function urgencyRank(urgency: Urgent): number {
  return URGENCY_ORDER.indexOf(urgency);
}

/** The most urgent of several; `none` of nothing. */
export function mostUrgent(urgencies: Iterable<Urgent>): Urgent {
  let most: Urgent = 'none';
  for (const urgency of urgencies) if (urgencyRank(urgency) > urgencyRank(most)) most = urgency;
  return most;
}
