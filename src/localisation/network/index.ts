export type { ActId } from './acts.js';
export type { FindingId, Muscle, PressureEvidence } from './evidence.js';
export type { Assumption } from './firmness.js';
export * from './reading.js';
export { parseTables, tablesSchema } from './schema.js';
export { SOURCES, type SourceId } from './sources.js';
export { TABLES } from './tables.js';
export { CAUSES, type Cause, type State, type Tables } from './types.js';
