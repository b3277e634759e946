import { expect } from '@open-wc/testing';
import { ClinicStore } from '../../../demo/clinic/database.js';
import { draftKey, type VisitFields } from '../../../demo/clinic/types.js';
import 'pulse-map';
import '../../../demo/clinic/app.js';
import { click, emulate, focused, press, setViewport, type } from '../../tools/real-input.js';
import { openClinic, withClinicStyle } from '../tools/clinic.js';
import { untilDraft } from '../tools/drafts.js';
import { settled } from '../tools/map.js';
import { namedIn, oneIn } from '../tools/named.js';
import { until } from '../tools/until.js';
import { visitButtons } from '../tools/visits.js';
let app: HTMLElementTagNameMap['clinic-app'];
let database: string;
let made = 0;
const MEDICINE = 'Aspirin 75 mg';
const names = new Set<string>();
const all = (selector: string, name: string | RegExp) => namedIn(app, selector, name);
const one = <E extends Element>(selector: string, name: string | RegExp) => oneIn<E>(app, selector, name);
const button = (name: string | RegExp) => one<HTMLButtonElement>('button', name);
const link = (name: string | RegExp) => one<HTMLAnchorElement>('a', name);
const heading = () => app.querySelector('main h1')?.textContent?.replace(/\s+/g, ' ').trim() ?? '';
const said = () => app.querySelector('.said')?.textContent ?? '';
const shows = (title: string) => until(() => heading() === title, `the page "${title}"`);
const field = (label: string) => {
  const text = one<HTMLLabelElement>('label', new RegExp(`^${label}( optional)?$`));
  return app.querySelector<HTMLInputElement>(`#${text.htmlFor}`) as HTMLInputElement;
};
const visits = () => visitButtons(app);
const map = () => app.querySelector('pulse-map') as HTMLElementTagNameMap['pulse-map'];
const reported = () => app.querySelector('limb-report')?.shadowRoot?.textContent?.replace(/\s+/g, ' ') ?? '';
async function mount(hash: string, open?: (name: string) => Promise<ClinicStore>): Promise<void> {
  app = await openClinic(hash, database, open);
}

/** What a reload does: every script object goes, the database and the address stay. */
async function reload(): Promise<void> {
  app.remove();
  await mount(location.hash);
}

async function fillIn(): Promise<void> {
  await click(field('Examiner'));
  await type('A. Tester');
  field('Reason for visit').focus();
  await press('f');
  await click(field('Medicines'));
  await type(MEDICINE);
}

/** Waits until the draft of a new visit holds what was entered. */
const kept = (patient: string, entered: VisitFields) =>
  untilDraft(
    database,
    draftKey(patient),
    ({ fields }) => Object.entries(entered).every(([name, text]) => fields[name] === text),
    Object.keys(entered).join(),
  );

/** States every pulse as normal, portion by portion. */
async function allNormal(): Promise<void> {
  await click(await mapButton(/^\s*Mark normal/));
  for (const portion of ['Head', 'Right arm', 'Left arm', 'Abdomen', 'Right leg', 'Left leg'])
    await click(await mapButton(new RegExp(`^\\s*${portion}[^:]*: \\d pulses? normal`)));
  // The list closes and hands the focus back before anything else is pressed.
  await settled(map());
}

async function mapButton(name: RegExp): Promise<HTMLElement> {
  await map().updateComplete;
  const found = () =>
    [...(map().shadowRoot?.querySelectorAll('button') ?? [])].find((b) => name.test(b.textContent ?? ''));
  await until(found, `the button ${String(name)} in the map`);
  return found()!;
}

withClinicStyle();

beforeEach(async () => {
  await setViewport({ width: 1280, height: 900 });
  made += 1;
  database = `clinic test ${made}`;
  names.add(database);
});

afterEach(async () => {
  app.remove();
  await emulate({});
});

after(async () => {
  for (const name of names) {
    await new Promise((done) => {
      const request = indexedDB.deleteDatabase(name);
      request.onsuccess = request.onerror = request.onblocked = done;
    });
  }
});

describe('the clinic’s record', () => {
  it('shows the worst red flag in both lists and first on the visit, in words', async () => {
    await mount('#/');
    await shows('Patients');
    expect(link(/^Tobias Okafor/).textContent).to.match(/Now: .*right leg/);
    expect(link(/^Ines Caldeira/).textContent).not.to.match(/Now:/);
    await click(link(/^Tobias Okafor/));
    await shows('Tobias Okafor');
    await until(() => visits().length === 1, 'the visit');
    expect(visits()[0]!.textContent).to.match(/Now: .*right leg/);
    // The visits lie in a shadow tree, of which an engine may say either order.
    const precedes = (first: Element | null, then: Element | null | undefined): boolean =>
      Boolean(first && then && first.compareDocumentPosition(then) & Node.DOCUMENT_POSITION_FOLLOWING);
    const flag = (): Element | null => app.querySelector('main > .flag-line');
    await until(() => precedes(flag(), app.querySelector('limb-visits')), 'the flag before the visits');
    expect(flag()?.textContent).to.match(/Now: .*right leg/);
    await click(visits()[0]!);
    await shows('Visit of 2 November 2026');
    await until(() => precedes(flag(), app.querySelector('#examination')), 'the flag before the examination');
    expect(flag()?.textContent).to.match(/Now: .*right leg/);
  });

  it('takes a visit from the list to the form, through a reload, to the saved visit and its deletion', async () => {
    await mount('#/');
    await shows('Patients');
    expect(all('ul.rows a', /./).length).to.equal(3);
    await click(link(/^Tobias Okafor/));
    await shows('Tobias Okafor');
    expect(document.title).to.equal('Tobias Okafor · Alder Row Clinic');
    expect(focused()).to.equal(app.querySelector('h1'));
    await click(link('New visit'));
    await shows('New visit');

    await fillIn();
    await allNormal();
    const recorded = map().value;
    expect(JSON.parse(recorded).pulses.femoral).to.deep.equal({
      right: { grade: 'normal' },
      left: { grade: 'normal' },
    });
    await kept('okafor', { medicines: MEDICINE, pulses: recorded });
    await until(() => /Draft kept/.test(app.textContent ?? ''), 'word of the draft');

    await reload();
    await shows('New visit');
    expect(app.querySelector('.notice')?.textContent).to.match(/You left this unfinished/);
    expect(field('Examiner').value).to.equal('A. Tester');
    expect(field('Medicines').value).to.equal(MEDICINE);
    expect(map().value).to.equal(recorded);

    await click(button('Save visit'));
    await shows('Tobias Okafor');
    await until(() => /^Visit of .* saved\.$/.test(said()), 'word of the save');
    await until(() => visits().length === 2, '2 visits');

    await reload();
    await shows('Tobias Okafor');
    expect(link('New visit').textContent).not.to.match(/unfinished/);
    await until(() => visits().length === 2, 'the visits');
    await click(visits()[1]!);
    await until(() => heading().startsWith('Visit of'), 'the saved visit');
    expect(app.textContent).to.contain(MEDICINE);
    expect(map(), 'no form').to.equal(null);
    await until(() => /left leg|head and neck/i.test(reported()), 'the report of what was recorded');
    expect(reported()).to.contain('A. Tester');
    // The record has no time; the visit has its day.
    expect(reported()).to.match(/\d{4}, time not recorded/);

    await click(button('Delete'));
    await until(() => focused()?.textContent?.trim() === 'Keep it', 'the safe answer in focus');
    await press('Escape');
    await until(() => focused() === button('Delete'), 'the focus back on its button');
    await click(button('Delete'));
    await until(() => all('button', 'Delete the visit').length === 1, 'the question');
    await click(button('Delete the visit'));
    await shows('Tobias Okafor');
    await until(() => /deleted\.$/.test(said()), 'word of the deletion');
    await until(() => visits().length === 1, '1 visits');
    await reload();
    await shows('Tobias Okafor');
    await until(() => visits().length === 1, '1 visits');
  });

  it('offers the map alone or the whole examination, and goes on with what was recorded', async () => {
    await mount('#/patients/lindqvist/visits/new');
    await shows('New visit');
    await allNormal();
    const recorded = map().value;
    const whole = [...app.querySelectorAll<HTMLInputElement>('input[type=radio]')].find((radio) =>
      /Whole examination/.test(radio.closest('label')?.textContent ?? ''),
    );
    await click(whole as HTMLInputElement);
    const control = () => app.querySelector('limb-examination') as HTMLElementTagNameMap['limb-examination'];
    await until(() => control()?.value === recorded, 'the whole examination with the recorded pulses');
    expect(map()).to.equal(null);
    await kept('lindqvist', { pulses: recorded, extent: 'whole' });

    await reload();
    await shows('New visit');
    await until(() => control()?.value === recorded, 'the whole examination again');
    expect(control().earlier?.pulses, 'the visit before').to.be.an('object');
  });

  it('speaks German in the examination when asked to, after a reload too, and loses nothing', async () => {
    await mount('#/patients/lindqvist/visits/new');
    await shows('New visit');
    await allNormal();
    const recorded = map().value;
    const choice = (): HTMLSelectElement => app.querySelector('.language select') as HTMLSelectElement;
    choice().focus();
    await press('ArrowDown');
    expect(choice().value).to.equal('de');
    const speaks = (words: string) =>
      until(() => map()?.shadowRoot?.textContent?.includes(words), `a map that says "${words}"`);
    await speaks('Normal setzen');
    expect(map().value).to.equal(recorded);
    await kept('lindqvist', { pulses: recorded });

    await reload();
    await shows('New visit');
    await speaks('Normal setzen');
    choice().focus();
    await press('ArrowUp');
    await speaks('Mark normal');
  });

  it('asks for what is required before it saves', async () => {
    await mount('#/patients/okafor/visits/new');
    await shows('New visit');
    await click(button('Save visit'));
    await until(() => focused() === field('Examiner'), 'the focus on the first missing answer');
    expect(heading()).to.equal('New visit');
  });

  it('discards a draft only after asking, and then begins anew', async () => {
    await mount('#/patients/okafor/visits/new');
    await shows('New visit');
    await fillIn();
    await kept('okafor', { medicines: MEDICINE });
    await reload();
    await shows('New visit');
    await click(button('Discard the draft'));
    await until(() => all('button', 'Discard').length === 1, 'the question');
    expect(field('Examiner').value).to.equal('A. Tester');
    await click(button('Discard'));
    await until(() => field('Examiner').value === '', 'an empty form');
    expect(app.querySelector('.notice')).to.equal(null);
    await reload();
    await shows('New visit');
    expect(field('Examiner').value).to.equal('');
  });

  it('shows a patient’s unfinished visit in the list and on the patient’s page', async () => {
    await mount('#/patients/caldeira/visits/new');
    await shows('New visit');
    await fillIn();
    await kept('caldeira', { medicines: MEDICINE });
    await click(link('Back, and keep the draft'));
    await shows('Ines Caldeira');
    expect(link('Continue draft')).to.be.instanceOf(HTMLAnchorElement);
    await click(one('nav a', 'About this demonstration'));
    await shows('About this demonstration');
    await click(one('header nav a', 'Patients'));
    await shows('Patients');
    expect(link(/^Ines Caldeira/).textContent).to.contain('visit unfinished');
  });

  it('empties and fills a patient’s list, and puts the invented patients back', async () => {
    await mount('#/patients/caldeira/visits/caldeira-1');
    await shows('Visit of 15 September 2026');
    await click(button('Delete'));
    await until(() => all('button', 'Delete the visit').length === 1, 'the question');
    await click(button('Delete the visit'));
    await until(() => app.querySelector('.empty') !== null, 'the empty list');
    expect(app.querySelector('.empty')?.textContent).to.contain('No visit yet');
    await until(() => focused() === app.querySelector('h1'), 'the focus on the page’s heading');
    await click(one('header nav a', 'About this demonstration'));
    await shows('About this demonstration');
    await click(button('Start again'));
    await until(() => all('button', 'Forget and start again').length === 1, 'the question');
    await click(button('Forget and start again'));
    await shows('Patients');
    await until(() => /back as they were/.test(said()), 'word of it');
    expect(link(/^Ines Caldeira/).textContent).to.contain('Last seen 15 September 2026');
  });
});

describe('when the database fails', () => {
  it('says so, says why, and tries again', async () => {
    // A newer version of the page has been here: the browser refuses to open the older one.
    await new Promise((done) => {
      const request = indexedDB.open(database, 99);
      request.onsuccess = () => {
        request.result.close();
        done(undefined);
      };
    });
    await mount('#/');
    await shows('The records cannot be reached');
    expect(app.querySelector('[role=alert]')?.textContent).to.match(/version/i);
    expect(document.title).to.contain('Records cannot be reached');
    await new Promise((done) => {
      indexedDB.deleteDatabase(database).onsuccess = done;
    });
    await click(button('Try again'));
    await shows('Patients');
  });

  it('keeps everything in the form when a visit cannot be saved', async () => {
    let full = true;
    await mount('#/patients/okafor/visits/new', async (name) => {
      const store = await ClinicStore.open(name);
      const save = store.saveVisit.bind(store);
      store.saveVisit = (visit, draft) =>
        full ? Promise.reject(new Error('disk full')) : save(visit, draft);
      return store;
    });
    await shows('New visit');
    await fillIn();
    await click(button('Save visit'));
    await until(() => /The visit was not saved/.test(app.textContent ?? ''), 'the error');
    expect(app.querySelector('form [role=alert]')?.textContent).to.contain('disk full');
    expect(field('Examiner').value).to.equal('A. Tester');
    full = false;
    await click(button('Save visit'));
    await shows('Tobias Okafor');
    await until(() => visits().length === 2, '2 visits');
  });

  it('shows that it is loading until the database answers', async () => {
    let answer: (() => void) | undefined;
    const gate = new Promise<void>((done) => (answer = done));
    await mount('#/', async (name) => {
      await gate;
      return ClinicStore.open(name);
    });
    await app.updateComplete;
    expect(app.querySelector('main')?.getAttribute('aria-busy')).to.equal('true');
    expect(app.querySelector('main [role=status]')?.textContent).to.contain('Loading');
    answer?.();
    await shows('Patients');
  });
});

describe('an address that leads nowhere', () => {
  for (const hash of [
    '#/nowhere',
    '#/patients/nobody',
    '#/patients/okafor/visits/gone',
    '#/patients/okafor/visits/lindqvist-1',
  ]) {
    it(`is told, and leads back: ${hash}`, async () => {
      await mount(hash);
      await shows('Not found');
      await click(link('To the patients'));
      await shows('Patients');
    });
  }
});

describe('accessibility of the clinic’s pages', () => {
  const LOOKS = [
    ['light', { colorScheme: 'light' }],
    ['dark', { colorScheme: 'dark' }],
    ['forced colours', { forcedColors: 'active' }],
  ] as const;
  const pages: [string, string][] = [
    ['#/', 'Patients'],
    ['#/about', 'About this demonstration'],
    ['#/patients/lindqvist', 'Marta Lindqvist'],
    ['#/patients/lindqvist/visits/lindqvist-2', 'Visit of 6 October 2026'],
    ['#/patients/okafor/visits/new', 'New visit'],
  ];
  for (const [hash, title] of pages) {
    for (const [name, settings] of LOOKS) {
      it(`has nothing for axe to find on "${title}", ${name}`, async () => {
        await emulate(settings);
        await mount(hash);
        await shows(title);
        await expect(app).to.be.accessible();
      });
    }
    it(`fits "${title}" on a phone of 320 px`, async () => {
      await setViewport({ width: 320, height: 700 });
      await mount(hash);
      await shows(title);
      await until(() => document.documentElement.scrollWidth <= 320, 'no sideways scrolling');
    });
  }
});
