/** A finished examination as data, its parts in the order in which one reads it, and how its record was amended; no DOM, runs in Node. */
export {
  type Amendment,
  AMENDMENT_KINDS,
  type AmendmentKind,
  amend,
  isInError,
  MOST_AMENDMENTS,
  RECORD_STATES,
  type RecordState,
  type RecordStatus,
  statusOf,
} from './examination/index.js';
export * from './report/index.js';
