import type { Examination } from '../../examination/index.js';
import { readByRule } from '../../localisation/index.js';
import type { Messages } from '../../locale/index.js';
import { ruleLeads } from '../../statements/index.js';

/** The bedside rule's sentences about lesions; empty when it finds none. */
export function lesionSentences(examination: Examination, { rule }: Messages): readonly string[] {
  const reading = readByRule(examination);
  const any = Object.values(reading).some(({ outcome }) => outcome === 'lesion');
  return any ? ruleLeads(reading).map(rule.lead) : [];
}
