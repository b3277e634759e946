// A word of a later version in a field that is known: kept, said to be there, locked, and nothing else with it.
import { expect, fixture } from '@open-wc/testing';
import { click, setViewport, type, press } from '../../tools/real-input.js';
import { drawn, field } from '../tools/limbs.js';
import { allByRole, byRole, readableText } from '../tools/perceive.js';
import type { LimbExamination } from 'pulse-map/elements/limb-examination';
import type { LimbInspectionElement } from 'pulse-map/elements/limb-inspection';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import 'pulse-map/elements/limb-examination/define';

before(() => setViewport({ width: 1000, height: 900 }));

const UNKNOWN = 'recorded in a way this version does not know';
const inspection = { leg: { left: { colour: 'marbled', refill: 3 } } };

async function open<E extends HTMLElement>(tag: string, value: unknown) {
  const form = await fixture<HTMLFormElement>(`<form lang="en"><${tag} name="v"></${tag}></form>`);
  const control = form.querySelector(tag) as unknown as E & { value: unknown };
  control.value = JSON.stringify(value);
  await drawn(control);
  return { form, control, sent: () => JSON.parse(String(new FormData(form).get('v'))) as unknown };
}

async function enterRefill(control: HTMLElement, text: string): Promise<void> {
  const refill = field(control, 'Capillary refill, left leg');
  refill.focus();
  refill.select();
  await type(text);
  await press('Tab');
  await drawn(control);
}

describe('a word that this version does not know', () => {
  it('is kept in a part through edits of everything else, and cannot be changed itself', async () => {
    const { control, sent } = await open<LimbInspectionElement>('limb-inspection', inspection);
    expect(sent()).to.deep.equal(inspection);
    expect(readableText(control)).to.include(UNKNOWN);
    expect(allByRole(control, 'radiogroup', 'Colour, left leg')).to.have.length(0);
    expect(allByRole(control, 'radiogroup', 'Colour, right leg')).to.have.length(1);
    await enterRefill(control, '4');
    const [right] = allByRole(control, 'radiogroup', 'Colour, right leg');
    await click(byRole(right as HTMLElement, 'radio', 'Pale'));
    expect(sent()).to.deep.equal({
      leg: { left: { colour: 'marbled', refill: 4 }, right: { colour: 'pale' } },
    });
    expect(control.recorded?.leg?.left).to.deep.equal({ refill: 4 });
  });

  it('is kept in the whole examination through edits and undo, and counted in one sentence', async () => {
    const record = { format: 'pulse-map/1.9', scale: '0-3', inspection, device: 'B12' };
    const { control, sent } = await open<LimbExamination>('limb-examination', record);
    expect(readableText(control)).to.include('The record holds 2 entries of a later version.');
    await control.openPart('inspection');
    await drawn(control);
    expect(readableText(control)).to.include(UNKNOWN);
    await enterRefill(control, '4');
    const edited = { ...record, inspection: { leg: { left: { colour: 'marbled', refill: 4 } } } };
    expect(sent()).to.deep.equal(edited);
    control.undo();
    expect(sent()).to.deep.equal(record);
  });

  it('is counted on the map too, once', async () => {
    const { control, sent } = await open<PulseMap>('pulse-map', {
      format: 'pulse-map/1.9',
      scale: '0-3',
      device: 'B12',
      onset: 'acute',
    });
    expect(readableText(control).match(/The record holds 1 entry of a later version/g)).to.have.length(1);
    await click(byRole(control, 'button', /^(All|Other) \d+ normal$/));
    await drawn(control);
    expect(sent()).to.include({ device: 'B12', format: 'pulse-map/1.9' });
  });
});
