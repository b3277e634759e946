import { expect } from '@open-wc/testing';
import type { BedsideTest } from 'pulse-map/elements/bedside-test';
import { consoleOf, press, setViewport } from '../../tools/real-input.js';
import { openTest, tap, withStandingClock } from '../tools/bedside.js';
import { drawn } from '../tools/limbs.js';
import { allByRole, readableText } from '../tools/perceive.js';

before(() => setViewport({ width: 900, height: 1000 }));
withStandingClock();

const VALUE = '{"left":{"seconds":12}}';

async function said(control: BedsideTest, change: Partial<Record<keyof BedsideTest, unknown>>) {
  return consoleOf(async () => {
    Object.assign(control, change);
    await drawn(control);
  });
}

describe('a bedside test by a word that is none', () => {
  for (const word of ['six-minute-walk', '', 'toString']) {
    it(`“${word}” names attribute and tests, keeps what it was given, and takes no entry`, async () => {
      const control = await openTest('venous-filling', { pedal: 'b' } as Partial<BedsideTest>);
      const [warning, ...more] = await said(control, { test: word });
      expect(warning).to.include(`bedside-test: found test="${word}", expected elevation, colour-return`);
      expect(more).to.deep.equal([]);
      control.value = VALUE as never;
      await drawn(control);
      expect(readableText(control)).to.include('made by a version that cannot be shown here');
      expect(allByRole(control, 'button')).to.have.length(0);
      await press('b');
      expect(control.value).to.equal(VALUE);
      expect(control.reading('left')).to.equal(undefined);
      expect(await said(control, { test: 'venous-filling' })).to.deep.equal([]);
      expect(readableText(control)).to.include('12 s');
      expect(control.value).to.deep.equal(JSON.parse(VALUE));
    });
  }

  it('on a page from the start does not stop the page', async () => {
    const noise = await consoleOf(async () => {
      const control = await openTest('none' as never);
      expect(readableText(control)).to.include('cannot be shown here');
    });
    expect(noise).to.have.length(1);
  });
});

describe('a side by a word that is none', () => {
  it('is never taken for one of the two: the card asks', async () => {
    const control = await openTest('venous-filling', { pedal: 'b' } as Partial<BedsideTest>);
    const [warning] = await said(control, { side: 'links' });
    expect(warning).to.include('bedside-test: found side="links", expected right, left');
    expect(allByRole(control, 'timer')).to.have.length(0);
    expect(allByRole(control, 'textbox')).to.have.length(0);
    await press('b');
    expect(control.value).to.equal(undefined);
    await tap(control, 'Left', 'radio');
    expect(control.side).to.equal('left');
    expect(allByRole(control, 'timer')).to.have.length(1);
  });
});
