export * from './render.js';
export * from './sites-table.js';
export * from './summary.js';
