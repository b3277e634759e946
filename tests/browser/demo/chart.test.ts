// The chart of a limb after an operation on the patient's page: a round in a few acts, the next one due, a lost signal, undo, a reload.
import { expect } from '@open-wc/testing';
import 'pulse-map';
import '../../../demo/clinic/app.js';
import type { ClinicStore } from '../../../demo/clinic/database.js';
import type { Draft } from '../../../demo/clinic/types.js';
import { emptyChart } from 'pulse-map/elements/limb-observations';
import { clock } from '../../../src/elements/common/clock.js';
import { click, press, setViewport } from '../../tools/real-input.js';
import { openClinic } from '../tools/clinic.js';
import { untilDraft } from '../tools/drafts.js';
import { allByRole, byRole, readableText } from '../tools/perceive.js';
import { until } from '../tools/until.js';

const { now } = clock;
const START = Date.UTC(2026, 9, 28, 13, 0);
let database = '';
let app: HTMLElementTagNameMap['clinic-app'];
let time = START;
const chart = () => app.querySelector('limb-observations')!;
const rows = () => chart().shadowRoot!.querySelectorAll('tbody tr');
const due = () => chart().shadowRoot!.querySelector('.due')?.textContent.trim() ?? '';
const flagged = () =>
  (chart().shadowRoot!.querySelector('limb-flags')?.getBoundingClientRect().height ?? 0) > 5;

async function open(): Promise<void> {
  app = await openClinic('#/patients/lindqvist', database);
}

/** Begins the chart of a leg on a page that has none. */
async function begin(): Promise<void> {
  await open();
  await until(() => allByRole(app, 'button', 'Left leg').length, 'a chart to begin');
  byRole(app, 'button', 'Left leg').focus();
  await press('Enter');
  await until(() => chart()?.shadowRoot?.querySelector('select'), 'the row to enter');
}

/** Enters the Doppler signal and records the round: all that a round needs. */
async function round(signal: string): Promise<void> {
  const before = rows().length;
  const field = chart().shadowRoot!.querySelector<HTMLSelectElement>('select[name=signal]')!;
  field.value = signal;
  field.dispatchEvent(new Event('change', { bubbles: true }));
  // By keys: the visits above are still being drawn, and what is clicked would move.
  byRole(chart(), 'button', 'Record this round').focus();
  await press('Enter');
  await until(() => rows().length === before + 1, 'the round');
}

before(async () => {
  await setViewport({ width: 1200, height: 900 });
  clock.now = () => time;
});
after(() => {
  clock.now = now;
});

describe('a chart on the patient’s page', () => {
  let made = 0;
  beforeEach(() => {
    time = START;
    database = `chart test ${++made}`;
  });
  afterEach(() => {
    app.remove();
    indexedDB.deleteDatabase(database);
  });

  it('takes a round by keys, keeps it over a reload, and says when the next one is due', async () => {
    await begin();
    await round('triphasic');
    expect(due()).to.match(/^Next round due at .*, in 60 min\.$/);
    expect(flagged()).to.equal(false);

    await untilDraft(
      database,
      'chart lindqvist',
      ({ fields }) => fields['chart']?.includes('triphasic'),
      'the round',
    );
    app.remove();
    await open();
    await until(() => chart()?.shadowRoot?.querySelector('tbody tr'), 'the round that was kept');
    time += 75 * 60_000;
    chart().requestUpdate();
    await chart().updateComplete;
    expect(due()).to.match(/^Overdue: .* 15 min late\.$/);
  });

  it('raises the flag of a lost signal, and takes it back with the round', async () => {
    await begin();
    await round('triphasic');
    time += 60 * 60_000;
    await round('absent');
    await until(flagged, 'the flag');
    byRole(chart(), 'button', 'Undo').focus();
    await press('Enter');
    await until(() => rows().length === 1, 'one round less');
    await until(() => !flagged(), 'no flag');
  });
});

describe('a chart that is still being read', () => {
  const BEGIN = 'Left leg';
  let answers: Map<string, { resolve: (draft: Draft | undefined) => void; reject: (error: Error) => void }>;
  let element: HTMLElementTagNameMap['patient-chart'];
  const kept = (limb: 'left' | 'right') =>
    ({ fields: { chart: JSON.stringify(emptyChart({ kind: 'leg', side: limb })) } }) as unknown as Draft;
  const store = {
    draft: (key: string) =>
      new Promise<Draft | undefined>((resolve, reject) => answers.set(key, { resolve, reject })),
  } as unknown as ClinicStore;
  const begins = () => allByRole(element, 'button', BEGIN).length > 0;
  const shown = () => element.querySelector('limb-observations');

  beforeEach(async () => {
    answers = new Map();
    element = document.createElement('patient-chart');
    Object.assign(element, { store, patientId: 'one' });
    document.body.append(element);
    await element.updateComplete;
  });
  afterEach(() => element.remove());

  it('offers none to begin, which would take its place', async () => {
    expect(begins()).to.equal(false);
    expect(readableText(element)).to.match(/Loading/);
    answers.get('chart one')!.resolve(undefined);
    await until(begins, 'the limbs to begin with');
  });

  it('of another patient is never shown', async () => {
    element.patientId = 'two';
    await element.updateComplete;
    answers.get('chart two')!.resolve(kept('right'));
    await until(shown, 'the chart of the second');
    answers.get('chart one')!.resolve(kept('left'));
    await new Promise((done) => setTimeout(done));
    await element.updateComplete;
    expect(shown()!.chart).to.include('right');
  });

  it('and cannot be is said, and read again', async () => {
    answers.get('chart one')!.reject(new Error('the disk is full'));
    await until(() => /cannot be read/.test(readableText(element)), 'the sentence');
    expect(begins()).to.equal(false);
    answers.clear();
    await click(byRole(element, 'button', 'Try again'));
    await until(() => answers.has('chart one'), 'another question');
    answers.get('chart one')!.resolve(kept('left'));
    await until(shown, 'the chart');
    expect(readableText(element)).not.to.match(/cannot be read/);
  });
});
