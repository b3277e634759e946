// Fingers and toes on their plates: recorded by mouse, by touch and by keys, told in words, left alone where nothing may change.
import { expect } from '@open-wc/testing';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import type { View } from '../../../src/drawing/index.js';
import { fetchPlate } from '../../../src/elements/pulse-map/plate/fetched.js';
import {
  type Digit,
  type DigitLimb,
  digitsAt,
  emptyExamination,
  type Examination,
  setDigit,
} from '../../../src/examination/index.js';
import { click, emulate, focused, press } from '../../tools/real-input.js';
import { choose, chooser, eventsOf, openMap, settled, status } from '../tools/map.js';
import { allByRole, byRole, nameOf, painted } from '../tools/perceive.js';
import { until } from '../tools/until.js';

const LEFT_ARM: DigitLimb = { kind: 'arm', side: 'left' };

async function opened(
  view: Exclude<View, 'whole'>,
  { examination, width = 820 }: { examination?: Examination; width?: number } = {},
): Promise<PulseMap> {
  const map = await openMap({ width, height: 1000, ...(examination && { examination }) });
  await fetchPlate(view as 'left-hand');
  map.view = view;
  await settled(map);
  return map;
}

/** A finger or toe by the name one says. */
const digit = (map: PulseMap, name: string): SVGGElement =>
  byRole<SVGGElement>(map, 'button', new RegExp(`^${name}: `));

const recorded = (map: PulseMap, limb: DigitLimb = LEFT_ARM): Partial<Record<Digit, string>> =>
  digitsAt(map.examination, limb);

const line = (map: PulseMap): string =>
  (map.shadowRoot?.querySelector('.digits-said')?.textContent ?? '').trim();

describe('fingers and toes on their plates', () => {
  it('are recorded by a tap and a choice, told by name, line and status, and undone in one step', async () => {
    const map = await opened('left-hand');
    const events = eventsOf(map);
    expect(line(map)).to.equal('Left fingers: not examined');
    await click(digit(map, 'Left middle finger'));
    await settled(map);
    expect(nameOf(chooser(map) as HTMLElement)).to.equal('Left middle finger');
    await choose(map, 'radio', 'gangrene');
    expect(recorded(map)).to.deep.equal({ third: 'gangrene' });
    expect(nameOf(digit(map, 'Left middle finger'))).to.equal('Left middle finger: gangrene');
    expect(line(map)).to.equal('Left fingers: middle finger gangrene; others not examined');
    expect(status(map)).to.include('Left middle finger: gangrene');
    expect(events).to.deep.equal({ input: 1, change: 1 });
    await click(byRole(map, 'button', 'Undo'));
    await settled(map);
    expect(recorded(map)).to.deep.equal({});
    expect(line(map)).to.equal('Left fingers: not examined');
  });

  it('need no pointer: arrows go along the fingers as they stand, digits choose, Escape leads back', async () => {
    const map = await opened('right-hand');
    digit(map, 'Right thumb').focus();
    // The thumb of a right palm with the fingers down is on the reader's left.
    await press('ArrowRight');
    await settled(map);
    expect(nameOf(focused() as Element)).to.equal('Right index finger: not examined');
    await press('Enter');
    await settled(map);
    expect(focused()?.getAttribute('role')).to.equal('radio');
    await press('2');
    await settled(map);
    expect(recorded(map, { kind: 'arm', side: 'right' })).to.deep.equal({ second: 'pale' });
    await press('Escape');
    await settled(map);
    expect(chooser(map) === undefined).to.equal(true);
    expect(nameOf(focused() as Element)).to.equal('Right index finger: pale');
    await press('End');
    await settled(map);
    expect(nameOf(focused() as Element)).to.equal('Right little finger: not examined');
  });

  it('that stand close together are one target, and its panel has them all', async () => {
    const map = await opened('left-foot', { width: 390 });
    const toes = byRole<SVGGElement>(map, 'button', /^Left toes: /);
    await click(toes.querySelector('.target') as Element, { kind: 'touch' });
    await settled(map);
    const panel = chooser(map) as HTMLElement;
    expect(allByRole(panel, 'radiogroup').map(nameOf)).to.deep.equal([
      'Left great toe',
      'Left second toe',
      'Left third toe',
      'Left fourth toe',
      'Left little toe',
    ]);
    await click(byRole(allByRole(panel, 'radiogroup')[4] as Element, 'radio', 'ulcer'));
    await settled(map);
    expect(recorded(map, { kind: 'leg', side: 'left' })).to.deep.equal({ fifth: 'ulcer' });
    await click(byRole(panel, 'button', 'Close'));
    await settled(map);
    expect(chooser(map) === undefined).to.equal(true);
    expect(nameOf(byRole(map, 'button', /^Left toes: /))).to.equal(
      'Left toes: little toe ulcer; others not examined',
    );
  });

  it('show on every plate that has them what the record holds, and on no other', async () => {
    const seen = setDigit(
      setDigit(emptyExamination(), LEFT_ARM, 'first', 'blue'),
      { kind: 'leg', side: 'left' },
      'second',
      'gangrene',
    );
    const map = await opened('left-hand', { examination: seen });
    expect(nameOf(digit(map, 'Left thumb'))).to.equal('Left thumb: blue');
    for (const view of ['left-foot', 'left-sole'] as const) {
      await fetchPlate(view);
      map.view = view;
      await settled(map);
      expect(line(map), view).to.equal('Left toes: second toe gangrene; others not examined');
    }
    for (const view of ['left-knee', 'legs-behind'] as const) {
      await fetchPlate(view);
      map.view = view;
      await settled(map);
      expect(map.shadowRoot?.querySelector('[part~=digit]') === null, view).to.equal(true);
      expect(line(map), view).to.equal('');
    }
  });

  it('tell what the compared record had', async () => {
    const map = await opened('left-hand', {
      examination: setDigit(emptyExamination(), LEFT_ARM, 'first', 'gangrene'),
    });
    map.compare = setDigit(emptyExamination(), LEFT_ARM, 'first', 'blue');
    await settled(map);
    expect(nameOf(digit(map, 'Left thumb'))).to.equal('Left thumb: gangrene; earlier: blue');
  });

  it('can be read and not changed while the map is read-only; the panel closes with a press beside it', async () => {
    const map = await opened('left-hand');
    await click(digit(map, 'Left thumb'));
    await settled(map);
    expect(chooser(map) === undefined).to.equal(false);
    await click(map.shadowRoot?.querySelector('.digits-said') as Element);
    await settled(map);
    expect(chooser(map) === undefined).to.equal(true);
    map.readOnly = true;
    await settled(map);
    expect(digit(map, 'Left thumb').getAttribute('aria-disabled')).to.equal('true');
    await click(digit(map, 'Left thumb'));
    await settled(map);
    expect(chooser(map) === undefined).to.equal(true);
    expect(recorded(map)).to.deep.equal({});
  });

  it('are on paper where they were looked at: on the figure of their plate, and as a line beside the table', async () => {
    const map = await opened('left-hand', {
      examination: setDigit(emptyExamination(), LEFT_ARM, 'first', 'gangrene'),
    });
    await emulate({ media: 'print' });
    try {
      const sheetOf = (): Element | null | undefined => map.shadowRoot?.querySelector('.sheet .facts');
      await until(sheetOf, 'the page hears that it is printed');
      const sheet = map.shadowRoot?.querySelector('.sheet') as Element;
      const legend = (of: Element): string[] =>
        [...of.querySelectorAll('.picture > svg > .labels text')].map((text) => text.textContent.trim());
      expect(sheet.querySelector('.digit .t-gangrene') === null).to.equal(false);
      expect(legend(sheet)).to.include('Gangrene');
      expect(sheet.querySelector('.facts')?.textContent).to.include(
        'Left fingers: thumb gangrene; others not examined',
      );
      expect(map.toSVG()).to.include('<title>Left thumb: gangrene</title>');
      map.examination = emptyExamination();
      await settled(map);
      const none = map.shadowRoot?.querySelector('.sheet') as Element;
      expect(none.querySelector('.digit') === null, 'none was looked at').to.equal(true);
      expect(none.textContent).to.not.include('fingers');
      expect(legend(none)).to.not.include('Gangrene');
      expect(legend(none)[0]).to.match(/^Scale/);
      expect(map.toSVG()).to.not.include('Left thumb');
    } finally {
      await emulate({});
      await painted();
    }
  });
});
