import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Place, placeKey } from '../../../src/anatomy/index.js';
import {
  bruitAt,
  emptyExamination,
  type Examination,
  isLocked,
  pulseAt,
  restNormal,
} from '../../../src/examination/index.js';
import { itemsOf } from '../../../src/report/index.js';
import { redFlags } from '../../../src/triage/index.js';
import {
  findingAt,
  LETTER_LENGTHS,
  letterOf,
  type LetterSentence,
  type LetterStatement,
} from '../../../src/letter/index.js';
import { summaryOf, summaryText } from '../../../src/letter.js';
import { LANGUAGES } from '../../../src/locale/list.js';
import { REGISTERS } from '../../../src/locale/index.js';
import { partMessagesFor } from '../../../src/locale/parts.js';
import '../../../src/locale/de/register.js';
import { WHOLE } from '../../tools/word-records.js';
import { anyRecord } from './arbitraries.js';

type Length = (typeof LETTER_LENGTHS)[number];

/** Records of every kind, the same in each run: reading one takes a while. */
const RECORDS: readonly Examination[] = [WHOLE, ...fc.sample(anyRecord, { numRuns: 14, seed: 2026 })];
const made = new Map<Examination, Map<Length, LetterSentence[]>>();

function sentencesOf(record: Examination, length: Length): LetterSentence[] {
  const known = made.get(record) ?? new Map<Length, LetterSentence[]>();
  made.set(record, known);
  const found = known.get(length) ?? letterOf(record, { length }).flatMap(({ sentences }) => sentences);
  known.set(length, found);
  return found;
}

/** The places a statement names because something was found there. */
function placesOf(says: LetterStatement): readonly Place[] {
  if ('places' in says && says.code !== 'unread-places') return says.places;
  if (says.code === 'place-note') return [says.place];
  if (says.code !== 'pulses') return [];
  const side = says.region === 'trunk' ? 'midline' : says.region.startsWith('left') ? 'left' : 'right';
  return says.groups.flatMap(({ sites }) => sites.map((site): Place => ({ site, side })));
}

/** Statements whose sides are those of the findings they come from. */
const SIDED: readonly LetterStatement['code'][] = [
  'complaint',
  'no-complaint',
  'pulses',
  'all-pulses',
  'normal-places',
  'thrill',
  'expansile',
  'doppler',
  'bruit',
  'inspection',
  'bedside',
  'could-not',
  'could-not-inspect',
];

describe('what is said of any record', () => {
  it('comes from findings that stand in the record', () => {
    for (const record of RECORDS) {
      for (const length of LETTER_LENGTHS)
        for (const { says, from } of sentencesOf(record, length))
          for (const path of from)
            expect(findingAt(record, path), `${length} ${says.code} ${path}`).not.toBe(undefined);
    }
  });

  it('names no site at which nothing is recorded', () => {
    for (const record of RECORDS) {
      for (const length of LETTER_LENGTHS)
        for (const { says, from } of sentencesOf(record, length))
          for (const place of placesOf(says)) {
            expect(pulseAt(record, place) ?? bruitAt(record, place), placeKey(place)).toBeDefined();
            expect(from.some((path) => path.includes(`.${place.site}.${place.side}`))).toBe(true);
          }
    }
  });

  it('leaves no abnormal finding out of a letter', () => {
    for (const record of RECORDS) {
      const told = sentencesOf(record, 'letter').flatMap(({ from }) => from);
      const untold = Object.values(itemsOf(record))
        .flat()
        .filter(({ weight }) => weight === 'abnormal')
        .flatMap(({ from }) => from)
        .filter((path) => !told.includes(path) && !isLocked(record, path.split('.')));
      expect(untold).toEqual([]);
    }
  });

  it('tells what could not be examined, with its reason, in all but the line', () => {
    for (const record of RECORDS) {
      for (const length of LETTER_LENGTHS) {
        if (length === 'line') continue;
        const told = sentencesOf(record, length).flatMap(({ from }) => from);
        const untold = Object.values(itemsOf(record))
          .flat()
          .filter(({ weight }) => weight === 'could-not')
          .flatMap(({ from }) => from)
          .filter((path) => !told.includes(path));
        expect(untold, length).toEqual([]);
      }
    }
  });

  it('puts every red flag before everything else', () => {
    for (const record of RECORDS) {
      const flags = redFlags(record);
      const { heading } = partMessagesFor('en').flags;
      for (const length of LETTER_LENGTHS) {
        const codes = sentencesOf(record, length)
          .map(({ says }) => says.code)
          .filter((code) => code !== 'status');
        const warning = codes.map((code) => /^(flag|more-flags)/.test(code));
        if (flags.length) expect(warning[0], length).toBe(true);
        else expect(warning.includes(true), length).toBe(false);
        if (length === 'line') continue;
        const text = summaryText(summaryOf(record, { length }));
        const spoken = summaryOf(record, { length }).paragraphs.flatMap(({ sentences }) =>
          sentences.filter(({ code }) => code.startsWith('flag')),
        );
        expect(spoken.every(({ text: said }) => text.includes(said))).toBe(true);
        // An abbreviation stands in full where it is first used, so headings are compared without brackets.
        const bare = (said: string) => said.replace(/\([^()]*\)/g, '').replace(/\s+/g, ' ');
        for (const flag of flags) expect(bare(text)).toContain(bare(heading(flag)).trim());
      }
    }
  });

  it('says right and left only of what was found on the right and on the left', () => {
    for (const record of RECORDS) {
      const { said } = partMessagesFor('en').letter;
      for (const { says, from } of sentencesOf(record, 'letter')) {
        if (!SIDED.includes(says.code)) continue;
        const text = said(says).replace(/“[^”]*”|note: .*/g, '');
        const both = /\b(both|either|on both sides)\b/i.test(text);
        for (const side of ['right', 'left']) {
          const spoken = both || new RegExp(`\\b${side}\\b`, 'i').test(text);
          const found = from.some((path) => path.split('.').includes(side));
          expect(spoken, `${side}: ${text} (${from.join(', ')})`).toBe(found);
        }
      }
    }
  });

  it('calls nothing normal where something is not', () => {
    for (const record of RECORDS) {
      const clear = sentencesOf(record, 'line').some(({ says }) => says.code === 'nothing-abnormal');
      const items = Object.values(itemsOf(record)).flat();
      if (clear) expect(items.filter(({ weight }) => weight === 'abnormal')).toEqual([]);
      if (clear) expect(redFlags(record)).toEqual([]);
    }
  });

  it('says in a line what pressures point to where every pulse is normal', () => {
    const pulses = restNormal(emptyExamination());
    const arms: Examination = { ...pulses, pressures: { brachial: { right: 150, left: 105 } } };
    const cuffs: Examination = { ...pulses, pressures: { 'high-thigh': { left: 150 }, calf: { left: 90 } } };
    for (const record of [arms, cuffs]) {
      const said = sentencesOf(record, 'line').map(({ says }) => says.code);
      expect(said).toContain('verdict');
      expect(said).not.toContain('nothing-abnormal');
    }
  });

  it('is the same each time, and the same sentences in every language and register', () => {
    RECORDS.slice(0, 8).forEach((record, i) => {
      const length = LETTER_LENGTHS[i % LETTER_LENGTHS.length]!;
      const again = JSON.parse(JSON.stringify(record)) as Examination;
      const outline = (language: string, register: 'trade' | 'plain') =>
        summaryOf(record, { length, language, register });
      expect(summaryOf(again, { length })).toEqual(summaryOf(record, { length }));
      const counts = LANGUAGES.flatMap(({ tag }) =>
        REGISTERS.map((register) => {
          const { paragraphs } = outline(tag, register);
          const texts = paragraphs.flatMap(({ sentences }) => sentences.map(({ text }) => text));
          for (const text of texts)
            expect(text, text).toMatch(/^(?!.*(undefined|\[object|function|NaN| {2}|\.\.))[\s\S]+$/);
          return [
            ...new Set(paragraphs.flatMap(({ sentences }) => sentences.flatMap(({ from }) => from))),
          ].sort();
        }),
      );
      for (const one of counts) expect(one).toEqual(counts[0]);
    });
  });
});
