// What is known to go wrong between a drawing and the page around it, numbered as in the list in pitfalls.test.ts.
import { expect } from '@open-wc/testing';
import { html } from 'lit';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { click, drag, setViewport, swipe } from '../../tools/real-input.js';
import { chooser, mapWithin, openMap, openSite, settled, site } from '../tools/map.js';
import { byRole, everything } from '../tools/perceive.js';
import { middleOf, pointer, tap } from '../tools/pointer.js';

const spot = (map: PulseMap, name: string): readonly [number, number] => middleOf(site(map, name));
async function carrying(word = '0, absent'): Promise<PulseMap> {
  const map = await openMap();
  await click(byRole(map, 'button', `Grade several as ${word}`));
  await settled(map);
  return map;
}
/** A place of the drawing without any site. */
function blank(map: PulseMap): readonly [number, number] {
  const { left, top } = (map.shadowRoot?.querySelector('.figure') as Element).getBoundingClientRect();
  return [left + 14, Math.max(top, 0) + 220];
}

describe('pitfall 7: native drag and drop', () => {
  it('never starts on the drawing', async () => {
    const map = await openMap();
    let started = 0;
    const count = (event: Event): void => void (event.defaultPrevented || started++);
    document.addEventListener('dragstart', count);
    await drag([site(map, 'left femoral'), site(map, 'left popliteal')]);
    document.removeEventListener('dragstart', count);
    expect(started).to.equal(0);
    const draggable = everything(map.shadowRoot as ShadowRoot).filter(
      (e) => e.getAttribute('draggable') === 'true',
    );
    expect(draggable).to.deep.equal([]);
  });
});

describe('pitfall 8: handwriting that swallows pencil strokes', () => {
  // By hand on an iPad: ten quick taps of the pencil give ten grades.
  const moved = (target: Element): boolean =>
    !target.dispatchEvent(new Event('touchmove', { bubbles: true, composed: true, cancelable: true }));

  it('is kept away by stopping touch moves, only on the drawing and only while a pen or a stroke is on', async () => {
    const map = await openMap();
    const figure = map.shadowRoot?.querySelector('.figure') as Element;
    expect(moved(figure), 'nothing is on').to.equal(false);
    pointer('pointerdown', spot(map, 'left femoral'), { type: 'touch' });
    expect(moved(figure), 'a finger may scroll').to.equal(false);
    pointer('pointercancel', spot(map, 'left femoral'), { type: 'touch' });
    pointer('pointerdown', spot(map, 'left femoral'));
    expect(moved(figure), 'a pen is down').to.equal(true);
    expect(moved(byRole(map, 'status')), 'not beside the drawing').to.equal(false);
    expect(moved(map.parentElement as Element), 'not on the page').to.equal(false);
  });

  it('is kept away from a finger that draws', async () => {
    const map = await carrying();
    pointer('pointerdown', spot(map, 'left femoral'), { type: 'touch' });
    expect(moved(map.shadowRoot?.querySelector('.figure') as Element)).to.equal(true);
  });
});

describe('pitfall 9: listeners on the whole page', () => {
  it('are none for touch, and none at all once the map is gone', async () => {
    const held = new Map<string, number>();
    const [add, remove] = [EventTarget.prototype.addEventListener, EventTarget.prototype.removeEventListener];
    const tally = (step: number, act: typeof add) =>
      function (this: EventTarget, type: string, ...rest: never[]): void {
        // Called without an object it means the window.
        const on = (this as EventTarget | undefined) ?? window;
        if (on === document || on === window) held.set(type, (held.get(type) ?? 0) + step);
        (act as (...all: unknown[]) => void).call(on, type, ...rest);
      };
    EventTarget.prototype.addEventListener = tally(1, add) as typeof add;
    EventTarget.prototype.removeEventListener = tally(-1, remove as typeof add) as typeof remove;
    try {
      const map = await openMap();
      await openSite(map, 'left femoral');
      expect([...held.keys()].filter((type) => type.startsWith('touch'))).to.deep.equal([]);
      expect(held.get('pointerdown'), 'for a press outside the chooser').to.equal(1);
      map.remove();
      expect([...held].filter(([, count]) => count !== 0)).to.deep.equal([]);
    } finally {
      EventTarget.prototype.addEventListener = add;
      EventTarget.prototype.removeEventListener = remove;
    }
  });
});

/** WebKit knows it by this name alone, the others by this one, too. */
const selects = (element: Element): string =>
  getComputedStyle(element).getPropertyValue('-webkit-user-select');

describe('pitfall 10: selection and the magnifier on a quick second tap', () => {
  it('have nothing to take hold of on the drawing; a note can be selected', async () => {
    const map = await openMap();
    const figure = map.shadowRoot?.querySelector('.figure') as Element;
    for (const element of everything(figure)) {
      // Firefox says `auto` of what takes it from around it. Source: https://www.w3.org/TR/css-ui-4/#content-selection.
      let at: Element | null = element;
      while (at && selects(at) === 'auto') at = at === figure ? null : at.parentElement;
      expect(at && selects(at), element.localName).to.equal('none');
    }
    await openSite(map, 'left femoral');
    await click(byRole(chooser(map) as HTMLElement, 'button', 'Add a note'));
    await settled(map);
    expect(selects(byRole(map, 'textbox', 'Note'))).to.not.equal('none');
  });
});

describe('pitfalls 11 and 12: zooming', () => {
  /** What a finger may do on an element: no more than each of those around it allows. */
  function allowedOn(element: Element, surface: Element): string {
    for (let at: Element | null = element; at; at = at === surface ? null : at.parentElement) {
      const { touchAction } = getComputedStyle(at);
      if (touchAction !== 'auto') return touchAction;
    }
    return 'auto';
  }

  it('by a double tap is off on drawing, tools and chooser, gaps included; by a pinch it never is', async () => {
    const map = await openMap();
    await openSite(map, 'left femoral');
    const root = map.shadowRoot as ShadowRoot;
    for (const selector of ['.figure', '[part~=toolbar]', '[part~=chooser]']) {
      const surface = root.querySelector(selector) as Element;
      const all = everything(surface).filter((e) => e.checkVisibility() && !e.closest('textarea'));
      const allowed = new Set(all.map((element) => allowedOn(element, surface)));
      expect([...allowed], selector).to.deep.equal(['manipulation']);
    }
    expect(document.querySelector('meta[name=viewport]'), 'the page’s own business').to.equal(null);
  });

  it('lets the page scroll when a swipe starts on the drawing', async () => {
    await setViewport({ width: 900, height: 500 });
    const { map } = await mapWithin(
      html`<div style="padding-block-end: 2000px"><pulse-map></pulse-map></div>`,
    );
    const [x, y] = blank(map);
    await swipe([
      [x, y + 150],
      [x, y - 50],
      // Held still before it lifts, so that nothing goes on gliding.
      [x, y - 51],
    ]);
    await settled(map);
    expect(window.scrollY).to.be.above(50);
    window.scrollTo(0, 0);
  });

  it('takes two fast taps on one site as two acts', async () => {
    const map = await openMap();
    tap(spot(map, 'left femoral'), { type: 'touch', id: 30 });
    await settled(map);
    expect(chooser(map)).to.not.equal(undefined);
    tap(spot(map, 'left femoral'), { type: 'touch', id: 31 });
    await settled(map);
    expect(chooser(map)).to.equal(undefined);
    expect(window.visualViewport?.scale).to.equal(1);
  });
});

describe('pitfall 16: a page that scrolls under the pen', () => {
  it('stays where it is while a grade is drawn', async () => {
    await setViewport({ width: 900, height: 700 });
    const { map } = await mapWithin(
      html`<div style="padding-block-end: 2000px"><pulse-map></pulse-map></div>`,
    );
    await click(byRole(map, 'button', 'Grade several as 0, absent'));
    await settled(map);
    site(map, 'left femoral').scrollIntoView({ block: 'center' });
    // Where something comes in above, the browser moves the page by as much: what counts is what lies under the pen.
    const top = (): number => site(map, 'left femoral').getBoundingClientRect().top;
    const before = top();
    const [x, y] = spot(map, 'left femoral');
    await drag(
      [
        [x, y],
        [x, y - 150],
      ],
      { kind: 'touch' },
    );
    await settled(map);
    expect(top()).to.be.closeTo(before, 1);
    window.scrollTo(0, 0);
  });
});
