import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeFromKey } from '../../../src/anatomy/index.js';
import {
  ACUTE_CLASSES,
  emptyExamination,
  type Examination,
  pulseAt,
} from '../../../src/examination/index.js';
import {
  type ClassFindings,
  classInterval,
  DEFAULT_TRIAGE_SETTINGS,
  setLimbOnset,
  triage,
  urgencyRank,
} from '../../../src/triage/index.js';
import { countEveryCombination } from './every-combination.js';
import { anyChoices, anyRecord, mirrored, worsenings } from './whole-records.js';

/** Room for a machine that is busy with something else. */
const LONG = 60_000;

describe('every combination of the levels that the rules tell apart', () => {
  it.each([
    ['leg', { combinations: 314_928_000, visited: 60_480, steps: 584_640, withoutOnset: 60_093 }],
    ['arm', { combinations: 629_856_000, visited: 120_960, steps: 1_169_280, withoutOnset: 120_186 }],
  ] as const)(
    '%s: no added or worse sign lowers the urgency; from two signs on, nor does taking the onset away (%j)',
    (kind, expected) => {
      const { lowered, ...counts } = countEveryCombination(kind);
      console.info(
        `${kind}: ${counts.combinations} combinations by ${counts.visited} that differ, ${counts.steps} worse signs, ${counts.withoutOnset} onsets taken away, ${lowered.length} lowered`,
      );
      expect(lowered.slice(0, 5)).toEqual([]);
      expect(counts).toEqual(expected);
    },
    LONG,
  );

  it('no worse sign lowers the least class (2160 combinations of its signs, 13 788 steps)', () => {
    const scales = {
      sensation: [undefined, 'normal', 'digits', 'beyond-digits', 'lost'],
      movement: [undefined, 'normal', 'weak', 'paralysed'],
      arterial: [undefined, 'audible', 'inaudible'],
      venous: [undefined, 'audible', 'inaudible'],
      muscle: [undefined, 'tender', 'tense'],
      fixedMottling: [undefined, true],
      restPain: [undefined, true],
    } as const;
    const names = Object.keys(scales) as (keyof typeof scales)[];
    // For a sign that may be found normal, not tested and normal are equally good: both are worsened by what follows.
    const worse = (name: keyof typeof scales, value: unknown): readonly unknown[] => {
      const levels: readonly unknown[] = scales[name];
      const normal = levels[1] === 'normal' || levels[1] === 'audible';
      return levels.slice(normal && value === undefined ? 2 : levels.indexOf(value) + 1);
    };
    const all = names.reduce<Record<string, unknown>[]>(
      (list, name) => list.flatMap((one) => scales[name].map((value) => ({ ...one, [name]: value }))),
      [{}],
    );
    expect(all).toHaveLength(2160);
    let steps = 0;
    const rank = (findings: object) =>
      ACUTE_CLASSES.indexOf(classInterval(findings as ClassFindings, DEFAULT_TRIAGE_SETTINGS).atLeast);
    for (const findings of all) {
      const { atLeast, atMost } = classInterval(findings as ClassFindings, DEFAULT_TRIAGE_SETTINGS);
      expect(ACUTE_CLASSES.indexOf(atMost)).toBeGreaterThanOrEqual(ACUTE_CLASSES.indexOf(atLeast));
      for (const name of names)
        for (const value of worse(name, findings[name])) {
          steps += 1;
          if (rank({ ...findings, [name]: value }) < rank(findings))
            expect.fail(`${JSON.stringify(findings)}: ${name} ${String(value)} lowers the class`);
        }
    }
    expect(steps).toBe(13_788);
  });
});

describe('whole records', () => {
  it(
    'no added or worse sign lowers the highest flag of any record, whatever was chosen of the open choices',
    () => {
      fc.assert(
        fc.property(anyRecord, fc.nat(), anyChoices, (record, pick, choices) => {
          const before = triage(record, { triage: choices });
          const steps = worsenings(record);
          const step = steps[pick % steps.length];
          if (!step) return;
          const after = triage(step.record(), { triage: choices });
          expect(
            urgencyRank(after.urgency),
            `${step.name}: ${before.urgency} to ${after.urgency}`,
          ).toBeGreaterThanOrEqual(urgencyRank(before.urgency));
        }),
        { numRuns: 200 },
      );
    },
    LONG,
  );

  it(
    'taking the onset of a limb with two signs away never lowers its urgency',
    () => {
      fc.assert(
        fc.property(anyRecord, (record) => {
          for (const { limb, sum, urgency } of triage(record).limbs) {
            if (sum < DEFAULT_TRIAGE_SETTINGS.acute.now) continue;
            const taken = setLimbOnset(record, limb, {
              onset: undefined,
              hours: undefined,
              onsetAt: undefined,
            });
            const { onset: _whole, ...rest } = taken;
            for (const without of [taken, rest as Examination]) {
              const after = triage(without).limbs.find(
                (l) => l.limb.kind === limb.kind && l.limb.side === limb.side,
              );
              // What stood for the whole record may say less of it than the limb's own onset did: it is taken away as well.
              if (without === taken && record.onset === 'chronic') continue;
              expect(urgencyRank(after?.urgency ?? 'none')).toBeGreaterThanOrEqual(urgencyRank(urgency));
            }
          }
        }),
        { numRuns: 60 },
      );
    },
    LONG,
  );

  it(
    'left and right are told alike: the mirrored record raises the mirrored flags',
    () => {
      const told = (record: Examination, flip: boolean) =>
        triage(record)
          .flags.map(({ code, urgency, limb }) => {
            const side = limb && (flip ? (limb.side === 'left' ? 'right' : 'left') : limb.side);
            return [code, urgency, limb?.kind, side].join();
          })
          .sort();
      fc.assert(
        fc.property(anyRecord, (record) => {
          expect(told(mirrored(record), true)).toEqual(told(record, false));
        }),
        { numRuns: 100 },
      );
    },
    LONG,
  );

  it('a sudden onset alone is named as what raised its flag', () => {
    const record = { ...emptyExamination(), history: { arm: { right: { onset: 'sudden' as const } } } };
    expect(triage(record).flags).toMatchObject([
      { code: 'acute-limb-possible', because: [{ code: 'onset-acute' }] },
    ]);
  });

  it(
    'every flag says what raised it, and none is told twice',
    () => {
      fc.assert(
        fc.property(anyRecord, (record) => {
          const { flags, urgency } = triage(record);
          for (const flag of flags) expect(flag.because.length, flag.code).toBeGreaterThan(0);
          const keys = flags.map(({ code, limb }) => `${code} ${limb?.side ?? ''} ${limb?.kind ?? ''}`);
          expect(new Set(keys).size).toBe(keys.length);
          expect(urgency).toBe(flags[0]?.urgency ?? 'none');
        }),
        { numRuns: 100 },
      );
    },
    LONG,
  );

  it(
    'no flag says more than was found: a pulse told as absent or weak is so, and no list of places or digits is empty',
    () => {
      fc.assert(
        fc.property(anyRecord, (record) => {
          for (const { code, because } of triage(record).flags)
            for (const ground of because) {
              if ('places' in ground) expect(ground.places.length, code).toBeGreaterThan(0);
              if ('digits' in ground) expect(ground.digits.length, code).toBeGreaterThan(0);
              if (ground.code !== 'pulses-absent' && ground.code !== 'pulses-reduced') continue;
              for (const key of ground.places) {
                const { grade, doppler } = pulseAt(record, placeFromKey(key)!) ?? {};
                const told = `${code}, ${key}: ${grade}, ${doppler}`;
                if (ground.code === 'pulses-absent') expect(grade ?? doppler, told).toBe('absent');
                else expect(grade === 'reduced' || doppler === 'absent', told).toBe(true);
              }
            }
        }),
        { numRuns: 300 },
      );
    },
    LONG,
  );

  it('pain at rest never takes away what a low toe pressure raised', () => {
    const leg = {
      'dorsalis-pedis': { left: { grade: 'normal' as const } },
      'posterior-tibial': { left: { grade: 'normal' as const } },
    };
    const record: Examination = {
      ...emptyExamination(),
      onset: 'chronic',
      context: { diabetes: false },
      pulses: leg,
      inspection: { leg: { left: { temperature: 'warm', colour: 'normal' } } },
      pressures: { toe: { left: 20 } },
    };
    expect(triage(record).flags).toMatchObject([{ code: 'threatening-pressure', urgency: 'soon' }]);
    const pain: Examination = { ...record, history: { leg: { left: { symptom: 'rest-pain' } } } };
    expect(triage(pain).flags).toMatchObject([{ code: 'chronic-limb-threat', urgency: 'soon' }]);
    const { onset: _asked, ...unasked } = pain;
    expect(triage(unasked).urgency).toBe('soon');
  });

  it('gangrene of a finger counts as gangrene of the hand wherever that does', () => {
    const sore = {
      ...emptyExamination(),
      history: {
        arm: { left: { symptom: 'rest-pain' as const } },
        risks: ['connective-tissue-disease'] as const,
      },
    };
    const urgency = (inspection: object) =>
      triage({ ...sore, inspection: { arm: { left: { ulcer: 'shallow', ...inspection } } } }).urgency;
    expect([urgency({}), urgency({ digits: { second: 'gangrene' } })]).toEqual(['now', 'now']);

    const lined = {
      ...emptyExamination(),
      context: { devices: [{ limb: 'arm', side: 'left', kind: 'arterial-line' }] },
    } as const;
    const told = (inspection: object) =>
      triage({ ...lined, inspection: { arm: { left: inspection } } }).flags.find(
        ({ code }) => code === 'iatrogenic-hand',
      );
    expect(told({ gangrene: 'dry' })?.urgency).toBe('now');
    expect(told({ digits: { second: 'gangrene' } })?.urgency).toBe('now');
  });

  it('an empty record raises nothing and asks nothing', () => {
    expect(triage(emptyExamination())).toMatchObject({ urgency: 'none', flags: [], questions: [] });
  });
});
