export * from './compose.js';
export { findingAt } from './recorded.js';
export * from './types.js';
