import { GLYPHS, MARKS, NUMERALS, NUMERAL_SHIFT } from '../glyphs.js';
import { GLYPH_PAINT, type Paint } from '../paint.js';
import type { Shown } from '../shown.js';
import { type Ink, keptPaint, painted, type Painted } from './ink.js';
import { pathOf } from './xml.js';

const TABLE: Readonly<Record<string, Paint>> = GLYPH_PAINT;

/** The paint of a part of a glyph. */
export function glyphPaint(ink: Ink, part: string, kind?: string): Painted {
  const own = kind && TABLE[`.g-${kind} .${part}`];
  return keptPaint(ink, `glyph ${kind} ${part}`, () =>
    painted(ink, [GLYPH_PAINT['.glyph path'], TABLE[`.glyph .${part}`] ?? {}, own || {}]),
  );
}

/** The parts of a glyph in its 24-unit box, with a halo where it lies on the figure. */
export function glyphText({ kind, numeral, marks }: Shown, ink: Ink, halo: boolean): string {
  const [shape, second] = GLYPHS[kind];
  const marked = marks.map((mark) => MARKS[mark]).join('');
  const shift = NUMERAL_SHIFT[kind];
  return [
    halo ? pathOf(shape.d, glyphPaint(ink, 'halo')) : '',
    halo ? pathOf(marked, glyphPaint(ink, 'mark-halo')) : '',
    pathOf(shape.d, glyphPaint(ink, shape.paint, kind)),
    second ? pathOf(second.d, glyphPaint(ink, second.paint, kind)) : '',
    pathOf(numeral === null ? '' : (NUMERALS[numeral] ?? ''), {
      ...glyphPaint(ink, 'numeral', kind),
      transform: shift && `translate(0 ${shift})`,
    }),
    pathOf(marked, glyphPaint(ink, 'mark')),
  ].join('');
}

/** Which coordinate each number of a command is; a flag or a radius is none. */
const COORDINATES: Readonly<Record<string, string>> = {
  M: 'xy',
  L: 'xy',
  H: 'x',
  V: 'y',
  C: 'xyxyxy',
  S: 'xyxy',
  A: '-----xy',
};

/** One number of path data with the text before it, and which coordinate it is. */
interface Step {
  readonly before: string;
  readonly value: number;
  readonly of: 'x' | 'y' | undefined;
}

const STEPS = new Map<string, { readonly steps: readonly Step[]; readonly rest: string }>();

function stepsOf(d: string): { readonly steps: readonly Step[]; readonly rest: string } {
  const known = STEPS.get(d);
  if (known) return known;
  const steps: Step[] = [];
  let before = '';
  for (const [, command = '', numbers = ''] of d.matchAll(/([A-Za-z])([^A-Za-z]*)/g)) {
    const kinds = COORDINATES[command] ?? '-';
    before += command;
    (numbers.match(/-?(?:\d+\.?\d*|\.\d+)/g) ?? []).forEach((text, i) => {
      const kind = kinds[i % kinds.length];
      steps.push({ before, value: Number(text), of: kind === '-' ? undefined : (kind as 'x' | 'y') });
      before = ' ';
    });
    before = before === ' ' ? '' : before;
  }
  const found = { steps, rest: before };
  STEPS.set(d, found);
  return found;
}

/** Path data moved by a distance. */
export function shifted(d: string, dx: number, dy: number): string {
  const { steps, rest } = stepsOf(d);
  let text = '';
  for (const { before, value, of } of steps) {
    const moved = of === 'x' ? value + dx : of === 'y' ? value + dy : value;
    const written = Math.round(moved * 10) / 10;
    text += (written < 0 && before === ' ' ? '' : before) + written;
  }
  return text + rest;
}
