import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blame, type Fork } from '../../../src/localisation/network/occluded.js';
import { Propagation } from '../../../src/localisation/network/propagate.js';
import { randomFactors, randomModel, type World, worlds } from './random-models.js';

function pathTo(parent: readonly number[], piece: number): number[] {
  return piece < 0 ? [] : [...pathTo(parent, parent[piece]!), piece];
}

/** The ways to two pieces as a trunk and two branches; the longer way alone where one lies on the other. */
function forkOf(parent: readonly number[], one: number, two: number): Fork {
  const [a, b] = [pathTo(parent, one), pathTo(parent, two)];
  const trunk = a.filter((piece) => b.includes(piece));
  const branches = [a, b].map((way) => way.filter((piece) => !trunk.includes(piece)));
  if (branches.every((branch) => branch.length > 0)) return { trunk, branches };
  return { trunk: a.length > b.length ? a : b, branches: [] };
}

interface Counted {
  readonly trunk: number[];
  readonly branches: number[];
  both: number;
}

/** Where in each world the pulse comes down to what it is at an end, counted world by world. */
function counted(all: readonly World[], { trunk, branches }: Fork, lost: 1 | 2): Counted {
  const out: Counted = { trunk: trunk.map(() => 0), branches: branches.map(() => 0), both: 0 };
  const ends = branches.length ? branches.map((branch) => branch.at(-1)!) : [trunk.at(-1)!];
  const whole = all.reduce((sum, { probability }) => sum + probability, 0);
  for (const { points, probability } of all) {
    const strength = (piece: number): number => points[piece]! % 3;
    // "Weakened" counts only where neither end has lost its pulse.
    if (lost === 1 && ends.some((end) => strength(end) === 2)) continue;
    const share = probability / whole;
    const onTrunk = trunk.findIndex((piece) => strength(piece) >= lost);
    const hit = branches.map((branch) => branch.some((piece) => strength(piece) >= lost));
    if (onTrunk >= 0) out.trunk[onTrunk]! += share;
    else if (hit.length > 1 && hit.every(Boolean)) out.both += share;
    else hit.forEach((is, k) => (out.branches[k]! += is ? share : 0));
  }
  return out;
}

describe('The piece to blame', () => {
  it('is what counting every possible world gives: on the trunk, on each branch, and on both at once', () => {
    fc.assert(
      fc.property(
        randomModel(5, { leastPieces: 2 }),
        randomFactors(4),
        fc.nat(),
        fc.nat(),
        (model, make, a, b) => {
          const n = model.parent.length;
          const factors = make(n);
          const net = new Propagation(model, factors);
          // Columns that hold next to nothing are left out on purpose.
          fc.pre(net.live.every((c) => net.joint(c) > 0.002 * net.total()));
          const fork = forkOf(model.parent, a % n, b % n);
          const all = worlds(model, factors);
          const found = blame(net, fork);
          for (const [lost, by, both] of [
            [2, found.absent, found.bothAbsent],
            [1, found.reduced, found.bothReduced],
          ] as const) {
            const expected = counted(all, fork, lost);
            expected.trunk.forEach((share, j) => expect(by[j]).toBeCloseTo(share, 9));
            expect(both).toBeCloseTo(expected.both, 9);
            let from = fork.trunk.length;
            fork.branches.forEach((branch, k) => {
              const sum = branch.reduce((total, _, j) => total + by[from + j]!, 0);
              expect(sum).toBeCloseTo(expected.branches[k]!, 9);
              from += branch.length;
            });
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});
