import { LitElement } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Fault } from '../../examination/index.js';
import { LANG, LanguageController } from './language.js';

/**
 * Base of every form control: what it shares with an `<input>` (name, states, form, validity). Subclasses define the
 * value and how it is parsed and reset.
 */
export abstract class FormControl extends LitElement {
  static readonly formAssociated = true;

  /** Name under which the form submits the value. */
  @property({ reflect: true }) name = '';
  /** Nothing can be changed and nothing is submitted. */
  @property({ type: Boolean, reflect: true }) disabled = false;
  /** Nothing can be changed; the value is submitted. */
  @property({ type: Boolean, reflect: true, attribute: 'readonly' }) readOnly = false;
  /** Language of the words, a BCP 47 tag; without it the nearest `lang` in the page counts. */
  @property(LANG) override lang = '';
  /** Whom the words address: `trade` for clinicians, `plain` for patients; empty, as the closest ancestor with one says, else `trade`. */
  @property(LANG) register: '' | 'trade' | 'plain' = '';

  @state() protected formDisabled = false;

  protected readonly internals = this.attachInternals();
  protected readonly language = new LanguageController(this);

  static override get observedAttributes(): string[] {
    return [...super.observedAttributes, 'value'];
  }

  /** What is wrong with the value written last, for developers; empty when it was read. */
  abstract get faults(): readonly Fault[];

  /** The value that reset returns to: the `value` attribute. */
  get defaultValue(): string {
    return this.getAttribute('value') ?? '';
  }

  set defaultValue(value: string) {
    this.setAttribute('value', value);
  }

  get form(): HTMLFormElement | null {
    return this.internals.form;
  }
  get labels(): NodeList {
    return this.internals.labels;
  }
  get validity(): ValidityState {
    return this.internals.validity;
  }
  get validationMessage(): string {
    return this.internals.validationMessage;
  }
  get willValidate(): boolean {
    return this.internals.willValidate;
  }
  get type(): string {
    return this.localName;
  }
  checkValidity(): boolean {
    return this.internals.checkValidity();
  }
  reportValidity(): boolean {
    return this.internals.reportValidity();
  }

  formDisabledCallback(disabled: boolean): void {
    // The attribute is never written here, or a fieldset enabled again would leave the control disabled.
    this.formDisabled = disabled;
  }

  /** Whether a person may change the value. */
  protected get editable(): boolean {
    return !this.disabled && !this.formDisabled && !this.readOnly;
  }
}
