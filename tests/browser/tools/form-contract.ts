// What every form control of this library must do, as an <input> does: one suite, run through by each of them.
import { expect, fixture } from '@open-wc/testing';
import type { RecordElement } from 'pulse-map';
import { click, consoleOf, focused } from '../../tools/real-input.js';
import { eventsOf } from './map.js';
import { painted } from './perceive.js';

export interface FormContract {
  readonly tag: string;
  /** Two values the control can hold, as it gives them out, and what is then to be seen. */
  readonly first: string;
  readonly second: string;
  /** What a person sees of the value. Must differ between none, first and second. */
  seen(control: RecordElement): string;
  /** One act by which a person changes an empty or filled control. */
  act(control: RecordElement): Promise<void>;
  /** Everything a person might try on a control that must not change. */
  tryAll(control: RecordElement): Promise<void>;
  /** Whether this is the part of the control that should take the focus. */
  takesFocus(element: Element | null): boolean;
}

async function drawn(control: RecordElement): Promise<void> {
  await control.updateComplete;
  await painted();
}

export function behavesLikeAFormControl(contract: FormContract): void {
  const { tag, first, second } = contract;

  async function inForm(attributes = '', before = '', after = '') {
    const form = await fixture<HTMLFormElement>(
      `<form>${before}<${tag} name="pulses" ${attributes}></${tag}>${after}</form>`,
    );
    const control = form.querySelector(tag) as unknown as RecordElement;
    await drawn(control);
    return { form, control };
  }
  const sent = (form: HTMLFormElement) => new FormData(form).get('pulses');

  describe(`<${tag}> and its value`, () => {
    it('sends an empty text while nothing is recorded, and nothing without a name', async () => {
      const { form, control } = await inForm();
      expect(sent(form)).to.equal('');
      control.removeAttribute('name');
      expect([...new FormData(form).keys()]).to.deep.equal([]);
    });

    it('takes a value from code at once, without an event', async () => {
      const { form, control } = await inForm();
      const events = eventsOf(form);
      control.value = first;
      expect(control.value).to.equal(first);
      expect(sent(form)).to.equal(first);
      await drawn(control);
      const seen = contract.seen(control);
      control.value = second;
      await drawn(control);
      expect(contract.seen(control)).to.not.equal(seen);
      expect(events).to.deep.equal({ input: 0, change: 0 });
    });

    for (const none of [null, undefined, ''] as const) {
      it(`takes ${JSON.stringify(none) ?? 'undefined'} as no value`, async () => {
        const { form, control } = await inForm();
        const empty = contract.seen(control);
        control.value = first;
        control.value = none;
        await drawn(control);
        expect(control.value).to.equal('');
        expect(sent(form)).to.equal('');
        expect(contract.seen(control)).to.equal(empty);
      });
    }

    it('does nothing when the same value is set again: no event, no lost undo, no moved focus', async () => {
      const { form, control } = await inForm();
      await contract.act(control);
      control.focus();
      const before = focused();
      const events = eventsOf(form);
      control.value = `${control.value}`;
      await drawn(control);
      expect(events).to.deep.equal({ input: 0, change: 0 });
      expect(control.store.canUndo).to.equal(true);
      expect(focused()).to.equal(before);
    });

    it('keeps a property set before the element was known', async () => {
      const elsewhere = document.implementation.createHTMLDocument('');
      const raw = elsewhere.createElement(tag) as unknown as RecordElement;
      expect(raw.updateComplete, 'not upgraded yet').to.equal(undefined);
      raw.value = first;
      raw.required = true;
      const form = await fixture<HTMLFormElement>('<form></form>');
      form.append(raw);
      await drawn(raw);
      expect(raw.value).to.equal(first);
      expect(raw.validity.valid).to.equal(true);
      raw.name = 'pulses';
      await drawn(raw);
      expect(sent(form)).to.equal(first);
      raw.value = null;
      expect(raw.value, 'the accessor is not hidden').to.equal('');
    });

    it('can be made, given a value and asked before it is on the page', () => {
      const control = document.createElement(tag) as unknown as RecordElement;
      control.formDisabledCallback(true);
      control.formDisabledCallback(false);
      control.formStateRestoreCallback(second);
      expect(control.value).to.equal(second);
      control.formResetCallback();
      control.required = true;
      control.value = first;
      expect(control.value).to.equal(first);
      expect(control.checkValidity()).to.equal(true);
    });
  });

  describe(`<${tag}> and a person's acts`, () => {
    it('tells of each act once by input and once by change, from itself', async () => {
      const { form, control } = await inForm();
      const heard: string[] = [];
      for (const type of ['input', 'change']) {
        form.addEventListener(type, ({ target, bubbles }) =>
          heard.push(`${type} ${target === control} ${bubbles}`),
        );
      }
      await contract.act(control);
      expect(heard).to.deep.equal(['input true true', 'change true true']);
    });

    it('lets input out of shadow trees around it', async () => {
      const { control } = await inForm();
      let composed: boolean | undefined;
      control.addEventListener('input', (event) => (composed = event.composed));
      await contract.act(control);
      expect(composed).to.equal(true);
    });

    it('has the new value in the form already while input is being heard', async () => {
      const { form, control } = await inForm('required');
      const seen: unknown[] = [];
      form.addEventListener('input', ({ target }) => {
        const { value, validity } = target as RecordElement;
        seen.push(value !== '' && sent(form) === value && validity.valid);
      });
      await contract.act(control);
      expect(seen).to.deep.equal([true]);
    });

    it('tells of undo and redo as of any act', async () => {
      const { form, control } = await inForm();
      await contract.act(control);
      const { value } = control;
      const events = eventsOf(form);
      control.undo();
      expect(sent(form)).to.equal('');
      control.redo();
      expect(sent(form)).to.equal(value);
      expect(events).to.deep.equal({ input: 2, change: 2 });
    });
  });

  describe(`<${tag}> and the reset of its form`, () => {
    it('returns to the value attribute, told by no event', async () => {
      const { form, control } = await inForm();
      control.defaultValue = first;
      expect(control.value, 'an untouched control follows its attribute').to.equal(first);
      control.value = null;
      await contract.act(control);
      const events = eventsOf(form);
      form.reset();
      expect(control.value).to.equal(first);
      expect(sent(form)).to.equal(first);
      expect(events).to.deep.equal({ input: 0, change: 0 });
    });

    it('returns to the attribute as it is now, which a touched control does not follow otherwise', async () => {
      const { form, control } = await inForm();
      control.setAttribute('value', first);
      control.value = null;
      await contract.act(control);
      const touched = control.value;
      control.setAttribute('value', second);
      expect(control.value).to.equal(touched);
      expect(control.defaultValue).to.equal(second);
      form.reset();
      expect(control.value).to.equal(second);
      control.removeAttribute('value');
      expect(control.value, 'after a reset it follows again').to.equal('');
    });

    it('is invalid again where it must be filled', async () => {
      const { form, control } = await inForm('required');
      await contract.act(control);
      expect(control.validity.valid).to.equal(true);
      form.reset();
      expect(control.validity.valueMissing).to.equal(true);
    });
  });

  describe(`<${tag}> and the browser's restoring`, () => {
    it('takes a text and form data, told by no event', async () => {
      const { form, control } = await inForm();
      const events = eventsOf(form);
      control.formStateRestoreCallback(first);
      expect(control.value).to.equal(first);
      const data = new FormData();
      data.set('pulses', second);
      control.formStateRestoreCallback(data);
      expect(control.value).to.equal(second);
      control.formStateRestoreCallback(null);
      await drawn(control);
      expect(control.value).to.equal(second);
      expect(sent(form)).to.equal(second);
      expect(events).to.deep.equal({ input: 0, change: 0 });
    });
  });

  describe(`<${tag}> disabled`, () => {
    it('by a fieldset on, off, on: follows, and never writes its own attribute', async () => {
      const { form, control } = await inForm('', '<fieldset>', '</fieldset>');
      const fieldset = form.querySelector('fieldset') as HTMLFieldSetElement;
      control.value = first;
      for (const disabled of [true, false, true]) {
        fieldset.disabled = disabled;
        await drawn(control);
        expect(control.matches(':disabled')).to.equal(disabled);
        expect(sent(form)).to.equal(disabled ? null : first);
        expect(control.hasAttribute('disabled')).to.equal(false);
        await contract.tryAll(control);
        expect(control.value === first, 'changed by hand').to.equal(disabled);
        control.value = first;
      }
    });

    it('by its own attribute too: either is enough', async () => {
      const { form, control } = await inForm('disabled', '<fieldset disabled>', '</fieldset>');
      (form.querySelector('fieldset') as HTMLFieldSetElement).disabled = false;
      await drawn(control);
      expect(control.matches(':disabled')).to.equal(true);
      await contract.tryAll(control);
      expect(control.value).to.equal('');
      control.disabled = false;
      await drawn(control);
      expect(control.matches(':disabled')).to.equal(false);
      await contract.act(control);
      expect(control.value).to.not.equal('');
    });

    it('keeps no form from being sent', async () => {
      const { form, control } = await inForm('required', '<fieldset disabled>', '</fieldset>');
      let submitted = 0;
      form.addEventListener('submit', (event) => {
        event.preventDefault();
        submitted++;
      });
      form.requestSubmit();
      expect(submitted).to.equal(1);
      expect(control.willValidate).to.equal(false);
      control.focus();
      expect(contract.takesFocus(focused()), 'a disabled control takes no focus').to.equal(false);
    });

    it('obeys the presence of its attribute, whatever it says', async () => {
      const { control } = await inForm('disabled="false" required="false" readonly="false"');
      expect([control.disabled, control.required, control.readOnly]).to.deep.equal([true, true, true]);
    });
  });

  describe(`<${tag}> read only`, () => {
    it('sends its value, and nothing a person tries changes it', async () => {
      const { form, control } = await inForm('readonly');
      control.value = first;
      await drawn(control);
      const events = eventsOf(form);
      await contract.tryAll(control);
      expect(sent(form)).to.equal(first);
      expect(events).to.deep.equal({ input: 0, change: 0 });
    });

    it('can be read by keys, and lets the form go though it must be filled', async () => {
      const { form, control } = await inForm('readonly required');
      control.focus();
      expect(contract.takesFocus(focused())).to.equal(true);
      expect(form.checkValidity()).to.equal(true);
    });
  });

  describe(`<${tag}> that must be filled`, () => {
    it('keeps an empty form, says so, takes the focus and writes nothing to the console', async () => {
      const { form, control } = await inForm('required', '', '<button>Save</button>');
      let submitted = 0;
      form.addEventListener('submit', (event) => {
        event.preventDefault();
        submitted++;
      });
      const noise = await consoleOf(() => click(form.querySelector('button') as HTMLElement));
      expect(noise).to.deep.equal([]);
      expect(submitted).to.equal(0);
      expect(control.validationMessage).to.equal('Record at least one finding.');
      expect(contract.takesFocus(focused())).to.equal(true);
      await contract.act(control);
      await click(form.querySelector('button') as HTMLElement);
      expect(submitted).to.equal(1);
    });

    it('says the same in every way it can be asked', async () => {
      const { form, control } = await inForm('required');
      const agree = (valid: boolean): void => {
        expect(control.validity.valid).to.equal(valid);
        expect(control.validity.valueMissing).to.equal(!valid);
        expect(control.checkValidity()).to.equal(valid);
        expect(form.checkValidity()).to.equal(valid);
        expect(control.matches(':invalid')).to.equal(!valid);
        expect(control.matches(':valid')).to.equal(valid);
        expect(control.validationMessage === '').to.equal(valid);
        expect(control.willValidate).to.equal(true);
      };
      agree(false);
      control.value = first;
      agree(true);
      control.value = null;
      agree(false);
      await contract.act(control);
      agree(true);
      control.undo();
      agree(false);
      control.required = false;
      await drawn(control);
      agree(true);
    });
  });

  describe(`<${tag}> and its surroundings`, () => {
    it('moves the focus at a click on its label and changes nothing', async () => {
      const root = await fixture(
        `<div><label for="p">Pulses today</label><form><${tag} id="p" name="pulses"></${tag}></form></div>`,
      );
      const control = root.querySelector(tag) as unknown as RecordElement;
      await drawn(control);
      const events = eventsOf(root);
      await click(root.querySelector('label') as HTMLElement);
      await drawn(control);
      expect(contract.takesFocus(focused())).to.equal(true);
      expect(control.value).to.equal('');
      expect(events).to.deep.equal({ input: 0, change: 0 });
      expect(control.labels).to.have.length(1);
      expect(control.shadowRoot?.querySelector('[aria-label="Pulses today"]'), 'called by its label').to
        .exist;
    });

    it('works inside a label: acts there stay single acts', async () => {
      const root = await fixture(`<label>Pulses <${tag} name="pulses"></${tag}></label>`);
      const control = root.querySelector(tag) as unknown as RecordElement;
      await drawn(control);
      const events = eventsOf(root);
      await contract.act(control);
      expect(events).to.deep.equal({ input: 1, change: 1 });
    });

    it('belongs to the form that its form attribute names', async () => {
      const root = await fixture<HTMLElement>(
        `<div><form id="visit"></form><${tag} form="visit" name="pulses" required></${tag}></div>`,
      );
      const form = root.querySelector('form') as HTMLFormElement;
      const control = root.querySelector(tag) as unknown as RecordElement;
      expect(control.form).to.equal(form);
      expect(form.checkValidity()).to.equal(false);
      control.value = first;
      expect(sent(form)).to.equal(first);
      expect([...form.elements]).to.include(control as unknown as Element);
      form.reset();
      expect(control.value).to.equal('');
    });

    it('goes along to another form', async () => {
      const { form, control } = await inForm();
      control.value = first;
      const other = document.createElement('form');
      form.after(other);
      other.append(control);
      await drawn(control);
      expect(control.form).to.equal(other);
      expect(sent(other)).to.equal(first);
      expect(sent(form)).to.equal(null);
      other.remove();
    });
  });
}
