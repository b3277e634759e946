/** A rectangle in px of the drawing. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Whether two rectangles share more than an edge. */
export const meet = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** The room of a line of text, by the edge at which it is anchored and its middle. */
export function boxOfLine(
  { x, y, anchor }: { readonly x: number; readonly y: number; readonly anchor: 'start' | 'end' },
  width: number,
  height: number,
): Box {
  const left = anchor === 'start' ? x : x - width;
  return { left, right: left + width, top: y - height / 2, bottom: y + height / 2 };
}
