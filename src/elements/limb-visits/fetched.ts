import { Later } from '../common/later.js';
import type * as Part from './later.js';

/** What follows the first paint. */
export const later = new Later(() => import('./later.js'));
export type LaterPart = typeof Part;
