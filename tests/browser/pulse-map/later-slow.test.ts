// What a map fetches after its first paint comes late here. Nothing fetches it beforehand.
import { expect } from '@open-wc/testing';
import 'pulse-map/elements/pulse-map/define';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { later } from '../../../src/elements/pulse-map/fetched.js';
import { examined } from '../../tools/examinations.js';
import { click } from '../../tools/real-input.js';
import { heldBack } from '../tools/held-back.js';
import { allByRole, byRole, painted, readableText } from '../tools/perceive.js';
import { until } from '../tools/until.js';

describe('a map whose later parts are slow', () => {
  it('takes findings meanwhile, and opens what was asked for once they are there', async () => {
    let arrive: () => void = () => undefined;
    const arrived = new Promise<void>((resolve) => (arrive = resolve));
    const { load } = later;
    later.load = () => arrived.then(() => load.call(later));
    const map = document.createElement('pulse-map') as unknown as PulseMap;
    document.body.append(map);
    try {
      await map.updateComplete;
      const site = byRole(map, 'button', /^Left femoral: /);
      site.focus();
      site.dispatchEvent(new KeyboardEvent('keydown', { key: '0', bubbles: true, composed: true }));
      expect(map.value).to.include('absent');
      map.openPlace('left popliteal');
      await painted();
      expect(allByRole(map, 'dialog')).to.be.empty;
      arrive();
      await until(() => allByRole(map, 'dialog').length === 1, 'the site that was asked for');
    } finally {
      later.load = load;
      map.remove();
    }
  });

  const ACTS: Readonly<
    Record<string, readonly [act: (map: PulseMap) => Promise<void> | void, shown: string]>
  > = {
    'a tap on a site': [(map) => click(byRole(map, 'button', /^Left femoral: /)), '.chooser'],
    'the button to state as normal': [(map) => byRole(map, 'button', 'Mark normal').click(), '.normals'],
    'the button to draw': [(map) => byRole(map, 'button', 'Draw on the skin').click(), '.palette'],
    'the button for the keys': [(map) => byRole(map, 'button', 'Help and keys').click(), '.help'],
    'the button for the table': [(map) => byRole(map, 'button', 'Table').click(), '.table'],
  };
  for (const [name, [act, shown]] of Object.entries(ACTS))
    it(`does what was asked by ${name} once they are there`, async () => {
      const { arrive, restore } = await heldBack();
      const map = document.createElement('pulse-map') as unknown as PulseMap;
      document.body.append(map);
      try {
        await map.updateComplete;
        await act(map);
        await painted();
        const found = (): boolean => map.shadowRoot?.querySelector(shown) !== null;
        expect(found(), 'before').to.equal(false);
        arrive();
        await until(found, shown);
      } finally {
        restore();
        map.remove();
      }
    });

  const FOLDS = {
    'Onset and delays': 'Radial pulses compared',
    'Whole limbs': 'Clear right leg',
  };
  for (const [heading, inner] of Object.entries(FOLDS))
    it(`fills the fold "${heading}" that was opened before, and keeps it open`, async () => {
      const { arrive, restore } = await heldBack();
      const map = document.createElement('pulse-map') as unknown as PulseMap;
      document.body.append(map);
      try {
        await map.updateComplete;
        const summary = [...(map.shadowRoot?.querySelectorAll('summary') ?? [])].find(
          (one) => one.textContent?.trim() === heading,
        ) as HTMLElement;
        const fold = summary.parentElement as HTMLDetailsElement;
        await click(summary);
        await until(() => fold.open, 'the fold opens');
        expect(readableText(fold).includes(inner), 'before').to.equal(false);
        arrive();
        await until(() => readableText(fold).includes(inner), 'its content arrives');
        expect(fold.isConnected && fold.open).to.equal(true);
      } finally {
        restore();
        map.remove();
      }
    });

  it('keeps a given record until what reads it is there: nothing overwrites it meanwhile', async () => {
    const { part, load } = later;
    let arrive: () => void = () => undefined;
    later.part = undefined;
    later.load = () =>
      new Promise<void>((resolve) => (arrive = resolve)).then(() => void (later.part = part));
    const form = document.createElement('form');
    const map = document.createElement('pulse-map') as unknown as PulseMap;
    map.name = 'pulses';
    form.append(map);
    document.body.append(form);
    await new Promise(requestAnimationFrame);
    const told: string[] = [];
    for (const type of ['input', 'change']) form.addEventListener(type, () => told.push(type));
    const given = ` ${JSON.stringify(examined({ 'left femoral': 'normal' }))} `;
    const site = byRole(map, 'button', /^Left popliteal: /);
    map.value = given;
    expect([map.value, new FormData(form).get('pulses')]).to.deep.equal([given, given]);
    // A hand that is quicker than the next frame, on the figure that still stands there.
    site.dispatchEvent(new KeyboardEvent('keydown', { key: '0', bubbles: true, composed: true }));
    expect(map.value).to.equal(given);
    await new Promise(requestAnimationFrame);
    await painted();
    expect(readableText(map)).to.equal('This entry is being read.');
    map.undo();
    map.openPlace('left femoral');
    expect([map.value, new FormData(form).get('pulses')]).to.deep.equal([given, given]);
    form.reset();
    expect(map.value).to.equal('');
    map.value = given;
    arrive();
    await painted();
    await map.updateComplete;
    later.load = load;
    expect(map.examination.pulses?.femoral?.left?.grade).to.equal('normal');
    expect(JSON.parse(map.value)).to.deep.equal(JSON.parse(given));
    expect(told).to.deep.equal([]);
    form.remove();
  });
});
