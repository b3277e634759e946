import type { Unfinished } from '../common/unfinished.js';
import type { PartId } from '../../locale/whole.js';

/** What no field of the parts could take yet, by part. */
export type UnfinishedParts = Readonly<Record<string, Unfinished>>;

interface Part extends HTMLElement {
  unfinished: Unfinished | undefined;
  clearWatches?(): void;
}

const IN: Readonly<Record<string, PartId>> = {
  'limb-history': 'history',
  'limb-context': 'history',
  'limb-inspection': 'inspection',
  'bedside-test': 'bedside',
  'limb-note': 'pulses',
  'limb-pressures': 'pressures',
  'limb-staging': 'staging',
};

const keyOf = (part: Element): string =>
  [part.localName, part.getAttribute('test')].filter(Boolean).join(' ');
/** The parts that were opened; none before there is a root to look in. */
const partsIn = (root: ParentNode | undefined): Part[] => [
  ...(root?.querySelectorAll<Part>(Object.keys(IN).join(', ')) ?? []),
];

/** What stands unfinished in the parts that were opened; `undefined` where nothing does. */
export function unfinishedIn(root: ParentNode | undefined): UnfinishedParts | undefined {
  const all = partsIn(root).flatMap((part) =>
    part.unfinished ? [[keyOf(part), part.unfinished] as const] : [],
  );
  return all.length ? Object.fromEntries(all) : undefined;
}

/** The parts, and the tests, that must be open so that what is unfinished in them is seen. */
export function opensFor(unfinished: UnfinishedParts): {
  readonly parts: PartId[];
  readonly tests: string[];
} {
  const keys = Object.keys(unfinished).map((key) => key.split(' '));
  return {
    parts: keys.flatMap(([part = '']) => (Object.hasOwn(IN, part) ? [IN[part] as PartId] : [])),
    tests: keys.flatMap(([, test]) => (test ? [test] : [])),
  };
}

/** Another record is there: what was typed, timed or raised for the one before stays in no part. */
export function forgetIn(root: ParentNode | undefined): void {
  for (const part of partsIn(root)) {
    part.unfinished = undefined;
    part.clearWatches?.();
  }
}

/**
 * Hands each part its own.
 * @returns what belongs to parts that are not there yet
 */
export function handOut(root: ParentNode, unfinished: UnfinishedParts): UnfinishedParts | undefined {
  const left = { ...unfinished };
  for (const part of partsIn(root)) {
    const own = left[keyOf(part)];
    if (own) part.unfinished = own;
    Reflect.deleteProperty(left, keyOf(part));
  }
  return Object.keys(left).length ? left : undefined;
}
