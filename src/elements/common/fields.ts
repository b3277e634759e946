import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { typed } from './typed.js';
import type { Refusal, Typing } from './typing.js';

/**
 * What a person typed as a number; `undefined` for nothing, `null` where it is none. A comma counts as a point, and the text may
 * end in it, as a number does on its way.
 */
export function typedNumber(text: string): number | undefined | null {
  const plain = text.trim().replace(',', '.');
  if (plain === '') return undefined;
  return /^\d+(\.\d*)?$|^\.\d+$/.test(plain) ? Number(plain) : null;
}

export interface NumberField {
  /** Which field this is, for what was refused in it. */
  readonly id: string;
  readonly label: string;
  /** The label is visible elsewhere; here it is for assistive technology only. */
  readonly quiet?: boolean;
  readonly unit?: string;
  readonly value: number | undefined;
  /** Formats a number for the language. */
  readonly shown: (value: number) => string;
  readonly max: number;
  readonly disabled: boolean;
  readonly refusal: Refusal | undefined;
  /** The sentence for something that is no number from 0 to `max`. */
  readonly complain: (typed: string) => string;
  readonly set: (value: number | undefined) => boolean | void;
  readonly typing: Typing;
}

/**
 * A field for a number, taken at every key. What can't be taken stays in the field, with a sentence under it once the field is
 * left; the value from before the visit stands then.
 */
export function numberField(f: NumberField): TemplateResult {
  const take = (typed: string): (() => boolean | void) | undefined => {
    const value = typedNumber(typed);
    return value === null || (value !== undefined && value > f.max) ? undefined : () => f.set(value);
  };
  return html`<span class="number">
    <label>
      <span class=${f.quiet ? 'hidden-visually' : 'hint'}>${f.label}</span>
      <span class="entry">
        <input
          class="field"
          inputmode="decimal"
          autocomplete="off"
          .value=${live(f.typing.text(f.id) ?? (f.value === undefined ? '' : f.shown(f.value)))}
          aria-invalid=${f.refusal ? 'true' : nothing}
          aria-describedby=${f.refusal ? `refused-${f.id}` : nothing}
          ?disabled=${f.disabled}
          ${typed(f.typing, f.id, take, f.complain)}
        />
        ${f.unit ? html`<span class="unit" aria-hidden="true">${f.unit}</span>` : nothing}
      </span>
    </label>
    ${refusalLine(f.id, f.refusal)}
  </span>`;
}

export function refusalLine(id: string, refusal: Refusal | undefined): TemplateResult | typeof nothing {
  return refusal
    ? html`<span class="refusal" id=${`refused-${id}`} role="alert">${refusal.sentence}</span>`
    : nothing;
}

export interface TextField {
  /** Which field this is, where the label does not tell. */
  readonly id?: string;
  readonly label: string;
  readonly quiet?: boolean;
  readonly value: string | undefined;
  readonly disabled: boolean;
  readonly longest: number;
  readonly set: (value: string | undefined) => boolean | void;
  readonly typing: Typing;
}

/** A free-text field. */
export function textField(f: TextField): TemplateResult {
  const id = f.id ?? f.label;
  return html`<label class="text">
    <span class=${f.quiet ? 'hidden-visually' : 'hint'}>${f.label}</span>
    <input
      class="field"
      autocomplete="off"
      maxlength=${f.longest}
      .value=${live(f.typing.text(id) ?? f.value ?? '')}
      ?disabled=${f.disabled}
      ${typed(f.typing, id, (text) => () => f.set(text.trim() || undefined))}
    />
  </label>`;
}

export interface TimeField extends Pick<
  NumberField,
  'id' | 'label' | 'disabled' | 'refusal' | 'complain' | 'typing'
> {
  /** ISO 8601 with `Z` or an offset. */
  readonly value: string | undefined;
  /** Takes a time over, with the offset of this place; false where it cannot be. */
  readonly set: (value: string | undefined) => boolean | void;
}

const two = (n: number): string => String(Math.trunc(Math.abs(n))).padStart(2, '0');

/** A time of the wall clock with the offset it has at this place. */
export function withOffset(local: string): string {
  const minutes = -new Date(local).getTimezoneOffset();
  return `${local}${minutes < 0 ? '-' : '+'}${two(minutes / 60)}:${two(minutes % 60)}`;
}

/** The time on the clock of this place, to the minute, as a field of the browser takes it. */
export function onThisClock(instant: string): string {
  const date = new Date(instant);
  return new Date(date.getTime() - date.getTimezoneOffset() * 60_000).toISOString().slice(0, 16);
}

/** A date with a time of day. While it is half typed in, nothing is taken, and what stood there before stays. */
export function timeField(f: TimeField): TemplateResult {
  return html`<span class="number">
    <label>
      <span class="hidden-visually">${f.label}</span>
      <input
        class="field"
        type="datetime-local"
        .value=${live(f.typing.text(f.id) ?? (f.value === undefined ? '' : onThisClock(f.value)))}
        aria-invalid=${f.refusal ? 'true' : nothing}
        aria-describedby=${f.refusal ? `refused-${f.id}` : nothing}
        ?disabled=${f.disabled}
        ${typed(f.typing, f.id, (text) => () => f.set(text === '' ? undefined : withOffset(text.slice(0, 16))), f.complain)}
      />
    </label>
    ${refusalLine(f.id, f.refusal)}
  </span>`;
}
