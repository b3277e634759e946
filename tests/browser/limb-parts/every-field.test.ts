import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map/elements/limb-context/define';
import 'pulse-map/elements/limb-history/define';
import 'pulse-map/elements/limb-inspection/define';
import 'pulse-map/elements/limb-pressures/define';
import { type Leaf, LEAVES, recordWith } from '../../tools/record-fields.js';
import { setViewport } from '../../tools/real-input.js';
import { everything } from '../tools/perceive.js';

before(() => setViewport({ width: 1000, height: 900 }));

type Part = HTMLElement & { value: unknown; updateComplete: Promise<unknown> };
type Json = Record<string, unknown>;

/** What every control of a part shows: each box ticked, each word chosen, each text and number. */
function shown(control: Element): string {
  return everything(control)
    .map((node) => {
      if (node instanceof HTMLInputElement) return `${node.value} ${node.checked}`;
      if (node instanceof HTMLSelectElement || node instanceof HTMLTextAreaElement) return node.value;
      return node.getAttribute('aria-checked') ?? node.getAttribute('aria-pressed') ?? '';
    })
    .join('|');
}

/** Fields without a control of their own, and why. */
const ELSEWHERE: readonly RegExp[] = [
  // Nobody walks on an arm, and its joints do not collapse; the types take what a leg has.
  /^history\.arm\.\w+\.distance$/,
  /^inspection\.arm\.\w+\.charcotSuspected$/,
  // One of two is always in force.
  /^pressures\.unit$/,
];

/** A part without one field. */
function without(part: unknown, [key, ...rest]: readonly (string | number)[]): unknown {
  if (typeof part !== 'object' || part === null || key === undefined) return part;
  if (Array.isArray(part)) return [];
  const { [key]: inner, ...others } = part as Json;
  if (!rest.length) return others;
  return { ...others, [key]: without(inner, rest) };
}

/** The element that edits each part of the record, and what it takes of a record. */
const PARTS: readonly (readonly [
  name: string,
  element: () => Promise<Part>,
  has: (path: Leaf['path']) => boolean,
  of: (record: Json) => unknown,
])[] = [
  [
    'history',
    () => fixture(html`<limb-history></limb-history>`),
    ([part]) => part === 'history' || part === 'circulation' || part === 'onset',
    ({ history, circulation, onset }) =>
      JSON.parse(JSON.stringify({ history, circulation, onset })) as unknown,
  ],
  [
    'context',
    () => fixture(html`<limb-context></limb-context>`),
    ([part]) => part === 'context',
    ({ context }) => context,
  ],
  [
    'inspection of the legs',
    () => fixture(html`<limb-inspection></limb-inspection>`),
    ([part, kind]) => part === 'inspection' && kind === 'leg',
    ({ inspection }) => inspection,
  ],
  [
    'inspection of the arms',
    () => fixture(html`<limb-inspection></limb-inspection>`),
    ([part, kind]) => part === 'inspection' && kind === 'arm',
    ({ inspection }) => inspection,
  ],
  [
    'pressures',
    () => fixture(html`<limb-pressures></limb-pressures>`),
    ([part]) => part === 'pressures' || part === 'method',
    ({ pressures, method }) => JSON.parse(JSON.stringify({ ...(pressures as Json), method })) as unknown,
  ],
];

/** Few enough for one test on a machine that is busy with something else. */
const AT_ONCE = 24;

describe('every field of the record has a control that shows it', () => {
  for (const [name, make, has, of] of PARTS) {
    const leaves = LEAVES.filter(
      ({ path }) => has(path) && !ELSEWHERE.some((where) => where.test(path.join('.'))),
    );
    it(`${name}: there are some`, () => expect(leaves.length).to.be.above(10));
    for (let from = 0; from < leaves.length; from += AT_ONCE)
      it(`${name}, from field ${from + 1} on`, async () => {
        const control = await make();
        const show = async (value: unknown): Promise<string> => {
          control.value = value;
          await control.updateComplete;
          return shown(control);
        };
        const unseen: string[] = [];
        for (const { path, value } of leaves.slice(from, from + AT_ONCE)) {
          const record = recordWith(path, value) as Json;
          const bare = without(record, path) as Json;
          const before = await show(of(bare) ?? {});
          if ((await show(of(record))) === before) unseen.push(path.join('.'));
        }
        expect(unseen).to.deep.equal([]);
      });
  }
});
