import { type Examination, remembered } from '../examination/index.js';
import { localise, type NetworkReading } from './network/index.js';
import { pressureEvidenceOf } from './pressure-evidence.js';
import { readByRule, type RuleReading } from './rule.js';

/** Both voices on one examination, side by side and never blended. */
export interface Reading {
  readonly rule: RuleReading;
  readonly network: NetworkReading;
}

function read(examination: Examination, earlier?: Examination): Reading {
  return {
    rule: readByRule(examination),
    network: localise(examination, {
      pressures: pressureEvidenceOf(examination),
      ...(earlier && { earlier }),
    }),
  };
}

const alone = remembered((examination) => read(examination));
const beside = new WeakMap<Examination, (examination: Examination) => Reading>();

/**
 * Reads an examination by the bedside rule and by the belief network. The same record is read once, however many elements
 * show it.
 * @param earlier an earlier examination of the same patient: stable findings support, new ones date the event
 */
export function readExamination(examination: Examination, earlier?: Examination): Reading {
  if (!earlier) return alone(examination);
  const known = beside.get(earlier) ?? remembered((one) => read(one, earlier));
  beside.set(earlier, known);
  return known(examination);
}
