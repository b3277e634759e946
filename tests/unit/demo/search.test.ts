import { describe, expect, it } from 'vitest';
import { PATIENTS, VISITS } from '../../../demo/clinic/samples.js';
import { searched } from '../../../demo/clinic/search.js';
import type { Visit } from '../../../demo/clinic/types.js';
import { parseExamination } from '../../../src/examination/index.js';
import { partMessagesFor } from '../../../src/locale/parts.js';
import { summaryStatements } from '../../../src/statements/index.js';
import { LEAVES, recordWith } from '../../tools/record-fields.js';

const [patient] = PATIENTS;
if (!patient) throw new Error('no patient');
const visitOf = (record: unknown): Visit => ({
  id: 'x',
  patientId: patient.id,
  fields: { date: '2026-05-01', pulses: JSON.stringify(record) },
  savedAt: '2026-05-01T10:00Z',
});

const PARTS = [
  'calls',
  'onset',
  'history',
  'inspection',
  'context',
  'circulation',
  'pressures',
  'pulses',
  'bedside',
];
const leavesOf = (part: string) =>
  LEAVES.filter(({ path }) => path[0] === part && path.at(-1) !== 'unit' && path.at(-1) !== 'limit');

describe('the search of the demo', () => {
  it('knows more than 500 fields', () => {
    expect(PARTS.flatMap(leavesOf).length).toBeGreaterThan(500);
  });

  it.each(PARTS)('finds every field of %s by the words of the summary', (part) => {
    const { whole } = partMessagesFor('en');
    const missed = leavesOf(part).flatMap(({ path, value }) => {
      const record = recordWith(path, value);
      const parsed = parseExamination(record);
      if (!parsed.ok) throw new Error(path.join('.'));
      const lines = whole.summary(summaryStatements(parsed.value)).flatMap((part) => part.lines);
      const last = lines.at(-1);
      return last && searched(patient, [visitOf(record)], last) ? [] : [path.join('.')];
    });
    expect(missed).toEqual([]);
  });

  it('wants all words in one visit, whatever their case and order', () => {
    const foot = recordWith(['inspection', 'leg', 'left', 'probeToBone'], true);
    const arm = recordWith(['history', 'arm', 'right', 'dizzyOnUse'], true);
    const visits = [visitOf(foot), visitOf(arm)];
    expect(searched(patient, visits, 'BONE left')).toHaveLength(1);
    expect(searched(patient, visits, 'bone dizzy')).toBeUndefined();
  });

  it('finds a flag, a patient by name, and nothing in a record that cannot be read', () => {
    const flagged = VISITS.filter(({ patientId }) => patientId === 'okafor');
    expect(searched(patient, flagged, 'acute limb ischaemia')?.length).toBeGreaterThan(0);
    expect(searched(patient, [], patient.name)).toEqual([]);
    expect(searched(patient, [{ ...visitOf({}), fields: { pulses: '{' } }], 'pulse')).toBeUndefined();
  });
});
