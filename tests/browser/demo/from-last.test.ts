// A visit that starts from the last one keeps nothing of it but what was confirmed.
import { expect } from '@open-wc/testing';
import 'pulse-map';
import '../../../demo/clinic/app.js';
import { click, setViewport } from '../../tools/real-input.js';
import { openClinic } from '../tools/clinic.js';
import { untilDraft } from '../tools/drafts.js';
import { until } from '../tools/until.js';

let app: HTMLElementTagNameMap['clinic-app'];
let database: string;
const map = () => app.querySelector('pulse-map') as HTMLElementTagNameMap['pulse-map'];
const heading = () => app.querySelector('main h1')?.textContent?.trim() ?? '';
const list = () => app.querySelector('limb-unconfirmed')?.shadowRoot;
const again = (name: RegExp) =>
  [...(list()?.querySelectorAll('button') ?? [])].find((one) =>
    name.test(one.textContent.replace(/\s+/g, ' ').trim()),
  );

async function open(hash: string): Promise<void> {
  app?.remove();
  app = await openClinic(hash, database);
}

before(() => setViewport({ width: 1200, height: 900 }));
afterEach(() => {
  app.remove();
  indexedDB.deleteDatabase(database);
});

it('a new visit from the last one saves only what was confirmed, through a reload of its draft', async () => {
  database = 'from-last';
  await open('#/patients/lindqvist');
  await until(() => heading() === 'Marta Lindqvist', 'the patient');
  const start = [...app.querySelectorAll('a')].find(
    (one) => one.textContent.trim() === 'New visit from the last',
  )!;
  await click(start);
  await until(() => again(/^Found again: ?Left popliteal: 0, absent/), 'what was found before');
  expect(map().value).to.equal('');
  await click(again(/^Found again: ?Left popliteal: 0, absent/)!);
  await until(() => map().value.includes('popliteal'), 'the confirmed pulse');
  const draft = await untilDraft(
    database,
    'new lindqvist',
    ({ fields }) => fields['pulses']?.includes('popliteal'),
    'the confirmed pulse',
  );
  await open(location.hash);
  await until(() => again(/^Found again: ?Left femoral/), 'what is still to be confirmed');
  await until(
    () => again(/^Found again: ?Left popliteal: 0, absent/) === undefined,
    'the draft with what was confirmed',
  );
  expect(JSON.parse(draft.fields['pulses']!).pulses).to.deep.equal({
    popliteal: { left: { grade: 'absent' } },
  });
});
