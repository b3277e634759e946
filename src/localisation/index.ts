export * from './compare-voices.js';
export * from './network/index.js';
export * from './pressure-evidence.js';
export * from './read.js';
export * from './rule.js';
export * from './whereabouts.js';
