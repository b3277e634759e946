import { render, svg } from 'lit';
import type { ScaleId } from '../../../examination/index.js';
import { styled } from '../../common/styled.js';
import { type FigureView, renderFigure } from '../figure/render.js';
import { pictureLegend } from './legend.js';

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

/** Text that goes with the figure. */
export interface PictureText {
  readonly title: string;
  /** The reading, one sentence each. */
  readonly sentences: readonly string[];
  readonly scale: ScaleId;
}

/** @throws RangeError that names the option, what was found and what was expected */
export function inRange(name: string, value: number, least: number, most: number): number {
  if (value >= least && value <= most) return value;
  throw new RangeError(`${name}: found ${String(value)}, expected a number from ${least} to ${most}`);
}

/** CSS properties that are written as presentation attributes, which every program understands. */
const PAINT = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-opacity',
  'stroke-linecap',
  'stroke-linejoin',
  'stroke-dasharray',
  'paint-order',
  'opacity',
] as const;
const TYPE = ['font-size', 'font-weight', 'font-style'] as const;
/** Their initial values, which are left out. */
const USUAL: Readonly<Record<string, string>> = {
  fill: 'rgb(0, 0, 0)',
  'fill-opacity': '1',
  stroke: 'none',
  'stroke-width': '1px',
  'stroke-opacity': '1',
  'stroke-linecap': 'butt',
  'stroke-linejoin': 'miter',
  'stroke-dasharray': 'none',
  'paint-order': 'normal',
  opacity: '1',
  'font-weight': '400',
  'font-style': 'normal',
};

function paint(element: Element): void {
  const style = getComputedStyle(element);
  const isText = element.localName === 'text';
  const bare = style.stroke === 'none';
  for (const name of isText ? [...PAINT, ...TYPE] : PAINT) {
    const value = style.getPropertyValue(name);
    if (value === USUAL[name] || (bare && /^stroke-|paint-order/.test(name))) element.removeAttribute(name);
    else element.setAttribute(name, value.replace(/(\d)px\b/g, '$1'));
  }
}

/** Characters that XML does not allow: control characters, lone surrogates and two noncharacters. */
const NOT_IN_XML = /(?![\t\n\r])\p{Cc}|\p{Cs}|[\uFFFE\uFFFF]/gu;

function xmlOf(root: Element): string {
  const text = new XMLSerializer().serializeToString(root);
  return text.replace(NOT_IN_XML, '\uFFFD').replace(/>\s+</g, '><');
}

const UNSEEN = '.target, .ring, [d=""], .halo:not([d]), .drag, .ink';
const HANDLES = /^(class|style|role|tabindex|part|data-.*|aria-.*)$/;

/** Removes what only interaction or style sheets need, and what draws nothing. */
function strip(root: Element): void {
  for (const element of root.querySelectorAll(UNSEEN)) element.remove();
  const comments = document.createTreeWalker(root, NodeFilter.SHOW_COMMENT);
  const found: Node[] = [];
  while (comments.nextNode()) found.push(comments.currentNode);
  for (const comment of found) comment.parentNode?.removeChild(comment);
  for (const site of root.querySelectorAll('.site')) {
    const title = document.createElementNS(root.namespaceURI, 'title');
    title.textContent = site.getAttribute('aria-label');
    site.prepend(title);
  }
  const all = [root, ...root.querySelectorAll('*')];
  for (const element of all.filter((one) => /^(path|circle|ellipse|rect|text)$/.test(one.localName)))
    paint(element);
  for (const element of all.reverse()) {
    if (element.localName === 'g' && !element.childElementCount) element.remove();
    for (const name of element.getAttributeNames()) if (HANDLES.test(name)) element.removeAttribute(name);
  }
}

/**
 * The figure with its legend as a standalone document, without external style sheets, fonts or URLs.
 * @param place where it is rendered briefly and hidden, so that style sheets and custom properties apply
 */
export function drawSVG(
  place: ParentNode & Node,
  view: FigureView,
  { title, sentences, scale }: PictureText,
  scheme: 'light' | 'dark',
): { readonly text: string; readonly width: number; readonly height: number } {
  const { width } = view.layout;
  const legend = pictureLegend(view, scale, 8);
  const height = Math.ceil(view.layout.height + legend.height);
  const stage = document.createElement('div');
  stage.style.cssText = `position: absolute; inline-size: 0; block-size: 0; overflow: hidden; visibility: hidden; color-scheme: ${scheme}`;
  place.append(stage);
  try {
    render(
      svg`<svg class="figure" viewBox="0 0 ${width} ${height}" width=${width} height=${height}><title>${title}</title><desc>${sentences.join('\n')}</desc>
        <rect width=${width} height=${height} ${styled({ fill: 'var(--_paper)' })}></rect>${renderFigure(view)}${legend.template}</svg>`,
      stage,
    );
    const root = stage.querySelector('svg') as SVGSVGElement;
    root.setAttribute('font-family', getComputedStyle(root).fontFamily);
    strip(root);
    root.setAttribute('role', 'img');
    return { text: xmlOf(root), width, height };
  } finally {
    stage.remove();
  }
}

/**
 * Draws a picture into an image.
 * @throws Error when the browser cannot, for instance because a content security policy forbids `data:` images
 */
export async function drawPNG(
  picture: { readonly text: string; readonly width: number; readonly height: number },
  scale: number,
): Promise<Blob> {
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
