import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  CALLED_LIMBS,
  CALLED_TEAMS,
  emptyExamination,
  type Examination,
  parseExamination,
  type TeamCall,
} from '../../../src/examination/index.js';
import { partMessagesFor } from '../../../src/locale/parts.js';
import { summaryStatements } from '../../../src/statements/index.js';
import { callsFor, changeCall, recordCall, type RedFlag, triage } from '../../../src/triage/index.js';
import { anyRecord } from './whole-records.js';
import '../../../src/locale/de/register.js';

/** Room for a machine that is busy with something else. */
const LONG = 60_000;
const AT = '2026-11-26T14:05+01:00';

const anyCalls: fc.Arbitrary<readonly TeamCall[]> = fc.array(
  fc.record(
    {
      team: fc.constantFrom(...CALLED_TEAMS),
      at: fc.constantFrom(AT, '2026-11-25T23:59Z'),
      limb: fc.constantFrom(...CALLED_LIMBS),
      whom: fc.constant('Dr A'),
    },
    { requiredKeys: ['team', 'at'] },
  ),
  { maxLength: 12 },
);

/** What a triage says but for the calls. */
const weighed = (examination: Examination) => {
  const { urgency, flags, questions } = triage(examination);
  return { urgency, questions, flags: flags.map(({ calls: _noted, ...flag }: RedFlag) => flag) };
};

const cold: Examination = {
  ...emptyExamination(),
  inspection: { leg: { left: { colour: 'pale', temperature: 'cold' } } },
};
const [flag] = triage(cold).flags as [RedFlag];

describe('a call that was noted', () => {
  it(
    'weighs nothing: noting, changing or removing calls leaves every flag, urgency and question as it was',
    () => {
      fc.assert(
        fc.property(anyRecord, anyCalls, (record, calls) => {
          expect(weighed({ ...record, calls })).toEqual(weighed(record));
        }),
        { numRuns: 100 },
      );
    },
    LONG,
  );

  it(
    'stands with every flag whose team was called about that limb, and with no other',
    () => {
      fc.assert(
        fc.property(anyRecord, (record) => {
          for (const one of triage(record).flags.slice(0, 2)) {
            const noted = recordCall(record, one, AT);
            const after = triage(noted).flags;
            const shown = after.filter(({ calls }) => calls?.some(({ at }) => at === AT));
            expect(shown.map(({ code }) => code)).toContain(one.code);
            for (const other of shown) {
              expect(other.limb).toEqual(one.limb);
              expect(callsFor(noted, other)).toEqual(callsFor(noted, one));
            }
          }
        }),
        { numRuns: 30 },
      );
    },
    LONG,
  );

  it('is read back, corrected and removed; without it the record is what it was', () => {
    const noted = recordCall(cold, flag, AT, 'Vascular registrar');
    expect(noted.calls).toEqual([{ team: 'vascular', at: AT, limb: 'left leg', whom: 'Vascular registrar' }]);
    const read = parseExamination(JSON.parse(JSON.stringify(noted)));
    expect(read.ok && read.value.calls).toEqual(noted.calls);
    const later = changeCall(noted, noted.calls![0]!, '2026-11-26T14:20+01:00');
    expect(later.calls?.map(({ at }) => at)).toEqual(['2026-11-26T14:20+01:00']);
    const { format: _with, ...without } = changeCall(later, later.calls![0]!, undefined);
    const { format: _before, ...before } = cold;
    expect(without).toEqual(before);
    expect(changeCall(cold, noted.calls![0]!, undefined)).toBe(cold);
  });

  it('takes no time that is none', () => {
    expect(() => recordCall(cold, flag, '14:05')).toThrow(RangeError);
    expect(() => recordCall(cold, flag, '2026-02-30T14:05Z')).toThrow(RangeError);
  });

  it.each([
    ['en', 'Left leg: vascular team called 26 Nov 2026, 14:05 (Dr A).'],
    ['de', 'Linkes Bein: Gefäßchirurgie gerufen: 26.11.2026, 14:05 (Dr A).'],
  ])('is said first in the summary, in %s', (tag, line) => {
    const [first] = partMessagesFor(tag).whole.summary(summaryStatements(recordCall(cold, flag, AT, 'Dr A')));
    expect(first?.lines[0]).toBe(line);
  });
});
