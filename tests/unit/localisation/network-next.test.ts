import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PULSE_PLACES, type PulseSiteId } from '../../../src/anatomy/index.js';
import {
  emptyExamination,
  type Examination,
  type Grade,
  GRADES,
  setPulse,
} from '../../../src/examination/index.js';
import { type ActKind, localise, type NetworkReading } from '../../../src/localisation/index.js';
import { flagQuestions } from '../../../src/statements/index.js';
import { triage } from '../../../src/triage/index.js';

const leg = (record: Examination, grades: Partial<Record<PulseSiteId, Grade>>): Examination =>
  Object.entries(grades).reduce(
    (one, [site, grade]) => setPulse(one, { site: site as PulseSiteId, side: 'right' } as never, { grade }),
    record,
  );

/** Femoral felt, nothing below it, atrial fibrillation: an embolus or an old occlusion, by the onset. */
const FIBRILLATION: Examination = leg(
  { ...emptyExamination(), context: { ageBand: '60-79' }, history: { rhythm: 'atrial-fibrillation' } },
  { femoral: 'normal', popliteal: 'absent', 'dorsalis-pedis': 'absent', 'posterior-tibial': 'absent' },
);

function read(record: Examination, can?: readonly ActKind[]): NetworkReading & { status: 'read' } {
  const reading = localise(record, { ...(can && { can }) });
  if (reading.status !== 'read') throw new Error(reading.status);
  return reading;
}
const kinds = (record: Examination, can?: readonly ActKind[]): string[] =>
  read(record, can).next.map(({ act }) => act.kind);

const records = fc
  .tuple(
    fc.uniqueArray(fc.tuple(fc.constantFrom(...PULSE_PLACES), fc.constantFrom(...GRADES)), {
      minLength: 2,
      maxLength: 10,
      selector: ([{ site, side }]) => `${side} ${site}`,
    }),
    fc.constantFrom(undefined, 'acute' as const, 'chronic' as const, 'unknown' as const),
    fc.constantFrom(undefined, 'lost' as const, 'normal' as const),
  )
  .map(([pulses, onset, sensation]): Examination => {
    const start: Examination = {
      ...emptyExamination(),
      ...(onset && { onset }),
      ...(sensation && { inspection: { leg: { right: { sensation } } } }),
    };
    return pulses.reduce((one, [place, grade]) => setPulse(one, place, { grade }), start);
  });

describe('The onset as the next act', () => {
  it('is asked for where it decides between an embolus and an old occlusion', () => {
    expect(kinds(FIBRILLATION)).toContain('onset');
  });

  it('is never asked for where the record says it, or that nobody can tell, or the form cannot take it', () => {
    for (const onset of ['acute', 'chronic', 'unknown'] as const) {
      expect(kinds({ ...FIBRILLATION, onset })).not.toContain('onset');
    }
    expect(kinds(FIBRILLATION, ['feel', 'listen'])).not.toContain('onset');
  });

  it('stands among the others by what it is worth, whatever was found', () => {
    fc.assert(
      fc.property(records, (record) => {
        const { next } = read(record);
        next.forEach(({ worth, gain, act }, i) => {
          expect(gain).toBeGreaterThanOrEqual(worth);
          expect(worth).toBeLessThanOrEqual(next[i - 1]?.worth ?? Infinity);
          if (act.kind === 'onset') expect(record.onset).toBeUndefined();
        });
      }),
      { numRuns: 25 },
    );
  });
});

describe('What a red flag asks', () => {
  const THREATENED: Examination = {
    ...FIBRILLATION,
    inspection: { leg: { right: { sensation: 'lost', temperature: 'cold' } } },
  };

  it('begins with the onset of a cold numb pulseless leg', () => {
    const asked = flagQuestions(THREATENED, read(THREATENED));
    expect(asked[0]).toEqual({ code: 'onset', limb: { kind: 'leg', side: 'right' } });
  });

  it('is asked of examined limbs only, of what the form takes only, and never without a flag', () => {
    let asking = 0;
    fc.assert(
      fc.property(records, (record) => {
        const reading = localise(record, { detail: 'posterior' });
        if (reading.status !== 'read') throw new Error(reading.status);
        const { flags, questions } = triage(record);
        const asked = flagQuestions(record, reading);
        if (flags.length === 0) expect(asked).toEqual([]);
        if (asked.length > 0) asking++;
        for (const { limb } of asked) {
          if (limb) expect(reading.limbs[`${limb.side} ${limb.kind}`].examined).toBe(true);
        }
        expect(
          asked.every((one) => questions.includes(one) || questions.some(({ code }) => code === one.code)),
        ).toBe(true);
        expect(flagQuestions(record, reading, [])).toEqual([]);
        for (const { code } of flagQuestions(record, reading, ['onset'])) expect(code).toBe('onset');
      }),
      { numRuns: 50 },
    );
    expect(asking).toBeGreaterThan(5);
  });
});
