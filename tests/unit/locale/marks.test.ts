import { describe, expect, it } from 'vitest';
import {
  regionsOf,
  regionShape,
  SKIN_PLACES,
  SKIN_REGION_IDS,
  type SkinName,
} from '../../../src/anatomy/index.js';
import { MARK_KINDS } from '../../../src/examination/index.js';
import { en } from '../../../src/locale/index.js';
import { ALL_SAMPLES } from '../../languages/index.js';

const left = (region: SkinName['region'], more: Partial<SkinName> = {}): SkinName => ({
  region,
  side: 'left',
  ...more,
});

const marksIn = await Promise.all(
  ALL_SAMPLES.map(async ({ english, load }) => ({ english, marks: (await load()).marks })),
);

describe.each(marksIn)('the words for marks on the skin in $english', ({ marks }) => {
  it('call every kind and every region of every side differently', () => {
    const unique = (words: readonly string[]): void => {
      expect(new Set(words).size).toBe(words.length);
      for (const word of words) expect(word.trim()).not.toBe('');
    };
    unique(MARK_KINDS.map((kind) => marks.kinds[kind]));
    unique(MARK_KINDS.map(marks.kindShort));
    unique(SKIN_PLACES.map(marks.placeWord));
  });

  it('shorten a kind to a part of its whole word', () => {
    for (const kind of MARK_KINDS)
      expect(marks.kindWord(kind).startsWith(marks.kindShort(kind)), kind).toBe(true);
  });

  it('say the side of every place in words, and none in the midline', () => {
    for (const region of SKIN_REGION_IDS) {
      const said = (['right', 'left', 'midline'] as const).map((side) => marks.where([{ region, side }]));
      expect(new Set(said).size, said.join(', ')).toBe(3);
      expect(said[2]).not.toMatch(/right|left|rechts|links/i);
    }
  });
});

describe('the words for marks on the skin', () => {
  it.each<[string, SkinName[]]>([
    ['left mid shin', [left('shin', { third: 'mid' })]],
    ['left knee to toes', [left('knee', { to: 'toes' })]],
    ['left great toe and second toe', [left('great-toe'), left('second-toe')]],
    [
      'left forefoot, great toe and right heel',
      [left('forefoot'), left('great-toe'), { region: 'heel', side: 'right' }],
    ],
    ['abdomen', [{ region: 'abdomen', side: 'midline' }]],
  ])('read: %s', (text, names) => {
    expect(en.marks.where(names)).toBe(text);
  });

  it('make a whole sentence of a mark with its note', () => {
    const heel = regionsOf(regionShape({ region: 'heel', side: 'right' }, 'area'), 'area');
    expect(en.marks.mark('ulcer', heel, 'dry')).toBe('Right heel: ulcer; note: dry');
    expect(en.marks.mark('gangrene', [])).toBe('Off the body: gangrene');
    expect(en.marks.removed('ulcer', heel, 1)).toBe('Right heel: ulcer deleted.');
    expect(en.marks.removed('ulcer', heel, 3)).toBe('3 marks deleted.');
  });
});
