// Types of the elements in the markup of Svelte 5 and later; an application names this entry once, as a type.
import type { HTMLAttributes } from 'svelte/elements';
import type { Elements, Events, From, Properties } from './properties.js';

type Handlers<Tag extends keyof Elements> = {
  [Name in keyof Events[Tag] & string as `on${Name}`]?:
    ((event: From<Events[Tag][Name] & Event, Elements[Tag]>) => void) | undefined;
};

export type PulseMapElements = {
  [Tag in keyof Elements]: Omit<HTMLAttributes<Elements[Tag]>, keyof Properties[Tag] | keyof Handlers<Tag>> &
    Properties[Tag] &
    Handlers<Tag>;
};

declare module 'svelte/elements' {
  interface SvelteHTMLElements extends PulseMapElements {}
}

export {};
