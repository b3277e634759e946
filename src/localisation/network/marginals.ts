import { type Model, POINT_STATES, type Propagation } from './propagate.js';

// A constant of its own: some loaders look an imported name up at every use, which costs here.
const S = POINT_STATES;

/** The second pass: probability that each piece is narrowed and blocked, given all findings. */
export function marginals(net: Propagation): { narrowed: Float64Array; blocked: Float64Array } {
  const { model, causes, columns, readings, n, up, active, local: likelihoods } = net;
  const narrowed = new Float64Array(n);
  const blocked = new Float64Array(n);
  const total = net.total();
  const down = new Float64Array(n * S);
  const end = new Float64Array(S);
  const out = new Float64Array(S);
  for (const c of net.live) {
    const weight = net.weightOf(c) / total;
    if (!(weight * up[c * S]! > 0)) continue;
    down[0] = weight;
    for (let i = 0; i < n; i++) {
      const k = i * causes + model.cause[c]!;
      if (!active[i]) {
        // No finding bears on it, but that the cause has struck somewhere does.
        const likelihood = weight * up[c * S]!;
        narrowed[i]! += likelihood * model.narrowed[k]!;
        blocked[i]! += likelihood * model.blocked[k]!;
        continue;
      }
      const local = (i * readings + model.reading[c]!) * S;
      const children = model.children[i]!;
      for (let x = 0; x < S; x++) {
        let e = likelihoods[local + x]!;
        for (let j = 0; j < children.length; j++) e *= up[(children[j]! * columns + c) * S + x]!;
        end[x] = e;
      }
      passDown(model, i, k, down, end, out, narrowed, blocked);
      for (let j = 0; j < children.length; j++) {
        const child = children[j]!;
        if (!active[child]) continue;
        for (let x = 0; x < S; x++) {
          let d = out[x]! * likelihoods[local + x]!;
          for (let o = 0; o < children.length; o++)
            if (o !== j) d *= up[(children[o]! * columns + c) * S + x]!;
          down[child * S + x] = d;
        }
      }
    }
  }
  return { narrowed, blocked };
}

/** What reaches a piece's end, from what reaches its beginning; and the piece's own share of being diseased. */
function passDown(
  model: Model,
  i: number,
  k: number,
  down: Float64Array,
  end: Float64Array,
  out: Float64Array,
  narrowed: Float64Array,
  blocked: Float64Array,
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
