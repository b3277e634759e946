import type { SiteId } from '../anatomy/index.js';
import type { Side } from '../anatomy/index.js';
import { means, stops, type Token, type TokenOf } from './meanings.js';
import { type Manner, type StrengthRead, strengthOf } from './strength.js';

/** One cell of a table or list of figures: which site, which side if it says so, how strong. */
export interface Cell {
  readonly site: SiteId;
  readonly side?: Side | 'both' | undefined;
  readonly read: StrengthRead;
  readonly start: number;
  readonly end: number;
}

/** A run of tokens that is a list: its cells stand where it stood. */
export interface Listed {
  readonly cells: readonly Cell[];
  /** Two values of one site with no word which side is which. */
  readonly pair?: readonly [Cell, Cell];
  readonly start: number;
  readonly end: number;
  /** A side stands at the head of its rows. */
  readonly sided: boolean;
}

export type Piece = Token | Listed;
export const isListed = (piece: Piece | undefined): piece is Listed =>
  piece !== undefined && 'cells' in piece;

interface CellRead {
  readonly read: StrengthRead;
  readonly start: number;
  readonly end: number;
  readonly next: number;
}

/** One value of a list at `at`: a figure, plus signs, a word with its "not" or its degree, or a dash for nothing felt. */
function cellAt(tokens: readonly Token[], at: number, manner: Manner, first: boolean): CellRead | undefined {
  const token = tokens[at];
  if (!token) return undefined;
  let next = at + 1;
  if (stops(token, 'dash')) {
    if (first && means(tokens[at + 1], 'figure', 'pluses', 'grade', 'not')) return undefined;
    const read = strengthOf([{ ...token, means: { is: 'grade', grade: 'absent' } }], manner)!.read;
    return { read, start: token.start, end: token.end, next };
  }
  if (means(token, 'not', 'degree')) {
    if (!means(tokens[at + 1], 'grade')) return undefined;
    next = at + 2;
  } else if (means(token, 'grade')) {
    const after = tokens[at + 1];
    const vague = token.means.grade !== 'present' && token.means.grade !== 'absent';
    if (vague && means(after, 'grade') && after.means.grade === 'present') next = at + 2;
  } else if (!means(token, 'figure', 'pluses')) return undefined;
  const strength = strengthOf(tokens.slice(at, next), manner);
  return strength && { read: strength.read, start: token.start, end: tokens[next - 1]!.end, next };
}

const skip = (tokens: readonly Token[], at: number, pass: (token: Token) => boolean): number => {
  let i = at;
  while (tokens[i] && pass(tokens[i]!)) i++;
  return i;
};

/** Exactly this many values in a row, and none after them. */
function cellsAt(tokens: readonly Token[], at: number, count: number, manner: Manner) {
  const cells: CellRead[] = [];
  let i = at;
  let commas = false;
  while (cells.length < count) {
    if (cells.length) {
      const dash = stops(tokens[i], 'dash') && tokens[i]!.glued && tokens[i]!.tight;
      if (stops(tokens[i], 'slash', 'comma', 'cell') || dash) {
        commas ||= stops(tokens[i], 'comma');
        i++;
      }
    }
    const cell = cellAt(tokens, i, manner, !cells.length);
    if (!cell) return undefined;
    cells.push(cell);
    i = cell.next;
  }
  const glued = stops(tokens[i], 'slash') && tokens[i]!.glued && tokens[i]!.tight;
  const after = tokens[glued ? i + 1 : i];
  if (means(after, 'figure', 'pluses', 'grade', 'unit', 'number')) return undefined;
  if (means(after, 'site', 'letter') && (commas || !means(tokens[at], 'figure', 'pluses'))) return undefined;
  return { cells, next: i };
}

const single = (token: Token | undefined): token is TokenOf<'site'> =>
  means(token, 'site') && token.means.sites.length === 1;

/** A row of two or more sites: "fem pop PT DP", "F/P/DP/PT", the head of a table. */
function sitesAt(tokens: readonly Token[], at: number) {
  const sites: SiteId[] = [];
  let i = at;
  for (;;) {
    const token = tokens[i];
    if (!single(token)) break;
    sites.push(token.means.sites[0]!);
    i++;
    const gap = skip(
      tokens,
      i,
      (between) => stops(between, 'slash', 'comma', 'cell', 'dash') || means(between, 'and'),
    );
    if (gap - i > 2 || !single(tokens[gap])) break;
    i = gap;
  }
  return sites.length > 1 ? { sites, next: i } : undefined;
}

/** Rows of values under or behind a row of sites. */
function listAt(
  tokens: readonly Token[],
  at: number,
  manner: Manner,
): (Listed & { next: number }) | undefined {
  const head = sitesAt(tokens, at);
  if (!head) return undefined;
  const cells: Cell[] = [];
  let sided = false;
  let next = head.next;
  for (;;) {
    let i = skip(
      tokens,
      next,
      (token) =>
        stops(token, 'colon', 'cell', 'line', 'slash', 'comma', 'semicolon', 'sentence') ||
        means(token, 'pulse', 'filler', 'and') ||
        (stops(token, 'dash') && stopsTable(tokens, token)),
    );
    const between = tokens.slice(next, i);
    const label = tokens[i];
    let side: Cell['side'];
    if (means(label, 'side', 'part')) {
      side = label.means.side;
      i = skip(
        tokens,
        i + 1,
        (token) => stops(token, 'colon', 'cell') || means(token, 'part', 'filler', 'pulse'),
      );
      // A dash before the values is a sign between, one for a value is not.
      if (stops(tokens[i], 'dash') && means(tokens[i + 1], 'figure', 'pluses', 'grade', 'not')) i++;
    }
    if (!side && (cells.length || between.some((token) => stops(token, 'sentence', 'semicolon', 'comma'))))
      break;
    if (cells.length && sided !== Boolean(side)) break;
    const row = cellsAt(tokens, i, head.sites.length, manner);
    if (!row) break;
    sided ||= Boolean(side);
    row.cells.forEach(({ read, start, end }, n) =>
      cells.push({ site: head.sites[n]!, side, read, start, end }),
    );
    next = row.next;
  }
  if (!cells.length) return undefined;
  return { cells, sided, start: tokens[at]!.start, end: tokens[next - 1]!.end, next };
}

/** Rules between the head and the rows of a table: dashes that stand between bars. */
function stopsTable(tokens: readonly Token[], dash: Token): boolean {
  const at = tokens.indexOf(dash);
  return [tokens[at - 1], tokens[at + 1]].every((token) => stops(token, 'dash', 'cell'));
}

interface Order {
  readonly order: readonly [Side, Side];
  readonly at: number;
  readonly length: number;
}

/** In which order a note gives the two sides, wherever it says so: "R/L", "re li". Two orders in one note are none. */
function ordersOf(tokens: readonly Token[]): Order[] {
  const orders: Order[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const [first, gap, last] = tokens.slice(at, at + 3);
    const length = stops(gap, 'slash', 'cell', 'dash') ? 3 : 2;
    const second = length === 3 ? last : gap;
    if (!means(first, 'side') || !means(second, 'side')) continue;
    const [a, b] = [first.means.side, second.means.side];
    if (a === 'both' || b === 'both' || a === b) continue;
    const after = tokens[at + length];
    if (length === 2 && after && !stops(after, 'line', 'colon', 'close', 'cell')) continue;
    if (length === 3 && stops(gap, 'cell') && after && !stops(after, 'line', 'cell')) continue;
    orders.push({ order: [a, b], at, length });
  }
  return orders.some(({ order }) => order[0] !== orders[0]!.order[0]) ? [] : orders;
}

function same(a: StrengthRead, b: StrengthRead): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

/** Two values behind one site: right and left by the order the note gives, or with a slash between them. */
function pairAt(
  tokens: readonly Token[],
  at: number,
  order: readonly [Side, Side] | undefined,
  manner: Manner,
): (Listed & { next: number }) | undefined {
  const site = tokens[at];
  if (!means(site, 'site')) return undefined;
  const from = skip(
    tokens,
    at + 1,
    (token) => stops(token, 'colon', 'cell') || means(token, 'pulse', 'filler'),
  );
  const first = cellAt(tokens, from, manner, true);
  if (!first) return undefined;
  const between = tokens[first.next];
  const slash = stops(between, 'slash');
  if (!slash && !order) return undefined;
  const second = cellAt(tokens, first.next + (slash || stops(between, 'cell') ? 1 : 0), manner, false);
  if (!second) return undefined;
  const after = tokens[second.next];
  if (means(after, 'figure', 'pluses', 'unit', 'number') || (stops(after, 'slash') && after!.tight))
    return undefined;
  const over = tokens[second.next - 1];
  const of = means(over, 'figure') && over.means.figure > 2;
  if (!order && of) return undefined;
  if (!slash && stops(tokens[first.next], 'dash') && means(after, 'grade', 'not')) return undefined;
  const start = site.start;
  const end = second.end;
  const cell = (read: StrengthRead, side?: Cell['side']): Cell[] =>
    site.means.sites.map((id) => ({ site: id, side, read, start, end }));
  if (order) {
    const cells = [...cell(first.read, order[0]), ...cell(second.read, order[1])];
    return { cells, sided: true, start, end, next: second.next };
  }
  if (same(first.read, second.read)) {
    return { cells: cell(first.read, 'both'), sided: true, start, end, next: second.next };
  }
  const pair = [cell(first.read)[0]!, cell(second.read)[0]!] as const;
  return { cells: [], pair, sided: true, start, end, next: second.next };
}

/** "2/4" outside a list is a figure of a scale. */
function withScales(pieces: readonly Piece[]): Piece[] {
  const out: Piece[] = [];
  for (let i = 0; i < pieces.length; i++) {
    const [figure, slash, of] = pieces.slice(i, i + 3) as Token[];
    const scale =
      figure &&
      !isListed(figure) &&
      means(figure, 'figure') &&
      slash &&
      !isListed(slash) &&
      stops(slash, 'slash') &&
      slash.glued &&
      slash.tight &&
      of &&
      !isListed(of) &&
      means(of, 'figure')
        ? of.means.figure
        : 0;
    if (scale > 2 && means(figure as Token, 'figure')) {
      const token = figure as TokenOf<'figure'>;
      out.push({ ...token, means: { ...token.means, of: scale }, end: of!.end, tight: of!.tight });
      i += 2;
    } else out.push(pieces[i]!);
  }
  return out;
}

/**
 * Takes lists and tables out of the tokens: a row of sites with as many values, rows under such a head, two values behind each site
 * under "R/L". What is left stays as it was.
 */
export function withLists(tokens: readonly Token[], manner: Manner): Piece[] {
  const orders = ordersOf(tokens);
  const [found] = orders;
  const heads = new Set(orders.flatMap(({ at, length }) => tokens.slice(at, at + length)));
  // The words of the order are no side of anything: they are read as nothing where pairs follow, else "R/L fem 2+" is of both.
  const row = tokens.map((token): Token =>
    heads.has(token) ? { ...token, means: { is: 'filler' } } : token,
  );
  const pieces: Piece[] = [];
  let ordered = false;
  /** Where the words of an order stand among the pieces. */
  const headsAt: { readonly piece: number; readonly order: Order }[] = [];
  let tried = 0;
  for (let i = 0; i < row.length;) {
    const order = orders.find(({ at }) => at === i);
    if (order) headsAt.push({ piece: pieces.length, order });
    const list = (i < tried ? undefined : listAt(row, i, manner)) ?? pairAt(row, i, found?.order, manner);
    // What is no list from its first site on is none from its second.
    if (i >= tried) tried = sitesAt(row, i)?.next ?? tried;
    if (list) {
      ordered ||= Boolean(found && list.sided);
      pieces.push(list);
      i = list.next;
    } else pieces.push(row[i++]!);
  }
  if (!ordered) {
    for (const { piece, order } of headsAt.reverse()) {
      const words = tokens.slice(order.at, order.at + order.length);
      pieces.splice(piece, order.length, {
        ...words[0]!,
        end: words.at(-1)!.end,
        means: { is: 'side', side: 'both' },
      });
    }
  }
  return withScales(pieces);
}
