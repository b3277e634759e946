import { describe, expect, it } from 'vitest';
import { type Place, placeKey, PLACES, siteDefinition, vesselOf } from '../../../src/anatomy/index.js';
import {
  arteryParts,
  type ArteryPaths,
  arteryPaths,
  courseOf,
  drawnFlow,
  drawSilhouette,
  healthyArteries,
  isHealthy,
  pathOf,
  positionOf,
  sampleAt,
  silhouetteOf,
} from '../../../src/drawing/index.js';
import type { Sides } from '../../../src/drawing/healthy-data.js';
import { ofArm } from '../../../src/drawing/arteries.js';
import { type Segment, SEGMENTS } from '../../../src/drawing/healthy.js';
import { emptyExamination, setPulse } from '../../../src/examination/index.js';
import { type Contour, type Cut, written } from '../../tools/path-text.js';

const ACROSS = 12000;

const end = ({ steps }: Cut): readonly [number, number] => steps.slice(-2) as [number, number];

/** The contours of path data in M, c, l, a and z. */
function contoursOf(d: string): Contour[] {
  const all: (Contour & { cuts: Cut[] })[] = [];
  for (const [, letter, rest = ''] of d.matchAll(/([Mclaz])([^Mclaz]*)/g)) {
    const numbers = (rest.match(/-?\d+/g) ?? []).map(Number);
    if (letter === 'M') all.push({ x: numbers[0]!, y: numbers[1]!, cuts: [] });
    else if (letter !== 'z')
      all.at(-1)?.cuts.push({ kind: letter as Segment, steps: letter === 'a' ? numbers.slice(5) : numbers });
  }
  return all;
}

/** A contour as it would be read in a mirror on the axis, run the same way round. */
function mirrorOf({ x, y, cuts }: Contour): Contour {
  const [endX, endY] = cuts.reduce(([a, b], cut) => [a + end(cut)[0], b + end(cut)[1]], [x, y]);
  return {
    x: ACROSS - endX,
    y: endY,
    cuts: [...cuts].reverse().map(({ kind, steps }) => {
      const [dx, dy] = end({ kind, steps });
      if (kind !== 'c') return { kind, steps: [dx, -dy] };
      const [x1, y1, x2, y2] = steps as [number, number, number, number];
      return { kind, steps: [dx - x2, y2 - dy, dx - x1, y1 - dy, dx, -dy] };
    }),
  };
}

/** The same for all contours that draw the same, wherever they begin. */
function drawnBy({ x: startX, y: startY, cuts }: Contour): string {
  let [x, y] = [startX, startY];
  const drawn = cuts.map(({ kind, steps }) => {
    const text = `${kind}${[x, y, ...steps.map((step, i) => step + (i % 2 ? y : x))].join()}`;
    const [dx, dy] = end({ kind, steps });
    [x, y] = [x + dx, y + dy];
    return text;
  });
  if (x !== startX || y !== startY) drawn.push(`l${[x, y, startX, startY].join()}`);
  return drawn.sort().join();
}

const allDrawnBy = (d: string): string[] => contoursOf(d).map(drawnBy).sort();

/** A contour run the other way round. */
function turned(contour: Contour): Contour {
  const { x, y, cuts } = mirrorOf(contour);
  const flipped = cuts.map(({ kind, steps }) => ({
    kind,
    steps: steps.map((step, i) => (i % 2 ? step : -step)),
  }));
  return { x: ACROSS - x, y, cuts: flipped };
}

const healthy = drawnFlow(emptyExamination(), []);

/** The texts of some contours, those on both sides apart, each there once. */
function textsOf(contours: readonly Contour[]): [Sides, string][] {
  const wanted = new Set(contours.map(drawnBy));
  const both: Contour[] = [];
  const alone: Contour[] = [];
  for (const contour of contours) {
    const [own, other] = [drawnBy(contour), drawnBy(mirrorOf(contour))];
    if (!wanted.delete(own)) continue;
    if (wanted.delete(other)) both.push(contour);
    else alone.push(contour);
  }
  const texts: [Sides, string][] = [
    ['both', written(both)],
    ['alone', written(alone)],
  ];
  return texts.filter(([, text]) => text);
}

function arteryLines(): string[] {
  const parts = arteryParts(healthy, true);
  return (['behind', 'deep', 'trunk', 'near'] as const).flatMap((tone) =>
    [false, true].flatMap((arm) =>
      textsOf(
        parts
          .filter((part) => part.tone === tone && ofArm(part.vessel.artery) === arm)
          .flatMap(({ d }) => contoursOf(d)),
      ).map(([sides, text]) => `  ['${tone}', ${arm}, '${sides}', '${text}'],\n`),
    ),
  );
}

/** The half of the body from crown to crotch, along the patient's left. */
function halfOf(d: string): Contour {
  const [contour] = contoursOf(d) as [Contour];
  const { cuts } = contour;
  let { x, y } = contour;
  const starts = cuts.map((cut) => {
    const start = { x, y };
    [x, y] = [x + end(cut)[0], y + end(cut)[1]];
    return start;
  });
  const onAxis = starts.flatMap((start, i) => (2 * start.x === ACROSS ? [i] : []));
  const [crown, crotch] = onAxis.sort((a, b) => starts[a]!.y - starts[b]!.y) as [number, number];
  const turned = [...cuts.slice(crown), ...cuts.slice(0, crown)];
  return {
    ...starts[crown]!,
    cuts: turned.slice(0, (crotch - crown + cuts.length) % cuts.length),
  };
}

function bodyLines(): string[] {
  const { body, heart, kidneys, grooves } = drawSilhouette(true);
  return [
    `  body: '${written([halfOf(body)])}',\n`,
    `  armless: '${written([halfOf(drawSilhouette(false).body)])}',\n`,
    `  heart: '${written(contoursOf(heart))}',\n`,
    `  kidney: '${written(contoursOf(kidneys).slice(0, 1))}',\n`,
    `  grooves: '${written(contoursOf(grooves))}',\n`,
  ];
}

const rounded = (value: number): number => Number(value.toFixed(5));

/** Where a place lies, from the course of its artery. */
function spotOf({ site, side }: Place): [number, number] {
  const { x, y } = sampleAt(courseOf(vesselOf({ site, side })), siteDefinition(site).at);
  return [rounded(x), rounded(y)];
}

/** Each site once, and beside it those of the right that are no mirror image. */
function spotLines(): string[] {
  return PLACES.flatMap((place) => {
    const [x, y] = spotOf(place);
    if (place.side === 'right') {
      const [otherX, otherY] = spotOf({ ...place, side: 'left' });
      if (Math.abs(x + otherX - ACROSS / 10) < 0.00003 && Math.abs(y - otherY) < 0.00003) return [];
    }
    const key = place.side === 'right' ? placeKey(place) : place.site;
    return [`  ${/\W/.test(key) ? `'${key}'` : key}: [${x}, ${y}],\n`];
  });
}

const FILE = `import type { ArteryPaths } from './arteries.js';

/*
 * What an empty map shows of arteries and body, and where its sites lie, as \`healthy.ts\` reads it. Made from the courses, widths and
 * outlines by tests/unit/drawing/healthy.test.ts, which compares, and with \`vitest -u\` writes this file.
 */

/** Whether contours stand alone or on both sides, are a half that is closed by its mirror image, or stay open. */
export type Sides = 'alone' | 'both' | 'half' | 'open';

/** The arteries: tone, whether they are hidden together with the arms, on which sides, and their contours. */
// prettier-ignore
export const ARTERIES: readonly (readonly [keyof ArteryPaths, arm: boolean, Sides, text: string])[] = [
${arteryLines().join('')}];

/** The body and what of it is drawn. */
// prettier-ignore
export const BODY = {
${bodyLines().join('')}};

/** Where sites lie on the patient's left or in the midline, and on the right where that is no mirror image, in figure units. */
// prettier-ignore
export const SPOTS: Readonly<Record<string, readonly [x: number, y: number]>> = {
${spotLines().join('')}};
`;

it('what is drawn beforehand is what courses, widths and outlines make', async () => {
  await expect(FILE).toMatchFileSnapshot('../../../src/drawing/healthy-data.ts');
});

describe.each([true, false])('of a healthy figure (arms: %s)', (arms) => {
  it('reads the very arteries that would be drawn', () => {
    const ready = healthyArteries(arms);
    const drawn = arteryPaths(healthy, arms);
    for (const tone of Object.keys(drawn) as (keyof ArteryPaths)[])
      expect(allDrawnBy(ready[tone]), tone).toEqual(allDrawnBy(drawn[tone]));
  });

  it('reads the very body that would be drawn', () => {
    const { body, heart, grooves, kidneys } = silhouetteOf(arms);
    const drawn = drawSilhouette(arms);
    expect(allDrawnBy(body)).toEqual(allDrawnBy(drawn.body));
    expect(allDrawnBy(heart)).toEqual(allDrawnBy(drawn.heart));
    expect(grooves).toBe(drawn.grooves);
    // The kidney of the right is run the other way round, which shows nowhere.
    const [left, right] = contoursOf(drawn.kidneys) as [Contour, Contour];
    expect(allDrawnBy(kidneys)).toEqual([left, turned(right)].map(drawnBy).sort());
  });
});

describe('pathOf', () => {
  it('reads what was written, segment by segment', () => {
    const contour: Contour = {
      x: 7000,
      y: -3,
      cuts: [
        { kind: 'c', steps: [1, -1, 900, 26, -27, 5000] },
        { kind: 'l', steps: [0, -12000] },
        { kind: 'a', steps: [-1, 7] },
        { kind: 'c', steps: [3, 4, 5, 6, 7, 8] },
      ],
    };
    expect(contoursOf(pathOf(written([contour, contour]), 'alone'))).toEqual([contour, contour]);
    expect(contoursOf(pathOf(written([contour]), 'both'))).toEqual([contour, mirrorOf(contour)]);
    expect(SEGMENTS).toHaveLength(3);
  });

  it('closes a half by its mirror image, and leaves a line open', () => {
    const half: Contour = {
      x: 6000,
      y: 0,
      cuts: [
        { kind: 'l', steps: [500, 70] },
        { kind: 'l', steps: [-500, 30] },
      ],
    };
    expect(pathOf(written([half]), 'half')).toBe('M6000 0l500 70l-500 30l-500-30l500-70z');
    expect(pathOf(written([half]), 'open')).toBe('M6000 0l500 70l-500 30');
  });
});

describe('positionOf', () => {
  it.each(PLACES.map((place) => [placeKey(place), place] as const))('%s lies on its artery', (_, place) => {
    const { x, y } = positionOf(place);
    const [drawnX, drawnY] = spotOf(place);
    expect(x).toBeCloseTo(drawnX, 4);
    expect(y).toBeCloseTo(drawnY, 4);
  });
});

describe('isHealthy', () => {
  it('is so of an empty record and of normal pulses alone', () => {
    const graded = (grade: 'normal' | 'reduced' | 'absent') =>
      drawnFlow(setPulse(emptyExamination(), { site: 'femoral', side: 'left' }, { grade }), []);
    expect(isHealthy(healthy)).toBe(true);
    expect(isHealthy(graded('normal'))).toBe(true);
    expect(isHealthy(graded('reduced'))).toBe(false);
    expect(isHealthy(graded('absent'))).toBe(false);
    expect(isHealthy([{ ...healthy[0]!, width: [1, 0.9] }])).toBe(false);
  });
});
