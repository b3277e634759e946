/** A repeatable source of numbers from 0 (included) to 1 (excluded). */
export type Chance = () => number;

/**
 * A source of chance from a seed: mulberry32 (Tommy Ettinger, public domain). Neighbouring seeds give unrelated runs.
 */
export function chanceOf(seed: number): Chance {
  let state = Math.imul(seed ^ 0x9e3779b9, 0x85ebca6b) >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** One of some choices, by weight. */
export function pick<T>(chance: Chance, choices: readonly (readonly [T, number])[]): T {
  const total = choices.reduce((sum, [, weight]) => sum + weight, 0);
  let left = chance() * total;
  for (const [value, weight] of choices) {
    left -= weight;
    if (left < 0) return value;
  }
  return choices.at(-1)![0];
}

export const between = (chance: Chance, low: number, high: number): number => low + (high - low) * chance();
export const happens = (chance: Chance, probability: number): boolean => chance() < probability;

/** A number scattered about zero with standard deviation one (sum of three uniforms, cut at three). */
export const scatter = (chance: Chance): number => 2 * (chance() + chance() + chance() - 1.5);
