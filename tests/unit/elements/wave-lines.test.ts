import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  LINE,
  paintStill,
  paintWave,
  waveLines,
  type WavePaint,
} from '../../../src/elements/pulse-lesson/wave-lines.js';
import { FALL, pulseWave, RISE } from '../../../src/flow/index.js';

/** A canvas that only remembers how strong each painted line was. */
function paper(): WavePaint & {
  readonly painted: { x: number; line: string; alpha: number; width: number }[];
} {
  const painted: { x: number; line: string; alpha: number; width: number }[] = [];
  let [x, y] = [0, 0];
  let end = '';
  return {
    painted,
    globalAlpha: 1,
    lineWidth: 1,
    beginPath: () => undefined,
    moveTo: (atX: number, atY: number) => void ([x, y] = [atX, atY]),
    lineTo: (toX: number, toY: number) => void (end = `${toX} ${toY}`),
    stroke() {
      painted.push({ x, line: `${x} ${y} ${end}`, alpha: this.globalAlpha, width: this.lineWidth });
    },
  };
}

const blocked = pulseWave({
  age: 60,
  heartRate: 60,
  lesions: [{ piece: 'left superficial-femoral', extent: 'whole' }],
});
const lines = waveLines(blocked);

describe('the drawn pulse wave', () => {
  it('is painted where the pulse has arrived at that time, and nowhere else', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.99, noNaN: true }), (time) => {
        const sheet = paper();
        const count = paintWave(sheet, blocked, lines, time);
        const due: number[] = [];
        for (let at = 0; at < lines.length; at += LINE.size) {
          const since = time - lines[at + LINE.arrives]!;
          if (since > 0 && since < RISE + FALL && lines[at + LINE.strength]! > 0) due.push(lines[at]!);
        }
        expect(sheet.painted.map(({ x }) => x).sort()).toEqual(due.sort());
        expect(count).toBe(sheet.painted.length);
      }),
    );
  });

  it('has left the arteries before the next beat, and then nothing is painted', () => {
    expect(paintWave(paper(), blocked, lines, 0.9)).toBe(0);
    expect(paintWave(paper(), blocked, lines, 0.05)).toBeGreaterThan(20);
  });

  it('never paints the blocked artery, moving or still', () => {
    const sheet = paper();
    for (let time = 0; time < 1; time += 0.02) paintWave(sheet, blocked, lines, time);
    paintStill(sheet, lines);
    const whole = waveLines({
      stretches: blocked.stretches.filter(({ piece }) => piece === 'left superficial-femoral'),
    });
    expect(whole.length).toBeGreaterThan(10 * LINE.size);
    const there = new Set<string>();
    for (let at = 0; at < whole.length; at += LINE.size) there.add(whole.slice(at, at + 4).join(' '));
    const over = sheet.painted.filter(({ line }) => there.has(line));
    expect(over.length).toBe(0);
  });

  it('is thinner and fainter beyond a narrowing', () => {
    const widest = (narrowing: number): number => {
      const sheet = paper();
      const { stretches } = pulseWave({ lesions: [{ piece: 'left external-iliac', narrowing }] });
      paintStill(
        sheet,
        waveLines({ stretches: stretches.filter(({ piece }) => piece === 'left superficial-femoral') }),
      );
      return Math.max(0, ...sheet.painted.map(({ width }) => width));
    };
    expect(widest(75)).toBeLessThan(widest(0));
  });
});
