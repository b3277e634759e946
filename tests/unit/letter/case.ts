/** How the invented examinations of the letters are written down. */
import { restNormal, type Examination, parseExamination } from '../../../src/examination/index.js';
import { examined } from '../../tools/examinations.js';

export interface LetterCase {
  readonly name: string;
  /** An invented name. */
  readonly subject: string;
  readonly record: Examination;
}

/** A record of findings and other fields, checked as one that comes from outside. */
export function record(
  findings: Parameters<typeof examined>[0],
  fields: Partial<Examination>,
  rest: 'rest-normal' | 'rest-not-examined' = 'rest-not-examined',
): Examination {
  const felt = examined(findings);
  const whole = { ...(rest === 'rest-normal' ? restNormal(felt) : felt), ...fields };
  const parsed = parseExamination(JSON.parse(JSON.stringify(whole)));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  return parsed.value;
}

export const at = '2026-10-06T09:40Z';
export const examiner = 'Dr R. Haddad';
export const legs = (right: object, left: object) => ({ leg: { right, left } });
