export * from './change.js';
export * from './compare.js';
