import type { Propagation } from './propagate.js';
import type { Way } from './tree.js';

/**
 * Where trouble begins on the way to a limb: the probability, given all findings, that a piece is the first in the way's
 * order that is not patent. As long as everything before is patent the pulse is normal, so the products of the upward
 * messages give it without a second pass.
 * @returns one number for each piece of `way.order`, and as the last one "nothing on this way"; they sum to one
 */
export function beginnings(net: Propagation, way: Way, into = new Float64Array(way.order.length + 1)): Float64Array {
  into.fill(0);
  const { causes, model } = net;
  for (let c = 0; c < causes; c++) {
    const weight = net.weightOf(c);
    let before = weight;
    let place = 0;
    for (let j = 0; j < way.trunk.length && before > 0; j++) {
      const k = way.trunk[j]! * causes + c;
      into[place++]! += before * net.shut[k]!;
      before *= net.open[k]!;
      const next = way.trunk[j + 1];
      const ahead = next === undefined ? way.branches.map((branch) => branch[0]!) : [next];
      for (const piece of ahead) before = divide(before, net.up[(piece * causes + c) * 6]!);
    }
    if (before > 0) branches(net, way, c, before, into, way.trunk.length);
    // A cause that has struck for sure leaves out the case of every piece being patent.
    if (model.struck[c]) into[into.length - 1]! -= weight * net.sound[c]!;
  }
  into[into.length - 1] = Math.max(0, into[into.length - 1]!);
  let sum = 0;
  for (const value of into) sum += value;
  for (let i = 0; i < into.length; i++) into[i]! /= sum;
  return into;
}

function divide(value: number, by: number): number {
  return by > 0 ? value / by : 0;
}

function branches(net: Propagation, way: Way, c: number, before: number, into: Float64Array, from: number): void {
  // What a branch contributes with everything from its beginning to a depth patent: index 0 is the whole branch.
  const patent = way.branches.map((branch) => {
    let open = 1;
    const all = [net.up[(branch[0]! * net.causes + c) * 6]!];
    const first: number[] = [];
    for (let depth = 0; depth < branch.length; depth++) {
      const k = branch[depth]! * net.causes + c;
      first.push(open * net.shut[k]!);
      open *= net.open[k]!;
      all.push(open);
      const next = branch[depth + 1];
      if (next !== undefined) open = divide(open, net.up[(next * net.causes + c) * 6]!);
    }
    return { all, first };
  });
  const reached = way.branches.map(() => 0);
  let place = from;
  const rest = (except: number): number =>
    patent.reduce((product, branch, i) => (i === except ? product : product * branch.all[reached[i]!]!), 1);
  for (let depth = 0; place < into.length - 1; depth++) {
    for (let i = 0; i < way.branches.length; i++) {
      if (way.branches[i]![depth] === undefined) continue;
      into[place++]! += before * patent[i]!.first[depth]! * rest(i);
      reached[i] = depth + 1;
    }
  }
  into[place]! += before * rest(-1);
}
