import { isListeningSite } from '../anatomy/index.js';
import type { Atom, AtomOf } from './atoms.js';
import { CLOSENESS, type Group } from './groups.js';
import { groupsOf } from './assemble.js';
import type { StrengthRead } from './strength.js';

const none = (read: StrengthRead): boolean => read.grades.length === 1 && read.grades[0]?.grade === 'absent';

/** What is said of bruits in a segment, and what of it is left for the pulses. */
export interface BruitsRead {
  readonly groups: Group[];
  readonly rest: Atom[];
}

/** The sites and sides beside each other at `from`, going one way. */
function beside(atoms: readonly Atom[], from: number, step: 1 | -1): number[] {
  const found: number[] = [];
  for (let i = from; atoms[i]?.is === 'site' || atoms[i]?.is === 'side'; i += step) found.push(i);
  return step < 0 ? found.reverse() : found;
}

/** Takes the bruits of a segment out of its atoms, each with its sites and whether it was there. */
export function bruitsOf(atoms: readonly Atom[]): BruitsRead {
  const groups: Group[] = [];
  const used = new Set<number>();
  atoms.forEach((atom, at) => {
    if (atom.is !== 'bruit') return;
    used.add(at);
    const free = (i: number): boolean => !used.has(i);
    const before = beside(atoms, at - 1, -1).filter(free);
    const behind = beside(atoms, at + 1, 1).filter(free);
    const has = (range: readonly number[]): boolean => range.some((i) => atoms[i]!.is === 'site');
    const strengthAt = (i: number): AtomOf<'strength'> | undefined => {
      const own = atoms[i];
      return own?.is === 'strength' && free(i) ? own : undefined;
    };

    // "No femoral bruit", "bruit absent", "bruit over R fem absent".
    const lead = strengthAt(at - 1 - before.length);
    const tail = strengthAt(at + 1) ?? (atom.over ? strengthAt(at + 1 + behind.length) : undefined);
    const next = strengthAt(at + 1 + behind.length);
    let range = atom.over && has(behind) ? behind : [];
    const siteThenStrength = has(before) && lead !== undefined && !lead.bare && at - 1 - before.length > 0;
    if (!range.length && has(before)) range = before;
    else if (!range.length && has(behind) && !next) range = behind;
    if (range === behind && before.length && !has(before) && !behind.some((i) => atoms[i]!.is === 'side'))
      range = [...before, ...behind];
    // "Carotids: no bruit".
    const ahead = lead ? beside(atoms, at - 2 - before.length, -1).filter(free) : [];
    if (!range.length && !before.length && has(ahead)) range = [...ahead, ...behind];
    // "Carotids 2+ without bruits": felt and listened to at the same sites.
    const felt =
      lead?.bare && !before.length && atoms[at - 2]?.is === 'strength' ? beside(atoms, at - 3, -1) : [];
    const shared = !range.length && !has(behind) && has(felt) ? felt : [];
    if (range === before && atoms[at + 1]?.is === 'side' && !before.some((i) => atoms[i]!.is === 'side')) {
      const two = atoms[at + 2];
      if (two?.is !== 'site' || atoms[at + 3] === undefined || two === undefined) range = [...before, at + 1];
      else if (two.is === 'site') range = before;
    }
    if (
      range === before &&
      behind[0] !== undefined &&
      atoms[behind[0]]!.is === 'side' &&
      behind[1] !== undefined &&
      atoms[behind[1]]!.is === 'side'
    ) {
      range = [...before, behind[0]];
    }
    let absent = false;
    if (lead && (lead.bare || none(lead.read)) && !siteThenStrength) {
      absent = lead.bare || none(lead.read);
      used.add(at - 1 - before.length);
    } else if (lead && lead.bare) {
      absent = true;
      used.add(at - 1 - before.length);
    }
    if (tail) {
      absent ||= none(tail.read);
      used.add(atoms.indexOf(tail));
    }
    const own = atom.own
      ? [{ sites: atom.own, start: atom.start, end: atom.end, closeness: CLOSENESS.own, plural: true }]
      : [];
    // A compound has its site in itself; only sides are taken from beside it.
    if (atom.own) range = [...before, ...behind].filter((i) => atoms[i]!.is === 'side');
    for (const i of range) used.add(i);
    if (!range.length && !own.length && !has(behind)) {
      const side = [...before, ...behind].find((i) => atoms[i]!.is === 'side');
      if (side !== undefined) range = [side];
      for (const i of range) used.add(i);
    }
    if (shared.length) range = shared;
    const parts = groupsOf(range.map((i) => atoms[i]!));
    const sides = range.map((i) => atoms[i]!).filter((one): one is AtomOf<'side'> => one.is === 'side');
    const says = { what: 'bruit', bruit: absent ? 'none' : atom.bruit } as const;
    const spans = [
      { start: atom.start, end: atom.end },
      ...range.map((i) => ({ start: atoms[i]!.start, end: atoms[i]!.end })),
    ];
    if (!parts.length) {
      const side = sides.length > 1 && sides[0]!.side !== sides[1]!.side ? 'both' : sides[0]?.side;
      groups.push({ items: own, says, spans, ...(side && { side, looseSide: sides[0]!.loose }) });
    }
    for (const part of parts) {
      const items = part.items
        .filter(({ sites }) => sites.some(isListeningSite))
        .map((item) => (atom.plural && part.items.length === 1 ? { ...item, plural: true } : item));
      if (items.length) groups.push({ ...part, items, says, spans });
    }
  });
  return { groups, rest: atoms.filter((_, at) => !used.has(at)) };
}
