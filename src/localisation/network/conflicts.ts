import type { Finding, FindingId } from './finding.js';
import type { Propagation } from './propagate.js';

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

/** Whether a finding can be taken out again by division: no state is impossible under it. */
const divides = ({ factors }: Finding): boolean =>
  factors.every(({ by }) => by.every((values) => Array.prototype.every.call(values, (value) => value > 0)));

/** Messages with some findings left out. */
export function without<T>(
  net: Propagation,
  findings: readonly Finding[],
  left: readonly Finding[],
  look: () => T,
): T {
  const out = left.flatMap(({ factors }) => factors);
  const pieces = [...new Set(out.map(({ piece }) => piece))];
  const change = (): void => {
    if (left.every(divides)) {
      for (const factor of out) net.multiply(factor, -1);
      return;
    }
    const rest = findings.filter((finding) => !left.includes(finding)).flatMap(({ factors }) => factors);
    for (const piece of pieces)
      net.replace(
        piece,
        rest.filter((factor) => factor.piece === piece),
      );
  };
  return net.whatIf(pieces, change, look);
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
    for (const [i, partner] of findings.entries()) {
      if (partner === finding || !partner.limbs.some((limb) => finding.limbs.includes(limb))) continue;
      const given = totals[i]!;
      const neither = without(net, findings, [partner, finding], () => net.total());
      const relieved = (given / neither) * width(finding);
      if (relieved > (best?.relieved ?? probability * RELIEF)) best = { partner, relieved };
    }
    return best ? [{ finding: finding.id, with: best.partner.id, probability }] : [];
  });
}

/** So many conflicts are named. */
const MOST = 3;
