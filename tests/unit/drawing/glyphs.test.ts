import { describe, expect, it } from 'vitest';
import {
  GLYPH_SIZE,
  type GlyphKind,
  GLYPHS,
  MARKS,
  NUMERAL_SHIFT,
  NUMERALS,
  TARGET_RADIUS,
} from '../../../src/drawing/index.js';
import { GRADES, SCALES } from '../../../src/examination/index.js';

/** Every point that path data names, absolute and relative, arcs by their ends; enough to bound these simple shapes. */
function pointsOf(d: string): [number, number][] {
  const points: [number, number][] = [];
  let [x, y] = [0, 0];
  for (const [, letter = '', rest = ''] of d.matchAll(/([MLHVCAaczZ])([^MLHVCAaczZ]*)/g)) {
    const n = [...rest.matchAll(/-?(?:\d+\.?\d*|\.\d+)/g)].map(Number);
    const relative = letter === letter.toLowerCase();
    const put = (px: number, py: number): void => {
      points.push(relative ? [x + px, y + py] : [px, py]);
    };
    const move = (): void => {
      [x, y] = points.at(-1) ?? [x, y];
    };
    const at = (i: number): number => n[i] as number;
    const each = (size: number, take: (i: number) => void): void => {
      for (let i = 0; i + size <= n.length; i += size) {
        take(i);
        move();
      }
    };
    switch (letter.toUpperCase()) {
      case 'M':
      case 'L':
        each(2, (i) => put(at(i), at(i + 1)));
        break;
      case 'H':
        each(1, (i) => points.push([relative ? x + at(i) : at(i), y]));
        break;
      case 'V':
        each(1, (i) => points.push([x, relative ? y + at(i) : at(i)]));
        break;
      case 'C':
        each(6, (i) => {
          put(at(i), at(i + 1));
          put(at(i + 2), at(i + 3));
          put(at(i + 4), at(i + 5));
        });
        break;
      case 'A':
        each(7, (i) => put(at(i + 5), at(i + 6)));
        break;
    }
  }
  return points;
}

describe('glyphs', () => {
  it('have a shape of their own for each grade and each way of not knowing', () => {
    const shapes = Object.values(GLYPHS).map((parts) => parts.map((part) => part?.d).join());
    expect(new Set(shapes).size).toBe(shapes.length);
    for (const grade of GRADES) expect(GLYPHS[grade]).toBeDefined();
  });

  it('stay within their box', () => {
    for (const [kind, parts] of Object.entries(GLYPHS)) {
      for (const [px, py] of parts.flatMap((part) => (part ? pointsOf(part.d) : []))) {
        expect(px, kind).toBeGreaterThanOrEqual(0);
        expect(px, kind).toBeLessThanOrEqual(24);
        expect(py, kind).toBeGreaterThanOrEqual(0);
        expect(py, kind).toBeLessThanOrEqual(24);
      }
    }
  });

  it('are far smaller where nobody has examined, so that an empty map recedes', () => {
    const reach = (kind: GlyphKind): number =>
      Math.max(
        ...GLYPHS[kind].flatMap((part) => (part ? pointsOf(part.d) : [])).map(([px]) => Math.abs(px - 12)),
      );
    for (const grade of GRADES) expect(reach('not-examined')).toBeLessThan(0.75 * reach(grade));
  });
});

describe('numerals', () => {
  it('exist for every step of every scale', () => {
    for (const { steps } of Object.values(SCALES)) {
      for (const { numeral } of steps) if (numeral !== null) expect(NUMERALS[numeral]).toBeTruthy();
    }
    expect(new Set(NUMERALS).size).toBe(NUMERALS.length);
  });

  it('fit into the smallest grade shape, moved or not, with room around their strokes', () => {
    for (const numeral of NUMERALS) {
      for (const shift of [0, ...Object.values(NUMERAL_SHIFT)]) {
        for (const [px, py] of pointsOf(numeral))
          expect(Math.hypot(px - 12, py + shift - 12)).toBeLessThan(7.5);
      }
    }
  });
});

describe('marks beside a glyph', () => {
  it('keep off the glyph and off each other', () => {
    const boxes = Object.entries(MARKS).map(([kind, d]) => {
      const points = pointsOf(d);
      return { kind, xs: points.map(([px]) => px), ys: points.map(([, py]) => py) };
    });
    for (const { kind, xs, ys } of boxes) {
      xs.forEach((px, i) => {
        const distance = Math.hypot(px - 12, (ys[i] as number) - 12);
        expect(distance, kind).toBeGreaterThan(11);
        expect(distance, `${kind} stays within reach of the site`).toBeLessThan(TARGET_RADIUS);
      });
    }
    const thrill = boxes.find(({ kind }) => kind === 'thrill');
    const bruit = boxes.find(({ kind }) => kind === 'continuous');
    expect(Math.min(...(thrill?.ys ?? []))).toBeGreaterThan(Math.max(...(bruit?.ys ?? [])) + 4);
  });

  it('tell a continuous bruit from a systolic one by a line more', () => {
    expect(MARKS.continuous.startsWith(MARKS.systolic)).toBe(true);
    expect(MARKS.continuous.length).toBeGreaterThan(MARKS.systolic.length);
  });
});

describe('sizes', () => {
  it('give a finger 44 px and never draw a glyph under 16', () => {
    expect(2 * TARGET_RADIUS).toBe(44);
    for (const size of Object.values(GLYPH_SIZE)) expect(size).toBeGreaterThanOrEqual(16);
  });
});
