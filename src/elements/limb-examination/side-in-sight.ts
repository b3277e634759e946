import type { Side } from '../../anatomy/index.js';
import type { Examination } from '../../examination/index.js';
import { type FlagSettings, triage } from '../../triage/index.js';

interface Sided extends Element {
  showSide?(side: Side): void;
}

/** The side of the worst red flag; `undefined` where there is none, or it is of no side. */
export function worstSide(examination: Examination, settings: FlagSettings): Side | undefined {
  return triage(examination, settings).flags[0]?.limb?.side;
}

/** Shows a side in every element of an opened part that has room for one side only. */
export function showSide(body: Element | null, side: Side | undefined): void {
  if (!side) return;
  for (const one of body?.querySelectorAll<Sided>('.body > *, .body > details > *') ?? [])
    one.showSide?.(side);
}
