import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map';
import 'pulse-map/locale/de';
import type { LetterChangeEvent, LetterEdits, LimbLetter } from 'pulse-map/elements/limb-letter';
import { emptyExamination, type Examination, registerLanguage, setPulse } from 'pulse-map/core';
import { summaryOf, summaryText } from 'pulse-map/letter';
import { registeredFor } from '../../../src/locale/languages.js';
import { click, focused, hover, press, setViewport, type as enter } from '../../tools/real-input.js';
import { byRole } from '../tools/perceive.js';
import { until } from '../tools/until.js';

before(() => setViewport({ width: 900, height: 900 }));

const left = (site: 'femoral' | 'popliteal') => ({ site, side: 'left' }) as const;
const record = (popliteal: 'absent' | 'reduced'): Examination =>
  setPulse(setPulse(emptyExamination(), left('femoral'), { grade: 'normal' }), left('popliteal'), {
    grade: popliteal,
  });

async function show(examination: Examination, lang = 'en'): Promise<LimbLetter> {
  const form = await fixture<HTMLFormElement>(
    html`<form><limb-letter name="letter" lang=${lang} .examination=${examination}></limb-letter></form>`,
  );
  const element = form.querySelector('limb-letter')!;
  await element.updateComplete;
  return element;
}

const field = (element: LimbLetter): HTMLTextAreaElement => element.shadowRoot!.querySelector('textarea')!;
const part = (element: LimbLetter, name: string): string =>
  element.shadowRoot!.querySelector(`[part=${name}]`)?.textContent?.replace(/\s+/g, ' ').trim() ?? '';
const submitted = (element: LimbLetter): FormDataEntryValue | null =>
  new FormData(element.form!).get('letter');

/** Puts the caret behind the first occurrence of these words. */
async function caretAt(element: LimbLetter, words: string): Promise<void> {
  const area = field(element);
  area.focus();
  const at = area.value.indexOf(words) + words.length;
  area.setSelectionRange(at, at);
  await press('Shift');
  await element.updateComplete;
}

describe('<limb-letter>', () => {
  it('shows what summaryOf says, in the length that is chosen, and submits it under its own name', async () => {
    const element = await show(record('absent'));
    expect(field(element).value).to.equal(summaryText(summaryOf(record('absent'))));
    await click(byRole(element, 'button', 'Letter'));
    await element.updateComplete;
    const letter = summaryText(summaryOf(record('absent'), { length: 'letter' }));
    expect(field(element).value).to.equal(letter);
    expect(submitted(element)).to.equal(letter);
  });

  it('submits nothing and says so while nothing is recorded', async () => {
    const element = await show(emptyExamination());
    expect(element.shadowRoot!.textContent).to.contain('Nothing recorded yet.');
    expect(submitted(element)).to.equal(null);
  });

  it('says in words what the sentence at the caret comes from', async () => {
    const element = await show(record('absent'));
    await caretAt(element, 'In the left leg');
    const from = part(element, 'from');
    expect(from).to.contain('This sentence comes from:');
    expect(from).to.match(/left femoral: 2, normal/i);
    expect(from).to.match(/left popliteal: 0, absent/i);
  });

  it('says so of the sentence under the pointer, too', async () => {
    const element = await show(record('absent'));
    await click(byRole(element, 'button', 'Summary'));
    const { left, top } = field(element).getBoundingClientRect();
    await hover([left + 40, top + 24]);
    await until(() => part(element, 'from').includes('This sentence comes from:'), 'its findings');
    expect(part(element, 'from')).to.match(/left (femoral|popliteal): /i);
    await hover([left + 40, top - 30]);
    await until(() => part(element, 'from').startsWith('Put the caret'), 'how it is asked');
  });

  it('tells each sentence that the record says otherwise since, and puts it in or out in one act', async () => {
    const element = await show(record('absent'));
    const told: LetterEdits[] = [];
    element.addEventListener('letter-change', (event) => told.push((event as LetterChangeEvent).edits));
    const then = summaryOf(record('absent')).paragraphs.flatMap(({ sentences }) => sentences);
    const now = summaryOf(record('reduced')).paragraphs.flatMap(({ sentences }) => sentences);
    field(element).focus();
    await press('Control+End');
    await enter(' Mine.');
    element.examination = record('reduced');
    await element.updateComplete;
    const gone = then.map(({ text }) => text).filter((text) => !now.some((one) => one.text === text));
    const added = now.map(({ text }) => text).filter((text) => !then.some((one) => one.text === text));
    expect(added.length).to.be.above(0);
    for (const text of [...gone, ...added]) expect(part(element, 'changed')).to.contain(text);
    expect(part(element, 'changed')).to.contain('Not in this text:');
    for (const text of gone) {
      await click(byRole(element, 'button', `Take out: ${text}`));
      await element.updateComplete;
    }
    for (const text of added) {
      await click(byRole(element, 'button', `Add: ${text}`));
      await element.updateComplete;
      expect(focused()).to.equal(field(element));
    }
    expect(part(element, 'changed')).to.equal('');
    for (const text of added) expect(field(element).value).to.contain(text);
    for (const text of gone) expect(field(element).value).not.to.contain(text);
    expect(field(element).value).to.contain('Mine.');
    expect(submitted(element)).to.equal(field(element).value);
    await expect(element).to.be.accessible();

    // What the page was told stands again where the page sets it.
    const again = await show(record('reduced'));
    again.edits = JSON.parse(JSON.stringify(told.at(-1))) as LetterEdits;
    await again.updateComplete;
    expect(field(again).value).to.equal(field(element).value);
    expect(submitted(again)).to.equal(submitted(element));
  });

  it('keeps what a person wrote when the record changes, says so, and takes the new text only when told', async () => {
    const element = await show(record('absent'));
    const events: string[] = [];
    element.addEventListener('input', () => events.push('input'));
    field(element).focus();
    await press('End');
    await enter('Mine. ');
    await element.updateComplete;
    const mine = field(element).value;
    expect(mine).to.contain('Mine. ');
    expect(events.length).to.be.greaterThan(0);
    expect(submitted(element)).to.equal(mine);

    element.examination = record('reduced');
    await element.updateComplete;
    expect(field(element).value).to.equal(mine);
    expect(part(element, 'changed')).to.contain('The record has changed since you wrote.');

    await click(byRole(element, 'button', 'Keep mine'));
    await element.updateComplete;
    expect(part(element, 'changed')).to.equal('');
    expect(field(element).value).to.equal(mine);

    element.examination = record('absent');
    await element.updateComplete;
    await click(byRole(element, 'button', 'Take the new text'));
    await element.updateComplete;
    expect(field(element).value).to.equal(summaryText(summaryOf(record('absent'))));
    expect(submitted(element)).to.equal(field(element).value);
  });

  it('follows the record while nobody wrote, and goes back to it on reset', async () => {
    const element = await show(record('absent'));
    element.examination = record('reduced');
    await element.updateComplete;
    expect(field(element).value).to.equal(summaryText(summaryOf(record('reduced'))));
    field(element).focus();
    await enter('x');
    await element.updateComplete;
    element.form!.reset();
    await element.updateComplete;
    expect(field(element).value).to.equal(summaryText(summaryOf(record('reduced'))));
  });

  it('copies text and HTML in one act, as it stands', async () => {
    const element = await show(record('absent'));
    const copied: ClipboardItems[] = [];
    const { clipboard } = navigator;
    const write = clipboard.write.bind(clipboard);
    clipboard.write = (items) => Promise.resolve(void copied.push(items as ClipboardItems));
    try {
      await click(byRole(element, 'button', 'Copy text'));
      await element.updateComplete;
      await click(byRole(element, 'button', 'Copy table of sites'));
      await element.updateComplete;
    } finally {
      clipboard.write = write;
    }
    const text = async (i: number, type: string): Promise<string> =>
      (await copied[i]![0]!.getType(type)).text();
    expect(await text(0, 'text/plain')).to.equal(field(element).value);
    expect(await text(0, 'text/html')).to.contain('<p>');
    expect(await text(1, 'text/html')).to.contain('<table');
    expect(await text(1, 'text/plain')).to.contain('Popliteal');
    expect(element.shadowRoot!.textContent).to.contain('Table copied.');
  });

  it('says of no other text that it was copied', async () => {
    const element = await show(record('absent'));
    const { clipboard } = navigator;
    const write = clipboard.write.bind(clipboard);
    let copied: () => void = () => undefined;
    clipboard.write = () => new Promise((done) => (copied = done));
    const said = (): string => element.shadowRoot!.querySelector('p[role=status]')!.textContent!.trim();
    try {
      for (const other of [
        () => void (element.examination = record('reduced')),
        () => click(byRole(element, 'button', 'Letter')),
        () => void (element.lang = 'de'),
      ]) {
        await click(byRole(element, 'button', /^(Copy text|Text kopieren)$/));
        copied();
        await element.updateComplete;
        await until(() => said() !== '', 'the text was copied');
        await other();
        await element.updateComplete;
        expect(said()).to.equal('');
      }
      await click(byRole(element, 'button', 'Text kopieren'));
      element.examination = record('absent');
      copied();
      await element.updateComplete;
      expect(said(), 'another text came while it was copied').to.equal('');
    } finally {
      clipboard.write = write;
    }
  });

  it('speaks German, and is accessible in every length', async () => {
    const element = await show(record('absent'), 'de');
    for (const name of ['Eine Zeile', 'Kurzfassung', 'Arztbrief', 'Übergabe']) {
      await click(byRole(element, 'button', name));
      await element.updateComplete;
      await expect(element).to.be.accessible();
    }
    expect(field(element).value).to.contain('Beurteilung');
  });

  it('is put into a language that is fetched after it was asked for', async () => {
    const element = await show(record('absent'), 'gsw');
    expect(field(element).value).to.include('left leg');
    registerLanguage('gsw', registeredFor('de')!);
    await element.updateComplete;
    expect(field(element).value).to.include('Linkes Bein').and.not.include('left leg');
    expect(submitted(element)).to.equal(field(element).value);
  });
});
