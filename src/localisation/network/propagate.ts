import { type Division, type Factor, idleOf, type Model } from './columns.js';
import { Room } from './room.js';

/*
 * Exact inference on a tree of arteries, two passes of messages, summed over what is common to the whole patient: a cause,
 * and a way in which findings are to be read (low flow, feet hard to feel). A column is one of each.
 *
 * A point of the tree has six states: strength of the pulse (0 normal, 1 reduced, 2 absent) plus three where the sound of a
 * narrowing is there to be heard. A piece takes the point at its beginning to the point at its end, by its own state (patent,
 * narrowed, blocked). At the root the pulse is normal and silent. Likelihoods stay far above the smallest double, so no
 * scaling is needed (60 findings of 0.001 each give 1e-180).
 */

export const POINT_STATES = 6;
const S = POINT_STATES;

/** Room for the places of a piece's children, and whether each has messages for every column. */
const KIDS = new Int32Array(16);
const KIDS_WIDE = new Uint8Array(16);

export class Propagation {
  readonly n: number;
  readonly causes: number;
  readonly readings: number;
  columns: number;
  /** Cause and reading of each column. */
  cause: readonly number[];
  reading: readonly number[];
  /** A column's weight, raised where its cause has struck for sure by what that leaves out. */
  prior: Float64Array;
  /** Likelihood of what was found beyond each piece, by state at the piece's beginning; at `at`. */
  up: Float64Array;
  /** Shares of that, at a normal silent beginning, with the piece patent, and not patent; at `at`. */
  clear: Float64Array;
  shut: Float64Array;
  /** Likelihood of what was found beyond each piece together with every piece from it on being patent; at `at`. */
  sound: Float64Array;
  /** Where each piece's messages begin: at home, or in a what-if in a second half of each array. */
  readonly start: Int32Array;
  /** Prior probability of every piece being patent, by cause. */
  readonly allPatent: Float64Array;
  /** Pieces with a finding on them or beyond them. */
  readonly active: Uint8Array;
  /** The columns that are reckoned with; all of them, but for what `focus` leaves out. */
  live: readonly number[];
  /** The columns that are reckoned with outside `wide`: each standing for those that share its messages there. */
  firsts: readonly number[];
  base: readonly number[];
  wide: Uint8Array;
  /** Pieces with a finding by sound on them or beyond them. */
  readonly loud: Uint8Array;
  /** Likelihood of what was found at each piece's end, by reading and state. */
  readonly local: Float64Array;
  #kept: readonly number[];
  #weight: Float64Array;
  #half: number;
  readonly #home: Int32Array;
  readonly #localStart: Int32Array;
  readonly #stamp: Uint32Array;
  #tick = 0;
  #inWhatIf = false;
  /** Pieces that came to be active, or loud, in a what-if. */
  readonly #roused: number[] = [];
  readonly #loudened: number[] = [];

  /** @param readings how many readings a division will tell apart */
  constructor(
    readonly model: Model,
    factors: readonly Factor[] = [],
    readings = 0,
    readonly room: Room = new Room(),
  ) {
    const n = model.parent.length;
    const causes = model.struck.length;
    const columns = model.weight.length;
    const { cause, narrowed, blocked } = model;
    this.n = n;
    this.causes = causes;
    this.columns = columns;
    this.cause = cause;
    this.reading = model.reading;
    this.readings = Math.max(readings, ...model.reading.map((reading) => reading + 1));
    this.#half = n * columns;
    room.let(this, this.#half, S, n * this.readings * S);
    const { up, clear, shut, sound, local } = room;
    this.up = up;
    this.clear = clear;
    this.shut = shut;
    this.sound = sound;
    this.local = local;
    this.active = new Uint8Array(n);
    this.loud = new Uint8Array(n);
    this.live = Array.from({ length: columns }, (_, c) => c);
    this.#kept = this.base = this.firsts = this.live;
    this.wide = new Uint8Array(n);
    this.start = new Int32Array(n);
    this.#home = new Int32Array(n);
    this.#localStart = new Int32Array(n);
    this.#stamp = new Uint32Array(n);
    const idle = idleOf(model);
    this.allPatent = idle.slice(0, causes);
    this.#weight = model.weight;
    this.prior = new Float64Array(columns);
    this.weigh();
    for (let i = 0; i < n; i++) {
      this.#home[i] = this.start[i] = i * columns;
      this.#localStart[i] = i * this.readings * S;
      for (let c = 0; c < columns; c++) {
        const k = i * causes + cause[c]!;
        const ill = narrowed[k]! + blocked[k]!;
        sound[i * columns + c] = idle[k]!;
        clear[i * columns + c] = 1 - ill;
        shut[i * columns + c] = ill;
      }
    }
    for (const factor of factors) this.multiply(factor);
    for (let i = n - 1; i >= 0; i--) if (this.active[i]) this.#refresh(i);
  }

  /** Divides the columns, and works out what comes to differ. */
  divide({ weight, cause, reading, base, wide, live }: Division): void {
    const { n, room } = this;
    let points = this.#half;
    for (let i = 0; i < n; i++) {
      if (!wide[i]) continue;
      this.#home[i] = this.start[i] = points;
      points += weight.length;
    }
    room.grow(this.#half, points, S);
    this.#half = points;
    this.up = room.up;
    this.clear = room.clear;
    this.shut = room.shut;
    this.sound = room.sound;
    this.columns = weight.length;
    this.cause = cause;
    this.reading = reading;
    this.base = base;
    this.wide = wide;
    this.#weight = weight;
    this.prior = new Float64Array(weight.length);
    this.weigh();
    this.#kept = this.live = live;
    this.firsts = this.#firstsOf(live);
    for (let i = n - 1; i >= 0; i--) if (wide[i]) this.#refresh(i);
  }

  /** Whether its arrays hold another network by now. */
  get stale(): boolean {
    return this.room.tenant !== this;
  }

  /** Where the messages of a piece stand for a column; times the states for those by state. */
  at(piece: number, column: number): number {
    return this.start[piece]! + (this.wide[piece] ? column : this.base[column]!);
  }

  /** Works the weights of the columns out again, from those of the model times `by` for each cause. */
  weigh(by?: ArrayLike<number>): void {
    const { prior, cause, allPatent } = this;
    const { struck } = this.model;
    for (let c = 0; c < prior.length; c++) {
      const own = cause[c]!;
      const weight = this.#weight[c]! * (by ? by[own]! : 1);
      prior[c] = struck[own] ? weight / (1 - allPatent[own]!) : weight;
    }
  }

  /**
   * Takes a finding in, inside `whatIf`.
   * @param power how often: -1 takes it out again, -0.5 half of it; a likelihood of 0 stays 0
   */
  multiply({ piece, by }: Factor, power: 1 | -1 | -0.5 = 1): void {
    if (this.#inWhatIf) this.#ownLocal(piece);
    const { local, readings, active, model } = this;
    const at = this.#localStart[piece]!;
    let loud = false;
    for (let t = 0; t < readings; t++) {
      const values = by[t] ?? by[0]!;
      const to = at + t * S;
      for (let x = 0; x < S; x++) {
        const value = values[x]!;
        if (power === 1) local[to + x]! *= value;
        else if (value > 0) local[to + x]! /= power === -1 ? value : Math.sqrt(value);
      }
      loud ||= values[0] !== values[3] || values[1] !== values[4] || values[2] !== values[5];
    }
    for (let i = piece; i >= 0 && !active[i]; i = model.parent[i]!) {
      active[i] = 1;
      this.#roused.push(i);
    }
    if (!loud) return;
    for (let i = piece; i >= 0 && !this.loud[i]; i = model.parent[i]!) {
      this.loud[i] = 1;
      this.#loudened.push(i);
    }
  }

  /** Replaces what was found at the end of a piece, inside `whatIf`. */
  replace(piece: number, factors: readonly Factor[]): void {
    this.#ownLocal(piece);
    const at = this.#localStart[piece]!;
    this.local.fill(1, at, at + this.readings * S);
    for (const factor of factors) this.multiply(factor);
  }

  /** What was found at a piece, in the room of the what-if. */
  #ownLocal(piece: number): void {
    const { n, local, readings } = this;
    const size = readings * S;
    const own = (piece + n) * size;
    if (this.#localStart[piece] === own) return;
    for (let x = 0; x < size; x++) local[own + x] = local[piece * size + x]!;
    this.#localStart[piece] = own;
  }

  /**
   * Leaves columns out that hold less than a share of the belief, for speed in many what-ifs.
   * @param share 0 takes every column in again
   */
  focus(share: number): void {
    this.live = this.#kept;
    const least = this.total() * share;
    if (share > 0) this.live = this.#kept.filter((c) => this.joint(c) >= least);
    this.firsts = this.#firstsOf(this.live);
  }

  #firstsOf(live: readonly number[]): readonly number[] {
    return [...new Set(live.map((c) => this.base[c]!))];
  }

  /**
   * Looks at the messages as they would be after a change, and leaves everything as it was.
   * @param pieces the pieces whose findings or probabilities `change` touches
   * @param change changes findings by `multiply` and `replace`, or the model, which it puts back by the act it returns
   */
  whatIf<T>(pieces: readonly number[], change: () => void | (() => void), look: () => T): T {
    const { start, model } = this;
    const home = this.#home;
    const half = this.#half;
    const stamp = this.#stamp;
    const tick = ++this.#tick;
    this.#roused.length = 0;
    this.#loudened.length = 0;
    this.#inWhatIf = true;
    let highest = -1;
    for (let j = 0; j < pieces.length; j++) {
      const piece = pieces[j]!;
      if (piece > highest) highest = piece;
      for (let i = piece; i >= 0 && stamp[i] !== tick; i = model.parent[i]!) stamp[i] = tick;
    }
    const back = change();
    for (let i = highest; i >= 0; i--) {
      if (stamp[i] !== tick) continue;
      start[i] = home[i]! + half;
      this.#refresh(i);
    }
    const seen = look();
    back?.();
    for (let i = highest; i >= 0; i--) start[i] = home[i]!;
    const size = this.readings * S;
    for (let j = 0; j < pieces.length; j++) this.#localStart[pieces[j]!] = pieces[j]! * size;
    for (const i of this.#roused) this.active[i] = 0;
    for (const i of this.#loudened) this.loud[i] = 0;
    this.#inWhatIf = false;
    return seen;
  }

  #refresh(i: number): void {
    const { causes, up, clear, shut, sound, start, base, wide, cause, reading, local } = this;
    const live = wide[i] ? this.live : this.firsts;
    const { throughNarrowed: tn, throughBlocked: tb, carries, narrowed, blocked, calibre } = this.model;
    const children = this.model.children[i]!;
    const kids = children.length;
    const active = this.active[i] === 1;
    const loud = this.loud[i] === 1;
    for (let j = 0; j < kids; j++) {
      KIDS[j] = start[children[j]!]!;
      KIDS_WIDE[j] = wide[children[j]!]!;
    }
    const row = calibre[i]! * 9;
    const n00 = tn[row]!;
    const n01 = tn[row + 1]!;
    const n02 = tn[row + 2]!;
    const n11 = tn[row + 4]!;
    const n12 = tn[row + 5]!;
    const b00 = tb[row]!;
    const b01 = tb[row + 1]!;
    const b02 = tb[row + 2]!;
    const b11 = tb[row + 4]!;
    const b12 = tb[row + 5]!;
    const localAt = this.#localStart[i]!;
    const from = start[i]!;
    for (let q = 0; q < live.length; q++) {
      const c = live[q]!;
      const ofCause = i * causes + cause[c]!;
      const n = narrowed[ofCause]!;
      const b = blocked[ofCause]!;
      const p = 1 - n - b;
      const k = from + c;
      if (!active) {
        // No finding bears on it or on what it feeds.
        let patent = p;
        for (let j = 0; j < kids; j++) patent *= sound[KIDS[j]! + (KIDS_WIDE[j] ? c : base[c]!)]!;
        sound[k] = patent;
        clear[k] = p;
        shut[k] = n + b;
        for (let x = k * S; x < (k + 1) * S; x++) up[x] = 1;
        continue;
      }
      const at = k * S;
      const l = localAt + reading[c]! * S;
      let e0 = local[l]!;
      let e1 = local[l + 1]!;
      let e2 = local[l + 2]!;
      let all = p * e0;
      if (!loud) {
        for (let j = 0; j < kids; j++) {
          const child = KIDS[j]! + (KIDS_WIDE[j] ? c : base[c]!);
          const u = child * S;
          all *= sound[child]!;
          e0 *= up[u]!;
          e1 *= up[u + 1]!;
          e2 *= up[u + 2]!;
        }
        const ill = n * (n00 * e0 + n01 * e1 + n02 * e2) + b * (b00 * e0 + b01 * e1 + b02 * e2);
        const well = p * e0;
        const whole = well + ill;
        const by = whole > 0 ? 1 / whole : 0;
        sound[k] = all;
        clear[k] = well * by;
        shut[k] = ill * by;
        up[at] = up[at + 3] = whole;
        up[at + 1] = up[at + 4] = p * e1 + n * (n11 * e1 + n12 * e2) + b * (b11 * e1 + b12 * e2);
        up[at + 2] = up[at + 5] = e2;
        continue;
      }
      let m0 = local[l + 3]!;
      let m1 = local[l + 4]!;
      let m2 = local[l + 5]!;
      for (let j = 0; j < kids; j++) {
        const child = KIDS[j]! + (KIDS_WIDE[j] ? c : base[c]!);
        const u = child * S;
        all *= sound[child]!;
        e0 *= up[u]!;
        e1 *= up[u + 1]!;
        e2 *= up[u + 2]!;
        m0 *= up[u + 3]!;
        m1 *= up[u + 4]!;
        m2 *= up[u + 5]!;
      }
      const rest0 = n * (n00 * m0 + n01 * m1 + n02 * m2) + b * (b00 * e0 + b01 * e1 + b02 * e2);
      const rest1 = n * (n11 * m1 + n12 * m2) + b * (b11 * e1 + b12 * e2);
      const rest2 = n * m2 + b * e2;
      const fades = p * (1 - carries);
      const stays = p * carries;
      const whole = p * e0 + rest0;
      const by = whole > 0 ? 1 / whole : 0;
      sound[k] = all;
      clear[k] = p * e0 * by;
      shut[k] = rest0 * by;
      up[at] = whole;
      up[at + 1] = p * e1 + rest1;
      up[at + 2] = p * e2 + rest2;
      up[at + 3] = stays * m0 + fades * e0 + rest0;
      up[at + 4] = stays * m1 + fades * e1 + rest1;
      up[at + 5] = stays * m2 + fades * e2 + rest2;
    }
  }

  /** Likelihood of all findings under a column, times the column's weight. */
  joint(column: number): number {
    const root = this.at(0, column);
    const all = this.up[root * S]!;
    const struck = this.model.struck[this.cause[column]!];
    return this.prior[column]! * (struck ? Math.max(0, all - this.sound[root]!) : all);
  }

  /** Likelihood of all findings. Zero means that they are impossible by the tables. */
  total(): number {
    let sum = 0;
    for (let q = 0; q < this.live.length; q++) sum += this.joint(this.live[q]!);
    return sum;
  }
}
