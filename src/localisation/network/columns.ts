/*
 * What a network is made of: the tree with its probabilities, and findings. A column is a cause together with a way in which
 * findings are to be read (low flow, feet hard to feel).
 */

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
}

/** How columns are divided further: the new ones come after those of the model, whose numbers stay. */
export interface Division {
  readonly weight: Float64Array;
  readonly cause: readonly number[];
  readonly reading: readonly number[];
  /** Column of the model whose messages stand for each column, outside `wide`. */
  readonly base: readonly number[];
  /** Pieces where every column has messages of its own; with a piece the pieces that feed it. */
  readonly wide: Uint8Array;
  /** The columns that are kept. */
  readonly live: readonly number[];
}

/** A finding's likelihood by the state of the point at the end of one piece. */
export interface Factor {
  readonly piece: number;
  /** One for each reading of the model; where there are fewer, the first one stands for the rest. */
  readonly by: readonly ArrayLike<number>[];
}

const IDLE = new WeakMap<Float64Array, Float64Array>();

/** Prior probability of a piece and every piece it feeds being patent: `[piece * causes + cause]`; worked out once. */
export function idleOf({ struck, narrowed, blocked, parent }: Model): Float64Array {
  let idle = IDLE.get(narrowed);
  if (idle) return idle;
  const causes = struck.length;
  idle = narrowed.map((share, k) => 1 - share - blocked[k]!);
  for (let i = parent.length - 1; i > 0; i--) {
    const above = parent[i]! * causes;
    for (let c = 0; c < causes; c++) idle[above + c]! *= idle[i * causes + c]!;
  }
  IDLE.set(narrowed, idle);
  return idle;
}
