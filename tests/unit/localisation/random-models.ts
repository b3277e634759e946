import fc from 'fast-check';
import type { Factor, Model } from '../../../src/localisation/network/columns.js';

const probability = fc.double({ min: 0.01, max: 0.99, noNaN: true });

/** A row of three that sums to one and never strengthens the pulse. */
function row(from: number): fc.Arbitrary<number[]> {
  return fc.tuple(probability, probability, probability).map((raw) => {
    const open = raw.map((value, t) => (t < from ? 0 : value));
    const sum = open.reduce((a, b) => a + b, 0);
    return open.map((value) => value / sum);
  });
}

const passage = fc
  .tuple(row(0), row(1), row(2), row(0), row(1), row(2))
  .map((rows) => Float64Array.from(rows.flat()));

/** Any small tree with any probabilities, causes that have struck for sure among them. */
export function randomModel(
  mostPieces: number,
  { struck = true, leastPieces = 1 } = {},
): fc.Arbitrary<Model> {
  return fc
    .record({
      parents: fc.array(fc.nat(), { minLength: leastPieces - 1, maxLength: mostPieces - 1 }),
      causes: fc.integer({ min: 1, max: 3 }),
      carries: probability,
      throughNarrowed: passage,
      throughBlocked: passage,
      numbers: fc.array(probability, { minLength: 60, maxLength: 60 }),
      flags: fc.array(fc.boolean(), { minLength: 40, maxLength: 40 }),
    })
    .map(({ parents, causes, carries, throughNarrowed, throughBlocked, numbers, flags }) => {
      const parent = [-1, ...parents.map((value, i) => value % (i + 1))];
      const weights = Array.from({ length: causes }, (_, c) => numbers[c]!);
      const sum = weights.reduce((a, b) => a + b, 0);
      const size = parent.length * causes;
      return {
        parent,
        children: parent.map((_, i) => parent.flatMap((p, child) => (p === i ? [child] : []))),
        weight: Float64Array.from(weights, (w) => w / sum),
        cause: Array.from({ length: causes }, (_, c) => c),
        reading: Array.from({ length: causes }, (_, c) => (flags[c] ? 1 : 0)),
        struck: Array.from({ length: causes }, (_, c) => struck && flags[3 + c]!),
        narrowed: Float64Array.from({ length: size }, (_, k) => numbers[3 + (k % 50)]! * 0.4),
        blocked: Float64Array.from({ length: size }, (_, k) => numbers[7 + (k % 50)]! * 0.4),
        throughNarrowed,
        throughBlocked,
        calibre: parent.map((_, i) => (flags[6 + i] ? 1 : 0)),
        carries,
      };
    });
}

/** Findings at any pieces; `quiet` ones do not tell sound from silence. */
export function randomFactors(most: number, least = 0): fc.Arbitrary<(pieces: number) => Factor[]> {
  const one = fc.record({
    piece: fc.nat(),
    quiet: fc.boolean(),
    usual: fc.array(probability, { minLength: 6, maxLength: 6 }),
    second: fc.array(probability, { minLength: 6, maxLength: 6 }),
  });
  const mute = (values: number[]): number[] => values.map((_, x) => values[x % 3]!);
  return fc.array(one, { minLength: least, maxLength: most }).map(
    (list) => (pieces) =>
      list.map(({ piece, quiet, usual, second }) => ({
        piece: piece % pieces,
        by: [quiet ? mute(usual) : usual, quiet ? mute(second) : second],
      })),
  );
}

export interface World {
  readonly cause: number;
  readonly states: readonly number[];
  /** State of the point at the end of each piece. */
  readonly points: readonly number[];
  readonly probability: number;
}

/** Every possible assignment with its joint probability, one by one: the definition, written out. */
export function worlds(model: Model, factors: readonly Factor[]): World[] {
  const out: World[] = [];
  const causes = model.weight.length;
  for (let cause = 0; cause < causes; cause++) {
    let allPatent = 1;
    model.parent.forEach((_, i) => {
      allPatent *= 1 - model.narrowed[i * causes + cause]! - model.blocked[i * causes + cause]!;
    });
    const scale = model.weight[cause]! / (model.struck[cause] ? 1 - allPatent : 1);
    const visit = (i: number, states: number[], points: number[], probability: number): void => {
      if (probability === 0) return;
      if (i === model.parent.length) {
        if (!(model.struck[cause] && states.every((state) => state === 0))) {
          out.push({ cause, states: [...states], points: [...points], probability });
        }
        return;
      }
      const from = i === 0 ? 0 : points[model.parent[i]!]!;
      const n = model.narrowed[i * causes + cause]!;
      const b = model.blocked[i * causes + cause]!;
      const row = model.calibre[i]! * 9 + (from % 3) * 3;
      const moves: [number, number, number][] = [];
      const p = 1 - n - b;
      if (from < 3) moves.push([0, from, p]);
      else moves.push([0, from, p * model.carries], [0, from - 3, p * (1 - model.carries)]);
      for (let t = 0; t < 3; t++) {
        moves.push(
          [1, t + 3, n * model.throughNarrowed[row + t]!],
          [2, t, b * model.throughBlocked[row + t]!],
        );
      }
      for (const [state, to, move] of moves) {
        let likelihood = 1;
        for (const factor of factors) {
          if (factor.piece === i) likelihood *= (factor.by[model.reading[cause]!] ?? factor.by[0]!)[to]!;
        }
        visit(i + 1, [...states, state], [...points, to], probability * move * likelihood);
      }
    };
    visit(0, [], [], scale);
  }
  return out;
}
