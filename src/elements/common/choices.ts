import { html, nothing, type TemplateResult } from 'lit';

/** A choice of one option from a row of buttons; no selection means "not stated". */
export interface Choices<V extends string> {
  /** Announces the selection to users who cannot see the buttons. */
  readonly label: string;
  readonly options: readonly (readonly [value: V, word: string])[];
  readonly value: V | undefined;
  readonly disabled: boolean;
  readonly pick: (value: V | undefined) => void;
}

function backward(event: KeyboardEvent): string {
  return getComputedStyle(event.currentTarget as Element).direction === 'rtl' ? 'ArrowRight' : 'ArrowLeft';
}

/** The button a key leads to: arrows, Home and End move; a digit picks by position. */
function targetOf(event: KeyboardEvent, at: number, count: number): number | undefined {
  const { key } = event;
  if (event.ctrlKey || event.altKey || event.metaKey) return undefined;
  if (key === 'ArrowLeft' || key === 'ArrowRight') {
    const step = key === backward(event) ? -1 : 1;
    return at === -1 ? (step > 0 ? 0 : count - 1) : (at + step + count) % count;
  }
  if (key === 'Home') return 0;
  if (key === 'End') return count - 1;
  const digit = /^[1-9]$/.test(key) ? Number(key) - 1 : undefined;
  return digit !== undefined && digit < count ? digit : undefined;
}

function buttons(event: Event): HTMLElement[] {
  return [...(event.currentTarget as Element).querySelectorAll<HTMLElement>('button')];
}

/**
 * A single-choice row of buttons. Arrow keys and digits select; Delete or pressing the selected button again
 * clears the selection.
 */
export function choices<V extends string>(c: Choices<V>): TemplateResult {
  const at = c.options.findIndex(([value]) => value === c.value);
  const keydown = (event: KeyboardEvent): void => {
    if (c.disabled) return;
    if (event.key === 'Delete' || event.key === 'Backspace') {
      event.preventDefault();
      c.pick(undefined);
      return;
    }
    const all = buttons(event);
    const next = targetOf(event, at, c.options.length);
    const option = next === undefined ? undefined : c.options[next];
    if (!option) return;
    event.preventDefault();
    all[next as number]?.focus();
    c.pick(option[0]);
  };
  return html`<div class="chips" role="radiogroup" aria-label=${c.label} @keydown=${keydown}>
    ${c.options.map(
      ([value, word], i) =>
        html`<button
          type="button"
          class="button chip"
          role="radio"
          aria-checked=${value === c.value}
          tabindex=${i === Math.max(0, at) ? 0 : -1}
          ?disabled=${c.disabled}
          @click=${() => c.pick(value === c.value ? undefined : value)}
        >
          ${word}
        </button>`,
    )}
  </div>`;
}

/** A multiple choice from a row of buttons; `none` states that none applies. */
export interface Toggles<V extends string> {
  readonly label: string;
  readonly options: readonly (readonly [value: V, word: string])[];
  readonly value: readonly V[] | undefined;
  /** The word for an empty list, where that can be said. */
  readonly none?: string;
  readonly disabled: boolean;
  readonly pick: (value: V[] | undefined) => void;
}

/** A multiple-choice row of buttons. Arrow keys move, a digit or Space toggles. */
export function toggles<V extends string>(t: Toggles<V>): TemplateResult {
  const chosen = t.value ?? [];
  const flip = (value: V): void => {
    const next = chosen.includes(value) ? chosen.filter((v) => v !== value) : [...chosen, value];
    t.pick(next.length ? t.options.map(([v]) => v).filter((v) => next.includes(v)) : undefined);
  };
  const none = (): void => t.pick(t.value?.length === 0 ? undefined : []);
  const acts = [
    ...(t.none === undefined ? [] : [none]),
    ...t.options.map(
      ([value]) =>
        () =>
          flip(value),
    ),
  ];
  const keydown = (event: KeyboardEvent): void => {
    if (t.disabled) return;
    const all = buttons(event);
    const next = targetOf(event, all.indexOf(event.target as HTMLElement), all.length);
    if (next === undefined) return;
    event.preventDefault();
    all[next]?.focus();
    for (const button of all) button.tabIndex = button === all[next] ? 0 : -1;
    if (/^[1-9]$/.test(event.key)) acts[next]?.();
  };
  const button = (word: string, on: boolean, act: () => void, first: boolean): TemplateResult =>
    html`<button
      type="button"
      class="button chip"
      role="checkbox"
      aria-checked=${on}
      tabindex=${first ? 0 : -1}
      ?disabled=${t.disabled}
      @click=${act}
    >
      ${word}
    </button>`;
  return html`<div class="chips" role="group" aria-label=${t.label} @keydown=${keydown}>
    ${t.none === undefined ? nothing : button(t.none, t.value?.length === 0, none, true)}
    ${t.options.map(([value, word], i) =>
      button(word, chosen.includes(value), () => flip(value), i === 0 && t.none === undefined),
    )}
  </div>`;
}

/** Capitalizes the first letter. */
export function large(word: string): string {
  return word.charAt(0).toLocaleUpperCase() + word.slice(1);
}

/** The options of a word table, in its order, capitalized. */
export function optionsOf<V extends string>(words: Readonly<Record<V, string>>): (readonly [V, string])[] {
  return (Object.entries(words) as [V, string][]).map(([value, word]) => [value, large(word)]);
}
