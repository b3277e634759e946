// Types of the elements in the JSX of React 19 and later; an application names this entry once, as a type.
import type { ClassAttributes, HTMLAttributes, SyntheticEvent } from 'react';
import type { Elements, Events, From, Properties } from './properties.js';

/** Those of our events that React makes its own of; ours is then in `nativeEvent`. */
type Wrapped = 'input' | 'change';

type Handlers<Tag extends keyof Elements> = {
  [Name in keyof Events[Tag] & string as `on${Name extends Wrapped ? Capitalize<Name> : Name}`]?:
    | ((
        event: Name extends Wrapped
          ? SyntheticEvent<Elements[Tag], Events[Tag][Name]> & { readonly target: Elements[Tag] }
          : From<Events[Tag][Name] & Event, Elements[Tag]>,
      ) => void)
    | undefined;
};

export type PulseMapElements = {
  [Tag in keyof Elements]: ClassAttributes<Elements[Tag]> &
    Omit<HTMLAttributes<Elements[Tag]>, keyof Properties[Tag] | keyof Handlers<Tag>> &
    Properties[Tag] &
    Handlers<Tag>;
};

declare module 'react' {
  namespace JSX {
    interface IntrinsicElements extends PulseMapElements {}
  }
}

export {};
