/** Still pictures of a record, for lists, timelines, print, letters and mail. No DOM; runs in Node. */
export { figureBody, figureSVG } from './drawing/still/figure-svg.js';
export type { FigureLook, FigureOptions } from './drawing/still/still-picture.js';
export { type View, VIEWS } from './drawing/views.js';
