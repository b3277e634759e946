import { type Examination, type Json, parseExamination, type RecordPath } from '../examination/index.js';
import { SYSTEMS } from './codes.js';
import { composition } from './composition.js';
import { type Context, contextOf } from './context.js';
import { derivedObservations } from './derived.js';
import { groupOf, type Leaf, leavesOf } from './fields.js';
import { keptTexts } from './kept.js';
import { observationOf } from './observation.js';
import type { BundleOptions } from './options.js';
import { concept, type Element, element } from './resource.js';
import { fhirTime } from './values.js';

/** The leaves of a record by the part that they belong to, the record itself first. */
function partsOf(examination: Examination): readonly (readonly [RecordPath, readonly Leaf[]])[] {
  const parts = new Map<string, [RecordPath, Leaf[]]>([['[]', [[], []]]]);
  for (const leaf of leavesOf(examination)) {
    const path = groupOf(leaf.path);
    const key = JSON.stringify(path);
    const part = parts.get(key);
    if (part) part[1].push(leaf);
    else parts.set(key, [path, [leaf]]);
  }
  return [...parts.values()];
}

/** What this version does not know, word by word. */
function kept({ examination, language }: Context): readonly Element[] {
  return keptTexts(examination).flatMap((parts) =>
    parts.map((valueString, i) => ({
      code: concept(
        [{ system: SYSTEMS.field, code: i ? 'kept-more' : 'kept' }],
        language.parts.exchange.fields.kept,
      ),
      valueString,
    })),
  );
}

const fullUrl = (resource: Element): string => `urn:uuid:${String(resource.id)}`;
const reference = (resource: Element): Json => ({ reference: fullUrl(resource) });

/** One FHIR Bundle, as plain JSON. */
export interface Bundle {
  readonly resourceType: 'Bundle';
  readonly type: 'collection' | 'document';
  readonly entry: readonly { readonly fullUrl: string; readonly resource: Json }[];
  readonly [name: string]: Json | undefined;
}

/**
 * A record as a FHIR Bundle, whole: an Observation for each site and side, test, pressure, limb and list entry, a panel that names them
 * all, and, marked as such, what follows from them. Equal input gives equal output; nothing of the record is left out.
 * @param examination a record, or anything that `parseExamination` reads as one
 * @throws RangeError for what is no record, and for a document that has no point in time
 */
export function toBundle(examination: Examination, options: BundleOptions = {}): Bundle {
  const parsed = parseExamination(examination);
  if (!parsed.ok) throw new RangeError(`no record: ${JSON.stringify(parsed.faults[0])}`);
  const context = contextOf(parsed.value, options);
  const [[, own] = [[], []], ...parts] = partsOf(parsed.value);
  const members = parts.map(([path, leaves]) => ({ path, resource: observationOf(context, path, leaves) }));
  const derived = options.derived === false ? [] : derivedObservations(context, members, reference);
  const all = [...members.map(({ resource }) => resource), ...derived];
  const alone = observationOf(context, [], own);
  const panel = element({
    ...alone,
    component: [...(alone.component as readonly Json[]), ...(kept(context) as readonly Json[])],
    hasMember: all.map(reference),
  });
  const kind = options.kind ?? 'collection';
  const time = options.timestamp ?? parsed.value.examinedAt;
  const timestamp = time === undefined ? undefined : fhirTime(time);
  if (kind === 'document' && timestamp === undefined)
    throw new RangeError('a document needs a point in time: set `timestamp`, or `examinedAt` of the record');
  const head =
    kind === 'document'
      ? [composition(context, { timestamp: timestamp as string, panel, members, derived, reference })]
      : [];
  const entry = [...head, panel, ...all].map((resource) => ({
    fullUrl: fullUrl(resource),
    resource: resource as Json,
  }));
  const id = context.idOf('bundle');
  return element({
    resourceType: 'Bundle',
    id,
    identifier: { system: 'urn:ietf:rfc:3986', value: `urn:uuid:${id}` },
    type: kind,
    timestamp: options.timestamp !== undefined || kind === 'document' ? timestamp : undefined,
    entry: entry as unknown as Json,
  }) as unknown as Bundle;
}
