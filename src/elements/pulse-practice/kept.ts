import { readResults, type Result } from '../../practice/index.js';

const nameOf = (keep: string): string => `pulse-practice:${keep}`;

/** Results kept on this machine; none where storage is barred. */
export function keptResults(keep: string | undefined): readonly Result[] {
  if (!keep) return [];
  try {
    return readResults(JSON.parse(localStorage.getItem(nameOf(keep)) ?? 'null'));
  } catch {
    return [];
  }
}

/** Keeps results on this machine, only where the page says so. */
export function keepResults(keep: string | undefined, results: readonly Result[]): void {
  if (!keep) return;
  try {
    if (results.length) localStorage.setItem(nameOf(keep), JSON.stringify(readResults(results)));
    else localStorage.removeItem(nameOf(keep));
  } catch {
    // Storage may be barred or full: the results then live as long as the page.
  }
}
