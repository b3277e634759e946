import type { ShowAct } from './show.js';

/** What a key does: an act of the show, or of this window alone. */
export type KeyAct = ShowAct | 'spotlight' | 'ink' | 'wipe' | 'full' | 'hear';

const KEYS: Readonly<Record<string, KeyAct>> = {
  PageDown: 'next',
  ArrowRight: 'next',
  ArrowDown: 'next',
  ' ': 'next',
  PageUp: 'back',
  ArrowLeft: 'back',
  ArrowUp: 'back',
  b: 'black',
  '.': 'black',
  o: 'overview',
  Home: 'first',
  End: 'last',
  Escape: 'escape',
  r: 'reveal',
  p: 'wave',
  m: 'mark',
  h: 'hear',
  s: 'spotlight',
  i: 'ink',
  w: 'wipe',
  f: 'full',
  // A remote's key for "start the show", which would load the page again.
  F5: 'full',
};

/** Whether a person is typing there, or a control takes the key for itself. */
function takes(target: EventTarget | undefined, key: string): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target.matches('input, textarea, select')) return key !== 'Escape';
  return key === ' ' && target.matches('button, a, summary');
}

export function keyAct(event: KeyboardEvent): KeyAct | undefined {
  if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return undefined;
  if (takes(event.composedPath()[0], event.key)) return undefined;
  return KEYS[event.key.length === 1 ? event.key.toLowerCase() : event.key];
}
