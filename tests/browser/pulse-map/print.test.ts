import { expect } from '@open-wc/testing';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { setFields } from '../../../src/examination/index.js';
import { examined } from '../../tools/examinations.js';
import { emulate, focused } from '../../tools/real-input.js';
import { openMap, settled, site } from '../tools/map.js';
import { allByRole, byRole, painted, readableText } from '../tools/perceive.js';
import { until } from '../tools/until.js';

/** A page of A4 within margins of 12 mm, in px. */
const PAPER = { width: 703, height: 1031 };

const SICK = setFields(
  examined({
    'left femoral': 'normal',
    'left popliteal': 'absent',
    'left posterior-tibial': 'absent',
    'left dorsalis-pedis': 'absent',
    'right brachial': 'reduced',
  }),
  { onset: 'acute', examiner: 'A. Example', examinedAt: '2026-03-04T10:20:00Z' },
);

const sheets = (map: PulseMap): HTMLElement[] => [
  ...(map.shadowRoot?.querySelectorAll<HTMLElement>('.sheet') ?? []),
];

function sheetOf(map: PulseMap): HTMLElement {
  const [sheet, more] = sheets(map);
  if (!sheet || more) throw new Error(`${sheets(map).length} sheets`);
  return sheet;
}

async function printed(width = PAPER.width): Promise<{ map: PulseMap; sheet: HTMLElement }> {
  const map = await openMap({ width, examination: SICK });
  await customElements.whenDefined('limb-flags');
  await emulate({ media: 'print' });
  await until(() => sheets(map).length === 1, 'the sheet');
  await settled(map);
  return { map, sheet: sheetOf(map) };
}

/** An element with everything in it, shadow trees too. */
function within(element: Element): Element[] {
  const inner = [...element.children, ...(element.shadowRoot?.children ?? [])];
  return [element, ...inner.flatMap(within)];
}

/** What the map draws on the screen; its sheet has a figure of its own. */
const figureOf = (map: PulseMap): Element | null | undefined =>
  map.shadowRoot?.querySelector('.surface .figure');

describe('the map on paper', () => {
  // The page hears of the medium when it is next painted.
  afterEach(async () => {
    await emulate({});
    await painted();
  });

  it('is a sheet with figure, table and reading, without the tools', async () => {
    const { map, sheet } = await printed();
    expect(byRole(sheet, 'img', /Arteries of the body/).getBoundingClientRect().height).to.be.above(300);
    expect(byRole(sheet, 'table').getBoundingClientRect().height).to.be.above(150);
    const reading = sheet.querySelector('pulse-reading');
    expect(readableText(reading as Element)).to.include('Occlusion between left femoral and left popliteal');
    expect(readableText(reading as Element)).to.include('not a diagnosis');
    expect(allByRole(map, 'toolbar')).to.have.length(0);
    expect(allByRole(map, 'button')).to.have.length(0);
  });

  it('tables what was found on each side, and who found it when', async () => {
    const { sheet } = await printed();
    const rows = allByRole(sheet, 'row').map(readableText);
    expect(rows).to.include('Popliteal – 0, absent');
    expect(rows).to.include('Brachial 1, reduced –');
    expect(readableText(sheet)).to.include('A. Example');
    expect(readableText(sheet)).to.match(/4 March 2026/);
    expect(readableText(sheet)).to.include('Onset: Acute');
  });

  it('keeps the red flags, before anything else', async () => {
    const { sheet } = await printed();
    const flags = sheet.querySelector('limb-flags') as HTMLElement;
    expect(readableText(flags)).to.include('Possible acute limb ischaemia (ALI): left leg');
    const top = flags.getBoundingClientRect();
    expect(top.height).to.be.above(40);
    for (const other of [...sheet.children].filter((child) => child !== flags))
      expect(other.getBoundingClientRect().top).to.be.at.least(top.bottom);
  });

  it('needs no colour', async () => {
    const { sheet } = await printed();
    const coloured = new Set<string>();
    for (const element of within(sheet)) {
      const style = getComputedStyle(element);
      for (const name of [
        'color',
        'fill',
        'stroke',
        'background-color',
        'border-top-color',
        'border-left-color',
      ]) {
        const [r, g, b] = (style.getPropertyValue(name).match(/[\d.]+/g) ?? []).map(Number);
        if (r !== undefined && (r !== g || g !== b)) coloured.add(`${element.localName} ${name}`);
      }
    }
    expect([...coloured]).to.deep.equal([]);
  });

  it('fits a page of A4, whatever the width on the screen was', async () => {
    for (const width of [PAPER.width, 1240]) {
      const { sheet } = await printed(width);
      sheet.style.inlineSize = `${PAPER.width}px`;
      expect(sheet.getBoundingClientRect().height).to.be.at.most(PAPER.height);
      await emulate({});
    }
  });

  it('is made as soon as printing begins, without waiting for a frame, and goes when it is over', async () => {
    const map = await openMap({ examination: SICK });
    site(map, 'left femoral').focus();
    expect(sheets(map)).to.have.length(0);
    const figure = figureOf(map);
    window.dispatchEvent(new Event('beforeprint'));
    await new Promise((resolve) => setTimeout(resolve));
    const sheet = sheetOf(map);
    expect(sheet.textContent).to.include('0, absent');
    expect(getComputedStyle(sheet).visibility).to.equal('hidden');
    window.dispatchEvent(new Event('afterprint'));
    await settled(map);
    expect(sheets(map)).to.have.length(0);
    expect(figureOf(map) === figure).to.equal(true);
    expect(focused() === site(map, 'left femoral')).to.equal(true);
  });

  it('ends with the print, even where no map was left to hear of its end', async () => {
    const map = await openMap({ examination: SICK });
    window.dispatchEvent(new Event('beforeprint'));
    await settled(map);
    expect(sheets(map)).to.have.length(1);
    map.remove();
    window.dispatchEvent(new Event('afterprint'));
    expect(sheets(await openMap({ examination: SICK }))).to.have.length(0);
  });
});
