import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import type { Language } from '../../../src/locale/index.js';
import { LANGUAGES } from '../../../src/locale/list.js';
import { ALL_SAMPLES, LANGUAGE_SAMPLES, TRANSLATIONS } from '../../languages/index.js';
import { languageFaults, languageTexts, shareInCommon } from '../../tools/language-check.js';

const folder = fileURLToPath(new URL('../../../src/locale', import.meta.url));
const english = await LANGUAGE_SAMPLES.en.load();

/** The listed languages but one, by name. */
async function others(but: string): Promise<[string, Language][]> {
  const rest = ALL_SAMPLES.filter(({ tag }) => tag !== but);
  return Promise.all(rest.map(async (one): Promise<[string, Language]> => [one.english, await one.load()]));
}

describe('the languages', () => {
  it('are the folders of src/locale, each with samples of its own', () => {
    const folders = readdirSync(folder, { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map(({ name }) => name);
    expect(folders.sort()).toEqual(LANGUAGES.map(({ tag }) => tag).sort());
    for (const [tag, samples] of Object.entries(LANGUAGE_SAMPLES)) expect(samples.tag).toBe(tag);
  });

  it.each(LANGUAGES)('$tag: numbers are written and nouns counted as the list says', async (entry) => {
    const { whole } = await LANGUAGE_SAMPLES[entry.tag].load();
    expect(whole.number(2.5)).toBe(`2${entry.decimal}5`);
    expect(whole.number(2.5, 2)).toBe(`2${entry.decimal}50`);
    expect(whole.point).toBe(entry.decimal);
    const forms = new Intl.PluralRules(entry.tag).resolvedOptions().pluralCategories;
    expect([...forms].sort()).toEqual([...entry.plurals].sort());
  });
});

describe.each(ALL_SAMPLES)('$english', (samples) => {
  it('writes a date in full', async () => {
    const { map } = await samples.load();
    expect(map.when('2026-05-01T10:30Z')).toBe(samples.date);
  });

  it('tells what is wrong with a record, what was found and what was expected', async () => {
    const { examination } = await samples.load();
    const fault = { code: 'conflict', path: ['pulses', 'femoral', 'left'], found: '"cast"' } as const;
    expect(examination.fault({ ...fault, expected: { code: 'grade-or-reason' } })).toBe(
      samples.faults.conflict,
    );
    const bound = { code: 'at-least', value: 1, of: 'characters' } as const;
    expect(examination.fault({ ...fault, expected: bound })).toContain(samples.faults.atLeastOne);
  });

  it('is called with samples at every entry that is a function', async () => {
    expect(languageTexts(english, await samples.load()).faults).toEqual([]);
  });
});

describe.each(TRANSLATIONS)('$english beside English', (samples) => {
  it('says every entry, and no other, in words and numbers of its own', async () => {
    const language = await samples.load();
    expect(languageFaults(english, language, samples, await others(samples.tag))).toEqual([]);
  });

  it('says more than a word here and there', async () => {
    const { told } = languageTexts(english, await samples.load());
    expect(told.length).toBeGreaterThan(2000);
  });
});

describe('a language that is not one', () => {
  const german = LANGUAGE_SAMPLES.de;

  it('is refused when it is a copy of another, under a tag of its own', async () => {
    const copy = await german.load();
    const listed = await others('fr');
    // The copy passes for a translation of English: only the comparison with German shows what it is.
    const faults = languageFaults(english, copy, german, listed);
    expect(faults).toEqual(['100% of its texts stand in German letter for letter']);
  });

  it('is refused when it is a copy with some words changed', async () => {
    const copy = await german.load();
    const changed: Language = { ...copy, rule: { ...copy.rule, heading: 'Règle au lit du malade' } };
    expect(languageFaults(english, changed, german, await others('fr')).join()).toMatch(/in German/);
  });

  it('is refused when it lacks words, or leaves them in English', async () => {
    const { heading: _, ...rule } = (await german.load()).rule;
    const lacking = { ...(await german.load()), rule } as unknown as Language;
    expect(languageFaults(english, lacking, german, [])).toEqual([
      'rule › heading: found undefined, expected string',
    ]);
    const half: Language = { ...(await german.load()), pressures: english.pressures };
    expect(languageFaults(english, half, german, []).length).toBeGreaterThan(100);
  });

  it('is told from its neighbours by nearly all it says', async () => {
    const texts = await Promise.all(ALL_SAMPLES.map(async (one) => languageTexts(english, await one.load())));
    for (const one of texts) {
      for (const other of texts) if (one !== other) expect(shareInCommon(one, other)).toBeLessThan(0.05);
    }
  });
});
