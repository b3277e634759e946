import { expect, fixture, html } from '@open-wc/testing';
import type { PulseLesson } from '../../../src/elements/pulse-lesson/element.js';
import type { PulseLessonEditor } from '../../../src/elements/pulse-lesson-editor/element.js';
import '../../../src/elements/pulse-lesson-editor/define.js';
import '../../../src/locale/de/register.js';
import { parseLessonText, shippedLessonInput } from '../../../src/lesson/index.js';
import { click, press, type } from '../../tools/real-input.js';
import { handedOver } from '../tools/handed-over.js';
import { until } from '../tools/until.js';

const KEEP = 'editor-test';
const KEPT = `pulse-lesson-editor:${KEEP}`;

async function editor(lang = 'en', keep?: string): Promise<PulseLessonEditor> {
  const element = await fixture<PulseLessonEditor>(
    html`<pulse-lesson-editor lang=${lang} .keep=${keep}></pulse-lesson-editor>`,
  );
  await element.updateComplete;
  return element;
}
const inside = <T extends Element>(element: PulseLessonEditor, selector: string): T =>
  element.shadowRoot!.querySelector<T>(selector)!;
const field = (element: PulseLessonEditor): HTMLTextAreaElement => inside(element, 'textarea');
const button = (element: PulseLessonEditor, name: string): HTMLButtonElement =>
  [...element.shadowRoot!.querySelectorAll('button')].find((one) => one.textContent?.trim() === name)!;
const preview = (element: PulseLessonEditor): PulseLesson | null =>
  element.shadowRoot!.querySelector('pulse-lesson');
const told = (element: PulseLessonEditor): string =>
  inside(element, '[role=status]').textContent!.replace(/\s+/g, ' ').trim();

const sample = async (): Promise<string> =>
  JSON.stringify(await shippedLessonInput('embolus-groin'), null, 2);

describe('the editor of lessons', () => {
  afterEach(() => localStorage.removeItem(KEPT));

  it('begins a lesson by keys alone, and the preview follows what is typed', async () => {
    const element = await editor();
    inside<HTMLSelectElement>(element, 'select').focus();
    await press('ArrowDown');
    await until(() => preview(element), 'a lesson is begun');
    expect(told(element)).to.equal('This is a lesson. The preview shows it.');
    const text = field(element);
    text.focus();
    const at = text.value.indexOf('New lesson');
    text.setSelectionRange(at, at + 'New lesson'.length);
    await type('A cold foot');
    await preview(element)!.updateComplete;
    await until(
      () => preview(element)!.shadowRoot!.querySelector('.slide h2')?.textContent === 'A cold foot',
      'the slide shows the new title',
    );
    expect(element.lesson!.title.en).to.equal('A cold foot');
  });

  it('tells what is wrong by place, path and expectation, leads there, and keeps the last lesson in view', async () => {
    const element = await editor();
    element.value = await sample();
    await element.updateComplete;
    const before = preview(element)!.lesson;
    element.value = element.value.replace('"embolus-groin"', '"Embolus groin"');
    await element.updateComplete;
    expect(told(element)).to.equal('One thing to mend:');
    expect(element.lesson).to.equal(undefined);
    const fault = inside<HTMLButtonElement>(element, '.faults button');
    expect(fault.textContent!.replace(/\s+/g, ' ').trim()).to.equal(
      'Line 3, column 9id: found "Embolus groin"; expected small letters, digits and single hyphens.',
    );
    expect(field(element).getAttribute('aria-invalid')).to.equal('true');
    await click(fault);
    expect(element.shadowRoot!.activeElement === field(element)).to.equal(true);
    const { value, selectionStart, selectionEnd } = field(element);
    expect(value.slice(selectionStart, selectionEnd)).to.equal('"Embolus groin",');
    expect(preview(element)!.lesson === before).to.equal(true);
    expect(element.shadowRoot!.textContent).to.include('Shown as it was when it was last a lesson.');
  });

  it('takes back typing, an opened file and a lesson that was begun, by key and by button', async () => {
    const element = await editor();
    const text = field(element);
    text.focus();
    await type('mine');
    const file = new File([await sample()], 'own.json', { type: 'application/json' });
    const files = new DataTransfer();
    files.items.add(file);
    const input = inside<HTMLInputElement>(element, 'input[type=file]');
    input.files = files.files;
    input.dispatchEvent(new Event('change'));
    await until(() => element.lesson?.id === 'embolus-groin', 'the file is read');
    await click(button(element, 'Undo'));
    await element.updateComplete;
    expect(text.value).to.equal('mine');
    text.focus();
    await press('Control+Shift+z');
    await element.updateComplete;
    expect(element.lesson?.id).to.equal('embolus-groin');
    await press('Control+z', 'Control+z');
    await element.updateComplete;
    expect(element.value).to.equal('');
    await press('Control+y');
    await element.updateComplete;
    expect(text.value).to.equal('mine');
  });

  it('keeps what is typed on the machine where the page says so, a lesson or not', async () => {
    const element = await editor('en', KEEP);
    field(element).focus();
    await type('{ "half": ');
    element.remove();
    const again = await editor('en', KEEP);
    expect(field(again).value).to.equal('{ "half": ');
    again.remove();
    const other = await editor();
    expect(field(other).value).to.equal('');
  });

  it('saves the text as a file that reads back as the same lesson', async () => {
    const element = await editor();
    element.value = await sample();
    await element.updateComplete;
    const files = await handedOver(() => button(element, 'Save as a file').click());
    expect(files.map(({ name }) => name)).to.deep.equal(['embolus-groin.json']);
    expect(parseLessonText(files[0]!.text)).to.deep.equal({ ok: true, lesson: element.lesson });
  });

  it('adds question and notes to the step that is shown, and the preview stays there', async () => {
    const element = await editor();
    element.value = await sample();
    await element.updateComplete;
    await preview(element)!.updateComplete;
    preview(element)!.goTo('pulse left popliteal');
    await element.updateComplete;
    await click(button(element, 'Add question and notes: Feel the left popliteal'));
    await element.updateComplete;
    expect(element.lesson!.steps['pulse left popliteal']).to.deep.equal({
      question: { en: 'To be written', de: 'To be written' },
      notes: { en: 'To be written', de: 'To be written' },
    });
    await until(() => element.shadowRoot!.activeElement === field(element), 'the text has the focus');
    const { value, selectionStart } = field(element);
    expect(value.slice(selectionStart).startsWith('"To be written"')).to.equal(true);
    await preview(element)!.updateComplete;
    expect(preview(element)!.step).to.equal('pulse left popliteal');
    // What else the lesson has is as it was.
    const { steps: _, ...rest } = element.lesson!;
    const read = parseLessonText(await sample());
    expect(read.ok && { ...read.lesson, steps: undefined }).to.deep.equal({ ...rest, steps: undefined });
  });

  it('says where the reading of the findings comes to another answer, and that the lesson must say so', async () => {
    const element = await editor();
    const { answer, ...rest } = await shippedLessonInput('embolus-groin');
    const { differs: _, ...unsaid } = answer;
    element.value = JSON.stringify({ ...rest, answer: unsaid });
    await element.updateComplete;
    const text = element.shadowRoot!.querySelector('.reading')!.textContent!;
    expect(text).to.include('Left leg: the reading of all findings concludes otherwise.');
    expect(text).to.include('Say so and why');
  });

  it('is accessible and speaks German', async () => {
    const element = await editor('de');
    element.value = '{ "id": "X" }';
    await element.updateComplete;
    expect(told(element)).to.match(/Stellen sind zu berichtigen/);
    await expect(element).to.be.accessible();
    element.value = await sample();
    await element.updateComplete;
    await preview(element)!.updateComplete;
    await expect(element).to.be.accessible();
  }).timeout(120_000);
});
