import { expect } from '@open-wc/testing';
import type { BedsideTest } from 'pulse-map/elements/bedside-test';
import { onRay } from '../../../src/drawing/bedside-figures.js';
import { drag, type PointerKind, press, setViewport } from '../../tools/real-input.js';
import { enter, openTest, pass, tap, withStandingClock } from '../tools/bedside.js';
import { drawn, field } from '../tools/limbs.js';
import { eventsOf } from '../tools/map.js';
import { byRole, readableText } from '../tools/perceive.js';

before(() => setViewport({ width: 900, height: 1000 }));
withStandingClock();

/** Where on the screen the leg points at an angle. */
function spot(control: BedsideTest, degrees: number): [number, number] {
  const svg = control.shadowRoot?.querySelector('.leg-figure') as SVGSVGElement;
  const { x, y } = onRay(degrees, 132);
  const at = new DOMPoint(x, y).matrixTransform(svg.getScreenCTM() as DOMMatrix);
  return [at.x, at.y];
}

/** Where a browser has no sensor at all, as WebKit on a desk, it gets the event of one. */
class Tilted extends Event {
  readonly beta: number | null;

  constructor(type: string, { beta = null }: DeviceOrientationEventInit = {}) {
    super(type);
    this.beta = beta;
  }
}

/** The browser's own sensor: where there is none, it soon tells of an empty angle. */
const silence = (event: Event): void => {
  if (event.isTrusted) event.stopImmediatePropagation();
};

/** On a phone: a finger is its pointer, and it has a sensor, which tells what the test does alone. */
async function onPhone(act: (Sensor: typeof DeviceOrientationEvent) => Promise<void>): Promise<void> {
  const page = globalThis as { DeviceOrientationEvent?: unknown };
  const { matchMedia } = globalThis;
  const known = 'DeviceOrientationEvent' in page;
  page.DeviceOrientationEvent ??= Tilted;
  globalThis.matchMedia = (query) =>
    query === '(pointer: coarse)'
      ? ({ matches: true } as MediaQueryList)
      : matchMedia.call(globalThis, query);
  addEventListener('deviceorientation', silence, true);
  try {
    await act(page.DeviceOrientationEvent as typeof DeviceOrientationEvent);
  } finally {
    removeEventListener('deviceorientation', silence, true);
    globalThis.matchMedia = matchMedia;
    if (!known) delete page.DeviceOrientationEvent;
  }
}

describe('leg raise', () => {
  const handle = (control: BedsideTest): HTMLElement => byRole(control, 'slider', 'Angle of the left leg');
  const angle = (control: BedsideTest): number => Number(handle(control).getAttribute('aria-valuenow'));

  for (const kind of ['mouse', 'pen', 'touch'] as PointerKind[]) {
    it(`is dragged to its angle by ${kind}; nothing is recorded until pallor is marked`, async () => {
      const control = await openTest('elevation');
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
    const control = await openTest('elevation');
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
    const control = await openTest('elevation');
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
    const control = await openTest('elevation');
    await onPhone(async (Sensor) => {
      control.requestUpdate();
      await drawn(control);
      await tap(control, 'Set by the phone on the shin');
      await drawn(control);
      for (const [beta, expected] of [
        [37.4, 37],
        [-52, 52],
        [128, 52],
      ] as const) {
        dispatchEvent(new Sensor('deviceorientation', { beta }));
        await drawn(control);
        expect(angle(control)).to.equal(expected);
      }
      await tap(control, 'Stop using the phone');
      dispatchEvent(new Sensor('deviceorientation', { beta: 5 }));
      await drawn(control);
      expect(angle(control)).to.equal(52);
    });
  });

  it('leaves the sensor alone when it was allowed only after the test had left the page', async () => {
    const control = await openTest('elevation');
    const page = control.parentElement as HTMLElement;
    await onPhone(async (Sensor) => {
      const asking = Sensor as unknown as { requestPermission?: () => Promise<string> };
      let allow: (answer: string) => void = () => undefined;
      asking.requestPermission = () => new Promise((answer) => (allow = answer));
      try {
        control.requestUpdate();
        await drawn(control);
        await tap(control, 'Set by the phone on the shin');
        control.remove();
        allow('granted');
        await drawn(control);
        page.append(control);
        await drawn(control);
        dispatchEvent(new Sensor('deviceorientation', { beta: 40 }));
        await drawn(control);
        expect(angle(control)).to.equal(0);
        expect(readableText(control)).to.include('Set by the phone on the shin');
      } finally {
        delete asking.requestPermission;
      }
    });
  });

  it('shows the angle of another record, not the one to which the leg was raised before', async () => {
    const control = await openTest('elevation');
    handle(control).focus();
    await press('PageUp', 'PageUp', 'PageUp');
    await drawn(control);
    expect(angle(control)).to.equal(30);
    control.value = { left: { pallor: true, angle: 60 } };
    await drawn(control);
    expect(angle(control)).to.equal(60);
    control.value = undefined;
    await drawn(control);
    expect(angle(control)).to.equal(0);
  });

  it('says so when the device gives no angle or does not allow it', async () => {
    const control = await openTest('elevation');
    await onPhone(async (Sensor) => {
      const asking = Sensor as unknown as { requestPermission?: () => Promise<string> };
      control.requestUpdate();
      await drawn(control);
      await tap(control, 'Set by the phone on the shin');
      dispatchEvent(new Sensor('deviceorientation', { beta: null }));
      await drawn(control);
      expect(readableText(control)).to.include('This device gives no angle. Set it by hand.');
      asking.requestPermission = () => Promise.resolve('denied');
      try {
        await tap(control, 'Set by the phone on the shin');
        await drawn(control);
        expect(readableText(control)).to.include('may not be used here');
      } finally {
        delete asking.requestPermission;
      }
    });
  });

  it('times the raise and keeps the time with the angle', async () => {
    const control = await openTest('elevation');
    await tap(control, 'Leg is up: start');
    pass(34);
    await tap(control, 'Raise by 5 degrees');
    await tap(control, 'Turned pale here');
    expect(control.value?.left).to.deep.equal({ pallor: true, angle: 5, seconds: 34, limit: 20 });
  });

  it('keeps the limit used with the result, and lets it be changed', async () => {
    const control = await openTest('elevation');
    await enter(control, 'Angle', '25');
    expect(readableText(control)).to.include('below 20° is severe');
    field<HTMLSelectElement>(control, 'Cut-off used').focus();
    await press('ArrowDown');
    await drawn(control);
    expect(control.value?.left).to.deep.equal({ pallor: true, angle: 25, limit: 30 });
    expect(readableText(control)).to.include('Pale at 25°: severe, below 30°.');
  });

  it('refuses an angle over 90 with a sentence', async () => {
    const control = await openTest('elevation');
    await enter(control, 'Angle', '120');
    expect(readableText(control)).to.include('“120” was not taken. Expected a number from 0 to 90 °.');
    expect(control.value).to.equal(undefined);
  });
});
