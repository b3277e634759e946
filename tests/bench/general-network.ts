import type * as bayesjs from 'bayesjs';
import { createRequire } from 'node:module';
import type { Factor, Model } from '../../src/localisation/network/columns.js';

/*
 * The same tree, written out for a general Bayesian-network library (bayesjs, junction tree). A node for each piece holds
 * its own state together with the point at its end; each finding is a child observed to be true.
 */

/** The library is CommonJS without names that Node can see. */
export const { inferAll } = createRequire(import.meta.url)('bayesjs') as typeof bayesjs;

type Network = Parameters<typeof inferAll>[0];
type Rows = { when: Record<string, string>; then: Record<string, number> }[];

const STATE_NAMES = ['patent', 'narrowed', 'blocked'] as const;

/** The pairs that can occur: a narrowed piece sounds at its end, a blocked one is silent there. */
const PIECE_STATES = [
  ...[0, 1, 2, 3, 4, 5].map((x) => ({ state: 0, x, name: `patent ${x}` })),
  ...[3, 4, 5].map((x) => ({ state: 1, x, name: `narrowed ${x}` })),
  ...[0, 1, 2].map((x) => ({ state: 2, x, name: `blocked ${x}` })),
];
const NAMES = PIECE_STATES.map(({ name }) => name);

function transition(
  model: Model,
  piece: number,
  cause: number,
  from: number,
  state: number,
  to: number,
): number {
  const k = piece * model.weight.length + cause;
  const n = model.narrowed[k]!;
  const b = model.blocked[k]!;
  const row = model.calibre[piece]! * 9 + (from % 3) * 3;
  if (state === 1) return n * model.throughNarrowed[row + (to % 3)]!;
  if (state === 2) return b * model.throughBlocked[row + (to % 3)]!;
  const p = 1 - n - b;
  if (from < 3) return to === from ? p : 0;
  if (to === from) return p * model.carries;
  return to === from - 3 ? p * (1 - model.carries) : 0;
}

function rowOf(model: Model, piece: number, cause: number, from: number): Record<string, number> {
  return Object.fromEntries(
    PIECE_STATES.map(({ state, x, name }) => [name, transition(model, piece, cause, from, state, x)]),
  );
}

/** The network and the evidence for `inferAll`. Causes that have struck for sure are beyond it: pass none. */
export function generalNetwork(
  model: Model,
  factors: readonly Factor[],
): { network: Network; given: Record<string, string> } {
  const causes = Array.from(model.weight, (_, c) => `cause ${c}`);
  const network: Network = {
    cause: {
      id: 'cause',
      states: causes,
      parents: [],
      cpt: Object.fromEntries(causes.map((name, c) => [name, model.weight[c]!])),
    },
  };
  model.parent.forEach((parent, i) => {
    const above = parent < 0 ? [{ name: '', x: 0 }] : PIECE_STATES;
    const cpt: Rows = causes.flatMap((cause, c) =>
      above.map(({ name, x }) => ({
        when: { cause, ...(parent >= 0 && { [`piece ${parent}`]: name }) },
        then: rowOf(model, i, c, x),
      })),
    );
    const parents = parent < 0 ? ['cause'] : ['cause', `piece ${parent}`];
    network[`piece ${i}`] = { id: `piece ${i}`, states: NAMES, parents, cpt };
  });
  const given: Record<string, string> = {};
  factors.forEach(({ piece, by }, j) => {
    const largest = Math.max(...by.flatMap((values) => Array.from(values)));
    const id = `finding ${j}`;
    const cpt: Rows = causes.flatMap((cause, c) =>
      PIECE_STATES.map(({ name, x }) => {
        const found = (by[model.reading[c]!] ?? by[0]!)[x]! / largest;
        return { when: { cause, [`piece ${piece}`]: name }, then: { yes: found, no: 1 - found } };
      }),
    );
    network[id] = { id, states: ['yes', 'no'], parents: ['cause', `piece ${piece}`], cpt };
    given[id] = 'yes';
  });
  return { network, given };
}

/** Probability of a piece's own state, out of `inferAll`'s answer. */
export function stateProbability(
  result: ReturnType<typeof inferAll>,
  piece: number,
  state: (typeof STATE_NAMES)[number],
): number {
  const found = result[`piece ${piece}`]!;
  return NAMES.reduce((sum, name) => sum + (name.startsWith(state) ? found[name]! : 0), 0);
}

/**
 * A lighter form of the same tree for timing: one cause, no sound, and the piece's state apart from the strength at its
 * end, so that the library's cliques stay small. Findings by sound are left out.
 */
export function lightNetwork(
  model: Model,
  cause: number,
  factors: readonly Factor[],
): { network: Network; given: Record<string, string> } {
  const strengths = ['normal', 'reduced', 'absent'];
  const network: Network = {};
  const causes = model.weight.length;
  model.parent.forEach((parent, i) => {
    const n = model.narrowed[i * causes + cause]!;
    const b = model.blocked[i * causes + cause]!;
    network[`state ${i}`] = {
      id: `state ${i}`,
      states: [...STATE_NAMES],
      parents: [],
      cpt: { patent: 1 - n - b, narrowed: n, blocked: b },
    };
    const above = parent < 0 ? ['normal'] : strengths;
    const cpt: Rows = above.flatMap((strength, s) =>
      STATE_NAMES.map((state, l) => {
        const rows = l === 1 ? model.throughNarrowed : model.throughBlocked;
        const row = model.calibre[i]! * 9 + s * 3;
        const then = strengths.map((name, t) => [name, l === 0 ? Number(t === s) : rows[row + t]!] as const);
        const from = parent < 0 ? {} : { [`pulse ${parent}`]: strength };
        return { when: { ...from, [`state ${i}`]: state }, then: Object.fromEntries(then) };
      }),
    );
    const parents = parent < 0 ? [`state ${i}`] : [`pulse ${parent}`, `state ${i}`];
    network[`pulse ${i}`] = { id: `pulse ${i}`, states: strengths, parents, cpt };
  });
  const given: Record<string, string> = {};
  factors.forEach(({ piece, by }, j) => {
    const usual = by[0]!;
    if (usual[0] !== usual[3]) return;
    const id = `finding ${j}`;
    const cpt: Rows = strengths.map((strength, s) => ({
      when: { [`pulse ${piece}`]: strength },
      then: { yes: usual[s]!, no: 1 - usual[s]! },
    }));
    network[id] = { id, states: ['yes', 'no'], parents: [`pulse ${piece}`], cpt };
    given[id] = 'yes';
  });
  return { network, given };
}
