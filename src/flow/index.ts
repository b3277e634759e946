export * from './examine.js';
export * from './findings/index.js';
export * from './generate/chance.js';
export * from './generate/examiner.js';
export { COUNTS_FROM, type Pattern, PATTERNS } from './generate/frequencies.js';
export * from './generate/random.js';
export * from './patient.js';
export * from './simulate.js';
export * from './pulse/traces.js';
