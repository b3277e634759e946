/** Still pictures of a record, for lists, timelines, print, letters and mail. No DOM; runs in Node. */
export { figureBody, type FigureLook, type FigureOptions, figureSVG } from './drawing/still/figure-svg.js';
export { type View, VIEWS } from './drawing/views.js';
