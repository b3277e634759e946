/*
 * Direct solution of a symmetric sparse system whose pattern is that of a graph. The order of elimination (minimum degree) and
 * every position that fills in are found once; what is left for each solve is a straight run over three arrays, the same for
 * real matrices (mean flow) and complex ones (waves).
 */

/** A program of elimination for one graph. */
export interface Elimination {
  readonly size: number;
  /** Old node numbers in the order in which they are eliminated; the root is the last. */
  readonly order: readonly number[];
  /** Entries right of the diagonal in row k lie at `start[k]` to `start[k + 1]`, in columns `column`. */
  readonly start: Int32Array;
  readonly column: Int32Array;
  /** For every pair of entries of a row, in order: where their product goes. */
  readonly update: Int32Array;
  /** The entry of each edge; edges between the same two nodes share one. */
  readonly slotOfEdge: Int32Array;
  /** Multiply-adds of one factorisation. */
  readonly operations: number;
}

/**
 * Orders a graph by minimum degree with one node kept for last.
 * @param size number of nodes
 * @param edges pairs of node numbers
 * @param last the node that is eliminated last
 */
export function eliminationOf(
  size: number,
  edges: readonly (readonly [number, number])[],
  last: number,
): Elimination {
  const neighbours = Array.from({ length: size }, () => new Set<number>());
  for (const [a, b] of edges) {
    neighbours[a]!.add(b);
    neighbours[b]!.add(a);
  }
  const left = new Set(neighbours.keys());
  const order: number[] = [];
  const rows: number[][] = [];
  while (left.size) {
    let pick = last;
    for (const node of left) {
      if (node === last) continue;
      if (pick === last || neighbours[node]!.size < neighbours[pick]!.size) pick = node;
    }
    left.delete(pick);
    const row = [...neighbours[pick]!];
    for (const a of row) {
      neighbours[a]!.delete(pick);
      for (const b of row) if (a !== b) neighbours[a]!.add(b);
    }
    order.push(pick);
    rows.push(row);
  }
  const rank = new Int32Array(size);
  order.forEach((old, i) => (rank[old] = i));
  const sorted = rows.map((row) => row.map((old) => rank[old]!).sort((a, b) => a - b));

  const start = new Int32Array(size + 1);
  const column: number[] = [];
  const slots = new Map<number, number>();
  sorted.forEach((row, k) => {
    for (const j of row) {
      slots.set(k * size + j, column.length);
      column.push(j);
    }
    start[k + 1] = column.length;
  });
  const slotOf = (a: number, b: number): number => slots.get(Math.min(a, b) * size + Math.max(a, b))!;
  const update = sorted.flatMap((row) => row.flatMap((i, at) => row.slice(at + 1).map((j) => slotOf(i, j))));
  return {
    size,
    order,
    start,
    column: Int32Array.from(column),
    update: Int32Array.from(update),
    slotOfEdge: Int32Array.from(edges, ([a, b]) => slotOf(rank[a]!, rank[b]!)),
    operations: update.length + column.length,
  };
}

/** Room for one system: `diagonal` by node, `off` by entry, `right` by node (on return the solution). */
export interface RealSystem {
  readonly diagonal: Float64Array;
  readonly off: Float64Array;
  readonly right: Float64Array;
}

export function realSystem({ size, column }: Elimination): RealSystem {
  return {
    diagonal: new Float64Array(size),
    off: new Float64Array(column.length),
    right: new Float64Array(size),
  };
}

/**
 * Solves for every node but the last, whose value is held at zero. Overwrites the system; the solution is in `right`.
 */
export function solveReal(
  { size, start, column, update }: Elimination,
  { diagonal, off, right }: RealSystem,
): void {
  let u = 0;
  for (let k = 0; k < size - 1; k++) {
    const end = start[k + 1]!;
    const inverse = 1 / diagonal[k]!;
    const rk = right[k]!;
    for (let s = start[k]!; s < end; s++) {
      const value = off[s]!;
      const factor = value * inverse;
      const i = column[s]!;
      diagonal[i]! -= factor * value;
      right[i]! -= factor * rk;
      for (let t = s + 1; t < end; t++) off[update[u++]!]! -= factor * off[t]!;
    }
    diagonal[k] = inverse;
  }
  right[size - 1] = 0;
  for (let k = size - 2; k >= 0; k--) {
    let sum = right[k]!;
    for (let s = start[k]!; s < start[k + 1]!; s++) sum -= off[s]! * right[column[s]!]!;
    right[k] = sum * diagonal[k]!;
  }
}

/** Room for one complex system, real and imaginary parts apart. */
export interface ComplexSystem {
  readonly diagonalRe: Float64Array;
  readonly diagonalIm: Float64Array;
  readonly offRe: Float64Array;
  readonly offIm: Float64Array;
  readonly rightRe: Float64Array;
  readonly rightIm: Float64Array;
}

export function complexSystem({ size, column }: Elimination): ComplexSystem {
  const nodes = (): Float64Array => new Float64Array(size);
  return {
    diagonalRe: nodes(),
    diagonalIm: nodes(),
    offRe: new Float64Array(column.length),
    offIm: new Float64Array(column.length),
    rightRe: nodes(),
    rightIm: nodes(),
  };
}

/** Solves for every node, the last one too. The right side may be other than zero only at the last node. */
export function solveComplex(
  { size, start, column, update }: Elimination,
  { diagonalRe, diagonalIm, offRe, offIm, rightRe, rightIm }: ComplexSystem,
): void {
  let u = 0;
  for (let k = 0; k < size; k++) {
    const end = start[k + 1]!;
    const dr = diagonalRe[k]!;
    const di = diagonalIm[k]!;
    const scale = 1 / (dr * dr + di * di);
    const ir = dr * scale;
    const ii = -di * scale;
    for (let s = start[k]!; s < end; s++) {
      const vr = offRe[s]!;
      const vi = offIm[s]!;
      const fr = vr * ir - vi * ii;
      const fi = vr * ii + vi * ir;
      const i = column[s]!;
      diagonalRe[i]! -= fr * vr - fi * vi;
      diagonalIm[i]! -= fr * vi + fi * vr;
      for (let t = s + 1; t < end; t++) {
        const at = update[u++]!;
        const wr = offRe[t]!;
        const wi = offIm[t]!;
        offRe[at]! -= fr * wr - fi * wi;
        offIm[at]! -= fr * wi + fi * wr;
      }
    }
    diagonalRe[k] = ir;
    diagonalIm[k] = ii;
  }
  for (let k = size - 1; k >= 0; k--) {
    let sr = rightRe[k]!;
    let si = rightIm[k]!;
    for (let s = start[k]!; s < start[k + 1]!; s++) {
      const j = column[s]!;
      sr -= offRe[s]! * rightRe[j]! - offIm[s]! * rightIm[j]!;
      si -= offRe[s]! * rightIm[j]! + offIm[s]! * rightRe[j]!;
    }
    const ir = diagonalRe[k]!;
    const ii = diagonalIm[k]!;
    rightRe[k] = sr * ir - si * ii;
    rightIm[k] = sr * ii + si * ir;
  }
}
