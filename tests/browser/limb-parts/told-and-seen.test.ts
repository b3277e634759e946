import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/limb-history/define';
import 'pulse-map/elements/limb-inspection/define';
import type { LimbHistoryElement } from 'pulse-map/elements/limb-history';
import type { LimbInspectionElement } from 'pulse-map/elements/limb-inspection';
import { click, focused, press, setViewport, type } from '../../tools/real-input.js';
import { drawn, field } from '../tools/limbs.js';
import { allByRole, byRole, nameOf, readableText } from '../tools/perceive.js';

before(() => setViewport({ width: 1000, height: 900 }));

const group = (control: Element, name: string): HTMLElement => {
  const [found] = [...allByRole(control, 'radiogroup', name), ...allByRole(control, 'group', name)];
  if (!found) throw new Error(`no group "${name}"`);
  return found;
};

async function pick(control: Element, where: string, word: string): Promise<void> {
  const [button] = [
    ...allByRole(group(control, where), 'radio', word),
    ...allByRole(group(control, where), 'checkbox', word),
  ];
  await click(button as HTMLElement);
  await drawn(control);
}

describe('limb-history', () => {
  async function open(): Promise<LimbHistoryElement> {
    const control = await fixture<LimbHistoryElement>(html`<limb-history lang="en"></limb-history>`);
    await drawn(control);
    return control;
  }

  it('asks for muscle, distance and severity only where claudication is told, each side apart', async () => {
    const control = await open();
    expect(readableText(control)).not.to.include('Pain-free walking distance');
    await pick(control, 'Symptom, left leg', 'Claudication');
    await pick(control, 'Claudication in, left leg', 'Upper calf');
    const distance = field(control, 'Pain-free walking distance, left leg');
    distance.focus();
    await type('150');
    await press('Tab');
    await drawn(control);
    expect(control.value).to.deep.equal({
      history: { leg: { left: { symptom: 'claudication', distance: 150 } } },
      context: { legClaudication: { left: 'calf-upper' } },
    });
    expect(allByRole(control, 'radiogroup', 'Claudication in, right leg')).to.have.length(0);
  });

  it('clears what depends on a symptom together with it; denied pain counts for the muscles too', async () => {
    const control = await open();
    control.value = {
      history: { leg: { right: { symptom: 'claudication', distance: 90, severity: 'severe' } } },
    };
    await drawn(control);
    await pick(control, 'Symptom, right leg', 'None');
    expect(control.value).to.deep.equal({
      history: { leg: { right: { symptom: 'none' } } },
      context: { legClaudication: { right: 'none' } },
    });
  });

  it('takes back a choice pressed again, so that nothing is compulsory', async () => {
    const control = await open();
    await pick(control, 'Heart rhythm', 'Regular');
    await pick(control, 'Heart rhythm', 'Regular');
    expect(control.value).to.equal(undefined);
  });

  it('tells "none of these" from nothing asked', async () => {
    const control = await open();
    await pick(control, 'Risk factors', 'None of these');
    expect(control.value).to.deep.equal({ history: { risks: [] } });
    await pick(control, 'Risk factors', 'Hypertension');
    await pick(control, 'Risk factors', 'Chronic kidney disease');
    expect(control.value).to.deep.equal({ history: { risks: ['hypertension', 'kidney-disease'] } });
  });

  for (const typed of ['far', '-3', '99999']) {
    it(`refuses a walking distance of "${typed}" with a sentence and keeps the last one`, async () => {
      const control = await open();
      control.value = { history: { leg: { left: { symptom: 'claudication', distance: 120 } } } };
      await drawn(control);
      const input = field(control, 'Pain-free walking distance, left leg');
      input.focus();
      input.select();
      await type(typed);
      await press('Tab');
      await drawn(control);
      expect(readableText(control)).to.include(
        `“${typed}” was not taken. Expected a number from 0 to 10000 m.`,
      );
      expect(control.value?.history?.leg?.left?.distance).to.equal(120);
    });
  }
});

describe('limb-inspection', () => {
  async function open(width = 960): Promise<LimbInspectionElement> {
    const box = await fixture<HTMLElement>(
      html`<div style="width: ${width}px" lang="en"><limb-inspection></limb-inspection></div>`,
    );
    const control = box.querySelector('limb-inspection') as LimbInspectionElement;
    await drawn(control);
    return control;
  }

  it('shows what depends on a finding with it, and takes it away with it', async () => {
    const control = await open();
    await pick(control, 'Temperature, left leg', 'Cold');
    field<HTMLSelectElement>(control, 'Level of change, left leg').focus();
    await press('k');
    await drawn(control);
    await pick(control, 'Signs of infection, left leg', 'Redness');
    const reach = field(control, 'Redness reaches, left leg');
    reach.focus();
    await type('2,5');
    await press('Tab');
    await drawn(control);
    expect(control.value?.leg?.left).to.deep.equal({
      temperature: 'cold',
      temperatureLevel: 'knee',
      infection: ['redness'],
      rednessCm: 2.5,
    });
    await pick(control, 'Temperature, left leg', 'Warm');
    await pick(control, 'Signs of infection, left leg', 'None');
    expect(control.value?.leg?.left).to.deep.equal({ temperature: 'warm', infection: [] });
  });

  it('is walked by keys: digits and arrows choose, Delete takes back, Up and Down stay on one side', async () => {
    const control = await open();
    const colour = group(control, 'Colour, left leg');
    (colour.querySelector('[tabindex="0"]') as HTMLElement).focus();
    await press('2');
    await drawn(control);
    expect(control.value?.leg?.left?.colour).to.equal('pale');
    await press('ArrowRight');
    await drawn(control);
    expect(control.value?.leg?.left?.colour).to.equal('red');
    await press('Delete');
    await drawn(control);
    expect(control.value).to.equal(undefined);
    await press('ArrowDown');
    expect((focused() as Element).closest('[role=radiogroup]')?.getAttribute('aria-label')).to.equal(
      'Temperature, left leg',
    );
    await press('ArrowDown', 'ArrowUp', 'ArrowUp');
    expect((focused() as Element).closest('[role=radiogroup]')?.getAttribute('aria-label')).to.equal(
      'Colour, left leg',
    );
  });

  it('shows one limb at a time where there is no room for two, still by its own name', async () => {
    const control = await open(340);
    expect(allByRole(control, 'radiogroup', 'Colour, right leg')).to.have.length(1);
    expect(allByRole(control, 'radiogroup', 'Colour, left leg')).to.have.length(0);
    await click(byRole(group(control, 'Limb'), 'radio', 'Left'));
    await drawn(control);
    expect(allByRole(control, 'radiogroup', 'Colour, left leg')).to.have.length(1);
    await pick(control, 'Colour, left leg', 'Blue');
    expect(control.value).to.deep.equal({ leg: { left: { colour: 'blue' } } });
  });

  it('keeps targets of 44 px', async () => {
    const control = await open(340);
    const buttons = [...allByRole(control, 'radio'), ...allByRole(control, 'checkbox')];
    expect(buttons.length).to.be.above(20);
    for (const button of buttons) {
      expect(button.getBoundingClientRect().height, nameOf(button)).to.be.at.least(44);
    }
  });

  it('changes nothing when read only', async () => {
    const control = await open();
    control.value = { leg: { left: { colour: 'pale' } } };
    control.readOnly = true;
    await drawn(control);
    const buttons = allByRole(control, 'radio').slice(0, 8);
    expect(buttons).to.have.length(8);
    for (const button of buttons) await click(button);
    expect(control.value).to.deep.equal({ leg: { left: { colour: 'pale' } } });
  });
});

describe('capillary refill', () => {
  it('is held against the limit for the age, which is named', async () => {
    const control = await fixture<LimbInspectionElement>(html`<limb-inspection lang="en"></limb-inspection>`);
    control.value = { leg: { left: { refill: 4 } } };
    await drawn(control);
    expect(readableText(control)).to.include(
      'over 2 s and over 2.9 s, the 95% limit of healthy people of this age',
    );
    control.age = '60-79';
    await drawn(control);
    expect(readableText(control)).to.include(
      'over 2 s, within the 95% limit of healthy people of this age (4.5 s). Compare with the other limb',
    );
    expect(readableText(control)).not.to.match(/usual|normal/);
  });
});
