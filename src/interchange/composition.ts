import type { Json, RecordPath } from '../examination/index.js';
import { LOINC, SYSTEMS } from './codes.js';
import type { Context } from './context.js';
import { labelOf } from './labels.js';
import { narrative } from './narrative.js';
import { concept, type Element, element } from './resource.js';

interface Parts {
  readonly timestamp: string;
  readonly panel: Element;
  readonly members: readonly { readonly path: RecordPath; readonly resource: Element }[];
  readonly derived: readonly Element[];
  readonly reference: (resource: Element) => Json;
}

/** What stands first in a document: who, when, and a section for each part of the record. */
export function composition(
  context: Context,
  { timestamp, panel, members, derived, reference }: Parts,
): Element {
  const { language, options, tag } = context;
  const { exchange } = language.parts;
  const areas = [...new Set(members.map(({ path }) => String(path[0])))];
  const section = (code: string, title: string, entries: readonly Element[]): Json =>
    element({
      title,
      code: concept([{ system: SYSTEMS.field, code }], title),
      text: narrative([title], tag),
      entry: entries.map(reference),
    }) as Json;
  const isR5 = options.fhirVersion === 'R5';
  const id = context.idOf('composition');
  const identifier = { system: 'urn:ietf:rfc:3986', value: `urn:uuid:${id}` };
  const subject = options.subject as Json | undefined;
  return element({
    resourceType: 'Composition',
    id,
    language: tag,
    text: narrative([exchange.title], tag),
    identifier: isR5 ? [identifier] : identifier,
    status: context.status,
    type: concept(
      [
        { system: SYSTEMS.loinc, code: LOINC.findings },
        { system: SYSTEMS.field, code: 'record' },
      ],
      exchange.title,
    ),
    subject: isR5 && subject ? [subject] : subject,
    encounter: options.encounter as Json | undefined,
    date: timestamp,
    author: context.performer ?? [{ display: 'Pulse Map' }],
    title: exchange.title,
    section: [
      section('record', exchange.title, [panel]),
      ...areas.map((area) =>
        section(
          area,
          labelOf(language, area) ?? area,
          members.filter(({ path }) => path[0] === area).map(({ resource }) => resource),
        ),
      ),
      ...(derived.length ? [section('derived', exchange.fields.derived, derived)] : []),
    ],
  });
}
