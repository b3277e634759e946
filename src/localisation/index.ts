export * from './rule.js';
