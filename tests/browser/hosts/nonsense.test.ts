// Whatever an application gives to a public property: the element says on the console which property it was and what was
// expected, stays alive, and takes the next proper value.
import { expect } from '@open-wc/testing';
import { LitElement } from 'lit';
import 'pulse-map';
import 'pulse-map/elements/limb-observations/define';
import 'pulse-map/elements/limb-unconfirmed/define';
import 'pulse-map/elements/limb-visits/define';
import 'pulse-map/elements/pulse-lesson/define';
import 'pulse-map/elements/pulse-lesson-editor/define';
import 'pulse-map/elements/pulse-practice/define';
import { parseExaminationText } from 'pulse-map/core';
import { examined } from '../../tools/examinations.js';
import { consoleOf } from '../../tools/real-input.js';
import { formatExamination } from '../../../src/examination/index.js';

const TAGS = [
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

const RECORD = examined({ 'left popliteal': 'absent', 'left femoral': 'normal' });

const trap = (): never => {
  throw new Error('a trap of the page');
};

/** What a slip in an application's code gives, by what the message calls it. */
const NONSENSE: Readonly<Record<string, unknown>> = {
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

/** What no property can hold, so that it must be told. */
const NEVER = ['a bigint', 'a function', 'a symbol', 'an object that throws', 'a list that throws'];

type Any = LitElement & Record<string, unknown>;

/** Every property of an element that a page can set: each accessor of its classes that is no state of its own. */
function properties(element: Any): string[] {
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
async function uncaught(act: () => Promise<void>): Promise<string[]> {
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

/** Sets one property; @returns what went wrong, and what was told of it by name. */
async function give(element: Any, name: string, value: unknown) {
  const wrong: string[] = [];
  const told: string[] = [];
  const heard = await uncaught(async () => {
    const said = await consoleOf(async () => {
      try {
        element[name] = value;
      } catch (error) {
        // A clear refusal is as good as going on.
        told.push(error instanceof TypeError || error instanceof RangeError ? error.message : String(error));
      }
      await element.updateComplete.catch((error: unknown) => wrong.push(String(error)));
    });
    told.push(...said);
  });
  wrong.push(...heard, ...told.filter((one) => !(one.includes(name) && /expected/.test(one))));
  return { wrong, told };
}

async function made(tag: string): Promise<Any> {
  const element = document.createElement(tag) as unknown as Any;
  document.body.append(element);
  await element.updateComplete;
  return element;
}

/** Whether an element shows, in place of a record, that it cannot be read, or lists what is wrong with its value. */
function unread(element: Any): boolean {
  const text = element.renderRoot.textContent ?? '';
  return (
    /cannot be (shown|read)|could not be read|later version/i.test(text) ||
    Boolean((element['faults'] as [])?.length)
  );
}

describe('nonsense given to a public property', () => {
  for (const tag of TAGS) {
    it(`of <${tag}> is refused by name, and the element goes on`, async () => {
      const element = await made(tag);
      const names = properties(element);
      expect(names).to.include('lang');
      const faults: string[] = [];
      for (const name of names) {
        const before = element[name];
        for (const [what, value] of Object.entries(NONSENSE)) {
          const { wrong, told } = await give(element, name, value);
          faults.push(...wrong.map((one) => `${name} = ${what}: ${one.slice(0, 300)}`));
          if (NEVER.includes(what) && !told.length && !unread(element))
            faults.push(`${name} = ${what}: nothing said`);
        }
        const { wrong, told } = await give(element, name, before);
        faults.push(...[...wrong, ...told].map((one) => `${name} as before: ${one.slice(0, 300)}`));
      }
      if (names.includes('store')) {
        const { wrong } = await give(element, 'value', formatExamination(RECORD));
        faults.push(...wrong.map((one) => `a record at last: ${one}`));
        expect(parseExaminationText(String(element['value'])).ok, 'a record at last').to.equal(true);
      }
      element.remove();
      expect([...new Set(faults)]).to.deep.equal([]);
    });

    it(`of <${tag}>: nothing means what a new element holds`, async () => {
      const element = await made(tag);
      for (const name of properties(element)) {
        const before = element[name];
        for (const nothing of [undefined, null]) {
          const { wrong, told } = await give(element, name, nothing);
          expect([...wrong, ...told], name).to.deep.equal([]);
          expect(JSON.stringify(element[name]), `${name} = ${nothing}`).to.equal(JSON.stringify(before));
        }
      }
      element.remove();
    });
  }

  it('does not leave the patient before it standing', async () => {
    const report = await made('limb-report');
    report['subject'] = 'The patient before';
    const { told } = await give(report, 'subject', { name: 'Another patient' });
    expect(told.join()).to.equal(
      'limb-report: found subject={"name":"Another patient"}, expected text; taken as ""',
    );
    expect(report['subject']).to.equal('');
    report.remove();
  });
});
