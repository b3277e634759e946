import { expect } from '@open-wc/testing';
import { emptyExamination, restNormal } from '../../../src/examination/index.js';
import { click, emulate } from '../../tools/real-input.js';
import { openMap, openSite, site } from '../tools/map.js';
import { everything } from '../tools/perceive.js';
import { until } from '../tools/until.js';

/** A phone, on which the chooser comes up from below. */
const PHONE = { width: 360, height: 760 };

describe('motion', () => {
  afterEach(() => emulate({}));

  it('is none at all where less is asked for', async () => {
    await emulate({ reducedMotion: 'reduce' });
    const map = await openMap(PHONE);
    await openSite(map, 'left popliteal');
    map.value = restNormal(emptyExamination());
    await map.updateComplete;
    expect(document.getAnimations()).to.deep.equal([]);
    for (const element of everything(map.shadowRoot as ShadowRoot)) {
      const { transitionDuration, animationName } = getComputedStyle(element);
      expect(`${transitionDuration} ${animationName}`, element.localName).to.equal('0s none');
    }
  });

  it('is brief and never repeats itself otherwise', async () => {
    await emulate({ reducedMotion: 'no-preference' });
    const map = await openMap(PHONE);
    const moving = new Set<Animation>();
    map.shadowRoot!.addEventListener('animationstart', ({ target }) => {
      for (const one of (target as Element).getAnimations()) moving.add(one);
    });
    await click(site(map, 'left popliteal'));
    await until(() => moving.size, 'the chooser comes up');
    for (const { effect } of moving) {
      const { duration, iterations } = effect!.getComputedTiming();
      expect(Number(duration)).to.be.within(1, 200);
      expect(iterations).to.equal(1);
    }
  });
});
