import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { denseSolve } from '../../tools/dense-solve.mjs';
import {
  complexSystem,
  eliminationOf,
  realSystem,
  solveComplex,
  solveReal,
} from '../../../src/flow/tree/elimination.js';
import { humanNetwork } from '../../../src/flow/tree/network.js';

/** A connected graph: a random tree with some more edges, and a conductance for each. */
const graph = fc.integer({ min: 2, max: 14 }).chain((size) =>
  fc.record({
    size: fc.constant(size),
    parents: fc.tuple(...Array.from({ length: size - 1 }, (_, i) => fc.nat({ max: i }))),
    extra: fc.array(fc.tuple(fc.nat({ max: size - 1 }), fc.nat({ max: size - 1 })), { maxLength: size }),
    values: fc.array(fc.double({ min: 0.01, max: 100, noNaN: true }), {
      minLength: 3 * size,
      maxLength: 3 * size,
    }),
  }),
);

type Graph = typeof graph extends fc.Arbitrary<infer T> ? T : never;
const edgesOf = ({ parents, extra }: Graph): (readonly [number, number])[] => [
  ...parents.map((parent, i) => [i + 1, parent] as const),
  ...extra.filter(([a, b]) => a !== b),
];

describe('elimination', () => {
  it('solves any connected network as the dense solution of a general library does', () => {
    fc.assert(
      fc.property(graph, fc.nat(), (one, lastSeed) => {
        const edges = edgesOf(one);
        const { size, values } = one;
        const last = lastSeed % size;
        const elimination = eliminationOf(size, edges, last);
        const system = realSystem(elimination);
        const rank = new Map(elimination.order.map((old, i) => [old, i]));
        expect(elimination.order.at(-1)).toBe(last);
        const dense = Array.from({ length: size }, () => new Array<number>(size).fill(0));
        edges.forEach(([a, b], e) => {
          const g = values[e]!;
          const [i, j] = [rank.get(a)!, rank.get(b)!];
          system.diagonal[i]! += g;
          system.diagonal[j]! += g;
          system.off[elimination.slotOfEdge[e]!]! -= g;
          dense[i]![i]! += g;
          dense[j]![j]! += g;
          dense[i]![j]! -= g;
          dense[j]![i]! -= g;
        });
        const right = Array.from({ length: size - 1 }, (_, i) => Math.sin(i + 1));
        system.right.set(right);
        solveReal(elimination, system);
        const expected = denseSolve(
          dense.slice(0, -1).map((row) => row.slice(0, -1)),
          right,
        );
        expected.forEach((x, i) => expect(system.right[i]).toBeCloseTo(x, 6));
        expect(system.right[size - 1]).toBe(0);
      }),
      { numRuns: 100 },
    );
  });

  it('solves complex systems as the dense solution of their real double does', () => {
    fc.assert(
      fc.property(graph, (one) => {
        const edges = edgesOf(one);
        const { size, values } = one;
        const elimination = eliminationOf(size, edges, size - 1);
        const system = complexSystem(elimination);
        const rank = new Map(elimination.order.map((old, i) => [old, i]));
        const dense = Array.from({ length: 2 * size }, () => new Array<number>(2 * size).fill(0));
        const put = (i: number, j: number, re: number, im: number): void => {
          dense[i]![j]! += re;
          dense[i + size]![j + size]! += re;
          dense[i]![j + size]! -= im;
          dense[i + size]![j]! += im;
        };
        edges.forEach(([a, b], e) => {
          const [i, j] = [rank.get(a)!, rank.get(b)!];
          const re = values[e]!;
          const im = values[e + size]!;
          for (const k of [i, j]) {
            system.diagonalRe[k]! += re;
            system.diagonalIm[k]! += im;
            put(k, k, re, im);
          }
          system.offRe[elimination.slotOfEdge[e]!]! -= re;
          system.offIm[elimination.slotOfEdge[e]!]! -= im;
          put(i, j, -re, -im);
          put(j, i, -re, -im);
        });
        for (let i = 0; i < size; i++) {
          system.diagonalRe[i]! += 1;
          put(i, i, 1, 0);
        }
        const right = new Array<number>(2 * size).fill(0);
        right[size - 1] = 2;
        right[2 * size - 1] = -1;
        system.rightRe[size - 1] = 2;
        system.rightIm[size - 1] = -1;
        solveComplex(elimination, system);
        const expected = denseSolve(dense, right);
        for (let i = 0; i < size; i++) {
          expect(system.rightRe[i]).toBeCloseTo(expected[i]!, 7);
          expect(system.rightIm[i]).toBeCloseTo(expected[i + size]!, 7);
        }
      }),
      { numRuns: 100 },
    );
  });

  it('keeps the tree of the body sparse: fewer than 700 multiply-adds for 109 nodes', () => {
    const { elimination, nodes } = humanNetwork();
    expect(nodes).toHaveLength(109);
    expect(elimination.operations).toBeLessThan(700);
    expect(nodes.at(-1)).toBe('root');
  });
});
