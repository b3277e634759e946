// Every element of the package, and what a slip in an application's code gives to one.
import { LitElement } from 'lit';
import 'pulse-map';
import 'pulse-map/elements/limb-observations/define';
import 'pulse-map/elements/limb-unconfirmed/define';
import 'pulse-map/elements/limb-visits/define';
import 'pulse-map/elements/pulse-lesson/define';
import 'pulse-map/elements/pulse-lesson-editor/define';
import 'pulse-map/elements/pulse-practice/define';

export const TAGS = [
  'pulse-map',
  'pulse-reading',
  'bedside-test',
  'limb-changes',
  'limb-context',
  'limb-examination',
  'limb-flags',
  'limb-history',
  'limb-inspection',
  'limb-letter',
  'limb-note',
  'limb-observations',
  'limb-pressures',
  'limb-report',
  'limb-staging',
  'limb-stopwatch',
  'limb-unconfirmed',
  'limb-visits',
  'pulse-lesson',
  'pulse-lesson-editor',
  'pulse-practice',
] as const;

const trap = (): never => {
  throw new Error('a trap of the page');
};

/** What a slip in an application's code gives, by what the message calls it. */
export const NONSENSE: Readonly<Record<string, unknown>> = {
  undefined: undefined,
  null: null,
  'no text': '',
  text: 'nonsense',
  'half a character': '\ud800',
  'a megabyte of text': 'x'.repeat(1_000_000),
  NaN: Number.NaN,
  Infinity: Number.POSITIVE_INFINITY,
  'less than nothing': -1,
  'a thousand million': 1e9,
  'a bigint': 7n,
  true: true,
  'an empty object': {},
  'an empty list': [],
  'a list of nothing': [null],
  'a list of numbers': [7],
  'a record of a later version': { format: 'pulse-map/2' },
  'half a record': { pulses: { femoral: 7 } },
  'a function': () => 1,
  'a symbol': Symbol('s'),
  'an object that throws': new Proxy(
    {},
    { get: trap, ownKeys: trap, has: trap, getOwnPropertyDescriptor: trap },
  ),
  'a list that throws': new Proxy([1], { get: trap, ownKeys: trap }),
  'an object that holds itself': (() => {
    const one: Record<string, unknown> = {};
    one['self'] = one;
    return one;
  })(),
};

export type Any = LitElement & Record<string, unknown>;

/** Every property of an element that a page can set: each accessor of its classes that is no state of its own. */
export function properties(element: Any): string[] {
  const { elementProperties } = element.constructor as unknown as {
    elementProperties: Map<string, { readonly state?: boolean }>;
  };
  const names = new Set<string>();
  for (let at: object = element; at !== LitElement.prototype; at = Object.getPrototypeOf(at) as object)
    for (const [name, { set }] of Object.entries(Object.getOwnPropertyDescriptors(at)))
      if (set && !elementProperties.get(name)?.state) names.add(name);
  return [...names];
}

/** Uncaught errors while `act` runs, which the runner would otherwise lay at another test's door. */
export async function uncaught(act: () => Promise<void>): Promise<string[]> {
  const heard: string[] = [];
  const hear = (event: Event): void => {
    const { message, reason } = event as Partial<ErrorEvent & PromiseRejectionEvent>;
    heard.push(message ?? String(reason));
    event.preventDefault();
    event.stopImmediatePropagation();
  };
  for (const type of ['error', 'unhandledrejection']) addEventListener(type, hear, true);
  try {
    await act();
  } finally {
    for (const type of ['error', 'unhandledrejection']) removeEventListener(type, hear, true);
  }
  return heard;
}

export async function made(tag: string): Promise<Any> {
  const element = document.createElement(tag) as unknown as Any;
  document.body.append(element);
  await element.updateComplete;
  return element;
}
