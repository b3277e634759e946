export * from './examine.js';
export * from './findings/index.js';
export * from './generate/chance.js';
export * from './generate/examiner.js';
export * from './patient.js';
export * from './simulate.js';
export * from './pulse/traces.js';
