// A word of a later version in a field that is known: kept, said to be there, locked, and nothing else with it.
import { expect, fixture } from '@open-wc/testing';
import { click, setViewport, type, press } from '../../tools/real-input.js';
import { drawn, field } from '../tools/limbs.js';
import { markNormal } from '../tools/map.js';
import { allByRole, byRole, everything, readableText } from '../tools/perceive.js';
import type { LimbExamination } from 'pulse-map/elements/limb-examination';
import type { LimbInspectionElement } from 'pulse-map/elements/limb-inspection';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import type { BedsideTest } from 'pulse-map/elements/bedside-test';
import 'pulse-map/elements/limb-examination/define';

before(() => setViewport({ width: 1000, height: 900 }));

const UNKNOWN = 'recorded in a way this version does not know';
const inspection = { leg: { left: { colour: 'marbled', refill: 3 } } };

async function open<E extends HTMLElement>(tag: string, value: unknown, attributes = '') {
  const form = await fixture<HTMLFormElement>(
    `<form lang="en"><${tag} name="v" ${attributes}></${tag}></form>`,
  );
  const control = form.querySelector(tag) as unknown as E & { value: unknown };
  control.value = JSON.stringify(value);
  await drawn(control);
  return { form, control, sent: () => JSON.parse(String(new FormData(form).get('v'))) as unknown };
}

async function enterRefill(control: HTMLElement, text: string): Promise<void> {
  const refill = field(control, 'Capillary refill time, left leg');
  refill.focus();
  refill.select();
  await type(text);
  await press('Tab');
  await drawn(control);
}

describe('a word that this version does not know', () => {
  it('is kept in a part through edits of everything else, and cannot be changed itself', async () => {
    const { control, sent } = await open<LimbInspectionElement>('limb-inspection', inspection);
    expect(sent()).to.deep.equal(inspection);
    expect(readableText(control)).to.include(UNKNOWN);
    expect(allByRole(control, 'radiogroup', 'Colour, left leg')).to.have.length(0);
    expect(allByRole(control, 'radiogroup', 'Colour, right leg')).to.have.length(1);
    await enterRefill(control, '4');
    const [right] = allByRole(control, 'radiogroup', 'Colour, right leg');
    await click(byRole(right as HTMLElement, 'radio', 'Pale'));
    expect(sent()).to.deep.equal({
      leg: { left: { colour: 'marbled', refill: 4 }, right: { colour: 'pale' } },
    });
    expect(control.recorded?.leg?.left).to.deep.equal({ refill: 4 });
  });

  it('is kept in the whole examination through edits and undo, and counted in one sentence', async () => {
    const record = { format: 'pulse-map/1.9', scale: '0-3', inspection, device: 'B12' };
    const { control, sent } = await open<LimbExamination>('limb-examination', record);
    expect(readableText(control)).to.include('The record holds 2 entries of a later version.');
    await control.openPart('inspection');
    await drawn(control);
    expect(readableText(control)).to.include(UNKNOWN);
    await enterRefill(control, '4');
    const edited = { ...record, inspection: { leg: { left: { colour: 'marbled', refill: 4 } } } };
    expect(sent()).to.deep.equal(edited);
    control.undo();
    expect(sent()).to.deep.equal(record);
  });

  it('is counted on the map too, once', async () => {
    const { control, sent } = await open<PulseMap>('pulse-map', {
      format: 'pulse-map/1.9',
      scale: '0-3',
      device: 'B12',
      onset: 'acute',
    });
    expect(readableText(control).match(/The record holds 1 entry of a later version/g)).to.have.length(1);
    expect(await markNormal(control)).not.to.have.length(0);
    expect(sent()).to.include({ device: 'B12', format: 'pulse-map/1.9' });
  });
});

type At = readonly [tag: string, value: object, label: string, attributes?: string];

const staged = (scheme: string, label: string): At => [
  'limb-staging',
  { leg: { left: { [scheme]: { stage: 'X' } } } },
  `${label}, set by you`,
];
const tested = (test: string, left: object, label: string): At => [
  'bedside-test',
  { left },
  label,
  `test="${test}" side="left"`,
];

/** A word of a later version in the places of a part where words stand, and the label it stands under. */
const PLACES: readonly At[] = [
  ['limb-pressures', { unit: 'cmH2O' }, 'Unit'],
  ['limb-pressures', { toe: { left: 'asleep' } }, 'Great toe, left'],
  ['limb-pressures', { finger: { right: 'asleep' } }, 'Finger, right'],
  ['limb-pressures', { afterExercise: { brachial: { left: 'asleep' } } }, 'Arm after exercise, left'],
  staged('acute', 'Acute limb ischaemia class (Rutherford)'),
  staged('fontaine', 'Fontaine stage'),
  [
    'limb-staging',
    { arm: { right: { acute: { stage: 'X' } } } },
    'Acute limb ischaemia class (Rutherford), set by you',
  ],
  tested('venous-filling', { notDone: 'asleep' }, 'Not done, and why'),
  tested('hand-arch', { method: 'newest' }, 'Form of the test'),
  tested('hand-arch', { barbeau: 'E' }, 'Radial pressed'),
  tested('hand-arch', { barbeauReverse: 'E' }, 'Ulnar pressed'),
  tested('hyperabduction', { before: 'musical' }, 'Pulse before'),
  tested('costoclavicular', { during: 'musical' }, 'Pulse in position'),
  tested('hyperabduction', { before: 'normal', during: 'normal', symptoms: ['itch'] }, 'Symptoms'),
  tested('scalene', { away: { during: 'musical' } }, 'Pulse in position, head turned away'),
  tested('arm-stress', { during: 'musical' }, 'Pulse in position'),
  tested('arm-stress', { stopped: 'boredom' }, 'Stopped because of, left'),
];

const openTest = (test: string, left: object) =>
  open<BedsideTest>('bedside-test', { left }, `test="${test}" side="left"`);

describe('the place of a word that this version does not know', () => {
  for (const [tag, value, label, attributes] of PLACES) {
    it(`${tag} ${JSON.stringify(value)} says so under “${label}”, in sight, and offers no control`, async () => {
      const { control, sent } = await open(tag, value, attributes);
      const said = everything(control).filter((e) => e.matches('.unknown') && e.checkVisibility());
      expect(said.map((e) => e.textContent?.replace(/\s+/g, ' ').trim())).to.deep.equal([
        `${label}: ${UNKNOWN}`,
      ]);
      for (const role of ['radiogroup', 'combobox', 'textbox', 'group'])
        expect(allByRole(control, role, label), role).to.have.length(0);
      expect(sent()).to.deep.equal(value);
      await expect(control).to.be.accessible();
    });
  }

  it('is no answer: a test of which it is the only result, or the symptoms, has no reading', async () => {
    const { control } = await openTest('venous-filling', { notDone: 'asleep' });
    expect(control.reading('left')).to.equal(undefined);
    expect(allByRole(control, 'timer'), 'not done: nothing to time').to.have.length(0);
    const felt = { before: 'normal', during: 'normal', symptoms: ['itch'] };
    const arm = (await openTest('hyperabduction', felt)).control;
    const nothingAsked = { before: 'normal', during: 'normal' };
    const same = (await openTest('hyperabduction', nothingAsked)).control;
    expect(arm.reading('left'), 'not “no symptoms”').to.deep.equal(same.reading('left'));
  });

  it('is named in German', async () => {
    await import('pulse-map/locale/de');
    const { control } = await open('limb-pressures', { toe: { left: 'asleep' } }, 'lang="de"');
    expect(readableText(control)).to.include('in einer Form festgehalten, die diese Version nicht kennt');
  });
});

describe('the sentence that counts what is not shown', () => {
  const record = { format: 'pulse-map/1.9', scale: '0-3', device: 'B12', rota: 7 };
  for (const tag of ['limb-examination', 'pulse-map']) {
    it(`stands once on <${tag}>, in English and German`, async () => {
      await import('pulse-map/locale/de');
      for (const [lang, sentence] of [
        ['en', /The record holds 2 entries of a later version/g],
        ['de', /Der Befund enthält 2 Einträge einer neueren Version/g],
      ] as const) {
        const { control } = await open<LimbExamination>(tag, record, `lang="${lang}"`);
        if (tag === 'limb-examination') await control.openPart('pulses');
        await drawn(control);
        expect(readableText(control).match(sentence), lang).to.have.length(1);
      }
    });
  }
});
