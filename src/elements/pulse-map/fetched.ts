import { Later } from '../common/later.js';

/** All that a map fetches after its first paint. */
export const later = new Later(() => import('./later.js'));
