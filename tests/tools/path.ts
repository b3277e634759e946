// Path data as points, for tests: what a renderer would draw, flattened.

export type XY = readonly [x: number, y: number];

/** Points along each cubic and each half circle. */
const FINE = 12;

/**
 * The contours of path data made of M, and of l, c, a (half circles) and z in relative form.
 * @param unit what a number of the data stands for
 */
export function contours(d: string, unit = 1): XY[][] {
  const all: XY[][] = [];
  let x = 0;
  let y = 0;
  for (const [, letter, rest = ''] of d.matchAll(/([MlcazZ])([^MlcazZ]*)/g)) {
    const n = [...rest.matchAll(/-?\d*\.?\d+/g)].map((text) => unit * Number(text));
    const contour = all.at(-1);
    const at = (i: number): number => n[i] as number;
    if (letter === 'M') {
      all.push([[at(0), at(1)]]);
      [x, y] = [at(0), at(1)];
    } else if (letter === 'l') {
      contour?.push([(x += at(0)), (y += at(1))]);
    } else if (letter === 'c') {
      for (let k = 1; k <= FINE; k++) {
        const u = k / FINE;
        const mix = (a: number, b: number, c: number): number =>
          3 * (1 - u) ** 2 * u * a + 3 * (1 - u) * u * u * b + u ** 3 * c;
        contour?.push([x + mix(at(0), at(2), at(4)), y + mix(at(1), at(3), at(5))]);
      }
      x += at(4);
      y += at(5);
    } else if (letter === 'a') {
      const [dx, dy] = [at(5), at(6)];
      const turn = at(4) > 0 ? 1 : -1;
      for (let k = 1; k <= FINE; k++) {
        const angle = Math.PI - (Math.PI * k) / FINE;
        const across = (turn * Math.sin(angle)) / 2;
        const along = (1 + Math.cos(angle)) / 2;
        contour?.push([x + dx * along + dy * across, y + dy * along - dx * across]);
      }
      x += dx;
      y += dy;
    } else {
      [x, y] = contour?.[0] ?? [x, y];
    }
  }
  return all;
}

/** Signed area: positive when a contour runs clockwise as seen on a screen. */
export function signedArea(points: readonly XY[]): number {
  return points.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % points.length] as XY;
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
}
