// A running watch belongs to one encounter: it must never go on in the record of another patient.
import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/limb-examination/define';
import type { BedsideTest } from 'pulse-map/elements/bedside-test';
import type { LimbExamination } from 'pulse-map/elements/limb-examination';
import { openTest, pass, tap, withStandingClock } from '../tools/bedside.js';
import { click } from '../../tools/real-input.js';
import { drawn } from '../tools/limbs.js';
import { byRole, readableText } from '../tools/perceive.js';
import { until } from '../tools/until.js';

withStandingClock();

const START = 'Foot is down: start';
const open = (keep?: string) => openTest('colour-return', { ...(keep && { keep }) } as Partial<BedsideTest>);

/** The whole examination with a watch of its colour return running. */
async function running(form: string, keep?: string): Promise<[LimbExamination, BedsideTest]> {
  const box = await fixture<HTMLFormElement>(
    html`<form lang="en"><limb-examination name=${form} .keep=${keep}></limb-examination></form>`,
  );
  const whole = box.querySelector('limb-examination') as LimbExamination;
  await whole.openPart('bedside');
  await click(byRole(whole, 'button', 'Colour return on dependency (Buerger)'));
  await drawn(whole);
  const test = whole.renderRoot.querySelector('bedside-test[test="colour-return"]') as BedsideTest;
  await drawn(test);
  return [whole, test];
}

const stops = (test: BedsideTest): boolean =>
  [...test.renderRoot.querySelectorAll('button')].some((button) =>
    /Pink again/.test(button.textContent ?? ''),
  );

describe('a running watch', () => {
  it('is not taken up by another encounter, and is not lost for its own', async () => {
    const control = await open('encounter 1');
    await tap(control, START);
    pass(10);
    control.keep = 'encounter 2';
    await drawn(control);
    expect(stops(control), 'runs for another patient').to.equal(false);
    control.remove();
    const again = await open('encounter 1');
    pass(5);
    await tap(again, 'Pink again');
    expect(again.value?.left).to.deep.include({ seconds: 15 });
  });

  it('leaves nothing in the tab without the id of an encounter, whatever the form is called', async () => {
    const [, test] = await running('examination');
    await tap(test, START);
    pass(6);
    expect(sessionStorage.length).to.equal(0);
    const [, other] = await running('examination');
    expect(stops(other)).to.equal(false);
  });

  it('is kept for the id of an encounter', async () => {
    const [, test] = await running('examination', 'encounter 7');
    await tap(test, START);
    const [, again] = await running('examination', 'encounter 7');
    expect(stops(again)).to.equal(true);
  });

  const endings: Readonly<Record<string, (whole: LimbExamination) => void>> = {
    'another record': (whole) => void (whole.value = '{"format":"pulse-map/1","scale":"words","pulses":{}}'),
    'no record': (whole) => void (whole.value = null),
    'a reset of the form': (whole) => whole.form?.reset(),
  };
  for (const [what, end] of Object.entries(endings)) {
    it(`is set to zero by ${what}`, async () => {
      const [whole, test] = await running('examination', 'encounter 9');
      await tap(test, START);
      pass(4);
      await tap(test, 'Pink again');
      await tap(test, START);
      expect(stops(test)).to.equal(true);
      end(whole);
      await drawn(whole);
      await drawn(test);
      expect(stops(test)).to.equal(false);
      expect(sessionStorage.length).to.equal(0);
    });
  }

  it('runs on when a step is taken back', async () => {
    const [whole, test] = await running('examination');
    await tap(test, START);
    pass(4);
    await tap(test, 'Pink again');
    await tap(test, START);
    whole.undo();
    await drawn(whole);
    await drawn(test);
    expect(test.value).to.equal(undefined);
    expect(stops(test)).to.equal(true);
  });

  it('runs where the tab’s storage is full', async () => {
    const { setItem } = Storage.prototype;
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
    try {
      const control = await open('encounter 3');
      await tap(control, START);
      pass(9);
      await tap(control, 'Pink again');
      expect(control.value?.left).to.deep.include({ seconds: 9 });
    } finally {
      Storage.prototype.setItem = setItem;
    }
  });

  it('writes nothing into the test that took its place', async () => {
    const control = await openTest('arm-stress');
    await tap(control, 'Arms up: start');
    control.test = 'elevation';
    await drawn(control);
    pass(200);
    await tap(control, 'Leg is up: start');
    pass(7);
    // The watch of the new test has counted on: by then the one before would have told of its end, too.
    await until(() => readableText(control).includes('7 s raised'), 'the new watch counts');
    expect(control.value).to.equal(undefined);
  });

  it('gives its loudspeaker back when it leaves the page', async () => {
    const { close } = AudioContext.prototype;
    let closed = 0;
    AudioContext.prototype.close = function (this: AudioContext) {
      closed++;
      return close.call(this);
    };
    try {
      const control = await openTest('arm-stress');
      await tap(control, 'Sound off');
      control.remove();
      expect(closed).to.equal(1);
    } finally {
      AudioContext.prototype.close = close;
    }
  });
});
