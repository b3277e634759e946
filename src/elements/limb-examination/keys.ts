import type { PartId } from '../../locale/whole.js';
import { PARTS } from './parts.js';

/** What the keys of the whole examination do. */
export interface KeyActs {
  open(part: PartId): void;
  undo(): void;
  redo(): void;
}

/** The part before or after the one that has the focus. */
function neighbour(root: ShadowRoot, step: 1 | -1): PartId {
  const active = root.activeElement?.closest('.part')?.id.replace('part-', '');
  const at = PARTS.indexOf(active as PartId);
  const to =
    at === -1 ? (step > 0 ? 0 : PARTS.length - 1) : Math.min(PARTS.length - 1, Math.max(0, at + step));
  return PARTS[to] as PartId;
}

/** Ctrl with Down and Up goes from part to part; Ctrl Z and Y undo and redo where nobody types. */
export function pressed(event: KeyboardEvent, root: ShadowRoot, acts: KeyActs): void {
  if (!(event.ctrlKey || event.metaKey) || event.altKey || event.defaultPrevented) return;
  const [from] = event.composedPath() as HTMLElement[];
  const typing = from?.matches?.('input, textarea') ?? false;
  const key = event.key.toLowerCase();
  if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
    event.preventDefault();
    acts.open(neighbour(root, event.key === 'ArrowDown' ? 1 : -1));
  } else if (!typing && (key === 'z' || key === 'y')) {
    event.preventDefault();
    if (key === 'y' || event.shiftKey) acts.redo();
    else acts.undo();
  }
}
