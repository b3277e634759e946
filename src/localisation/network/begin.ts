import type { Propagation } from './propagate.js';

/**
 * Where trouble begins on a way: the probability, given all findings, that a piece is the first in the way's order that is
 * not patent. As long as everything before is patent the pulse is normal and silent, so the shares of the upward messages
 * give it without a second pass.
 * @param order pieces of the way, each after the one that feeds it; the root first
 * @param bucket where each piece's probability is added up, such as its artery or level
 * @param into one number for each bucket, and as the last one "nothing on this way"; they sum to one
 */
export function beginnings(
  net: Propagation,
  order: readonly number[],
  bucket: readonly number[],
  into: Float64Array,
): Float64Array {
  into.fill(0);
  for (let q = 0; q < net.live.length; q++) add(net, order, bucket, net.live[q]!, into, 0, into.length);
  return toOne(into);
}

/** The same of every live column by itself, one after the other, as joint probabilities with the findings. */
export function beginningsByColumn(
  net: Propagation,
  order: readonly number[],
  bucket: readonly number[],
  buckets: number,
): Float64Array {
  const into = new Float64Array(net.live.length * buckets);
  net.live.forEach((c, q) => add(net, order, bucket, c, into, q * buckets, buckets));
  return into;
}

/** Scales numbers so that they sum to one. */
function toOne(values: Float64Array): Float64Array {
  let sum = 0;
  for (let j = 0; j < values.length; j++) sum += values[j]!;
  for (let j = 0; j < values.length; j++) values[j]! /= sum;
  return values;
}

function add(
  net: Propagation,
  order: readonly number[],
  bucket: readonly number[],
  c: number,
  into: Float64Array,
  from: number,
  buckets: number,
): void {
  const { clear, shut, start, sound, up, base, wide } = net;
  const weight = net.prior[c]!;
  const root = net.at(0, c);
  const own = base[c]!;
  let rest = weight * up[root * 6]!;
  for (let j = 0; j < order.length; j++) {
    const piece = order[j]!;
    const k = start[piece]! + (wide[piece] ? c : own);
    into[from + bucket[j]!]! += rest * shut[k]!;
    rest *= clear[k]!;
  }
  // A cause that has struck for sure leaves out the case of every piece being patent.
  const sane = net.model.struck[net.cause[c]!] ? Math.min(rest, weight * sound[root]!) : 0;
  into[from + buckets - 1]! += rest - sane;
}
