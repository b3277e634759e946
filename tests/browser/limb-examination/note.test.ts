import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/limb-examination/define';
import type { LimbExamination } from 'pulse-map/elements/limb-examination';
import { click, press, type } from '../../tools/real-input.js';
import { drawn } from '../tools/limbs.js';
import { byRole } from '../tools/perceive.js';
import { until } from '../tools/until.js';

async function open(): Promise<LimbExamination> {
  const page = await fixture<HTMLElement>(html`<main lang="en"><limb-examination></limb-examination></main>`);
  const control = page.querySelector('limb-examination')!;
  await control.openPart('pulses');
  await drawn(control);
  return control;
}

const summary = (control: LimbExamination): HTMLElement =>
  control.shadowRoot!.querySelector('details.note summary')!;

describe('a note in the examination', () => {
  it('is folded above the map, and is recorded as one step of the whole', async () => {
    const control = await open();
    await click(summary(control));
    byRole(control, 'textbox', 'Note on pulses and bruits').focus();
    await type('left femoral 2, left popliteal absent');
    const note = control.shadowRoot!.querySelector('limb-note')!;
    await until(() => note.shadowRoot!.querySelector('[part=findings]'), 'read back');
    let changes = 0;
    control.addEventListener('change', () => changes++);
    await press('Control+Enter');
    expect(control.examination.pulses?.popliteal?.left?.grade).to.equal('absent');
    expect(changes).to.equal(1);
    control.undo();
    expect(control.value).to.equal('');
  });

  it('keeps a half-written note with what else stands unfinished, and opens it again', async () => {
    const control = await open();
    await click(summary(control));
    byRole(control, 'textbox', 'Note on pulses and bruits').focus();
    await type('left fem');
    const { unfinished } = control;
    const other = await open();
    other.unfinished = unfinished;
    await drawn(other);
    expect(byRole<HTMLTextAreaElement>(other, 'textbox', 'Note on pulses and bruits').value).to.equal(
      'left fem',
    );
  });

  it('is not there in a record that can only be read', async () => {
    const control = await open();
    control.readOnly = true;
    await drawn(control);
    expect(control.shadowRoot!.querySelector('limb-note')).to.equal(null);
  });
});
