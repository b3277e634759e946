import type { Atom, AtomOf } from './atoms.js';
import type { Cell } from './columns.js';
import { CLOSENESS, type Group, type Item, spanOf } from './groups.js';
import type { StrengthRead } from './strength.js';

type SiteOrSide = AtomOf<'site'> | AtomOf<'side'>;

/** Sites and sides around one strength. */
interface Chunk {
  readonly around: SiteOrSide[];
  readonly strength?: AtomOf<'strength'>;
}

const isSite = (atom: Atom | undefined): atom is AtomOf<'site'> => atom?.is === 'site';
const isSide = (atom: Atom | undefined): atom is AtomOf<'side'> => atom?.is === 'side';
const sameRead = (a: StrengthRead, b: StrengthRead): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Cuts a row at its strengths: behind them where sites come first, before them where strengths do. */
function chunksOf(atoms: readonly Atom[], sitesFirst: boolean): Chunk[] {
  const chunks: { around: SiteOrSide[]; strength?: AtomOf<'strength'> }[] = [{ around: [] }];
  for (const atom of atoms) {
    const last = chunks.at(-1)!;
    if (isSite(atom) || isSide(atom)) {
      if (sitesFirst && last.strength) chunks.push({ around: [atom] });
      else last.around.push(atom);
    } else if (atom.is === 'strength') {
      if (last.strength) chunks.push({ around: [], strength: atom });
      else if (!sitesFirst && last.around.some(isSite)) chunks.push({ around: [], strength: atom });
      else last.strength = atom;
    }
  }
  return chunks;
}

/** Moves the sides that stand between two chunks to the one they belong to. */
function withSidesMoved(chunks: readonly Chunk[], sitesFirst: boolean, lead: boolean): Chunk[] {
  const last = chunks.at(-1)!;
  // "fem 2+ R pop 1+ L": the sides trail, and the last one ends the row.
  const trails = sitesFirst && !lead && !last.strength && last.around.length > 0 && last.around.every(isSide);
  chunks.forEach((chunk, at) => {
    const before = chunks[at - 1];
    if (!before) return;
    if (sitesFirst) {
      const alone = !lead && chunk.strength && !chunk.around.some(isSite) && chunk.around.length > 1;
      if (trails || alone) while (isSide(chunk.around[0])) before.around.push(chunk.around.shift()!);
    } else if (lead && chunk.strength && before.around.some(isSite)) {
      // "R absent fem L weak pop": the sides lead, and stand at the end of the chunk before.
      if (isSide(before.around.at(-1)) && isSide(before.around[0]))
        chunk.around.unshift(before.around.pop()!);
    }
  });
  return chunks.filter(({ around, strength }) => around.length || strength);
}

/** "DP left and PT right": every site has its side behind it, since the first has none before and the last has one behind. */
function trailed(group: Group, around: readonly SiteOrSide[]): boolean {
  const sides = around.filter(isSide);
  const paired =
    around.length === 2 * sides.length && around.every((atom, at) => (at % 2 ? isSide(atom) : isSite(atom)));
  if (!paired || sides.length < 2 || sides.some(({ loose }) => loose)) return false;
  around.forEach((atom, at) => {
    group.spans.push(spanOf(atom));
    const side = around[at + 1];
    if (isSite(atom) && isSide(side)) group.items.push({ ...atom.item, side: side.side });
  });
  return true;
}

/** Gives each site of a chunk the side that leads it; a side behind them all is the group's. */
function sided(group: Group, around: readonly SiteOrSide[]): void {
  if (trailed(group, around)) return;
  let ahead: AtomOf<'side'> | undefined;
  const lastSite = around.findLastIndex(isSite);
  around.forEach((atom, at) => {
    group.spans.push(spanOf(atom));
    if (isSite(atom)) {
      group.items.push({ ...atom.item, ...(ahead && { side: ahead.side, loose: ahead.loose }) });
      return;
    }
    const [before, after] = [around[at - 1], around[at + 1]];
    if (isSide(before) && ahead && ahead.side !== atom.side && !atom.loose && !ahead.loose) {
      ahead = { ...atom, side: 'both' };
      if (at > lastSite && group.items.length) group.side = 'both';
      return;
    }
    if (at < lastSite) {
      if (atom.loose && ahead && !ahead.loose) return;
      ahead = atom;
      return;
    }
    // Behind every site.
    if (isSide(after) && after.side !== atom.side && !after.loose && !atom.loose) group.side = 'both';
    const open = group.items.filter(({ side, loose }) => side === undefined || loose);
    if (!group.items.length || open.length) {
      if (atom.loose && (group.side || group.items.some(({ side }) => side))) return;
      if (!group.side || group.looseSide) {
        group.side = atom.side;
        group.looseSide = atom.loose;
      }
      group.trails = true;
      for (const item of open) if (item.loose) delete item.side;
    } else if (!atom.loose && group.items.every(({ side }) => side !== atom.side)) {
      for (const item of group.items) item.side = 'both';
    }
    ahead = atom;
  });
}

/** A second strength for the same sites: an exact one beside a vague one is it, two exact ones leave it open. */
function strengthened(group: Group, more: AtomOf<'strength'>, bare: boolean): void {
  group.spans.push(spanOf(more));
  if (group.says?.what !== 'pulse') return;
  // Two figures behind one site are of two sides, and nobody knows which.
  if (!more.felt && !more.bare) {
    group.torn = true;
    return;
  }
  const own = group.says.read;
  const felt = more.felt && more.read.doubt === 'strength';
  if (bare && felt && more.read.grades[1]?.grade === 'reduced') return;
  if (own.doubt === 'strength' && !more.read.doubt && more.read.grades[0]?.grade !== 'absent') {
    group.says = { what: 'pulse', read: more.read };
  } else if (!sameRead(own, more.read)) group.torn = true;
}

function listed({ list }: AtomOf<'list'>, ahead: AtomOf<'side'> | undefined): Group[] {
  const item = (cell: Cell): Item => {
    const side = cell.side ?? ahead?.side;
    return { ...spanOf(cell), sites: [cell.site], closeness: CLOSENESS.own, ...(side && { side }) };
  };
  const pulse = (cell: Cell): Group => ({
    items: [item(cell)],
    says: { what: 'pulse', read: cell.read },
    spans: [spanOf(cell)],
    listed: true,
    ...(cell.side && { inTable: true }),
  });
  if (!list.pair) return list.cells.map(pulse);
  return [{ ...pulse(list.pair[0]), pair: [list.pair[0].read, list.pair[1].read] }];
}

function groupsOfRow(atoms: readonly Atom[]): Group[] {
  const first = atoms.find((atom) => !isSide(atom));
  if (!first) return [];
  const sitesFirst = isSite(first);
  const strengthAt = atoms.findIndex((atom) => atom.is === 'strength');
  const lead = strengthAt > 0 && atoms.slice(0, strengthAt).some(isSide);
  const chunks = withSidesMoved(chunksOf(atoms, sitesFirst), sitesFirst, lead);
  const groups: Group[] = [];
  // Several strengths and no site: a list whose head was not understood.
  const count = (is: Atom['is']): number => atoms.filter((atom) => atom.is === is).length;
  const headless = !count('site') && count('strength') > 1 && count('side') < count('strength');
  let bare = false;
  chunks.forEach(({ around, strength }) => {
    const before = groups.at(-1);
    const absorbed = bare && strength?.felt && strength.read.doubt === 'strength';
    if (strength && before?.items.length && !around.some(isSite) && (!around.length || absorbed)) {
      // A strength behind a group: one more word about it ("no DP palpable"), or a second one that fits nobody.
      if (!sitesFirst && !absorbed) before.torn = true;
      strengthened(before, strength, bare);
      sided(before, around);
      return;
    }
    const group: Group = { items: [], says: undefined, spans: [] };
    if (strength) {
      group.says = { what: 'pulse', read: strength.read };
      group.spans.push(spanOf(strength));
      group.opens = !sitesFirst;
      bare = strength.bare;
    }
    const onlySides = !around.some(isSite);
    if (onlySides && !strength && before) {
      // A side behind everything: of the last group, or of all where none has one.
      const none = groups.every((one) => !one.side && one.items.every(({ side }) => !side));
      for (const one of none ? groups : [before]) sided(one, around);
      return;
    }
    sided(group, around);
    groups.push(group);
  });
  // One side behind them all is of them all: "fem 2 pop 0 on the left".
  const sides = atoms.filter(isSide);
  if (sitesFirst && sides.length === 1 && isSide(atoms.at(-1)) && !sides[0]!.loose) {
    for (const group of groups) {
      group.side = sides[0]!.side;
      group.trails = true;
    }
  }
  if (headless) for (const group of groups) group.blocked = true;
  return groups.filter(({ items, says }) => items.length || says);
}

/**
 * Puts sites, sides and strengths of a segment into groups: a strength belongs to the sites before it where a site comes first ("fem
 * 2 pop 1"), else to those behind it ("absent pop and DP"). A group without sites takes over those said before.
 */
export function groupsOf(atoms: readonly Atom[]): Group[] {
  const groups: Group[] = [];
  let row: Atom[] = [];
  for (const atom of atoms) {
    if (atom.is === 'list') {
      const ahead = row.every(isSide) ? (row.at(-1) as AtomOf<'side'> | undefined) : undefined;
      if (!ahead) groups.push(...groupsOfRow(row));
      row = [];
      groups.push(...listed(atom, ahead));
    } else if (atom.is !== 'bruit') row.push(atom);
  }
  const trailing = row[0];
  if (row.length && row.every(isSide) && groups.length && isSide(trailing)) {
    for (const group of groups) if (!group.items.some(({ side }) => side)) group.side = trailing.side;
    return groups;
  }
  groups.push(...groupsOfRow(row));
  return groups;
}
