import type { PressureSettings } from '../pressures/index.js';

/** Criteria of a threatened limb by the names under which they were published; only the consensus is named in words. */
export const threatNames = (consensus: string): Record<PressureSettings['threat'], string> => ({
  'gvg-2019': 'Global Vascular Guidelines 2019',
  'parc-2015': 'PARC 2015',
  'consensus-1991': consensus,
  'tasc-2': 'TASC II',
  'esc-2017': 'ESC 2017',
  'iwgdf-2023': 'IWGDF 2023',
  'acc-aha': 'ACC/AHA',
});
