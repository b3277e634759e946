/*
 * Exact inference on a tree of arteries, two passes of messages, summed over the causes common to the whole patient.
 *
 * A point of the tree has six states: strength of the pulse (0 normal, 1 reduced, 2 absent) plus three where the sound of a
 * narrowing is there to be heard. A piece takes the point at its beginning to the point at its end, by its own state (patent,
 * narrowed, blocked). At the root the pulse is normal and silent. Likelihoods stay far above the smallest double, so no
 * scaling is needed (60 findings of 0.001 each give 1e-180).
 */

export const POINT_STATES = 6;
const S = POINT_STATES;
type F = Float64Array;

/** The tree with its probabilities; everything is indexed by piece, and a piece stands after the one that feeds it. */
export interface Model {
  /** Feeding piece of each piece, -1 at the root, which is piece 0. */
  readonly parent: readonly number[];
  readonly children: readonly (readonly number[])[];
  /** Probability of each cause; sums to one. */
  readonly weight: Float64Array;
  /** Causes under which findings are read by the second table of likelihoods. */
  readonly second: readonly boolean[];
  /** Causes that have struck at least one piece: with every piece patent they do not hold. */
  readonly struck: readonly boolean[];
  /** Probability that a piece is narrowed, blocked: `[piece * causes + cause]`. */
  readonly narrowed: Float64Array;
  readonly blocked: Float64Array;
  /** Strength out by strength in, row by row, of a narrowed and a blocked piece: nine figures for each calibre. */
  readonly throughNarrowed: Float64Array;
  readonly throughBlocked: Float64Array;
  /** Calibre of each piece, an index into the two above. */
  readonly calibre: readonly number[];
  /** Probability that sound carries through one patent piece. */
  readonly carries: number;
}

/** A finding's likelihood by the state of the point at the end of one piece. */
export interface Factor {
  readonly piece: number;
  readonly usual: ArrayLike<number>;
  /** The same under the causes marked `second`. */
  readonly second: ArrayLike<number>;
}

export class Propagation {
  readonly n: number;
  readonly causes: number;
  /** Likelihood of what was found beyond each piece, by cause and state at the piece's beginning. */
  readonly up: Float64Array;
  /** The same by the state at the piece's end. */
  readonly end: Float64Array;
  /** The parts of `up` at a normal silent beginning with the piece patent, and not patent. */
  readonly open: Float64Array;
  readonly shut: Float64Array;
  /** Likelihood of what was found beyond each piece together with every piece from it on being patent, by cause. */
  readonly sound: Float64Array;
  /** Prior probability of every piece being patent, by cause. */
  readonly allPatent: Float64Array;
  /** Pieces with a finding on them or beyond them. */
  readonly active: Uint8Array;
  readonly #local: Float64Array;
  readonly #stamp: Uint32Array;
  #tick = 0;
  /** A copy of every array above as it was at the last `update`, to return to. */
  readonly #kept: readonly Float64Array[];

  constructor(
    readonly model: Model,
    factors: readonly Factor[] = [],
  ) {
    const n = model.parent.length;
    const causes = model.weight.length;
    this.n = n;
    this.causes = causes;
    this.up = new Float64Array(n * causes * S).fill(1);
    this.end = new Float64Array(n * causes * S).fill(1);
    this.open = new Float64Array(n * causes);
    this.shut = new Float64Array(n * causes);
    this.sound = new Float64Array(n * causes);
    this.active = new Uint8Array(n);
    this.#local = new Float64Array(n * 2 * S).fill(1);
    this.#stamp = new Uint32Array(n);
    this.allPatent = new Float64Array(causes).fill(1);
    for (let k = 0; k < n * causes; k++) this.allPatent[k % causes]! *= 1 - model.narrowed[k]! - model.blocked[k]!;
    for (const factor of factors) this.multiply(factor);
    for (let i = n - 1; i >= 0; i--) this.#refresh(i);
    this.#kept = [this.up.slice(), this.end.slice(), this.open.slice(), this.shut.slice(), this.sound.slice()];
  }

  /** Takes a finding in. Outside `whatIf`, use the constructor. */
  multiply({ piece, usual, second }: Factor): void {
    const at = piece * 2 * S;
    for (let x = 0; x < S; x++) {
      this.#local[at + x]! *= usual[x]!;
      this.#local[at + S + x]! *= second[x]!;
    }
    for (let i = piece; i >= 0 && !this.active[i]; i = this.model.parent[i]!) this.active[i] = 1;
  }

  /** Replaces what was found at the end of a piece. Inside `whatIf` only. */
  replace(piece: number, factors: readonly Factor[]): void {
    this.#local.fill(1, piece * 2 * S, (piece + 1) * 2 * S);
    for (const factor of factors) this.multiply(factor);
  }

  /**
   * Looks at the messages as they would be after a change, and puts them back.
   * @param pieces the pieces whose findings or probabilities `change` touches
   * @param change changes findings by `multiply` and `replace`, which is taken back for it, or the model, which it takes
   *   back itself by the act it returns
   */
  whatIf<T>(pieces: readonly number[], change: () => void | (() => void), look: () => T): T {
    const active = this.active.slice();
    const local = pieces.map((piece) => this.#local.slice(piece * 2 * S, (piece + 1) * 2 * S));
    const back = change();
    this.#tick++;
    let highest = -1;
    for (const piece of pieces) {
      if (piece > highest) highest = piece;
      for (let i = piece; i >= 0 && this.#stamp[i] !== this.#tick; i = this.model.parent[i]!) this.#stamp[i] = this.#tick;
    }
    for (let i = highest; i >= 0; i--) if (this.#stamp[i] === this.#tick) this.#refresh(i);
    const seen = look();
    back?.();
    this.active.set(active);
    pieces.forEach((piece, j) => this.#local.set(local[j]!, piece * 2 * S));
    for (let i = highest; i >= 0; i--) if (this.#stamp[i] === this.#tick) this.#restore(i);
    return seen;
  }

  #restore(i: number): void {
    const [up, end, open, shut, sound] = this.#kept as [F, F, F, F, F];
    const from = i * this.causes;
    const to = from + this.causes;
    for (let k = from; k < to; k++) {
      this.open[k] = open[k]!;
      this.shut[k] = shut[k]!;
      this.sound[k] = sound[k]!;
    }
    for (let k = from * S; k < to * S; k++) {
      this.up[k] = up[k]!;
      this.end[k] = end[k]!;
    }
  }

  #refresh(i: number): void {
    const { model, causes, up, end } = this;
    const { throughNarrowed: tn, throughBlocked: tb, carries } = model;
    const children = model.children[i]!;
    const row = model.calibre[i]! * 9;
    for (let c = 0; c < causes; c++) {
      const k = i * causes + c;
      const n = model.narrowed[k]!;
      const b = model.blocked[k]!;
      const p = 1 - n - b;
      const at = k * S;
      const local = (i * 2 + (model.second[c] ? 1 : 0)) * S;
      let sound = p * this.#local[local]!;
      for (const child of children) sound *= this.sound[child * causes + c]!;
      this.sound[k] = sound;
      if (!this.active[i]) {
        this.open[k] = p;
        this.shut[k] = n + b;
        continue;
      }
      for (let x = 0; x < S; x++) {
        let e = this.#local[local + x]!;
        for (const child of children) e *= up[(child * causes + c) * S + x]!;
        end[at + x] = e;
      }
      const e0 = end[at]!;
      const e1 = end[at + 1]!;
      const e2 = end[at + 2]!;
      const m0 = end[at + 3]!;
      const m1 = end[at + 4]!;
      const m2 = end[at + 5]!;
      for (let s = 0; s < 3; s++) {
        const r = row + s * 3;
        const rest =
          n * (tn[r]! * m0 + tn[r + 1]! * m1 + tn[r + 2]! * m2) + b * (tb[r]! * e0 + tb[r + 1]! * e1 + tb[r + 2]! * e2);
        const silent = end[at + s]!;
        up[at + s] = p * silent + rest;
        up[at + s + 3] = p * (carries * end[at + s + 3]! + (1 - carries) * silent) + rest;
        if (s === 0) {
          this.open[k] = p * silent;
          this.shut[k] = rest;
        }
      }
    }
  }

  /** Likelihood of all findings under a cause, times the cause's weight. */
  joint(cause: number): number {
    const all = this.up[cause * S]!;
    return this.weightOf(cause) * (this.model.struck[cause] ? Math.max(0, all - this.sound[cause]!) : all);
  }

  /** A cause's weight, raised where it has struck for sure by what that leaves out. */
  weightOf(cause: number): number {
    const weight = this.model.weight[cause]!;
    return this.model.struck[cause] ? weight / (1 - this.allPatent[cause]!) : weight;
  }

  /** Likelihood of all findings. Zero means that they are impossible by the tables. */
  total(): number {
    let sum = 0;
    for (let c = 0; c < this.causes; c++) sum += this.joint(c);
    return sum;
  }

  /** The second pass: probability that each piece is narrowed and blocked, given all findings. */
  marginals(): { narrowed: Float64Array; blocked: Float64Array } {
    const { model, causes, n, up, end, active } = this;
    const { throughNarrowed: tn, throughBlocked: tb, carries } = model;
    const narrowed = new Float64Array(n);
    const blocked = new Float64Array(n);
    const total = this.total();
    const down = new Float64Array(n * causes * S);
    for (let c = 0; c < causes; c++) {
      const share = this.joint(c) / total;
      if (!(share > 0)) continue;
      down[c * S] = this.weightOf(c) / total;
      for (let i = 0; i < n; i++) {
        const k = i * causes + c;
        const pn = model.narrowed[k]!;
        const pb = model.blocked[k]!;
        if (!active[i]) {
          // No finding bears on it, but that the cause has struck somewhere does.
          const likelihood = (this.weightOf(c) * up[c * S]!) / total;
          narrowed[i]! += likelihood * pn;
          blocked[i]! += likelihood * pb;
          continue;
        }
        const at = k * S;
        // What reaches the end of the piece: silent states first, sounding ones after.
        const out = [0, 0, 0, 0, 0, 0];
        const row = model.calibre[i]! * 9;
        const p = 1 - pn - pb;
        for (let s = 0; s < 3; s++) {
          const silent = down[at + s]!;
          const sounding = down[at + s + 3]!;
          const both = silent + sounding;
          out[s]! += p * (silent + (1 - carries) * sounding);
          out[s + 3]! += p * carries * sounding;
          for (let t = 0; t < 3; t++) {
            const viaNarrowed = both * pn * tn[row + s * 3 + t]!;
            const viaBlocked = both * pb * tb[row + s * 3 + t]!;
            out[t + 3]! += viaNarrowed;
            out[t]! += viaBlocked;
            narrowed[i]! += viaNarrowed * end[at + t + 3]!;
            blocked[i]! += viaBlocked * end[at + t]!;
          }
        }
        const local = (i * 2 + (model.second[c] ? 1 : 0)) * S;
        const children = model.children[i]!;
        for (const child of children) {
          if (!active[child]) continue;
          for (let x = 0; x < S; x++) {
            let d = out[x]! * this.#local[local + x]!;
            for (const other of children) if (other !== child) d *= up[(other * causes + c) * S + x]!;
            down[(child * causes + c) * S + x] = d;
          }
        }
      }
    }
    return { narrowed, blocked };
  }

  /**
   * The single most probable assignment of all states to the pieces that findings bear on (max-product; the others are summed
   * out). A cause that has struck is told with at least one lesion.
   */
  story(): { cause: number; states: Uint8Array; probability: number } {
    const { model, causes, n } = this;
    const total = this.total();
    const best = { cause: 0, states: new Uint8Array(n), probability: -1 };
    const plan = new Plan(n);
    for (let c = 0; c < causes; c++) {
      for (let i = n - 1; i >= 0; i--) if (this.active[i]) this.#plan(i, c, plan);
      const probability = (this.weightOf(c) * plan.value[model.struck[c] ? 1 : 0]!) / total;
      if (!(probability > best.probability)) continue;
      best.cause = c;
      best.probability = probability;
      best.states = new Uint8Array(n);
      this.#tell(0, model.struck[c] ? 1 : 0, plan, best.states);
    }
    return best;
  }

  /** Fills in the best values of a piece for each state at its beginning, without and with a lesion asked for. */
  #plan(i: number, c: number, plan: Plan): void {
    const { model, causes } = this;
    const n = model.narrowed[i * causes + c]!;
    const b = model.blocked[i * causes + c]!;
    const p = 1 - n - b;
    const local = (i * 2 + (model.second[c] ? 1 : 0)) * S;
    const row = model.calibre[i]! * 9;
    const children = model.children[i]!.filter((child) => this.active[child]);
    const any = [0, 0, 0, 0, 0, 0];
    const lesion = [0, 0, 0, 0, 0, 0];
    const by = [-1, -1, -1, -1, -1, -1];
    for (let x = 0; x < S; x++) {
      let e = this.#local[local + x]!;
      let gain = 0;
      for (const child of children) {
        const [free, asked] = [plan.value[(child * S + x) * 2]!, plan.value[(child * S + x) * 2 + 1]!];
        e *= free;
        const ratio = free > 0 ? asked / free : 0;
        if (ratio > gain) [gain, by[x]] = [ratio, child];
      }
      any[x] = e;
      lesion[x] = e * gain;
    }
    for (let x = 0; x < S; x++) {
      const s = x % 3;
      for (let asked = 0; asked < 2; asked++) {
        const at = (i * S + x) * 2 + asked;
        plan.value[at] = -1;
        const further = asked ? lesion : any;
        const offer = (state: number, to: number, value: number, child: number): void => {
          if (value <= plan.value[at]!) return;
          plan.value[at] = value;
          plan.state[at] = state;
          plan.to[at] = to;
          plan.child[at] = child;
        };
        offer(0, s, (x < 3 ? p : p * (1 - model.carries)) * further[s]!, asked ? by[s]! : -1);
        if (x >= 3) offer(0, x, p * model.carries * further[x]!, asked ? by[x]! : -1);
        for (let t = 0; t < 3; t++) {
          offer(1, t + 3, n * model.throughNarrowed[row + s * 3 + t]! * any[t + 3]!, -1);
          offer(2, t, b * model.throughBlocked[row + s * 3 + t]! * any[t]!, -1);
        }
      }
    }
  }

  /** Reads the best states back from the plan. */
  #tell(i: number, at: number, plan: Plan, states: Uint8Array): void {
    const place = i * S * 2 + at;
    states[i] = plan.state[place]!;
    for (const child of this.model.children[i]!) {
      if (this.active[child]) this.#tell(child, plan.to[place]! * 2 + (plan.child[place] === child ? 1 : 0), plan, states);
    }
  }
}

/** Best values and choices by piece, state at its beginning, and whether a lesion is asked for. */
class Plan {
  readonly value: Float64Array;
  readonly state: Uint8Array;
  readonly to: Uint8Array;
  /** The child from which a lesion is asked for in turn, or -1. */
  readonly child: Int16Array;

  constructor(n: number) {
    this.value = new Float64Array(n * S * 2);
    this.state = new Uint8Array(n * S * 2);
    this.to = new Uint8Array(n * S * 2);
    this.child = new Int16Array(n * S * 2);
  }
}
