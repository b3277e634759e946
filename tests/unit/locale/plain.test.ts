import { describe, expect, it } from 'vitest';
import { messagesFor, type Language, REGISTERS } from '../../../src/locale/index.js';
import { partMessagesFor } from '../../../src/locale/parts.js';
import { ALL_SAMPLES, LANGUAGE_SAMPLES } from '../../languages/index.js';
import { languageTexts, type Told } from '../../tools/language-check.js';

await LANGUAGE_SAMPLES.de.load();

const wordsOf = (tag: string, register: (typeof REGISTERS)[number]): Language => ({
  ...messagesFor(tag, register),
  ...partMessagesFor(tag, register),
});

/**
 * Citations behind the mark of a verdict; abbreviations with their long forms, which serve the trade; and faults of a record,
 * which name fields for whoever wrote it; and lessons and practice, which teach the trade and have no plain words.
 */
const NO_SPEECH = /^(flags › (cite|abbreviations)|examination › fault|lesson › |lessonEditor › |practice › )/;

/** Every sample in plain words, beside what the trade says for it. */
const told = (tag: string): Told[] =>
  languageTexts(wordsOf(tag, 'trade'), wordsOf(tag, 'plain')).told.filter(
    ({ path }) => !NO_SPEECH.test(path),
  );

/** Numbers, each with its unit. */
const NUMBER = /\d+(?:[.,]\d+)?(?:[\s\u00a0-]?(?:mmHg|kPa|%|°C|°|cm|mm|MHz|min|s|h|m)(?![\p{L}]))?/gu;
/** Classes and stages by their signs. */
const CLASS = /\b(?:III|IIa|IIb|II|IV|I)\b|\b(?:class|Klasse) [A-D]\b/gi;

type Measure = (text: string, what: RegExp) => string;
const found: Measure = (text, what) =>
  (text.match(what) ?? [])
    .map((one) => one.toLowerCase().replace(/[\s\u00a0-]/g, ''))
    .sort()
    .join(', ');
/** How many; a language may decline them. */
const count: Measure = (text, what) => String((text.match(what) ?? []).length);
const differing = (all: readonly Told[], what: RegExp, by: Measure = found): string[] =>
  all
    .filter(({ said, meant }) => by(said, what) !== by(meant, what))
    .map(({ path, said, meant }) => `${path}: "${said}" for "${meant}"`);

/** Where one register tells two things apart that are one in the other. */
function merged(all: readonly Told[]): string[] {
  const known = new Map<string, string>();
  return all.flatMap(({ path, said, meant }) =>
    [
      [`${path} trade ${meant}`, said],
      [`${path} plain ${said}`, meant],
    ].flatMap(([key = '', other = '']) => {
      const before = known.get(key) ?? other;
      known.set(key, before);
      return before === other ? [] : [`${key}: "${before}" and "${other}"`];
    }),
  );
}

describe.each(ALL_SAMPLES)('the plain register of $english', ({ tag, plain }) => {
  const all = told(tag);

  it('holds every number with its unit, and no other', () => {
    expect(differing(all, NUMBER)).toEqual([]);
  });

  it('holds the same sides as the trade does', () => {
    for (const side of plain.sides) expect(differing(all, side, count)).toEqual([]);
  });

  it('holds the same classes and stages', () => {
    expect(differing(all, CLASS)).toEqual([]);
  });

  it('tells apart what the trade tells apart, and no more: grades, bands, urgencies and acts among them', () => {
    expect(merged(all)).toEqual([]);
  });

  it('holds no word of the trade', () => {
    const trade = all.filter(({ said }) => plain.trade.test(said));
    expect(trade.map(({ path, said }) => `${path}: "${said}"`)).toEqual([]);
  });

  it('differs from the trade in many words, which do hold words of the trade', () => {
    expect(all.filter(({ said, meant }) => said !== meant).length).toBeGreaterThan(all.length / 4);
    expect(all.filter(({ meant }) => plain.trade.test(meant)).length).toBeGreaterThan(500);
  });
});

describe.each(ALL_SAMPLES)('the words of $english', ({ tag, notes }) => {
  it.each(REGISTERS)('hold no note of those who wrote the tables: %s', (register) => {
    const words = wordsOf(tag, register);
    const noted = languageTexts(words, words).told.filter(
      ({ path, said }) => path !== 'flags › cite' && notes.test(said),
    );
    expect(noted.map(({ path, said }) => `${path}: "${said}"`)).toEqual([]);
  });
});

describe('a plain register that is none', () => {
  const [one, other] = [
    { path: 'a', said: 'left leg: 3', meant: 'left leg: 3' },
    { path: 'a', said: 'right leg: 4', meant: 'right leg: 4' },
  ];

  it('is found out when it loses a number, a unit, a side or a class', () => {
    const saying = (said: string, meant: string): Told[] => [{ path: 'a', said, meant }];
    expect(differing(saying('low', 'below 50 mmHg'), NUMBER)).toHaveLength(1);
    expect(differing(saying('below 50', 'below 50 mmHg'), NUMBER)).toHaveLength(1);
    expect(differing(saying('the leg', 'the left leg'), LANGUAGE_SAMPLES.en.plain.sides[1])).toHaveLength(1);
    expect(differing(saying('das Bein', 'das linke Bein'), LANGUAGE_SAMPLES.de.plain.sides[1])).toHaveLength(
      1,
    );
    expect(differing(saying('class II', 'class IIb'), CLASS)).toHaveLength(1);
  });

  it('is found out when it says two things alike, or one thing in two ways', () => {
    expect(merged([one, other] as Told[])).toEqual([]);
    expect(merged([one, { ...other, said: one?.said }] as Told[])).toHaveLength(1);
    expect(merged([one, { ...one, said: 'else' }] as Told[])).toHaveLength(1);
  });
});
