let [wall, ticks] = [Date.now(), performance.now()];
let passed = wall;

/**
 * Time passed, in ms since the epoch. It goes on in a computer that sleeps, which stops the page's own ticks, and does not go back
 * when the wall clock is set back, which does not stop them.
 */
function steady(): number {
  const [wallNow, ticksNow] = [Date.now(), performance.now()];
  passed += Math.max(wallNow - wall, ticksNow - ticks, 0);
  [wall, ticks] = [wallNow, ticksNow];
  return passed;
}

/** The clocks of the elements. Tests replace them. */
export const clock = {
  /** Wall clock, in ms since the epoch. */
  now: (): number => Date.now(),
  /** For watches. */
  steady,
};
