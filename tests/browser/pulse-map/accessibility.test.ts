import { expect } from '@open-wc/testing';
import { html } from 'lit';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { PLACES } from 'pulse-map/core';
import { emptyExamination, restNormal } from '../../../src/examination/index.js';
import { examined } from '../../tools/examinations.js';
import { accessibilityTree, click, emulate, press, setViewport } from '../../tools/real-input.js';
import { axeFindsNothing, seenIn } from '../tools/axed.js';
import { choose, chooser, mapWithin, openMap, openSite, settled, site } from '../tools/map.js';
import { allByRole, byRole, nameOf } from '../tools/perceive.js';

const BLOCK = restNormal(
  examined({
    'left popliteal': { grade: 'absent', thrill: true },
    'left posterior-tibial': 'absent',
    'left dorsalis-pedis': { couldNotExamine: 'dressing', note: 'heel ulcer' },
  }),
);

/** Every state in which a map can be met, and how it comes to it. */
const STATES: Readonly<Record<string, (width: number) => Promise<PulseMap>>> = {
  empty: (width) => openMap({ width }),
  'with a block': (width) => openMap({ width, examination: BLOCK }),
  'with a site open': async (width) => {
    const map = await openMap({ width, examination: BLOCK });
    await openSite(map, 'left popliteal');
    return map;
  },
  'with everything unfolded in turn': async (width) => {
    const map = await openMap({ width });
    await openSite(map, 'left femoral');
    for (const fold of ['Bruit', 'Not assessable', 'Doppler signal', 'Add a note']) {
      await choose(map, 'button', fold);
      await expect(map).to.be.accessible();
    }
    return map;
  },
  'with a grade carried and the help open': async (width) => {
    const map = await openMap({ width, examination: BLOCK });
    if (allByRole(map, 'button', 'Help and keys').length === 0) {
      await click(byRole(map, 'button', 'Scale, table, help'));
      await settled(map);
    }
    await click(byRole(map, 'button', 'Grade several as 0, absent'));
    await click(byRole(map, 'button', 'Help and keys'));
    await settled(map);
    return map;
  },
  'as a table': async (width) => {
    const map = await openMap({ width, examination: BLOCK });
    map.display = 'table';
    await settled(map);
    return map;
  },
  'beside an earlier record': async (width) => {
    const map = await openMap({ width, examination: BLOCK });
    map.compare = restNormal(emptyExamination());
    await settled(map);
    return map;
  },
  'read only': async (width) => {
    const map = await openMap({ width, examination: BLOCK });
    map.readOnly = true;
    await settled(map);
    return map;
  },
  disabled: async (width) => {
    const map = await openMap({ width, examination: BLOCK });
    map.disabled = true;
    await settled(map);
    return map;
  },
  'with a value refused': async (width) => {
    const map = await openMap({ width, examination: BLOCK });
    map.value = '{"format":"pulse-map/1","scale":9}';
    await settled(map);
    return map;
  },
};

describe('the map in every state', function () {
  this.timeout(120_000);
  // At rest, since nothing is to be read while a panel fades in.
  const settings = { reducedMotion: 'reduce' } as const;
  beforeEach(() => emulate(settings));
  afterEach(async () => {
    await emulate({});
    document.documentElement.removeAttribute('style');
  });

  for (const [state, reach] of Object.entries(STATES)) {
    /** What is seen at 820 px, where every rule was asked. */
    let seen: string | undefined;

    for (const width of [1200, 360, 820]) {
      it(`${state}, ${width} px wide: axe finds nothing`, async () => {
        const map = await reach(width);
        await axeFindsNothing(map);
        seen = seenIn(map);
      });
    }

    it(`${state}, dark: axe finds nothing`, async () => {
      await emulate({ ...settings, colorScheme: 'dark' });
      document.documentElement.style.colorScheme = 'dark';
      await axeFindsNothing(await reach(820), seen);
    });

    it(`${state}, in forced colours: axe finds nothing`, async () => {
      await emulate({ ...settings, forcedColors: 'active' });
      await axeFindsNothing(await reach(820), seen);
    });
  }
});

describe('what the browser tells assistive technology', () => {
  it('is a group by the label’s name, with tools, sites and a status', async () => {
    await setViewport({ width: 940, height: 1000 });
    await mapWithin(html`<div><label for="m">Pulses today</label><pulse-map id="m"></pulse-map></div>`);
    const nodes = await accessibilityTree();
    const one = (role: string, name: string): void => {
      expect(
        nodes.filter((node) => node.role === role && node.name === name),
        `${role} "${name}"`,
      ).to.have.length(1);
    };
    one('group', 'Pulses today');
    one('toolbar', 'Pulse map tools');
    one(
      'group',
      'Arteries of the body, seen from the front; the patient’s right is on the left of the drawing',
    );
    one('button', 'Undo');
    one('button', 'Mark normal');
    one('heading', 'No pulse recorded');
  });

  it('is a button for each site, by name and finding', async () => {
    const map = await openMap({ examination: BLOCK });
    const nodes = await accessibilityTree();
    const names = allByRole(map, 'button')
      .filter((button) => button.matches('[part~=site]'))
      .map(nameOf);
    expect(names).to.have.length(PLACES.length);
    for (const name of names) {
      expect(
        nodes.filter((node) => node.role === 'button' && node.name === name),
        name,
      ).to.have.length(1);
    }
    expect(names).to.include('Left popliteal: 0, absent; thrill');
    expect(names).to.include('Left dorsalis pedis: not assessable: dressing; note: heel ulcer');
  });

  it('calls everything that can be worked by a name', async () => {
    const map = await openMap({ examination: BLOCK });
    await openSite(map, 'left femoral');
    await choose(map, 'button', 'Not assessable');
    const workable = new Set([
      'button',
      'radio',
      'combobox',
      'textbox',
      'checkbox',
      'link',
      'radiogroup',
      'dialog',
    ]);
    const nameless = (await accessibilityTree()).filter(({ role, name }) => workable.has(role) && !name);
    expect(nameless).to.deep.equal([]);
  });

  it('agrees with the names that these tests look for', async () => {
    const map = await openMap({ examination: BLOCK });
    await openSite(map, 'left femoral');
    const nodes = await accessibilityTree();
    for (const role of ['button', 'radio', 'combobox', 'heading', 'dialog', 'toolbar']) {
      for (const element of allByRole(map, role)) {
        const name = nameOf(element);
        expect(
          nodes.some((node) => node.role === role && node.name === name),
          `${role} "${name}"`,
        ).to.equal(true);
      }
    }
  });

  it('says which grade is chosen, which tool is on, and what is open', async () => {
    const map = await openMap({ examination: BLOCK });
    await openSite(map, 'left popliteal');
    const radios = allByRole(chooser(map) as HTMLElement, 'radio').map((radio) => [
      nameOf(radio),
      radio.getAttribute('aria-checked'),
    ]);
    expect(radios).to.deep.include(['0, absent', 'true']);
    expect(radios.filter(([, checked]) => checked === 'true')).to.have.length(1);
    expect(site(map, 'left popliteal').getAttribute('aria-expanded')).to.equal('true');
    expect(byRole(chooser(map) as HTMLElement, 'button', 'Thrill').getAttribute('aria-pressed')).to.equal(
      'true',
    );
  });

  it('calls a map without any label by what it is', async () => {
    await openMap();
    expect(
      (await accessibilityTree()).some(({ role, name }) => role === 'group' && name === 'Pulse map'),
    ).to.equal(true);
  });
});

describe('focus', () => {
  it('can be seen wherever Tab and the arrows lead', async () => {
    const map = await openMap();
    for (const reach of [() => press('Tab'), () => press('Tab'), () => press('ArrowRight')]) {
      await reach();
      await settled(map);
      const at = map.shadowRoot?.activeElement as HTMLElement;
      const ring = at.querySelector('.ring');
      const { outlineStyle, outlineWidth } = getComputedStyle(at);
      const { stroke, strokeWidth } = ring ? getComputedStyle(ring) : { stroke: 'none', strokeWidth: '0px' };
      const seen =
        (outlineStyle !== 'none' && outlineWidth === '3px') || (stroke !== 'none' && strokeWidth === '3px');
      expect(seen, nameOf(at)).to.equal(true);
    }
  });
});
