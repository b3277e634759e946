import type { Direction } from '../../../drawing/index.js';

/** What a key does on a site. */
export type KeyAct =
  | { readonly kind: 'travel'; readonly direction: Direction }
  | { readonly kind: 'grade'; readonly digit: number }
  | {
      readonly kind:
        | 'open'
        | 'bruit'
        | 'thrill'
        | 'expansile'
        | 'reason'
        | 'clear'
        | 'rest'
        | 'undo'
        | 'redo'
        | 'help'
        | 'escape';
    };

const TRAVEL: Record<string, Direction> = {
  ArrowUp: 'up',
  ArrowDown: 'down',
  ArrowLeft: 'left',
  ArrowRight: 'right',
  PageUp: 'previous',
  PageDown: 'next',
};

const LETTERS: Record<string, Exclude<KeyAct['kind'], 'travel' | 'grade'>> = {
  b: 'bruit',
  t: 'thrill',
  e: 'expansile',
  x: 'reason',
  a: 'rest',
  '?': 'help',
  Enter: 'open',
  ' ': 'open',
  Delete: 'clear',
  Backspace: 'clear',
  Escape: 'escape',
};

/** The act of a key press on a site, or `undefined` for any other key. */
export function keyAct({ key, ctrlKey, metaKey, altKey, shiftKey }: KeyboardEvent): KeyAct | undefined {
  if (altKey) return undefined;
  if (ctrlKey || metaKey) {
    const letter = key.toLowerCase();
    if (letter === 'z') return { kind: shiftKey ? 'redo' : 'undo' };
    if (letter === 'y') return { kind: 'redo' };
    return undefined;
  }
  const direction = TRAVEL[key];
  if (direction) return { kind: 'travel', direction };
  if (/^[0-4]$/.test(key)) return { kind: 'grade', digit: Number(key) };
  const kind = LETTERS[key.length === 1 ? key.toLowerCase() : key];
  return kind && { kind };
}
