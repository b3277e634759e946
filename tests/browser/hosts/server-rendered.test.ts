// A page rendered by a server brings shadow trees along; each element puts its own in their place.
import { expect } from '@open-wc/testing';
import 'pulse-map';
import { drawn } from '../tools/limbs.js';
import { readableText } from '../tools/perceive.js';

const TAGS = [
  'pulse-map',
  'limb-examination',
  'limb-pressures',
  'bedside-test',
  'pulse-reading',
  'limb-stopwatch',
];

describe('a page rendered by a server', () => {
  for (const tag of TAGS) {
    it(`shows <${tag}> once`, async () => {
      const box = document.createElement('div');
      box.lang = 'en';
      box.setHTMLUnsafe(`<${tag}><template shadowrootmode="open"><p>From the server</p></template></${tag}>`);
      const served = box.firstElementChild as Element;
      expect(served.shadowRoot?.textContent).to.equal('From the server');
      document.body.append(box);
      customElements.upgrade(box);
      await drawn(served);
      expect(readableText(served)).not.to.include('From the server');
      expect(readableText(served).length).to.be.above(4);
      box.remove();
    });
  }
});
