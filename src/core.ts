/**
 * What a page or a service calls: the record and its edits, the readings of it, and their words. No DOM; runs in Node. The tables and the
 * parts that the readings are made of stand in `pulse-map/core/tables`.
 */
export {
  type Limb,
  LISTENING_PLACES,
  type Place,
  placeFromKey,
  placeKey,
  type PlaceKey,
  PLACES,
  PULSE_PLACES,
  type Side,
} from './anatomy/index.js';
export { type Comparison, compareExaminations } from './comparison/index.js';
export {
  addMark,
  type Bedside,
  type BedsideTestId,
  type Bruit,
  bruitAt,
  clearLimb,
  clearPlace,
  type Context,
  copyFromOtherSide,
  EditError,
  emptyExamination,
  type Examination,
  type Fault,
  fillFromOtherSide,
  FORMAT,
  formatExamination,
  type Grade,
  GRADES,
  type Inspection,
  isEmptyRecord,
  isLocked,
  isStated,
  type Mark,
  type MarkKind,
  parseExamination,
  parseExaminationText,
  type ParseOptions,
  type Parsed,
  type PatientHistory,
  type Pressures,
  pulseAt,
  type PulseFinding,
  type Reason,
  REASONS,
  removeMarks,
  restNormal,
  type ScaleId,
  setBruit,
  setFields,
  setPulse,
  type Staging,
  unknownFields,
  unstatedPlaces,
} from './examination/index.js';
export { type PressureReading, readPressures } from './pressures/index.js';
export { type BedsideReading, readBedside } from './bedside/index.js';
export {
  type Contact,
  type FlagSettings,
  DEFAULT_TRIAGE_SETTINGS,
  OPEN_CHOICES,
  type Pathway,
  readPathway,
  type RedFlag,
  redFlags,
  setLimbOnset,
  triage,
  type Triage,
  type TriageSettings,
} from './triage/index.js';
export { type LegStages, stageArm, stageLeg } from './staging/index.js';
export {
  localise,
  type NetworkReading,
  readByRule,
  readExamination,
  type Reading,
  type RuleReading,
} from './localisation/index.js';
export { limbLead, ruleLeads, summaryStatements } from './statements/index.js';
export {
  LANGUAGES,
  type LanguageTag,
  type Messages,
  messagesFor,
  type PartMessages,
  registerLanguage,
} from './locale/index.js';
export { partMessagesFor } from './locale/parts.js';
