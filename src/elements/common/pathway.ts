import { type Pathway, readPathway } from '../../triage/index.js';

const known = new WeakMap<object, Pathway>();

/** The usable part of the pathway that a page sets; what cannot be used is told to its developer, once for each object. */
export function pathwayOf(input: unknown): Pathway {
  const before = typeof input === 'object' && input ? known.get(input) : undefined;
  if (before) return before;
  const { pathway, faults } = readPathway(input);
  for (const fault of faults)
    // eslint-disable-next-line no-console -- a mistake of the page, told where its developer looks
    console.warn(`pathway: ${fault}; shown without it`);
  if (typeof input === 'object' && input) known.set(input, pathway);
  return pathway;
}
