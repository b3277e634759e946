import type { Side } from '../../anatomy/index.js';
import type { IndexReading } from '../../pressures/index.js';

/** Whether an index was worked out from the pressure at a site: that of the limb, or of the arm it is divided by. */
export function isUsed(indices: readonly IndexReading[], site: string, side: Side): boolean {
  return indices.some(
    ({ value, numerator, denominator }) =>
      value !== undefined &&
      [...(numerator ? [numerator] : []), ...(denominator?.from ?? [])].some(
        (used) => used.site === site && used.side === side,
      ),
  );
}
