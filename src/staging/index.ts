export * from './acute.js';
export * from './chronic.js';
export {
  type Derived,
  finalStage,
  type Ground,
  GROUND_CODES,
  type GroundCode,
  MISSING_CODES,
  type MissingCode,
  NOTE_CODES,
  type NoteCode,
} from './derived.js';
export {
  ACUTE_HOURS,
  type LimbFindings,
  limbFindings,
  type StagedKind,
  type StagedLimb,
} from './findings.js';
export * from './flags.js';
export * from './fontaine.js';
export * from './infection.js';
export * from './rutherford.js';
export * from './sources.js';
export * from './stage.js';
export * from './wifi.js';
