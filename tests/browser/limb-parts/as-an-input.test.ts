// What a part does as an <input> does, beside what its value holds.
import { expect, fixture } from '@open-wc/testing';
import { press, type } from '../../tools/real-input.js';
import { drawn, field } from '../tools/limbs.js';
import { everything } from '../tools/perceive.js';
import type { LimbPressures } from 'pulse-map/elements/limb-pressures';
import 'pulse-map/elements/bedside-test/define';
import 'pulse-map/elements/limb-context/define';
import 'pulse-map/elements/limb-history/define';
import 'pulse-map/elements/limb-inspection/define';
import 'pulse-map/elements/limb-pressures/define';
import 'pulse-map/elements/limb-staging/define';

const TAGS = [
  'bedside-test',
  'limb-context',
  'limb-history',
  'limb-inspection',
  'limb-pressures',
  'limb-staging',
] as const;

for (const tag of TAGS) {
  it(`<${tag}> can be used again after it was disabled by its property`, async () => {
    const control = await fixture<HTMLElementTagNameMap[typeof tag]>(`<${tag} lang="en"></${tag}>`);
    const usable = (): number =>
      everything(control).filter((one) => one.matches('button:enabled, input:enabled, select:enabled'))
        .length;
    await drawn(control);
    const before = usable();
    for (let i = 0; i < 2; i++) {
      control.disabled = true;
      await drawn(control);
      expect(usable()).to.be.below(before);
      control.disabled = false;
      await drawn(control);
      expect(usable()).to.equal(before);
    }
  });
}

const TOE = 'Great toe, left';

it('what was typed and could not be taken goes with a reset, though the value stays', async () => {
  const form = await fixture<HTMLFormElement>(
    '<form lang="en"><limb-pressures name="p"></limb-pressures></form>',
  );
  const control = form.querySelector('limb-pressures') as LimbPressures;
  await drawn(control);
  for (const leave of [true, false]) {
    field(control, TOE).focus();
    await type('12x');
    if (leave) await press('Tab');
    await drawn(control);
    expect(control.validity.valid).to.equal(false);
    form.reset();
    await drawn(control);
    expect(field(control, TOE).value).to.equal('');
    expect(control.unfinished).to.equal(undefined);
    expect(control.validity.valid).to.equal(true);
  }
});

it('what a page kept as unfinished and gave before the element was known stands in its field', async () => {
  const elsewhere = document.implementation.createHTMLDocument('');
  const control = elsewhere.createElement('limb-pressures') as LimbPressures;
  expect(control.updateComplete, 'not upgraded yet').to.equal(undefined);
  control.value = { toe: { left: 44 } };
  control.unfinished = { 'toe-left': { typed: '44y', sentence: 'No number.' } };
  const page = await fixture<HTMLElement>('<div lang="en"></div>');
  page.append(control);
  await drawn(control);
  expect(field(control, TOE).value).to.equal('44y');
  expect(control.value).to.deep.equal({ toe: { left: 44 } });
  control.unfinished = undefined;
  await drawn(control);
  expect(field(control, TOE).value, 'the accessor is not hidden').to.equal('44');
});
