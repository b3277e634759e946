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
function divides({ factors }: Finding): boolean {
  for (const { by } of factors)
    for (const values of by) for (let x = 0; x < values.length; x++) if (!(values[x]! > 0)) return false;
  return true;
}

/** A finding that is to be left out: what it touches, and whether that can be divided away. */
export interface Removable {
  readonly finding: Finding;
  readonly pieces: readonly number[];
  readonly divides: boolean;
}

export function removable(finding: Finding): Removable {
  return {
    finding,
    pieces: finding.factors.map(({ piece }) => piece),
    divides: divides(finding),
  };
}

/** Messages with some findings left out. */
export function without<T>(
  net: Propagation,
  findings: readonly Removable[],
  left: readonly Removable[],
  look: () => T,
): T {
  const pieces = left.length === 1 ? left[0]!.pieces : left.flatMap((one) => one.pieces);
  const change = (): void => {
    if (left.every((one) => one.divides)) {
      for (const { finding } of left) for (const factor of finding.factors) net.multiply(factor, -1);
      return;
    }
    const rest = findings.filter((one) => !left.includes(one)).flatMap(({ finding }) => finding.factors);
    for (const piece of new Set(pieces))
      net.replace(
        piece,
        rest.filter((factor) => factor.piece === piece),
      );
  };
  return net.whatIf(pieces, change, look);
}

const width = ({ id }: Finding): number => (id.kind.endsWith('index') ? INDEX_WIDTH : 1);

/**
 * Findings that can't well be right together.
 * @param totals likelihood of all findings without each one
 */
export function conflictsOf(
  net: Propagation,
  findings: readonly Removable[],
  totals: readonly number[],
): Conflict[] {
  const total = net.total();
  const unexpected: { one: Removable; probability: number }[] = [];
  findings.forEach((one, i) => {
    const probability = (total / totals[i]!) * width(one.finding);
    if (probability < UNEXPECTED) unexpected.push({ one, probability });
  });
  return unexpected
    .sort((a, b) => a.probability - b.probability)
    .slice(0, MOST)
    .flatMap(({ one, probability }): Conflict[] => {
      const { finding } = one;
      let best: { partner: Finding; relieved: number } | undefined;
      for (const [i, other] of findings.entries()) {
        const partner = other.finding;
        if (other === one || !partner.limbs.some((limb) => finding.limbs.includes(limb))) continue;
        const given = totals[i]!;
        const neither = without(net, findings, [other, one], () => net.total());
        const relieved = (given / neither) * width(finding);
        if (relieved > (best?.relieved ?? probability * RELIEF)) best = { partner, relieved };
      }
      return best ? [{ finding: finding.id, with: best.partner.id, probability }] : [];
    });
}

/** So many conflicts are named. */
const MOST = 3;
