// Types of the elements in the templates of Vue 3.5 and later; an application names this entry once, as a type.
import type { HTMLAttributes, ReservedProps } from 'vue';
import type { Elements, Events, From, Properties } from './properties.js';

type Camel<Name extends string> = Name extends `${infer First}-${infer Rest}`
  ? `${First}${Capitalize<Camel<Rest>>}`
  : Name;

type Handlers<Tag extends keyof Elements> = {
  [Name in keyof Events[Tag] & string as `on${Capitalize<Camel<Name>>}`]?:
    ((event: From<Events[Tag][Name] & Event, Elements[Tag]>) => void) | undefined;
};

/** `v-model` of a tag with a dash is checked as that of a component; Vue itself reads and sets `value`. */
type Model<Tag extends keyof Elements> = Properties[Tag] extends { value?: infer Value }
  ? { modelValue?: Value; 'onUpdate:modelValue'?: (value: never) => void }
  : unknown;

export type PulseMapElements = {
  [Tag in keyof Elements]: new () => {
    $props: Omit<HTMLAttributes, keyof Properties[Tag] | keyof Handlers<Tag>> &
      ReservedProps &
      Properties[Tag] &
      Handlers<Tag> &
      Model<Tag>;
  };
};

declare module 'vue' {
  interface GlobalComponents extends PulseMapElements {}
}

export {};
