import { expect } from '@open-wc/testing';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { setBruit } from '../../../src/examination/index.js';
import { PLACES } from 'pulse-map/core';
import { examined, place } from '../../tools/examinations.js';
import { emulate } from '../../tools/real-input.js';
import { openMap, settled } from '../tools/map.js';

const SICK = setBruit(
  examined({ 'left femoral': 'normal', 'left popliteal': 'absent', 'right brachial': 'reduced' }),
  place('right carotid'),
  { bruit: 'systolic' },
);

function parsed(text: string): Document {
  const document = new DOMParser().parseFromString(text, 'image/svg+xml');
  expect(document.querySelector('parsererror')?.textContent ?? '').to.equal('');
  return document;
}

/** A picture as a page elsewhere would show it, in dots. */
async function shown(source: string | Blob): Promise<ImageData> {
  const url = URL.createObjectURL(
    typeof source === 'string' ? new Blob([source], { type: 'image/svg+xml' }) : source,
  );
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    const canvas = new OffscreenCanvas(image.naturalWidth, image.naturalHeight);
    const context = canvas.getContext('2d') as OffscreenCanvasRenderingContext2D;
    context.drawImage(image, 0, 0);
    return context.getImageData(0, 0, canvas.width, canvas.height);
  } finally {
    URL.revokeObjectURL(url);
  }
}

/** The share of dots of a colour. */
function share({ data }: ImageData, [r, g, b]: readonly [number, number, number]): number {
  let count = 0;
  for (let i = 0; i < data.length; i += 4)
    if (data[i] === r && data[i + 1] === g && data[i + 2] === b) count++;
  return count / (data.length / 4);
}

const PAPER = { light: [255, 255, 255], dark: [27, 31, 37] } as const;
const BODY = { light: [238, 234, 228], dark: [38, 44, 51] } as const;
/** An absent pulse, on light. */
const GONE = [44, 31, 115] as const;

async function refused(act: () => unknown): Promise<string> {
  try {
    await act();
  } catch (error) {
    return `${(error as Error).name}: ${(error as Error).message}`;
  }
  throw new Error('nothing was refused');
}

describe('a picture of a record with a note that no XML may hold', () => {
  it('is well-formed all the same, as SVG and as PNG', async () => {
    const map = await openMap({
      examination: examined({ 'left femoral': { grade: 'normal', note: 'a\u000Bb\u0002c\uD800d\uFFFFe' } }),
    });
    const titles = [...parsed(map.toSVG()).querySelectorAll('title')].map((title) => title.textContent);
    expect(titles.join()).to.include('a\uFFFDb\uFFFDc\uFFFDd\uFFFDe');
    expect((await map.toPNG()).size).to.be.above(1000);
  });
});

describe('toSVG', () => {
  afterEach(() => emulate({}));

  it('is a document of its own, which leans on nothing outside it', async () => {
    const text = (await openMap({ examination: SICK })).toSVG();
    const { documentElement } = parsed(text);
    expect(documentElement.localName).to.equal('svg');
    expect(documentElement.querySelectorAll('style, image, use, foreignObject, script, a')).to.have.length(0);
    expect(text).not.to.match(/(var|calc|light-dark)\(|https?:(?!\/\/www\.w3\.org\/2000\/svg)|url\((?!#)/);
    const names = [...documentElement.querySelectorAll('*')].flatMap((element) =>
      element.getAttributeNames(),
    );
    expect(names.filter((name) => /^(on|class|style|part|data-|tabindex)/.test(name))).to.deep.equal([]);
  });

  it('holds what was found, what it says and the names of all sites', async () => {
    const { documentElement } = parsed((await openMap({ examination: SICK })).toSVG());
    const titles = [...documentElement.querySelectorAll('title')].map(({ textContent }) => textContent);
    expect(titles).to.include('Left popliteal: 0, absent');
    expect(titles).to.include('Right brachial: 1, reduced');
    expect(titles).to.include('Right carotid: systolic bruit');
    expect(titles.filter((title) => /^Likely occlusion: /.test(title))).to.have.length(1);
    expect(titles.filter((title) => /: /.test(title) && !/^Likely /.test(title))).to.have.length(
      PLACES.length,
    );
    expect(documentElement.querySelector('desc')?.textContent).to.include(
      'Occlusion between left femoral and left popliteal',
    );
    const labels = [...documentElement.querySelectorAll('text')].map(({ textContent }) => textContent);
    for (const name of ['Popliteal', 'Radial', 'Posterior tibial', 'R', 'L']) expect(labels).to.include(name);
  });

  it('explains the scale in use and each sign it shows', async () => {
    const labels = (map: PulseMap): (string | null)[] =>
      [...parsed(map.toSVG()).querySelectorAll('text')].map(({ textContent }) => textContent);
    const map = await openMap({ examination: SICK });
    expect(labels(map)).to.include.members(['Scale 0 to 3:', '0, absent', '2, normal', 'Not examined']);
    expect(labels(map)).to.include.members([
      'Systolic bruit',
      'Likely occlusion',
      'No pulse expected distally',
    ]);
    for (const absent of ['Thrill', 'Possible collaterals']) expect(labels(map)).not.to.include(absent);
    map.value = { ...SICK, scale: '0-4' };
    await settled(map);
    expect(labels(map)).to.include.members(['Scale 0 to 4:', '4, bounding']);
  });

  it('shows the same outside the page, light whatever the page is, and dark on request', async () => {
    await emulate({ colorScheme: 'dark' });
    const map = await openMap({ examination: SICK });
    map.style.colorScheme = 'dark';
    const light = await shown(map.toSVG());
    expect(share(light, PAPER.light)).to.be.above(0.4);
    expect(share(light, BODY.light)).to.be.above(0.1);
    expect(share(light, GONE)).to.be.above(0.0004);
    const dark = await shown(map.toSVG({ scheme: 'dark' }));
    expect(share(dark, PAPER.dark)).to.be.above(0.4);
    expect(share(dark, BODY.dark)).to.be.above(0.1);
    expect(share(dark, PAPER.light)).to.be.below(0.01);
  });

  it('takes over the colours that the page has given the map', async () => {
    const map = await openMap({ examination: SICK });
    map.style.setProperty('--pulse-map-body', 'rgb(1, 2, 3)');
    expect(share(await shown(map.toSVG()), [1, 2, 3])).to.be.above(0.1);
  });

  it('names the sites in full also where the map on the page has room for codes only', async () => {
    const map = await openMap({ width: 360, examination: SICK });
    const labels = [...parsed(map.toSVG()).querySelectorAll('text')].map(({ textContent }) => textContent);
    expect(labels).to.include('Popliteal');
  });

  it('keeps to a width that is asked for, and leaves the map as it is', async () => {
    const map = await openMap({ examination: SICK });
    const figure = map.shadowRoot?.querySelector('.figure');
    const before = figure?.outerHTML;
    expect(parsed(map.toSVG({ width: 1200 })).documentElement.getAttribute('width')).to.equal('1200');
    await settled(map);
    expect(figure?.outerHTML).to.equal(before);
    expect(map.shadowRoot?.querySelectorAll('.figure')).to.have.length(1);
  });

  it('is the figure also while the table is shown', async () => {
    const map = await openMap({ examination: SICK });
    map.display = 'table';
    await settled(map);
    expect(parsed(map.toSVG()).querySelectorAll('path')).to.have.length.above(80);
  });

  it('says which option cannot be', async () => {
    const map = await openMap();
    expect(await refused(() => map.toSVG({ width: 20 }))).to.equal(
      'RangeError: width: found 20, expected a number from 280 to 4096',
    );
    map.remove();
    expect(await refused(() => map.toSVG())).to.match(/outside any page/);
  });
});

describe('toPNG', () => {
  it('is an image of the findings, in as many dots as asked', async () => {
    const map = await openMap({ examination: SICK });
    const svg = parsed(map.toSVG({ width: 800 })).documentElement;
    const image = await map.toPNG({ width: 800, scale: 1.5 });
    expect(image.type).to.equal('image/png');
    const dots = await shown(image);
    expect(dots.width).to.equal(1200);
    expect(dots.height).to.equal(Math.round(Number(svg.getAttribute('height')) * 1.5));
    expect(share(dots, BODY.light)).to.be.above(0.1);
    expect(share(dots, GONE)).to.be.above(0.0004);
  });

  it('says which scale cannot be', async () => {
    const map = await openMap();
    expect(await refused(() => map.toPNG({ scale: 0 }))).to.match(/RangeError: scale: found 0, expected/);
    expect(await refused(() => map.toPNG({ scale: 9 }))).to.match(/RangeError: scale: found 9, expected/);
  });
});
