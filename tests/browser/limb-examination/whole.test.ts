import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/limb-examination/define';
import type { LimbExamination } from 'pulse-map/elements/limb-examination';
import { onRay } from '../../../src/drawing/bedside-figures.js';
import { Hand } from '../tools/count.js';
import { drawn, field } from '../tools/limbs.js';
import { allByRole, byRole, everything, readableText } from '../tools/perceive.js';
import { setViewport } from '../../tools/real-input.js';

/*
 * One invented patient: a left leg that lost its blood six hours ago. Everything is entered once by keys alone and once by pen; every key
 * pressed, every digit typed and every tap counts as one action.
 */

/**
 * Actions of the whole examination. At commit e82c870, before red flags, stages and the record were extended, the threatened
 * leg took 65 by keys and 44 by pen, and two ordinary legs 27: what is written as normal is now named, leg by leg.
 */
const ACTIONS = { keys: 64, pen: 44, ordinary: 29 };

/** What the summary must say: every value entered. */
const ENTERED = [
  /The onset was acute/,
  /Left leg: rest pain, sudden pain, something new, sudden onset, for 6 hours/,
  /Heart rhythm atrial fibrillation/,
  /Left leg on inspection: colour pale; cold from the knee down; capillary refill time 6 s; movement weak; sensation lost beyond toes or fingers/,
  /Left leg: venous Doppler signal audible/,
  /In the left leg, the femoral pulse is normal; the popliteal, posterior tibial and dorsalis pedis pulses are absent/,
  /Leg elevation, left: Pale at 20°/,
  /arm right 142, left 138; dorsalis pedis left 0; posterior tibial left 0/,
];

async function open(): Promise<{ page: HTMLElement; control: LimbExamination; hand: Hand }> {
  await setViewport({ width: 1100, height: 1000 });
  const page = await fixture<HTMLElement>(
    html`<main lang="en">
      <h1>Visit of an invented patient</h1>
      <form>
        <button type="button">Before</button><limb-examination name="examination"></limb-examination>
      </form>
    </main>`,
  );
  const control = page.querySelector('limb-examination') as LimbExamination;
  await drawn(control);
  return { page, control, hand: new Hand(() => drawn(control)) };
}

/** The place on the screen to which the leg points at an angle. */
function spotAt(figure: SVGSVGElement, degrees: number): [number, number] {
  const { x, y } = onRay(degrees, 132);
  const at = new DOMPoint(x, y).matrixTransform(figure.getScreenCTM() as DOMMatrix);
  return [at.x, at.y];
}

/** The letter of the summary, which says everything; choosing it counts as no action of the examination. */
async function letterOf(control: LimbExamination): Promise<string> {
  byRole(control, 'button', 'Letter').click();
  await drawn(control);
  return byRole<HTMLTextAreaElement>(control, 'textbox', /^Text, to be changed/).value;
}

/** Whether the bar shows a flag; a question alone is none. */
function flagged(control: LimbExamination): boolean {
  return everything(control).some(
    (e) =>
      e.getAttribute('part') === 'banner' &&
      e.checkVisibility() &&
      byRole(e as HTMLElement, 'button').closest('.asks') === null,
  );
}

async function expectEverything(page: HTMLElement, control: LimbExamination): Promise<void> {
  const summary = await letterOf(control);
  for (const entered of ENTERED) expect(summary).to.match(entered);
  expect(flagged(control)).to.equal(true);
  expect(readableText(control).includes('limb may be threatened')).to.equal(true);
  const sent = new FormData(page.querySelector('form') as HTMLFormElement).get('examination');
  expect(JSON.parse(String(sent))).to.deep.equal(control.examination);
}

/** What a pen does: the button of a word in a group of a name, a button, a field that is written into. */
function penOf(control: LimbExamination, hand: Hand) {
  return {
    pick: (group: string, word: string): Promise<void> => {
      const all = [...allByRole(control, 'radiogroup', group)];
      expect(all, group).to.have.length(1);
      return hand.click(byRole(all[0] as HTMLElement, 'radio', word), 'pen');
    },
    tap: (name: string | RegExp): Promise<void> => hand.click(byRole(control, 'button', name), 'pen'),
    write: async (label: string, text: string): Promise<void> => {
      await hand.click(field(control, label), 'pen');
      await hand.press(...text);
    },
  };
}

describe('the whole examination of a threatened leg', function () {
  // Every act is real input, and each waits until it is drawn.
  this.timeout(120_000);

  it('is entered by keys alone in no more actions than before, and the summary holds every value', async () => {
    const { page, control, hand } = await open();
    page.querySelector('button')?.focus();
    const next = (): Promise<void> => hand.press('Control+ArrowDown');
    await hand.press('Tab');
    await next();
    await hand.press('1', 'Tab', '2', 'Tab', 'Tab', '3');
    expect(flagged(control), 'rest pain with an acute onset').to.equal(true);
    await hand.press('ArrowDown', '1', 'ArrowDown', '6');
    await next();
    await hand.press('Tab', '2', 'ArrowDown', '3', 'ArrowDown', 'k', 'Tab', 'Tab', '6');
    await hand.press('ArrowDown', '3', 'ArrowDown', '2', 'ArrowDown', '1');
    await next();
    await hand.press('ArrowRight', '2', 'ArrowDown', 'ArrowDown', '0', 'ArrowDown', '0', 'ArrowRight', '0');
    await next();
    await hand.press('Enter', 'Tab', '2', 'Tab', 'Tab', 'PageUp', 'PageUp', 'Enter');
    await next();
    await hand.press(
      'Tab',
      '1',
      '4',
      '2',
      'Enter',
      '1',
      '3',
      '8',
      'Enter',
      'Enter',
      '0',
      'Enter',
      'Enter',
      '0',
    );
    await next();
    expect(readableText(control).includes('IIb immediately threatened'), 'derived').to.equal(true);
    await next();
    await expectEverything(page, control);
    expect(hand.actions).to.equal(ACTIONS.keys);
  });

  it('is entered by pen in no more actions than before, and the summary holds every value', async () => {
    const { page, control, hand } = await open();
    const { pick, tap, write } = penOf(control, hand);
    await pick('Onset of the present complaint', 'Acute');
    await pick('Symptom, left leg', 'Rest pain');
    expect(flagged(control), 'rest pain with an acute onset').to.equal(true);
    await pick('Began, left leg', 'Suddenly');
    await write('Hours since, left leg', '6');
    await pick('Heart rhythm', 'Atrial fibrillation');
    await tap(/^Inspection and touch, /);
    await pick('Colour, left leg', 'Pale');
    await pick('Temperature, left leg', 'Cold');
    await hand.click(field(control, 'Level of change, left leg'), 'pen');
    await hand.press('k', 'Enter');
    await write('Capillary refill time, left leg', '6');
    await pick('Sensation, left leg', 'Lost beyond toes');
    await pick('Movement, left leg', 'Weak');
    await pick('Venous Doppler, left leg', 'Audible');
    await tap(/^Pulses and bruits, /);
    await tap(/^Grade several as 2/);
    await tap(/^Left femoral: /);
    await tap(/^Grade several as 0/);
    for (const site of ['popliteal', 'posterior tibial', 'dorsalis pedis'])
      await tap(new RegExp(`^Left ${site}: `));
    await tap(/^Bedside tests, /);
    await tap('Leg elevation (Buerger)');
    await hand.click(byRole(control, 'radio', 'Left'), 'pen');
    const handle = byRole(control, 'slider', 'Angle of the left leg');
    const figure = handle.closest('svg') as SVGSVGElement;
    handle.scrollIntoView({ block: 'center' });
    await hand.stroke([handle, spotAt(figure, 20)], 'pen');
    await tap('Turned pale here');
    await tap(/^Pressures, /);
    await write('Arm, right', '142');
    await write('Arm, left', '138');
    await write('Dorsalis pedis, left', '0');
    await write('Posterior tibial, left', '0');
    await tap(/^Stages, /);
    expect(readableText(control).includes('IIb immediately threatened'), 'derived').to.equal(true);
    const contents = everything(control).find((e) => e.localName === 'nav') as HTMLElement;
    await hand.click(byRole(contents, 'button', 'Summary'), 'pen');
    await expectEverything(page, control);
    expect(hand.actions).to.equal(ACTIONS.pen);
  });
});

describe('the whole examination of two ordinary legs', () => {
  it('is entered by pen, and what is written as normal is named before it is written', async () => {
    const { control, hand } = await open();
    const { pick, tap, write } = penOf(control, hand);
    const legs = ['right leg', 'left leg'];
    for (const leg of legs) await pick(`Symptom, ${leg}`, 'None');
    await tap(/^Inspection and touch, /);
    for (const leg of legs) await pick(`Colour, ${leg}`, 'Normal');
    for (const leg of legs) await pick(`Temperature, ${leg}`, 'Warm');
    await tap(/^Pulses and bruits, /);
    await tap('Mark normal');
    for (const leg of ['Right leg', 'Left leg']) await tap(new RegExp(`^${leg}: 4 pulses normal`));
    await tap(/^Pressures, /);
    for (const [at, mmHg] of [
      ['Arm, right', '130'],
      ['Arm, left', '128'],
      ['Posterior tibial, right', '140'],
      ['Posterior tibial, left', '138'],
    ] as const)
      await write(at, mmHg);
    const contents = everything(control).find((e) => e.localName === 'nav') as HTMLElement;
    await hand.click(byRole(contents, 'button', 'Summary'), 'pen');
    const letter = await letterOf(control);
    expect(letter).to.match(/All pulses of both legs are normal/);
    expect(letter).to.match(/posterior tibial right 140, left 138/);
    expect(flagged(control)).to.equal(false);
    expect(hand.actions).to.equal(ACTIONS.ordinary);
  });
});
