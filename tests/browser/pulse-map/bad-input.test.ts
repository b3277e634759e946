import { expect, fixture } from '@open-wc/testing';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import 'pulse-map/elements/pulse-map/define';
import { examined } from '../../tools/examinations.js';
import { click, press } from '../../tools/real-input.js';
import { openMap, saidAt, settled, site, status } from '../tools/map.js';
import { allByRole, byRole, readableText } from '../tools/perceive.js';

const GOOD = examined({ 'left femoral': 'reduced', 'right radial': 'normal' });
const record = (parts: object): string => JSON.stringify({ format: 'pulse-map/1', scale: '0-3', ...parts });

/** What is wrong, and the path of the first fault. */
const WRONG: readonly (readonly [what: string, value: string, path: readonly (string | number)[]])[] = [
  ['a text that is no record', 'left femoral absent', []],
  ['a list', '[1, 2]', []],
  ['a record without its format', '{"scale":"0-3"}', ['format']],
  ['a record of a later version', JSON.stringify({ format: 'pulse-map/2', scale: '0-3' }), ['format']],
  [
    'a grade that is a number',
    record({ pulses: { femoral: { left: { grade: 7 } } } }),
    ['pulses', 'femoral', 'left', 'grade'],
  ],
  [
    'a grade beside a reason why there is none',
    record({ pulses: { femoral: { left: { grade: 'normal', couldNotExamine: 'cast' } } } }),
    ['pulses', 'femoral', 'left', 'couldNotExamine'],
  ],
];

describe('a record that cannot be read', () => {
  for (const [what, value, path] of WRONG) {
    it(`is told to developers by the path of what is wrong: ${what}`, async () => {
      const map = await openMap({ examination: GOOD });
      map.value = value;
      await settled(map);
      expect(map.faults[0]?.path).to.deep.equal(path);
      expect(map.recordState).to.equal('sealed');
      expect(readableText(map), 'no word of it on the screen').not.to.match(/format|grade|JSON|›/);
    });
  }

  it('takes the place of the record before: its figure, its reading and what was recorded last are gone', async () => {
    const map = await openMap({ examination: GOOD });
    site(map, 'left popliteal').focus();
    await press('0');
    await settled(map);
    expect(readableText(map)).to.include('Left popliteal');
    map.value = '{"format":"pulse-map/2"}';
    await settled(map);
    expect(readableText(map)).not.to.match(/popliteal|femoral|not examined|Nothing/i);
    expect(map.examination.pulses).to.equal(undefined);
    expect(() => map.toSVG()).to.throw(Error, 'found a sealed record');
    map.openPlace('left femoral');
    await settled(map);
    expect(allByRole(map, 'dialog')).to.have.length(0);
    map.value = null;
    await settled(map);
    expect(status(map), 'nothing of the first record is said').to.equal(
      'Nothing recorded yet. Tap a site, or press Enter on it.',
    );
  });

  it('comes back by undo after a new record was begun', async () => {
    const text = '{"format":"pulse-map/2"}';
    const map = await openMap();
    map.value = text;
    await settled(map);
    for (const name of ['Start a new record', 'Replace it']) {
      await click(byRole(map, 'button', name));
      await settled(map);
    }
    site(map, 'left femoral').focus();
    await press('2');
    expect(map.value).to.include('normal');
    await press('Control+z');
    await settled(map);
    expect(map.value).to.equal('');
    await press('Control+z');
    await settled(map);
    expect(map.value).to.equal(text);
    expect(readableText(map)).to.include('cannot be shown here');
  });

  it('lets its form be sent, saved untouched', async () => {
    const form = await fixture<HTMLFormElement>(
      `<form><pulse-map name="pulses" required></pulse-map><button>Save</button></form>`,
    );
    const map = form.querySelector('pulse-map') as unknown as PulseMap;
    map.value = ' {"format":"pulse-map/2"}\n';
    await settled(map);
    const got: unknown[] = [];
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      got.push(new FormData(form).get('pulses'));
    });
    await click(byRole(form, 'button', 'Save'));
    expect(got).to.deep.equal([' {"format":"pulse-map/2"}\n']);
  });
});

describe('a site asked for by code', () => {
  it('that does not exist is refused by name', async () => {
    const map = await openMap({ examination: GOOD });
    expect(() => map.openPlace('left abdominal-aorta' as never)).to.throw(RangeError, 'left abdominal-aorta');
    expect(saidAt(map, 'left femoral')).to.equal('1, reduced');
  });
});
