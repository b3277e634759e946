// The sheet after a round, over many patients: of every level, sound ones, and both languages.
import { render } from '@lit-labs/ssr';
import { collectResult } from '@lit-labs/ssr/lib/render-result.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { renderSheet } from '../../../src/elements/pulse-practice/sheet.js';
import { COUNTS_FROM } from '../../../src/flow/index.js';
import { flagWordsFor } from '../../../src/locale/flags.js';
import { messagesFor } from '../../../src/locale/index.js';
import { partMessagesFor } from '../../../src/locale/parts.js';
import '../../../src/locale/de/register.js';
import { shippedLesson, SHIPPED_LESSON_IDS } from '../../../src/lesson/index.js';
import { truthOf } from '../../../src/practice/hidden.js';
import {
  conclude,
  type HiddenPatient,
  informationOf,
  leftUndone,
  lessonPatient,
  levelsFor,
  marksFor,
  PRACTICE_ACT_IDS,
  PRACTICE_ACTS,
  rightAnswer,
  simulatedPatient,
  truthMarks,
} from '../../../src/practice/index.js';
import { triage } from '../../../src/triage/index.js';
import { answersTo, roundOf } from '../../tools/practice-rounds.js';

const speechIn = (tag: 'en' | 'de') => ({ messages: messagesFor(tag), parts: partMessagesFor(tag), tag });

/** Two of every level, six of any kind of each difficulty, and all lessons. */
const PATIENTS: readonly HiddenPatient[] = [
  ...levelsFor('hard').flatMap((level) =>
    [1, 2].map((number) => simulatedPatient({ number, difficulty: 'hard', level })),
  ),
  ...(['usual', 'hard'] as const).flatMap((difficulty) =>
    [14, 15, 20, 23, 25, 45].map((number) => simulatedPatient({ number, difficulty })),
  ),
  ...(await Promise.all(
    SHIPPED_LESSON_IDS.map(async (id, i) => lessonPatient(await shippedLesson(id), i + 1)),
  )),
];
const rounds = fc.constantFrom(...PATIENTS).chain((patient) =>
  fc.record({
    patient: fc.constant(patient),
    ids: fc.oneof(fc.constant([]), fc.uniqueArray(fc.constantFrom(...PRACTICE_ACT_IDS), { maxLength: 16 })),
    answer: answersTo(patient),
    tag: fc.constantFrom('en' as const, 'de' as const),
  }),
);

async function sheetOf(
  patient: HiddenPatient,
  round: Parameters<typeof renderSheet>[1],
  tag: 'en' | 'de',
): Promise<string> {
  const out = await collectResult(render(renderSheet(patient, round, 60, speechIn(tag))));
  return out.replace(/<!--.*?-->/gs, '').replace(/\s+/g, ' ');
}
const plain = (text: string): string =>
  text
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
const escaped = (text: string): string => text.replace(/&/g, '&amp;').replace(/'/g, '&#39;');

describe('the sheet after a round', () => {
  it('has something to say in every section, in both languages, whatever was done and answered', async () => {
    await fc.assert(
      fc.asyncProperty(rounds, async ({ patient, ids, answer, tag }) => {
        const sheet = await sheetOf(patient, conclude(roundOf(patient, ids), answer), tag);
        const sections = sheet.split('<h4>').slice(1);
        expect(sections.length).toBeGreaterThanOrEqual(4);
        for (const section of sections) {
          const [heading = '', rest = ''] = section.split('</h4>');
          const content = plain(rest.split(/<details|<p class="hint">/)[0]!);
          expect([patient.code, heading, content.length > 5]).toEqual([patient.code, heading, true]);
        }
        const { practice: words } = partMessagesFor(tag);
        for (const heading of [words.flags, words.cautions, words.told, words.rule, words.expected])
          expect(sheet).toContain(heading);
        expect(sheet).not.toMatch(/undefined|NaN|\[object/);
      }),
      { numRuns: 60 },
    );
  });

  it('leaves no red flag of the patient unsaid, found or missed, nor a lesion that shows', async () => {
    let flags = 0;
    for (const patient of PATIENTS) {
      const { record } = truthOf(patient);
      for (const ids of [[], PRACTICE_ACT_IDS]) {
        const sheet = await sheetOf(patient, conclude(roundOf(patient, ids), {}), 'en');
        for (const flag of triage(record).flags) {
          flags++;
          const said = escaped(flagWordsFor('en').heading(flag));
          expect(sheet.replaceAll('&quot;', '"'), `${patient.code} ${flag.code}`).toContain(said);
        }
        for (const { limb, levels } of rightAnswer(truthOf(patient)).lesions) {
          const { limbs, levels: names } = messagesFor('en').anatomy;
          expect(plain(sheet)).toContain(`${limbs[limb]}: ${names[levels[0]]}`);
        }
      }
    }
    expect(flags).toBeGreaterThan(30);
  });
});

describe('a patient’s red flags', () => {
  it('are all missed by whoever does nothing, and none by a whole examination that answers "at once"', () => {
    for (const patient of PATIENTS) {
      const truth = truthOf(patient);
      expect(marksFor(truth, [], {}).missed).toEqual(rightAnswer(truth).flags);
      expect(marksFor(truth, PRACTICE_ACTS, { urgency: 'now' }).missed, patient.code).toEqual([]);
    }
  });
});

describe('what acts told', () => {
  it('is never below nothing, and what is left undone was not done and is expected to tell', () => {
    fc.assert(
      fc.property(rounds, ({ patient, ids }) => {
        const round = roundOf(patient, ids);
        const told = informationOf(patient, round);
        expect(told.map(({ act }) => act)).toEqual(round.acts);
        for (const one of told) expect(one.told >= 0 && Number.isFinite(one.told)).toBe(true);
        for (const { act, gain } of leftUndone(patient, round) ?? []) {
          expect(round.acts).not.toContain(act);
          expect(gain).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 40 },
    );
  });
});

describe('the truth on the map', () => {
  it('marks every lesion that counts, of leg and arm, and nothing else; of a sound patient nothing', () => {
    const arteries = new Set<string>();
    for (const patient of PATIENTS) {
      const truth = truthOf(patient);
      const lesions = (truth.patient?.lesions ?? []).filter(({ narrowing }) => narrowing >= COUNTS_FROM);
      const marks = truthMarks(truth);
      expect(marks.length, patient.code).toBe(lesions.length);
      marks.forEach(({ kind, pieces, limb }, i) => {
        const { piece: name, narrowing } = lesions[i]!;
        expect(kind).toBe(narrowing >= 100 ? 'block' : 'narrowing');
        for (const { piece } of pieces) expect(name).toContain(piece.artery);
        expect(pieces.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 9);
        arteries.add(limb.split(' ')[1]!);
      });
      if (truth.cause === 'none') expect(marks).toEqual([]);
    }
    expect([...arteries].sort()).toEqual(['arm', 'leg']);
  });
});
