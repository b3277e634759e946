import { expect, fixture } from '@open-wc/testing';
import { html, type TemplateResult } from 'lit';
import 'pulse-map';
import { type Examination, PLACES } from 'pulse-map/core';
import { chronic, threatened } from '../../../stories/limb-records.js';
import { examined } from '../../../stories/records.js';
import { press, setViewport } from '../../tools/real-input.js';
import { boxOf, within } from '../tools/boxes.js';
import { drawn } from '../tools/limbs.js';
import { chooser, markNormal, openMap, openSite, saidAt, settled, site } from '../tools/map.js';
import { byRole, everything } from '../tools/perceive.js';

afterEach(() => document.documentElement.removeAttribute('dir'));

/** Shows the page right to left. */
function turnPage(): void {
  document.documentElement.dir = 'rtl';
}

/** Every box of layout, drawings and what stands on them apart, by how far it stands from where lines begin and from where they end. */
function placed(host: Element): Map<Element, { start: number; end: number }> {
  const { left, right, width } = host.getBoundingClientRect();
  expect(width, 'width').to.be.greaterThan(200);
  const rtl = getComputedStyle(host).direction === 'rtl';
  const boxes = everything(host).filter((element) => {
    const { display, position } = getComputedStyle(element);
    const box = element.getBoundingClientRect();
    const laidOut = !/^(inline|none|contents)$/.test(display) && position !== 'absolute' && box.width > 0;
    return (
      laidOut &&
      !element.closest('svg, .doors') &&
      element.localName !== 'option' &&
      element.checkVisibility()
    );
  });
  return new Map(
    boxes.map((element) => {
      const box = element.getBoundingClientRect();
      const [fromLeft, fromRight] = [box.left - left, right - box.right];
      return [element, rtl ? { start: fromRight, end: fromLeft } : { start: fromLeft, end: fromRight }];
    }),
  );
}

/** Boxes that do not stand in the mirror image of where they stood. */
function unmirrored(host: Element, before: ReturnType<typeof placed>): string[] {
  const after = placed(host);
  return [...before].flatMap(([element, { start, end }]) => {
    const now = after.get(element);
    if (now && Math.abs(now.start - start) <= 1 && Math.abs(now.end - end) <= 1) return [];
    const name = `${element.localName}.${element.getAttribute('class') ?? ''} "${element.textContent?.trim().slice(0, 30)}"`;
    return [
      `${name}: ${Math.round(start)}..${Math.round(end)}, now ${now ? `${Math.round(now.start)}..${Math.round(now.end)}` : 'gone'}`,
    ];
  });
}

const part = (examination: Examination): Record<string, TemplateResult> => ({
  'pulse-map': html`<pulse-map .value=${examination}></pulse-map>`,
  'pulse-map as a table': html`<pulse-map display="table" .value=${examination}></pulse-map>`,
  'pulse-reading with its numbers': html`<pulse-reading numbers .examination=${examination}></pulse-reading>`,
  'limb-history': html`<limb-history .value=${examination.history}></limb-history>`,
  'limb-context': html`<limb-context .value=${examination.context}></limb-context>`,
  'limb-inspection': html`<limb-inspection .value=${examination.inspection}></limb-inspection>`,
  'limb-pressures': html`<limb-pressures .value=${examination.pressures}></limb-pressures>`,
  'limb-staging': html`<limb-staging .examination=${examination}></limb-staging>`,
  'limb-flags': html`<limb-flags .examination=${examination}></limb-flags>`,
  'limb-stopwatch': html`<limb-stopwatch></limb-stopwatch>`,
  'limb-examination': html`<limb-examination .value=${JSON.stringify(examination)}></limb-examination>`,
  ...Object.fromEntries(
    ['elevation', 'venous-filling', 'hand-arch', 'cold-provocation', 'scalene', 'arm-stress'].map((test) => [
      `bedside-test, ${test}`,
      html`<bedside-test test=${test}></bedside-test>`,
    ]),
  ),
});

describe('right to left', () => {
  for (const width of [360, 820, 1280]) {
    for (const [what, template] of Object.entries(part(width === 360 ? threatened : chronic))) {
      it(`lays ${what} out as in a mirror at ${width} px`, async () => {
        await setViewport({ width: width + 40, height: 1000 });
        const frame = await fixture<HTMLElement>(html`<div style="width:${width}px">${template}</div>`);
        const host = frame.firstElementChild as HTMLElement;
        await drawn(host);
        const before = placed(host);
        turnPage();
        await drawn(host);
        expect(unmirrored(host, before)).to.deep.equal([]);
        expect(host.scrollWidth, 'nothing runs out of it').to.be.at.most(host.clientWidth);
      });
    }
  }
});

/** Where the patient's sides stand on the figure: every site as it lies in the drawing. */
function spots(map: Element): Record<string, string> {
  const figure = boxOf(byRole(map, 'group', /^Arteries of the body/), 'figure');
  return Object.fromEntries(
    everything(map)
      .filter((element) => element.matches('[part~=site]'))
      .map((element) => {
        const { left, top } = boxOf(element.querySelector('.target') as Element, '');
        return [
          (element as HTMLElement).dataset['place'] ?? '',
          `${Math.round(left - figure.left)} ${Math.round(top - figure.top)}`,
        ];
      }),
  );
}

/** Words of a drawing with where they stand in it. */
function drawnWords(drawing: Element): string[] {
  const frame = drawing.getBoundingClientRect();
  return [...drawing.querySelectorAll('text')].map((text) => {
    const box = boxOf(text, '');
    return `${text.textContent?.trim()} ${Math.round(box.left - frame.left)} ${Math.round(box.right - frame.left)}`;
  });
}

describe('what right to left leaves as it is', () => {
  for (const width of [360, 900, 1280]) {
    it(`the figure at ${width} px: the patient's right stays at the reader's left, names at their sites`, async () => {
      const map = await openMap({ width, examination: threatened });
      const figure = byRole(map, 'group', /^Arteries of the body/);
      const before = [spots(map), drawnWords(figure)];
      turnPage();
      await drawn(map);
      expect([spots(map), drawnWords(figure)]).to.deep.equal(before);
      expect(boxOf(site(map, 'right femoral'), '').left).to.be.lessThan(
        boxOf(site(map, 'left femoral'), '').left,
      );
    });
  }

  it("the line of a limb: the trunk stays at the reader's left", async () => {
    const map = await openMap({ width: 900, examination: threatened });
    const line = everything(map).find((element) => element.matches('.limb-line')) as Element;
    const before = drawnWords(line);
    turnPage();
    await drawn(map);
    expect(drawnWords(line)).to.deep.equal(before);
    const x = (word: string): number =>
      Number(
        before
          .find((text) => text.startsWith(word))
          ?.split(' ')
          .at(-2),
      );
    expect(x('Femoral')).to.be.lessThan(x('Popliteal'));
  });

  it('arrow keys on the figure: left goes to what lies at the left', async () => {
    turnPage();
    const map = await openMap({ width: 900 });
    site(map, 'left femoral').focus();
    await press('ArrowLeft', '2');
    expect(saidAt(map, 'right femoral')).to.equal('2, normal');
  });
});

describe('what right to left turns', () => {
  it('puts the reading at the left of the figure, and the first tool at the right', async () => {
    turnPage();
    const map = await openMap({ width: 1280, examination: threatened });
    const reading = boxOf(
      everything(map).find((element) => element.localName === 'pulse-reading') as Element,
      '',
    );
    const figure = boxOf(byRole(map, 'group', /^Arteries of the body/), '');
    expect(reading.right).to.be.at.most(figure.left + 1);
    const [undo, redo, help] = ['Undo', 'Redo', 'Help and keys'].map((name) =>
      boxOf(byRole(map, 'button', name), name),
    );
    expect(undo?.left).to.be.greaterThan(redo?.left ?? 0);
    expect(redo?.left).to.be.greaterThan(help?.left ?? 0);
  });

  it('turns what points along the words: undo, redo, next', async () => {
    turnPage();
    const map = await openMap({ width: 900 });
    await openSite(map, 'right femoral');
    for (const name of ['Undo', 'Redo', /^Next: /]) {
      const icon = byRole(map, 'button', name).querySelector('svg') as Element;
      expect(getComputedStyle(icon).scale, String(name)).to.match(/^-1( 1)?$/);
    }
    const close = byRole(map, 'button', 'Close').querySelector('svg') as Element;
    expect(getComputedStyle(close).scale).to.equal('none');
  });

  for (const width of [900, 1280]) {
    it(`keeps the chooser on screen and off its site at ${width} px, at every site`, async () => {
      turnPage();
      const map = await openMap({ width });
      const screen = {
        name: 'screen',
        left: 0,
        top: 0,
        right: window.innerWidth,
        bottom: window.innerHeight,
      };
      const sites = everything(map).filter((one) => one.matches('[part~=site]'));
      expect(sites).to.have.length(PLACES.length);
      for (const element of sites) {
        map.openPlace((element as HTMLElement).dataset['place'] as never);
        await settled(map);
        const panel = boxOf(chooser(map) as Element, 'chooser');
        expect(within(panel, screen), element.ariaLabel ?? '').to.equal(true);
        const own = boxOf(element.querySelector('.ring') as Element, '');
        const over =
          panel.left < own.right &&
          panel.right > own.left &&
          panel.top < own.bottom &&
          panel.bottom > own.top;
        expect(over, `over ${element.ariaLabel}`).to.equal(false);
      }
    });
  }

  it('spans a phone from edge to edge with the sheet of the chooser', async () => {
    turnPage();
    const map = await openMap({ width: 360, height: 760 });
    const sheet = await openSite(map, 'left femoral');
    await Promise.all(sheet.getAnimations().map(({ finished }) => finished));
    const panel = boxOf(sheet, 'chooser');
    expect([panel.left, panel.right, panel.bottom]).to.deep.equal([
      0,
      document.documentElement.clientWidth,
      window.innerHeight,
    ]);
  });

  it('walks the grades of the chooser by arrow keys as they stand', async () => {
    turnPage();
    const map = await openMap({ width: 900 });
    await openSite(map, 'right femoral');
    byRole(map, 'radio', '0, absent').focus();
    const [absent, reduced] = ['0, absent', '1, reduced'].map((name) =>
      boxOf(byRole(map, 'radio', name), name),
    );
    expect(reduced?.left).to.be.lessThan(absent?.left ?? 0);
    await press('ArrowLeft', 'Enter');
    await settled(map);
    expect(saidAt(map, 'right femoral')).to.equal('1, reduced');
  });

  for (const width of [360, 1280]) {
    it(`marks sides that differ at the right edge of the table at ${width} px`, async () => {
      const map = await openMap({
        width,
        examination: examined({ 'right femoral': 'normal', 'left femoral': 'absent' }),
      });
      map.display = 'table';
      await settled(map);
      const edges = (): string[] =>
        everything(map)
          .filter((element) => element.closest('.differ'))
          .map((element) => / (-?4)px 0px/.exec(getComputedStyle(element).boxShadow)?.[1] ?? '')
          .filter(Boolean);
      expect(edges()).to.deep.equal(['4']);
      turnPage();
      await drawn(map);
      expect(edges()).to.deep.equal(['-4']);
    });
  }

  it('leaves an English sentence its own order of words', async () => {
    turnPage();
    const map = await openMap({ width: 900 });
    const count = everything(map).find(
      (element) => element.textContent === '0 of 23, scale 0 to 3',
    ) as Element;
    const range = document.createRange();
    const at = (from: number, to: number): number => {
      const text = [...count.childNodes].find((node) => node.textContent?.startsWith('0 of')) as Text;
      range.setStart(text, from);
      range.setEnd(text, to);
      return range.getBoundingClientRect().left;
    };
    expect(at(0, 1), 'the number comes first').to.be.lessThan(at(2, 4));
  });

  it('is heard on a click as before', async () => {
    turnPage();
    const map = await openMap({ width: 900 });
    await markNormal(map);
    await settled(map);
    expect(saidAt(map, 'left femoral')).to.equal('2, normal');
  });
});
