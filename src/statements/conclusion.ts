import { limbKey } from '../anatomy/index.js';
import type { LimbRule, Reading } from '../localisation/index.js';

/**
 * The limbs of which there is something to tell: the rule finds a lesion or a contradiction, or the network a lesion in a limb that was
 * examined. In the order of the rule.
 */
export function talkingLimbs({ rule, network }: Reading): LimbRule[] {
  return Object.values(rule).filter((one) => {
    const limb = network.status === 'read' ? network.limbs[limbKey(one.limb)] : undefined;
    return (
      one.outcome === 'lesion' || one.contradictions.length > 0 || Boolean(limb?.examined && limb.headline)
    );
  });
}
