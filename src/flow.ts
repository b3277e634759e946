/** The simulated patient: blood flow and pulse waves, and what an examiner finds of them. No DOM; loaded by nothing else. */
export * from './flow/index.js';
export * from './flow/network-json.js';
export * from './flow/read.js';
export { patientJsonSchema } from './flow/schema.js';
