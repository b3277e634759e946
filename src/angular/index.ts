/**
 * The elements as controls of Angular's forms: `ngModel`, `formControl` and `formControlName` work on every element with a value.
 * Import the directive beside `FormsModule` or `ReactiveFormsModule`; the elements themselves are registered by `pulse-map`.
 */
import { Directive, ElementRef, forwardRef, inject } from '@angular/core';
import {
  type ControlValueAccessor,
  NG_VALIDATORS,
  NG_VALUE_ACCESSOR,
  type ValidationErrors,
  type Validator,
} from '@angular/forms';

/** What the directive needs of an element; one that is not registered yet has neither validity nor message. */
interface Control extends HTMLElement {
  value: unknown;
  disabled: boolean;
  readonly validity?: ValidityState;
  readonly validationMessage?: string;
}

/**
 * Hands `value` and `disabled` from the model to the element, and each entry back. What a person is typing is in the model at every key.
 * What the element itself refuses (`required`, `require`, text that is no number) is the error `pulseMap`, whose value is its sentence.
 */
@Directive({
  selector:
    'pulse-map[ngModel],pulse-map[formControl],pulse-map[formControlName],' +
    'limb-examination[ngModel],limb-examination[formControl],limb-examination[formControlName],' +
    'limb-history[ngModel],limb-history[formControl],limb-history[formControlName],' +
    'limb-inspection[ngModel],limb-inspection[formControl],limb-inspection[formControlName],' +
    'limb-context[ngModel],limb-context[formControl],limb-context[formControlName],' +
    'limb-pressures[ngModel],limb-pressures[formControl],limb-pressures[formControlName],' +
    'limb-staging[ngModel],limb-staging[formControl],limb-staging[formControlName],' +
    'bedside-test[ngModel],bedside-test[formControl],bedside-test[formControlName]',
  host: { '(input)': 'entered($event)', '(focusout)': 'touched()' },
  providers: [
    { provide: NG_VALUE_ACCESSOR, useExisting: forwardRef(() => PulseMapValueAccessor), multi: true },
    { provide: NG_VALIDATORS, useExisting: forwardRef(() => PulseMapValueAccessor), multi: true },
  ],
})
export class PulseMapValueAccessor implements ControlValueAccessor, Validator {
  readonly #element = inject<ElementRef<Control>>(ElementRef).nativeElement;
  #tell: (value: unknown) => void = () => undefined;
  #left: () => void = () => undefined;

  writeValue(value: unknown): void {
    this.#element.value = value ?? null;
  }

  registerOnChange(tell: (value: unknown) => void): void {
    this.#tell = tell;
  }

  registerOnTouched(left: () => void): void {
    this.#left = left;
  }

  setDisabledState(disabled: boolean): void {
    this.#element.disabled = disabled;
  }

  validate(): ValidationErrors | null {
    const { validity, validationMessage } = this.#element;
    return validity && !validity.valid ? { pulseMap: validationMessage } : null;
  }

  /** A person entered something. Fields that a page puts into a slot tell of their own entries. */
  protected entered(event: Event): void {
    if (event.target === this.#element) this.#tell(this.#element.value);
  }

  protected touched(): void {
    this.#left();
  }
}
