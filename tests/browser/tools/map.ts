// A pulse map on a page, and what one sees of it.
import { fixture } from '@open-wc/testing';
import { html, type TemplateResult } from 'lit';
import 'pulse-map/elements/pulse-map/define';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { later } from '../../../src/elements/pulse-map/fetched.js';
import { emptyExamination, type Examination } from '../../../src/examination/index.js';
import { allByRole, byRole, nameOf, painted } from './perceive.js';
import { click, setViewport } from '../../tools/real-input.js';

/** A map within a template of its own. */
export async function mapWithin<E extends Element = HTMLElement>(
  template: TemplateResult,
): Promise<{ root: E; map: PulseMap }> {
  const root = await fixture<E>(template);
  const map = (root.localName === 'pulse-map'
    ? root
    : root.querySelector('pulse-map')) as unknown as PulseMap;
  await settled(map);
  return { root, map };
}

/** A map alone on the page, as wide as asked; the window is made large enough for it. */
export async function openMap({
  width = 900,
  height = 1000,
  examination,
}: { width?: number; height?: number; examination?: Examination } = {}): Promise<PulseMap> {
  await setViewport({ width: width + 40, height });
  const { map } = await mapWithin(
    html`<div style="width:${width}px">
      <pulse-map .value=${examination ?? emptyExamination()}></pulse-map>
    </div>`,
  );
  return map;
}

/** Maps that were drawn with what is fetched after the first paint: from then on they draw themselves anew whenever they must. */
const complete = new WeakSet<PulseMap>();

/** Up to date, with what is fetched after the first paint, but not waited for until it is painted: enough where boxes are measured. */
export async function upToDate(map: PulseMap): Promise<void> {
  await map.updateComplete;
  if (complete.has(map)) return;
  await later.load();
  map.requestUpdate();
  await map.updateComplete;
  if (later.part) complete.add(map);
}

/** Drawn, with whatever the drawing itself set off and what is fetched after the first paint. */
export async function settled(map: PulseMap): Promise<void> {
  await map.updateComplete;
  await painted();
  await upToDate(map);
}

const large = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The site's button by the name one says: `left femoral`, `abdominal aorta`. */
export function site(map: PulseMap, name: string): SVGGElement {
  return byRole<SVGGElement>(map, 'button', new RegExp(`^${large(name)}: `));
}

/** What is said to be recorded at a site. */
export function saidAt(map: PulseMap, name: string): string {
  return nameOf(site(map, name)).replace(/^[^:]*: /, '');
}

/** Every site in view with what is said to be recorded there. */
export function saidAll(map: PulseMap): Record<string, string> {
  const all = allByRole(map, 'button', /^[A-Z][a-z ]+: /).filter((button) => button.matches('[part~=site]'));
  return Object.fromEntries(
    all.map((button) =>
      nameOf(button)
        .split(/: (.*)/s)
        .slice(0, 2),
    ),
  );
}

export function chooser(map: PulseMap): HTMLElement | undefined {
  return allByRole(map, 'dialog')[0];
}

/** Presses something in the open chooser by its words. */
export async function choose(map: PulseMap, role: string, name: string | RegExp): Promise<void> {
  const panel = chooser(map);
  if (!panel) throw new Error(`nothing is open in which to choose ${String(name)}`);
  await click(byRole(panel, role, name));
  await settled(map);
}

/** Opens a site by mouse. */
export async function openSite(map: PulseMap, name: string): Promise<HTMLElement> {
  await click(site(map, name));
  await settled(map);
  const panel = chooser(map);
  if (!panel) throw new Error(`a click on ${name} opened nothing`);
  return panel;
}

/** What was spoken last. */
export function status(map: PulseMap): string {
  // The flags have a line of their own that is spoken.
  const strip = allByRole(map, 'status').find((one) => one.closest('[part~=status]'));
  return (strip?.textContent ?? '').replace(/\s+/g, ' ').trim();
}

/** The sentences that say where the block is. */
export function leads(map: Element): string[] {
  return allByRole(map, 'heading')
    .filter((heading) => heading.matches('[part~=lead]'))
    .map(nameOf);
}

/** How often the page was told of a change since. */
export function eventsOf(target: EventTarget): { input: number; change: number } {
  const count = { input: 0, change: 0 };
  for (const type of ['input', 'change'] as const) target.addEventListener(type, () => count[type]++);
  return count;
}

/**
 * States as normal whatever is shown and not stated, portion by portion as it is named.
 * @returns the names of the acts
 */
export async function markNormal(
  map: PulseMap,
  act: (button: HTMLElement) => Promise<unknown> = (button) => click(button),
): Promise<string[]> {
  const named: string[] = [];
  await act(byRole(map, 'button', 'Mark normal'));
  await settled(map);
  for (;;) {
    const [next] = allByRole(map, 'button', /: \d+ pulses? normal/);
    if (!next) return named;
    named.push(nameOf(next));
    await act(next);
    await settled(map);
  }
}
