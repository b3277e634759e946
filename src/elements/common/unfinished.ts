import type { Refusal } from './typing.js';

/**
 * What a person typed and no field could take yet, by field: text that stands in the form and not in the record. Plain data, which a page
 * that keeps drafts stores beside the record and sets again.
 */
export type Unfinished = Readonly<Record<string, Refusal>>;

/** The usable part of what a page kept; anything else is left out. */
export function readUnfinished(input: unknown): ReadonlyMap<string, Refusal> {
  if (typeof input !== 'object' || input === null) return new Map();
  return new Map(
    Object.entries(input as Record<string, unknown>).flatMap(([field, kept]): [string, Refusal][] => {
      const { typed, sentence } = (kept ?? {}) as Partial<Record<keyof Refusal, unknown>>;
      return typeof typed === 'string' && typeof sentence === 'string' ? [[field, { typed, sentence }]] : [];
    }),
  );
}

/** Text that no field could take was typed, mended or taken away: whoever keeps drafts should keep this one. */
export class UnfinishedChangeEvent extends Event {
  constructor() {
    super('unfinished-change', { bubbles: true, composed: true });
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'unfinished-change': UnfinishedChangeEvent;
  }
}
