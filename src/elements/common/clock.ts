/** The wall clock of the elements, in ms. Tests replace it. */
export const clock = { now: (): number => Date.now() };
