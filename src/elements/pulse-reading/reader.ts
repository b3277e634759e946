import { Later } from '../common/later.js';

/** The engine, with what draws and tells a reading of it. An examination in which nothing is stated needs none of it. */
export const reader = new Later(() => import('./limbs.js'));
