import type { AgeBand } from '../examination/index.js';

const SCHRIGER = 'Schriger DL, Baraff L, Ann Emerg Med 1988;17:932-935, doi:10.1016/S0196-0644(88)80675-9';

/**
 * Longest usual capillary refill, in seconds. The traditional limit of 2 s calls 4% of healthy men, 14% of healthy women and 29% of
 * healthy elderly people slow; the others are 95% limits of adult women and of the elderly.
 */
export const REFILL_LIMITS = {
  traditional: { value: 2, source: SCHRIGER },
  adult: { value: 2.9, source: SCHRIGER },
  elderly: { value: 4.5, source: SCHRIGER },
} as const;

/** Reading of a refill time. It shows poor circulation from any cause; for arterial disease it has little value. */
export interface RefillReading {
  readonly code: 'short' | 'over-traditional' | 'slow';
  readonly limit: number;
}

/** A capillary refill time in seconds against the limit for the patient's age; without an age, the adult one. */
export function readRefill(seconds: number, age: AgeBand | undefined): RefillReading {
  const elderly = age === '60-79' || age === '80-over';
  const { value: limit } = elderly ? REFILL_LIMITS.elderly : REFILL_LIMITS.adult;
  if (seconds > limit) return { code: 'slow', limit };
  return { code: seconds > REFILL_LIMITS.traditional.value ? 'over-traditional' : 'short', limit };
}
