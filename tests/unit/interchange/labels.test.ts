import { describe, expect, it } from 'vitest';
import { FIELDS } from '../../../src/interchange/fields.js';
import { labelOf, wordOf } from '../../../src/interchange/labels.js';
import { languageOf } from '../../../src/interchange/speech.js';
import '../../../src/locale/de/register.js';

/** Words that read the same in every language, and signs that only the other kind of limb can have. */
const BARE = /^pressures\.unit\.|^inspection\.(leg\.injurySigns\.elbow-|arm\.injurySigns\.knee-)/;

describe.each(['en', 'de'])('the fields of the record in %s', (tag) => {
  const language = languageOf(tag);

  it('have a name each', () => {
    expect(FIELDS.filter(({ code }) => !labelOf(language, code)).map(({ code }) => code)).toEqual([]);
  });

  it('have a word for each of their words', () => {
    const all = FIELDS.flatMap(({ code, words }) => words.map((word) => [code, word] as const));
    const bare = all.filter(([code, word]) => !BARE.test(`${code}.${word}`) && !wordOf(language, code, word));
    expect(bare.map(([code, word]) => `${code}.${word}`)).toEqual([]);
  });
});
