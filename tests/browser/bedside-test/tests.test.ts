import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/bedside-test/define';
import type { BedsideTest } from 'pulse-map/elements/bedside-test';
import type { BedsideTestId } from 'pulse-map/core';
import { onRay } from '../../../src/drawing/bedside-figures.js';
import { clock } from '../../../src/elements/limb-stopwatch/watch-controller.js';
import { click, drag, focused, type PointerKind, press, setViewport, type } from '../../tools/real-input.js';
import { drawn, field } from '../tools/limbs.js';
import { eventsOf } from '../tools/map.js';
import { allByRole, byRole, readableText } from '../tools/perceive.js';

before(() => setViewport({ width: 900, height: 1000 }));

/** A wall clock that stands still until it is moved. */
let now = 0;
const { now: wall } = clock;
beforeEach(() => {
  now = Date.UTC(2026, 2, 1, 9);
  clock.now = () => now;
  sessionStorage.clear();
});
afterEach(() => {
  clock.now = wall;
});
const pass = (seconds: number): void => void (now += seconds * 1000);

async function open(test: BedsideTestId, more: Partial<BedsideTest> = {}): Promise<BedsideTest> {
  const box = await fixture<HTMLElement>(
    html`<main lang="en"><bedside-test test=${test} side="left" name="test"></bedside-test></main>`,
  );
  const control = box.querySelector('bedside-test') as BedsideTest;
  Object.assign(control, more);
  await drawn(control);
  return control;
}

async function tap(control: BedsideTest, name: string | RegExp, role = 'button'): Promise<void> {
  await click(byRole(control, role, name));
  await drawn(control);
}

async function enter(control: BedsideTest, label: string, text: string): Promise<void> {
  const input = field(control, label);
  input.focus();
  input.select();
  await type(text);
  await press('Tab');
  await drawn(control);
}

/** Where on the screen the leg points at an angle. */
function spot(control: BedsideTest, degrees: number): [number, number] {
  const svg = control.shadowRoot?.querySelector('.leg-figure') as SVGSVGElement;
  const { x, y } = onRay(degrees, 132);
  const at = new DOMPoint(x, y).matrixTransform(svg.getScreenCTM() as DOMMatrix);
  return [at.x, at.y];
}

describe('leg raise', () => {
  const handle = (control: BedsideTest): HTMLElement => byRole(control, 'slider', 'Angle of the left leg');
  const angle = (control: BedsideTest): number => Number(handle(control).getAttribute('aria-valuenow'));

  for (const kind of ['mouse', 'pen', 'touch'] as PointerKind[]) {
    it(`is dragged to its angle by ${kind}; nothing is recorded until pallor is marked`, async () => {
      const control = await open('elevation');
      const events = eventsOf(control);
      handle(control).scrollIntoView({ block: 'center' });
      await drag([handle(control), spot(control, 25)], { kind });
      await drawn(control);
      expect(angle(control)).to.be.within(24, 26);
      expect(control.value).to.equal(undefined);
      expect(events).to.deep.equal({ input: 0, change: 0 });
      await tap(control, 'Turned pale here');
      expect(control.value?.left).to.deep.include({ pallor: true, angle: angle(control), limit: 20 });
      expect(events).to.deep.equal({ input: 1, change: 1 });
      expect(readableText(control)).to.match(
        /Pale at 2\d°: an ischaemic leg pales between 15° and 30°; below 20° is severe/,
      );
    });
  }

  it('is set by keys and by buttons, and marked by Enter', async () => {
    const control = await open('elevation');
    handle(control).focus();
    await press('PageUp', 'ArrowUp', 'ArrowUp');
    await drawn(control);
    expect(angle(control)).to.equal(12);
    await tap(control, 'Raise by 5 degrees');
    await tap(control, 'Lower by 5 degrees');
    expect(angle(control)).to.equal(12);
    handle(control).focus();
    await press('End', 'ArrowUp', 'Home', 'ArrowDown', 'PageUp', 'Enter');
    await drawn(control);
    expect(control.value?.left).to.deep.include({ pallor: true, angle: 10 });
    expect(readableText(control)).to.include('severe, below 20°');
  });

  it('goes back to where it was when the stroke is cancelled', async () => {
    const control = await open('elevation');
    const grip = handle(control);
    const at = spot(control, 0);
    const send = (kind: string, [x, y]: [number, number]): void =>
      void grip.dispatchEvent(
        new PointerEvent(kind, {
          bubbles: true,
          isPrimary: true,
          pointerId: 1,
          button: 0,
          clientX: x,
          clientY: y,
        }),
      );
    grip.setPointerCapture = () => undefined;
    send('pointerdown', at);
    send('pointermove', spot(control, 60));
    await drawn(control);
    expect(angle(control)).to.be.within(59, 61);
    send('pointercancel', at);
    await drawn(control);
    expect(angle(control)).to.equal(0);
    expect(control.value).to.equal(undefined);
  });

  it('is set by a phone laid on the shin where its sensor may be used', async () => {
    const control = await open('elevation');
    const original = globalThis.matchMedia;
    globalThis.matchMedia = (query) =>
      query === '(pointer: coarse)'
        ? ({ matches: true } as MediaQueryList)
        : original.call(globalThis, query);
    try {
      control.requestUpdate();
      await drawn(control);
      await tap(control, 'Set by the phone on the shin');
      await drawn(control);
      for (const [beta, expected] of [
        [37.4, 37],
        [-52, 52],
        [128, 52],
      ] as const) {
        dispatchEvent(new DeviceOrientationEvent('deviceorientation', { beta }));
        await drawn(control);
        expect(angle(control)).to.equal(expected);
      }
      await tap(control, 'Stop using the phone');
      dispatchEvent(new DeviceOrientationEvent('deviceorientation', { beta: 5 }));
      await drawn(control);
      expect(angle(control)).to.equal(52);
    } finally {
      globalThis.matchMedia = original;
    }
  });

  it('says so when the device gives no angle or does not allow it', async () => {
    const control = await open('elevation');
    const original = globalThis.matchMedia;
    globalThis.matchMedia = (query) =>
      query === '(pointer: coarse)'
        ? ({ matches: true } as MediaQueryList)
        : original.call(globalThis, query);
    const asking = DeviceOrientationEvent as unknown as { requestPermission?: () => Promise<string> };
    try {
      control.requestUpdate();
      await drawn(control);
      await tap(control, 'Set by the phone on the shin');
      dispatchEvent(new DeviceOrientationEvent('deviceorientation', { beta: null }));
      await drawn(control);
      expect(readableText(control)).to.include('This device gives no angle. Set it by hand.');
      asking.requestPermission = () => Promise.resolve('denied');
      await tap(control, 'Set by the phone on the shin');
      await drawn(control);
      expect(readableText(control)).to.include('may not be used here');
    } finally {
      delete asking.requestPermission;
      globalThis.matchMedia = original;
    }
  });

  it('times the raise and keeps the time with the angle', async () => {
    const control = await open('elevation');
    await tap(control, 'Leg is up: start');
    pass(34);
    await tap(control, 'Raise by 5 degrees');
    await tap(control, 'Turned pale here');
    expect(control.value?.left).to.deep.equal({ pallor: true, angle: 5, seconds: 34, limit: 20 });
  });

  it('keeps the limit used with the result, and lets it be changed', async () => {
    const control = await open('elevation');
    await enter(control, 'Angle', '25');
    expect(readableText(control)).to.include('below 20° is severe');
    field<HTMLSelectElement>(control, 'Limit used').focus();
    await press('ArrowDown');
    await drawn(control);
    expect(control.value?.left).to.deep.equal({ pallor: true, angle: 25, limit: 30 });
    expect(readableText(control)).to.include('Pale at 25°: severe, below 30°.');
  });

  it('refuses an angle over 90 with a sentence', async () => {
    const control = await open('elevation');
    await enter(control, 'Angle', '120');
    expect(readableText(control)).to.include('“120” was not taken. Expected a number from 0 to 90 °.');
    expect(control.value).to.equal(undefined);
  });
});

describe('timed tests', () => {
  it('keep true time while the page sleeps for two minutes', async () => {
    const control = await open('dependent-rubor');
    await tap(control, 'Feet hang: start');
    pass(120);
    await tap(control, 'No redness');
    expect(control.value?.left).to.deep.include({ rubor: false, seconds: 120 });
    expect(readableText(control)).to.include('No redness in 120 s.');
  });

  it('run on over a reload', async () => {
    const control = await open('colour-return', { keep: 'visit' } as Partial<BedsideTest>);
    await tap(control, 'Foot is down: start');
    pass(10);
    control.remove();
    const again = await open('colour-return', { keep: 'visit' } as Partial<BedsideTest>);
    pass(13);
    await tap(again, 'Pink again');
    expect(again.value?.left).to.deep.include({ seconds: 23 });
    expect(readableText(again)).to.include('Pink after 23 s: prolonged, limit 15 s.');
  });

  it('are started and stopped by one key, and by a pedal from anywhere', async () => {
    const control = await open('colour-return', { pedal: 'PageDown' } as Partial<BedsideTest>);
    byRole(control, 'button', 'Foot is down: start').focus();
    await press('Space');
    pass(4);
    await drawn(control);
    await press('Space');
    await drawn(control);
    expect(control.value?.left).to.deep.include({ seconds: 4 });
    (document.activeElement as HTMLElement).blur();
    await press('PageDown');
    pass(9);
    await press('PageDown');
    await drawn(control);
    expect(control.value?.left).to.deep.include({ seconds: 9 });
  });

  it('do not take a pedal for what is typed in a field', async () => {
    const control = await open('colour-return', { pedal: '4' } as Partial<BedsideTest>);
    await enter(control, 'Time in seconds', '44');
    expect(control.value?.left).to.deep.include({ seconds: 44 });
    expect(readableText(control)).to.include('severe, beyond 40 s');
  });

  it('keep the sides apart, each with its own watch', async () => {
    const control = await open('colour-return');
    await tap(control, 'Foot is down: start');
    pass(5);
    await tap(control, 'Right', 'radio');
    await tap(control, 'Foot is down: start');
    pass(4);
    await tap(control, 'Pink again');
    await tap(control, 'Left', 'radio');
    pass(3);
    await tap(control, 'Pink again');
    expect([control.value?.right, control.value?.left]).to.deep.equal([
      { seconds: 4, limit: 15 },
      { seconds: 12, limit: 15 },
    ]);
    expect(readableText(control)).to.include('Right: Pink after 4 s: usual is about 10 s.');
  });

  it('are corrected by hand', async () => {
    const control = await open('venous-filling');
    await enter(control, 'Time in seconds', '25,5');
    expect(control.value?.left).to.deep.equal({ seconds: 25.5, limit: 20 });
    expect(readableText(control)).to.include('prolonged, beyond 20 s');
    await tap(control, 'Clear this test');
    expect(control.value).to.equal(undefined);
  });

  it('say why they were not done instead of a result', async () => {
    const control = await open('venous-filling');
    field<HTMLSelectElement>(control, 'Not done, and why').focus();
    await press('o');
    await drawn(control);
    expect(control.value?.left).to.deep.equal({ notDone: 'oedema' });
    expect(readableText(control)).to.include('Not done: oedema.');
    expect(allByRole(control, 'button', 'Foot is down: start')).to.have.length(0);
  });
});

describe('hand-arch patency', () => {
  it('times each artery let go, and says which one may be blocked', async () => {
    const control = await open('hand-arch');
    const [radial, ulnar] = ['Radial let go', 'Ulnar let go'].map(
      (name) => control.shadowRoot?.querySelector(`section[aria-label="${name}"]`) as HTMLElement,
    ) as [HTMLElement, HTMLElement];
    await click(byRole(radial, 'button', 'Let go: start'));
    pass(6.2);
    await drawn(control);
    await click(byRole(radial, 'button', 'Colour is back'));
    await drawn(control);
    await click(byRole(ulnar, 'button', 'Let go: start'));
    pass(11.8);
    control.requestUpdate();
    await drawn(control);
    expect(readableText(control)).to.include('Beyond 9 s, still pale');
    await click(byRole(ulnar, 'button', 'Stays white'));
    await drawn(control);
    expect(control.value?.left).to.deep.equal({
      radial: { seconds: 6.2 },
      ulnar: { seconds: 11.8, returned: false },
      limit: 9,
    });
    expect(readableText(control)).to.include('ulnar let go: palm stays white');
    expect(byRole(control, 'img', 'Left palm, radial artery released')).to.exist;
  });
});

describe('positions of the arm', () => {
  it('compare the pulse before and in position, with the published rates beside the result', async () => {
    const control = await open('hyperabduction');
    const pick = async (group: string, word: string): Promise<void> => {
      const [found] = [...allByRole(control, 'radiogroup', group), ...allByRole(control, 'group', group)];
      const [button] = [
        ...allByRole(found as HTMLElement, 'radio', word),
        ...allByRole(found as HTMLElement, 'checkbox', word),
      ];
      await click(button as HTMLElement);
      await drawn(control);
    };
    await pick('Pulse before', 'Normal');
    await pick('Pulse in position', 'Absent');
    await pick('Symptoms', 'None');
    expect(readableText(control)).to.include('Pulse lost without symptoms: common in healthy people.');
    expect(readableText(control)).to.match(/Of healthy people 57% lose or change the pulse/);
    await tap(control, 'In position: start');
    pass(60);
    await new Promise((done) => setTimeout(done, 120));
    await drawn(control);
    expect(control.value?.left).to.deep.equal({
      before: 'normal',
      during: 'absent',
      symptoms: [],
      seconds: 60,
    });
  });
});

describe('three-minute arm test', () => {
  it('runs for both arms, paces by sight, is silent until asked, and marks when each symptom began', async () => {
    const control = await open('arm-stress');
    expect(byRole(control, 'button', 'Sound off').getAttribute('aria-pressed')).to.equal('false');
    await tap(control, 'Arms up: start');
    expect(readableText(control)).to.include('Close');
    pass(1.5);
    control.requestUpdate();
    await drawn(control);
    expect(readableText(control)).to.include('Open');
    pass(36.5);
    await tap(control, 'Heaviness, left');
    pass(13);
    await tap(control, 'Tingling, left');
    expect(byRole(control, 'img', /2:09 left of 3:00/)).to.exist;
    pass(51);
    await tap(control, 'Stop here');
    field<HTMLSelectElement>(control, 'Stopped because of, left').focus();
    await press('t');
    await drawn(control);
    await tap(control, 'Nothing felt, right');
    expect(control.value).to.deep.equal({
      right: { seconds: 102, nothingFelt: true, limit: 180 },
      left: { felt: { heaviness: 38, tingling: 51 }, seconds: 102, stopped: 'tingling', limit: 180 },
    });
    expect(readableText(control)).to.include('Stopped at 102 s of 180 for tingling: positive.');
    expect(readableText(control)).to.match(/Of healthy people 62% .* 16% stop early and 47% test positive/);
  });

  it('ends by itself after three minutes, also when they passed in sleep', async () => {
    const control = await open('arm-stress');
    await tap(control, 'Arms up: start');
    pass(400);
    await new Promise((done) => setTimeout(done, 120));
    await drawn(control);
    expect(control.value).to.deep.equal({
      right: { seconds: 180, limit: 180 },
      left: { seconds: 180, limit: 180 },
    });
    expect(readableText(control)).to.include('Three minutes are over.');
  });

  it('sounds only once a person switched it on', async () => {
    const control = await open('arm-stress');
    await tap(control, 'Sound off');
    expect(byRole(control, 'button', 'Sound on').getAttribute('aria-pressed')).to.equal('true');
    await tap(control, 'Sound on');
    expect(byRole(control, 'button', 'Sound off')).to.exist;
  });
});

describe('bedside-test as a form control', () => {
  it('reads its value attribute whatever stands first', async () => {
    const box = await fixture<HTMLElement>(
      `<div lang="en"><bedside-test value='{"left":{"seconds":23}}' test="colour-return" side="left"></bedside-test></div>`,
    );
    const control = box.querySelector('bedside-test') as BedsideTest;
    await drawn(control);
    expect(control.value).to.deep.equal({ left: { seconds: 23 } });
    expect(control.validity.valid).to.equal(true);
    expect(control.reading()?.verdict).to.equal('abnormal');
  });

  it('names what is wrong with a value from code, and keeps what was there', async () => {
    const control = await open('elevation');
    control.value = { left: { pallor: true, angle: 20 } };
    control.value = { left: { angle: 200 } } as never;
    expect(control.value).to.deep.equal({ left: { pallor: true, angle: 20 } });
    expect(control.validationMessage).to.match(/left › angle: found 200; expected at most 90/);
  });

  it('takes no change when disabled or read only', async () => {
    const control = await open('elevation');
    control.readOnly = true;
    await drawn(control);
    expect(byRole(control, 'slider').getAttribute('aria-disabled')).to.equal('true');
    byRole(control, 'slider').focus();
    expect(focused()?.getAttribute('role')).not.to.equal('slider');
    expect(allByRole(control, 'button', 'Turned pale here')[0]).to.have.property('disabled', true);
  });
});
