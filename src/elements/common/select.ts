import { html, type TemplateResult } from 'lit';
import { type ChildPart, directive, Directive } from 'lit/directive.js';

type Choice = readonly [value: string, text: string];

/**
 * The choices of a list as plain elements: a template for each, with its parts, was most of what a map's two lists cost. The same nodes
 * stay as long as values and words do.
 */
class Listed extends Directive {
  #choices: readonly Choice[] = [];
  #options: readonly HTMLOptionElement[] = [];
  #made: DocumentFragment | undefined;

  /** On a server, which has no nodes. */
  render(choices: readonly Choice[], chosen: string): unknown {
    return choices.map(
      ([value, text]) => html`<option value=${value} ?selected=${value === chosen}>${text}</option>`,
    );
  }

  override update(_part: ChildPart, [choices, chosen]: [readonly Choice[], string]): unknown {
    const known = this.#choices;
    const same =
      choices.length === known.length &&
      choices.every(([value, text], i) => value === known[i]![0] && text === known[i]![1]);
    if (!this.#made || !same) {
      this.#choices = choices;
      this.#options = choices.map(([value, text]) => new Option(text, value));
      this.#made = document.createDocumentFragment();
      this.#made.append(...this.#options);
    }
    for (const one of this.#options) {
      const wanted = one.value === chosen;
      if (one.selected !== wanted) one.selected = wanted;
    }
    return this.#made;
  }
}

const listed = directive(Listed);

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
      ${listed(f.empty === undefined ? f.options : [['', f.empty], ...f.options], f.value ?? '')}
    </select>
  </label>`;
}
