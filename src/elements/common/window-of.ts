/** Which of many equal items are rendered: those in sight and some around them. */
export interface Window {
  readonly from: number;
  /** After the last one. */
  readonly to: number;
}

/** Items kept rendered before and after those in sight. */
const AROUND = 3;

/**
 * The items to render of a scrolled list, so that ten thousand cost what twenty do.
 * @param scroll how far the list is scrolled, in px; beyond its end counts as its end
 * @param seen length of what is in sight, in px
 * @param item length of one item, in px
 */
export function windowOf(scroll: number, seen: number, item: number, count: number): Window {
  const last = Math.max(0, count * item - seen);
  const start = Math.min(Math.max(0, scroll), last);
  const from = Math.max(0, Math.floor(start / item) - AROUND);
  return { from, to: Math.min(count, Math.ceil((start + seen) / item) + AROUND) };
}

/** How far to scroll so that an item is wholly in sight, moving as little as possible. */
export function scrollTo(at: number, scroll: number, seen: number, item: number): number {
  if (at * item < scroll) return at * item;
  return Math.max(scroll, (at + 1) * item - seen);
}

/** Where a key leads in a list; `undefined` for any other key. */
export function stepOf(
  key: string,
  at: number,
  count: number,
  { onward, back, page }: { readonly onward: string; readonly back: string; readonly page: number },
): number | undefined {
  const to = {
    [onward]: at + 1,
    [back]: at - 1,
    PageDown: at + page,
    PageUp: at - page,
    Home: 0,
    End: count - 1,
  }[key];
  return to === undefined ? undefined : Math.max(0, Math.min(count - 1, to));
}
