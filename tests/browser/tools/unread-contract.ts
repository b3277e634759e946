// What every form control of this library must do with a value that it cannot read: nothing of it is lost, nothing of what
// was there before is shown or sent in its place.
import { expect, fixture } from '@open-wc/testing';
import { click, focused, press } from '../../tools/real-input.js';
import { drawn } from './limbs.js';
import { eventsOf } from './map.js';
import { allByRole, byRole, readableText } from './perceive.js';

export interface UnreadContract {
  readonly tag: string;
  readonly attributes?: string;
  /** A value the control can show, as JSON. */
  readonly readable: string;
  /** Values it cannot read, beside texts that are no JSON at all. */
  readonly unreadable: readonly string[];
}

/** Texts that are no record of this version. */
export const UNREADABLE_RECORDS: readonly string[] = [
  '{ "format": "pulse-map/2", "scale": "0-3", "pulses": { "femoral": { "left": { "grade": "absent" } } } }',
  '{ "format": "pulse-map/1", "scale": "0-3", "pulses": 7 }',
  '{ "scale": "0-3" }',
  '[1, 2]',
  '7',
];

interface Control extends HTMLElement {
  value: unknown;
  readonly faults: readonly unknown[];
  readonly validity: ValidityState;
  checkValidity(): boolean;
  formStateRestoreCallback(saved: string | FormData): void;
}

const SENTENCE = 'This entry was made by a version that cannot be shown here. It stays exactly as it is.';
const SATZ =
  'Dieser Eintrag stammt aus einer Version, die hier nicht angezeigt werden kann. Er bleibt genau so, wie er ist.';
const START = 'Start a new record';

export function keepsWhatItCannotRead({ tag, attributes = '', readable, unreadable }: UnreadContract): void {
  async function inForm(more = '', value?: string) {
    const form = await fixture<HTMLFormElement>(
      `<form lang="en"><${tag} name="record" ${attributes} ${more}></${tag}><button>Save</button></form>`,
    );
    const control = form.querySelector(tag) as unknown as Control;
    if (value !== undefined) control.setAttribute('value', value);
    await drawn(control);
    return { form, control };
  }
  const sent = (form: HTMLFormElement): unknown => new FormData(form).get('record');

  describe(`<${tag}> given what it cannot read`, () => {
    for (const text of ['{"format":', ' no record ', ...unreadable]) {
      it(`shows one sentence and submits the very text: ${text.slice(0, 60)}`, async () => {
        const { form, control } = await inForm();
        control.value = readable;
        await drawn(control);
        const events = eventsOf(form);
        control.value = text;
        expect([control.value, sent(form)], 'at once').to.deep.equal([text, text]);
        await drawn(control);
        expect(readableText(control), 'and nothing else').to.equal(`${SENTENCE} ${START}`);
        expect(control.faults.length).to.be.greaterThan(0);
        expect([control.value, sent(form)]).to.deep.equal([text, text]);
        expect(control.checkValidity(), 'the form may be saved').to.equal(true);
        expect(events).to.deep.equal({ input: 0, change: 0 });
        form.toggleAttribute('novalidate', true);
        expect(sent(form)).to.equal(text);
      });
    }

    const [text] = unreadable as [string];

    it('keeps it read only too, and offers nothing to press', async () => {
      const { form, control } = await inForm('readonly');
      control.value = readable;
      control.value = text;
      await drawn(control);
      expect(readableText(control)).to.equal(SENTENCE);
      expect(sent(form)).to.equal(text);
    });

    it('keeps it disabled and enabled again', async () => {
      const { form, control } = await inForm('disabled');
      control.value = text;
      await drawn(control);
      expect(readableText(control)).to.equal(SENTENCE);
      expect(sent(form)).to.equal(null);
      control.removeAttribute('disabled');
      await drawn(control);
      expect(sent(form)).to.equal(text);
    });

    it('keeps it over a reset and the browser’s restoring', async () => {
      const { form, control } = await inForm('', text);
      expect(sent(form)).to.equal(text);
      control.value = readable;
      form.reset();
      expect([control.value, sent(form)]).to.deep.equal([text, text]);
      control.value = readable;
      control.formStateRestoreCallback(text);
      expect(sent(form)).to.equal(text);
      const data = new FormData();
      data.set('record', text);
      control.value = readable;
      control.formStateRestoreCallback(data);
      await drawn(control);
      expect(sent(form)).to.equal(text);
      expect(readableText(control)).to.equal(`${SENTENCE} ${START}`);
    });

    it('takes no entry by key or tap', async () => {
      const { form, control } = await inForm();
      control.value = text;
      await drawn(control);
      const events = eventsOf(form);
      control.focus();
      await press('0', '1', 'a', 'Delete', 'ArrowDown', 'Control+z', 'Control+y');
      await click(control.shadowRoot?.querySelector('.unread p') as HTMLElement, { kind: 'touch' });
      await drawn(control);
      expect([control.value, sent(form)]).to.deep.equal([text, text]);
      expect(events).to.deep.equal({ input: 0, change: 0 });
    });

    it('begins a new record only when that is pressed and said once more', async () => {
      const { form, control } = await inForm();
      control.value = text;
      await drawn(control);
      const events = eventsOf(form);
      await click(byRole(control, 'button', START));
      await drawn(control);
      expect(focused()?.textContent?.trim(), 'the safe answer first').to.equal('Keep the entry');
      expect(sent(form), 'asked, not done').to.equal(text);
      await press('Enter');
      await drawn(control);
      expect(readableText(control)).to.equal(`${SENTENCE} ${START}`);
      expect(events).to.deep.equal({ input: 0, change: 0 });
      await click(byRole(control, 'button', START));
      await drawn(control);
      await click(byRole(control, 'button', 'Replace it'));
      await drawn(control);
      expect(sent(form)).to.equal('');
      expect(control.faults).to.deep.equal([]);
      expect(events).to.deep.equal({ input: 1, change: 1 });
      expect(readableText(control)).not.to.include(SENTENCE);
      expect((focused()?.getRootNode() as ShadowRoot).host, 'the focus goes on inside').to.equal(control);
    });

    it('shows the next readable value as if nothing had been', async () => {
      const { form, control } = await inForm();
      control.value = readable;
      await drawn(control);
      const seen = readableText(control);
      control.value = text;
      await drawn(control);
      control.value = readable;
      await drawn(control);
      expect(readableText(control)).to.equal(seen);
      expect(sent(form)).to.equal(readable);
    });

    it('says of what has no text at all that nothing of it is kept, and holds the form', async () => {
      const { form, control } = await inForm();
      const cycle: Record<string, unknown> = {};
      cycle['self'] = cycle;
      for (const lost of [cycle, () => 1, Symbol('x'), 7n]) {
        control.value = readable;
        control.value = lost;
        await drawn(control);
        expect(readableText(control)).to.include('Nothing of it is shown or sent.');
        expect(sent(form)).to.equal('');
        expect(control.validity.badInput).to.equal(true);
      }
      control.value = null;
      await drawn(control);
      expect(control.checkValidity()).to.equal(true);
    });

    it('says it in German', async () => {
      await import('pulse-map/locale/de');
      const { control } = await inForm('lang="de"');
      control.value = text;
      await drawn(control);
      expect(readableText(control)).to.equal(`${SATZ} Neue Aufzeichnung beginnen`);
    });

    it('is called, spoken and laid out accessibly', async () => {
      const { control } = await inForm();
      control.value = text;
      await drawn(control);
      expect(allByRole(control, 'status')).to.have.length(1);
      await expect(control).to.be.accessible();
      expect(control.getBoundingClientRect().height).to.be.greaterThan(60);
    });
  });
}
