// What is being typed is in the value at every key, in every field of every part.
import { expect, fixture } from '@open-wc/testing';
import { click, press, setViewport, type } from '../../tools/real-input.js';
import { drawn, field } from '../tools/limbs.js';
import { eventsOf } from '../tools/map.js';
import { allByRole, byRole, everything, readableText } from '../tools/perceive.js';
import type { LimbExamination } from 'pulse-map/elements/limb-examination';
import type { LimbPressures } from 'pulse-map/elements/limb-pressures';
import 'pulse-map/elements/limb-examination/define';

before(() => setViewport({ width: 1000, height: 900 }));

const leg = { symptom: 'claudication', onset: 'sudden' };
const found = { infection: ['redness'], ulcer: 'none' };

/** Each part with a value that brings all of its fields out. */
const PARTS: readonly (readonly [tag: string, value: object, fields: number, attributes?: string])[] = [
  ['limb-history', { history: { leg: { right: leg, left: leg }, arm: { right: leg, left: leg } } }, 7],
  ['limb-inspection', { leg: { right: found, left: found }, arm: { right: found, left: found } }, 12],
  ['limb-pressures', { brachial: { right: 140, left: 138 } }, 30],
  ['limb-staging', { leg: { left: { fontaine: { stage: 'IV' }, rutherford: { stage: 5 } } } }, 2],
  ['bedside-test', { right: { seconds: 12, limit: 20 } }, 1, 'test="venous-filling"'],
];

async function open<E extends HTMLElement>(tag: string, value: object, attributes = '') {
  const form = await fixture<HTMLFormElement>(
    `<form lang="en"><${tag} name="part" ${attributes}></${tag}></form>`,
  );
  const control = form.querySelector(tag) as unknown as E & { value: unknown };
  control.value = value;
  await drawn(control);
  for (const fold of everything(control).filter((e) => e.localName === 'details'))
    (fold as HTMLDetailsElement).open = true;
  await drawn(control);
  return { form, control };
}

const inputs = (control: Element): HTMLInputElement[] =>
  everything(control).filter(
    (e) => e.localName === 'input' && e.checkVisibility() && /text/.test((e as HTMLInputElement).type),
  ) as HTMLInputElement[];

/** Every object within a value. */
const within = (value: unknown): object[] =>
  typeof value === 'object' && value !== null ? [value, ...Object.values(value).flatMap(within)] : [];

for (const [tag, value, , attributes] of PARTS) {
  it(`<${tag}> hands its value out frozen, given or entered, and leaves the page's own object alone`, async () => {
    const given = structuredClone(value);
    const { control } = await open(tag, given, attributes);
    const [input] = inputs(control);
    for (const entered of [false, true]) {
      if (entered) {
        input?.focus();
        input?.select();
        await type('7');
      }
      expect(within(control.value).length).to.be.greaterThan(1);
      for (const one of within(control.value))
        expect(Object.isFrozen(one), JSON.stringify(one)).to.equal(true);
    }
    for (const one of within(given)) expect(Object.isFrozen(one)).to.equal(false);
    expect(given).to.deep.equal(value);
  });
}

for (const [tag, value, fields, attributes] of PARTS) {
  it(`<${tag}> has each key of each of its ${fields} fields or more in the form at once`, async function () {
    this.timeout(120_000);
    const { form, control } = await open(tag, value, attributes);
    const count = inputs(control).length;
    expect(count).to.be.at.least(fields);
    for (let i = 0; i < count; i++) {
      const input = inputs(control)[i] as HTMLInputElement;
      const events = eventsOf(form);
      const before = String(new FormData(form).get('part'));
      input.focus();
      input.select();
      await type('7');
      const name = `${i} ${input.getAttribute('aria-label') ?? input.labels?.[0]?.textContent?.trim() ?? ''}`;
      const sent = String(new FormData(form).get('part'));
      expect(sent, name).not.to.equal(before);
      expect(JSON.stringify(control.value), name).to.equal(sent);
      expect(events, name).to.deep.equal({ input: 1, change: 0 });
      await type('.5');
      expect(input.value, name).to.equal('7.5');
      await press('Tab');
      expect(events.change, name).to.equal(1);
    }
  });
}

describe('a number being typed', () => {
  const toe = 'Great toe, left';

  it('counts as far as it is one, and leaves no half of it behind where it is none', async () => {
    const { form, control } = await open<LimbPressures>('limb-pressures', { toe: { left: 44 } });
    const input = field(control, toe);
    const seen: unknown[] = [];
    form.addEventListener('input', () => seen.push((control as LimbPressures).value?.toe?.left));
    input.focus();
    input.select();
    await type('120x');
    expect(seen, '44 stands again, not 120').to.deep.equal([1, 12, 120, 44]);
    expect(input.value).to.equal('120x');
    expect(readableText(control), 'not scolded amid typing').not.to.include('was not taken');
    expect(control.checkValidity(), 'but the form is not sent without it').to.equal(false);
    await press('Backspace');
    expect(control.value).to.deep.equal({ toe: { left: 120 } });
    expect(control.checkValidity()).to.equal(true);
    await type('y');
    await press('Tab');
    await drawn(control);
    expect(control.value).to.deep.equal({ toe: { left: 44 } });
    expect(input.value, 'what was typed is kept in sight').to.equal('120y');
    expect(readableText(control)).to.include('“120y” was not taken');
  });

  it('never folds a group away under the hand that types in it', async () => {
    const { control } = await open('limb-pressures', {});
    const input = field(control, 'High thigh, left');
    input.focus();
    await type('7x');
    await drawn(control);
    expect(input.checkVisibility()).to.equal(true);
    expect(input.value).to.equal('7x');
  });

  it('keeps the point and the zeros that are on the way to one', async () => {
    const { control } = await open('limb-pressures', { unit: 'kPa' });
    const input = field(control, toe);
    input.focus();
    for (const [key, shown] of [
      ['1', '1'],
      ['0', '10'],
      ['.', '10.'],
      ['0', '10.0'],
      ['5', '10.05'],
    ] as const) {
      await type(key);
      await drawn(control);
      expect(input.value).to.equal(shown);
    }
  });

  it('is not torn from a hand by a page that writes back what it heard', async () => {
    const { form, control } = await open<LimbPressures>('limb-pressures', {});
    form.addEventListener('input', () => (control.value = String(new FormData(form).get('part'))));
    const input = field(control, toe);
    input.focus();
    await type('0');
    await drawn(control);
    await type('90');
    await drawn(control);
    expect(input.value).to.equal('090');
    expect(control.value).to.deep.equal({ toe: { left: 90 } });
  });
});

describe('typing in the whole examination', () => {
  const opened = async () => {
    const form = await fixture<HTMLFormElement>(
      '<form lang="en"><limb-examination name="e"></limb-examination></form>',
    );
    const control = form.querySelector('limb-examination') as unknown as LimbExamination;
    await drawn(control);
    const input = field(control, /^Earlier operations/);
    return { form, control, input };
  };

  it('is in the record at every key, told by input, and by change once', async () => {
    const { form, control, input } = await opened();
    const events = eventsOf(form);
    input.focus();
    await type('Stent ');
    expect(control.examination.history?.operations).to.equal('Stent');
    await type('2019');
    expect(JSON.parse(String(new FormData(form).get('e'))).history).to.deep.equal({
      operations: 'Stent 2019',
    });
    expect(events, 'the space after a word is no change').to.deep.equal({ input: 9, change: 0 });
    await press('Tab');
    expect(events.change).to.equal(1);
  });

  it('is one step of undo for a visit to the field', async () => {
    const { control, input } = await opened();
    await click(byRole(control, 'radio', 'Acute'));
    for (const text of ['Stent', ' 2019']) {
      input.focus();
      await press('End');
      await type(text);
      await press('Tab');
    }
    await drawn(control);
    const undo = allByRole(control, 'button', 'Undo')[0] as HTMLElement;
    const seen: unknown[] = [];
    for (let i = 0; i < 3; i++) {
      await click(undo);
      await drawn(control);
      seen.push([control.examination.history?.operations, control.examination.onset, input.value]);
    }
    expect(seen).to.deep.equal([
      ['Stent', 'acute', 'Stent'],
      [undefined, 'acute', ''],
      [undefined, undefined, ''],
    ]);
    expect(control.store.canUndo).to.equal(false);
  });

  it('is sent by a submit in the middle of it, and survives removal from the page', async () => {
    const { form, control, input } = await opened();
    let got: unknown;
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      got = new FormData(form).get('e');
    });
    input.focus();
    await type('Bypass');
    form.requestSubmit();
    expect(got).to.include('"operations":"Bypass"');
    control.remove();
    expect(control.value).to.equal(got);
  });
});
