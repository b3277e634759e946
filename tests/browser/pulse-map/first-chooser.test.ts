// A page of its own: templates that another test has made would be found here.
import { expect } from '@open-wc/testing';
import { later } from '../../../src/elements/pulse-map/fetched.js';
import { openMap } from '../tools/map.js';
import { byRole, painted } from '../tools/perceive.js';

/** Lets the browser do what waits for an idle moment. */
async function rested(): Promise<void> {
  for (let moment = 0; moment < 8; moment++)
    await new Promise<unknown>((resolve) => {
      if (typeof requestIdleCallback === 'function') requestIdleCallback(resolve);
      else setTimeout(resolve);
    });
}

describe('the first chooser of a page', () => {
  it('finds its templates made, so that the hand waits for its content alone', async () => {
    const map = await openMap({});
    await later.load();
    await map.updateComplete;
    await painted();
    await rested();
    const { createElement } = document;
    const made: HTMLElement[] = [];
    document.createElement = function (this: Document, name: string, options?: ElementCreationOptions) {
      const element = createElement.call(this, name, options);
      if (name === 'template') made.push(element);
      return element;
    } as typeof createElement;
    try {
      map.openPlace('left femoral');
      await map.updateComplete;
      expect(byRole(map, 'dialog').isConnected).to.equal(true);
      // The landmarks of the open site are drawn on the figure.
      const others = made.map(({ innerHTML }) => innerHTML).filter((text) => !text.includes('class="helps"'));
      expect(others).to.deep.equal([]);
    } finally {
      document.createElement = createElement;
    }
  });
});
