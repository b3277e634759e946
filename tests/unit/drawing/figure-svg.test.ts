import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { figureBody, figureSVG, VIEWS } from '../../../src/picture.js';
import {
  isPlateView,
  isPulseSite,
  PLATE_BOXES,
  PLATE_VIEWS,
  plateOf,
  type PlateView,
} from '../../../src/anatomy/index.js';
import {
  addMark,
  emptyExamination,
  placeKey,
  PLACES,
  PULSE_PLACES,
  restNormal,
  setPulse,
} from '../../../src/core.js';
import { PALETTE } from '../../../src/drawing/palette.js';
import { clipOf, placesIn } from '../../../src/drawing/index.js';
import '../../../src/locale/de/register.js';
import { messagesFor } from '../../../src/locale/index.js';
import { anyExamination, gradedExamination } from '../../tools/arbitraries.js';
import { examined, place } from '../../tools/examinations.js';

const SICK = examined({
  'right femoral': 'normal',
  'left femoral': 'absent',
  'left popliteal': 'absent',
  'right popliteal': 'reduced',
  'right radial': 'bounding',
});

const LOOK = { width: 160 } as const;
const size = (text: string): number => Buffer.byteLength(text);
const titles = (text: string): string[] =>
  [...text.matchAll(/<title>([^<]*)<\/title>/g)].map(([, said]) => said!);
const described = (text: string): string => /<desc>([^]*)<\/desc>/.exec(text)?.[1] ?? '';

describe('figureSVG', () => {
  it('says in words what it shows, and never more than was found', () => {
    expect(described(figureSVG(SICK))).toContain('Left popliteal: 0, absent');
    expect(described(figureSVG(SICK))).toContain('Occlusion above left femoral');
    expect(described(figureSVG(emptyExamination()))).toMatch(/^0 of \d+, scale/);
    expect(described(figureSVG(SICK, { language: 'de' }))).toContain('Poplitea links: 0, fehlend');
  });

  it('is called by the map and the date of the record, or as told', () => {
    const dated = { ...SICK, examinedAt: '2026-03-05T09:00:00Z' };
    expect(titles(figureSVG(dated))[0]).toBe('Pulse map, 5 March 2026');
    expect(titles(figureSVG(dated, { title: 'Visit <1>' }))[0]).toBe('Visit &lt;1&gt;');
  });

  it('calls every site with its finding where it carries names', () => {
    const said = titles(figureSVG(SICK, { names: true }));
    expect(said).toContain('Left popliteal: 0, absent');
    expect(said.filter((one) => / (not examined|not auscultated)|: \d/.test(one))).toHaveLength(
      PLACES.length,
    );
  });

  it('is the same each time', () => {
    fc.assert(
      fc.property(anyExamination, fc.constantFrom(...VIEWS), (examination, view) => {
        expect(figureSVG(examination, { view })).toBe(figureSVG(structuredClone(examination), { view }));
      }),
      { numRuns: 6 },
    );
  });

  it('changes with every grade', () => {
    for (const grade of ['absent', 'reduced', 'bounding', 'normal'] as const)
      expect(figureSVG(setPulse(SICK, place('left radial'), { grade }))).not.toBe(figureSVG(SICK));
  });

  it('refers to nothing that the shared body does not have', () => {
    fc.assert(
      fc.property(gradedExamination, fc.constantFrom(...VIEWS), (examination, view) => {
        const ids = new Set(
          [...figureBody({ ...LOOK, view }).matchAll(/ id="([^"]*)"/g)].map(([, id]) => id),
        );
        const text = figureSVG(examination, { ...LOOK, view, shared: true });
        const used = [...text.matchAll(/href="#([^"]*)"/g)].map(([, id]) => id);
        expect(used.length).toBeGreaterThan(0);
        expect(used.filter((id) => !ids.has(id))).toEqual([]);
      }),
      { numRuns: 6 },
    );
  });

  it('refers to nothing at all on its own', () => {
    for (const names of [true, false])
      expect(figureSVG(SICK, { names })).not.toMatch(/<use|href|style=|var\(/);
  });

  it('shares ids with no picture of another view or width', () => {
    const all = VIEWS.flatMap((view) => [24, 40, 160].map((width) => figureBody({ view, width }))).flatMap(
      (body) => [...body.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id!),
    );
    expect(all.length - new Set(all).size).toBe(0);
  });

  it('has ids of its own for what is clipped, the same for equal pictures only', () => {
    const ulcer = (x: number) => ({
      ...SICK,
      marks: [
        {
          id: 'm1',
          kind: 'ulcer' as const,
          points: [
            [x, 1380],
            [x + 20, 1380],
            [x + 10, 1400],
          ] as [number, number][],
        },
      ],
    });
    const ids = (x: number) => [...figureSVG(ulcer(x)).matchAll(/ id="([^"]*)"/g)].map(([, id]) => id!);
    expect(ids(780)).toHaveLength(1);
    expect(ids(780)).toEqual(ids(780));
    expect(ids(780)).not.toEqual(ids(790));
  });

  // Ceilings of the code, not measurements: what a list of 50 visits costs beyond the body that they share.
  it('takes little beside the shared body', () => {
    expect(size(figureSVG(emptyExamination(), { ...LOOK, shared: true }))).toBeLessThan(2_000);
    const one = examined({
      'left femoral': 'normal',
      'left popliteal': 'absent',
      'left dorsalis-pedis': 'absent',
    });
    expect(size(figureSVG(one, { ...LOOK, shared: true }))).toBeLessThan(4_000);
    // Nearly every artery differs here, and each is cut where its depth changes.
    expect(size(figureSVG(SICK, { ...LOOK, shared: true }))).toBeLessThan(8_000);
  });

  it('takes 4 kB at most beside it, the mean of visits at which three pulses were graded', () => {
    const grades = ['absent', 'reduced', 'normal', 'bounding'] as const;
    const keys = PULSE_PLACES.map(placeKey);
    const dated = { ...emptyExamination(), examinedAt: '2026-01-10T10:00:00Z' };
    // The visits of the page of fifty that `npm run bench:browser` measures.
    const sizes = Array.from({ length: 50 }, (_, i) => {
      const found = [0, 1, 2].map((step): [string, (typeof grades)[number]] => [
        keys[(100 + i + 2 * step) % keys.length]!,
        grades[(100 + i + 3 * step) % 4]!,
      ]);
      return size(figureSVG(examined(Object.fromEntries(found), dated), { ...LOOK, shared: true }));
    });
    expect(sizes.reduce((sum, one) => sum + one, 0) / sizes.length).toBeLessThan(4_000);
  });

  it.each(PLATE_VIEWS)('takes little beside the shared body on the plate %s', (view) => {
    const { side } = plateOf(view);
    const own = side === 'midline' ? 'left' : side;
    const one = examined({ [`${own} femoral`]: 'normal', [`${own} popliteal`]: 'absent' });
    const arm = examined({ [`${own} brachial`]: 'normal', [`${own} ulnar`]: 'absent' });
    for (const record of [emptyExamination(), one, arm])
      expect(size(figureSVG(record, { ...LOOK, view, shared: true }))).toBeLessThan(4_000);
  });

  it('refuses a view or a width that is none', () => {
    expect(() => figureSVG(SICK, { view: 'toes' as never })).toThrow(/view: found "toes", expected whole/);
    expect(() => figureSVG(SICK, { width: 4 })).toThrow(/width: found 4, expected a number from 24 to 4096/);
    expect(() => figureBody({ width: Number.NaN })).toThrow(RangeError);
  });
});

/** A femoropopliteal occlusion in the left leg, a narrowing in the right one, a block in each arm: every other pulse is normal. */
const BLOCKED = (
  [
    ['left popliteal', 'absent'],
    ['left posterior-tibial', 'absent'],
    ['left dorsalis-pedis', 'absent'],
    ['right popliteal', 'reduced'],
    ['right posterior-tibial', 'reduced'],
    ['right dorsalis-pedis', 'reduced'],
    ['left radial', 'absent'],
    ['right ulnar', 'absent'],
  ] as const
).reduce(
  (record, [key, grade]) => setPulse(record, place(key), { grade }),
  restNormal(emptyExamination('0-3')),
);

/** The outlines of what the localisation says, by the paint of its fill. */
function ridges(text: string, fill: string): { width: number; height: number }[] {
  return [...text.matchAll(/<path ([^>]*)>/g)]
    .map(([, attributes]) => attributes!)
    .filter((one) => one.includes(`fill="${fill}"`) && one.includes(`stroke="${PALETTE.gone.light}"`))
    .map((one) => {
      // Written as M and relative l.
      let [x, y] = [0, 0];
      const points = [.../ d="([^"]*)"/.exec(one)![1]!.matchAll(/([Ml])(-?[\d.]+) ?(-?[\d.]+)/g)].map(
        ([, command, a, b]) => {
          [x, y] = command === 'M' ? [Number(a), Number(b)] : [x + Number(a), y + Number(b)];
          return [x, y] as const;
        },
      );
      const [xs, ys] = [points.map(([px]) => px), points.map(([, py]) => py)];
      return { width: Math.max(...xs) - Math.min(...xs), height: Math.max(...ys) - Math.min(...ys) };
    });
}

describe('figureSVG of a plate', () => {
  it.each(PLATE_VIEWS)('%s: is that plate, named, with what is found on it in words', (view) => {
    const text = figureSVG(BLOCKED, { view });
    expect(titles(text)[0]).toBe(`Pulse map, ${messagesFor('en').map.views[view]}`);
    expect(titles(figureSVG(BLOCKED, { view, language: 'de' }))[0]).toContain(
      messagesFor('de').map.views[view],
    );
    for (const { site, side } of placesIn(view)) {
      const absent = BLOCKED.pulses?.[site as 'popliteal']?.[side as 'left']?.grade === 'absent';
      const name = messagesFor('en').anatomy.place({ site, side } as never);
      expect(described(text).toLowerCase().includes(`${name.toLowerCase()}: 0`), name).toBe(absent);
    }
    const named = figureSVG(BLOCKED, { view, names: true });
    expect(named).toContain(`>${messagesFor('en').map.views[view]}</text>`);
    expect(titles(named).filter((one) => /: \d/.test(one))).toHaveLength(
      placesIn(view).filter(({ site }) => isPulseSite(site)).length,
    );
  });

  it('shows the marks that were drawn on it, and says them', () => {
    const points = Array.from({ length: 12 }, (_, i): [number, number] => [
      490 + 40 * Math.cos((i * Math.PI) / 6),
      840 + 40 * Math.sin((i * Math.PI) / 6),
    ]);
    const marked = addMark(BLOCKED, { kind: 'ulcer', on: { plate: 'left-sole', points } });
    for (const [view, seen] of [
      ['left-sole', true],
      ['right-sole', false],
      ['left-hand', false],
      ['whole', true],
      ['left-leg', true],
    ] as const) {
      const text = figureSVG(marked, { view });
      expect(described(text).includes('Left heel (plantar): ulcer'), view).toBe(seen);
      expect(titles(text).includes('Left heel (plantar): ulcer'), view).toBe(seen);
    }
  });
});

describe('marks on the skin of a picture', () => {
  // Round the figure's axis (600), between the groins.
  const points = Array.from({ length: 16 }, (_, i): [number, number] => [
    600 + 90 * Math.cos((i * Math.PI) / 8),
    720 + 60 * Math.sin((i * Math.PI) / 8),
  ]);
  const marked = addMark(emptyExamination(), { kind: 'redness', points });

  it.each(VIEWS)('%s: are cut where the limb or the plate ends, and nowhere on the whole body', (view) => {
    const plate = isPlateView(view);
    const on = plate ? addMark(marked, { kind: 'ulcer', on: { plate: view, points: edge(view) } }) : marked;
    for (const names of [true, false]) {
      const text = figureSVG(on, { view, names });
      const [, id] = /<g clip-path="url\(#([^)]*-skin)\)">(?:<g[^>]*>)<title>/.exec(text) ?? [];
      const shown = titles(text).some((one) => /redness|ulcer/.test(one));
      const within = plate ? `M0 0H${PLATE_BOXES[plateOf(view).name].join('V')}H0Z` : clipOf(view);
      expect(id !== undefined, `${view} ${names}`).toBe(shown && within !== undefined);
      if (id === undefined) continue;
      const clip = new RegExp(`<clipPath id="${id}"><path transform="([^"]*)" d="([^"]*)"`).exec(text);
      expect(clip?.[2]).toBe(within);
      // The very transform with which the body is drawn.
      expect(text).toContain(`<g transform="${clip?.[1]}"`);
    }
  });

  /** A mark across the upper edge of a plate. */
  function edge(view: PlateView): [number, number][] {
    const [across] = PLATE_BOXES[plateOf(view).name];
    const x = view === 'legs-behind' ? 300 : across / 2 - 40;
    return points.map(([px, py]) => [x + (px - 600) / 2, 30 + (py - 720)]);
  }
});

describe('figureSVG as small as a line of text', () => {
  const SHOWN = ['whole', 'legs', 'left-leg', 'left-knee', 'legs-behind', 'left-arm', 'left-hand'] as const;
  for (const width of [24, 30, 40, 96])
    it.each(SHOWN)(`at ${width} px shows where the block lies on %s`, (view) => {
      const found = ridges(figureSVG(BLOCKED, { view, width }), PALETTE.gone.light);
      expect(found.length).toBeGreaterThan(0);
      const largest = Math.max(...found.map((box) => Math.min(box.width, box.height)));
      expect(Math.max(...found.map((box) => Math.hypot(box.width, box.height)))).toBeGreaterThan(4);
      expect(largest).toBeGreaterThan(1.9);
    });

  it('tells a narrowing from a block without colour', () => {
    const text = figureSVG(BLOCKED, { view: 'right-leg', width: 24 });
    expect(ridges(text, PALETTE.paper.light).length).toBeGreaterThan(0);
    expect(ridges(text, PALETTE.gone.light)).toEqual([]);
  });

  it('says by a ring that not every pulse was stated, and draws it as long as that is so', () => {
    const ring = /<circle [^>]*stroke="#5E6570"/;
    fc.assert(
      fc.property(gradedExamination, fc.constantFrom(...VIEWS), (examination, view) => {
        const stated = placesIn(view)
          .filter(({ site }) => isPulseSite(site))
          .every(({ site, side }) => {
            const found = examination.pulses?.[site as 'popliteal']?.[side as 'left'];
            return found?.grade !== undefined || found?.couldNotExamine !== undefined;
          });
        expect(ring.test(figureSVG(examination, { view, width: 24 }))).toBe(!stated);
      }),
      { numRuns: 40 },
    );
  });

  it('takes less than 3 kB beside the shared body', () => {
    for (const view of VIEWS)
      expect(size(figureSVG(BLOCKED, { view, width: 24, shared: true })), view).toBeLessThan(3_000);
  });
});
