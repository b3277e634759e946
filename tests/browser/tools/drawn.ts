// What a figure with its labels looks like, and records that fill it with the longest words.
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { LISTENING_PLACES, PULSE_PLACES, setBruit, setFields, setPulse } from 'pulse-map/core';
import { VIEWS } from '../../../src/drawing/index.js';
import { emptyExamination, type Examination } from '../../../src/examination/index.js';
import { boxOf, overlaps, within } from './boxes.js';
import { upToDate } from './map.js';
import { nameOf } from './perceive.js';

/** Widths of the element from a watch-sized window to a wall, in px. */
export const WIDTHS = [280, 320, 360, 414, 640, 768, 820, 1024, 1180, 1440, 1920] as const;
const NARROW = 640;
/** Everything that can be said at every site, in the longest words of the scale with the most steps. */
export function longest(): Examination {
  const felt = PULSE_PLACES.reduce(
    (e, place) => setPulse(e, place, { grade: 'bounding', increased: true, thrill: true, expansile: true }),
    setFields(emptyExamination(), { scale: '0-4' }),
  );
  return LISTENING_PLACES.reduce((e, place) => setBruit(e, place, { bruit: 'continuous' }), felt);
}

/** Nothing could be examined anywhere, for the reason with the longest name. */
export function impossible(): Examination {
  const felt = PULSE_PLACES.reduce(
    (e, place) => setPulse(e, place, { couldNotExamine: 'line-in-place' }),
    emptyExamination('words'),
  );
  return LISTENING_PLACES.reduce(
    (e, place) => setBruit(e, place, { couldNotExamine: 'line-in-place' }),
    felt,
  );
}

export const RECORDS = {
  'nothing recorded': emptyExamination(),
  'the longest findings': longest(),
  'nothing examinable': impossible(),
};

/** What is drawn, in boxes. */
export function drawn(map: PulseMap) {
  const root = map.shadowRoot as ShadowRoot;
  const label = (text: Element): string =>
    `"${text.textContent?.trim()}" of ${(text as HTMLElement).dataset.place}`;
  const figure = root.querySelector('.figure') as SVGSVGElement;
  const enlarged = figure.getBoundingClientRect().width / figure.viewBox.baseVal.width;
  // A line of text is as high as its font's box, which is a little more than its letters; Firefox rounds it to whole px.
  const spare = 1.5 * enlarged + 0.5;
  return {
    svg: boxOf(figure, 'drawing'),
    labels: [...root.querySelectorAll('.label')].map((text) => boxOf(text, label(text), spare)),
    letters: [...root.querySelectorAll('.letters text')].map((text) =>
      boxOf(text, `letter ${text.textContent}`, spare),
    ),
    glyphs: [...root.querySelectorAll('[part~=site] .glyph')].flatMap((glyph) =>
      [...glyph.querySelectorAll('path:not(.halo, .mark-halo)')].map((path) =>
        boxOf(path, `glyph of ${glyph.closest('[data-place]')?.getAttribute('data-place')}`),
      ),
    ),
    targets: [...root.querySelectorAll('[part~=site]')].map((button) =>
      boxOf(button.querySelector('.target') as Element, nameOf(button)),
    ),
  };
}

/** Views that make sense at a width: the whole body is not shown where only arms or legs fit. */
export function viewsAt(width: number) {
  // The frame around the map takes a px on either side.
  return width - 2 < NARROW ? VIEWS.filter((view) => view !== 'whole') : VIEWS;
}

/** Labels that touch each other, a site or a letter, or are cut off, in every view of a map at a width. */
export async function badLabels(map: PulseMap, width: number): Promise<string[]> {
  const wrong: string[] = [];
  for (const view of viewsAt(width)) {
    map.view = view;
    await upToDate(map);
    const { svg, labels, letters, glyphs } = drawn(map);
    // The sole has no site.
    if (!labels.length && !view.endsWith('-sole')) wrong.push(`${view}: no labels`);
    const cut = labels.filter((label) => !within(label, svg)).map((label) => `${label.name} is cut off`);
    wrong.push(...[...overlaps(labels, [...glyphs, ...letters]), ...cut].map((text) => `${view}: ${text}`));
  }
  return wrong;
}
