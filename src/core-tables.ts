/**
 * Everything the core stands on: anatomy, lists of words, schemas, tables with their sources, and each part of a reading on its own. No
 * DOM; runs in Node. Names may change in a minor version, unlike those of `pulse-map/core`.
 */
export * from './anatomy/index.js';
export * from './examination/index.js';
export * from './pressures/index.js';
export * from './bedside/index.js';
export * from './triage/index.js';
export * from './staging/index.js';
export * from './comparison/index.js';
export * from './localisation/index.js';
export * from './statements/index.js';
export * from './locale/index.js';
export * from './locale/parts.js';
