import { expect, fixture } from '@open-wc/testing';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import 'pulse-map/elements/pulse-map/define';
import { examined } from '../../tools/examinations.js';
import { click, consoleOf, focused } from '../../tools/real-input.js';
import { eventsOf, openMap, saidAt, settled, site } from '../tools/map.js';
import { allByRole, byRole, readableText } from '../tools/perceive.js';

const GOOD = examined({ 'left femoral': 'reduced', 'right radial': 'normal' });
const record = (parts: object): string => JSON.stringify({ format: 'pulse-map/1', scale: '0-3', ...parts });

/** What is wrong, and what must be said of it: where, what was found, what was expected. */
const WRONG: readonly (readonly [what: string, value: string, told: readonly RegExp[]])[] = [
  ['a text that is no record', 'left femoral absent', [/the value/, /left femoral absent/, /expected JSON/]],
  ['a list', '[1, 2]', [/the value/, /\[1,2\]/, /expected object/]],
  ['a record without its format', '{"scale":"0-3"}', [/format/, /nothing there/, /pulse-map\/1/]],
  [
    'a record of a later version',
    JSON.stringify({ format: 'pulse-map/2', scale: '0-3' }),
    [/format/, /"pulse-map\/2", written by a later version/, /expected "pulse-map\/1"/],
  ],
  [
    'a site that does not exist',
    record({ pulses: { tibial: { left: { grade: 'normal' } } } }),
    [/pulses › tibial/, /no such field or site/, /expected .*posterior-tibial/],
  ],
  [
    'a side that does not exist',
    record({ pulses: { 'abdominal-aorta': { left: { grade: 'normal' } } } }),
    [/pulses › abdominal-aorta › left/, /no such field or site/, /expected midline/],
  ],
  [
    'a grade of 7',
    record({ pulses: { femoral: { left: { grade: 7 } } } }),
    [/pulses › femoral › left › grade/, /found 7/, /expected "absent", "reduced", "normal" or "bounding"/],
  ],
  [
    'a grade beside a reason why there is none',
    record({ pulses: { femoral: { left: { grade: 'normal', couldNotExamine: 'cast' } } } }),
    [/pulses › femoral › left › couldNotExamine/, /found "cast"/, /a grade or a reason, not both/],
  ],
];

async function withRecord() {
  const map = await openMap({ examination: GOOD });
  const form = document.createElement('form');
  map.name = 'pulses';
  map.before(form);
  form.append(map, document.createElement('button'));
  (form.lastChild as HTMLElement).textContent = 'Save';
  await settled(map);
  return { map, form };
}

/** What is wrong with the value; the red flags have an alert of their own. */
function alarms(map: PulseMap): HTMLElement[] {
  return allByRole(map, 'alert').filter((alert) => alert.getRootNode() === map.shadowRoot);
}

function alarm(map: PulseMap): string {
  return alarms(map).map(readableText).join();
}

describe('a value that cannot be taken', () => {
  for (const [what, value, told] of WRONG) {
    it(`is told for ${what}, and what was there before stays`, async () => {
      const { map, form } = await withRecord();
      const before = map.value;
      const events = eventsOf(form);
      map.value = value;
      await settled(map);
      for (const part of told) expect(alarm(map)).to.match(part);
      expect(alarm(map)).to.include('What was here before is unchanged.');
      expect(map.value).to.equal(before);
      expect(new FormData(form).get('pulses')).to.equal(before);
      expect(saidAt(map, 'left femoral')).to.equal('1, reduced');
      expect(map.validity.badInput).to.equal(true);
      for (const part of told) expect(map.validationMessage).to.match(part);
      expect(events).to.deep.equal({ input: 0, change: 0 });
    });
  }

  it('is told for a value that is neither text nor record', async () => {
    const { map } = await withRecord();
    map.value = 7 as never;
    await settled(map);
    expect(alarm(map)).to.match(/the value: found 7; expected object or JSON/);
    expect(saidAt(map, 'left femoral')).to.equal('1, reduced');
  });

  it('is told in full: every fault has its sentence', async () => {
    const { map } = await withRecord();
    map.value = record({ onset: 'slow', pulses: { femoral: { left: { grade: 7 } }, tibial: {} } });
    await settled(map);
    const items = [...(alarms(map)[0]?.querySelectorAll('li') ?? [])].map((item) => item.textContent ?? '');
    expect(items).to.have.length(3);
    expect(alarm(map)).to.include('3 things are wrong:');
    for (const path of [/^onset: /, /^pulses › femoral › left › grade: /, /^pulses › tibial: /]) {
      expect(
        items.some((item) => path.test(item.trim())),
        String(path),
      ).to.equal(true);
    }
  });

  it('as an attribute is told too, with an empty record behind it', async () => {
    const form = await fixture<HTMLFormElement>(
      '<form><pulse-map name="pulses" value="{}"></pulse-map></form>',
    );
    const map = form.querySelector('pulse-map') as unknown as PulseMap;
    await settled(map);
    expect(alarm(map)).to.match(/format: nothing there; expected "pulse-map\/1"/);
    expect(new FormData(form).get('pulses')).to.equal('');
  });

  it('keeps the form from being sent, without noise, until a person sees to it', async () => {
    const { map, form } = await withRecord();
    let submitted = 0;
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      submitted++;
    });
    map.value = 'nonsense';
    await settled(map);
    const save = byRole(form, 'button', 'Save');
    expect(await consoleOf(() => click(save))).to.deep.equal([]);
    expect(submitted).to.equal(0);
    expect(focused()?.matches('[part~=site]')).to.equal(true);
    await click(byRole(map, 'button', 'Other 21 normal'));
    await settled(map);
    expect(alarms(map)).to.have.length(0);
    await click(save);
    expect(submitted).to.equal(1);
  });

  for (const [how, mend] of [
    ['a readable value', (map: PulseMap) => (map.value = GOOD)],
    ['none', (map: PulseMap) => (map.value = null)],
    ['a reset', (map: PulseMap) => map.form?.reset()],
  ] as const) {
    it(`is forgotten after ${how}`, async () => {
      const { map } = await withRecord();
      map.value = 'nonsense';
      await settled(map);
      mend(map);
      await settled(map);
      expect(alarms(map)).to.have.length(0);
      expect(map.validity.valid).to.equal(true);
    });
  }

  it('shows foreign text as text', async () => {
    const { map } = await withRecord();
    map.value = record({ onset: '<img src=x onerror="document.title=1">' });
    await settled(map);
    expect(alarm(map)).to.include('<img src=x');
    expect(map.shadowRoot?.querySelector('img')).to.equal(null);
  });
});

describe('a site asked for by code', () => {
  it('that does not exist is refused by name', async () => {
    const { map } = await withRecord();
    expect(() => map.openPlace('left abdominal-aorta' as never)).to.throw(RangeError, 'left abdominal-aorta');
    expect(site(map, 'abdominal aorta')).to.exist;
  });
});
