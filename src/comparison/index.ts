export * from './change.js';
export * from './changed-places.js';
export * from './compare.js';
export * from './trends.js';
export * from './visits.js';
