import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beginnings } from '../../../src/localisation/network/begin.js';
import { marginals } from '../../../src/localisation/network/marginals.js';
import type { Factor, Model } from '../../../src/localisation/network/columns.js';
import { Propagation } from '../../../src/localisation/network/propagate.js';
import { mostProbableStory } from '../../../src/localisation/network/story.js';
import { generalNetwork, inferAll, stateProbability } from '../../bench/general-network.js';
import { randomFactors, randomModel, type World, worlds } from './random-models.js';

const RUNS = { numRuns: 60 };
const sum = (list: readonly World[]): number => list.reduce((total, world) => total + world.probability, 0);

/** Pieces in any order that keeps each after the one that feeds it, as by depth. */
function byDepth({ parent }: Model): number[] {
  const depth = (i: number): number => (parent[i]! < 0 ? 0 : 1 + depth(parent[i]!));
  return parent.map((_, i) => i).sort((a, b) => depth(a) - depth(b) || a - b);
}

const small = fc.tuple(randomModel(4), randomFactors(5));

describe('Exact inference on small trees', () => {
  it('gives the likelihood that summing over every assignment gives', () => {
    fc.assert(
      fc.property(small, ([model, make]) => {
        const factors = make(model.parent.length);
        expect(new Propagation(model, factors).total()).toBeCloseTo(sum(worlds(model, factors)), 12);
      }),
      RUNS,
    );
  });

  it('gives every piece the probabilities that counting assignments gives', () => {
    fc.assert(
      fc.property(small, ([model, make]) => {
        const factors = make(model.parent.length);
        const all = worlds(model, factors);
        const { narrowed, blocked } = marginals(new Propagation(model, factors));
        model.parent.forEach((_, i) => {
          const share = (state: number): number => sum(all.filter((w) => w.states[i] === state)) / sum(all);
          expect(narrowed[i]).toBeCloseTo(share(1), 10);
          expect(blocked[i]).toBeCloseTo(share(2), 10);
        });
      }),
      RUNS,
    );
  });

  it('says where trouble begins as counting assignments says', () => {
    fc.assert(
      fc.property(small, ([model, make]) => {
        const factors = make(model.parent.length);
        const all = worlds(model, factors);
        const order = byDepth(model);
        const bucket = order.map((_, j) => j);
        const found = beginnings(
          new Propagation(model, factors),
          order,
          bucket,
          new Float64Array(order.length + 1),
        );
        const first = (world: World): number => {
          const at = order.findIndex((piece) => world.states[piece] !== 0);
          return at < 0 ? order.length : at;
        };
        found.forEach((probability, j) => {
          expect(probability).toBeCloseTo(sum(all.filter((w) => first(w) === j)) / sum(all), 10);
        });
      }),
      RUNS,
    );
  });

  it('tells the assignment of the pieces findings bear on that is most probable of all', () => {
    fc.assert(
      fc.property(small, ([model, make]) => {
        const factors = make(model.parent.length);
        fc.pre(factors.length > 0);
        const net = new Propagation(model, factors);
        const told = mostProbableStory(net);
        const all = worlds(model, factors);
        // Points at the ends are part of a story: the best path through them is what its probability means.
        const active = model.parent.map((_, i) => net.active[i] === 1);
        const best = bestByPaths(model, factors, active);
        expect(told.probability).toBeCloseTo(best / sum(all), 10);
        told.states.forEach((state, i) => expect(active[i] || state === 0).toBe(true));
      }),
      RUNS,
    );
  });

  it('sees in a what-if what a network built anew would see, and leaves everything as it was', () => {
    fc.assert(
      fc.property(small, randomFactors(1), fc.array(fc.nat()), ([model, make], makeMore, others) => {
        const n = model.parent.length;
        const factors = make(n);
        const [more] = makeMore(n);
        fc.pre(more !== undefined);
        const net = new Propagation(model, factors);
        const before = net.total();
        const anew = new Propagation(model, [...factors, more!]);
        // Pieces on which the change does not bear after all may be among those it is said to touch.
        const seen = net.whatIf(
          [more!.piece, ...others.map((piece) => piece % n)],
          () => net.multiply(more!),
          () => net.total(),
        );
        expect(seen).toBeCloseTo(anew.total(), 12);
        expect(net.total()).toBe(before);
      }),
      RUNS,
    );
  });
});

/** The tree without the pieces that no finding bears on; those sum to one and leave. */
function pruned(model: Model, active: readonly boolean[]): { only: Model; at: number[] } {
  const at = model.parent.flatMap((_, i) => (active[i] ? [i] : []));
  const causes = model.weight.length;
  const pick = (values: Float64Array): Float64Array =>
    Float64Array.from(at.flatMap((i) => Array.from(values.subarray(i * causes, (i + 1) * causes))));
  const parent = at.map((i) => at.indexOf(model.parent[i]!));
  const children = parent.map((_, i) => parent.flatMap((p, child) => (p === i ? [child] : [])));
  const calibre = at.map((i) => model.calibre[i]!);
  const [narrowed, blocked] = [pick(model.narrowed), pick(model.blocked)];
  return { only: { ...model, parent, children, calibre, narrowed, blocked }, at };
}

const patentShare = (model: Model, cause: number): number =>
  model.parent.reduce((product, _, i) => {
    const k = i * model.weight.length + cause;
    return product * (1 - model.narrowed[k]! - model.blocked[k]!);
  }, 1);

/** The largest joint probability of states and points of the active pieces, with the others summed out. */
function bestByPaths(model: Model, factors: readonly Factor[], active: readonly boolean[]): number {
  const { only, at } = pruned(model, active);
  const moved = factors.map((factor) => ({ ...factor, piece: at.indexOf(factor.piece) }));
  return Math.max(
    ...worlds(only, moved).map(({ cause, probability }) => {
      // `worlds` scales by the active pieces alone; the patient's other pieces count as well.
      const scale = model.struck[cause]
        ? (1 - patentShare(only, cause)) / (1 - patentShare(model, cause))
        : 1;
      return probability * scale;
    }),
  );
}

describe('Against an independent library (bayesjs 0.6, junction tree)', () => {
  it('agrees to 1e-9 on every piece of trees of a dozen pieces', () => {
    const [sample] = fc.sample(
      fc.tuple(randomModel(12, { struck: false, leastPieces: 12 }), randomFactors(8, 6)),
      { seed: 20, numRuns: 1 },
    );
    const [model, make] = sample!;
    const factors = make(12);
    const { narrowed, blocked } = marginals(new Propagation(model, factors));
    const { network, given } = generalNetwork(model, factors);
    const result = inferAll(network, given, { precision: 15 });
    model.parent.forEach((_, i) => {
      expect(Math.abs(narrowed[i]! - stateProbability(result, i, 'narrowed'))).toBeLessThan(1e-9);
      expect(Math.abs(blocked[i]! - stateProbability(result, i, 'blocked'))).toBeLessThan(1e-9);
    });
  }, 30_000);
});
