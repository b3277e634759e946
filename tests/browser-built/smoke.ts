// What must work on a page that has the published package and nothing else of this project. No module of src may be imported
// here, not even through a helper: it would test the sources.
import { expect, fixture } from '@open-wc/testing';
import { html, unsafeStatic } from '@open-wc/testing';
import { click, press, setViewport } from '../tools/real-input.js';
import { allByRole, byRole, painted, readableText } from '../browser/tools/perceive.js';

interface Map extends HTMLElement {
  value: string;
  readonly updateComplete: Promise<boolean>;
}

const PARTS = [
  'limb-examination',
  'limb-history',
  'limb-inspection',
  'limb-context',
  'limb-pressures',
  'limb-staging',
  'limb-flags',
  'limb-stopwatch',
  'pulse-reading',
  'bedside-test',
];

async function settled(map: Map): Promise<void> {
  await map.updateComplete;
  await painted();
  await map.updateComplete;
}

/** A map in a form, with its later chunk at hand, so that the next act is seen at once. */
async function openMap(): Promise<{ form: HTMLFormElement; map: Map }> {
  await setViewport({ width: 1000, height: 1100 });
  const form = await fixture<HTMLFormElement>(
    html`<form style="width: 900px">
      <pulse-map name="pulses" lang="en"></pulse-map><button>Save</button>
    </form>`,
  );
  const map = form.querySelector('pulse-map') as unknown as Map;
  await settled(map);
  return { form, map };
}

const site = (map: Map, name: string): Element => byRole(map, 'button', new RegExp(`^${name}: `));

async function openChooser(map: Map, name: string): Promise<Element> {
  await click(site(map, name));
  for (let frames = 0; frames < 300 && allByRole(map, 'dialog').length === 0; frames++) await painted();
  return byRole(map, 'dialog');
}

const submitted = (form: HTMLFormElement): unknown =>
  JSON.parse(String(new FormData(form).get('pulses') || 'null'));

/**
 * The smoke tests, for one way of loading the package.
 * @param german loads the German words the way this page would
 */
export function worksAsPublished(german: () => Promise<unknown>): void {
  it('opens a chooser at a tap, records the pulse chosen there, and submits it', async () => {
    const { form, map } = await openMap();
    const chooser = await openChooser(map, 'Left popliteal');
    await click(byRole(chooser, 'radio', /absent/));
    await settled(map);
    expect(submitted(form)).to.deep.include({ pulses: { popliteal: { left: { grade: 'absent' } } } });
    expect(map.value).to.equal(String(new FormData(form).get('pulses')));
  });

  it('records by key', async () => {
    const { form, map } = await openMap();
    (site(map, 'Right femoral') as HTMLElement).focus();
    await press('2');
    await settled(map);
    expect(submitted(form)).to.deep.include({ pulses: { femoral: { right: { grade: 'normal' } } } });
  });

  it('shows where the block is', async () => {
    const { map } = await openMap();
    map.value = JSON.stringify({
      format: 'pulse-map/1',
      scale: '0-3',
      pulses: { femoral: { left: { grade: 'normal' } }, popliteal: { left: { grade: 'absent' } } },
    });
    for (let frames = 0; frames < 300 && !/between left femoral/i.test(readableText(map)); frames++)
      await painted();
    expect(readableText(map)).to.match(/between left femoral and left popliteal/i);
  });

  it('writes nothing to the drawing that is as it was when a site is opened', async () => {
    const { map } = await openMap();
    await openChooser(map, 'Left popliteal');
    await press('Escape');
    await settled(map);
    const rewritten: string[] = [];
    const watch = new MutationObserver((records) => {
      for (const { target, attributeName, oldValue } of records)
        if (attributeName && (target as Element).getAttribute(attributeName) === oldValue)
          rewritten.push(`${(target as Element).localName} ${attributeName}`);
    });
    const figure = map.shadowRoot?.querySelector('svg.figure') ?? map.shadowRoot?.querySelector('svg');
    watch.observe(figure as Element, { attributes: true, attributeOldValue: true });
    await openChooser(map, 'Left femoral');
    await settled(map);
    watch.disconnect();
    expect(rewritten).to.deep.equal([]);
  });

  for (const tag of PARTS) {
    it(`draws <${tag}>`, async () => {
      const part = await fixture<HTMLElement>(html`<${unsafeStatic(tag)} lang="en"></${unsafeStatic(tag)}>`);
      await (part as Map).updateComplete;
      await painted();
      expect(part.matches(':defined')).to.equal(true);
      const drawn = (part.shadowRoot?.querySelectorAll('*').length ?? 0) > 0;
      expect(drawn, 'something in its shadow root').to.equal(true);
    });
  }

  it('speaks German once its words are loaded', async () => {
    await german();
    const form = await fixture<HTMLFormElement>(html`<form><pulse-map lang="de"></pulse-map></form>`);
    const map = form.querySelector('pulse-map') as unknown as Map;
    await settled(map);
    expect(site(map, 'Poplitea links')).to.be.instanceOf(Element);
  });
}
