import { describe, expect, it } from 'vitest';
import { emptyExamination, parseExamination } from '../../../src/examination/index.js';

const read = (fields: object) => parseExamination({ ...emptyExamination(), ...fields }, { strict: true });
const leg = (left: object) => ({ inspection: { leg: { left } } });

describe('the fields of an acute limb', () => {
  it.each<[string, object]>([
    ['an ulcer of known cause and size', leg({ ulcer: 'deep', ulcerCause: 'mixed', ulcerSizeMm: 12 })],
    ['the cause of an ulcer of one toe', leg({ digits: { first: 'ulcer' }, ulcerCause: 'arterial' })],
    ['infection said not to be deep', leg({ infection: ['pus'], deepInfection: false })],
    ['signs of injury looked for and not there', leg({ injurySigns: [] })],
    ['a blood pressure', { circulation: { shock: false, systolic: 120, diastolic: 80, heartRate: 70 } }],
    ['all symptoms elsewhere denied', { history: { elsewhere: [] } }],
    [
      'a time of onset',
      { history: { arm: { right: { onsetAt: '2026-05-01T10:30+02:00', onset: 'unknown' } } } },
    ],
    ['a frostbitten hand, time unknown', { context: { coldInjury: { arm: { left: {} } } } }],
  ])('%s is taken', (_title, fields) => {
    expect(read(fields).ok).toBe(true);
  });

  it.each<[string, object, string]>([
    ['a cause without an ulcer', leg({ ulcer: 'none', ulcerCause: 'venous' }), 'ulcerCause'],
    ['a size without an ulcer', leg({ ulcerSizeMm: 12 }), 'ulcerSizeMm'],
    ['a diastolic above the systolic', { circulation: { systolic: 80, diastolic: 120 } }, 'diastolic'],
    ['a time that is none', { history: { leg: { left: { onsetAt: 'yesterday' } } } }, 'onsetAt'],
    ['the same sign twice', leg({ injurySigns: ['near-artery', 'near-artery'] }), 'injurySigns'],
    ['cold fingers of a leg', { history: { leg: { left: { coldFingers: true } } } }, 'coldFingers'],
    ['an access without a side', { context: { access: [{ kind: 'fistula' }] } }, 'side'],
  ])('%s is refused, with the field', (_title, fields, field) => {
    const parsed = read(fields);
    expect(parsed.ok ? [] : parsed.faults.map(({ path }) => path.at(-1))).toContain(field);
  });
});
