import { isPulseSite } from '../anatomy/index.js';
import type { Reason } from '../examination/index.js';
import { type Read, sitesOfPart } from './atoms.js';
import { CLOSENESS, type Group, isAbsent, spanOf } from './groups.js';
import type { Segment } from './sentences.js';
import type { Story } from './story.js';
import { ALL_OF } from './words/latin.js';

/** The pulses that are gone with a limb, by where it was taken off. */
export function amputation(story: Story, { atoms, remarks }: Read, segment: Segment, at: number): void {
  const sites = {
    foot: sitesOfPart('foot'),
    'below-knee': sitesOfPart('foot'),
    'above-knee': ALL_OF.leg.slice(1),
  }[remarks.amputated!];
  const side = atoms.find((atom) => atom.is === 'side');
  const group: Group = {
    items: [
      story.general(sites, segment, {
        closeness: CLOSENESS.own,
        ...(side?.is === 'side' && { side: side.side }),
      }),
    ],
    says: { what: 'could-not', reason: 'amputated' },
    spans: segment.pieces.map(spanOf),
  };
  if (side?.is === 'side') story.entries.push({ is: 'head', side: side.side, firm: false });
  story.tell(group, at);
}

/** What could not be examined, and why; tells whether the segment is settled by it. */
export function examined(
  story: Story,
  { remarks, atoms }: Read,
  segment: Segment,
  groups: Group[],
  at: number,
  next: Read | undefined,
): boolean {
  const { could } = remarks;
  const why = remarks.reason ?? story.reason?.reason ?? laterReason(next);
  if (remarks.reason) {
    story.reason = {
      reason: remarks.reason,
      part: remarks.part,
    };
  }
  const kept = remarks.reason && ['dressing', 'cast', 'declined', 'amputated'].includes(remarks.reason);
  const sited = groups.filter(({ items }) => items.length);
  const absent = groups.some((group) => isAbsent(group));
  if (could) {
    if (could === 'skipped' && !why) return true;
    const says = { what: 'could-not', reason: why ?? 'other' } as const;
    if (sited.length) for (const group of sited) couldNot(story, group, says, segment, at, remarks.blocked);
    else if (story.pending.length) story.settle(says);
    else if (
      groups.length ||
      (atoms.some((atom) => atom.is === 'side') && !remarks.part && !remarks.pulses && story.last)
    ) {
      const side = atoms.find((atom) => atom.is === 'side');
      const group = groups[0] ?? { items: [], spans: segment.pieces.map(spanOf), says: undefined };
      story.place(
        { ...group, says, ...(side?.is === 'side' && { side: side.side }) },
        segment,
        at,
        remarks.foreign,
        false,
      );
    } else if (remarks.part || remarks.pulses || story.reason?.part) {
      const part = remarks.part ?? story.reason?.part;
      const sites = part ? sitesOfPart(part) : ALL_OF[story.walker.limb];
      const side = atoms.find((atom) => atom.is === 'side');
      const item = story.general(sites, segment, {
        closeness: CLOSENESS.group,
        ...(side?.is === 'side' && { side: side.side }),
      });
      couldNot(
        story,
        { items: [item], says, spans: segment.pieces.map(spanOf) },
        says,
        segment,
        at,
        remarks.blocked || (!part && !remarks.all),
      );
    }
    return true;
  }
  if (!remarks.reason) {
    // "Bilateral pedal oedema, DP and PT not palpable": absent, or hidden by it.
    for (const group of story.reason ? sited : []) {
      if (isAbsent(group))
        group.says = { what: 'could-not', reason: story.reason!.reason, orAbsent: true, open: true };
    }
    return false;
  }
  if (sited.length && (absent || (kept && groups.every(({ says }) => !says)))) {
    for (const group of sited) {
      const says = {
        what: 'could-not',
        reason: remarks.reason,
        ...(absent && { orAbsent: true as const }),
      } as const;
      if (!group.says || isAbsent(group)) couldNot(story, group, says, segment, at, remarks.blocked);
      else story.place(group, segment, at, remarks.foreign, false);
    }
    return true;
  }
  if (absent && !sited.length && (story.pending.length || (story.last && groups[0]?.side))) {
    story.place(
      { ...groups[0]!, says: { what: 'could-not', reason: remarks.reason, orAbsent: true } },
      segment,
      at,
      remarks.foreign,
      false,
    );
    return true;
  }
  if (remarks.reason === 'declined' && remarks.part && !sited.length) {
    const side = atoms.find((atom) => atom.is === 'side');
    const item = story.general(sitesOfPart(remarks.part), segment, {
      closeness: CLOSENESS.group,
      ...(side?.is === 'side' && { side: side.side }),
    });
    couldNot(
      story,
      { items: [item], says: undefined, spans: segment.pieces.map(spanOf) },
      { what: 'could-not', reason: 'declined' },
      segment,
      at,
      remarks.blocked,
    );
    return true;
  }
  if (!sited.length) {
    // "DP not felt, oedema".
    if (story.last && isAbsent(story.last) && at > 0 && !remarks.part) {
      story.last.says = { what: 'could-not', reason: remarks.reason, orAbsent: true };
      story.last.spans = [...story.last.spans, ...segment.pieces.map(spanOf)];
    } else if (story.pending.length && kept) story.settle({ what: 'could-not', reason: remarks.reason });
    const side = atoms.find((atom) => atom.is === 'side');
    if (side?.is === 'side') story.entries.push({ is: 'head', side: side.side, firm: false });
    return true;
  }
  // "Pedal oedema" names no pulse.
  return sited.length > 0 && groups.every(({ says }) => !says);
}

function couldNot(
  story: Story,
  group: Group,
  says: Group['says'],
  segment: Segment,
  at: number,
  blocked: boolean,
): void {
  const named: Group = { ...group, says, ...(blocked && { blocked: true }) };
  named.items = named.items.filter(({ sites }) => sites.some(isPulseSite));
  if (story.pending.length) story.settle(says);
  if (named.items.length) story.tell(named, at);
  else story.unread.push(...segment.pieces.map(spanOf));
}

/** The reason that the next segment gives, where it names no site of its own. */
function laterReason(next: Read | undefined): Reason | undefined {
  return next?.atoms.some((atom) => atom.is === 'site') ? undefined : next?.remarks.reason;
}
