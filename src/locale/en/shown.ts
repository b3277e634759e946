import { examination } from './examination.js';
import { form, map } from './map.js';
import { places } from './places.js';

/** English as far as an empty map shows it: all that is fetched before its first paint. */
export const enShown = { anatomy: places, examination, form, map };
