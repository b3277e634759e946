import type { Model } from './columns.js';
import { POINT_STATES, type Propagation } from './propagate.js';

// A constant of its own: some loaders look an imported name up at every use, which costs here.
const S = POINT_STATES;

interface Marginals {
  readonly narrowed: Float64Array;
  readonly blocked: Float64Array;
}

/** What reaches the beginning of each piece, for a column and for those that share its messages. */
let own = new Float64Array(0);
let shared = new Float64Array(0);

/** The second pass: probability that each piece is narrowed and blocked, given all findings. */
export function marginals(net: Propagation): Marginals {
  const { model, causes, n, up, active, wide, base, cause } = net;
  const into = { narrowed: new Float64Array(n), blocked: new Float64Array(n) };
  const total = net.total();
  if (own.length < n * S) {
    own = new Float64Array(n * S);
    shared = new Float64Array(n * S);
  }
  const byCause = new Float64Array(causes);
  for (const first of net.firsts) {
    shared.fill(0);
    own.fill(0);
    for (const c of net.live) {
      if (base[c] !== first) continue;
      const weight = net.prior[c]! / total;
      const likelihood = weight * up[net.at(0, c) * S]!;
      if (!(likelihood > 0)) continue;
      byCause[cause[c]!]! += likelihood;
      if (wide[0]) {
        own[0] = weight;
        descend(net, c, 1, own, shared, into);
      } else shared[0]! += weight;
    }
    descend(net, first, 0, shared, shared, into);
  }
  for (let i = 0; i < n; i++) {
    // Of pieces on which no finding bears it is known that the cause has struck somewhere.
    for (let c = 0; c < causes && !active[i]; c++) {
      into.narrowed[i]! += byCause[c]! * model.narrowed[i * causes + c]!;
      into.blocked[i]! += byCause[c]! * model.blocked[i * causes + c]!;
    }
  }
  return into;
}

/** What leaves a piece's end, and what was found there and beyond. */
const OUT = new Float64Array(S);
const END = new Float64Array(S);
/** Room for a piece's children on which findings bear: which, and where their messages stand. */
const KIDS = new Int32Array(16);
const KIDS_AT = new Int32Array(16);

/**
 * Down through the pieces where a column has messages of its own, or through those where it stands for others.
 * @param down what reaches the beginning of each piece
 * @param shared where what leaves the pieces of its own is added up
 */
function descend(
  net: Propagation,
  c: number,
  isWide: number,
  down: Float64Array,
  shared: Float64Array,
  into: Marginals,
): void {
  const { model, causes, readings, n, up, active, local: likelihoods, wide, start, loud } = net;
  const own = net.base[c]!;
  const reading = net.reading[c]! * S;
  const cause = net.cause[c]!;
  for (let i = 0; i < n; i++) {
    if (!active[i] || wide[i] !== isWide) continue;
    const local = i * readings * S + reading;
    const children = model.children[i]!;
    // Where no sound was listened for, silent and sounding points are alike.
    const states = loud[i] ? S : S / 2;
    let kids = 0;
    for (let j = 0; j < children.length; j++) {
      const child = children[j]!;
      if (!active[child]) continue;
      KIDS[kids] = child;
      KIDS_AT[kids++] = (start[child]! + (wide[child] ? c : own)) * S;
    }
    for (let x = 0; x < states; x++) END[x] = likelihoods[local + x]!;
    for (let j = 0; j < kids; j++) {
      const at = KIDS_AT[j]!;
      for (let x = 0; x < states; x++) END[x]! *= up[at + x]!;
    }
    if (states === S) passDown(model, i, i * causes + cause, down, END, OUT, into);
    else passQuiet(model, i, i * causes + cause, down, into);
    for (let x = 0; x < states; x++) OUT[x]! *= likelihoods[local + x]!;
    for (let j = 0; j < kids; j++) {
      const child = KIDS[j]!;
      const at = child * S;
      const adds = wide[child] !== isWide;
      const target = adds ? shared : down;
      for (let x = 0; x < states; x++) {
        let d = OUT[x]!;
        if (kids > 1) for (let o = 0; o < kids; o++) if (o !== j) d *= up[KIDS_AT[o]! + x]!;
        target[at + x] = adds ? target[at + x]! + d : d;
      }
    }
  }
}

/** What reaches a piece's end, from what reaches its beginning; and the piece's own share of being diseased. */
function passDown(
  model: Model,
  i: number,
  k: number,
  down: Float64Array,
  end: Float64Array,
  out: Float64Array,
  { narrowed, blocked }: Marginals,
): void {
  const { throughNarrowed: tn, throughBlocked: tb, carries } = model;
  const pn = model.narrowed[k]!;
  const pb = model.blocked[k]!;
  const p = 1 - pn - pb;
  const row = model.calibre[i]! * 9;
  const at = i * S;
  let ill = 0;
  let gone = 0;
  for (let s = 0; s < 3; s++) {
    out[s] = p * (down[at + s]! + (1 - carries) * down[at + s + 3]!);
    out[s + 3] = p * carries * down[at + s + 3]!;
  }
  for (let s = 0; s < 3; s++) {
    const both = down[at + s]! + down[at + s + 3]!;
    for (let t = s; t < 3; t++) {
      const viaNarrowed = both * pn * tn[row + s * 3 + t]!;
      const viaBlocked = both * pb * tb[row + s * 3 + t]!;
      out[t + 3]! += viaNarrowed;
      out[t]! += viaBlocked;
      ill += viaNarrowed * end[t + 3]!;
      gone += viaBlocked * end[t]!;
    }
  }
  narrowed[i]! += ill;
  blocked[i]! += gone;
}

/** The same where no sound was listened for: silent and sounding together, in the first three states. */
function passQuiet(
  model: Model,
  i: number,
  k: number,
  down: Float64Array,
  { narrowed, blocked }: Marginals,
): void {
  const { throughNarrowed: tn, throughBlocked: tb } = model;
  const pn = model.narrowed[k]!;
  const pb = model.blocked[k]!;
  const p = 1 - pn - pb;
  const row = model.calibre[i]! * 9;
  const at = i * S;
  const d0 = down[at]! + down[at + 3]!;
  const d1 = down[at + 1]! + down[at + 4]!;
  const d2 = down[at + 2]! + down[at + 5]!;
  const n0 = pn * d0 * tn[row]!;
  const n1 = pn * (d0 * tn[row + 1]! + d1 * tn[row + 4]!);
  const n2 = pn * (d0 * tn[row + 2]! + d1 * tn[row + 5]! + d2 * tn[row + 8]!);
  const b0 = pb * d0 * tb[row]!;
  const b1 = pb * (d0 * tb[row + 1]! + d1 * tb[row + 4]!);
  const b2 = pb * (d0 * tb[row + 2]! + d1 * tb[row + 5]! + d2 * tb[row + 8]!);
  const e0 = END[0]!;
  const e1 = END[1]!;
  const e2 = END[2]!;
  OUT[0] = p * d0 + n0 + b0;
  OUT[1] = p * d1 + n1 + b1;
  OUT[2] = p * d2 + n2 + b2;
  narrowed[i]! += n0 * e0 + n1 * e1 + n2 * e2;
  blocked[i]! += b0 * e0 + b1 * e1 + b2 * e2;
}
