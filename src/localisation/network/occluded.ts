import { POINT_STATES, type Propagation } from './propagate.js';

/*
 * Which stretch takes the pulse away. In every possible world of a limb the pulse at its end is normal, reduced or absent,
 * and since strength never rises on its way there is one piece at which it fell to that: the piece to blame. A narrowing
 * above it that still hands on a normal pulse is another lesion, not a rival. Summed over the worlds this is exact, by one
 * pass down the limb for each way its end may be.
 */

// A constant of its own: some loaders look an imported name up at every use, which costs here.
const S = POINT_STATES;

/** A limb's way as this asks for it: the shared trunk down to the fork, and the branches that end in its pulses. */
export interface Fork {
  readonly trunk: readonly number[];
  /** Two where both were examined, one, or none where the way ends in its trunk. */
  readonly branches: readonly (readonly number[])[];
}

/** Probability by place on the way (trunk, first branch, second branch), and of both branches at once. */
export interface Blame {
  /** The pulse is lost there. */
  readonly absent: Float64Array;
  /** The pulse is weakened there, and nowhere lost. */
  readonly reduced: Float64Array;
  /** Lost, or weakened, in both branches at once; not counted in the two above. */
  readonly bothAbsent: number;
  readonly bothReduced: number;
}

/** Most pieces on a limb's way. */
const LONGEST = 40;
/** How the ends may be: any, not absent, normal. What was found beyond each piece, seen from its end and its beginning. */
const END = [0, 1, 2].map(() => new Float64Array(LONGEST * S));
const UP = [0, 1, 2].map(() => new Float64Array(LONGEST * S));
/** A finding at each piece with what hangs off the path there. */
const BESIDE = new Float64Array(LONGEST * S);
const OUT = new Float64Array(S);
const BEGIN = new Float64Array(S);
const AT_FORK = new Float64Array(S);

/** States told apart at a piece: where no sound was listened for beyond it, silent and sounding points are alike. */
const statesAt = (net: Propagation, piece: number): number => (net.loud[piece] ? S : S / 2);

function fillBeside(net: Propagation, order: readonly number[], onPath: Uint8Array, c: number): void {
  const { model, readings, up, local, active } = net;
  const reading = net.reading[c]! * S;
  for (let j = 0; j < order.length; j++) {
    const piece = order[j]!;
    const at = j * S;
    const l = piece * readings * S + reading;
    const states = statesAt(net, piece);
    for (let x = 0; x < states; x++) BESIDE[at + x] = local[l + x]!;
    const children = model.children[piece]!;
    for (let k = 0; k < children.length; k++) {
      const child = children[k]!;
      if (onPath[child] || !active[child]) continue;
      const u = net.at(child, c) * S;
      for (let x = 0; x < states; x++) BESIDE[at + x]! *= up[u + x]!;
    }
  }
}

/** Carries a likelihood at the end of a piece to its beginning. */
function upward(
  net: Propagation,
  piece: number,
  c: number,
  e: Float64Array,
  into: Float64Array,
  at: number,
): void {
  const { model } = net;
  const k = piece * net.causes + net.cause[c]!;
  const n = model.narrowed[k]!;
  const b = model.blocked[k]!;
  const p = 1 - n - b;
  const { throughNarrowed: tn, throughBlocked: tb, carries } = model;
  const row = model.calibre[piece]! * 9;
  const loud = net.loud[piece];
  const e0 = e[at]!;
  const e1 = e[at + 1]!;
  const e2 = e[at + 2]!;
  const m0 = loud ? e[at + 3]! : e0;
  const m1 = loud ? e[at + 4]! : e1;
  const m2 = loud ? e[at + 5]! : e2;
  const rest0 =
    n * (tn[row]! * m0 + tn[row + 1]! * m1 + tn[row + 2]! * m2) +
    b * (tb[row]! * e0 + tb[row + 1]! * e1 + tb[row + 2]! * e2);
  const rest1 = n * (tn[row + 4]! * m1 + tn[row + 5]! * m2) + b * (tb[row + 4]! * e1 + tb[row + 5]! * e2);
  const rest2 = n * m2 + b * e2;
  into[at] = p * e0 + rest0;
  into[at + 1] = p * e1 + rest1;
  into[at + 2] = p * e2 + rest2;
  into[at + 3] = p * (carries * m0 + (1 - carries) * e0) + rest0;
  into[at + 4] = p * (carries * m1 + (1 - carries) * e1) + rest1;
  into[at + 5] = p * (carries * m2 + (1 - carries) * e2) + rest2;
}

/** Carries what reaches the beginning of a piece to its end: from `BEGIN` to `OUT`. */
function downward(net: Propagation, piece: number, c: number): void {
  const { model } = net;
  const k = piece * net.causes + net.cause[c]!;
  const n = model.narrowed[k]!;
  const b = model.blocked[k]!;
  const p = 1 - n - b;
  const { throughNarrowed: tn, throughBlocked: tb, carries } = model;
  const row = model.calibre[piece]! * 9;
  const s0 = BEGIN[0]! + BEGIN[3]!;
  const s1 = BEGIN[1]! + BEGIN[4]!;
  const s2 = BEGIN[2]! + BEGIN[5]!;
  const n0 = n * s0 * tn[row]!;
  const n1 = n * (s0 * tn[row + 1]! + s1 * tn[row + 4]!);
  const n2 = n * (s0 * tn[row + 2]! + s1 * tn[row + 5]! + s2);
  const b0 = b * s0 * tb[row]!;
  const b1 = b * (s0 * tb[row + 1]! + s1 * tb[row + 4]!);
  const b2 = b * (s0 * tb[row + 2]! + s1 * tb[row + 5]! + s2);
  if (!net.loud[piece]) {
    OUT[0] = p * s0 + n0 + b0;
    OUT[1] = p * s1 + n1 + b1;
    OUT[2] = p * s2 + n2 + b2;
    OUT[3] = OUT[4] = OUT[5] = 0;
    return;
  }
  const stays = p * carries;
  OUT[0] = p * s0 - stays * BEGIN[3]! + b0;
  OUT[1] = p * s1 - stays * BEGIN[4]! + b1;
  OUT[2] = p * s2 - stays * BEGIN[5]! + b2;
  OUT[3] = stays * BEGIN[3]! + n0;
  OUT[4] = stays * BEGIN[4]! + n1;
  OUT[5] = stays * BEGIN[5]! + n2;
}

/** Walks down from one place of the way to another, and adds up where the pulse comes to be `lost`. */
function walk(
  net: Propagation,
  order: readonly number[],
  range: readonly [from: number, to: number],
  c: number,
  tier: number,
  before: number,
  /** What both branches lose at once, which is counted by itself. */
  together: number,
  into: Float64Array,
): number {
  const [from, to] = range;
  const lost = 2 - tier;
  const end = END[tier]!;
  let last = before;
  for (let j = from; j <= to; j++) {
    downward(net, order[j]!, c);
    const at = j * S;
    const gone = OUT[lost]! * end[at + lost]! + OUT[lost + 3]! * end[at + lost + 3]!;
    FALLS[j] = gone - last;
    last = gone;
    const states = statesAt(net, order[j]!);
    BEGIN.fill(0);
    for (let x = 0; x < states; x++) BEGIN[x] = OUT[x]! * BESIDE[at + x]!;
  }
  const own = last - before;
  const part = together === 0 ? 1 : own > 0 ? Math.max(0, own - together) / own : 0;
  for (let j = from; j <= to; j++) into[j]! += part * FALLS[j]!;
  return last;
}
const FALLS = new Float64Array(LONGEST);

/**
 * The piece to blame for what is weak at a limb's end, with its probability.
 * @param fork the limb's way
 * @param least columns with less of the belief than this are left out
 */
export function blame(net: Propagation, { trunk, branches }: Fork, least = 0): Blame {
  const order = [...trunk, ...branches.flat()];
  const onPath = new Uint8Array(net.n);
  for (const piece of order) onPath[piece] = 1;
  const size = order.length;
  const forkAt = trunk.length - 1;
  const firsts = branches.map((_, k) => trunk.length + branches.slice(0, k).flat().length);
  const lasts = branches.length ? firsts.map((first, k) => first + branches[k]!.length - 1) : [forkAt];
  const absent = new Float64Array(size);
  const reduced = new Float64Array(size);
  const both: [number, number] = [0, 0];
  const all = net.total();
  let total = 0;

  for (let q = 0; q < net.live.length; q++) {
    const c = net.live[q]!;
    const joint = net.joint(c);
    if (!(joint > least * all)) continue;
    total += joint;
    const weight = net.prior[c]!;
    fillBeside(net, order, onPath, c);
    for (let j = size - 1; j >= 0; j--) {
      const at = j * S;
      const isEnd = lasts.includes(j);
      const states = statesAt(net, order[j]!);
      for (let tier = 0; tier < 3; tier++) {
        const end = END[tier]!;
        const up = UP[tier]!;
        for (let x = 0; x < states; x++) {
          let e = BESIDE[at + x]!;
          if (isEnd) {
            if (x % 3 >= 3 - tier) e = 0;
          } else if (j === forkAt) for (let k = 0; k < firsts.length; k++) e *= up[firsts[k]! * S + x]!;
          else e *= up[at + S + x]!;
          end[at + x] = e;
        }
        if (tier === 0) {
          // Any end at all: that is what the network itself has sent up.
          const sent = net.at(order[j]!, c) * S;
          for (let x = 0; x < S; x++) up[at + x] = net.up[sent + x]!;
        } else if (tier < 2 || j > forkAt) upward(net, order[j]!, c, end, up, at);
      }
    }
    for (let tier = 0; tier < 2; tier++) {
      // In the first tier the pulse is lost on the way; in the second it is nowhere lost, but weakened.
      const lost = 2 - tier;
      const into = tier === 0 ? absent : reduced;
      const [any, not] = [UP[tier]!, UP[tier + 1]!];
      BEGIN.fill(0);
      BEGIN[0] = weight;
      const atFork = walk(net, order, [0, forkAt], c, tier, 0, 0, into);
      if (firsts.length === 0) continue;
      AT_FORK.set(BEGIN);
      let together = 0;
      for (let x = 0; x < S && firsts.length === 2; x++) {
        if (x % 3 === lost) continue;
        const [one, two] = [firsts[0]! * S + x, firsts[1]! * S + x];
        together += AT_FORK[x]! * (any[one]! - not[one]!) * (any[two]! - not[two]!);
      }
      both[tier as 0 | 1] += together;
      for (let k = 0; k < firsts.length; k++) {
        const other = firsts[1 - k];
        for (let x = 0; x < S; x++) BEGIN[x] = AT_FORK[x]! * (other === undefined ? 1 : any[other * S + x]!);
        walk(net, order, [firsts[k]!, lasts[k]!], c, tier, atFork, together, into);
      }
    }
  }
  const by = total > 0 ? 1 / total : 0;
  for (let j = 0; j < size; j++) {
    absent[j]! *= by;
    reduced[j]! *= by;
  }
  return { absent, reduced, bothAbsent: both[0] * by, bothReduced: both[1] * by };
}
