import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contains, type Place } from '../../../src/anatomy/index.js';
import {
  PLATE_VIEWS,
  plateOf,
  type PlateView,
  type Point,
  sampleAt,
  TARGET_RADIUS,
} from '../../../src/drawing/index.js';
import {
  DIGIT_GLYPHS,
  DIGIT_KINDS,
  digitLimbOf,
  digitsSaid,
  digitViews,
  isAnySeen,
  LEAST_TARGET,
  type PlacedDigits,
  standApart,
} from '../../../src/drawing/plates/digits.js';
import { plate as foot } from '../../../src/drawing/plates/foot.js';
import { plate as hand } from '../../../src/drawing/plates/hand.js';
import { layOutPlate } from '../../../src/drawing/plates/layout.js';
import { preparedPlate, type PreparedPlate } from '../../../src/drawing/plates/prepared.js';
import { plate as sole } from '../../../src/drawing/plates/sole.js';
import { figureSVG } from '../../../src/drawing/still/figure-svg.js';
import {
  type Digit,
  DIGIT_STATES,
  DIGITS,
  type DigitState,
  emptyExamination,
  type Examination,
  parseExamination,
  setDigit,
} from '../../../src/examination/index.js';
import { de } from '../../../src/locale/de/index.js';
import { en } from '../../../src/locale/index.js';
import { inVoice } from '../../../src/locale/terms.js';

const PLATES = { hand, foot, sole };
const VIEWS = PLATE_VIEWS.filter((view) => digitLimbOf(view));
const prepared = (view: PlateView): PreparedPlate =>
  preparedPlate(PLATES[plateOf(view).name as keyof typeof PLATES], view);
// Those of the narrowest phone to a projector, as the map has them.
const WIDTHS = [288, 358, 412, 638, 766, 818, 1051, 1531];
const cases = VIEWS.flatMap((view) =>
  WIDTHS.flatMap((width) => [en, de].map((words) => [view, width, words] as const)),
);

const laidOut = ([view, width, words]: (typeof cases)[number]): ReturnType<typeof layOutPlate> =>
  layOutPlate(prepared(view), width, 860, ({ site }: Place) => ({
    name: words.map.siteShort(site),
    code: words.anatomy.codes[site],
  }));

/** Every two of some things. */
function pairs<T>(all: readonly T[]): (readonly [T, T])[] {
  return all.flatMap((one, i) => all.slice(i + 1).map((other) => [one, other] as const));
}

const apart = (a: { x: number; y: number }, b: { x: number; y: number }): number =>
  Math.hypot(a.x - b.x, a.y - b.y);

const limb = { kind: 'arm', side: 'left' } as const;
const record = (
  states: Partial<Record<Digit, DigitState>>,
  of: { kind: 'arm' | 'leg'; side: 'left' | 'right' } = limb,
): Examination =>
  Object.entries(states).reduce(
    (next, [digit, state]) => setDigit(next, of, digit as Digit, state),
    emptyExamination(),
  );

describe('digits on plates', () => {
  it('stand on hand, foot and sole of either side, five each', () => {
    expect(VIEWS).toEqual(['right-hand', 'left-hand', 'right-foot', 'left-foot', 'right-sole', 'left-sole']);
    for (const one of cases) {
      const { digits } = laidOut(one);
      expect(digits?.spots.map(({ digit }) => digit)).toEqual([...DIGITS]);
      expect(digits?.limb).toEqual(digitLimbOf(one[0]));
    }
  });

  it.each(VIEWS)('%s: each lies on the skin, the right as the mirror image of the left', (view) => {
    const plate = prepared(view);
    const skin = plate.outlines.map((outline) =>
      Array.from({ length: 900 }, (_, i): Point => {
        const { x, y } = sampleAt(outline, i / 900);
        return [x, y];
      }),
    );
    const spots = plate.placed(plate.plate.digits ?? '');
    for (const spot of spots) expect(skin.some((contour) => contains(contour, spot))).toBe(true);
    const { name } = plateOf(view);
    const other = prepared(`${view.startsWith('left') ? 'right' : 'left'}-${name}` as PlateView);
    expect(other.placed(other.plate.digits ?? '')).toEqual(spots.map(([x, y]) => [plate.size[0] - x, y]));
  });

  // Standard anatomy (from memory): which digit lies nearer the reader's right.
  it.each<[PlateView, Digit, Digit]>([
    ['left-hand', 'first', 'fifth'],
    ['right-hand', 'fifth', 'first'],
    ['left-foot', 'fifth', 'first'],
    ['right-foot', 'first', 'fifth'],
    ['left-sole', 'fifth', 'first'],
    ['right-sole', 'first', 'fifth'],
  ])('%s: the %s digit lies to the right of the %s', (view, right, left) => {
    const { spots } = laidOut([view, 818, en]).digits as PlacedDigits;
    const x = (digit: Digit): number => spots.find((spot) => spot.digit === digit)?.x ?? Number.NaN;
    expect(x(right)).toBeGreaterThan(x(left));
  });

  it('overlap neither each other nor a site nor the edge, at any width', () => {
    for (const one of cases) {
      const { digits, sites, width, height, glyphScale } = laidOut(one);
      const { spots, reach, glyphScale: size } = digits as PlacedDigits;
      for (const { x, y } of spots) {
        expect(Math.min(x, width - x)).toBeGreaterThan(Math.max(LEAST_TARGET / 2, 8.5 * size));
        expect(Math.min(y, height - y)).toBeGreaterThan(9.5 * size);
        for (const site of sites)
          expect(apart(site, { x, y })).toBeGreaterThan(TARGET_RADIUS * glyphScale + reach);
      }
      for (const [a, b] of pairs(spots)) {
        expect(apart(a, b)).toBeGreaterThanOrEqual(2 * reach - 1e-6);
        // Glyphs are 15 wide and 18 high with their rims, in a box of 24.
        expect(Math.abs(a.x - b.x) >= 15 * size || Math.abs(a.y - b.y) >= 20 * size).toBe(true);
      }
    }
  });

  it('are targets of 24 px and more at every width, of 44 px on a hand; toes closer together are one target', () => {
    for (const one of cases) {
      const digits = laidOut(one).digits as PlacedDigits;
      const [view, width] = one;
      if (standApart(digits)) expect(2 * digits.reach).toBeGreaterThanOrEqual(LEAST_TARGET);
      else expect(view).toMatch(/foot$/);
      if (view.endsWith('hand') && width >= 358) expect(2 * digits.reach).toBeGreaterThanOrEqual(44 - 1e-6);
      if (view.endsWith('sole')) expect(standApart(digits)).toBe(true);
      // Large enough to tell one shape from the other.
      expect(24 * digits.glyphScale).toBeGreaterThanOrEqual(width < 358 ? 12 : 16);
    }
  });

  it('each state has a shape of its own, which needs no colour', () => {
    const shapes = DIGIT_KINDS.map((kind) =>
      DIGIT_GLYPHS[kind].map((part) => part && part.paint + part.d).join(),
    );
    expect(new Set(shapes).size).toBe(DIGIT_KINDS.length);
  });
});

describe('digitViews()', () => {
  it.each([
    [en, 'trade', 'Left thumb: gangrene', 'Left little finger: not examined'],
    [en, 'plain', 'Left thumb: dead tissue', 'Left little finger: not checked'],
    [de, 'trade', 'Daumen links: Gangrän', 'Kleinfinger links: nicht untersucht'],
    [de, 'plain', 'Daumen links: abgestorbenes Gewebe', 'Kleinfinger links: nicht geprüft'],
  ] as const)('names each digit with what is recorded: %#, %s', (words, register, first, fifth) => {
    const views = digitViews(record({ first: 'gangrene' }), limb, inVoice(words, { register }));
    expect(views[0]?.name).toBe(first);
    expect(views[4]?.name).toBe(fifth);
  });

  it('say of every record exactly what it holds; what is missing is never normal', () => {
    const states = fc.record(
      Object.fromEntries(
        DIGITS.map((digit) => [digit, fc.option(fc.constantFrom(...DIGIT_STATES), { nil: undefined })]),
      ) as Record<Digit, fc.Arbitrary<DigitState | undefined>>,
    );
    fc.assert(
      fc.property(
        states,
        fc.constantFrom('arm', 'leg'),
        fc.constantFrom('right', 'left'),
        (all, kind, side) => {
          const known = Object.fromEntries(Object.entries(all).filter(([, state]) => state));
          const views = digitViews(record(known, { kind, side }), { kind, side }, en);
          for (const { digit, kind: shown, name } of views) {
            const state = all[digit];
            expect(shown).toBe(state ?? 'not-examined');
            expect(name).toMatch(new RegExp(`: ${state ?? 'not examined'}$`));
            expect(name).toMatch(new RegExp(`^${side === 'left' ? 'Left' : 'Right'} `));
          }
          expect(isAnySeen(views)).toBe(Object.keys(known).length > 0);
          const said = digitsSaid(views, { kind, side }, en);
          if (Object.keys(known).length < DIGITS.length) expect(said).toMatch(/not examined$/);
          for (const state of DIGIT_STATES)
            expect(said.includes(` ${state}`)).toBe(Object.values(known).includes(state));
        },
      ),
    );
  });

  it('tell in one line what differs, what is the same and what is left out', () => {
    const said = (states: Partial<Record<Digit, DigitState>>): string =>
      digitsSaid(digitViews(record(states), limb, en), limb, en);
    expect(said({})).toBe('Left fingers: not examined');
    expect(said({ first: 'pale', third: 'ulcer' })).toBe(
      'Left fingers: thumb pale, middle finger ulcer; others not examined',
    );
    expect(said(Object.fromEntries(DIGITS.map((digit) => [digit, 'normal'])))).toBe('Left fingers: normal');
  });

  it('tell what the compared record had, where it had something else', () => {
    const views = digitViews(
      record({ first: 'gangrene', second: 'pale' }),
      limb,
      en,
      record({ first: 'blue', second: 'pale' }),
    );
    expect(views[0]?.name).toBe('Left thumb: gangrene; earlier: blue');
    expect(views[1]?.name).toBe('Left index finger: pale');
    expect(views[2]?.name).toBe('Left middle finger: not examined');
    expect(digitsSaid(views, limb, en)).toBe(
      'Left fingers: thumb gangrene (earlier: blue), index finger pale; others not examined',
    );
  });

  it('tell why there is nothing to see, and what a later version recorded', () => {
    const lost = (armAmputation: object): Examination =>
      ({ ...emptyExamination(), context: { armAmputation } }) as Examination;
    const kinds = (examination: Examination): string[] =>
      digitViews(examination, limb, en).map(({ kind }) => kind);
    expect(new Set(kinds(lost({ left: 'hand' })))).toEqual(new Set(['could-not']));
    expect(digitViews(lost({ left: 'hand' }), limb, en)[0]?.name).toMatch(/amputated/);
    // Which fingers are lost is not recorded.
    expect(new Set(kinds(lost({ left: 'fingers' })))).toEqual(new Set(['not-examined']));
    expect(new Set(kinds(lost({ right: 'hand' })))).toEqual(new Set(['not-examined']));
    const parsed = parseExamination({
      ...emptyExamination(),
      inspection: { arm: { left: { digits: { first: 'white-and-cold' } } } },
    });
    if (!parsed.ok) throw new Error('found a record that cannot be read');
    expect(kinds(parsed.value)[0]).toBe('unknown');
  });
});

describe('figureSVG()', () => {
  const seen = record({ first: 'gangrene', second: 'normal' });

  it('shows digits that were looked at on their plate, named, told and explained', () => {
    const text = figureSVG(seen, { view: 'left-hand', names: true });
    expect(text).toContain('<title>Left thumb: gangrene</title>');
    expect(text).toContain('<title>Left ring finger: not examined</title>');
    expect(
      /<desc>[^<]*Left fingers: thumb gangrene, index finger normal; others not examined/.test(text),
    ).toBe(true);
    expect(text).toContain('>Gangrene<');
  });

  it('shows in a small picture only those looked at', () => {
    const text = figureSVG(seen, { view: 'left-hand' });
    expect(text).toContain('<title>Left thumb: gangrene</title>');
    expect(text).not.toContain('ring finger: ');
    expect(/<desc>[^<]*Left fingers: thumb gangrene/.test(text)).toBe(true);
  });

  it('shows none where none was looked at, on the other side, and on views without digits', () => {
    const without = [
      figureSVG(emptyExamination(), { view: 'left-hand', names: true }),
      figureSVG(seen, { view: 'right-hand', names: true }),
      figureSVG(seen, { names: true }),
      figureSVG(seen, { view: 'left-foot', names: true }),
    ];
    for (const text of without) expect(text).not.toMatch(/thumb|finger|>Gangrene<|>Normal</);
  });
});
