import { html, type TemplateResult } from 'lit';

export interface Select<T extends string> {
  readonly label: string;
  /** Classes of the label and of the field within it. */
  readonly classes: readonly [label: string, field: string];
  readonly options: readonly (readonly [value: T, text: string])[];
  readonly chosen: T;
  readonly disabled: boolean;
  pick(value: T): void;
}

/** A choice of one from a list, with its label. */
export function renderSelect<T extends string>(select: Select<T>): TemplateResult {
  const [outer, inner] = select.classes;
  return html`<label class=${outer}
    ><span class="hint">${select.label}</span>
    <select
      class=${inner}
      ?disabled=${select.disabled}
      .value=${select.chosen}
      @change=${(event: Event) => select.pick((event.target as HTMLSelectElement).value as T)}
    >
      ${select.options.map(
        ([value, text]) => html`<option value=${value} ?selected=${value === select.chosen}>${text}</option>`,
      )}
    </select>
  </label>`;
}
