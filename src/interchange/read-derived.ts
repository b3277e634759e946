import type { Examination, Json } from '../examination/index.js';
import { equal } from '../examination/json.js';
import { SYSTEMS } from './codes.js';
import { contextOf } from './context.js';
import { derivedObservations } from './derived.js';
import type { Unread } from './found.js';
import { at, codesIn, textAt } from './resource.js';

interface Entry {
  readonly resource: Json;
  readonly path: string;
}

const nameOf = (resource: unknown): string =>
  JSON.stringify([
    codesIn(at(resource, 'code'), SYSTEMS.derived),
    codesIn(at(resource, 'bodySite'), SYSTEMS.place),
  ]);

/**
 * What a bundle of this library says to follow from its findings, and does not: a changed figure must not pass for a finding. The words are
 * compared in the language in which they were written.
 */
export function changedDerived(examination: Examination, entries: readonly Entry[]): readonly Unread[] {
  const made = new Map<string, ReadonlyMap<string, readonly unknown[]>>();
  const madeIn = (language: string): ReadonlyMap<string, readonly unknown[]> => {
    const known = made.get(language);
    if (known) return known;
    const byName = new Map<string, readonly unknown[]>();
    for (const one of derivedObservations(contextOf(examination, { language }), [], () => null)) {
      const name = nameOf(one);
      byName.set(name, [...(byName.get(name) ?? []), one]);
    }
    made.set(language, byName);
    return byName;
  };
  return entries.flatMap(({ resource, path }): readonly Unread[] => {
    const same = madeIn(textAt(resource, 'language') ?? 'en').get(nameOf(resource)) ?? [];
    const isSame = same.some(
      (one) =>
        equal(at(one, 'valueQuantity') ?? null, at(resource, 'valueQuantity') ?? null) &&
        textAt(one, 'valueString') === textAt(resource, 'valueString'),
    );
    return isSame ? [] : [{ path, why: 'derived-differs' }];
  });
}
