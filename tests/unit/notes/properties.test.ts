import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { oppositeSide } from '../../../src/anatomy/index.js';
import { SCALE_IDS } from '../../../src/examination/index.js';
import { LANGUAGES } from '../../../src/locale/list.js';

import { chosenFindings, type NoteFinding, readNote } from '../../../src/notes/index.js';
import { fold } from '../../../src/notes/fold.js';
import { tokensOf } from '../../../src/notes/tokens.js';
import { vocabularyOf } from '../../../src/notes/vocabulary.js';
import { type NoteItem, readNoteItems } from '../../notes/score.js';

/* Notes invented, common practice. */
const NOTES = ['notes', 'held-back', 'more'].flatMap((name) =>
  readNoteItems(new URL(`../../notes/${name}.json`, import.meta.url).pathname),
);
const TAGS = LANGUAGES.map(({ tag }) => tag);

const key = ({ part, place, patch }: NoteFinding): string =>
  `${part} ${place.side} ${place.site} ${JSON.stringify(patch)}`;
const found = ({ text, scale, language }: Pick<NoteItem, 'text' | 'scale' | 'language'>): string[] =>
  [...new Set(chosenFindings(readNote(text, { scale, language })).map(key))].sort();

const mirrored = (finding: NoteFinding): NoteFinding =>
  ({ ...finding, place: { ...finding.place, side: oppositeSide(finding.place.side) } }) as NoteFinding;

/** Sides by their words, each beside its opposite. */
const OPPOSITES: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  en: [
    ['right', 'left'],
    ['rt', 'lt'],
    ['r', 'l'],
    ['rll', 'lll'],
    ['rle', 'lle'],
  ],
  de: [
    ['rechts', 'links'],
    ['re', 'li'],
    ['rechte', 'linke'],
    ['rechter', 'linker'],
    ['rechten', 'linken'],
    ['rechtes', 'linkes'],
    ['r', 'l'],
  ],
};

/** The same note of the other side, with the case of each word kept. */
function swapped({ text, language }: NoteItem): string {
  const pairs = new Map(
    OPPOSITES[language]!.flatMap(
      ([a, b]) =>
        [
          [a, b],
          [b, a],
        ] as const,
    ),
  );
  return text.replace(/(?<![bB]\/)\p{L}+/gu, (word) => {
    const other = pairs.get(word.toLowerCase());
    if (!other) return word;
    if (word === word.toUpperCase()) return other.toUpperCase();
    return word[0] === word[0]!.toUpperCase() ? other[0]!.toUpperCase() + other.slice(1) : other;
  });
}

describe('every note', () => {
  it.each(NOTES.map((item) => [item.id, item] as const))(
    'mirrored gives mirrored findings: %s',
    (_, item) => {
      const reading = chosenFindings(readNote(item.text, item));
      expect(found({ ...item, text: swapped(item) })).toEqual(
        [...new Set(reading.map(mirrored).map(key))].sort(),
      );
    },
  );

  it('reads the same in capitals, in small letters and with wider spaces', () => {
    for (const item of NOTES) {
      const own = found(item);
      expect(found({ ...item, text: item.text.toUpperCase() }), item.text).toEqual(own);
      expect(found({ ...item, text: item.text.toLowerCase() }), item.text).toEqual(own);
      expect(found({ ...item, text: `  ${item.text.replaceAll(' ', '   ')}  ` }), item.text).toEqual(own);
    }
  }, 60_000);

  it('keeps its findings when a sentence about something else follows', () => {
    const ASIDE = {
      en: ['Lungs clear, abdomen soft.', 'BP 120/80, HR 72.', 'He lives alone with two cats.'],
      de: ['Lunge frei, Abdomen weich.', 'RR 120/80, HF 72.', 'Lebt allein mit zwei Katzen.'],
    };
    for (const item of NOTES) {
      const own = found(item);
      for (const aside of ASIDE[item.language]) {
        expect(found({ ...item, text: `${item.text}\n${aside}` }), aside).toEqual(own);
      }
    }
  }, 60_000);

  it('points only at its own text', () => {
    for (const item of NOTES) {
      const { findings, doubts, unread } = readNote(item.text, item);
      for (const { start, end } of [...findings, ...doubts].flatMap(({ spans }) => spans).concat(unread)) {
        expect(start >= 0 && start < end && end <= item.text.length).toBe(true);
      }
    }
  });
});

describe('whole statements', () => {
  const CLAUSES = {
    en: [
      'Left femoral 2+.',
      'Right popliteal absent.',
      'Right foot pulses absent.',
      'Bruit over the left carotid.',
      'Left radial weak.',
      'Left DP not assessable because of a dressing.',
    ],
    de: [
      'A. femoralis links kräftig.',
      'A. poplitea rechts fehlt.',
      'Fußpulse rechts nicht tastbar.',
      'Strömungsgeräusch über der linken Carotis.',
      'A. radialis links abgeschwächt.',
      'ADP links wegen Verband nicht beurteilbar.',
    ],
  };
  it.each(TAGS)('may stand in any order: %s', (language) => {
    const clauses = CLAUSES[language];
    const own = found({ text: clauses.join(' '), scale: '0-3', language });
    expect(own).toHaveLength(7);
    fc.assert(
      fc.property(fc.shuffledSubarray(clauses, { minLength: clauses.length }), (shuffled) => {
        expect(found({ text: shuffled.join(' '), scale: '0-3', language })).toEqual(own);
      }),
    );
  });

  const PAST = {
    en: ['previously', 'last year', 'before the operation', 'in his father'],
    de: ['früher', 'letztes Jahr', 'vor der Operation', 'beim Vater'],
  };
  const SAID = {
    en: [
      'left femoral absent',
      'right DP 2+',
      'no foot pulses on the left',
      'bruit over the right groin',
      'all pulses of both legs normal',
    ],
    de: [
      'A. femoralis links fehlend',
      'ADP rechts kräftig',
      'keine Fußpulse links',
      'Strömungsgeräusch über der rechten Leiste',
      'alle Beinpulse bds. normal',
    ],
  };
  it.each(TAGS)('of the past or of kin say nothing: %s', (language) => {
    for (const past of PAST[language]) {
      for (const said of SAID[language]) {
        for (const text of [`${past} ${said}`, `${said} ${past}`, `${past}, ${said}.`]) {
          expect(found({ text, scale: '0-3', language }), text).toEqual([]);
        }
      }
    }
  });

  const NO_BRUIT = {
    en: [
      'no bruit over the left femoral',
      'left femoral: no bruit',
      'no left femoral bruit',
      'left femoral bruit absent',
      'left femoral without bruit',
    ],
    de: [
      'kein Strömungsgeräusch über der linken Leiste',
      'Leiste links kein Strömungsgeräusch',
      'linke Leiste ohne Strömungsgeräusch',
      'A. femoralis links: kein Geräusch',
    ],
  };
  it.each(TAGS)('never make a bruit of none: %s', (language) => {
    for (const text of NO_BRUIT[language]) {
      expect(found({ text, scale: '0-3', language }), text).toEqual(['bruits left femoral {"bruit":"none"}']);
    }
  });
});

/** One slip in 43 by default, since all take minutes; `EVERY_SLIP=1` tries them all. */
const EVERY = process.env.EVERY_SLIP === '1';

describe('one slip of the hand', () => {
  const felt = (findings: readonly NoteFinding[]): Map<string, boolean> =>
    new Map(
      findings.flatMap(({ part, place, patch }) =>
        part === 'pulses' && 'grade' in patch
          ? [[`${place.side} ${place.site}`, patch.grade !== 'absent'] as const]
          : [],
      ),
    );

  /** Every way to leave out, change, double or exchange one letter of a word. */
  function* slips(word: string): Generator<string> {
    for (let i = 0; i < word.length; i++) {
      const [before, after] = [word.slice(0, i), word.slice(i + 1)];
      yield before + after;
      for (const letter of 'enx') yield before + letter + after;
      for (const letter of 'ens') yield before + letter + word.slice(i);
      if (after) yield before + after[0]! + word[i]! + after.slice(1);
    }
  }

  it.each(TAGS)(
    'never turns felt into absent or absent into felt: %s',
    (language) => {
      const vocabulary = vocabularyOf(language);
      const turned: string[] = [];
      let count = 0;
      let tried = 0;
      for (const item of NOTES.filter((note) => note.language === language)) {
        const own = felt(chosenFindings(readNote(item.text, item)));
        for (const match of item.text.matchAll(/\p{L}{2,}/gu)) {
          const [word] = match;
          for (const slip of slips(word)) {
            // A slip that makes another word of the lexicon says that word.
            if (!EVERY && ++count % 43) continue;
            if (slip === word || tokensOf(slip, vocabulary).length !== 1 || vocabulary.word(fold(slip)))
              continue;
            tried++;
            const text = item.text.slice(0, match.index) + slip + item.text.slice(match.index + word.length);
            for (const [place, is] of felt(chosenFindings(readNote(text, item)))) {
              if (own.has(place) && own.get(place) !== is)
                turned.push(`${word} → ${slip}: ${place} in "${item.text}"`);
            }
          }
        }
      }
      expect(turned).toEqual([]);
      expect(tried).toBeGreaterThan(500);
    },
    60_000,
  );
});

describe('any text', () => {
  const text = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 400 }),
    fc.string({ unit: 'grapheme', maxLength: 200 }),
    fc
      .array(
        fc.oneof(
          fc.constantFrom(...NOTES.map((item) => item.text)).map((note) => note.slice(0, 40)),
          fc.string({ maxLength: 8 }),
          fc.constantFrom('(', ')', '/', '\n', '|', ':', '+', '-', '.', '?'),
        ),
        { maxLength: 40 },
      )
      .map((parts) => parts.join(' ')),
  );
  it('is read, and gives whole findings', () => {
    fc.assert(
      fc.property(text, fc.constantFrom(...TAGS), fc.constantFrom(...SCALE_IDS), (note, language, scale) => {
        const reading = readNote(note, { language, scale });
        for (const finding of chosenFindings(reading)) {
          expect(Object.keys(finding.patch).length).toBeGreaterThan(0);
          expect(finding.spans.length).toBeGreaterThan(0);
        }
        for (const { choices } of reading.doubts) expect(choices.length).toBeGreaterThan(0);
      }),
      { numRuns: 500 },
    );
  }, 60_000);
});
