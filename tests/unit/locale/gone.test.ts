import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

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
];

const english = new URL('../../../src/locale/en/', import.meta.url);
// Words for patients are plain; those for clinicians are the trade's.
const trade = readdirSync(english).filter((file) => !file.includes('plain'));

describe('words that were replaced', () => {
  it.each(GONE)('%s stands nowhere: %s', (words) => {
    for (const file of trade) expect(readFileSync(new URL(file, english), 'utf8'), file).not.toMatch(words);
  });
});
