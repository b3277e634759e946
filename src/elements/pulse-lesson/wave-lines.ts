import { pieceFromKey } from '../../anatomy/index.js';
import { type PulseWave, RISE, FALL, shapeOf } from '../../flow/index.js';
import { courseOf, radiusAt, sampleAt } from '../../drawing/index.js';

/** Numbers of one short line of the wave: both ends and half its width in figure units, arrival in s, strength from 0 to 1. */
export const LINE = { x1: 0, y1: 1, x2: 2, y2: 3, radius: 4, arrives: 5, strength: 6, size: 7 } as const;

/** Longest line along an artery, in figure units: short enough to look bent. */
const FINE = 14;

/** The arteries of a wave as short lines, in the order in which the pulse reaches them; {@link LINE} names their numbers. */
export function waveLines({ stretches }: Pick<PulseWave, 'stretches'>): Float32Array {
  const lines: number[][] = [];
  for (const { piece: key, from, to, arrives, strength } of stretches) {
    const piece = pieceFromKey(key);
    if (!piece) continue;
    const course = courseOf(piece);
    const along = (share: number): number => piece.from + (piece.to - piece.from) * share;
    const steps = Math.max(1, Math.ceil(((along(to) - along(from)) * course.length) / FINE));
    for (let i = 0; i < steps; i++) {
      const mid = (i + 0.5) / steps;
      const a = sampleAt(course, along(from + ((to - from) * i) / steps));
      const b = sampleAt(course, along(from + ((to - from) * (i + 1)) / steps));
      lines.push([
        a.x,
        a.y,
        b.x,
        b.y,
        radiusAt(piece.artery, along(from + (to - from) * mid)),
        arrives[0] + (arrives[1] - arrives[0]) * mid,
        strength[0] + (strength[1] - strength[0]) * mid,
      ]);
    }
  }
  return Float32Array.from(lines.sort((a, b) => a[LINE.arrives]! - b[LINE.arrives]!).flat());
}

/** What a wave is painted with: a canvas, in figure units. */
export type WavePaint = Pick<
  CanvasRenderingContext2D,
  'beginPath' | 'moveTo' | 'lineTo' | 'stroke' | 'globalAlpha' | 'lineWidth'
>;

/** Widest drawn line over the artery's own width, and the least that still shows, in figure units. */
const SWELL = 1.7;
const THIN = 3;

function line(paint: WavePaint, lines: Float32Array, at: number, strength: number): void {
  paint.globalAlpha = Math.min(1, 0.15 + 0.85 * strength);
  paint.lineWidth = Math.max(THIN, 2 * SWELL * lines[at + LINE.radius]! * strength);
  paint.beginPath();
  paint.moveTo(lines[at + LINE.x1]!, lines[at + LINE.y1]!);
  paint.lineTo(lines[at + LINE.x2]!, lines[at + LINE.y2]!);
  paint.stroke();
}

/**
 * Paints the wave as it stands at a time of the rhythm, in s. Where no pulse is, nothing is painted.
 * @returns how many lines were painted
 */
export function paintWave(
  paint: WavePaint,
  { beats, period }: Pick<PulseWave, 'beats' | 'period'>,
  lines: Float32Array,
  time: number,
): number {
  let painted = 0;
  for (const beat of beats) {
    const since = (((time - beat.at) % period) + period) % period;
    for (let at = 0; at < lines.length; at += LINE.size) {
      const arrives = lines[at + LINE.arrives]!;
      if (arrives > since) break;
      if (arrives < since - RISE - FALL) continue;
      const strength = lines[at + LINE.strength]! * beat.strength * shapeOf(since - arrives);
      if (strength <= 0) continue;
      line(paint, lines, at, strength);
      painted++;
    }
  }
  return painted;
}

/** Paints what stands still: each artery as wide as its pulse is strong. */
export function paintStill(paint: WavePaint, lines: Float32Array): void {
  for (let at = 0; at < lines.length; at += LINE.size)
    if (lines[at + LINE.strength]! > 0) line(paint, lines, at, 0.6 * lines[at + LINE.strength]!);
}
