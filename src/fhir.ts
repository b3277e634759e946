/** Records as FHIR bundles and back, R4 and R5. No DOM; loaded by nothing else, since it carries every word of the record. */
export * from './interchange/index.js';
