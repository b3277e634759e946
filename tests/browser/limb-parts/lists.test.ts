// What a list shows is what the part holds, whatever a person picked in it before.
import { expect, fixture } from '@open-wc/testing';
import { press } from '../../tools/real-input.js';
import { drawn, field } from '../tools/limbs.js';
import type { LimbContext } from 'pulse-map/elements/limb-context';
import 'pulse-map/elements/limb-context/define';
import 'pulse-map/elements/limb-pressures/define';

async function pick(control: Element, label: string | RegExp, value: string): Promise<void> {
  const list = field<HTMLSelectElement>(control, label);
  const to = [...list.options].findIndex((one) => one.value === value);
  expect(to, value).to.be.at.least(0);
  list.focus();
  while (list.selectedIndex !== to) await press(list.selectedIndex < to ? 'ArrowDown' : 'ArrowUp');
  await drawn(control);
}

const LISTS = [
  [
    'limb-context',
    'Site of trauma or surgery, right',
    'groin',
    'knee',
    (one: string) => ({ injury: { right: one } }),
  ],
  [
    'limb-pressures',
    /^No number for .*dorsalis pedis.*right.*: why$/,
    'incompressible',
    'dressing',
    (one: string) => ({ 'dorsalis-pedis': { right: one } }),
  ],
] as const;

for (const [tag, label, first, second, holding] of LISTS) {
  it(`<${tag}> shows in a list what it holds after picks and after another value`, async () => {
    const control = await fixture<LimbContext>(`<${tag} lang="en"></${tag}>`);
    await drawn(control);
    const shown = (): string => field<HTMLSelectElement>(control, label).value;
    await pick(control, label, first);
    await pick(control, label, second);
    expect(control.value).to.deep.equal(holding(second));
    control.value = holding(first) as never;
    await drawn(control);
    expect(shown()).to.equal(first);
    control.value = undefined;
    await drawn(control);
    expect(shown()).to.equal('');
    control.value = holding(second) as never;
    await drawn(control);
    expect(shown()).to.equal(second);
  });
}
