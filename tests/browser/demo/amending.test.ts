import { expect } from '@open-wc/testing';
import { ClinicStore } from '../../../demo/clinic/database.js';
import 'pulse-map';
import '../../../demo/clinic/app.js';
import { click, press, setViewport, type } from '../../tools/real-input.js';
import { openClinic } from '../tools/clinic.js';
import { namedIn, oneIn } from '../tools/named.js';
import { until } from '../tools/until.js';
import { visitButtons } from '../tools/visits.js';

const database = 'clinic amending test';
let app: HTMLElementTagNameMap['clinic-app'];

const one = <E extends Element>(selector: string, name: string | RegExp) => oneIn<E>(app, selector, name);
const button = (name: string) => one<HTMLButtonElement>('button', name);
const link = (name: string) => one<HTMLAnchorElement>('a', name);
const field = (label: string) => {
  const [found] = namedIn(app, 'label', new RegExp(`^${label}( optional)?$`)) as HTMLLabelElement[];
  return app.querySelector<HTMLInputElement>(`#${found!.htmlFor}`)!;
};
const shows = (title: string) =>
  until(() => app.querySelector('main h1')?.textContent?.trim() === title, `the page "${title}"`);
const visits = () => visitButtons(app);
const map = () => app.querySelector('pulse-map')!;
const reported = () => app.querySelector('limb-report')?.shadowRoot?.textContent?.replace(/\s+/g, ' ') ?? '';

async function mount(hash: string): Promise<void> {
  app?.remove();
  app = await openClinic(hash, database);
}

before(() => setViewport({ width: 1280, height: 900 }));
afterEach(() => app.remove());
after(
  () =>
    new Promise<void>((done) => {
      const request = indexedDB.deleteDatabase(database);
      request.onsuccess = request.onerror = request.onblocked = () => done();
    }),
);

describe('a saved visit of the clinic', () => {
  it('hands a stored record back as it was, and an amended visit keeps its place', async () => {
    await mount('#/patients/lindqvist/visits/lindqvist-2/edit');
    await shows('Amend the visit of 6 October 2026');
    const store = await ClinicStore.open(database);
    const before = await store.visit('lindqvist-2');
    expect(map().value).to.equal(before?.fields['pulses']);
    // Not by the mouse: the map above may still grow.
    field('Assessment and plan').focus();
    await press('Control+End');
    await type(' Seen again.');
    field('Reason for the change').focus();
    await type('Plan was missing');
    await click(button('Save changes'));
    await shows('Marta Lindqvist');
    const after = await store.visit('lindqvist-2');
    store.close();
    const { pulses: text = '', ...fields } = after?.fields ?? {};
    const { pulses: was = '', ...others } = before?.fields ?? {};
    expect(fields).to.deep.equal({ ...others, plan: `${before?.fields['plan']} Seen again.` });
    const {
      amendments,
      format: _written,
      ...record
    } = JSON.parse(text) as {
      amendments: Record<string, string>[];
      format: string;
    };
    const { format: _before, ...old } = JSON.parse(was) as { format: string };
    expect(record).to.deep.equal(old);
    const { at, ...amendment } = amendments[0]!;
    // Within the hour: no limit of speed.
    expect(Date.parse(at!)).to.be.closeTo(Date.now(), 3_600_000);
    expect(amendment).to.deep.equal({
      kind: 'amended',
      by: before?.fields['examiner'],
      why: 'Plan was missing',
    });
    await until(() => visits().length === 3, '3 visits');
  });

  it('marks a visit as entered in error with who and why, keeps it in every list, and restores it', async () => {
    await mount('#/patients/lindqvist/visits/lindqvist-2');
    await until(() => reported().includes('Conclusion'), 'the report');
    await click(one('summary', 'Mark as entered in error'));
    await click(field('Who marks it'));
    await type('L. Brandt');
    await click(field('Why'));
    await type('Other patient');
    await click(button('Mark as entered in error'));
    await until(() => reported().includes('Entered in error'), 'the banner');
    expect(reported()).to.contain('by L. Brandt: Other patient');
    expect(reported(), 'nothing is erased').to.contain('Popliteal');

    await click(link('Marta Lindqvist'));
    await shows('Marta Lindqvist');
    await until(() => visits().length === 3, 'all visits');
    const listed = () => app.querySelector('limb-visits')?.shadowRoot?.textContent ?? '';
    await until(() => listed().includes('Entered in error'), 'the mark in the list');

    await mount('#/patients/lindqvist/visits/lindqvist-2');
    await until(() => reported().includes('Conclusion'), 'the report again');
    await click(one('summary', 'Restore this visit'));
    await click(field('Who marks it'));
    await type('L. Brandt');
    await click(field('Why'));
    await type('It was hers');
    await click(button('Restore this visit'));
    await until(() => reported().includes('Restored'), 'word of it');
    expect(app.querySelector('limb-report')?.shadowRoot?.querySelector('.in-error') ?? null).to.equal(null);
  });
});
