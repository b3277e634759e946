import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstUses } from '../../../src/locale/first-use.js';
import { messagesFor, type Language, type Register, REGISTERS } from '../../../src/locale/index.js';
import { partMessagesFor } from '../../../src/locale/parts.js';
import { LANGUAGE_SAMPLES } from '../../languages/index.js';
import { languageTexts } from '../../tools/language-check.js';

await LANGUAGE_SAMPLES.de.load();

const TAGS = ['en', 'en-US', 'de'] as const;
const VOICES = TAGS.flatMap((tag) => REGISTERS.map((register) => ({ tag, register })));

const wordsOf = (tag: string, register: Register): Language => ({
  ...messagesFor(tag, register),
  ...partMessagesFor(tag, register),
});

/** What is written in short by right: codes on the figure, and citations, which name printed works. */
const NO_SENTENCES =
  /^(anatomy › (codes|sideLetters)|flags › (cite|abbreviations)|(visits|chart) › table › dates)/;
/** Names of societies and of printed guidelines, roman numerals, a file format and the time zone. */
const NAMES = /^(ACC|AHA|ESC|IWGDF|JSON|PARC|TASC|UTC|[IV]+|SVG|PNG|CSV)$/;
const SHORT = /(?<![\p{L}\p{N}])(?:\p{Lu}[\p{Lu}\p{N}₂]+|[Tt]cp?P?O₂|WIfI|pAVK)(?![\p{L}\p{N}])/gu;

const texts = (words: Language) =>
  languageTexts(words, words).told.filter(({ path }) => !NO_SENTENCES.test(path));
const shortIn = (text: string): string[] => (text.match(SHORT) ?? []).filter((one) => !NAMES.test(one));
/** Whether an abbreviation first stands in brackets behind its long form, or before it. */
function spelledOut(text: string, short: string): boolean {
  const at = text.indexOf(short);
  return text.slice(0, at).endsWith('(') || text.slice(at + short.length).startsWith(' (');
}

describe.each(VOICES)('abbreviations in $tag, $register', ({ tag, register }) => {
  const words = wordsOf(tag, register);
  const { abbreviations } = words.flags;

  it('are spelled out at first use in every sentence, as a block would show it', () => {
    const bare = texts(words).flatMap(({ path, said }) => {
      const shown = firstUses(abbreviations)(said);
      return shortIn(shown)
        .filter((short) => !spelledOut(shown, short))
        .map((short) => `${path}: ${short} in "${shown}"`);
    });
    // The panel of pressures begins with both indices in full.
    expect(
      bare.filter((one) => !/^pressures › (bothArms|indexSince|incompressible|threat): /.test(one)),
    ).toEqual([]);
    expect(
      [words.pressures.kinds.ankle, words.pressures.kinds.toe, words.pressures.tcpo2].filter((heading) =>
        shortIn(heading).some((short) => !spelledOut(heading, short)),
      ),
    ).toEqual([]);
  });

  it('stay within brackets of their own', () => {
    const nested = texts(words)
      .map(({ said }) => firstUses(abbreviations)(said))
      .filter((text) => /\([^)]*\(/.test(text));
    expect(nested).toEqual([]);
  });

  if (register === 'plain')
    it('are not used at all', () => {
      const used = texts(words).flatMap(({ path, said }) =>
        shortIn(said).map((short) => `${path}: ${short}`),
      );
      expect(used).toEqual([]);
    });
});

describe('the first use of an abbreviation', () => {
  const forms = partMessagesFor('en').flags.abbreviations;
  const { short, long } = forms.ankleIndex;

  it('is written out and the next is not, within one text and over several', () => {
    const inFull = firstUses(forms);
    expect(inFull('From: ABPI 0.72, below 0.80.')).toBe(`From: ${long} 0.72, below 0.80.`);
    expect(inFull('Not below ABPI 0.60.')).toBe('Not below ABPI 0.60.');
    expect(inFull(`A normal ${long} excludes nothing.`)).toBe('A normal ABPI excludes nothing.');
    expect(firstUses(forms)('ABPI 0.5; ABPI 0.6')).toBe('Ankle-brachial pressure index (ABPI) 0.5; ABPI 0.6');
  });

  it('leaves what is written out already, and words that only contain the letters', () => {
    for (const text of [`No ${long} without a pressure.`, 'ABPIs', 'xABPI', '']) {
      expect(firstUses(forms)(text)).toBe(text);
    }
  });

  it('is told once in any block, and nothing else is changed', () => {
    const parts = fc.constantFrom(
      'left leg cold',
      'ABPI 0.4',
      `${long} 0.5`,
      'TBPI 0.3, ABPI 0.4',
      'TcPO₂ 20 mmHg',
    );
    fc.assert(
      fc.property(fc.array(parts, { maxLength: 8 }), (block) => {
        const inFull = firstUses(forms);
        const shown = block.map(inFull);
        const all = shown.join('|').toLowerCase();
        for (const one of Object.values(forms)) {
          const times = all.split(one.long.toLowerCase()).length - 1;
          expect(times).toBe(block.some((text) => text.includes(one.short)) ? 1 : 0);
        }
        const back = (text: string): string =>
          Object.values(forms).reduce(
            (now, one) => now.replace(new RegExp(one.long.replace(/[()]/g, '\\$&'), 'gi'), one.short),
            text,
          );
        expect(shown.map(back)).toEqual(block.map(back));
        expect(all.indexOf(short.toLowerCase()) < 0 || all.indexOf(long.toLowerCase()) >= 0).toBe(true);
      }),
    );
  });
});
