import type { Examination } from '../../examination/index.js';
import { anythingGraded, readByRule } from '../../localisation/index.js';
import { type PracticeActId, practiceActOf } from '../../practice/index.js';
import { ruleLeads } from '../../statements/index.js';
import { findingsSaid, type Speech } from '../pulse-lesson/said.js';

export { findingsSaid, type Speech };

/** Bedside time as it is shown. */
export const timeSaid = (seconds: number, { parts }: Speech): string =>
  parts.practice.time(Math.floor(seconds / 60), seconds % 60);

export function actSaid(id: PracticeActId, { parts }: Speech): string {
  const act = practiceActOf(id);
  return act ? parts.practice.act(act) : id;
}

/** What a record says, in one line; that nothing is recorded where it says nothing. */
export function foundSaid(record: Examination, speech: Speech): string {
  const lines = findingsSaid(record, speech).map(({ text }) => text);
  return lines.length ? lines.join(' ') : speech.parts.practice.nothingFound;
}

/** What the bedside rule says of the pulses of a record; nothing where none was graded. */
export function ruleSaid(record: Examination, { messages }: Speech): readonly string[] {
  return anythingGraded(record) ? ruleLeads(readByRule(record)).map((lead) => messages.rule.lead(lead)) : [];
}
