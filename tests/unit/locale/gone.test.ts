import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { LANGUAGE_SAMPLES } from '../../languages/index.js';
import { languageTexts } from '../../tools/language-check.js';
import { TRADE_TERMS } from './trade-terms.js';

/** Words that a reader stumbled over, or that said more than was found; each was replaced. */
const GONE: readonly (readonly [words: RegExp, why: string])[] = [
  [/No block shown/, 'sounds like a state of the display'],
  [/Where trouble begins/i, 'says nothing of what begins'],
  [/felt for and not there/, 'four times in one flag'],
  [/'Carry'/, 'nobody guesses what it does'],
  [/of the diseased and clears/, 'sensitivity and specificity are meant'],
  [/Printed pressures/, 'a note to oneself'],
  [/[Rr]ule and probabilities agree/, 'said also where they differ'],
  [/long-standing lack of blood/, 'chronic limb-threatening ischaemia is meant'],
  [/infection may have reached the blood/, 'sepsis is meant'],
  [/carried in/, 'an embolus is meant'],
  [/hip spine|voice box/, 'landmarks have names'],
  [/capillary refill[^'`]*\busual\b/i, 'a limit of healthy people reassures about a sick limb'],
  [/'Numbers'/, 'says nothing of what it opens'],
  [/How firm'|hangs on|likeliest story/, 'private words'],
  [/Put down|Fold to one line/, 'says not what it does'],
  [/(ankle|toe|wrist|finger) index/i, 'indices have names'],
  [/foot oxygen pressure/i, 'transcutaneous oxygen pressure is meant'],
  [/signs of the whole body/i, 'systemic inflammatory signs are meant'],
  [/passing stroke/, 'transient ischaemic attack is meant'],
  [/points to the \$\{levels\}/, 'three levels of three are no place'],
  [/in the range of a threatened limb/, 'a pressure alone is no threatened limb'],
  [/Known beforehand|never there|taken as a graft/, 'not how a history is written'],
];

const GONE_IN_GERMAN: readonly (readonly [words: RegExp, why: string])[] = [
  [/Knöchelindex|Zehenindex|Fingerindex|Handgelenks?index/, 'indices have names'],
  [/SIRS-Kriterien/, 'an abbreviation alone'],
  [/Sauerstoffdruck am Fuß/, 'the transcutaneous one is meant'],
  [/'Auftragen'/, 'nobody guesses what it does'],
  [/grenzwertig bedroht/, 'the class is called marginal'],
  [/Vorher bekannt|war nie da/, 'not how a history is written'],
];

/** The sources of a language's words for clinicians; those for patients are plain, and citations quote what is printed. */
const tradeOf = (tag: string): (readonly [file: string, text: string])[] => {
  const folder = new URL(`../../../src/locale/${tag}/`, import.meta.url);
  return readdirSync(folder)
    .filter((file) => !/plain|citations/.test(file))
    .map((file) => [file, readFileSync(new URL(file, folder), 'utf8')]);
};

describe('words that were replaced', () => {
  it.each(GONE)('%s stands nowhere: %s', (words) => {
    for (const [file, text] of tradeOf('en')) expect(text, file).not.toMatch(words);
  });

  it.each(GONE_IN_GERMAN)('%s stands nowhere in German: %s', (words) => {
    for (const [file, text] of tradeOf('de')) expect(text, file).not.toMatch(words);
  });
});

describe('terms of the trade', () => {
  const said = async (tag: 'en' | 'de'): Promise<string> => {
    const words = await LANGUAGE_SAMPLES[tag].load();
    const { told } = languageTexts(words, words);
    return told.map((one) => one.said.toLowerCase()).join('\n');
  };

  it('are said in English', async () => {
    const english = await said('en');
    expect(TRADE_TERMS.map(([term]) => term).filter((term) => !inText(english, term))).toEqual([]);
  });

  it('are said in German', async () => {
    const german = await said('de');
    const terms = TRADE_TERMS.flatMap(([, term]) => term ?? []);
    expect(terms.filter((term) => !inText(german, term))).toEqual([]);
    expect(terms.length).toBeGreaterThan(100);
  });
});

/** Whether a term is said; what stands in brackets within it is left out of the text, too. */
function inText(text: string, term: string): boolean {
  const wanted = term.toLowerCase();
  return text.includes(wanted) || text.replace(/ \([^)]*\)/g, '').includes(wanted);
}
