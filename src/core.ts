/** The core: anatomy, record, reading and words. No DOM; runs in Node. */
export * from './anatomy/index.js';
export * from './examination/index.js';
export * from './pressures/index.js';
export * from './bedside/index.js';
export * from './triage/index.js';
export * from './staging/index.js';
export * from './localisation/index.js';
export * from './statements/index.js';
export * from './locale/index.js';
export * from './locale/parts.js';
