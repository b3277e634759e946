import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';

/**
 * One choice of a `<select>`. It is chosen by property too: the attribute counts no longer once a person has picked the option, and
 * an undo would leave the list at what was picked.
 */
export function option(value: string, text: string, chosen: boolean): TemplateResult {
  return html`<option value=${value} ?selected=${chosen} .selected=${live(chosen)}>${text}</option>`;
}

export interface SelectField<V extends string> {
  readonly label: string;
  /** The label is visible elsewhere; here it is for assistive technology only. */
  readonly quiet?: boolean;
  readonly options: readonly (readonly [value: V, text: string])[];
  readonly value: V | undefined;
  readonly disabled: boolean;
  /** The word for nothing chosen; without it something is always chosen. */
  readonly empty?: string;
  /** Classes of the label and of the list within it, where they are not those of a field of a part. */
  readonly classes?: readonly [label: string, list: string];
  readonly set: (value: V | undefined) => void;
}

const stop = (event: Event): void => event.stopPropagation();

/** A choice of one from a list, with its label. */
export function selectField<V extends string>(f: SelectField<V>): TemplateResult {
  const [label, list] = f.classes ?? ['text', 'field'];
  return html`<label class=${label}>
    <span class=${f.quiet ? 'hidden-visually' : 'hint'}>${f.label}</span>
    <select
      class=${list}
      ?disabled=${f.disabled}
      @change=${(event: Event) => {
        event.stopPropagation();
        f.set(((event.target as HTMLSelectElement).value || undefined) as V | undefined);
      }}
      @input=${stop}
    >
      ${f.empty === undefined ? nothing : option('', f.empty, f.value === undefined)}
      ${f.options.map(([value, text]) => option(value, text, value === f.value))}
    </select>
  </label>`;
}
