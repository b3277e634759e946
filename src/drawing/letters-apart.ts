interface Lettered {
  /** Where the letter of a line stands. */
  readonly letter: { readonly x: number; readonly y: number } | undefined;
}

/**
 * Moves the letters at the ends of two lines apart where they would lie on each other.
 * @param gap least distance between them
 */
export function lettersApart<Line extends Lettered>(lines: readonly Line[], gap: number): readonly Line[] {
  const [a, b] = lines;
  if (!a?.letter || !b?.letter || Math.abs(a.letter.x - b.letter.x) > gap) return lines;
  const overlap = gap - Math.abs(a.letter.y - b.letter.y);
  if (overlap <= 0) return lines;
  const sign = a.letter.y <= b.letter.y ? -1 : 1;
  const moved = (line: Line, { x, y }: NonNullable<Line['letter']>, by: number): Line => ({
    ...line,
    letter: { x, y: y + by },
  });
  return [moved(a, a.letter, (sign * overlap) / 2), moved(b, b.letter, (-sign * overlap) / 2)];
}
