// What the clinic must not lose: a stored record that this version cannot read, and what is being typed.
import { expect } from '@open-wc/testing';
import { openClinic } from '../tools/clinic.js';
import { until } from '../tools/until.js';
import { ClinicStore } from '../../../demo/clinic/database.js';
import 'pulse-map';
import '../../../demo/clinic/app.js';
import { click, press, setViewport, type } from '../../tools/real-input.js';
import { drawn, field } from '../tools/limbs.js';
import { choose, openSite, settled } from '../tools/map.js';
import { byRole, readableText } from '../tools/perceive.js';
import { emptyExamination, setPulse } from 'pulse-map/core';

let app: HTMLElementTagNameMap['clinic-app'];
let store: ClinicStore;
let made = 0;
let database: string;

const LATER = ' {"format":"pulse-map/2","scale":"0-3","pulses":{"femoral":{"left":{"grade":"absent"}}}} ';
const map = () => app.querySelector('pulse-map') as HTMLElementTagNameMap['pulse-map'];
const whole = () => app.querySelector('limb-examination') as HTMLElementTagNameMap['limb-examination'];
const heading = () => app.querySelector('main h1')?.textContent?.trim() ?? '';
const button = (name: string) =>
  [...app.querySelectorAll('button')].find((one) => one.textContent?.trim() === name) as HTMLButtonElement;

async function open(hash: string): Promise<void> {
  app?.remove();
  app = await openClinic(hash, database);
}

/** A visit with the record of a later version, and the page on which it is amended. */
async function amend(extent = 'pulses'): Promise<{ id: string; key: string }> {
  const [patient] = await store.patients();
  const patientId = patient?.id ?? '';
  const id = `later-${made}`;
  const fields = { date: '2026-03-05', examiner: 'A', reason: 'Other', pulses: LATER, extent };
  await store.saveVisit({ id, patientId, fields, savedAt: '2026-03-05T10:00Z' }, '');
  await open(`#/patients/${patientId}/visits/${id}/edit`);
  await until(() => heading().startsWith('Amend'), 'the form');
  await (map() ?? whole()).updateComplete;
  return { id, key: `visit ${id}` };
}

beforeEach(async () => {
  await setViewport({ width: 1280, height: 900 });
  database = `keeping test ${++made}`;
  store = await ClinicStore.open(database);
});

afterEach(() => {
  app.remove();
  store.close();
  indexedDB.deleteDatabase(database);
});

describe('a stored record that this version cannot read', () => {
  for (const extent of ['pulses', 'whole']) {
    it(`outlives Amend, typing elsewhere, the draft, a reload and Save: ${extent}`, async () => {
      const { id, key } = await amend(extent);
      const control = () => (extent === 'whole' ? whole() : map());
      expect(readableText(control())).to.include('It stays exactly as it is.');
      await click(app.querySelector('#field-plan') as HTMLElement);
      await type('Duplex');
      await until(async () => (await store.draft(key))?.fields['plan'] === 'Duplex', 'the draft');
      expect((await store.draft(key))?.fields['pulses']).to.equal(LATER);
      await open(location.hash);
      await until(() => app.querySelector('.notice'), 'the draft is offered');
      await control().updateComplete;
      expect(control().value).to.equal(LATER);
      await click(button('Save changes'));
      await until(() => heading() && !heading().startsWith('Amend'), 'the visit is saved');
      const saved = await store.visit(id);
      expect([saved?.fields['pulses'], saved?.fields['plan']]).to.deep.equal([LATER, 'Duplex']);
    });
  }

  it('outlives the change between map and whole examination', async () => {
    const { id } = await amend();
    const [, other] = app.querySelectorAll<HTMLInputElement>('input[name=extent]');
    await click(other as HTMLElement);
    await until(() => whole(), 'the whole examination');
    expect(whole().value).to.equal(LATER);
    await click(button('Save changes'));
    await until(() => heading() && !heading().startsWith('Amend'), 'the visit is saved');
    expect((await store.visit(id))?.fields['pulses']).to.equal(LATER);
  });
});

describe('what is being typed', () => {
  it('in the chooser is in the draft at every key: a reload in the middle of it loses nothing', async () => {
    const [patient] = await store.patients();
    await open(`#/patients/${patient?.id}/visits/new`);
    await until(() => map(), 'the form');
    await settled(map());
    await openSite(map(), 'left femoral');
    await choose(map(), 'button', 'Add a note');
    await type('Groin scar');
    const key = `new ${patient?.id}`;
    await until(
      async () => (await store.draft(key))?.fields['pulses']?.includes('Groin scar'),
      'the draft with what was typed',
    );
    await open(location.hash);
    await until(() => app.querySelector('.notice'), 'the draft is offered');
    await map().updateComplete;
    expect(map().examination.pulses?.femoral?.left?.note).to.equal('Groin scar');
  });
});

describe('text that no field can take yet', () => {
  async function openWhole(): Promise<{ key: string; date: HTMLInputElement }> {
    const [patient] = await store.patients();
    await open(`#/patients/${patient?.id}/visits/new`);
    await until(() => map(), 'the form');
    const [, extent] = app.querySelectorAll<HTMLInputElement>('input[name=extent]');
    await click(extent as HTMLElement);
    await until(() => whole(), 'the whole examination');
    await drawn(whole());
    return { key: `new ${patient?.id}`, date: app.querySelector('#field-date') as HTMLInputElement };
  }

  it('stands in its field again after a reload, beside the value it was to replace', async () => {
    const { key } = await openWhole();
    await whole().openPart('pressures');
    await drawn(whole());
    field(whole(), 'Arm, right').focus();
    await type('140');
    await press('Tab');
    const typedAgain = async (text: string): Promise<void> => {
      const arm = field(whole(), 'Arm, right');
      arm.focus();
      arm.select();
      await type(text);
    };
    await typedAgain('12x');
    const kept = async () => JSON.stringify((await store.draft(key))?.unfinished ?? {});
    await until(async () => (await kept()).includes('12x'), 'the draft');
    await open(location.hash);
    await until(() => whole() && app.querySelector('.notice'), 'the draft is offered');
    await drawn(whole());
    expect(field(whole(), 'Arm, right').value).to.equal('12x');
    expect(readableText(whole())).to.include('“12x” was not taken');
    expect(whole().examination.pressures?.brachial).to.deep.equal({ right: 140 });
    await typedAgain('120');
    await until(async () => !(await kept()).includes('12x'), 'the draft without it');
    expect(whole().examination.pressures?.brachial).to.deep.equal({ right: 120 });
    expect(whole().unfinished).to.equal(undefined);
  });

  it('leaves a date as it was while it is being typed anew', async () => {
    const { key, date } = await openWhole();
    const before = date.value;
    expect(before).to.match(/^\d{4}-/);
    const kept = async () => (await store.draft(key))?.keptAt ?? '';
    await until(kept, 'the draft before');
    const earlier = await kept();
    date.focus();
    await press('Backspace');
    expect(date.validity.badInput, 'half a date').to.equal(true);
    await until(async () => (await kept()) > earlier, 'the draft with half a date');
    expect((await store.draft(key))?.fields['date']).to.equal(before);
  });
});

describe('a database connection that the browser has closed', () => {
  it('is opened anew by the next act: what was entered can still be kept and saved', async () => {
    const [patient] = await store.patients();
    const patientId = patient?.id ?? '';
    const draft = { key: 'new x', patientId, fields: { plan: 'Duplex' }, keptAt: '2026-03-05T10:00Z' };
    const visit = { id: 'v', patientId, fields: {}, savedAt: '2026-03-05T10:00Z' };
    const acts: readonly (() => Promise<unknown>)[] = [
      () => store.saveDraft(draft),
      () => store.draft('new x'),
      () => store.saveVisit(visit, 'other'),
      () => store.visit('v'),
      () => store.visits(patientId),
      () => store.patient(patientId),
      () => store.deleteVisit({ ...visit, revision: 1 }, 'other'),
      () => store.deleteDraft('new x'),
      () => store.startAgain(),
    ];
    for (const act of acts) {
      store.close();
      await act();
    }
    expect(await store.draft('new x')).to.equal(undefined);
    expect(await store.visit('v')).to.equal(undefined);
    expect((await store.patients()).length).to.equal(3);
  });
});

describe('a letter that a person changed', () => {
  it('outlives a reload of the draft, and stands with the saved visit', async () => {
    const [patient] = await store.patients();
    const patientId = patient?.id ?? '';
    const id = `letter-${made}`;
    const pulses = JSON.stringify(
      setPulse(emptyExamination(), { site: 'popliteal', side: 'left' }, { grade: 'absent' }),
    );
    const fields = { date: '2026-03-05', examiner: 'A', reason: 'Other', pulses, extent: 'whole' };
    await store.saveVisit({ id, patientId, fields, savedAt: '2026-03-05T10:00Z' }, '');
    await open(`#/patients/${patientId}/visits/${id}/edit`);
    await until(() => whole(), 'the form');
    const letter = () => whole().renderRoot.querySelector('limb-letter')!;
    const openLetter = async (): Promise<HTMLTextAreaElement> => {
      await whole().openPart('summary');
      await drawn(whole());
      return letter().shadowRoot!.querySelector('textarea')!;
    };
    const area = await openLetter();
    area.focus();
    await press('Control+End');
    await type(' Walks his dog.');
    await until(
      async () => /Walks his dog/.test((await store.draft(`visit ${id}`))?.fields['letter'] ?? ''),
      'the draft',
    );
    await open(location.hash);
    await until(() => app.querySelector('.notice'), 'the draft is offered');
    await drawn(whole());
    expect((await openLetter()).value).to.match(/Walks his dog\.$/);
    await click(button('Save changes'));
    await until(() => heading() && !heading().startsWith('Amend'), 'the visit is saved');
    await open(`#/patients/${patientId}/visits/${id}`);
    await until(() => app.querySelector('details.letter summary'), 'the saved visit');
    await click(app.querySelector('details.letter summary')!);
    const shown = app.querySelector('limb-letter')!;
    await click(byRole(shown, 'button', 'Summary'));
    await shown.updateComplete;
    expect(shown.value).to.match(/Walks his dog\.$/);
  });
});
