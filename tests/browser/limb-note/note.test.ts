import { expect, fixture, fixtureCleanup, html } from '@open-wc/testing';
import 'pulse-map';
import 'pulse-map/locale/de';
import type { LimbNote } from 'pulse-map/elements/limb-note';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { emptyExamination, type Examination, setPulse } from 'pulse-map/core';
import { click, press, type } from '../../tools/real-input.js';
import { allByRole, byRole, nameOf } from '../tools/perceive.js';
import { until } from '../tools/until.js';

interface Page {
  readonly note: LimbNote;
  readonly map: PulseMap;
}

async function open(value: Examination | '' = '', lang = 'en'): Promise<Page> {
  fixtureCleanup();
  const page = await fixture<HTMLElement>(
    html`<main lang=${lang}>
      <limb-note for="map"></limb-note>
      <pulse-map id="map" .value=${value}></pulse-map>
    </main>`,
  );
  const note = page.querySelector('limb-note')!;
  const map = page.querySelector('pulse-map')!;
  await until(() => note.store === map.store, 'one record for both');
  return { note, map };
}

/** Types a note as a person does, and waits until all of it has been read back. */
async function write({ note }: Page, text: string): Promise<void> {
  byRole(note, 'textbox').focus();
  await type(text);
  await until(() => note.text === text && /\bread\b|gelesen/.test(said(note)), 'read back');
  await note.updateComplete;
}

const said = (note: LimbNote): string =>
  [...note.shadowRoot!.querySelectorAll('.said')].map(({ textContent }) => textContent.trim()).join(' ');
const understood = (note: LimbNote): string[] =>
  [...note.shadowRoot!.querySelectorAll('[part=findings] .finding')].map((one) => one.textContent.trim());
const question = (note: LimbNote, number: number): HTMLFieldSetElement =>
  note.shadowRoot!.querySelector<HTMLFieldSetElement>(`#question-${number}`)!;
const choices = (of: HTMLFieldSetElement): HTMLInputElement[] => [...of.querySelectorAll('input')];
const labels = (of: HTMLFieldSetElement): string[] => choices(of).map(nameOf);
const grade = ({ map }: Page, site: 'femoral' | 'popliteal' | 'dorsalis-pedis', side: 'left' | 'right') =>
  map.examination.pulses?.[site]?.[side]?.grade;

describe('<limb-note>', () => {
  it('reads as one types, writes nothing before it is recorded, and then in one step', async () => {
    const page = await open();
    const { note, map } = page;
    await write(page, 'left femoral 2, left popliteal absent, bruit over left femoral');
    expect(understood(note)).to.deep.equal([
      'Left femoral: 2, normal',
      'Left popliteal: 0, absent',
      'Left femoral: systolic bruit',
    ]);
    expect(map.value).to.equal('');
    await expect(note).to.be.accessible();

    let changes = 0;
    map.addEventListener('change', () => changes++);
    await click(byRole(note, 'button', 'Record 3 findings'));
    expect(grade(page, 'femoral', 'left')).to.equal('normal');
    expect(grade(page, 'popliteal', 'left')).to.equal('absent');
    expect(map.examination.bruits?.femoral?.left?.bruit).to.equal('systolic');
    expect(changes).to.equal(1);
    await note.updateComplete;
    expect(said(note)).to.equal('3 findings recorded from the note.');

    await click(byRole(note, 'button', 'Undo all 3'));
    expect(map.value).to.equal('');
    await note.updateComplete;
    expect(byRole<HTMLTextAreaElement>(note, 'textbox').value).to.include('bruit over left femoral');
  });

  it('records by keys alone, and the field is ready for the next note', async () => {
    const page = await open();
    await write(page, 'right femoral absent');
    await press('Control+Enter');
    expect(grade(page, 'femoral', 'right')).to.equal('absent');
    await page.note.updateComplete;
    const field = byRole<HTMLTextAreaElement>(page.note, 'textbox');
    expect(field.value).to.equal('');
    expect(page.note.shadowRoot!.activeElement === field).to.equal(true);
  });

  it('asks what is in doubt, and does not record while a question is open', async () => {
    const page = await open();
    const { note } = page;
    await write(page, 'fem 2/4 left, right popliteal absent');
    expect(labels(question(note, 1))).to.deep.equal([
      'Left femoral: 2, normal',
      'Left femoral: 1, reduced',
      'Leave out',
    ]);
    expect(choices(question(note, 1)).some(({ checked }) => checked)).to.equal(false);

    await click(byRole(note, 'button', 'Record 1 finding'));
    await note.updateComplete;
    expect(page.map.value).to.equal('');
    expect(note.shadowRoot!.querySelector('[role=alert]')!.textContent.trim()).to.equal(
      'Question 1 is open: choose an answer, or leave it out.',
    );
    expect(note.shadowRoot!.activeElement === choices(question(note, 1))[0]).to.equal(true);

    await click(choices(question(note, 1))[1]!);
    await click(byRole(note, 'button', 'Record 2 findings'));
    expect(grade(page, 'femoral', 'left')).to.equal('reduced');
    expect(grade(page, 'popliteal', 'right')).to.equal('absent');
  });

  it('takes the likeliest where nothing can turn out worse, shows it as asked, and keeps the answer while the note is mended', async () => {
    const page = await open();
    const { note } = page;
    await write(page, 'left DP present');
    expect(choices(question(note, 1)).map(({ checked }) => checked)).to.deep.equal([true, false, false]);
    await click(choices(question(note, 1))[1]!);
    byRole(note, 'textbox').focus();
    await press('Control+End');
    await type(', left femoral absent');
    await until(() => understood(note).length === 1, 'the second finding');
    expect(choices(question(note, 1)).map(({ checked }) => checked)).to.deep.equal([false, true, false]);
    await press('Control+Enter');
    expect(grade(page, 'dorsalis-pedis', 'left')).to.equal('reduced');
  });

  it('replaces nothing recorded unless that is ticked', async () => {
    const record = setPulse(emptyExamination(), { site: 'femoral', side: 'left' }, { grade: 'normal' });
    const page = await open(record);
    const { note } = page;
    await write(page, 'left femoral absent, left popliteal absent');
    expect(note.shadowRoot!.querySelector('.instead')!.textContent).to.include('The record says: 2, normal.');
    await click(byRole(note, 'button', 'Record 1 finding'));
    expect(grade(page, 'femoral', 'left')).to.equal('normal');
    expect(grade(page, 'popliteal', 'left')).to.equal('absent');

    await write(page, 'left femoral absent, left popliteal absent');
    expect(note.shadowRoot!.textContent).to.include('recorded already');
    await click(note.shadowRoot!.querySelector('[type=checkbox]')!);
    await click(byRole(note, 'button', 'Record 1 finding'));
    expect(grade(page, 'femoral', 'left')).to.equal('absent');
  });

  it('names what was not understood', async () => {
    const page = await open();
    await write(page, 'left femoral absent, xyzzy');
    expect(said(page.note)).to.equal('1 finding read, 1 passage not understood.');
    expect(page.note.shadowRoot!.querySelector('.passages')!.textContent).to.include('xyzzy');
  });

  it('reads German where the page speaks it', async () => {
    const page = await open('', 'de');
    await write(page, 'Leistenpuls links nicht tastbar');
    expect(understood(page.note)).to.deep.equal(['Femoralis links: 0, fehlend']);
    await click(byRole(page.note, 'button', '1 Befund übernehmen'));
    expect(grade(page, 'femoral', 'left')).to.equal('absent');
  });

  it('hands a page the text that stands in it, and takes it back', async () => {
    const page = await open();
    let told = 0;
    page.note.addEventListener('unfinished-change', () => told++);
    await write(page, 'left');
    expect(told).to.equal(4);
    const kept = page.note.unfinished;
    const other = await open();
    other.note.unfinished = kept;
    await other.note.updateComplete;
    expect(byRole<HTMLTextAreaElement>(other.note, 'textbox').value).to.equal('left');
  });

  it('offers nothing where the record can only be read', async () => {
    const page = await open();
    page.note.readOnly = true;
    await page.note.updateComplete;
    expect(page.note.shadowRoot!.querySelector('textarea')).to.equal(null);
  });

  it('lays the marks under the very letters they are about', async () => {
    const page = await open();
    await page.note.updateComplete;
    page.note.style.inlineSize = '320px';
    await write(
      page,
      'right leg all normal, left femoral 2, left popliteal and both left pedals absent, xyzzy',
    );
    const field = byRole<HTMLTextAreaElement>(page.note, 'textbox');
    const marks = page.note.shadowRoot!.querySelector<HTMLElement>('.marks')!;
    expect(field.scrollHeight).to.be.at.most(field.clientHeight + 1);
    expect(Math.abs(marks.scrollHeight - field.clientHeight)).to.be.at.most(1);
  });
});

describe('<limb-note> alone', () => {
  it('is a control of a form with a record of its own', async () => {
    const form = await fixture<HTMLFormElement>(
      html`<form lang="en"><limb-note name="record"></limb-note></form>`,
    );
    const note = form.querySelector('limb-note')!;
    await write({ note, map: note as never }, 'left femoral absent');
    await press('Control+Enter');
    const record = JSON.parse(new FormData(form).get('record') as string) as Examination;
    expect(record.pulses?.femoral?.left?.grade).to.equal('absent');
  });
});

/** Stands in for a browser that recognises speech; it says what it is told to. */
class FakeRecognition extends EventTarget {
  static made: FakeRecognition[] = [];
  static answer = 'available';
  static asked: unknown[] = [];
  static available(options: unknown): Promise<string> {
    FakeRecognition.asked.push(options);
    return Promise.resolve(FakeRecognition.answer);
  }
  get processLocally(): boolean {
    return this.local;
  }
  set processLocally(local: boolean) {
    this.local = local;
  }
  local = false;
  lang = '';
  started = false;
  constructor() {
    super();
    FakeRecognition.made.push(this);
  }
  start(): void {
    this.started = true;
  }
  stop(): void {
    this.dispatchEvent(new Event('end'));
  }
  say(words: string): void {
    const results = [{ isFinal: true, 0: { transcript: words } }];
    this.dispatchEvent(Object.assign(new Event('result'), { resultIndex: 0, results }));
  }
}

describe('dictation in <limb-note>', () => {
  const own = (globalThis as { SpeechRecognition?: unknown }).SpeechRecognition;
  beforeEach(() => {
    FakeRecognition.made = [];
    FakeRecognition.asked = [];
    FakeRecognition.answer = 'available';
    Object.assign(globalThis, { SpeechRecognition: FakeRecognition });
  });
  afterEach(() => void Object.assign(globalThis, { SpeechRecognition: own }));

  it('is offered only where the browser recognises speech on the device itself', async () => {
    for (const answer of ['downloadable', 'downloading', 'unavailable']) {
      FakeRecognition.asked = [];
      FakeRecognition.answer = answer;
      const { note } = await open();
      await until(() => FakeRecognition.asked.length, 'asked');
      await note.updateComplete;
      expect(allByRole(note, 'button', 'Dictate'), answer).to.have.length(0);
    }
    expect(FakeRecognition.asked[0]).to.deep.equal({ langs: ['en'], processLocally: true });
  });

  it('writes what was said into the note, on the device, and reads it', async () => {
    const { note } = await open();
    await until(() => allByRole(note, 'button', 'Dictate').length, 'the microphone');
    await click(byRole(note, 'button', 'Dictate'));
    const [heard] = FakeRecognition.made;
    expect([heard!.started, heard!.local, heard!.lang]).to.deep.equal([true, true, 'en']);
    heard!.say('left femoral pulse absent');
    heard!.say('left popliteal absent');
    await until(() => understood(note).length === 2, 'both findings');
    await click(byRole(note, 'button', 'Stop dictating'));
    await note.updateComplete;
    expect(allByRole(note, 'button', 'Dictate')).to.have.length(1);
  });
});
