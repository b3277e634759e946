/** What the browser refused to keep: it then lives as long as the page. */
const here = new Map<string, string>();

/** Keeps a text in this browser, such as the language chosen. */
export function remember(key: string, text: string): void {
  try {
    localStorage.setItem(key, text);
    here.delete(key);
  } catch {
    here.set(key, text);
  }
}

/** The text that was kept; null where there is none. */
export function remembered(key: string): string | null {
  try {
    return here.get(key) ?? localStorage.getItem(key);
  } catch {
    return null;
  }
}
