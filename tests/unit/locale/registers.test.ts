import { afterAll, describe, expect, it } from 'vitest';
import { messagesFor, registerLanguage } from '../../../src/locale/index.js';
import { flagWordsFor } from '../../../src/locale/flags.js';
import type { Language } from '../../../src/locale/index.js';
import { partMessagesFor } from '../../../src/locale/parts.js';
import { REGISTERS } from '../../../src/locale/terms.js';
import { ALL_SAMPLES, LANGUAGE_SAMPLES } from '../../languages/index.js';
import { languageTexts } from '../../tools/language-check.js';

const english = await LANGUAGE_SAMPLES.en.load();
await LANGUAGE_SAMPLES.de.load();

/** Every word of a tag in a register. */
const wordsOf = (tag: string, register: (typeof REGISTERS)[number] = 'trade'): Language => ({
  ...messagesFor(tag, register),
  ...partMessagesFor(tag, register),
});
const textsOf = (language: Language): string[] =>
  languageTexts(english, language).told.map(({ said }) => said);

describe('a region with words of its own', () => {
  it('spells in its own way wherever a term stands, alone or within a sentence', () => {
    const [british, american] = [textsOf(wordsOf('en')), textsOf(wordsOf('en-US'))];
    const changed = british.filter((text) => /oedema/i.test(text));
    expect(changed.length).toBeGreaterThan(20);
    expect(american.filter((text) => /oedema/i.test(text))).toEqual([]);
    expect(british.filter((text) => /\bedema/i.test(text))).toEqual([]);
    expect(american).toEqual(
      british.map((text) => text.replaceAll('oedema', 'edema').replaceAll('Oedema', 'Edema')),
    );
  });

  it('is found by its tag in any case and with further subtags; other regions speak as their language', () => {
    const word = (tag: string) => messagesFor(tag).examination.reasons.oedema;
    expect(['en-US', 'en-us', 'en-US-posix'].map(word)).toEqual(['edema', 'edema', 'edema']);
    expect(['en', 'en-GB', 'en-AU', 'en-USA', 'fr'].map(word)).toEqual(Array(5).fill('oedema'));
    expect(['de', 'de-AT'].map(word)).toEqual(['Ödem', 'Ödem']);
  });

  it('keeps what a person typed', () => {
    const { found } = messagesFor('en-US').map;
    expect(found({ code: 'note', note: 'oedema of both feet' })).toBe('note: oedema of both feet');
  });
});

describe('the plain register', () => {
  it('says terms in plain words, in every language, and the trade keeps its own', () => {
    expect(wordsOf('en', 'plain').history.symptoms.claudication).toBe('pain on walking');
    expect(wordsOf('en', 'plain').history.symptomOptions.claudication).toBe('Pain on walking');
    expect(wordsOf('de', 'plain').history.symptoms.claudication).toBe('Schmerz beim Gehen');
    expect(wordsOf('en').history.symptoms.claudication).toBe('claudication');
    for (const { tag } of ALL_SAMPLES) {
      expect(wordsOf(tag, 'plain').inspection.oedema).not.toBe(wordsOf(tag).inspection.oedema);
    }
  });

  it('holds in what is said of a record', () => {
    const said = (register: 'trade' | 'plain') =>
      wordsOf('en-US', register).history.limb({ code: 'symptom', value: 'claudication' });
    expect([said('trade'), said('plain')]).toEqual(['claudication', 'pain on walking']);
  });

  it.each(ALL_SAMPLES)('$english has every entry of English in it', async ({ tag }) => {
    expect(languageTexts(english, wordsOf(tag, 'plain')).faults).toEqual([]);
  });
});

describe('the words in one voice', () => {
  it('are the same objects each time, and the language’s own where nothing differs', () => {
    for (const register of REGISTERS) {
      expect(messagesFor('en-US', register)).toBe(messagesFor('en-US', register));
      expect(partMessagesFor('de', register)).toBe(partMessagesFor('de', register));
      expect(flagWordsFor('de', register)).toBe(flagWordsFor('de', register));
    }
    expect(messagesFor('en')).toBe(messagesFor('en-GB'));
  });

  it('leave the others as they were, also when rendering fails', () => {
    const plain = messagesFor('en', 'plain');
    expect(() => plain.examination.couldNot(Symbol('x') as never)).not.toThrow();
    expect(() => plain.map.recorded(undefined as never, '')).toThrow();
    expect(messagesFor('en').examination.reasons.oedema).toBe('oedema');
  });

  it('are those of a language that a page registers for a region', () => {
    registerLanguage('en-nz', { ...english, form: { ...english.form, required: 'Kia ora' } });
    afterAll(() => registerLanguage('en-nz', english));
    expect(messagesFor('en-NZ').form.required).toBe('Kia ora');
  });
});
