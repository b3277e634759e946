import { html, nothing, type TemplateResult } from 'lit';

/** One of several words, each a button; none chosen is "not stated". */
export interface Choices<V extends string> {
  /** What is chosen, for those who can't see where the buttons stand. */
  readonly label: string;
  readonly options: readonly (readonly [value: V, word: string])[];
  readonly value: V | undefined;
  readonly disabled: boolean;
  readonly pick: (value: V | undefined) => void;
}

function backward(event: KeyboardEvent): string {
  return getComputedStyle(event.currentTarget as Element).direction === 'rtl' ? 'ArrowRight' : 'ArrowLeft';
}

/** Which button a key means: arrows and Home, End move; a digit means the button at that place. */
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
 * A row of buttons of which one can be chosen. Arrows along the row or a digit choose, Delete takes the choice back, and so
 * does pressing the chosen one again.
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

/** Any of several words, each a button; `none` says that none applies. */
export interface Toggles<V extends string> {
  readonly label: string;
  readonly options: readonly (readonly [value: V, word: string])[];
  readonly value: readonly V[] | undefined;
  /** The word for an empty list, where that can be said. */
  readonly none?: string;
  readonly disabled: boolean;
  readonly pick: (value: V[] | undefined) => void;
}

/** A row of buttons of which any can be on. Arrows move along the row, a digit or Space turns one on or off. */
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

/** A word with its first letter large. */
export function large(word: string): string {
  return word.charAt(0).toLocaleUpperCase() + word.slice(1);
}

/** The options of a table of words, in its own order, each with its first letter large. */
export function optionsOf<V extends string>(words: Readonly<Record<V, string>>): (readonly [V, string])[] {
  return (Object.entries(words) as [V, string][]).map(([value, word]) => [value, large(word)]);
}
