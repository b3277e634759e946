import type { DigitState } from '../../examination/index.js';
import { termsFrom } from '../terms.js';

/** What is seen of a finger or toe. */
export const digitStates = termsFrom<DigitState>({
  normal: 'normal',
  pale: 'pale',
  blue: 'blue',
  ulcer: { trade: 'ulcer', plain: 'sore' },
  gangrene: { trade: 'gangrene', plain: 'dead tissue' },
});
