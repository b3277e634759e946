import { type Examination, remembered } from '../examination/index.js';
import { localise, type NetworkReading } from './network/index.js';
import { pressureEvidenceOf } from './pressure-evidence.js';
import { readByRule, type RuleReading } from './rule.js';

/** Both voices on one examination, side by side and never blended. */
export interface Reading {
  readonly rule: RuleReading;
  readonly network: NetworkReading;
}

function read(examination: Examination): Reading {
  return {
    rule: readByRule(examination),
    network: localise(examination, { pressures: pressureEvidenceOf(examination) }),
  };
}

/**
 * Reads an examination by the bedside rule and by the belief network. The same record is read once, however many elements
 * show it.
 */
export const readExamination: (examination: Examination) => Reading = remembered(read);
