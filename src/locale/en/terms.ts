import { termsFrom } from '../terms.js';

/** English terms that differ by register. Spelling is British; `american.ts` respells. */
export const terms = termsFrom({
  claudication: { trade: 'claudication', plain: 'pain on walking' },
  oedema: { trade: 'oedema', plain: 'swelling' },
});
