import { isMidlineSite, type Laterality, type SiteId } from '../anatomy/index.js';
import { CLOSENESS, type Group, type Item, type Says, type Span } from './groups.js';
import type { NoteSide } from './meanings.js';
import type { StrengthRead } from './strength.js';
import type { Entry } from './story.js';
import type { Told } from './walk.js';

/** A site with its side, and what is said of it. */
export interface Claim {
  readonly site: SiteId;
  readonly side: Laterality;
  readonly says: Says;
  readonly closeness: number;
  readonly rest: boolean;
}

/** What a group says once its sides are known: of each place, or, where the side is not, of each site. */
export interface Claimed {
  readonly claims: readonly Claim[];
  /** The sites whose side is to be asked. */
  readonly sideless: readonly SiteId[];
  readonly says: Says;
  readonly blocked: boolean;
  readonly torn: boolean;
  readonly pair?: readonly [StrengthRead, StrengthRead] | undefined;
  readonly spans: readonly Span[];
  /** Which sides were said before in the note, for "likewise". */
  readonly sentence: number;
}

/** What carries over from sentence to sentence. */
interface Carry {
  /** A heading: holds until the next one. */
  head?: NoteSide | undefined;
  /** The side named last. */
  side?: NoteSide | undefined;
}

const LOST = 'lost';
type Known = NoteSide | typeof LOST | undefined;

const firstSide = (group: Group): NoteSide | undefined => {
  const sides = new Set(group.items.map((item) => own(group, item)).filter((side) => side !== undefined));
  return sides.size === 1 ? [...sides][0] : undefined;
};

/** The side that a site is given by its own group; "both" that may mean two arteries counts only where nothing else is known. */
function own(group: Group, item: Item): NoteSide | undefined {
  if (item.side && !item.loose) return item.side;
  if (group.side && !group.looseSide) return group.side;
  return undefined;
}

const loosely = (group: Group, item: Item): boolean =>
  Boolean((item.side && item.loose) || (group.side && group.looseSide));

/** Finds the side of every site of a note, sentence by sentence. */
export function sidesOf(told: readonly Told[]): Claimed[] {
  const carry: Carry = {};
  const all: Claimed[] = [];
  const astray = told.some((one) => one.astray);
  told.forEach(({ entries, afresh }, sentence) => {
    if (afresh) carry.side = undefined;
    const behind = trailing(entries);
    let known: Known;
    let headed = false;
    let named: NoteSide | undefined;
    entries.forEach((entry, at) => {
      if (entry.is === 'lost') {
        known = LOST;
        carry.head = carry.side = named = undefined;
        return;
      }
      if (entry.is === 'head') {
        known = entry.side;
        headed = entry.firm;
        if (entry.firm) carry.head = entry.side;
        named = entry.side;
        return;
      }
      const { group } = entry;
      const claims: Claim[] = [];
      const sideless: SiteId[] = [];
      const says = group.says!;
      for (const item of group.items) {
        const side = own(group, item) ?? found(item, group, at);
        for (const site of item.sites) {
          const claim = (one: Laterality): void => {
            claims.push({ site, side: one, says, closeness: item.closeness, rest: Boolean(item.rest) });
          };
          if (isMidlineSite(site)) claim('midline');
          else if (side === undefined || side === LOST) sideless.push(site);
          else if (side === 'both') {
            claim('right');
            claim('left');
          } else claim(side);
        }
      }
      const explicit = group.items.map((item) => own(group, item)).filter((side) => side !== undefined);
      const one = firstSide(group);
      if (group.inTable) {
        known = LOST;
        named = undefined;
      } else if (one) {
        known = one;
        headed = false;
        named = one;
        if (carry.head && carry.head !== one && !entries.some(({ is }) => is === 'head'))
          carry.head = undefined;
      } else if (explicit.length) {
        known = LOST;
        named = undefined;
      } else if (group.side && !group.items.length) {
        known = named = group.side;
      }
      const side = group.side ?? (known !== LOST ? known : undefined);
      all.push({
        claims: says.what === 'same' ? likewise(side, group, sentence) : claims,
        sideless,
        says,
        blocked: Boolean(group.blocked),
        torn:
          Boolean(group.torn) || (astray && group.items.some(({ closeness }) => closeness === CLOSENESS.all)),
        pair: group.pair,
        spans: group.spans,
        sentence,
      });
    });
    if (named) carry.side = named;

    function found(item: Item, group: Group, at: number): Known {
      const loose = loosely(group, item);
      const several = item.sites.length === 1 && (item.plural || (item.pulses && group.items.length === 1));
      // "Both" of one artery is both sides.
      if (loose && !headed && group.items.length === 1 && item.sites.length === 1) return 'both';
      if (known !== undefined) {
        if (several && !headed && known !== 'both' && known !== LOST) return loose ? 'both' : undefined;
        return known;
      }
      if (carry.head) return carry.head;
      if (several || (loose && group.items.length === 1 && item.sites.length === 1)) return 'both';
      if (behind[at]) return behind[at];
      if (loose) return group.items.length === 1 ? 'both' : carry.side;
      if (carry.side && carry.side !== 'both') return carry.side;
      // "No carotid bruit": on no side.
      if (group.says?.what === 'bruit' && group.says.bruit === 'none') return 'both';
      return item.closeness === CLOSENESS.all && !item.rest ? 'both' : undefined;
    }
  });
  return all;

  /** What was said of the other side: in this sentence, else so far in the note. */
  function likewise(side: NoteSide | undefined, group: Group, sentence: number): Claim[] {
    if (side !== 'right' && side !== 'left') return [];
    const other = side === 'right' ? 'left' : 'right';
    const named = group.items.flatMap(({ sites }) => sites);
    const of = (from: readonly Claimed[]): Claim[] =>
      from
        .filter((claimed) => !claimed.blocked && !claimed.torn && !claimed.sideless.length)
        .flatMap(({ claims }) => claims)
        .filter((claim) => claim.side === other && (!named.length || named.includes(claim.site)))
        .map((claim) => ({ ...claim, side }));
    const near = of(all.filter((claimed) => claimed.sentence === sentence));
    return near.length ? near : of(all);
  }
}

/** For each entry of a sentence the side that stands behind it, where nothing between has one: "fem 2, pop 0 on the left". */
function trailing(entries: readonly Entry[]): (NoteSide | undefined)[] {
  const behind: (NoteSide | undefined)[] = [];
  let next: NoteSide | undefined;
  for (let at = entries.length - 1; at >= 0; at--) {
    behind[at] = next;
    const entry = entries[at]!;
    if (entry.is !== 'group') next = undefined;
    else {
      const { group } = entry;
      const sided = Boolean(group.side) || group.items.some((item) => own(group, item) !== undefined);
      if (sided)
        next =
          group.trails && !group.looseSide && group.items.every((item) => !item.side)
            ? group.side
            : undefined;
    }
  }
  return behind;
}
