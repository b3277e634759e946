import type { LitElement } from 'lit';
import { PALETTE, type Token } from '../../../drawing/palette.js';
import { stillPicture, type StillPicture } from '../../../drawing/still/index.js';
import type { View } from '../../../drawing/views.js';
import type { Examination } from '../../../examination/index.js';
import type { Messages } from '../../../locale/index.js';
import { stillPlateFor } from '../plate/fetched.js';

/** Options of a picture. */
export interface PictureOptions {
  /** Colours of the picture, whatever the page shows: `light` unless told otherwise. */
  readonly scheme?: 'light' | 'dark';
  /** Width in px, 280 to 4096. The width shown now, but at least 760, from which on sites carry their full names. */
  readonly width?: number;
}

export interface PNGOptions extends PictureOptions {
  /** Dots of the image for each px of the picture, above 0 and at most 8; 2 unless told otherwise. */
  readonly scale?: number;
}

/** @throws RangeError that names the option, what was found and what was expected */
function inRange(name: string, value: number, least: number, most: number): number {
  if (value >= least && value <= most) return value;
  throw new RangeError(`${name}: found ${String(value)}, expected a number from ${least} to ${most}`);
}

/** The colours that the page has given an element, in a scheme. */
function coloursOn(element: LitElement, scheme: 'light' | 'dark'): Partial<Record<Token, string>> {
  const style = getComputedStyle(element);
  const given = (Object.keys(PALETTE) as Token[]).filter((token) =>
    style.getPropertyValue(`--pulse-map-${token}`),
  );
  if (!given.length) return {};
  const probe = document.createElement('span');
  probe.style.setProperty('color-scheme', scheme);
  element.renderRoot.append(probe);
  try {
    return Object.fromEntries(
      given.map((token) => {
        probe.style.setProperty('color', `var(--pulse-map-${token})`);
        return [token, getComputedStyle(probe).color];
      }),
    );
  } finally {
    probe.remove();
  }
}

/** Minimum default width of a picture in px: enough for the full names of all sites. */
const NAMED = 760;

/** What a map shows, as far as a picture of it shows the same. */
export interface Shown {
  readonly view: View;
  readonly width: number;
  readonly examination: Examination;
  readonly earlier: Examination | undefined;
  readonly words: Messages;
  readonly labelText: string;
}

/**
 * The still picture of a map, in the colours, lines and font that the page gives it.
 * @throws RangeError for a width that is none; Error outside a page
 */
export function drawStill(
  element: LitElement,
  { scheme = 'light', width }: PictureOptions,
  shown: Shown,
): StillPicture {
  if (!element.isConnected)
    throw new Error('picture: found the element outside any page, expected it inside one');
  if (width !== undefined) inRange('width', width, 280, 4096);
  const { view, words, earlier, labelText } = shown;
  const style = getComputedStyle(element);
  const lines = Number.parseFloat(style.getPropertyValue('--pulse-map-stroke'));
  return stillPicture(shown.examination, {
    scheme,
    colours: coloursOn(element, scheme),
    lines: Number.isNaN(lines) ? 1 : lines,
    font: style.fontFamily,
    view,
    width: width ?? Math.max(NAMED, shown.width),
    names: true,
    title: labelText || words.map.name,
    ...(earlier && { earlier }),
    words,
    plate: stillPlateFor(view),
  });
}

/**
 * Draws a picture into an image.
 * @throws RangeError for a scale that is none; Error when the browser cannot, for instance because a content security policy forbids `data:` images
 */
export async function drawPNG(picture: StillPicture, scale: number): Promise<Blob> {
  inRange('scale', scale, Number.MIN_VALUE, 8);
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(picture.text)}`;
  try {
    await image.decode();
  } catch (cause) {
    throw new Error(
      'toPNG: the browser did not draw the picture; a content security policy must allow "img-src data:"',
      {
        cause,
      },
    );
  }
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(picture.width * scale);
  canvas.height = Math.round(picture.height * scale);
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) => {
    canvas.toBlob((blob) => {
      if (blob) resolve(blob);
      else reject(new Error(`toPNG: the browser made no image of ${canvas.width} x ${canvas.height} dots`));
    }, 'image/png');
  });
}
