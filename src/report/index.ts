export * from './conclusion.js';
export * from './items.js';
export * from './paths.js';
export * from './report.js';
export * from './stages.js';
export * from './weight.js';
export * from './unconfirmed.js';
