// A page of its own: templates that another test has made would be found here.
import { expect } from '@open-wc/testing';
import { later } from '../../../src/elements/pulse-map/fetched.js';
import { openMap } from '../tools/map.js';
import { byRole } from '../tools/perceive.js';
import { until } from '../tools/until.js';

describe('the first chooser of a page', () => {
  it('finds its templates made, so that the hand waits for its content alone', async () => {
    await later.load();
    const part = later.part!;
    let made = false;
    later.part = {
      ...part,
      *warm(chooser) {
        for (const step of part.warm(chooser)) {
          made = true;
          yield step;
        }
      },
    };
    const map = await openMap({});
    await until(() => made, 'an idle moment in which they are made');
    const { createElement } = document;
    const late: HTMLElement[] = [];
    document.createElement = function (this: Document, name: string, options?: ElementCreationOptions) {
      const element = createElement.call(this, name, options);
      if (name === 'template') late.push(element);
      return element;
    } as typeof createElement;
    try {
      map.openPlace('left femoral');
      await map.updateComplete;
      expect(byRole(map, 'dialog').isConnected).to.equal(true);
      // The landmarks of the open site are drawn on the figure.
      const others = late.map(({ innerHTML }) => innerHTML).filter((text) => !text.includes('class="helps"'));
      expect(others).to.deep.equal([]);
    } finally {
      document.createElement = createElement;
    }
  });
});
