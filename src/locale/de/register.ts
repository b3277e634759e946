/** Registers German for every element of the page, and exports its words. */
import { registerLanguage } from '../languages.js';
import { de } from './index.js';

registerLanguage('de', de);

export { de };
