// What the types must refuse; compiled, never run.
import type {} from 'pulse-map/svelte';
import type { SvelteHTMLElements } from 'svelte/elements';

export const refused: SvelteHTMLElements['pulse-map'][] = [
  // @ts-expect-error no such way to show it
  { display: 'tabel' },
  // @ts-expect-error no record is a number
  { value: 3 },
  // @ts-expect-error the control says what it holds; nobody tells it
  { recordState: 'sealed' },
];
