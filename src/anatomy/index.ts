export * from './arteries.js';
export * from './levels.js';
export * from './limbs.js';
export * from './pieces.js';
export * from './sides.js';
export * from './sites.js';
export * from './terminology.js';
