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

/** The tree with its probabilities; everything is indexed by piece, and a piece stands after the one that feeds it. */
export interface Model {
  /** Feeding piece of each piece, -1 at the root, which is piece 0. */
  readonly parent: readonly number[];
  readonly children: readonly (readonly number[])[];
  /** Probability of each column; sums to one. */
  readonly weight: Float64Array;
  /** The cause of each column. */
  readonly cause: readonly number[];
  /** By which of its likelihoods each column reads a finding: a place in `Factor.by`. */
  readonly reading: readonly number[];
  /** Causes that have struck at least one piece: with every piece patent they do not hold. */
  readonly struck: readonly boolean[];
  /** Probability that a piece is narrowed, blocked: `[piece * causes + cause]`. */
  readonly narrowed: Float64Array;
  readonly blocked: Float64Array;
  /**
   * Strength out by strength in, row by row, of a narrowed and a blocked piece: nine figures for each calibre. Strength
   * never rises on its way: the figures below the diagonal are zero.
   */
  readonly throughNarrowed: Float64Array;
  readonly throughBlocked: Float64Array;
  /** Calibre of each piece, an index into the two above. */
  readonly calibre: readonly number[];
  /** Probability that sound carries through one patent piece. */
  readonly carries: number;
  /** Columns that differ in few pieces only; none where every column has its own messages everywhere. */
  readonly shared?: Shared;
}

/** Which messages are alike in several columns, so that they are worked out once. */
export interface Shared {
  /** Column whose messages stand for each column, outside `wide`. */
  readonly base: readonly number[];
  /** Pieces where every column has messages of its own; with a piece the pieces that feed it. */
  readonly wide: Uint8Array;
}

/** A network whose messages are taken over where they are the same. */
export interface Earlier {
  readonly net: Propagation;
  /** Its column for each of the new ones. */
  readonly column: readonly number[];
}

/** A finding's likelihood by the state of the point at the end of one piece. */
export interface Factor {
  readonly piece: number;
  /** One for each reading of the model; where there are fewer, the first one stands for the rest. */
  readonly by: readonly ArrayLike<number>[];
}

/** Prior probability of every piece being patent, by cause. */
function allPatentOf({ struck, narrowed, blocked }: Model): Float64Array {
  const causes = struck.length;
  const all = new Float64Array(causes).fill(1);
  for (let k = 0; k < narrowed.length; k += causes)
    for (let c = 0; c < causes; c++) all[c]! *= 1 - narrowed[k + c]! - blocked[k + c]!;
  return all;
}

export class Propagation {
  readonly n: number;
  readonly causes: number;
  readonly columns: number;
  readonly readings: number;
  /** Likelihood of what was found beyond each piece, by cause and state at the piece's beginning; at `slot`. */
  readonly up: Float64Array;
  /** Shares of that, at a normal silent beginning, with the piece patent, and not patent; at `slot`. */
  readonly clear: Float64Array;
  readonly shut: Float64Array;
  /** Likelihood of what was found beyond each piece together with every piece from it on being patent; at `slot`. */
  readonly sound: Float64Array;
  /** Where each piece's messages stand: at its own index, or in a what-if at its index in a second half. */
  readonly slot: Uint16Array;
  /** Prior probability of every piece being patent, by cause. */
  readonly allPatent: Float64Array;
  /** Pieces with a finding on them or beyond them. */
  readonly active: Uint8Array;
  /** The columns that are reckoned with; all of them, but for what `focus` leaves out. */
  live: readonly number[];
  /** The columns that are reckoned with outside `wide`: each standing for those that share its messages there. */
  firsts: readonly number[];
  readonly base: readonly number[];
  readonly wide: Uint8Array;
  /** Pieces with a finding by sound on them or beyond them. */
  readonly loud: Uint8Array;
  /** Likelihood of what was found at each piece's end, by reading and state. */
  readonly local: Float64Array;
  readonly #localSlot: Uint16Array;
  readonly #stamp: Uint32Array;
  #tick = 0;
  #inWhatIf = false;
  /** Pieces that came to be active, or loud, in a what-if. */
  readonly #roused: number[] = [];
  readonly #loudened: number[] = [];

  constructor(
    readonly model: Model,
    factors: readonly Factor[] = [],
    earlier?: Earlier,
    readonly room: Room = new Room(),
  ) {
    const n = model.parent.length;
    const causes = model.struck.length;
    const columns = model.weight.length;
    this.n = n;
    this.causes = causes;
    this.columns = columns;
    this.readings = Math.max(...model.reading) + 1;
    room.let(this, n * columns, S, n * this.readings * S);
    this.up = room.up;
    this.clear = room.clear;
    this.shut = room.shut;
    this.sound = room.sound;
    this.local = room.local;
    this.active = new Uint8Array(n);
    this.loud = new Uint8Array(n);
    this.live = Array.from({ length: columns }, (_, c) => c);
    this.base = model.shared?.base ?? this.live;
    this.wide = model.shared?.wide ?? new Uint8Array(n);
    this.firsts = model.shared ? [...new Set(this.base)] : this.live;
    this.slot = new Uint16Array(n);
    for (let i = 0; i < n; i++) this.slot[i] = i;
    this.#localSlot = this.slot.slice();
    this.#stamp = new Uint32Array(n);
    this.allPatent = earlier ? earlier.net.allPatent.slice() : allPatentOf(model);
    for (const factor of factors) this.multiply(factor);
    for (let i = n - 1; i >= 0; i--) {
      if (earlier && !this.wide[i]) this.#take(i, earlier);
      else this.#refresh(i);
    }
  }

  /** Whether its arrays hold another network by now. */
  get stale(): boolean {
    return this.room.tenant !== this;
  }

  /** Where the messages of a piece stand for a column; times the states for those by state. */
  at(piece: number, column: number): number {
    return this.slot[piece]! * this.columns + (this.wide[piece] ? column : this.base[column]!);
  }

  #take(i: number, { net, column }: Earlier): void {
    for (const c of this.firsts) {
      const to = i * this.columns + c;
      const from = net.at(i, column[c]!);
      this.clear[to] = net.clear[from]!;
      this.shut[to] = net.shut[from]!;
      this.sound[to] = net.sound[from]!;
      for (let x = 0; x < S; x++) this.up[to * S + x] = net.up[from * S + x]!;
    }
  }

  /**
   * Takes a finding in, inside `whatIf`.
   * @param power how often: -1 takes it out again, 0.5 more counts half as much again; a likelihood of 0 stays 0
   */
  multiply({ piece, by }: Factor, power = 1): void {
    if (this.#inWhatIf) this.#ownLocal(piece);
    const { local, readings } = this;
    const at = this.#localSlot[piece]! * readings * S;
    let loud = false;
    for (let t = 0; t < readings; t++) {
      const values = by[t] ?? by[0]!;
      const to = at + t * S;
      if (power === 1) for (let x = 0; x < S; x++) local[to + x]! *= values[x]!;
      else
        for (let x = 0; x < S; x++) {
          const value = values[x]!;
          if (value > 0) local[to + x]! *= power === -1 ? 1 / value : value ** power;
        }
      loud ||= values[0] !== values[3] || values[1] !== values[4] || values[2] !== values[5];
    }
    const { active, model } = this;
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
    const size = this.readings * S;
    this.#ownLocal(piece);
    const at = this.#localSlot[piece]! * size;
    this.local.fill(1, at, at + size);
    for (const factor of factors) this.multiply(factor);
  }

  /** What was found at a piece, in the room of the what-if. */
  #ownLocal(piece: number): void {
    const { n, local, readings } = this;
    if (this.#localSlot[piece] === piece + n) return;
    const size = readings * S;
    local.copyWithin((piece + n) * size, piece * size, (piece + 1) * size);
    this.#localSlot[piece] = piece + n;
  }

  /**
   * Leaves columns out that hold less than a share of the belief, for speed in many what-ifs.
   * @param share 0 takes every column in again
   */
  focus(share: number): void {
    const all = Array.from({ length: this.columns }, (_, c) => c);
    this.live = all;
    const least = this.total() * share;
    this.live = all.filter((c) => this.joint(c) >= least);
    this.firsts = [...new Set(this.live.map((c) => this.base[c]!))];
  }

  /**
   * Looks at the messages as they would be after a change, and leaves everything as it was.
   * @param pieces the pieces whose findings or probabilities `change` touches
   * @param change changes findings by `multiply` and `replace`, or the model, which it puts back by the act it returns
   */
  whatIf<T>(pieces: readonly number[], change: () => void | (() => void), look: () => T): T {
    const { n, slot, model } = this;
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
      slot[i] = i + n;
      this.#refresh(i);
    }
    const seen = look();
    back?.();
    for (let i = highest; i >= 0; i--) slot[i] = i;
    for (let j = 0; j < pieces.length; j++) this.#localSlot[pieces[j]!] = pieces[j]!;
    for (const i of this.#roused) this.active[i] = 0;
    for (const i of this.#loudened) this.loud[i] = 0;
    this.#inWhatIf = false;
    return seen;
  }

  #refresh(i: number): void {
    const { causes, columns, readings, up, clear, shut, sound, slot, base: shared, wide } = this;
    const live = wide[i] ? this.live : this.firsts;
    const {
      throughNarrowed: tn,
      throughBlocked: tb,
      carries,
      narrowed,
      blocked,
      cause,
      reading,
      calibre,
      children,
    } = this.model;
    const local = this.local;
    const own = children[i]!;
    const active = this.active[i] === 1;
    const loud = this.loud[i] === 1;
    const row = calibre[i]! * 9;
    const localAt = this.#localSlot[i]! * readings;
    const base = slot[i]! * columns;
    for (let q = 0; q < live.length; q++) {
      const c = live[q]!;
      const ofCause = i * causes + cause[c]!;
      const n = narrowed[ofCause]!;
      const b = blocked[ofCause]!;
      const p = 1 - n - b;
      const k = base + c;
      if (!active) {
        // No finding bears on it or on what it feeds.
        let patent = p;
        for (let j = 0; j < own.length; j++) {
          const piece = own[j]!;
          patent *= sound[slot[piece]! * columns + (wide[piece] ? c : shared[c]!)]!;
        }
        sound[k] = patent;
        clear[k] = p;
        shut[k] = n + b;
        continue;
      }
      const at = k * S;
      const l = (localAt + reading[c]!) * S;
      let all = p * local[l]!;
      let e0 = local[l]!;
      let e1 = local[l + 1]!;
      let e2 = local[l + 2]!;
      let m0 = local[l + 3]!;
      let m1 = local[l + 4]!;
      let m2 = local[l + 5]!;
      for (let j = 0; j < own.length; j++) {
        const piece = own[j]!;
        const child = slot[piece]! * columns + (wide[piece] ? c : shared[c]!);
        const u = child * S;
        all *= sound[child]!;
        e0 *= up[u]!;
        e1 *= up[u + 1]!;
        e2 *= up[u + 2]!;
        if (!loud) continue;
        m0 *= up[u + 3]!;
        m1 *= up[u + 4]!;
        m2 *= up[u + 5]!;
      }
      sound[k] = all;
      if (!loud) {
        m0 = e0;
        m1 = e1;
        m2 = e2;
      }
      const rest0 =
        n * (tn[row]! * m0 + tn[row + 1]! * m1 + tn[row + 2]! * m2) +
        b * (tb[row]! * e0 + tb[row + 1]! * e1 + tb[row + 2]! * e2);
      const rest1 = n * (tn[row + 4]! * m1 + tn[row + 5]! * m2) + b * (tb[row + 4]! * e1 + tb[row + 5]! * e2);
      const rest2 = n * m2 + b * e2;
      const fades = p * (1 - carries);
      const stays = p * carries;
      const whole = p * e0 + rest0;
      const by = whole > 0 ? 1 / whole : 0;
      clear[k] = p * e0 * by;
      shut[k] = rest0 * by;
      up[at] = whole;
      up[at + 1] = p * e1 + rest1;
      up[at + 2] = p * e2 + rest2;
      if (!loud) {
        up[at + 3] = whole;
        up[at + 4] = up[at + 1]!;
        up[at + 5] = up[at + 2]!;
        continue;
      }
      up[at + 3] = stays * m0 + fades * e0 + rest0;
      up[at + 4] = stays * m1 + fades * e1 + rest1;
      up[at + 5] = stays * m2 + fades * e2 + rest2;
    }
  }

  /** Likelihood of all findings under a column, times the column's weight. */
  joint(column: number): number {
    const root = this.at(0, column);
    const all = this.up[root * S]!;
    const struck = this.model.struck[this.model.cause[column]!];
    return this.weightOf(column) * (struck ? Math.max(0, all - this.sound[root]!) : all);
  }

  /** A column's weight, raised where its cause has struck for sure by what that leaves out. */
  weightOf(column: number): number {
    const weight = this.model.weight[column]!;
    const cause = this.model.cause[column]!;
    return this.model.struck[cause] ? weight / (1 - this.allPatent[cause]!) : weight;
  }

  /** Likelihood of all findings. Zero means that they are impossible by the tables. */
  total(): number {
    let sum = 0;
    for (const c of this.live) sum += this.joint(c);
    return sum;
  }
}
