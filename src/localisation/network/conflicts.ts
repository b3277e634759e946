import type { Finding, FindingId } from './finding.js';
import type { Factor, Propagation } from './propagate.js';

/** Two findings that can hardly both be right: the first is the less expected, given all others. */
export interface Conflict {
  readonly finding: FindingId;
  readonly with: FindingId;
  /** Probability of the finding given all others. */
  readonly probability: number;
}

/** A finding less probable than this, given the others, is named. */
const UNEXPECTED = 0.03;
/** A partner has to make the finding so many times likelier when it is left out. */
const RELIEF = 4;
/** An index is a density; a reading within this width counts as the same. */
const INDEX_WIDTH = 0.1;

/** Messages with some findings left out. */
export function without<T>(
  net: Propagation,
  findings: readonly Finding[],
  left: readonly Finding[],
  look: () => T,
): T {
  const pieces = [...new Set(left.flatMap(({ factors }) => factors.map(({ piece }) => piece)))];
  return net.whatIf(
    pieces,
    () => {
      for (const piece of pieces) {
        const rest: Factor[] = [];
        for (const f of findings) {
          if (left.includes(f)) continue;
          for (const factor of f.factors) if (factor.piece === piece) rest.push(factor);
        }
        net.replace(piece, rest);
      }
    },
    look,
  );
}

const width = ({ id }: Finding): number => (/index/.test(id.kind) ? INDEX_WIDTH : 1);

/**
 * Findings that can't well be right together.
 * @param totals likelihood of all findings without each one
 */
export function conflictsOf(
  net: Propagation,
  findings: readonly Finding[],
  totals: readonly number[],
): Conflict[] {
  const total = net.total();
  const unexpected = findings
    .map((finding, i) => ({ finding, probability: (total / totals[i]!) * width(finding) }))
    .filter(({ probability }) => probability < UNEXPECTED)
    .sort((a, b) => a.probability - b.probability)
    .slice(0, MOST);
  return unexpected.flatMap(({ finding, probability }): Conflict[] => {
    let best: { partner: Finding; relieved: number } | undefined;
    for (const partner of findings) {
      if (partner === finding || !partner.limbs.some((limb) => finding.limbs.includes(limb))) continue;
      const given = without(net, findings, [partner], () => net.total());
      const neither = without(net, findings, [partner, finding], () => net.total());
      const relieved = (given / neither) * width(finding);
      if (relieved > (best?.relieved ?? probability * RELIEF)) best = { partner, relieved };
    }
    return best ? [{ finding: finding.id, with: best.partner.id, probability }] : [];
  });
}

/** So many conflicts are named. */
const MOST = 3;
