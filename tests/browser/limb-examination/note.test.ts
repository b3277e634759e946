import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/limb-examination/define';
import type { LimbExamination } from 'pulse-map/elements/limb-examination';
import { click, press, type } from '../../tools/real-input.js';
import { drawn, field } from '../tools/limbs.js';
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

  it('does not stay for another record, nor does what else was typed, written or timed for the one before', async () => {
    const control = await open();
    const femoral = (grade: string): string =>
      JSON.stringify({ format: 'pulse-map/1', scale: '0-3', pulses: { femoral: { left: { grade } } } });
    control.value = femoral('normal');
    await click(summary(control));
    byRole(control, 'textbox', 'Note on pulses and bruits').focus();
    await type('left popliteal absent');
    await control.openPart('pressures');
    await drawn(control);
    const toe = field(control, 'Great toe, left');
    toe.focus();
    await type('12x');
    await press('Tab');
    await control.openPart('summary');
    await drawn(control);
    const letter = () =>
      control.shadowRoot!.querySelector('limb-letter')!.shadowRoot!.querySelector('textarea')!;
    await until(() => letter(), 'the letter');
    letter().focus();
    await type('Mine. ');
    await drawn(control);
    expect(letter().value).to.include('Mine.');
    expect(Object.keys(control.unfinished ?? {})).to.have.members(['limb-note', 'limb-pressures']);
    control.value = femoral('absent');
    await drawn(control);
    expect(control.unfinished).to.equal(undefined);
    expect(toe.value).to.equal('');
    expect(byRole<HTMLTextAreaElement>(control, 'textbox', 'Note on pulses and bruits').value).to.equal('');
    expect(letter().value).to.not.include('Mine.');
    expect(control.letter).to.deep.equal({});
  });

  it('keeps what the page gives with another record', async () => {
    const control = await open();
    const letter = { short: { text: 'Written before.', from: [] } };
    const unfinished = { 'limb-note': { note: { typed: 'left fem', sentence: '' } } };
    control.letter = letter;
    control.value = '{"format":"pulse-map/1","scale":"0-3","pulses":{"femoral":{"left":{"grade":"absent"}}}}';
    control.unfinished = unfinished;
    await drawn(control);
    expect(control.letter).to.equal(letter);
    expect(byRole<HTMLTextAreaElement>(control, 'textbox', 'Note on pulses and bruits').value).to.equal(
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
