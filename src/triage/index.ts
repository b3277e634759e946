export * from './acute-class.js';
export * from './calls.js';
export * from './change.js';
export * from './compression.js';
export * from './compression-limits.js';
export * from './disease.js';
export * from './cuffs.js';
export {
  FLAG_CODES,
  FLAGS,
  type FlagClass,
  type FlagClock,
  type FlagCode,
  type RedFlag,
  type Team,
  TEAMS,
} from './flag.js';
export * from './facts.js';
export * from './flag-sources.js';
export * from './flags.js';
export { hasGraftAt } from './grafts.js';
export { type Ground, type GroundCode, type ThreatMeasure } from './ground.js';
export * from './infection.js';
export * from './limb.js';
export * from './onset.js';
export * from './onset-edits.js';
export * from './pathway.js';
export * from './points.js';
export * from './questions.js';
export type { HistoryFacts, InspectionFacts, OwnStages, StagedKind, StagedLimb } from './record.js';
export * from './settings.js';
export * from './sources.js';
export * from './unchecked.js';
export * from './urgency.js';
export * from './wounds.js';
export * from './observations.js';
