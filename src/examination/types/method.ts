/**
 * Choices of method and limits where sources disagree, by their published names. They stand in the record, so that it reads tomorrow as it
 * read today; sources and figures stand in the tables of `pressures`.
 */
export const METHODS = {
  /** Standard of the ankle index. */
  standard: ['2016', '2024'],
  /** Which ankle pressure, and which arm pressure, an index is taken from. */
  ankle: ['higher', 'lower'],
  arm: ['higher', 'mean'],
  incompressible: ['1.40', '1.30'],
  severeIndex: ['0.40', '0.30'],
  toe: ['0.70', '0.60'],
  wrist: ['1.00', '0.90', '0.85'],
  finger: ['0.80', '0.75'],
  armDifference: ['10', '15', 'over-15', 'over-20'],
  wristDifference: ['30', '20'],
  armDrop: ['10', '20'],
  drop: ['30', '20'],
  sideDifference: ['20', '30'],
  exercise: ['more-than', 'at-least'],
  /** Criterion of limb threat. */
  threat: ['gvg-2019', 'parc-2015', 'consensus-1991', 'tasc-2', 'esc-2017', 'iwgdf-2023', 'acc-aha'],
} as const;

/** The choices made for a record; one left out is the default of this version. */
export type Method = { readonly [M in keyof typeof METHODS]?: (typeof METHODS)[M][number] };
