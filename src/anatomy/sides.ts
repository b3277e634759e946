/** The patient's sides. Left and right are always the patient's, never the reader's. */
export const SIDES = ['right', 'left'] as const;
/** A side of the patient, never of the reader. */
export type Side = (typeof SIDES)[number];

/** Where an unpaired structure lies. */
export const LATERALITIES = ['right', 'left', 'midline'] as const;
/** A side of the patient, or the midline. */
export type Laterality = (typeof LATERALITIES)[number];

/** The opposite side; the midline maps to itself. */
export function oppositeSide<L extends Laterality>(side: L): L {
  if (side === 'midline') return side;
  return (side === 'right' ? 'left' : 'right') as L;
}
