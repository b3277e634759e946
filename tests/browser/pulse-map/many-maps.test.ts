import { expect } from '@open-wc/testing';
import 'pulse-map/elements/pulse-map/define';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { until } from '../tools/until.js';

const COUNT = 4;

/** Lets something be done, and tells in which order widths and styles were asked for and something was put into a shadow tree. */
async function widthsAsked(act: () => Promise<unknown>): Promise<string> {
  const width = Object.getOwnPropertyDescriptor(Element.prototype, 'clientWidth')!;
  const append = Object.getOwnPropertyDescriptor(DocumentFragment.prototype, 'append')!;
  const styleOf = globalThis.getComputedStyle;
  const done: string[] = [];
  globalThis.getComputedStyle = (...of) => {
    done.push('style');
    return styleOf(...of);
  };
  Object.defineProperty(Element.prototype, 'clientWidth', {
    ...width,
    get(this: Element): unknown {
      if (this.localName === 'pulse-map') done.push('width');
      return width.get!.call(this);
    },
  });
  DocumentFragment.prototype.append = function (...nodes: (Node | string)[]) {
    if (this instanceof ShadowRoot) done.push('change');
    (append.value as typeof this.append).apply(this, nodes);
  };
  try {
    await act();
  } finally {
    globalThis.getComputedStyle = styleOf;
    Object.defineProperty(Element.prototype, 'clientWidth', width);
    Object.defineProperty(DocumentFragment.prototype, 'append', append);
  }
  return done.join(' ');
}

describe('many maps on a page', () => {
  let page: HTMLElement;

  beforeEach(() => {
    page = document.createElement('main');
    page.style.inlineSize = '900px';
    document.body.append(page);
  });
  afterEach(() => page.remove());

  const maps = (): PulseMap[] => Array.from({ length: COUNT }, () => document.createElement('pulse-map'));
  const drawn = (all: readonly PulseMap[]) => Promise.all(all.map((map) => map.updateComplete));
  const widthOf = (map: PulseMap): number =>
    map.shadowRoot!.querySelector<SVGSVGElement>('.figure')!.viewBox.baseVal.width;

  it('lays the page out once to measure maps that are put into it together', async () => {
    const all = maps();
    const asked = await widthsAsked(() => {
      page.append(...all);
      return drawn(all);
    });
    expect(asked).to.match(/^(change )+(width style ?)+$/);
    expect(asked.match(/width/g)).to.have.length(COUNT);
    for (const map of all) expect(widthOf(map)).to.equal(all[0]!.clientWidth);
  });

  it('draws a map anew that is moved to where it has another width', async () => {
    const [map] = maps() as [PulseMap];
    page.append(map);
    await map.updateComplete;
    const before = widthOf(map);
    const narrow = document.createElement('div');
    narrow.style.inlineSize = '700px';
    page.append(narrow);
    narrow.append(map);
    await until(() => widthOf(map) !== before, 'another width');
    await map.updateComplete;
    expect(widthOf(map)).to.equal(map.clientWidth).and.lessThan(before);
  });
});
