import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PULSE_PLACES } from '../../../src/anatomy/index.js';
import { parseExamination, pulseAt } from '../../../src/examination/index.js';
import { emptyExamination } from '../../../src/examination/types/record.js';
import { shippedLesson } from '../../../src/lesson/index.js';
import { truthOf } from '../../../src/practice/hidden.js';
import {
  actsOf,
  conclude,
  DIFFICULTIES,
  formatCode,
  type HiddenPatient,
  informationOf,
  leftUndone,
  lessonPatient,
  levelsFor,
  markRound,
  marksFor,
  type MarkSheet,
  parseCode,
  pathsOf,
  perform,
  PRACTICE_ACT_IDS,
  PRACTICE_ACTS,
  PRACTICE_CAUSES,
  presentationOf,
  recordKnown,
  REST_BEFORE_CUFFS,
  revealed,
  rightAnswer,
  secondsAt,
  secondsFor,
  simulatedPatient,
  startRound,
} from '../../../src/practice/index.js';
import { URGENCY_ORDER } from '../../../src/triage/index.js';
import {
  answersTo,
  bestAnswer,
  PATIENTS,
  patients,
  roundOf,
  rounds,
  someActs,
} from '../../tools/practice-rounds.js';

describe('a hidden patient', () => {
  it('is the same for the same code, and told by no other code', () => {
    for (const code of ['4817', 'clear-7', 'hard-forearm-hand-3']) {
      const request = parseCode(code);
      if (!request || 'lesson' in request) throw new Error(code);
      const [one, other] = [simulatedPatient(request), simulatedPatient(request)];
      expect(truthOf(one)).toEqual(truthOf(other));
      for (const act of PRACTICE_ACTS) expect(one.find(act)).toEqual(other.find(act));
    }
    expect(truthOf(simulatedPatient({ number: 1, difficulty: 'usual' }))).not.toEqual(
      truthOf(simulatedPatient({ number: 2, difficulty: 'usual' })),
    );
  });

  it('has a truth that is a valid record, in which something of every kind of act is found', () => {
    const kinds = new Set<string>();
    for (const patient of PATIENTS) {
      const parsed = parseExamination(truthOf(patient).record, { strict: true });
      expect(parsed.ok ? [] : parsed.faults, patient.code).toEqual([]);
      for (const act of PRACTICE_ACTS) if (Object.keys(patient.find(act)).length > 2) kinds.add(act.kind);
    }
    expect([...kinds].sort()).toEqual([...new Set(PRACTICE_ACTS.map(({ kind }) => kind))].sort());
  });

  it('finds the same in whatever order, and with every act a record that is valid', () => {
    fc.assert(
      fc.property(patients, someActs, fc.nat(), (patient, ids, turn) => {
        const turned = [...ids.slice(turn % (ids.length || 1)), ...ids.slice(0, turn % (ids.length || 1))];
        const one = recordKnown(patient, roundOf(patient, ids));
        expect(recordKnown(patient, roundOf(patient, turned))).toEqual(one);
        const parsed = parseExamination(one, { strict: true });
        expect(parsed.ok ? [] : parsed.faults).toEqual([]);
      }),
      { numRuns: 25 },
    );
  });

  it('knows nothing before the first act, and of an act nothing that belongs to another', () => {
    const [patient] = PATIENTS;
    expect(recordKnown(patient!, startRound(patient!))).toEqual(emptyExamination(patient!.scale));
    const paths = PRACTICE_ACTS.flatMap(pathsOf).map((path) => path.join(' '));
    expect(new Set(paths).size).toBe(paths.length);
  });

  it('errs, but not where the patient is clear', () => {
    const errs = (patient: HiddenPatient): boolean => {
      const known = recordKnown(patient, roundOf(patient, PRACTICE_ACT_IDS));
      return PULSE_PLACES.some(
        (place) => pulseAt(known, place)?.grade !== pulseAt(truthOf(patient).record, place)?.grade,
      );
    };
    expect(PATIENTS.filter(({ difficulty }) => difficulty === 'clear').some(errs)).toBe(false);
    expect(PATIENTS.filter(({ difficulty }) => difficulty !== 'clear').filter(errs).length).toBeGreaterThan(
      4,
    );
  });
});

describe('codes', () => {
  it('come back as they were, for every difficulty and level', () => {
    for (const difficulty of DIFFICULTIES) {
      for (const level of [undefined, ...levelsFor(difficulty)]) {
        const request = { number: 4817, difficulty, ...(level && { level }) };
        expect(parseCode(formatCode(request))).toEqual(request);
      }
    }
    expect(parseCode('lesson-3')).toEqual({ lesson: 3 });
    expect(parseCode(' Hard 12 ')).toEqual({ number: 12, difficulty: 'hard' });
  });

  it('are refused where they name no patient', () => {
    for (const text of [
      '',
      '0',
      '10000',
      'easy-3',
      'clear-forearm-hand-1',
      'carotid-4',
      '12-hard',
      'lesson-0',
    ])
      expect(parseCode(text), text).toBeUndefined();
  });
});

describe('a round', () => {
  it('holds nothing of the truth before the answer, nor does the patient', () => {
    for (const patient of PATIENTS) {
      const round = roundOf(patient, PRACTICE_ACT_IDS);
      // The acts are what the learner chose; all else is shown.
      expect(PRACTICE_ACT_IDS).toEqual(round.acts);
      const seen = JSON.stringify([patient, { ...round, acts: [] }]);
      const { lesions, patient: physics } = truthOf(patient);
      for (const { levels } of lesions) for (const level of levels) expect(seen).not.toContain(level);
      for (const { piece } of physics?.lesions ?? []) expect(seen).not.toContain(piece);
      for (const cause of PRACTICE_CAUSES) expect(seen).not.toContain(`"${cause}"`);
      expect(() => revealed(patient, round)).toThrow('without an answer');
      expect(() => markRound(patient, round)).toThrow('without an answer');
      expect(() => presentationOf(patient, round, 'no pulses', 'en')).toThrow('without an answer');
    }
  });

  it('shows no truth for the answer of another patient', () => {
    const [one, other] = PATIENTS as [HiddenPatient, HiddenPatient];
    expect(() => revealed(one, conclude(startRound(other), {}))).toThrow();
  });

  it('does an act once, forgets none, and examines nothing after the answer', () => {
    const [patient] = PATIENTS;
    const once = perform(startRound(patient!), 'feel left femoral');
    expect(perform(once, 'feel left femoral')).toBe(once);
    const ended = conclude(once, {});
    expect(perform(ended, 'feel right femoral')).toBe(ended);
    expect(conclude(ended, { urgency: 'now' })).toBe(ended);
    expect(() => perform(once, 'feel left nowhere')).toThrow(RangeError);
  });

  it('takes time with every act, and the rest before the cuffs once', () => {
    fc.assert(
      fc.property(someActs, fc.constantFrom(...PRACTICE_ACT_IDS), (ids, more) => {
        const [patient] = PATIENTS;
        const round = roundOf(patient!, ids);
        if (!ids.includes(more)) expect(secondsAt(perform(round, more))).toBeGreaterThan(secondsAt(round));
      }),
    );
    const cuffs = actsOf(roundOf(PATIENTS[0]!, ['cuff arm right', 'cuff arm left']));
    expect(secondsFor(cuffs)).toBe(REST_BEFORE_CUFFS + 60 + 60);
  });
});

describe('marks', () => {
  it('are full for the right answer on a whole examination that ignores no caution', () => {
    for (const patient of PATIENTS) {
      const sheet = marksFor(truthOf(patient), PRACTICE_ACTS, bestAnswer(patient));
      for (const { part, points, of } of sheet.parts)
        if (part !== 'thrift') expect([patient.code, part, points]).toEqual([patient.code, part, of]);
      expect(sheet.missed).toEqual([]);
    }
  });

  it('are nothing without an answer, whatever was examined, and nothing without an examination, whatever was answered', () => {
    fc.assert(
      fc.property(rounds, ({ patient, ids, answer }) => {
        expect(marksFor(truthOf(patient), actsOf(roundOf(patient, ids)), {}).points).toBe(0);
        expect(marksFor(truthOf(patient), [], answer).points).toBe(0);
      }),
      { numRuns: 25 },
    );
  });

  it('of side and level never come from a limb whose arteries nobody examined', () => {
    fc.assert(
      fc.property(rounds, ({ patient, ids, answer }) => {
        const told = ids.filter((id) => !/^(feel|listen|doppler|cuff)/.test(id));
        const { parts } = marksFor(truthOf(patient), actsOf(roundOf(patient, told)), answer);
        for (const { part, points } of parts) if (part === 'side' || part === 'level') expect(points).toBe(0);
      }),
      { numRuns: 25 },
    );
  });

  it(
    'never rise by leaving out the act that shows a red flag, nor by answering it less urgently',
    { timeout: 60_000 },
    () => {
      let [dropped, milder] = [0, 0];
      const missedBy = ({ missed }: MarkSheet): ReadonlySet<string> =>
        new Set(missed.map(({ code, limb }) => code + JSON.stringify(limb)));
      const flagged = PATIENTS.filter((patient) => rightAnswer(truthOf(patient)).flags.length);
      const sides = ['right', 'left'];
      const telling = [
        'ask onset',
        'ask walking',
        ...['feel', 'doppler'].flatMap((kind) =>
          sides.flatMap((side) => [`${kind} ${side} dorsalis-pedis`, `${kind} ${side} posterior-tibial`]),
        ),
        ...sides.flatMap((side) => [`look ${side} leg`, `feeling ${side} leg`, `feel ${side} femoral`]),
        ...['arm', 'ankle', 'toe'].flatMap((cuff) => sides.map((side) => `cuff ${cuff} ${side}`)),
      ];
      const urgentRounds = fc.constantFrom(...flagged).chain((patient) =>
        fc.record({
          patient: fc.constant(patient),
          ids: fc.subarray(telling),
          answer: answersTo(patient),
        }),
      );
      fc.assert(
        fc.property(urgentRounds, ({ patient, ids, answer }) => {
          const truth = truthOf(patient);
          const acts = actsOf(roundOf(patient, ids));
          const { urgency, flags } = rightAnswer(truth);
          expect(flags.length).toBeGreaterThan(0);
          const whole = marksFor(truth, acts, answer);
          const before = missedBy(whole);
          acts.forEach((_, at) => {
            const without = marksFor(truth, acts.toSpliced(at, 1), answer);
            const after = missedBy(without);
            if (after.size === before.size || ![...before].every((one) => after.has(one))) return;
            dropped++;
            expect(without.points).toBeLessThanOrEqual(whole.points);
          });
          const right = marksFor(truth, acts, { ...answer, urgency });
          for (const wrong of URGENCY_ORDER.slice(0, URGENCY_ORDER.indexOf(urgency))) {
            milder++;
            expect(marksFor(truth, acts, { ...answer, urgency: wrong }).points).toBeLessThanOrEqual(
              right.points,
            );
          }
        }),
        { numRuns: 15, seed: 7 },
      );
      expect(dropped).toBeGreaterThan(2);
      expect(milder).toBeGreaterThan(15);
    },
  );

  it('hold a raised or cuffed limb against whoever did it where it waits for a call', () => {
    const patient = PATIENTS.find(({ code }) => code === 'clear-15')!;
    const [side] = rightAnswer(truthOf(patient)).lesions[0]!.limb.split(' ');
    const round = roundOf(patient, [`test elevation ${side}`, `cuff ankle ${side}`, 'exercise']);
    const { cautions } = markRound(patient, conclude(round, { urgency: 'now', first: 'raise-and-warm' }));
    expect(cautions.map(({ code }) => code)).toEqual(['raised', 'cuff', 'walked', 'first', 'late-call']);
    expect(markRound(patient, conclude(startRound(patient), {})).cautions).toEqual([]);
  });
});

describe('information', () => {
  it('is told by every act in the round’s order, never less than nothing, and none by an act of no bearing', () => {
    const patient = PATIENTS.find(({ code }) => code === 'clear-11')!;
    const [side] = rightAnswer(truthOf(patient)).lesions[0]!.limb.split(' ');
    const round = roundOf(patient, [`feel ${side} femoral`, `feel ${side} popliteal`, 'circulation']);
    const told = informationOf(patient, round);
    expect(told.map(({ act }) => act)).toEqual(round.acts);
    expect(told.every((one) => one.told >= 0)).toBe(true);
    expect(told[1]!.told).toBeGreaterThan(told[0]!.told);
    expect(told[2]!.told).toBeLessThan(0.02);
  });

  it('left undone is what the engine would do next, and nothing that was done', () => {
    const patient = PATIENTS.find(({ code }) => code === 'clear-11')!;
    const [side] = rightAnswer(truthOf(patient)).lesions[0]!.limb.split(' ');
    const round = roundOf(patient, [`feel ${side} dorsalis-pedis`]);
    const left = leftUndone(patient, round) ?? [];
    expect(left.length).toBeGreaterThan(0);
    expect(left.every(({ act, gain }) => gain > 0 && PRACTICE_ACT_IDS.includes(act))).toBe(true);
    expect(left.some(({ act }) => round.acts.includes(act))).toBe(false);
  });
});

describe('a presentation', () => {
  it('is held against the patient: right, wrong, claimed without examining, missed', async () => {
    const patient = lessonPatient(await shippedLesson('superficial-femoral'), 1);
    const known = truthOf(patient).record.pulses;
    const side = known?.popliteal?.left?.grade === 'absent' ? 'left' : 'right';
    const other = side === 'left' ? 'right' : 'left';
    const round = conclude(
      roundOf(patient, [
        `feel ${side} femoral`,
        `feel ${side} popliteal`,
        `feel ${side} dorsalis-pedis`,
        `feel ${other} femoral`,
      ]),
      {},
    );
    const { findings } = presentationOf(
      patient,
      round,
      `${side} femoral normal, ${side} popliteal absent. ${other} femoral absent. ${other} radial normal.`,
      'en',
    );
    const verdicts = Object.fromEntries(
      findings.map(({ verdict, place }) => [`${place.side} ${place.site}`, verdict]),
    );
    expect(verdicts).toEqual({
      [`${side} femoral`]: 'right',
      [`${side} popliteal`]: 'right',
      [`${other} femoral`]: 'wrong',
      [`${other} radial`]: 'claimed',
      [`${side} dorsalis-pedis`]: 'missed',
    });
  });
});

describe('the patient of a lesson', () => {
  it('has the answer of its author as the truth, and does not tell it', async () => {
    const lesson = await shippedLesson('several-levels');
    const patient = lessonPatient(lesson, 4);
    expect(patient.code).toBe('lesson-4');
    expect(
      rightAnswer(truthOf(patient)).lesions.map(({ limb, levels }) => ({ limb, level: levels[0] })),
    ).toEqual(lesson.answer.lesions);
    expect(JSON.stringify(patient)).not.toContain(lesson.answer.text.en!);
  });
});
