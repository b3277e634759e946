export * from './network.js';
export * from './rule.js';
