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
  const { columns, live, model, clear, shut, slot, sound, up, base, wide } = net;
  const last = into.length - 1;
  into.fill(0);
  let sum = 0;
  for (let q = 0; q < live.length; q++) {
    const c = live[q]!;
    const weight = net.weightOf(c);
    const root = net.at(0, c);
    const own = base[c]!;
    let rest = weight * up[root * 6]!;
    sum += rest;
    for (let j = 0; j < order.length; j++) {
      const piece = order[j]!;
      const k = slot[piece]! * columns + (wide[piece] ? c : own);
      into[bucket[j]!]! += rest * shut[k]!;
      rest *= clear[k]!;
    }
    // A cause that has struck for sure leaves out the case of every piece being patent.
    const sane = model.struck[model.cause[c]!] ? Math.min(rest, weight * sound[root]!) : 0;
    into[last]! += rest - sane;
    sum -= sane;
  }
  for (let j = 0; j <= last; j++) into[j]! /= sum;
  return into;
}
