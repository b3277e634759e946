/** What the visits show once their dates are painted: maps and lines. A chunk of its own. */
export { LEAST_CHANGES, scatterOf } from '../../comparison/index.js';
export { smallLayout } from '../../drawing/still/small.js';
export { stillBody, stillPicture } from '../../drawing/still/still-picture.js';
export { timeAxis, trendPlot, visitNear } from '../../drawing/trend-plot.js';
export { VisitLog } from './log.js';
