import type { StepId } from '../../lesson/index.js';
import { readShow, type Show } from './show.js';

/** The place in a lesson, kept in the tab under a key that the page chose; nothing without one. */
export class Keep {
  /** @param key asked for each time, since page and lesson may change */
  constructor(private readonly key: () => string | undefined) {}

  /** What was kept, where it fits the steps. */
  read(steps: readonly StepId[]): Show | undefined {
    const key = this.key();
    try {
      return key === undefined
        ? undefined
        : readShow(JSON.parse(sessionStorage.getItem(key) ?? 'null'), steps);
    } catch {
      return undefined;
    }
  }

  write(show: Show): void {
    const key = this.key();
    try {
      if (key !== undefined) sessionStorage.setItem(key, JSON.stringify(show));
    } catch {
      // Storage may be barred or full: the lesson then begins anew after a reload; everything else works.
    }
  }
}
