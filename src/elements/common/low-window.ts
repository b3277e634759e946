/** Below this height of the window, in px, strips stand closer, where they take one row each. */
export const LOW = 896;

/** From this width on, in px, what red flags say in their line fits one row; where a finger is to hit it, it keeps its height. */
const ROW = 1100;

/** In a low window, for style sheets: around what holds for red flags in one row, in a container that is wider than they are by `frame` px. */
export const flagsInOneRow = (frame: number, rules: string): string =>
  `@media (max-height:${LOW - 0.02}px) and (not (pointer:coarse)){@container (min-width:${ROW + frame}px){${rules}}}`;
