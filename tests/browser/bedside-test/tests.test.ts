import { expect, fixture } from '@open-wc/testing';
import { until } from '../tools/until.js';
import type { BedsideTest } from 'pulse-map/elements/bedside-test';
import { click, focused, press, setViewport } from '../../tools/real-input.js';
import { enter, openTest, pass, tap, withStandingClock } from '../tools/bedside.js';
import { drawn, field } from '../tools/limbs.js';
import { allByRole, byRole, readableText } from '../tools/perceive.js';

before(() => setViewport({ width: 900, height: 1000 }));
withStandingClock();

describe('timed tests', () => {
  it('keep true time while the page sleeps for two minutes', async () => {
    const control = await openTest('dependent-rubor');
    await tap(control, 'Feet hang: start');
    pass(120);
    await tap(control, 'No redness');
    expect(control.value?.left).to.deep.include({ rubor: false, seconds: 120 });
    expect(readableText(control)).to.include('No redness in 120 s.');
  });

  it('run on over a reload', async () => {
    const control = await openTest('colour-return', { keep: 'visit' } as Partial<BedsideTest>);
    await tap(control, 'Foot is down: start');
    pass(10);
    control.remove();
    const again = await openTest('colour-return', { keep: 'visit' } as Partial<BedsideTest>);
    pass(13);
    await tap(again, 'Pink again');
    expect(again.value?.left).to.deep.include({ seconds: 23 });
    expect(readableText(again)).to.include('Pink after 23 s: prolonged, limit 15 s.');
  });

  it('are started and stopped by one key, and by a pedal from anywhere', async () => {
    const control = await openTest('colour-return', { pedal: 'PageDown' } as Partial<BedsideTest>);
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
    const control = await openTest('colour-return', { pedal: '4' } as Partial<BedsideTest>);
    await enter(control, 'Time in seconds', '44');
    expect(control.value?.left).to.deep.include({ seconds: 44 });
    expect(readableText(control)).to.include('severe, beyond 40 s');
  });

  it('keep the sides apart, each with its own watch', async () => {
    const control = await openTest('colour-return');
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
    const control = await openTest('venous-filling');
    await enter(control, 'Time in seconds', '25,5');
    expect(control.value?.left).to.deep.equal({ seconds: 25.5, limit: 20 });
    expect(readableText(control)).to.include('prolonged, beyond 20 s');
    await tap(control, 'Clear this test');
    expect(control.value).to.equal(undefined);
  });

  it('say why they were not done instead of a result', async () => {
    const control = await openTest('venous-filling');
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
    const control = await openTest('hand-arch');
    const [radial, ulnar] = ['Radial artery released', 'Ulnar artery released'].map(
      (name) => control.shadowRoot?.querySelector(`section[aria-label="${name}"]`) as HTMLElement,
    ) as [HTMLElement, HTMLElement];
    await click(byRole(radial, 'button', 'Released: start'));
    pass(6.2);
    await drawn(control);
    await click(byRole(radial, 'button', 'Colour is back'));
    await drawn(control);
    await click(byRole(ulnar, 'button', 'Released: start'));
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
    const control = await openTest('hyperabduction');
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
    await until(
      () => (control.value?.left as { seconds?: number } | undefined)?.seconds === 60,
      'the minute that passed',
    );
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
    const control = await openTest('arm-stress');
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
    expect(readableText(control)).to.match(
      /Of healthy people 62% .* at most 16% stop early \(upper 95% confidence limit\) and 47% test positive/,
    );
  });

  it('ends by itself after three minutes, also when they passed in sleep', async () => {
    const control = await openTest('arm-stress');
    await tap(control, 'Arms up: start');
    pass(400);
    await until(() => control.value !== undefined, 'the three minutes end');
    await drawn(control);
    expect(control.value).to.deep.equal({
      right: { seconds: 180, limit: 180 },
      left: { seconds: 180, limit: 180 },
    });
    expect(readableText(control)).to.include('Three minutes are over.');
  });

  it('sounds only once a person switched it on', async () => {
    const control = await openTest('arm-stress');
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

  it('seals a value from code that it cannot read: held as given, told as faults, and nothing to change it with', async () => {
    const control = await openTest('elevation');
    control.value = { left: { pallor: true, angle: 20 } };
    control.value = { left: { angle: 200 } } as never;
    expect(control.value).to.deep.equal({ left: { angle: 200 } });
    expect(control.sealed).to.equal(true);
    expect(control.faults.map(({ path, found }) => [path, found])).to.deep.equal([
      [['left', 'angle'], '200'],
    ]);
    await drawn(control);
    expect(allByRole(control, 'slider'), 'nothing to change what it could not read').to.have.length(0);
    control.value = { left: { pallor: true, angle: 30 } };
    await drawn(control);
    expect(control.sealed).to.equal(false);
    expect(allByRole(control, 'slider')).to.have.length(1);
  });

  it('takes no change when disabled or read only', async () => {
    const control = await openTest('elevation');
    control.readOnly = true;
    await drawn(control);
    expect(byRole(control, 'slider').getAttribute('aria-disabled')).to.equal('true');
    byRole(control, 'slider').focus();
    expect(focused()?.getAttribute('role')).not.to.equal('slider');
    expect(allByRole(control, 'button', 'Turned pale here')[0]).to.have.property('disabled', true);
  });
});
