import { SIDES } from '../../anatomy/index.js';
import { TRUNK_BEDS, bedsOf } from './beds.js';
import { TRUNK_COLLATERALS, collateralsOf } from './collaterals.js';
import { eliminationOf, type Elimination } from './elimination.js';
import { armOf, legOf } from './limbs.js';
import { AORTA, neckOf, TRUNK_BRANCHES } from './trunk.js';
import type { Bed, Collateral, Section } from './types.js';

/** What a network is made of, by name. */
export interface Parts {
  readonly root: string;
  readonly sections: readonly Section[];
  readonly collaterals: readonly Collateral[];
  readonly beds: readonly Bed[];
}

/** A network with its nodes numbered in the order of elimination; the root is the last. */
export interface Network extends Parts {
  readonly nodes: readonly string[];
  readonly nodeOf: ReadonlyMap<string, number>;
  readonly sectionOf: ReadonlyMap<string, number>;
  /** Node numbers at the two ends, first the sections, then the collaterals. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** Where each edge's entry off the diagonal is kept. */
  readonly slot: Int32Array;
  /** Node number of each bed. */
  readonly bedNode: Int32Array;
  /** The section that feeds each bed, or -1. */
  readonly bedFeed: Int32Array;
  readonly elimination: Elimination;
}

/**
 * Numbers the nodes of a network so that elimination stays sparse; done once for a tree, whatever is blocked in it.
 * @throws RangeError where a bed or a collateral names a node that no section reaches
 */
export function networkOf(parts: Parts): Network {
  const { sections, collaterals, beds, root } = parts;
  const names = [...new Set(sections.flatMap(({ from, to }) => [from, to]))];
  const rough = new Map(names.map((name, i) => [name, i]));
  const number = (map: ReadonlyMap<string, number>, name: string): number => {
    const found = map.get(name);
    if (found === undefined) throw new RangeError(`no section of the tree reaches the node "${name}"`);
    return found;
  };
  const edges = [...sections, ...collaterals];
  const elimination = eliminationOf(
    names.length,
    edges.map(({ from, to }) => [number(rough, from), number(rough, to)] as const),
    number(rough, root),
  );
  const nodes = elimination.order.map((old) => names[old]!);
  const nodeOf = new Map(nodes.map((name, i) => [name, i]));
  const fed = new Map(sections.map(({ to }, i) => [to, i]));
  return {
    ...parts,
    nodes,
    nodeOf,
    sectionOf: new Map(sections.map(({ id }, i) => [id, i])),
    from: Int32Array.from(edges, ({ from }) => number(nodeOf, from)),
    to: Int32Array.from(edges, ({ to }) => number(nodeOf, to)),
    slot: elimination.slotOfEdge,
    bedNode: Int32Array.from(beds, ({ node }) => number(nodeOf, node)),
    bedFeed: Int32Array.from(beds, ({ node }) => fed.get(node) ?? -1),
    elimination,
  };
}

/** The arterial tree of an adult with its collaterals and beds, as tables. */
export const HUMAN: Parts = {
  root: 'root',
  sections: [
    ...AORTA,
    ...TRUNK_BRANCHES,
    ...SIDES.flatMap((side) => [...neckOf(side), ...armOf(side), ...legOf(side)]),
  ],
  collaterals: [...TRUNK_COLLATERALS, ...SIDES.flatMap(collateralsOf)],
  beds: [...TRUNK_BEDS, ...SIDES.flatMap(bedsOf)],
};

let human: Network | undefined;
/** The network of {@link HUMAN}, built at first use. */
export function humanNetwork(): Network {
  return (human ??= networkOf(HUMAN));
}
