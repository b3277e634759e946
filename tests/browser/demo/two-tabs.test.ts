// One visit open twice: whoever is second is told, and nothing is overwritten that nobody there has seen.
import { expect } from '@open-wc/testing';
import { until } from '../tools/until.js';
import { ClinicStore } from '../../../demo/clinic/database.js';
import 'pulse-map';
import '../../../demo/clinic/app.js';
import type { Visit } from '../../../demo/clinic/types.js';
import { click, setViewport, type } from '../../tools/real-input.js';
import { openClinic } from '../tools/clinic.js';
import { type HandedOver, handedOver } from '../tools/handed-over.js';
import { readableText } from '../tools/perceive.js';

type App = HTMLElementTagNameMap['clinic-app'];

let apps: App[] = [];
let store: ClinicStore;
let made = 0;
let database: string;
let visit: Visit;

const draftOf = () => `visit ${visit.id}`;
const button = (app: App, name: string) =>
  [...app.querySelectorAll('button')].find((one) => one.textContent?.trim() === name) as HTMLButtonElement;
const says = (app: App, words: RegExp) =>
  until(() => words.test(readableText(app)), `the sentence ${words.source}`);
const plan = (app: App) => app.querySelector('#field-plan') as HTMLTextAreaElement;

/** The page at an address, as one more tab shows it. */
async function tab(hash: string): Promise<App> {
  const app = await openClinic(hash, database);
  apps.push(app);
  await until(() => app.querySelector('main h1') && !app.querySelector('[aria-busy]'), 'the page');
  return app;
}

const amending = () => tab(`#/patients/${visit.patientId}/visits/${visit.id}/edit`);

async function write(app: App, text: string): Promise<void> {
  plan(app).focus();
  plan(app).select();
  await type(text);
}

beforeEach(async () => {
  await setViewport({ width: 1280, height: 900 });
  database = `two tabs ${++made}`;
  store = await ClinicStore.open(database);
  const id = `shared-${made}`;
  const fields = { date: '2026-03-05', examiner: 'A', reason: 'Other', plan: 'Before' };
  await store.saveVisit({ id, patientId: 'okafor', fields, savedAt: '2026-03-05T10:00Z' }, '');
  visit = (await store.visit(id)) as Visit;
});

afterEach(() => {
  for (const app of apps) app.remove();
  apps = [];
  store.close();
  indexedDB.deleteDatabase(database);
});

describe('one saved visit, amended in two tabs', () => {
  /** Open here while the other tab saves; two pages of one window would share its address, so that one saves by the store alone. */
  async function secondIsLate(): Promise<App> {
    const second = await amending();
    await write(second, 'Second');
    await store.saveVisit({ ...visit, fields: { ...visit.fields, plan: 'First' } }, 'none');
    await click(button(second, 'Save changes'));
    await says(second, /The visit was not saved/);
    return second;
  }

  it('tells the second, which keeps its text, and leaves what the first saved', async () => {
    const second = await secondIsLate();
    await says(second, /changed in another tab or window/);
    expect((await store.visit(visit.id))?.fields['plan']).to.equal('First');
    expect(plan(second).value).to.equal('Second');
    const other = second.querySelector<HTMLAnchorElement>('.error a');
    expect(other?.hash).to.equal(`#/patients/okafor/visits/${visit.id}`);
  });

  it('is replaced only by who says so', async () => {
    const second = await secondIsLate();
    await click(button(second, 'Save this over it'));
    await until(() => button(second, 'Replace it'), 'the question');
    await click(button(second, 'Replace it'));
    await until(async () => (await store.visit(visit.id))?.fields['plan'] === 'Second', 'the second save');
    expect((await store.visit(visit.id))?.revision).to.equal(3);
  });

  it('does not come back when it was deleted meanwhile, and can be saved as a new one', async () => {
    const app = await amending();
    await write(app, 'Late');
    await store.deleteVisit(visit, 'none');
    await click(button(app, 'Save changes'));
    await says(app, /deleted in another tab or window/);
    expect(await store.visit(visit.id)).to.equal(undefined);
    await click(button(app, 'Save it as a new visit'));
    await until(() => button(app, 'Save'), 'the question');
    await click(button(app, 'Save'));
    const late = async () => (await store.visits('okafor')).find(({ fields }) => fields['plan'] === 'Late');
    await until(late, 'the new visit');
    expect((await late())?.id).not.to.equal(visit.id);
  });

  it('is not deleted from a page that shows it as it was before', async () => {
    const { revision } = visit;
    await store.saveVisit({ ...visit, fields: { ...visit.fields, plan: 'Newer' } }, 'none');
    let refused = '';
    await store.deleteVisit({ ...visit, revision: revision ?? 0 }, 'none').catch((error: Error) => {
      refused = error.message;
    });
    expect(refused).to.equal('it was changed elsewhere');
    expect((await store.visit(visit.id))?.fields['plan']).to.equal('Newer');
  });
});

describe('the draft of one form, open in two tabs', () => {
  const ELSEWHERE = /being entered in another tab or window/;
  const kept = async () => (await store.draft(draftOf()))?.fields['plan'];

  it('stays that of the first; the second is told at once, and may go on instead', async () => {
    const first = await amending();
    const second = await amending();
    await says(second, ELSEWHERE);
    expect(ELSEWHERE.test(readableText(first)), 'the first is told nothing').to.equal(false);
    await write(first, 'First');
    await until(async () => (await kept()) === 'First', 'the draft of the first');
    await write(second, 'Second');
    expect(await kept()).to.equal('First');
    await click(button(second, 'Go on here'));
    await until(async () => (await kept()) === 'Second', 'the draft of the second');
    await says(first, ELSEWHERE);
    expect(plan(first).value).to.equal('First');
  });

  it('goes over to the second when the first has gone and left none', async () => {
    const first = await amending();
    const second = await amending();
    await says(second, ELSEWHERE);
    await write(second, 'Second');
    first.remove();
    await until(async () => (await kept()) === 'Second', 'the draft');
    await until(() => !ELSEWHERE.test(readableText(second)), 'nothing is told any more');
  });

  it('is not overwritten by the second when the first has gone and left one', async () => {
    const first = await amending();
    const second = await amending();
    await says(second, ELSEWHERE);
    await write(first, 'First');
    await until(async () => (await kept()) === 'First', 'the draft');
    first.remove();
    await write(second, 'Second');
    await says(second, ELSEWHERE);
    expect(await kept()).to.equal('First');
  });
});

describe('a visit that cannot be saved', () => {
  it('is offered as a file with every field and the record', async () => {
    const app = await amending();
    await write(app, 'On paper');
    const save = ClinicStore.prototype.saveVisit;
    let files: HandedOver[];
    ClinicStore.prototype.saveVisit = () => Promise.reject(new DOMException('no room', 'QuotaExceededError'));
    try {
      await click(button(app, 'Save changes'));
      await says(app, /no room.*keep it as a file/s);
      files = await handedOver(() => click(button(app, 'Keep it as a file')));
    } finally {
      ClinicStore.prototype.saveVisit = save;
    }
    const file = JSON.parse(files[0]?.text ?? '') as Record<'patient' | 'fields', Record<string, string>>;
    expect(file.patient['id']).to.equal('okafor');
    expect(file.fields['plan']).to.equal('On paper');
    expect(Object.keys(file.fields)).to.include('pulses');
    await click(button(app, 'Save changes'));
    await until(async () => (await store.visit(visit.id))?.fields['plan'] === 'On paper', 'the save');
  });
});
