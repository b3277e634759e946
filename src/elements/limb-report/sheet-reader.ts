import { Later } from '../common/later.js';

/** Everything a report shows; the page that never shows or prints one needs none of it. */
export const reportSheet = new Later(() => import('./sheet.js'));
