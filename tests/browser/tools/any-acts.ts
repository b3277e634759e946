// Acts of hands and of pages, drawn from a seed.
import fc from 'fast-check';
import { type Random, randomFrom, recordFrom } from '../../tools/any-record.js';
import { spoilt } from '../../tools/spoilt.js';
import { type Examination, formatExamination } from '../../../src/examination/index.js';

type Kind = 'mouse' | 'pen' | 'touch';

/** Parts of a whole (`at`, `to`, `choice`) pick among what is there. */
export type Act =
  | { readonly do: 'use'; readonly at: number; readonly choice: number; readonly text: string }
  | { readonly do: 'click'; readonly at: number; readonly kind: Kind; readonly times: number }
  | { readonly do: 'drag'; readonly at: number; readonly to: number; readonly kind: Kind }
  | { readonly do: 'press'; readonly key: string }
  | { readonly do: 'type'; readonly text: string }
  | { readonly do: 'set'; readonly which: number; readonly value: number; readonly proper: boolean }
  | { readonly do: 'value'; readonly seed: number; readonly text?: string }
  | { readonly do: 'width'; readonly px: number }
  | { readonly do: 'away'; readonly wait: boolean }
  | { readonly do: 'reset' }
  | { readonly do: 'history'; readonly to: 'undo' | 'redo' };

const KEYS = [
  ...['Tab', 'Tab', 'Shift+Tab', 'Enter', 'Enter', 'Space', 'Escape', 'ArrowUp', 'ArrowDown', 'ArrowLeft'],
  ...[
    'ArrowRight',
    'Home',
    'End',
    'PageDown',
    'Backspace',
    'Delete',
    'Control+z',
    'Control+y',
    '0',
    '1',
    '2',
  ],
  ...['3', '5', 'b', 'x', 'n', 'h', '?', '.'],
];
const TYPED = [
  ...['80', '12,5', '-1', '1e9', 'left foot cold', 'popliteal absent left', '20:61', ' ', '999999', '0'],
  ...['<img src=x onerror=alert(1)>', '😀 ß', '"}', '07:30'],
];

/** A record with a mark of its own in its free texts, so that it can be told from every other. */
export function recordOf(seed: number): Examination {
  const text = formatExamination(recordFrom(seed, 0.3)).replaceAll(/"(x| )"/g, `"§${seed}§"`);
  return { ...(JSON.parse(text) as Examination), examiner: `§${seed}§` };
}

/** How often each is drawn. */
const WEIGHTS: Readonly<Record<Act['do'], number>> = {
  use: 16,
  click: 4,
  drag: 1,
  press: 6,
  type: 1,
  set: 6,
  value: 3,
  width: 1,
  away: 2,
  reset: 1,
  history: 2,
};
const DRAWN = Object.entries(WEIGHTS).flatMap(([act, weight]) =>
  Array<Act['do']>(weight).fill(act as Act['do']),
);

function drawn(random: Random): Act {
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;
  const number = (below: number): number => Math.floor(random() * below);
  const kind = (): Kind => pick(['mouse', 'pen', 'touch']);
  const act = pick(DRAWN);
  switch (act) {
    case 'use':
      return { do: act, at: random(), choice: random(), text: pick(TYPED) };
    case 'click':
      return { do: act, at: random(), kind: kind(), times: pick([1, 1, 1, 2]) };
    case 'drag':
      return { do: act, at: random(), to: random(), kind: kind() };
    case 'press':
      return { do: act, key: pick(KEYS) };
    case 'type':
      return { do: act, text: pick(TYPED) };
    case 'set':
      return { do: act, which: number(1000), value: number(1000), proper: random() < 0.7 };
    case 'value': {
      const seed = number(1e6);
      if (random() < 0.75) return { do: act, seed };
      const [text = ''] = fc.sample(spoilt([formatExamination(recordOf(seed))]), { seed, numRuns: 1 });
      return { do: act, seed, text };
    }
    case 'width':
      return { do: act, px: 200 + number(1200) };
    case 'away':
      return { do: act, wait: random() < 0.5 };
    case 'reset':
      return { do: act };
    case 'history':
      return { do: act, to: pick(['undo', 'redo']) };
  }
}

/** The same acts for the same seed. */
export function actsFrom(seed: number, count: number): Act[] {
  const random = randomFrom(seed);
  return Array.from({ length: count }, () => drawn(random));
}

/** What of a record the value of a part is. */
export const PART_OF: Readonly<Record<string, ((record: Examination) => unknown) | undefined>> = {
  'limb-context': ({ context }) => context,
  'limb-history': ({ history }) => history,
  'limb-inspection': ({ inspection }) => inspection,
  'limb-pressures': ({ pressures }) => pressures,
  'limb-staging': ({ staging }) => staging,
  'bedside-test': ({ bedside }) => bedside?.elevation,
};
