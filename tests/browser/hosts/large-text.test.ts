// A reader who sets a larger text in the browser gets it: text in rows is set in `rem`. Names on a figure keep its scale, so that they
// stay in their lanes; they grow with the zoom of the page (WCAG 2.2, success criterion 1.4.4, Resize Text).
import { expect, fixture } from '@open-wc/testing';
import { html, unsafeStatic } from 'lit/static-html.js';
import type { LimbExamination, PulseMap } from 'pulse-map';
import 'pulse-map';
import { formatExamination } from 'pulse-map/core';
import { everything } from '../tools/perceive.js';
import { drawn } from '../tools/limbs.js';
import { setViewport } from '../../tools/real-input.js';
import { chronic } from '../../../stories/limb-records.js';

const TAGS = [
  'limb-history',
  'limb-inspection',
  'limb-context',
  'limb-pressures',
  'limb-staging',
  'bedside-test',
  'limb-stopwatch',
];

const hasText = (element: Element): boolean =>
  element.checkVisibility() &&
  !['style', 'script', 'option'].includes(element.localName) &&
  [...element.childNodes].some(
    ({ nodeType, textContent }) => nodeType === Node.TEXT_NODE && textContent?.trim(),
  );

const sizes = (root: Element): Map<Element, number> =>
  new Map(
    everything(root)
      .filter(hasText)
      .map((element) => [element, parseFloat(getComputedStyle(element).fontSize)]),
  );

/** Text whose size does not follow the reader's, and whether the element is then wider than its place. */
async function unlike(
  root: HTMLElement,
  percent: number,
  expected: (now: number) => number,
): Promise<string[]> {
  document.documentElement.style.fontSize = '';
  const before = sizes(root);
  document.documentElement.style.fontSize = `${percent}%`;
  await drawn(root);
  const after = sizes(root);
  expect([...after.keys()].filter((element) => before.has(element)).length).to.be.above(2);
  const found = [...after].flatMap(([element, size]) => {
    const was = before.get(element);
    if (was === undefined) return [];
    const wanted = onFigure(element) ? was : expected(was);
    return Math.abs(size - wanted) < 0.1
      ? []
      : [`${element.localName}.${element.getAttribute('class') ?? ''} ${was} → ${size}, not ${wanted}`];
  });
  if (root.scrollWidth > root.clientWidth + 1)
    found.push(`${root.localName}: ${root.scrollWidth} px of content in ${root.clientWidth} px`);
  return [...new Set(found)];
}

/** What stands on the figure itself: its names, and the buttons beside its limbs. */
const onFigure = (element: Element): boolean =>
  element instanceof SVGElement || element.closest('.doors') !== null;

const doubled = (size: number): number => size * 2;
const same = (size: number): number => size;

describe('the size of text', () => {
  beforeEach(() => setViewport({ width: 1024, height: 900 }));
  afterEach(() => {
    document.documentElement.style.fontSize = '';
  });

  it('of the map, its panel and its table doubles with the reader’s', async () => {
    const map = await fixture<PulseMap>(
      html`<pulse-map lang="en" value=${formatExamination(chronic)}></pulse-map>`,
    );
    await drawn(map);
    map.openPlace('left popliteal');
    await drawn(map);
    expect(await unlike(map, 200, doubled)).to.deep.equal([]);
    map.display = 'table';
    await drawn(map);
    expect(await unlike(map, 200, doubled)).to.deep.equal([]);
  });

  it('of the whole examination doubles with the reader’s', async function () {
    this.timeout(120_000);
    const whole = await fixture<LimbExamination>(
      html`<limb-examination lang="en" value=${formatExamination(chronic)}></limb-examination>`,
    );
    for (const part of ['inspection', 'pulses', 'bedside', 'pressures', 'staging', 'summary'] as const)
      await whole.openPart(part);
    await drawn(whole);
    expect(await unlike(whole, 200, doubled)).to.deep.equal([]);
  });

  for (const tag of TAGS) {
    it(`of <${tag}> doubles with the reader’s`, async () => {
      const part = await fixture<HTMLElement>(html`<${unsafeStatic(tag)} lang="en"></${unsafeStatic(tag)}>`);
      await drawn(part);
      expect(await unlike(part, 200, doubled)).to.deep.equal([]);
    });
  }

  it('does not shrink in a page that makes its own rem small', async () => {
    const map = await fixture<PulseMap>(html`<pulse-map lang="en"></pulse-map>`);
    await drawn(map);
    expect(await unlike(map, 62.5, same)).to.deep.equal([]);
  });
});
