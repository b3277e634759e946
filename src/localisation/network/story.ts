import { POINT_STATES, type Propagation } from './propagate.js';

// A constant of its own: some loaders look an imported name up at every use, which costs here.
const S = POINT_STATES;

const NONE: ReadonlySet<number> = new Set();

/** Best values and choices by piece, state at its beginning, and whether a lesion is asked for. */
class Plan {
  readonly value: Float64Array;
  readonly state: Uint8Array;
  readonly to: Uint8Array;
  /** The child from which a lesion is asked for in turn, or -1. */
  readonly child: Int16Array;
  /** Scratch by state at a piece's end: best beyond it, best with a lesion beyond it, and by which child. */
  readonly any = new Float64Array(S);
  readonly lesion = new Float64Array(S);
  readonly by = new Int16Array(S);

  constructor(n: number) {
    this.value = new Float64Array(n * S * 2);
    this.state = new Uint8Array(n * S * 2);
    this.to = new Uint8Array(n * S * 2);
    this.child = new Int16Array(n * S * 2);
  }
}

/**
 * The single most probable assignment of all states to the pieces that findings bear on (max-product; the others are summed
 * out). A cause that has struck is told with at least one lesion.
 * @param ill pieces that are to be diseased in the story; its probability is that of the story all the same
 */
export function mostProbableStory(
  net: Propagation,
  ill: ReadonlySet<number> = NONE,
): {
  cause: number;
  states: Uint8Array;
  probability: number;
} {
  const { model, n, cause, active, wide } = net;
  const total = net.total();
  const best = { cause: 0, states: new Uint8Array(n), probability: -1 };
  if (plan.child.length < n * S * 2) plan = new Plan(n);
  const belief = new Float64Array(net.columns);
  for (const c of net.live) belief[c] = net.joint(c) / total;
  // A story cannot be more probable than its cause: the likelier causes first, and the rest not at all.
  const causesByBelief = [...net.live].sort((a, b) => belief[b]! - belief[a]!);
  // What no finding bears on depends on the cause alone.
  const beyond = [...ill].filter((i) => !active[i]);
  let planned = -1;
  for (const c of causesByBelief) {
    if (belief[c]! <= best.probability) break;
    // Outside the pieces of its own a column shares its plan with the one before, if they share their messages.
    const again = net.base[c] === planned;
    planned = net.base[c]!;
    for (let i = n - 1; i >= 0; i--) {
      if (active[i] && (wide[i] || !again)) planPiece(net, i, c, plan, ill.has(i));
    }
    let probability = (net.prior[c]! * plan.value[model.struck[cause[c]!] ? 1 : 0]!) / total;
    for (const i of beyond) probability *= Math.max(...illShares(net, i, c));
    if (!(probability > best.probability)) continue;
    best.cause = cause[c]!;
    best.probability = probability;
    best.states = new Uint8Array(n);
    tell(net, 0, model.struck[cause[c]!] ? 1 : 0, plan, best.states);
    for (const i of beyond) {
      const [narrowed, blocked] = illShares(net, i, c);
      best.states[i] = blocked >= narrowed ? 2 : 1;
    }
  }
  return best;
}

/** Probability of a piece being narrowed and blocked by itself. */
function illShares({ model, causes, cause }: Propagation, i: number, c: number): [number, number] {
  const k = i * causes + cause[c]!;
  return [model.narrowed[k]!, model.blocked[k]!];
}

/** Room for the plan of one story after another. */
let plan = new Plan(0);

/** Fills in the best values of a piece for each state at its beginning, without and with a lesion asked for. */
function planPiece(net: Propagation, i: number, c: number, plan: Plan, mustBeIll: boolean): void {
  const { model, causes, active, local } = net;
  const { value, any, lesion, by } = plan;
  const k = i * causes + net.cause[c]!;
  const n = model.narrowed[k]!;
  const b = model.blocked[k]!;
  const p = mustBeIll ? 0 : 1 - n - b;
  const own = (i * net.readings + net.reading[c]!) * S;
  const { throughNarrowed: tn, throughBlocked: tb } = model;
  const row = model.calibre[i]! * 9;
  const children = model.children[i]!;
  for (let x = 0; x < S; x++) {
    any[x] = local[own + x]!;
    lesion[x] = 0;
    by[x] = -1;
  }
  for (let j = 0; j < children.length; j++) {
    const child = children[j]!;
    if (!active[child]) continue;
    const at = child * S * 2;
    for (let x = 0; x < S; x++) {
      const free = value[at + x * 2]!;
      const ratio = free > 0 ? value[at + x * 2 + 1]! / free : 0;
      any[x]! *= free;
      if (ratio <= lesion[x]!) continue;
      lesion[x] = ratio;
      by[x] = child;
    }
  }
  for (let x = 0; x < S; x++) lesion[x]! *= any[x]!;
  const fades = p * (1 - model.carries);
  const stays = p * model.carries;
  for (let s = 0; s < 3; s++) {
    // The best with the piece itself diseased does not depend on sound coming in.
    let ill = -1;
    let illState = 1;
    let illTo = 3;
    for (let t = s; t < 3; t++) {
      const viaNarrowed = n * tn[row + s * 3 + t]! * any[t + 3]!;
      const viaBlocked = b * tb[row + s * 3 + t]! * any[t]!;
      if (viaNarrowed > ill) {
        ill = viaNarrowed;
        illState = 1;
        illTo = t + 3;
      }
      if (viaBlocked > ill) {
        ill = viaBlocked;
        illState = 2;
        illTo = t;
      }
    }
    for (let asked = 0; asked < 2; asked++) {
      const further = asked ? lesion : any;
      const silent = p * further[s]!;
      const quiet = fades * further[s]!;
      const loud = stays * further[s + 3]!;
      const carried = loud > quiet;
      const at = (i * S + s) * 2 + asked;
      choose(plan, at, mustBeIll ? -1 : silent, s, asked, ill, illState, illTo);
      const sounding = carried ? loud : quiet;
      choose(plan, at + 6, mustBeIll ? -1 : sounding, carried ? s + 3 : s, asked, ill, illState, illTo);
    }
  }
}

/** Takes the better of the piece being well and being diseased. */
function choose(
  { value, state, to, child, by }: Plan,
  at: number,
  well: number,
  wellTo: number,
  asked: number,
  ill: number,
  illState: number,
  illTo: number,
): void {
  const open = well >= ill;
  value[at] = open ? well : ill;
  state[at] = open ? 0 : illState;
  to[at] = open ? wellTo : illTo;
  child[at] = asked && open ? by[wellTo]! : -1;
}

/** Reads the best states back from the plan. */
function tell(net: Propagation, i: number, at: number, plan: Plan, states: Uint8Array): void {
  const place = i * S * 2 + at;
  states[i] = plan.state[place]!;
  for (const child of net.model.children[i]!) {
    if (net.active[child])
      tell(net, child, plan.to[place]! * 2 + (plan.child[place] === child ? 1 : 0), plan, states);
  }
}
