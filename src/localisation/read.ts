import type { Examination } from '../examination/index.js';
import { localise, type NetworkReading } from './network/index.js';
import { readByRule, type RuleReading } from './rule.js';

/** Both voices on one examination, side by side and never blended. */
export interface Reading {
  readonly rule: RuleReading;
  readonly network: NetworkReading;
}

const READINGS = new WeakMap<Examination, Reading>();

/**
 * Reads an examination by the bedside rule and by the belief network. The same record is read once, however many elements
 * show it.
 */
export function readExamination(examination: Examination): Reading {
  let reading = READINGS.get(examination);
  if (!reading) {
    reading = { rule: readByRule(examination), network: localise(examination) };
    READINGS.set(examination, reading);
  }
  return reading;
}
