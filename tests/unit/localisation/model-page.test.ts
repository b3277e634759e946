import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { CAUSES } from '../../../src/localisation/network/index.js';
import { figuresOf } from '../../cases/figures.js';
import { readCases } from '../../cases/form.js';
import { readPictures, scorePictures } from '../../cases/pictures.js';

/* What the page of the model claims, beside what the model does now. */

const near = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
const page = readFileSync(near('../../../stories/localisation-model.mdx'), 'utf8').replace(/\s+/g, ' ');
const picture = readFileSync(near('../../../stories/localisation-model.svg'), 'utf8');

const first = readCases(near('../../cases/published-cases.json'));
const second = readCases(near('../../cases/given-2.json'));

describe('The page of the model', () => {
  it('tells the scores of the published cases as they are', () => {
    const all = figuresOf([...first, ...second]);
    const everyday = figuresOf(second);
    const { firm, fairly, not } = all.firm;
    for (const claim of [
      `${all.items} limbs`,
      `comes first in ${all.network.levelFirst} (bedside rule: ${all.rule.levelFirst})`,
      `in ${everyday.network.levelFirst} of the ${everyday.items} of everyday reports`,
      `in ${all.network.levelFirstDecidable} of the ${all.decidable.items} that their pulses can decide (rule: ${all.rule.levelFirstDecidable})`,
      `Calibration in five bins: ${all.calibration.ece.toFixed(2)}`,
      `Called firm: ${firm.right} of ${firm.items} right. Fairly firm: ${fairly.right} of ${fairly.items}. Not firm: ${not.right} of ${not.items}.`,
      `kept by ${firm.right} of ${firm.items}`,
    ])
      expect(page).toContain(claim);
    expect(all.negatives).toEqual({ items: 10, blamed: 0 });
    expect(page).toContain('Of ten limbs without arterial disease none is blamed');
  }, 60_000);

  it('tells how many textbook pictures are met', () => {
    const { items, met } = scorePictures(readPictures(near('../../cases/pictures.json')));
    expect(page).toContain(`Textbook pictures, ${met} of ${items} met`);
  }, 60_000);

  it('counts the causes in words and picture', () => {
    const count = ['eleven', 'twelve', 'thirteen', 'fourteen'][CAUSES.length - 11];
    expect(page).toContain(`One of ${count} causes`);
    expect(picture).toContain(`one of ${count} causes`);
  });

  it('shows both questions in its picture', () => {
    expect(picture).toContain('takes the pulse away');
    expect(picture).toContain('first not open');
  });
});
