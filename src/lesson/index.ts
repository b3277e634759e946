export * from './answer.js';
export * from './findings.js';
export * from './lesson.js';
export * from './nameless.js';
export * from './read.js';
export { lessonJsonSchema } from './schema.js';
export { SEQUENCE, STEP_IDS, stepIdOf } from './steps.js';
export * from './text.js';
export * from './shipped/index.js';
