import { isListeningSite } from '../anatomy/index.js';
import { groupsOf } from './assemble.js';
import { dopplersOf } from './dopplers.js';
import { type Atom, atomsOf, limbOf, sitesOfPart } from './atoms.js';
import { bruitsOf } from './bruits.js';
import { isListed, type Piece } from './columns.js';
import { CLOSENESS, isAbsent, type Span, spanOf } from './groups.js';
import { means, stops, type Token } from './meanings.js';
import type { Sentence } from './sentences.js';
import { type Entry, Story, type Walker } from './story.js';
import type { Manner } from './strength.js';
import { amputation, examined } from './unexamined.js';
import { ALL_OF } from './words/latin.js';

/** What one sentence tells. */
export interface Told {
  readonly entries: Entry[];
  readonly afresh: boolean;
  readonly unread: Span[];
  /** Something was said that could not be placed: what is said of all may be meant to leave it out. */
  readonly astray: boolean;
}

/** Whether a side with its limb or a colon stands at the head of a segment: it holds for what follows. */
function firmHead(pieces: readonly Piece[]): boolean {
  const tokens = pieces.filter((piece): piece is Token => !isListed(piece));
  const at = tokens.findIndex(
    (token) => !means(token, 'filler', 'over', 'pulse', 'all') && !stops(token, 'colon'),
  );
  const first = tokens[at];
  if (means(first, 'part')) return first.means.side !== undefined || Boolean(first.means.plural);
  if (!means(first, 'side')) return false;
  const next = tokens.slice(at + 1).find((token) => !means(token, 'filler', 'side', 'over'));
  return means(next, 'part') || stops(next, 'colon');
}

/** Whether a sentence names one side and no other. */
function oneSide({ segments }: Sentence): boolean {
  const sides = segments.flatMap(({ pieces }) =>
    pieces.flatMap((piece) => {
      if (isListed(piece)) return ['list'];
      if (means(piece, 'side')) return [piece.means.side];
      return means(piece, 'part') && piece.means.side ? [piece.means.side] : [];
    }),
  );
  return new Set(sides).size === 1;
}

/** Reads one sentence into groups, in their order. */
export function tellSentence(sentence: Sentence, manner: Manner, walker: Walker): Told {
  const story = new Story(walker);

  sentence.segments.forEach((segment, at) => {
    const read = atomsOf(segment, manner, story.lastSites);
    const { remarks } = read;
    if (remarks.part) walker.limb = limbOf(remarks.part);
    for (const piece of segment.pieces) {
      if (!segment.past && !isListed(piece) && means(piece, 'unknown')) story.unread.push(spanOf(piece));
    }
    if (segment.past) {
      const kin = segment.pieces.some((piece) => !isListed(piece) && means(piece, 'kin'));
      if (remarks.amputated && !kin) amputation(story, read, segment, at);
      const groups = groupsOf(read.atoms);
      const items = groups.flatMap((group) =>
        group.items.map((item) => ({ ...item, ...(item.side || !group.side ? {} : { side: group.side }) })),
      );
      if (items.length && !kin) story.mention = items;
      return;
    }
    const aboutPulses =
      read.atoms.some(({ is }) => is === 'site' || is === 'side') ||
      remarks.pulses !== undefined ||
      remarks.part !== undefined;
    const has = (is: Atom['is']): boolean => read.atoms.some((atom) => atom.is === is);
    // A side with a word that was not understood: perhaps one more of a list.
    story.astray ||=
      remarks.blocked &&
      aboutPulses &&
      (has('strength') || has('list') || (has('side') && !has('site') && !remarks.foreign));
    if (segment.except && (remarks.blocked || !read.atoms.some(({ is }) => is === 'site'))) {
      story.astray = true;
      if (story.last) story.last.torn = true;
    }
    if (remarks.blockedFirst) story.entries.push({ is: 'lost' });
    if (remarks.amputated) {
      amputation(story, read, segment, at);
      return;
    }

    const firm = firmHead(segment.pieces);
    const heading = read.atoms.find((atom) => atom.is === 'side');
    const rivals = read.atoms.filter((atom) => atom.is === 'side').length > 1;
    const headed =
      firm &&
      heading?.is === 'side' &&
      !(heading.loose && rivals) &&
      read.atoms.some(({ is }) => is !== 'side');
    if (headed && heading?.is === 'side') story.entries.push({ is: 'head', side: heading.side, firm: true });

    const bruits = bruitsOf(read.atoms);
    for (const group of bruits.groups) {
      if (!group.items.length) story.overheard(group, remarks.blocked || remarks.foreign);
      if (group.items.length) story.tell({ ...group, ...(remarks.blocked && { blocked: true }) }, at);
      else if (bruits.rest.some(({ is }) => is === 'site')) story.bruitsOnly = true;
      else story.unread.push(...group.spans.slice(0, 1));
    }
    if (
      bruits.groups.length &&
      !story.entries.some((entry) => entry.is === 'group' && entry.group.says?.what === 'pulse')
    ) {
      story.bruitsOnly = true;
    }
    const dopplers = dopplersOf(bruits.rest);
    const { rest } = dopplers;
    for (const group of dopplers.groups) {
      if (!group.items.length && story.last && !remarks.foreign) {
        group.items = story.last.items.map((item) => ({ ...item, ...(group.side && { side: group.side }) }));
        group.side ??= story.last.side;
      }
      if (group.items.length) story.tell(group, at);
    }
    const starts = segment.pieces.find(
      (piece) => isListed(piece) || !means(piece, 'filler', 'over', 'pulse', 'not'),
    );
    if (dopplers.groups.length && at === 0 && starts && !isListed(starts) && means(starts, 'doppler'))
      story.byDoppler = true;
    else if (remarks.pulses && !dopplers.groups.length) story.byDoppler = false;
    if (dopplers.groups.length && !rest.some(({ is }) => is === 'site' || is === 'strength' || is === 'list'))
      return;
    if (bruits.groups.length && !rest.some(({ is }) => is === 'site' || is === 'strength' || is === 'list'))
      return;

    const sides = rest.filter((atom) => atom.is === 'side');
    const groups = groupsOf(rest);
    if (story.byDoppler) {
      for (const group of groups) {
        if (group.items.length)
          story.tell(
            { ...group, says: { what: 'doppler', ...(isAbsent(group) && { signal: 'absent' as const }) } },
            at,
          );
      }
      return;
    }
    if (!groups.length && sides.length && !bruits.groups.length) {
      const two = sides.length > 1 && sides[0]!.side !== sides[1]!.side;
      if (!remarks.reason && !remarks.could && !remarks.same && !remarks.foreign) {
        story.entries.push({ is: 'head', side: two ? 'both' : sides[0]!.side, firm: true });
        return;
      }
      // "Left leg cold, no pulse below the knee": its limb is spoken of, where no other is.
      if (remarks.part && remarks.foreign && !remarks.blocked && !two && oneSide(sentence))
        story.entries.push({ is: 'head', side: sides[0]!.side, firm: false });
    }

    if (remarks.marks.length) {
      const absent = rest.some(
        (atom) => atom.is === 'strength' && (atom.bare || atom.read.grades[0]?.grade === 'absent'),
      );
      for (const group of groups) {
        if (absent || !group.items.length || bruits.groups.length) continue;
        for (const mark of remarks.marks) story.tell({ ...group, says: { what: 'mark', mark } }, at);
        if (group.says) story.tell(group, at);
      }
      // "Left femoral weak, with a thrill": of the one pulse just named.
      const { last } = story;
      if (
        !absent &&
        !groups.some(({ items }) => items.length) &&
        last?.items.length === 1 &&
        !remarks.foreign
      ) {
        const side = sides[0]?.side ?? last.side;
        const items = last.items.map((item) => ({ ...item, ...(sides[0] && { side: sides[0].side }) }));
        for (const mark of remarks.marks)
          story.tell(
            { items, says: { what: 'mark', mark }, spans: segment.pieces.map(spanOf), ...(side && { side }) },
            at,
          );
      }
      return;
    }
    if (remarks.clear && groups.length && groups.every(({ says }) => !says)) {
      for (const group of groups) {
        group.items = group.items.filter(({ sites }) => sites.every(isListeningSite));
        if (group.items.length) story.tell({ ...group, says: { what: 'bruit', bruit: 'none' } }, at);
      }
      return;
    }
    const next = sentence.segments[at + 1];
    if (examined(story, read, segment, groups, at, next && atomsOf(next, manner, []))) return;

    // "All pulses", "no pulses in the left foot", "right leg all present".
    const named = groups.some(({ items }) => items.length);
    if (!named && groups.some(({ says }) => says) && !story.pending.length) {
      const many =
        remarks.all || remarks.pulses === 'many' || (remarks.pulses === 'one' && remarks.part !== undefined);
      if (many && !remarks.foreign) {
        const sites = remarks.part ? sitesOfPart(remarks.part) : ALL_OF[walker.limb];
        const item = story.general(
          sites,
          segment,
          (remarks.part && sites.length < 3) || !remarks.all ? { closeness: CLOSENESS.group } : {},
        );
        for (const group of groups) group.items = [item];
      } else if (remarks.part && !remarks.foreign && groups.length === 1) {
        // "Right leg absent": of which pulses, and of pulses at all, is not said.
        const [group] = groups;
        const sites = sitesOfPart(remarks.part);
        group!.items = [
          story.general(sites, segment, sites.length === 1 ? { closeness: CLOSENESS.own } : {}),
        ];
        const among = story.entries.some(
          (entry) => entry.is === 'group' && entry.group.says?.what === 'pulse',
        );
        if (sites.length > 1 || !among) group!.blocked = true;
      }
    }
    for (const group of groups) {
      if (remarks.blocked) group.blocked = true;
      if (segment.question && group.says?.what === 'pulse') group.torn = true;
      for (const [n, item] of group.items.entries()) {
        if (item.rest && !item.sites.length) group.items[n] = { ...item, sites: ALL_OF[walker.limb] };
      }
      if (remarks.same && !group.says) group.says = { what: 'same' };
      if (segment.except && !group.says) group.says = { what: 'except' };
      story.place(group, segment, at, remarks.foreign, remarks.pulses === 'one');
    }
    if (remarks.same && !groups.length) {
      const side = sides[0]?.side;
      story.tell(
        { items: [], says: { what: 'same' }, spans: segment.pieces.map(spanOf), ...(side && { side }) },
        at,
      );
    }
  });

  const told = story.entries.flatMap((entry) => (entry.is === 'group' ? [entry.group] : []));
  walker.heard =
    story.bruitsOnly && !told.some(({ says }) => says?.what === 'pulse')
      ? told.flatMap(({ says, items }) => (says?.what === 'bruit' ? items.flatMap(({ sites }) => sites) : []))
      : [];
  // "No palpable popliteal, DP or PT": what stands behind a strength and has none of its own.
  if (story.pending.length && story.opened?.says)
    story.settle(story.opened.says, story.opened.blocked ? { blocked: true } : {});
  // "No bruit over the carotids, subclavians and groins": the list goes on behind the comma.
  const listens = story.pending.every(({ items }) =>
    items.every(({ sites }) => sites.every(isListeningSite)),
  );
  if (story.pending.length && story.bruit && story.bruitsOnly && listens) story.settle(story.bruit);
  for (const group of story.pending) story.unread.push(...group.spans);
  return {
    entries: story.entries.filter((entry) => entry.is !== 'group' || entry.group.says),
    afresh: sentence.afresh,
    unread: story.unread,
    astray: story.astray,
  };
}
