// What a page may ask of a control beside its value: its own messages, states for style sheets, slots, sites that must be stated,
// and what exactly a person changed.
import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map';
import type { LimbExamination, LimbPressures, PulseMap, ReadingChangeEvent, RecordEvent } from 'pulse-map';
import { setPulse } from 'pulse-map/core';
import { examined } from '../../../stories/records.js';
import { click, consoleOf, press, type } from '../../tools/real-input.js';
import { drawn } from '../tools/limbs.js';
import { choose, openMap, openSite, settled } from '../tools/map.js';
import { readableText } from '../tools/perceive.js';

type Control = PulseMap | LimbExamination | LimbPressures;
const TAGS = ['pulse-map', 'limb-examination', 'limb-pressures'] as const;

async function inForm(
  tag: string,
  inner = '',
  attributes = '',
): Promise<{ form: HTMLFormElement; control: Control }> {
  const form = await fixture<HTMLFormElement>(
    `<form lang="en"><${tag} name="limbs" ${attributes}>${inner}</${tag}></form>`,
  );
  form.addEventListener('submit', (event) => event.preventDefault());
  const control = form.querySelector(tag) as Control;
  await drawn(control);
  return { form, control };
}

/** A person sends the form; the browser's own bubble is not asked for. */
async function send(form: HTMLFormElement, control: Control): Promise<boolean> {
  let sent = false;
  form.addEventListener('submit', () => (sent = true), { once: true });
  control.addEventListener('invalid', (event) => event.preventDefault(), { once: true });
  form.requestSubmit();
  await drawn(control);
  return sent;
}

for (const tag of TAGS) {
  describe(`<${tag}> in a form`, () => {
    it('takes a message of the page, says it once the form was refused, and takes it back', async () => {
      const { form, control } = await inForm(tag);
      control.setCustomValidity('This study asks for both popliteal pulses.');
      expect([control.validity.customError, control.validationMessage]).to.deep.equal([
        true,
        'This study asks for both popliteal pulses.',
      ]);
      expect(readableText(control), 'before anyone sent it').not.to.include('This study');
      expect(await send(form, control)).to.equal(false);
      expect(readableText(control)).to.include('This study asks for both popliteal pulses.');
      expect(control.matches(':state(user-invalid)')).to.equal(true);
      control.setCustomValidity('');
      await drawn(control);
      expect(readableText(control)).not.to.include('This study');
      expect(control.matches(':state(user-invalid)')).to.equal(false);
      expect(await send(form, control)).to.equal(true);
    });

    it('tells style sheets whether it is empty, invalid, or only to be read', async () => {
      const { control } = await inForm(tag);
      const states = () => ['empty', 'invalid', 'readonly'].map((name) => control.matches(`:state(${name})`));
      expect(states()).to.deep.equal([true, false, false]);
      control.setCustomValidity('No.');
      control.readOnly = true;
      await drawn(control);
      expect(states()).to.deep.equal(
        [true, false, true].map((on, i) => (i === 1 ? !control.validity.valid : on)),
      );
      control.readOnly = false;
      control.value = (
        tag === 'limb-pressures' ? { right: { brachial: 120 } } : examined({ 'left femoral': 'absent' })
      ) as never;
      await drawn(control);
      expect(states()).to.deep.equal([false, true, false]);
    });

    it('shows a hint and an error of the page above everything else, in place of its own', async () => {
      const { form, control } = await inForm(
        tag,
        '<p slot="hint">From the trunk outward.</p><p slot="error">The server knows no such visit.</p>',
      );
      control.setCustomValidity('Refused.');
      await send(form, control);
      const [hint, error] = [...control.children];
      const top = control.getBoundingClientRect().top;
      for (const one of [hint, error] as Element[]) {
        const { top: at, height } = one.getBoundingClientRect();
        expect([at >= top, at - top < 120, height > 10]).to.deep.equal([true, true, true]);
      }
      const own = document.createRange();
      own.selectNodeContents(control.renderRoot.querySelector('slot[name=error]') as Element);
      expect(own.toString()).to.equal('Refused.');
      expect(own.getClientRects().length, 'its own message is not drawn').to.equal(0);
    });
  });
}

describe('sites that a page requires', () => {
  for (const tag of ['pulse-map', 'limb-examination'] as const) {
    it(`must be stated on both sides before <${tag}> is taken, felt or not`, async () => {
      const { form, control } = await inForm(tag, '', 'require="femoral popliteal"');
      const map = control as PulseMap;
      expect(await send(form, control)).to.equal(false);
      expect(readableText(control)).to.include(
        'Still to be stated: right femoral, left femoral, right popliteal, left popliteal.',
      );
      let record = examined({
        'right femoral': 'normal',
        'left femoral': 'absent',
        'right popliteal': 'reduced',
      });
      control.value = record as never;
      expect(control.validationMessage).to.equal('Still to be stated: left popliteal.');
      expect(map.missing.map(({ site, side }) => `${side} ${site}`)).to.deep.equal(['left popliteal']);
      record = setPulse(record, { site: 'popliteal', side: 'left' }, { couldNotExamine: 'cast' });
      control.value = record as never;
      await drawn(control);
      expect(control.validity.valid).to.equal(true);
      expect(readableText(control)).not.to.include('Still to be stated');
      expect(await send(form, control)).to.equal(true);
    });
  }

  it('are named in a warning where there is no such site, and the others are asked for', async () => {
    let control: Control | undefined;
    const said = await consoleOf(async () => {
      ({ control } = await inForm('pulse-map', '', 'require="femoral knee"'));
    });
    expect(said.join()).to.match(/found require="femoral knee", expected .*popliteal/);
    expect((control as PulseMap).missing).to.have.length(2);
  });
});

describe('what a person changed', () => {
  const told = (map: Element) => {
    const all: RecordEvent[] = [];
    for (const kind of ['input', 'change'] as const)
      map.addEventListener(kind, (event) => void all.push(event as RecordEvent));
    return all;
  };

  it('is told with each event: the place, from what to what, by what act', async () => {
    const map = await openMap();
    const all = told(map);
    await openSite(map, 'left femoral');
    await choose(map, 'radio', /absent/);
    expect(all.map(({ type: kind, act }) => [kind, act])).to.deep.equal([
      ['input', 'edit'],
      ['change', 'edit'],
    ]);
    expect(all[1]?.differences).to.deep.equal([
      {
        path: ['pulses', 'femoral', 'left'],
        place: 'left femoral',
        from: undefined,
        to: { grade: 'absent' },
      },
    ]);
    await press('Escape');
    map.undo();
    expect(all.at(-1)?.act).to.equal('undo');
    expect(all.at(-1)?.differences.map(({ from, to }) => [from, to])).to.deep.equal([
      [{ grade: 'absent' }, undefined],
    ]);
  });

  it('is told letter by letter in input, and once for the field in change', async () => {
    const map = await openMap();
    await openSite(map, 'left femoral');
    await choose(map, 'button', 'Add a note');
    const all = told(map);
    await type('scar');
    await press('Enter');
    await settled(map);
    const of = (kind: string) =>
      all
        .filter((event) => event.type === kind)
        .map(({ differences: [one] }) => (one?.to as { note?: string }).note);
    expect(of('input')).to.deep.equal(['s', 'sc', 'sca', 'scar']);
    expect(of('change')).to.deep.equal(['scar']);
  });
});

describe('the reading', () => {
  it('is a property and an event of the map, with the headlines that are shown', async () => {
    const map = await openMap();
    expect(map.reading).to.deep.equal({ reading: undefined, sentences: [] });
    const all: ReadingChangeEvent[] = [];
    map.addEventListener('reading-change', (event) => void all.push(event));
    map.value = examined({ 'left femoral': 'normal', 'left popliteal': 'absent' });
    await settled(map);
    expect(all.length).to.be.above(0);
    expect(map.reading.sentences.join()).to.match(/left femoral and left popliteal/);
    expect(all.at(-1)?.sentences).to.deep.equal(map.reading.sentences);
    expect(map.reading.reading?.network.status).to.equal('read');
    const before = all.length;
    map.lang = 'de';
    await settled(map);
    map.value = '';
    await settled(map);
    expect(all.length).to.be.above(before);
    expect(all.at(-1)?.sentences).to.deep.equal([]);
  });
});

describe('buttons of the page', () => {
  for (const [tag, width] of [
    ['pulse-map', 900],
    ['pulse-map', 340],
    ['limb-examination', 900],
    ['limb-examination', 340],
  ] as const) {
    it(`stand in the row of tools of <${tag}> at ${width} px, and are pressed there`, async () => {
      let pressed = 0;
      const box = await fixture<HTMLElement>(html`<div lang="en" style="width:${width}px"></div>`);
      const control = document.createElement(tag);
      const own = Object.assign(document.createElement('button'), { slot: 'tools', textContent: 'Plan' });
      own.onclick = () => pressed++;
      control.append(own);
      box.append(control);
      await drawn(control);
      await click(own);
      expect(pressed).to.equal(1);
      expect(own.getBoundingClientRect().right).to.be.at.most(box.getBoundingClientRect().right);
    });
  }
});
