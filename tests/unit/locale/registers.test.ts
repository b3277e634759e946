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
/** What a language says of its own; a source is cited as it is printed. */
const textsOf = (language: Language): string[] =>
  languageTexts(english, language).told.flatMap(({ path, said }) => (path === 'flags › cite' ? [] : [said]));

describe('a region with words of its own', () => {
  // What Americans write otherwise, by the list of this test and not by that of the library.
  const BRITISH =
    /ischaem|oedema|colour|manoeuvre|paraesth|anaesth|haem[ao]|aemia|favour|judgement|localis|vascularis|orthopaed|metre|\bABPI\b|\bTBPI\b|brachial pressure index|aorto-iliac|femoro-popliteal|axillo-|cut-off|run-off|(Adson|Allen|Buerger|Eden|Raynaud|Wright)’s|peripheral arterial|\bincompressible|thrombophilia/i;

  it('spells in its own way wherever a term stands, alone or within a sentence', () => {
    const [british, american] = [textsOf(wordsOf('en')), textsOf(wordsOf('en-US'))];
    expect(american.filter((text) => BRITISH.test(text))).toEqual([]);
    expect(british.filter((text) => /\bedema|ischem|\bABI\b|\bcolor/i.test(text))).toEqual([]);
    // Whatever is not on the list stays letter for letter.
    const differ = british.filter((text, i) => text !== american[i]);
    expect(differ.filter((text) => !BRITISH.test(text))).toEqual([]);
    for (const one of ['oedema', 'ischaem', 'ABPI', 'colour', 'manoeuvre']) {
      expect(differ.some((text) => text.includes(one))).toBe(true);
    }
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
    const told = messagesFor('en-US').marks.mark('ulcer', [], 'colour: grey, oedema; ABPI 0.5');
    expect(told).toMatch(/colour: grey, oedema; ABPI 0\.5$/);
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
