import { termsFrom } from '../terms.js';

/** German terms that differ by register. */
export const terms = termsFrom({
  claudication: { trade: 'Claudicatio', plain: 'Schmerz beim Gehen' },
  oedema: { trade: 'Ödem', plain: 'Schwellung' },
});
