import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/limb-history/define';
import 'pulse-map/elements/limb-inspection/define';
import 'pulse-map/locale/de';
import type { LimbHistoryElement } from 'pulse-map/elements/limb-history';
import type { LimbInspectionElement } from 'pulse-map/elements/limb-inspection';
import { click, press, setViewport, type } from '../../tools/real-input.js';
import { drawn, field } from '../tools/limbs.js';
import { allByRole, everything } from '../tools/perceive.js';

before(() => setViewport({ width: 1000, height: 900 }));

async function pick(control: Element, where: string, word: string): Promise<void> {
  const groups = [...allByRole(control, 'radiogroup', where), ...allByRole(control, 'group', where)];
  const [button] = groups.flatMap((group) => [
    ...allByRole(group, 'radio', word),
    ...allByRole(group, 'checkbox', word),
  ]);
  if (!button) throw new Error(`no "${word}" in "${where}"`);
  await click(button);
  await drawn(control);
}

async function choose(control: Element, label: string, value: string): Promise<void> {
  const select = field<HTMLSelectElement>(control, label);
  select.focus();
  select.value = value;
  select.dispatchEvent(new Event('change', { bubbles: true, composed: true }));
  await drawn(control);
}

async function enter(control: Element, label: string, text: string): Promise<void> {
  const input = field(control, label);
  input.focus();
  input.select();
  await type(text);
  await press('Tab');
  await drawn(control);
}

function unfold(control: Element): void {
  for (const details of everything(control)) if (details instanceof HTMLDetailsElement) details.open = true;
}

describe('an acute history', () => {
  async function open(lang = 'en'): Promise<LimbHistoryElement> {
    const control = await fixture<LimbHistoryElement>(html`<limb-history lang=${lang}></limb-history>`);
    await drawn(control);
    unfold(control);
    await drawn(control);
    return control;
  }
  const left = (control: LimbHistoryElement) => control.value?.history?.leg?.left;

  it('is entered as such: sudden pain, how it began, the hours since', async () => {
    const control = await open();
    await pick(control, 'Sudden or new, left leg', 'Sudden pain');
    await pick(control, 'Began, left leg', 'Suddenly');
    await enter(control, 'Hours since, left leg', '5');
    expect(left(control)).to.deep.equal({
      suddenPain: true,
      newComplaint: true,
      onset: 'sudden',
      hours: 5,
    });
  });

  it('keeps what is new when the onset is taken away', async () => {
    const control = await open();
    await pick(control, 'Symptom, left leg', 'Rest pain');
    await pick(control, 'Began, left leg', 'Suddenly');
    await pick(control, 'Began, left leg', 'Suddenly');
    expect(left(control)).to.deep.equal({ symptom: 'rest-pain', suddenPain: true, newComplaint: true });
  });

  it('writes no new complaint for hours that were only on the way to more', async () => {
    const control = await open();
    await pick(control, 'Symptom, left leg', 'Rest pain');
    await enter(control, 'Hours since, left leg', '5000');
    expect(left(control)).to.deep.equal({ symptom: 'rest-pain', hours: 5000 });
  });

  it('asks for hours after a gradual onset and after one that cannot be told', async () => {
    const control = await open();
    for (const word of ['Gradually', 'Cannot say']) {
      await pick(control, 'Began, left leg', word);
      expect(field(control, 'Hours since, left leg').checkVisibility(), word).to.equal(true);
    }
    expect(left(control)?.onset).to.equal('unknown');
  });

  it('keeps a time on the clock as it was while it is being typed anew', async () => {
    const control = await open();
    control.value = { history: { leg: { left: { onsetAt: '2026-05-01T10:00Z', symptom: 'rest-pain' } } } };
    await drawn(control);
    unfold(control);
    await drawn(control);
    const clock = everything(control).find(
      (e) => e instanceof HTMLInputElement && e.type === 'datetime-local' && e.value !== '',
    ) as HTMLInputElement;
    clock.focus();
    await press('Backspace');
    await drawn(control);
    expect(clock.validity.badInput, 'half a time').to.equal(true);
    expect(left(control)?.onsetAt).to.equal('2026-05-01T10:00Z');
  });

  it('counts the hours from a time on the clock to the examination, and takes them away with it', async () => {
    const control = await open();
    control.examinedAt = new Date('2026-05-01T14:30').toISOString();
    await pick(control, 'Sudden or new, left leg', 'Something new');
    await pick(control, 'Began, left leg', 'Suddenly');
    const time = field(control, 'Began at, left leg');
    const set = (text: string): void => {
      time.focus();
      time.value = text;
      time.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
      time.blur();
    };
    set('2026-05-01T10:00');
    await drawn(control);
    expect(left(control)?.hours).to.equal(4.5);
    expect(Date.parse(left(control)?.onsetAt ?? '')).to.equal(Date.parse('2026-05-01T10:00'));
    set('2026-05-02T10:00');
    await drawn(control);
    expect(control.validity.valid).to.equal(false);
    expect(left(control)?.hours).to.equal(4.5);
    set('');
    await drawn(control);
    expect(left(control)).to.deep.equal({ newComplaint: true, onset: 'sudden' });
  });

  it('takes symptoms elsewhere, none of them, and the circulation', async () => {
    const control = await open();
    unfold(control);
    await drawn(control);
    await pick(control, 'Symptoms elsewhere', 'Collapse');
    await pick(control, 'Shock', 'No');
    await enter(control, 'Systolic', '90');
    await enter(control, 'Diastolic', '60');
    await enter(control, 'Heart rate', '110');
    expect(control.value).to.deep.equal({
      history: { elsewhere: ['collapse'] },
      circulation: { shock: false, systolic: 90, diastolic: 60, heartRate: 110 },
    });
    await pick(control, 'Symptoms elsewhere', 'None of these');
    expect(control.value?.history).to.deep.equal({ elsewhere: [] });
  });

  it('speaks German, and changes nothing when read only or disabled', async () => {
    const control = await open('de');
    await pick(control, 'Plötzlich oder neu, linkes Bein', 'Plötzlicher Schmerz');
    const before = JSON.stringify(control.value);
    for (const bar of ['readOnly', 'disabled'] as const) {
      control[bar] = true;
      await drawn(control);
      const buttons = [...allByRole(control, 'radio'), ...allByRole(control, 'checkbox')];
      expect(buttons.length, bar).to.be.above(12);
      for (const button of buttons.slice(0, 12)) await click(button);
      expect(JSON.stringify(control.value)).to.equal(before);
      control[bar] = false;
    }
  });
});

describe('what is seldom looked for', () => {
  async function open(value?: LimbInspectionElement['value']): Promise<LimbInspectionElement> {
    const control = await fixture<LimbInspectionElement>(html`<limb-inspection lang="en"></limb-inspection>`);
    control.value = value;
    await drawn(control);
    return control;
  }

  it('is folded away until it holds something', async () => {
    const control = await open();
    expect(allByRole(control, 'radiogroup', 'Pain on passive stretch, left leg')).to.have.length(0);
    control.value = { leg: { left: { stretchPain: false } } };
    await drawn(control);
    expect(allByRole(control, 'radiogroup', 'Pain on passive stretch, left leg')).to.have.length(1);
    expect(allByRole(control, 'radiogroup', 'Varicose veins, left leg')).to.have.length(0);
  });

  it('asks of an ulcer its cause, its size and whether a probe touches bone, and drops cause and size with it', async () => {
    const control = await open();
    await pick(control, 'Ulcer, left leg', 'Shallow');
    await choose(control, 'Ulcer lies at, left leg', 'sole');
    await pick(control, 'Cause of the ulcer, left leg', 'Neuropathic');
    await enter(control, 'Ulcer diameter, left leg', '12');
    await pick(control, 'Probe touches bone (probe-to-bone test), left leg', 'No');
    expect(control.value?.leg?.left).to.deep.equal({
      ulcer: 'shallow',
      ulcerPlace: 'sole',
      ulcerCause: 'neuropathic',
      ulcerSizeMm: 12,
      probeToBone: false,
    });
    await pick(control, 'Ulcer, left leg', 'None');
    expect(control.value?.leg?.left).to.deep.equal({ ulcer: 'none', probeToBone: false });
  });

  it('writes each of its fields, of legs and arms', async () => {
    const control = await open();
    unfold(control);
    await drawn(control);
    await pick(control, 'Pain on passive stretch, left leg', 'Yes');
    await pick(control, 'Pain out of proportion, left leg', 'No');
    await pick(control, 'Flow, left leg', 'Restored recently');
    await pick(control, 'Signs of arterial injury, left leg', 'Knee dislocation');
    await pick(control, 'Swelling at a puncture or graft, left leg', 'Growing');
    await pick(control, 'Great toe, left leg', 'Gangrene');
    await pick(control, 'Varicose veins, left leg', 'Yes');
    await pick(control, 'Brown pigment, left leg', 'No');
    await pick(control, 'Signs of deep vein thrombosis, left leg', 'None');
    await pick(control, '10 g filament on the sole, left leg', 'Not felt');
    await pick(control, 'Charcot foot suspected, left leg', 'No');
    await pick(control, 'Movement, left leg', 'Weak');
    await pick(control, 'Motor or sensory deficit, left leg', 'Old and unchanged');
    await pick(control, 'Thumb, right arm', 'Blue');
    expect(control.value).to.deep.equal({
      leg: {
        left: {
          stretchPain: true,
          painOutOfProportion: false,
          reperfused: true,
          injurySigns: ['knee-dislocation'],
          falseAneurysmSigns: ['growing'],
          digits: { first: 'gangrene' },
          varices: true,
          pigment: false,
          thrombosisSigns: [],
          monofilament: 'not-felt',
          charcotSuspected: false,
          movement: 'weak',
          deficitKnown: true,
        },
      },
      arm: { right: { digits: { first: 'blue' } } },
    });
    await pick(control, 'Movement, left leg', 'Normal');
    expect(control.value?.leg?.left).not.to.have.property('deficitKnown');
  });
});
