import { isListeningSite, isPulseSite, type SiteId, siteDefinition } from '../anatomy/index.js';
import type { Reason } from '../examination/index.js';
import { CLOSENESS, type Group, isAbsent, type Item, type Span } from './groups.js';
import type { NoteSide, Part } from './meanings.js';
import type { Segment } from './sentences.js';

/** A group in its sentence, or a side at the head of what follows. */
export type Entry =
  | { readonly is: 'group'; readonly group: Group; readonly segment: number }
  | { readonly is: 'head'; readonly side: NoteSide; readonly firm: boolean }
  /** The side is unknown from here on. */
  | { readonly is: 'lost' };

/** The limb that a note speaks of, which "all pulses" is of. */
export interface Walker {
  limb: 'leg' | 'arm';
  /** The sites of the bruits that the sentence before spoke of, where it spoke of nothing else. */
  heard?: readonly SiteId[];
}

/** What has been told of one sentence so far, and what waits for the rest of it. */
export class Story {
  readonly entries: Entry[] = [];
  readonly unread: Span[] = [];
  /** Sites that wait for what is said of them. */
  pending: Group[] = [];
  last: Group | undefined;
  /** The group whose strength stood before its sites, so that more may follow. */
  opened: Group | undefined;
  /** Sites spoken of in the past, which "now" takes up. */
  mention: Item[] | undefined;
  reason: { readonly reason: Reason; readonly part: Part | undefined } | undefined;
  bruitsOnly = false;
  /** What was said of the bruit named last. */
  bruit: Group['says'];
  byDoppler = false;
  astray = false;

  constructor(readonly walker: Walker) {}

  get lastSites(): SiteId[] {
    return [...new Set((this.last?.items ?? []).flatMap(({ sites }) => sites))];
  }

  tell(group: Group, at: number): void {
    for (const item of group.items) {
      const region = item.sites[0] && siteDefinition(item.sites[0]).region;
      if (region === 'leg' || region === 'arm') this.walker.limb = region;
    }
    if (group.says?.what === 'bruit') this.bruit = group.says;
    this.entries.push({ is: 'group', group, segment: at });
    this.last = group;
  }

  /** A site or sites that a whole segment names. */
  general(sites: readonly SiteId[], from: Segment, more: Partial<Item> = {}): Item {
    const [first, end] = [from.pieces[0]!, from.pieces.at(-1)!];
    return { sites, start: first.start, end: end.end, closeness: CLOSENESS.all, ...more };
  }

  /** Says of all that waits what was to be said of it. */
  settle(says: Group['says'], more: Partial<Group> = {}): void {
    for (const group of this.pending) {
      group.says = says;
      Object.assign(group, more);
    }
    this.pending = [];
  }

  /** Puts a group where it belongs: as it is, with the sites before it, or to wait for its strength. */
  place(group: Group, segment: Segment, at: number, foreign: boolean, pulse: boolean): void {
    if (group.items.length && group.says) {
      const listens = group.items.every(({ sites }) => sites.every(isListeningSite)) && !pulse;
      const vague = group.says.what === 'pulse' && (isAbsent(group) || group.says.read.doubt === 'strength');
      if (this.bruitsOnly && listens && vague && !group.listed) {
        group.says = { what: 'bruit', bruit: isAbsent(group) ? 'none' : 'systolic' };
      } else if (!group.opens && !group.listed && this.pending.length && group.says.what === 'pulse') {
        const apart = group.side && this.pending.some(({ side }) => side);
        this.settle(group.says, {
          ...(apart && { torn: true }),
          ...(group.blocked && { blocked: true }),
          ...(this.opened && { torn: true }),
          ...(group.torn && { torn: true }),
        });
      }
      // "R carotid: soft bruit; L carotid: nil": a pulse, or a bruit?
      const again = group.items.some(({ sites }) => sites.some((site) => this.walker.heard?.includes(site)));
      if (again && listens && isAbsent(group) && !this.last) group.torn = true;
      if (group.opens && this.pending.length && group.says.what === 'pulse') {
        // "Absent: pop, DP. Present: fem": what waits belongs to the strength that opened before, and to no later one.
        this.settle(this.opened?.says ?? group.says, this.opened ? {} : { torn: true });
      }
      if (group.opens) this.opened = group;
      else if (group.says.what === 'pulse') this.opened = undefined;
      group.items = group.items.filter(({ sites }) =>
        sites.some(group.says?.what === 'bruit' ? isListeningSite : isPulseSite),
      );
      if (group.items.length) this.tell(group, at);
      return;
    }
    if (group.items.length && segment.question && !group.says) {
      this.unread.push(...group.spans);
      return;
    }
    if (group.items.length) {
      // "One pulse (DP), PT missing": what stands in brackets may belong to what is said before them.
      if (segment.aside) group.torn = true;
      this.pending.push(group);
      this.tell(group, at);
      return;
    }
    if (foreign || group.blocked) {
      this.astray ||= !foreign && Boolean(group.side);
      this.unread.push(...group.spans);
      return;
    }
    if (this.pending.length) {
      const { says, side } = group;
      const spans = group.spans;
      for (const waiting of this.pending) {
        waiting.spans = [...waiting.spans, ...spans];
        if (side && !waiting.items.some((item) => item.side)) waiting.side ??= side;
      }
      // "Fem: palpable right, absent left": the second strength is of the same sites again. "R fem, nothing left": of another side.
      const apart =
        side !== undefined &&
        side !== 'both' &&
        this.pending.some((waiting) =>
          [waiting.side, ...waiting.items.map((item) => item.side)].some(
            (own) => own !== undefined && own !== 'both' && own !== side,
          ),
        );
      this.settle(says, apart ? { torn: true } : {});
      return;
    }
    const from = this.mention && (segment.now || !this.last) ? this.mention : undefined;
    const free =
      this.last !== undefined && this.last.says?.what !== 'pulse' && this.last.says?.what !== 'could-not';
    // "Was palpable, is now absent": where the past was not understood, both stand against each other.
    const again = segment.now && !from ? this.last : undefined;
    if (from) {
      group.items = from.map((item) => ({ ...item, ...(group.side && { side: group.side }) }));
      this.mention = undefined;
    } else if (this.last && (group.side || free || again)) {
      const side = group.side ? undefined : this.last.side;
      group.items = this.last.items.map(({ side: own, loose, ...item }) => ({
        ...item,
        ...(group.side ? {} : { ...(own && { side: own }), ...(loose && { loose }) }),
      }));
      if (side) group.side = side;
      if (this.last.blocked) group.blocked = true;
      if (this.last.says?.what === 'except') this.last.says = undefined;
    }
    if (group.items.length) this.tell(group, at);
    else {
      this.unread.push(...group.spans);
      // One more strength behind several sites: a list that was not understood.
      if (this.last?.says?.what === 'pulse' && this.last.items.length > 1) this.last.torn = true;
    }
  }

  /** A bruit without a site of its own is heard where the pulse just named is felt. */
  overheard(group: Group, foreign: boolean): void {
    const named = this.entries.filter((entry) => entry.is === 'group' && entry.group.says?.what === 'pulse');
    const items = this.last?.items ?? [];
    if (
      foreign ||
      !items.length ||
      !items.every(({ sites }) => sites.length === 1 && isListeningSite(sites[0]!))
    )
      return;
    if (group.says?.what === 'bruit' && group.says.bruit === 'none' && named.length > 1) return;
    group.items = items.map((item) => ({ ...item, ...(group.side && { side: group.side }) }));
    group.side ??= this.last?.side;
  }
}
