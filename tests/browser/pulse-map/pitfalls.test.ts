// What is known, from public threads, to go wrong with a drawing under pen and touch and with a form control of one's own: where
// each entry is tried, or why it cannot be here. By hand, on an iPad with its pencil and on a Windows and an Android pen, before
// a release: 2, 8, 10, 11 (a quick second tap), 17 and 18.
import { expect, fixture } from '@open-wc/testing';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import 'pulse-map/elements/pulse-map/define';
import { examined } from '../../tools/examinations.js';
import { consoleOf, focused } from '../../tools/real-input.js';
import { markNormal, saidAll, saidAt, settled, site } from '../tools/map.js';
import { byRole } from '../tools/perceive.js';

interface Entry {
  readonly what: string;
  /** File with the tests, beside this one. */
  readonly file: string;
  /** Words of a test's or a group's name there. */
  readonly test: string;
}
const POINTER = './pitfalls-pointer.test.ts';
const PAGE = './pitfalls-page.test.ts';
const FORM = '../tools/form-contract.ts';
const HERE = './pitfalls.test.ts';

const ENTRIES: Readonly<Record<number, Entry>> = {
  1: { what: 'a cancelled stroke taken as finished', file: POINTER, test: 'pitfall 1:' },
  2: { what: 'palm and pen taken for a pinch', file: POINTER, test: 'pitfall 2:' },
  3: { what: 'fingers refused as palms', file: POINTER, test: 'pitfall 3:' },
  4: { what: 'capture that makes the browser cancel', file: POINTER, test: 'pitfall 4:' },
  5: { what: 'a click on another element after capture', file: POINTER, test: 'pitfall 5:' },
  6: { what: 'an ancestor that captures', file: POINTER, test: 'pitfall 6:' },
  7: { what: 'native drag and drop', file: PAGE, test: 'pitfall 7:' },
  8: { what: 'handwriting that swallows strokes', file: PAGE, test: 'pitfall 8:' },
  9: { what: 'touch listeners on the whole page', file: PAGE, test: 'pitfall 9:' },
  10: { what: 'magnifier and selection', file: PAGE, test: 'pitfall 10:' },
  11: { what: 'double-tap zoom', file: PAGE, test: 'pitfalls 11 and 12:' },
  12: { what: 'pinch zoom taken away', file: PAGE, test: 'pitfalls 11 and 12:' },
  13: { what: 'samples without identity', file: POINTER, test: 'pitfalls 13 to 15:' },
  14: { what: 'offsets of samples', file: POINTER, test: 'pitfalls 13 to 15:' },
  15: { what: 'a missing or empty list of samples', file: POINTER, test: 'pitfalls 13 to 15:' },
  16: { what: 'a page that scrolls under the pen', file: PAGE, test: 'pitfall 16:' },
  17: { what: 'a hovering pen that draws', file: POINTER, test: 'pitfalls 17 and 18:' },
  18: { what: 'eraser and barrel button', file: POINTER, test: 'pitfalls 17 and 18:' },
  19: {
    what: 'an invalid control that cannot be focused',
    file: FORM,
    test: 'takes the focus and writes nothing to the console',
  },
  20: { what: 'an anchor that is not there yet', file: HERE, test: 'pitfall 20:' },
  21: {
    what: 'validity that is not told outwards',
    file: FORM,
    test: 'says the same in every way it can be asked',
  },
  22: {
    what: 'state and value in restoring',
    file: FORM,
    test: 'takes a text and form data, told by no event',
  },
  23: { what: 'events on restoring', file: FORM, test: 'takes a text and form data, told by no event' },
  24: { what: 'reset to an old default', file: FORM, test: 'returns to the attribute as it is now' },
  25: { what: 'a label that does not focus', file: FORM, test: 'moves the focus at a click on its label' },
  26: { what: 'a label that gives no name', file: FORM, test: 'called by its label' },
  27: { what: 'a fieldset enabled again', file: FORM, test: 'by a fieldset on, off, on' },
  28: { what: 'a disabled fieldset that blocks the form', file: FORM, test: 'keeps no form from being sent' },
  29: { what: 'callbacks in another order', file: FORM, test: 'asked before it is on the page' },
  30: { what: 'a shadow root that is there already', file: HERE, test: 'pitfalls 30 and 31:' },
  31: { what: 'two attempts to attach', file: HERE, test: 'pitfalls 30 and 31:' },
  32: {
    what: 'property or attribute, as React sets them',
    file: FORM,
    test: 'keeps a property set before the element was known',
  },
  33: { what: 'v-model, as Vue does it', file: HERE, test: 'pitfall 33:' },
  34: { what: 'a value accessor, as Angular needs it', file: HERE, test: 'pitfall 34:' },
};

describe('the list of pitfalls', () => {
  it('is tried in full', async () => {
    expect(Object.keys(ENTRIES)).to.have.length(34);
    const files = [...new Set(Object.values(ENTRIES).map(({ file }) => file))];
    const texts = new Map(
      await Promise.all(
        files.map(
          async (file) => [file, await (await fetch(new URL(file, import.meta.url))).text()] as const,
        ),
      ),
    );
    for (const [number, { file, test }] of Object.entries(ENTRIES)) {
      // Once in this table, if the file is this one, and once as a name.
      const times = (texts.get(file)?.split(test).length ?? 0) - 1;
      expect(times, `${number}: "${test}" in ${file}`).to.be.at.least(file === HERE ? 2 : 1);
    }
  });
});

describe('pitfall 20: validity asked for before the first render', () => {
  it('has an anchor already: no noise, and the focus comes', async () => {
    const form = await fixture<HTMLFormElement>('<form></form>');
    const map = document.createElement('pulse-map');
    map.required = true;
    form.append(map);
    const noise = await consoleOf(() => expect(form.reportValidity()).to.equal(false));
    expect(noise).to.deep.equal([]);
    await settled(map);
    expect(map.reportValidity()).to.equal(false);
    expect(focused()?.matches('[part~=site]')).to.equal(true);
  });

  it('has one in every form the map can take', async () => {
    const form = await fixture<HTMLFormElement>(
      '<form><pulse-map required display="table"></pulse-map></form>',
    );
    const map = form.querySelector('pulse-map') as PulseMap;
    await settled(map);
    expect(await consoleOf(() => map.reportValidity())).to.deep.equal([]);
    expect(focused()?.localName).to.equal('select');
  });
});

describe('pitfalls 30 and 31: a shadow root that the server made', () => {
  it('is taken over once: nothing of it stays, nothing throws, and the map works', async () => {
    const place = await fixture<HTMLElement>('<div></div>');
    place.setHTMLUnsafe(
      '<pulse-map name="p"><template shadowrootmode="open"><p>Loading the map</p></template></pulse-map>',
    );
    const map = place.querySelector('pulse-map') as PulseMap;
    await settled(map);
    expect(map.shadowRoot?.textContent).to.not.include('Loading the map');
    expect(Object.keys(saidAll(map)).length).to.be.above(20);
    const before = site(map, 'left femoral');
    place.append(map);
    map.value = examined({ 'left femoral': 'normal' });
    await settled(map);
    expect(site(map, 'left femoral'), 'moved, not made anew').to.equal(before);
  });
});

describe('pitfall 33: a model bound as Vue does', () => {
  it('finds the new value at the target of input and of change, outside of a shadow tree too', async () => {
    const host = await fixture<HTMLElement>('<div></div>');
    const map = document.createElement('pulse-map');
    host.attachShadow({ mode: 'open' }).append(map);
    await settled(map);
    const model: string[] = [];
    map.addEventListener('input', (event) => model.push((event.target as PulseMap).value));
    let outside = 0;
    host.addEventListener('input', () => outside++);
    const acts = await markNormal(map);
    expect(model).to.have.length(acts.length);
    expect(model.at(-1)).to.equal(map.value);
    expect(outside).to.equal(acts.length);
  });

  it('takes a value given as an attribute', async () => {
    const map = await fixture<PulseMap>('<pulse-map></pulse-map>');
    map.setAttribute('value', JSON.stringify(examined({ 'left femoral': 'absent' })));
    await settled(map);
    expect(saidAt(map, 'left femoral')).to.equal('0, absent');
  });
});

describe('pitfall 34: a value accessor as Angular has it', () => {
  /** What a directive for the map comes to. */
  class Accessor {
    changes: string[] = [];
    constructor(private readonly map: PulseMap) {
      map.addEventListener('input', () => this.changes.push(map.value));
    }
    writeValue(value: string | null): void {
      this.map.value = value;
    }
    setDisabledState(disabled: boolean): void {
      this.map.disabled = disabled;
    }
  }

  it('writes without an echo, hears each act once, and disables', async () => {
    const map = await fixture<PulseMap>('<pulse-map></pulse-map>');
    const accessor = new Accessor(map);
    const record = JSON.stringify(examined({ 'left femoral': 'absent' }));
    accessor.writeValue(record);
    accessor.writeValue(null);
    accessor.writeValue(record);
    await settled(map);
    expect(accessor.changes, 'no loop').to.deep.equal([]);
    const acts = await markNormal(map);
    expect(accessor.changes).to.have.length(acts.length);
    expect(accessor.changes.at(-1)).to.equal(map.value);
    accessor.setDisabledState(true);
    await settled(map);
    expect(byRole<HTMLButtonElement>(map, 'button', 'Mark normal').disabled).to.equal(true);
    expect(byRole<HTMLButtonElement>(map, 'button', 'Undo').disabled).to.equal(true);
    accessor.setDisabledState(false);
    await settled(map);
    expect(byRole<HTMLButtonElement>(map, 'button', 'Undo').disabled).to.equal(false);
  });
});
