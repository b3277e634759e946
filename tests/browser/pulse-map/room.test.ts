import { expect } from '@open-wc/testing';
import { setFields, setPulse } from 'pulse-map/core';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { BODY_VIEWS, sitesIn, type View } from '../../../src/drawing/index.js';
import { emptyExamination, restNormal } from '../../../src/examination/index.js';
import { en } from '../../../src/locale/index.js';
import { LANGUAGES } from '../../../src/locale/list.js';
import '../../../src/locale/de/register.js';
import { emulate, seenBox } from '../../tools/real-input.js';
import { boxOf, leastDistance, type NamedBox, overlaps } from '../tools/boxes.js';
import { badLabels, drawn, impossible, longest } from '../tools/drawn.js';
import { openMap, settled } from '../tools/map.js';
import { byRole, painted } from '../tools/perceive.js';
import { figureOf } from '../tools/skin.js';
import { until } from '../tools/until.js';

const toolbarOf = (map: PulseMap): DOMRect =>
  map.shadowRoot!.querySelector('.toolbar')!.getBoundingClientRect();

const doorsOf = (map: PulseMap): NamedBox[] =>
  [...map.shadowRoot!.querySelectorAll('.doors button')].map((door) => boxOf(door, door.textContent!.trim()));

const findingsOf = (map: PulseMap): NamedBox[] =>
  [...map.shadowRoot!.querySelectorAll('.figure .finding')].map((line) =>
    boxOf(line, `"${line.textContent}"`, 1.5),
  );

async function showing(map: PulseMap, view: View): Promise<PulseMap> {
  map.view = view;
  await settled(map);
  return map;
}

describe('the height of the window', () => {
  for (const [width, height, views] of [
    [1424, 900, BODY_VIEWS],
    [1904, 1080, BODY_VIEWS],
    [1340, 920, BODY_VIEWS],
    [1400, 800, BODY_VIEWS],
    [1326, 768, BODY_VIEWS],
    [1240, 720, BODY_VIEWS],
    [374, 844, ['legs', 'right-leg', 'left-leg']],
  ] as const)
    it(`of ${width} by ${height} px holds tools and figure, feet included`, async () => {
      const map = await openMap({ width, height });
      for (const view of views) {
        await showing(map, view);
        const { bottom } = figureOf(map).getBoundingClientRect();
        expect(bottom - toolbarOf(map).top, view).to.be.at.most(height);
      }
    });

  for (const [width, height] of [
    [1400, 800],
    [1326, 768],
    [1240, 720],
  ] as const)
    for (const language of LANGUAGES.map(({ tag }) => tag))
      it(`of ${width} by ${height} px keeps names and targets apart, and the status strip in sight (${language})`, async () => {
        const map = await openMap({ width, height, examination: longest() });
        map.lang = language;
        expect(await badLabels(map, width)).to.deep.equal([]);
        // What has no room in the figure is listed below it; of an ordinary record, nothing.
        map.examination = restNormal(emptyExamination('0-3'));
        await showing(map, 'whole');
        const status = map.shadowRoot!.querySelector('.status')!.getBoundingClientRect();
        expect(status.bottom - toolbarOf(map).top).to.be.at.most(height);
        expect(leastDistance(drawn(map).targets).distance).to.be.at.least(30);
        expect(overlaps(doorsOf(map), [...drawn(map).labels, ...findingsOf(map)])).to.deep.equal([]);
      });

  it('makes no figure so low that targets, names or the buttons of plates lose their room', async () => {
    const map = await showing(await openMap({ width: 1424, height: 500 }), 'whole');
    const figure = figureOf(map).getBoundingClientRect();
    expect(figure.height).to.be.at.least(540);
    expect(leastDistance(drawn(map).targets).distance).to.be.at.least(24);
    expect(doorsOf(map)).to.have.length(9);
  });
});

describe('the choice of view', () => {
  for (const language of LANGUAGES.map(({ tag }) => tag))
    for (const width of [1182, 1224, 1300, 1424, 1500, 1904])
      it(`has room for the longest name at ${width} px (${language})`, async () => {
        const map = await openMap({ width });
        map.lang = language;
        await settled(map);
        const select = map.shadowRoot!.querySelector('select.view-choice') as HTMLSelectElement;
        const free = select.cloneNode(true) as HTMLSelectElement;
        free.style.cssText = 'position: absolute; inline-size: max-content; max-inline-size: none';
        select.after(free);
        const wanted = free.getBoundingClientRect().width;
        free.remove();
        expect(select.getBoundingClientRect().width).to.be.at.least(wanted - 0.5);
        expect(toolbarOf(map).height, 'tools in one row').to.be.below(80);
      });
});

describe('from a laptop to a projector', () => {
  it('tools, red flags, status and reading grow as the names on the figure do', async () => {
    const record = setPulse(
      restNormal(emptyExamination('0-3')),
      { site: 'popliteal', side: 'left' },
      { grade: 'absent' },
    );
    const lost = setFields(record, { inspection: { leg: { left: { digits: { first: 'gangrene' } } } } });
    const heights = async (size: { width: number; height: number }): Promise<Record<string, number>> => {
      const map = await openMap({ ...size, examination: lost });
      const high = (element: Element): number => seenBox(element).height;
      const root = map.shadowRoot!;
      return {
        name: high(figureOf(map).querySelector('.label') as Element),
        tools: high(byRole(map, 'button', 'Table')),
        flags: high(root.querySelector('limb-flags') as Element),
        status: high(root.querySelector('.status') as Element),
        reading: high(root.querySelector('pulse-reading')!.shadowRoot!.querySelector('h2, h3') as Element),
      };
    };
    const laptop = await heights({ width: 1424, height: 900 });
    const projector = await heights({ width: 1904, height: 1080 });
    for (const [part, high] of Object.entries(projector))
      expect(high / laptop[part]!, part).to.be.within(1.15, 1.3);
  });
});

describe('percents on the figure', () => {
  for (const width of [374, 804, 1424, 1904])
    it(`stand clear of each other, of names and of what was found, at ${width} px`, async () => {
      // A bruit and a thrill at every site, and pulses lost in each limb, so that as much as possible stands beside as much as possible.
      const sick = (['popliteal', 'posterior-tibial', 'dorsalis-pedis', 'radial', 'ulnar'] as const).reduce(
        (record, site) =>
          setPulse(
            setPulse(record, { site, side: 'left' }, { grade: 'absent' }),
            { site, side: 'right' },
            { grade: 'reduced' },
          ),
        setPulse(longest(), { site: 'femoral', side: 'right' }, { grade: 'reduced' }),
      );
      const map = await openMap({ width, examination: sick });
      const views: readonly View[] =
        width < 640 ? ['legs', 'right-leg', 'left-leg', 'right-arm'] : BODY_VIEWS;
      let percents = 0;
      for (const view of views) {
        await showing(map, view);
        const root = map.shadowRoot!;
        const numbers = [...root.querySelectorAll('.percent')].map((text) =>
          boxOf(text, `${text.textContent}`, 1.5),
        );
        const words = [...root.querySelectorAll('.label')].map((text) =>
          boxOf(text, `"${text.textContent?.trim()}"`, 1.5),
        );
        percents += numbers.length;
        expect(overlaps(numbers, words), view).to.deep.equal([]);
      }
      expect(percents).to.be.above(0);
    });
});

describe('what has no room beside its site', () => {
  // Everything that can be said at every site, and something else before, is more than fits.
  const now = longest();
  const before = impossible();
  /** The sites at which a drawing cuts what was found, or leaves it out. */
  const cutIn = (drawing: Element): string[] =>
    [...sitesIn('whole', now, before, undefined, undefined, en)].flatMap(([key, { finding, name }]) => {
      const lines = [...drawing.querySelectorAll(`.finding[data-place="${key}"]`)];
      const said = lines.map((line) => line.textContent.trim()).join(' ');
      return finding && said !== finding ? [name] : [];
    });

  it('is said in full on paper, beside the table', async () => {
    const map = await openMap({ width: 703, examination: now });
    map.compare = before;
    await emulate({ media: 'print' });
    try {
      const facts = () => map.shadowRoot!.querySelector('.sheet .facts');
      await until(() => facts() !== null, 'the page hears that it is printed');
      await settled(map);
      const cut = cutIn(map.shadowRoot!.querySelector('.sheet .picture .figure') as Element);
      expect(cut).not.to.have.length(0);
      const told = [...facts()!.querySelectorAll('p')].map((line) => line.textContent.trim());
      for (const name of cut) expect(told).to.include(name);
      expect(told.filter((line) => line.includes(': '))).to.have.length(cut.length);
    } finally {
      await emulate({});
      await painted();
    }
  });

  it('is said in full in the legend of a picture', async () => {
    const map = await openMap({ width: 900, examination: now });
    map.compare = before;
    await settled(map);
    const texts = [...new DOMParser().parseFromString(map.toSVG(), 'image/svg+xml').querySelectorAll('text')];
    const all = texts.map((text) => text.textContent.trim());
    const cut = all.filter((text) => text.endsWith('…')).length;
    expect(cut).to.be.above(0);
    // Long ones stand in several rows.
    const legend = all.join('; ').toLowerCase();
    const told = [...sitesIn('whole', now, before, undefined, undefined, en).values()].filter(({ name }) =>
      legend.includes(name.toLowerCase()),
    );
    expect(told.length).to.be.at.least(cut);
  });
});
