import type { SiteId } from '../anatomy/index.js';
import type { Bruit, DopplerSignal, Reason } from '../examination/index.js';
import { isListed, type Listed } from './columns.js';
import { CLOSENESS, type Item, type Span } from './groups.js';
import { means, type NoteSide, type Part, stops, type Token } from './meanings.js';
import { type Manner, type StrengthRead, strengthOf } from './strength.js';
import { ALL_OF } from './words/latin.js';
import type { Segment } from './sentences.js';

/** What a segment is made of once its words are put together, in their order. */
export type Atom = Span &
  (
    | { readonly is: 'site'; readonly item: Item }
    | { readonly is: 'side'; readonly side: NoteSide; readonly loose: boolean }
    | { readonly is: 'strength'; readonly read: StrengthRead; readonly bare: boolean; readonly felt: boolean }
    | {
        readonly is: 'bruit';
        readonly bruit: Bruit;
        readonly own?: readonly SiteId[];
        readonly over: boolean;
        readonly plural: boolean;
      }
    | { readonly is: 'doppler'; readonly signal?: DopplerSignal; readonly only?: true }
    | { readonly is: 'list'; readonly list: Listed }
  );
export type AtomOf<Is extends Atom['is']> = Extract<Atom, { is: Is }>;

/** What else stands in a segment. */
export interface Remarks {
  readonly could?: 'could-not' | 'skipped';
  readonly reason?: Reason;
  readonly amputated?: 'foot' | 'below-knee' | 'above-knee';
  readonly marks: readonly ('thrill' | 'expansile')[];
  readonly clear: boolean;
  readonly same: boolean;
  /** A word that may be a misspelt one that matters. */
  readonly blocked: boolean;
  /** It stands before anything that is a site. */
  readonly blockedFirst: boolean;
  /** Words of no lexicon, of another examination or of a lesion: nothing is taken over from before. */
  readonly foreign: boolean;
  readonly pulses: 'one' | 'many' | undefined;
  readonly all: boolean;
  readonly part?: Part;
}

export interface Read {
  readonly atoms: Atom[];
  readonly remarks: Remarks;
}

/** The sites of a limb beyond a place, from it on, or down to it. "From the groin on" leaves open whether the groin is meant. */
function reached(reach: 'below' | 'from' | 'to' | 'distal', at: readonly SiteId[]): SiteId[] {
  for (const chain of [ALL_OF.leg, ALL_OF.arm] as readonly (readonly SiteId[])[]) {
    const places = at.map((site) => chain.indexOf(site)).filter((index) => index >= 0);
    if (!places.length) continue;
    // The last two of a limb lie beside each other.
    const depth = (index: number): number => Math.min(index, 2);
    const own = Math.max(...places.map(depth));
    return chain.filter((_, index) =>
      reach === 'to'
        ? depth(index) <= own
        : reach === 'from' && own > 0
          ? depth(index) >= own
          : depth(index) > own,
    );
  }
  return [];
}

const REACHED_PARTS: Readonly<
  Partial<Record<Part, Readonly<Partial<Record<'below' | 'from' | 'to', readonly SiteId[]>>>>>
> = {
  knee: {
    below: reached('below', ['popliteal']),
    from: reached('from', ['popliteal']),
    to: reached('to', ['popliteal']),
  },
  groin: { below: reached('below', ['femoral']), from: reached('below', ['femoral']), to: ['femoral'] },
  foot: { to: ALL_OF.leg, from: reached('below', ['popliteal']) },
  hand: { to: ALL_OF.arm, from: reached('below', ['brachial']) },
};

/** The pulses that are felt on a part of the body. */
export function sitesOfPart(part: Part): readonly SiteId[] {
  if (part === 'foot') return reached('below', ['popliteal']);
  if (part === 'hand') return reached('below', ['brachial']);
  if (part === 'knee') return ['popliteal'];
  if (part === 'groin') return ['femoral'];
  return ALL_OF[part];
}

export const limbOf = (part: Part): 'leg' | 'arm' => (part === 'arm' || part === 'hand' ? 'arm' : 'leg');

const BETWEEN = ['filler', 'over', 'pulse'] as const;
const STRENGTH = ['not', 'degree', 'grade', 'figure', 'pluses'] as const;

/** Puts the words of a segment together. `last`: the sites named before, for "distally". */
export function atomsOf(segment: Segment, manner: Manner, last: readonly SiteId[]): Read {
  const { pieces } = segment;
  const atoms: Atom[] = [];
  const remarks: { -readonly [K in keyof Remarks]: Remarks[K] } = {
    marks: [],
    clear: false,
    same: false,
    blocked: false,
    blockedFirst: false,
    foreign: false,
    pulses: undefined,
    all: false,
  };
  const token = (at: number): Token | undefined => {
    const piece = pieces[at];
    return isListed(piece) ? undefined : piece;
  };
  const over = (at: number, ...also: readonly string[]): number => {
    let i = at;
    while (
      means(token(i), ...BETWEEN) ||
      (token(i) && also.includes(token(i)!.means.is)) ||
      stops(token(i), 'colon')
    )
      i++;
    return i;
  };
  const spanOf = (from: number, to: number): Span => ({ start: pieces[from]!.start, end: pieces[to]!.end });
  const site = (sites: readonly SiteId[], span: Span, more: Partial<Item> = {}): void => {
    atoms.push({
      is: 'site',
      ...span,
      item: { ...span, sites, closeness: sites.length > 1 ? CLOSENESS.group : CLOSENESS.own, ...more },
    });
  };

  let strange = false;
  for (let i = 0; i < pieces.length;) {
    const piece = pieces[i]!;
    if (isListed(piece)) {
      atoms.push({ is: 'list', list: piece, start: piece.start, end: piece.end });
      i++;
      continue;
    }
    const at = i++;
    const { means: says } = piece;
    if (means(piece, ...STRENGTH)) {
      // "Not widened, palpable": the "not" is of another word.
      if (means(piece, 'not') && means(token(over(i)), 'other')) {
        i = over(i) + 1;
        continue;
      }
      // "No femoral bruit", "bruit absent": the strength is the bruit's.
      let end = at;
      for (let next = i; ; next++) {
        next = over(next, 'all');
        if (!means(token(next), ...STRENGTH)) break;
        // "2+ without bruits": the second "not" is of what follows.
        if (means(token(next), 'not') && !means(token(over(next + 1)), ...STRENGTH)) break;
        end = next;
      }
      if (means(piece, 'degree') && end === at) continue;
      const row = pieces.slice(at, end + 1).filter((own): own is Token => !isListed(own));
      const strength = strengthOf(row, manner);
      if (strength) atoms.push({ is: 'strength', ...strength, ...spanOf(at, end) });
      for (let n = at; n < end; n++) {
        const own = token(n);
        if (means(own, 'pulse')) remarks.pulses = own.means.plural ? 'many' : (remarks.pulses ?? 'one');
        if (means(own, 'all')) remarks.all = true;
      }
      i = end + 1;
    } else if (says.is === 'site') {
      // An unknown word between two sites may have been the first one's strength.
      if (strange && atoms.at(-1)?.is !== 'strength') remarks.blocked = true;
      strange = false;
      // "Left foot pulses: DP 1, PT 0": a heading, and no finding of its own.
      if (says.sites.length > 1 && stops(token(i), 'colon') && means(token(over(i, 'side')), 'site')) {
        remarks.part ??= says.foot ? 'foot' : undefined;
        continue;
      }
      const next = token(i);
      const pulses = means(next, 'pulse') && next.means.plural && says.sites.length === 1;
      site(says.sites, piece, {
        ...(says.plural && { plural: true }),
        ...(pulses && { pulses }),
        ...(says.sites.length > 2 && { closeness: CLOSENESS.all }),
      });
      if (means(next, 'pulse')) i++;
    } else if (says.is === 'reach') {
      const to = over(i, 'side');
      const target = token(to);
      const { reach } = says;
      if (reach !== 'distal' && means(target, 'site', 'part')) {
        for (let n = i; n < to; n++) {
          const own = token(n);
          if (means(own, 'side'))
            atoms.push({
              is: 'side',
              side: own.means.side,
              loose: Boolean(own.means.loose),
              start: own.start,
              end: own.end,
            });
        }
        const part = means(target, 'part') ? target.means.part : undefined;
        const sites = means(target, 'site')
          ? reached(reach, target.means.sites)
          : REACHED_PARTS[part!]?.[reach];
        // "Leg pulses left from the knee down": the place limits what was said of all.
        const all = atoms.findIndex((atom) => atom.is === 'site' && atom.item.sites.length > 2);
        const says = atoms.some((atom) => atom.is === 'strength');
        if (sites?.length && all >= 0 && !says) atoms.splice(all, 1);
        if (sites?.length) site(sites, spanOf(at, to), { closeness: CLOSENESS.group });
        else remarks.foreign = true;
        i = to + 1;
      } else if (reach === 'distal' || reach === 'below') {
        const sites = last.length ? reached('below', last) : sitesOfPart('foot');
        const named = atoms.some((atom) => atom.is === 'site') || means(token(over(i)), 'site');
        if (sites.length && !named) site(sites, piece, { closeness: CLOSENESS.group });
      }
    } else if (says.is === 'than') {
      const next = over(i);
      if (means(token(next), 'side')) i = next + 1;
    } else if (says.is === 'side') {
      atoms.push({
        is: 'side',
        side: says.side,
        loose: Boolean(says.loose),
        start: piece.start,
        end: piece.end,
      });
    } else if (says.is === 'part') {
      const small = says.part === 'foot' || says.part === 'hand';
      if (small && atoms.some((atom) => atom.is === 'site') && means(token(over(i)), ...STRENGTH)) {
        // "Fem ok, pop ok, feet nil".
        site(sitesOfPart(says.part), piece);
        continue;
      }
      remarks.part ??= says.part;
      const sided = pieces.some((other) => !isListed(other) && means(other, 'side') && !other.means.loose);
      const side = says.side ?? (says.plural && !sided ? 'both' : undefined);
      if (side) atoms.push({ is: 'side', side, loose: false, start: piece.start, end: piece.end });
    } else if (says.is === 'bruit') {
      const after = token(i);
      const onward =
        means(after, 'over') ||
        (means(after, 'side', 'filler') && means(token(over(i, 'side')), 'site', 'part'));
      atoms.push({
        is: 'bruit',
        bruit: says.bruit,
        ...(says.sites && { own: says.sites }),
        plural: Boolean(says.plural),
        over: onward && means(token(over(i, 'side')), 'site', 'part'),
        start: piece.start,
        end: piece.end,
      });
    } else if (says.is === 'pulse') remarks.pulses = says.plural ? 'many' : (remarks.pulses ?? 'one');
    else if (says.is === 'all') remarks.all = true;
    else if (says.is === 'rest') {
      remarks.all = true;
      site([], piece, { rest: true, closeness: CLOSENESS.all });
    } else if (says.is === 'same') remarks.same = true;
    else if (says.is === 'clear') remarks.clear = true;
    else if (says.is === 'mark') remarks.marks = [...remarks.marks, says.mark];
    else if (says.is === 'doppler') {
      const before = atoms.at(-1);
      const own = before?.is === 'doppler' ? before : undefined;
      if (own) atoms.pop();
      const { signal = own?.signal, only = own?.only } = says;
      atoms.push({
        is: 'doppler',
        ...(signal && { signal }),
        ...(only && { only }),
        start: own?.start ?? piece.start,
        end: piece.end,
      });
    } else if (says.is === 'reason') {
      remarks.reason ??= says.reason;
      if (says.from) remarks.amputated = says.from;
    } else if (says.is === 'could-not') {
      if (!says.skipped || !remarks.could) remarks.could = says.skipped ? 'skipped' : 'could-not';
    } else if (says.is === 'lesion') {
      // "Fem-pop bypass": the sites right before it are the lesion's.
      if (means(token(at - 1), 'site', 'pulse')) while (atoms.at(-1)?.is === 'site') atoms.pop();
      remarks.foreign = true;
      // "Stenosis of the left popliteal"; "after thrombectomy on the right: PT 2" names a pulse again.
      const next = over(i, 'side');
      const whole = !pieces.slice(i, next).some((between) => !isListed(between) && stops(between, 'colon'));
      if (whole && next > i && means(token(next), 'site')) i = next + 1;
    } else if (says.is === 'other') {
      remarks.foreign = true;
      const before = atoms.at(-1);
      const next = over(i);
      // "Power normal", "normal power": the strength is not a pulse's.
      if (means(token(next), ...STRENGTH)) {
        i = next;
        while (means(token(i), ...STRENGTH)) i = over(i + 1);
      } else if (before?.is === 'strength' && !atoms.some((atom) => atom.is === 'site')) atoms.pop();
    } else if (says.is === 'unknown') {
      if (says.near) {
        remarks.blocked = true;
        if (!atoms.some((atom) => atom.is === 'site')) remarks.blockedFirst = true;
      } else {
        remarks.foreign = true;
        strange = atoms.some((atom) => atom.is === 'site');
      }
    } else if (says.is === 'unit' || says.is === 'number') remarks.foreign = true;
  }
  return { atoms, remarks };
}
