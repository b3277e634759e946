import { groupsOf } from './assemble.js';
import type { Atom } from './atoms.js';
import type { Group } from './groups.js';

const besideSite = (atom: Atom | undefined): boolean => atom?.is === 'site' || atom?.is === 'side';

/** Takes out of a segment what was heard with a Doppler probe, so that no signal counts as a felt pulse. */
export function dopplersOf(atoms: readonly Atom[]): { readonly groups: Group[]; readonly rest: Atom[] } {
  const groups: Group[] = [];
  const used = new Set<number>();
  atoms.forEach((atom, at) => {
    if (atom.is !== 'doppler') return;
    used.add(at);
    let from = at;
    // "PT absent on Doppler": the strength is that of the signal.
    if (atoms[from - 1]?.is === 'strength' && !used.has(from - 1)) from--;
    while (besideSite(atoms[from - 1]) && !used.has(from - 1)) from--;
    let to = at;
    if (atoms[to + 1]?.is === 'strength') to++;
    const sited = atoms.slice(from, at).some(({ is }) => is === 'site');
    let end = to;
    while (besideSite(atoms[end + 1])) end++;
    const onward = !sited && atoms[end + 1]?.is !== 'strength';
    // A side right behind is the signal's where it ends the segment.
    if (onward || atoms.slice(to + 1).every(({ is }) => is === 'side')) to = end;
    const own = atoms.slice(from, to + 1).filter(({ is }) => is !== 'doppler');
    for (let i = from; i <= to; i++) used.add(i);
    const parts = groupsOf(own);
    const all: Group[] = parts.length ? parts : [{ items: [], says: undefined, spans: [] }];
    for (const part of all) {
      const none =
        part.says?.what === 'pulse' && !part.says.read.doubt && part.says.read.grades[0]?.grade === 'absent';
      const signal = none ? 'absent' : atom.signal;
      const side = own.find(({ is }) => is === 'side');
      groups.push({
        ...part,
        ...(!part.items.length && side?.is === 'side' && { side: side.side }),
        says: { what: 'doppler', ...(signal && { signal }), ...(atom.only && { only: true }) },
        spans: [...part.spans, { start: atom.start, end: atom.end }],
      });
    }
  });
  return { groups, rest: atoms.filter((_, at) => !used.has(at)) };
}
