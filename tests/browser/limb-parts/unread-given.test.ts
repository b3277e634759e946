// A record handed over only to be read: one that cannot be read is said to be so, and never looks like one without findings.
import { expect, fixture } from '@open-wc/testing';
import { chronic, threatened } from '../../../stories/limb-records.js';
import { setViewport } from '../../tools/real-input.js';
import { drawn } from '../tools/limbs.js';
import { allByRole, byRole, readableText } from '../tools/perceive.js';
import 'pulse-map/elements/limb-flags/define';
import 'pulse-map/elements/limb-staging/define';

before(() => setViewport({ width: 1000, height: 900 }));

const cycle: Record<string, unknown> = { ...threatened };
cycle['self'] = cycle;

/** Records that this version must not interpret, though it finds fields in them whose names it knows. */
const UNREADABLE: readonly (readonly [what: string, record: unknown])[] = [
  ['of a later version', { ...threatened, format: 'pulse-map/2' }],
  ['with a field of a wrong type', { ...threatened, pulses: 7 }],
  ['without a format', { ...threatened, format: undefined }],
  ['as a text that is no JSON', '{"format":'],
  ['that holds itself', cycle],
];

const UNCHECKED = 'This record cannot be read here. It has not been checked for red flags.';
const UNSTAGED = 'The record cannot be read here, so no stage is worked out from it.';

/** An element as a page without types sees it. */
type Given = HTMLElement & { examination: unknown; value?: unknown };

async function open(tag: string, attributes = '') {
  const form = await fixture<HTMLFormElement>(
    `<form lang="en"><${tag} name="v" ${attributes}></${tag}></form>`,
  );
  return { form, control: form.querySelector(tag) as unknown as Given };
}

for (const [what, record] of UNREADABLE) {
  it(`<limb-flags> says of a record ${what} that it was not checked`, async () => {
    const { control } = await open('limb-flags');
    control.examination = threatened;
    await drawn(control);
    control.examination = record;
    await drawn(control);
    expect(readableText(control), 'and keeps no flag of the record before').to.equal(UNCHECKED);
    expect(readableText(byRole(control, 'status'))).to.equal(UNCHECKED);
    await expect(control).to.be.accessible();
  });

  it(`<limb-staging> works out nothing from a record ${what}, and keeps what was set`, async () => {
    const { form, control } = await open('limb-staging');
    const own = '{"leg":{"left":{"fontaine":{"stage":"IV"}}}}';
    control.value = JSON.parse(own);
    control.examination = chronic;
    await drawn(control);
    expect(allByRole(control, 'group').length).to.be.greaterThan(4);
    control.examination = record;
    await drawn(control);
    expect(readableText(control)).to.equal(`${UNSTAGED} Stages you have set yourself stay as they are.`);
    expect(new FormData(form).get('v')).to.equal(own);
  });
}

it('<limb-flags> on its own says how many words of a later version it could not weigh', async () => {
  const { control } = await open('limb-flags');
  const said = async (fields: object): Promise<string[]> => {
    control.examination = { format: 'pulse-map/1.99', scale: '0-3', ...fields };
    await drawn(control);
    return allByRole(control, 'status').map(readableText);
  };
  const leg = (found: object) => ({ inspection: { leg: { left: found } } });
  expect(await said(leg({ colour: 'pale' })), 'every word known').to.deep.equal([]);
  expect(await said(leg({ colour: 'striped' }))).to.deep.equal([
    '1 entry of a later version has not been checked for red flags.',
  ]);
  expect(await said(leg({ colour: 'striped', movement: 'jerky' }))).to.deep.equal([
    '2 entries of a later version have not been checked for red flags.',
  ]);
  await expect(control).to.be.accessible();
  // No flag follows from a stage that the clinician set.
  expect(await said({ staging: { leg: { left: { fontaine: { stage: 'VII' } } } } })).to.deep.equal([]);
});

it('both read the next record as if nothing had been, also one given as text', async () => {
  for (const tag of ['limb-flags', 'limb-staging']) {
    const { control } = await open(tag);
    control.examination = threatened;
    await drawn(control);
    const seen = readableText(control);
    control.examination = { ...threatened, format: 'pulse-map/2' };
    await drawn(control);
    control.examination = JSON.stringify(threatened);
    await drawn(control);
    expect(readableText(control)).to.equal(seen);
  }
});

it('both say it in German', async () => {
  await import('pulse-map/locale/de');
  const said = [];
  for (const tag of ['limb-flags', 'limb-staging']) {
    const { control } = await open(tag, 'lang="de"');
    control.examination = { format: 'pulse-map/2' };
    await drawn(control);
    said.push(readableText(control));
  }
  expect(said).to.deep.equal([
    'Dieser Befund kann hier nicht gelesen werden. Er wurde nicht auf Warnzeichen geprüft.',
    'Der Befund kann hier nicht gelesen werden; daraus wird kein Stadium abgeleitet. Von Ihnen festgelegte Stadien bleiben, wie sie sind.',
  ]);
});
