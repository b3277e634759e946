export * from './acute.js';
export * from './chronic.js';
export {
  type Derived,
  finalStage,
  MISSING_CODES,
  type MissingCode,
  NOTE_CODES,
  type NoteCode,
} from './derived.js';
export * from './findings.js';
export * from './fontaine.js';
export * from './rutherford.js';
export * from './sources.js';
export * from './stage.js';
export * from './stage-sources.js';
export * from './wifi.js';
