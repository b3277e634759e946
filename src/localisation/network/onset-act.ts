import { type AnswerKey, answerProbabilities, entropy } from './answers.js';
import type { Propagation } from './propagate.js';

/**
 * How much it would tell to know whether the trouble is acute: expected fall in entropy of where disease begins, in nats. By
 * artery and not by level, since an embolus and an old occlusion of one level are what it tells apart.
 * @param acute probability that it is, before the findings
 * @param networkIf the network of the findings, with the onset known; the one asked for last may take the place of the first
 */
export function onsetGain(
  acute: number,
  networkIf: (onset: 'acute' | 'chronic') => Propagation,
  keys: readonly AnswerKey[],
): number {
  const known = (['acute', 'chronic'] as const).map((onset) => {
    const net = networkIf(onset);
    const joint = net.total() * (onset === 'acute' ? acute : 1 - acute);
    return { joint, answers: keys.map((key) => answerProbabilities(net, key)) };
  });
  const all = known.reduce((sum, { joint }) => sum + joint, 0);
  if (!(all > 0)) return 0;
  return keys.reduce((gain, { answers }, i) => {
    const mixed = new Float64Array(answers.length + 1);
    let left = 0;
    for (const { joint, answers: own } of known) {
      const share = joint / all;
      if (!(share > 0)) continue;
      left += share * entropy(own[i]!);
      for (let k = 0; k < mixed.length; k++) mixed[k]! += share * own[i]![k]!;
    }
    return gain + entropy(mixed) - left;
  }, 0);
}
