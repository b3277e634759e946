// What a person does, for browser tests: real keys, mouse, pen and touch through the browser's own input path,
// so that focus, default actions and hit testing behave as they do under a hand.
import { executeServerCommand } from '@web/test-runner-commands';

export type PointerKind = 'mouse' | 'pen' | 'touch';
export type Point = readonly [x: number, y: number];
export type Target = Element | Point;

interface PointerOptions {
  kind?: PointerKind;
  button?: 'left' | 'right';
  /** How often, e.g. 2 for a double click. */
  times?: number;
}

const frame = () => new Promise(requestAnimationFrame);

/** The CSS zoom under which an element stands. */
function zoomOf(element: Node | null): number {
  if (!(element instanceof Element)) return 1;
  const parent = element.assignedSlot ?? element.parentNode;
  const above = parent instanceof ShadowRoot ? parent.host : parent;
  return Number(getComputedStyle(element).zoom) * zoomOf(above);
}

/** Where an element is seen. WebKit, which has no `currentCSSZoom`, tells the box of what is zoomed as if it were not. */
export function seenBox(element: Element): DOMRect {
  const box = element.getBoundingClientRect();
  if ('currentCSSZoom' in element) return box;
  const zoom = zoomOf(element);
  return new DOMRect(box.x * zoom, box.y * zoom, box.width * zoom, box.height * zoom);
}

/** Middle of an element in CSS px of the viewport, scrolled into view first; a point is taken as it is. */
async function pointOf(target: Target): Promise<Point> {
  if (!(target instanceof Element)) return target;
  const middle = (): Point => {
    const box = seenBox(target);
    if (box.width === 0 && box.height === 0)
      throw new Error(`<${target.localName}> has no size, so no hand can reach it`);
    return [box.x + box.width / 2, box.y + box.height / 2];
  };
  // A page may move again while it is painted. Firefox takes a press to be where things stood when they were last painted.
  for (let before = String(middle()), tries = 0; tries < 20; tries++) {
    target.scrollIntoView({ block: 'nearest', inline: 'nearest', behavior: 'instant' });
    // Firefox stops as soon as some of an element of SVG is in sight.
    const { top, bottom } = seenBox(target);
    if (target instanceof SVGElement && bottom - top < innerHeight)
      scrollBy({ top: Math.max(0, bottom - innerHeight) + Math.min(0, top), behavior: 'instant' });
    const now = String(middle());
    if (now === before) break;
    before = now;
    for (let frames = 0; frames < 2; frames++) await frame();
  }
  return middle();
}

/** Presses and releases on a target: `await click(button)`, `await click(site, { kind: 'pen' })`. */
export async function click(
  target: Target,
  { kind = 'mouse', button = 'left', times = 1 }: PointerOptions = {},
) {
  const [x, y] = await pointOf(target);
  const events: object[] = kind === 'touch' ? [] : [{ kind, type: 'move', x, y }];
  for (let clickCount = 1; clickCount <= times; clickCount++) {
    events.push(
      { kind, type: 'down', x, y, button, clickCount },
      { kind, type: 'up', x, y, button, clickCount },
    );
  }
  await executeServerCommand('real-pointer', events);
}

/** Moves the mouse (or hovering pen) over a target without pressing. */
export async function hover(target: Target, kind: 'mouse' | 'pen' = 'mouse') {
  const [x, y] = await pointOf(target);
  await executeServerCommand('real-pointer', [{ kind, type: 'move', x, y }]);
}

async function dragged(targets: readonly Target[], kind: PointerKind): Promise<object[]> {
  const points: Point[] = [];
  for (const target of targets) points.push(await pointOf(target));
  const [first, ...rest] = points;
  if (!first || rest.length === 0) throw new Error('drag needs at least two targets');
  const events: object[] = kind === 'touch' ? [] : [{ kind, type: 'move', x: first[0], y: first[1] }];
  events.push({ kind, type: 'down', x: first[0], y: first[1] });
  let [x, y] = first;
  for (const [nextX, nextY] of rest) {
    for (let step = 1; step <= 10; step++) {
      const part = step / 10;
      events.push({
        kind,
        type: 'move',
        pressed: true,
        x: x + (nextX - x) * part,
        y: y + (nextY - y) * part,
      });
    }
    [x, y] = [nextX, nextY];
  }
  events.push({ kind, type: 'up', x, y });
  return events;
}

/** Presses at the first target, moves through the others (10 steps between two) and lets go at the last. */
export async function drag(targets: readonly Target[], { kind = 'mouse' }: { kind?: PointerKind } = {}) {
  await executeServerCommand('real-pointer', await dragged(targets, kind));
}

/** The same by a finger where the browser may take it for its own, to scroll. */
export async function swipe(targets: readonly Target[]) {
  await executeServerCommand('real-swipe', await dragged(targets, 'touch'));
}

/** Makes the page as large as that, in CSS px. */
export async function setViewport(size: { readonly width: number; readonly height: number }): Promise<void> {
  await executeServerCommand('real-viewport', size);
}

const keys = (payload: {
  readonly type?: string;
  readonly press?: string;
  readonly down?: string;
  readonly up?: string;
}) => executeServerCommand('real-keys', payload);

/** Presses keys one after another; a chord is written `Shift+Tab`, `Control+z`. */
export async function press(...chords: string[]) {
  for (const chord of chords) {
    const parts = chord.length > 1 ? chord.split('+') : [chord];
    const named = parts.pop() ?? chord;
    const key = named === 'Space' ? ' ' : named;
    for (const modifier of parts) await keys({ down: modifier });
    await keys({ press: key });
    for (const modifier of parts.reverse()) await keys({ up: modifier });
  }
}

/** Types text into whatever has the focus. */
export async function type(text: string) {
  await keys({ type: text });
}

/** Shows the page at its own size: Firefox shows it at a tenth otherwise, and scrolls by whole pixels of the screen, ten of the page. */
export async function atFullSize(act: () => Promise<void>): Promise<void> {
  await executeServerCommand('real-size', true);
  try {
    await act();
  } finally {
    await executeServerCommand('real-size', false);
  }
}

export interface Media {
  colorScheme?: 'light' | 'dark';
  reducedMotion?: 'reduce' | 'no-preference';
  forcedColors?: 'active' | 'none';
  media?: 'print' | 'screen';
}

const FEATURES = {
  colorScheme: 'prefers-color-scheme',
  reducedMotion: 'prefers-reduced-motion',
  forcedColors: 'forced-colors',
} as const;

/** Shows the page as a person's settings would. It outlives the test: `afterEach(() => emulate({}))`. */
export async function emulate({ media = '' as never, ...settings }: Media) {
  const features = Object.entries(FEATURES).map(([key, name]) => ({
    name,
    value: settings[key as keyof typeof FEATURES] ?? '',
  }));
  await executeServerCommand('real-media', { media, features });
}

/** Everything on the page as the browser tells it to assistive technology: its own roles, names by its own rules. */
export async function accessibilityTree(): Promise<{ role: string; name: string }[]> {
  return executeServerCommand('real-tree');
}

/** A page of paper: its text, its size in mm, and its headings by the tags of the file. */
export interface PrintedPage {
  readonly text: string;
  readonly width: number;
  readonly height: number;
  readonly headings: readonly string[];
}

/** Prints the page to a tagged PDF, as the browser does it, and reads that back. */
export async function printedPages(): Promise<{
  readonly tagged: boolean;
  readonly pages: readonly PrintedPage[];
}> {
  return executeServerCommand('real-print', {});
}

/** The element that has the focus, looked for through open shadow roots. */
export function focused(): Element | null {
  let element = document.activeElement;
  while (element?.shadowRoot?.activeElement) element = element.shadowRoot.activeElement;
  return element;
}

/**
 * Runs `act` and returns what it wrote with console.warn and console.error.
 * Anything written outside of this fails the test at once.
 */
export async function consoleOf(act: () => unknown): Promise<string[]> {
  const heard: string[] = [];
  const { warn, error } = console;
  console.warn = console.error = (...parts: unknown[]) => void heard.push(parts.map(String).join(' '));
  try {
    await act();
  } finally {
    Object.assign(console, { warn, error });
  }
  return heard;
}
