const nameOf = (keep: string): string => `pulse-lesson-editor:${keep}`;

/** The text kept on this machine; none where nothing is kept or storage is barred. */
export function keptText(keep: string | undefined): string | undefined {
  if (!keep) return undefined;
  try {
    return localStorage.getItem(nameOf(keep)) ?? undefined;
  } catch {
    return undefined;
  }
}

/**
 * Keeps the text on this machine, only where the page says so.
 * @returns false where that was wanted and did not succeed
 */
export function keepText(keep: string | undefined, text: string): boolean {
  if (!keep) return true;
  try {
    if (text) localStorage.setItem(nameOf(keep), text);
    else localStorage.removeItem(nameOf(keep));
    return true;
  } catch {
    return false;
  }
}
