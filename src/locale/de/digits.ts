import type { DigitState } from '../../examination/index.js';
import { termsFrom } from '../terms.js';

/** What is seen of a finger or toe. */
export const digitStates = termsFrom<DigitState>({
  normal: 'normal',
  pale: 'blass',
  blue: 'blau',
  ulcer: { trade: 'Ulkus', plain: 'offene Wunde' },
  gangrene: { trade: 'Gangrän', plain: 'abgestorbenes Gewebe' },
});
