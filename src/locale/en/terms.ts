import { termsFrom } from '../terms.js';

/** English terms that differ by region or register. British spelling is the default. */
export const terms = termsFrom({
  claudication: { trade: 'claudication', plain: 'pain on walking' },
  oedema: { trade: 'oedema', plain: 'swelling', regions: { 'en-us': 'edema' } },
});
