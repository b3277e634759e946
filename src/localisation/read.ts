import type { Examination } from '../examination/index.js';
import { localise, type NetworkReading } from './network/index.js';
import { readByRule, type RuleReading } from './rule.js';

/** Both voices on one examination, side by side and never blended. */
export interface Reading {
  readonly rule: RuleReading;
  readonly network: NetworkReading;
}

/** How many readings are kept. Each record of a long undo history would else hold its own. */
const KEPT = 12;
/** The readings asked for last, the latest first. */
const READINGS: { readonly examination: Examination; readonly reading: Reading }[] = [];

function read(examination: Examination): Reading {
  return { rule: readByRule(examination), network: localise(examination) };
}

/**
 * Reads an examination by the bedside rule and by the belief network. The same record is read once, however many elements
 * show it.
 */
export function readExamination(examination: Examination): Reading {
  const at = READINGS.findIndex((kept) => kept.examination === examination);
  const [known] = at < 0 ? [] : READINGS.splice(at, 1);
  const reading = known?.reading ?? read(examination);
  READINGS.unshift({ examination, reading });
  READINGS.length = Math.min(READINGS.length, KEPT);
  return reading;
}
