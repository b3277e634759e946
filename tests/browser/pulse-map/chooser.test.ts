import { expect } from '@open-wc/testing';
import { html } from 'lit';
import { PLACES } from 'pulse-map/core';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { click, emulate, press, setViewport } from '../../tools/real-input.js';
import { boxOf, overlap, within } from '../tools/boxes.js';
import { choose, chooser, mapWithin, saidAll, saidAt, settled, site } from '../tools/map.js';
import { allByRole, byRole, nameOf } from '../tools/perceive.js';

/** Windows a unit would have: a wall, a desk, a tablet lying and standing, a phone, a small phone, a small phone lying. */
const WINDOWS = [
  [1920, 1080],
  [1440, 900],
  [1024, 768],
  [820, 1180],
  [390, 844],
  [360, 640],
  [320, 568],
  [640, 360],
] as const;

async function mapIn(width: number, height: number): Promise<PulseMap> {
  await setViewport({ width, height });
  const { map } = await mapWithin(html`<div><pulse-map></pulse-map></div>`);
  return map;
}

async function atRest(map: PulseMap): Promise<void> {
  await Promise.all(
    chooser(map)
      ?.getAnimations()
      .map((moving) => moving.finished) ?? [],
  );
}

/** The parts of the body in turn, where not all fit at once. */
function parts(map: PulseMap): (HTMLElement | undefined)[] {
  const found = ['Arms', 'Right arm', 'Left arm', 'Legs'].flatMap((name) => allByRole(map, 'button', name));
  return found.length ? found : [undefined];
}

/** What is wrong with where the chooser stands, in words. */
function misplaced(map: PulseMap, name: string): string[] {
  const panel = chooser(map);
  if (!panel) return [`nothing opened at ${name}`];
  const screen = {
    name: 'screen',
    left: 0,
    top: 0,
    right: document.documentElement.clientWidth,
    bottom: innerHeight,
  };
  const box = boxOf(panel, 'chooser');
  const target = boxOf(site(map, name.toLowerCase()).querySelector('.target') as Element, name);
  // The whole of the glyph has to be seen; the reach of a finger around it may be covered.
  const glyph = {
    ...target,
    left: target.left + 10,
    right: target.right - 10,
    top: target.top + 10,
    bottom: target.bottom - 10,
  };
  return [
    ...(within(box, screen) ? [] : [`${name}: the chooser leaves the screen`]),
    ...(overlap(box, glyph) ? [`${name}: the chooser covers its site`] : []),
    ...(within(glyph, screen) ? [] : [`${name}: the site is off the screen`]),
  ];
}

describe('the chooser', () => {
  // Measured at rest, not on its way in.
  beforeEach(() => emulate({ reducedMotion: 'reduce' }));
  after(() => emulate({}));

  for (const [width, height] of WINDOWS) {
    it(`in a window of ${width} by ${height} px is wholly on screen and never over its site, at every site`, async function () {
      this.timeout(120_000);
      const map = await mapIn(width, height);
      const wrong: string[] = [];
      const tried = new Set<string>();
      for (const part of parts(map)) {
        if (part) await click(part);
        await settled(map);
        for (const name of Object.keys(saidAll(map))) {
          await click(site(map, name.toLowerCase()));
          await settled(map);
          wrong.push(...misplaced(map, name));
          tried.add(name);
          await press('Escape');
          await settled(map);
        }
      }
      expect(wrong).to.deep.equal([]);
      expect(tried.size).to.equal(PLACES.length);
    });

    it(`in a window of ${width} by ${height} px stays there with everything unfolded, also while it moves in`, async () => {
      await emulate({ reducedMotion: 'no-preference' });
      const map = await mapIn(width, height);
      const wrong: string[] = [];
      for (const name of ['Left popliteal', 'Right femoral']) {
        await click(site(map, name.toLowerCase()));
        await settled(map);
        await atRest(map);
        for (const fold of ['Bruit', 'Not assessable', 'Doppler signal', 'Add a note']) {
          await choose(map, 'button', fold);
          await atRest(map);
          wrong.push(...misplaced(map, name).map((text) => `${fold}: ${text}`));
        }
        await press('Escape');
        await settled(map);
      }
      expect(wrong).to.deep.equal([]);
    });
  }

  it('goes with its site while the page scrolls', async () => {
    await setViewport({ width: 900, height: 1300 });
    const { map } = await mapWithin(html`<div style="padding-block: 300px"><pulse-map></pulse-map></div>`);
    await click(site(map, 'left femoral'));
    await settled(map);
    const apart = (): number =>
      (chooser(map) as HTMLElement).getBoundingClientRect().top -
      site(map, 'left femoral').getBoundingClientRect().top;
    const before = apart();
    const [scrolled, at] = [window.scrollY, site(map, 'left femoral').getBoundingClientRect().top];
    window.scrollBy(0, 40);
    await settled(map);
    expect(window.scrollY).to.equal(scrolled + 40);
    expect(site(map, 'left femoral').getBoundingClientRect().top).to.be.closeTo(at - 40, 1);
    expect(apart()).to.be.closeTo(before, 1);
    window.scrollTo(0, 0);
  });

  it('stands above what the page lays over everything else', async () => {
    await setViewport({ width: 900, height: 900 });
    const { map } = await mapWithin(
      html`<div style="overflow: hidden; block-size: 800px; transform: translateZ(0)">
        <pulse-map></pulse-map>
      </div>`,
    );
    await click(site(map, 'left femoral'));
    await settled(map);
    const { left, right, top } = (chooser(map) as HTMLElement).getBoundingClientRect();
    const hit = map.shadowRoot?.elementFromPoint((left + right) / 2, top + 30);
    expect(chooser(map)?.contains(hit as Node)).to.equal(true);
  });

  it('has its choices large enough for a finger', async () => {
    const map = await mapIn(390, 844);
    await click(site(map, 'left femoral'));
    await settled(map);
    for (const role of ['radio', 'button']) {
      const choices = allByRole(chooser(map) as HTMLElement, role);
      expect(choices.length, role).to.be.above(3);
      for (const choice of choices) {
        const { width, height } = choice.getBoundingClientRect();
        expect(Math.min(width, height), nameOf(choice)).to.be.at.least(44);
      }
    }
  });

  it('gives the focus back before it goes, so that the browser need not take it off what is removed', async () => {
    const map = await mapIn(900, 900);
    await click(site(map, 'left femoral'));
    await settled(map);
    const panel = chooser(map) as HTMLElement;
    let stood: boolean | undefined;
    site(map, 'left femoral').addEventListener('focusin', () => (stood = panel.isConnected), { once: true });
    byRole(panel, 'radio', '0, absent').focus();
    await press('Enter');
    await settled(map);
    expect(saidAt(map, 'left femoral')).to.equal('0, absent');
    expect(chooser(map)).to.equal(undefined);
    expect(map.shadowRoot?.activeElement).to.equal(site(map, 'left femoral'));
    expect(stood).to.equal(true);
  });

  it('is closed when the map is taken off the page, and leaves no listener behind', async () => {
    const map = await mapIn(900, 900);
    await click(site(map, 'left femoral'));
    await settled(map);
    const place = map.parentElement as HTMLElement;
    map.remove();
    await click([5, 5]);
    place.append(map);
    await settled(map);
    expect(chooser(map)).to.equal(undefined);
    expect(byRole(map, 'status')).to.exist;
  });
});
