import { describe, expect, it } from 'vitest';
import { LETTER_LENGTHS, summaryOf, summaryText } from '../../../src/letter.js';
import { LANGUAGES } from '../../../src/locale/list.js';
import { REGISTERS } from '../../../src/locale/index.js';
import '../../../src/locale/de/register.js';
import { CASES, type LetterCase } from './cases.js';

/** A case in every length, as a clinician or a patient reads it. */
function letters(
  { name, subject, record }: LetterCase,
  language: string,
  register: 'trade' | 'plain',
): string {
  const texts = LETTER_LENGTHS.map((length) => {
    const text = summaryText(summaryOf(record, { length, language, register, subject }));
    return `----- ${length} -----\n\n${text}\n`;
  });
  return `${name}, ${language}, ${register}. The patient is invented.\n\n${texts.join('\n')}`;
}

describe.each(CASES)('the letters of $name', (one) => {
  for (const { tag } of LANGUAGES)
    for (const register of REGISTERS)
      it(`read as they were last read: ${tag}, ${register}`, async () => {
        await expect(letters(one, tag, register)).toMatchFileSnapshot(
          `letters/${one.name}.${tag}.${register}.txt`,
        );
      });
});
