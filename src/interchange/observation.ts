import { type Json, pulseAt, type RecordPath, stepOf } from '../examination/index.js';
import { LOINC_GRADES, SNOMED, SYSTEMS } from './codes.js';
import type { Context } from './context.js';
import { fieldOf, type Leaf, sideOf } from './fields.js';
import { labelOf } from './labels.js';
import { narrative } from './narrative.js';
import { publishedCodes } from './published.js';
import { bodySite, isSite } from './places.js';
import { concept, type Element, element, legible } from './resource.js';
import { narrated, placeText, titleOf, wordText } from './speech.js';
import { elementsOf, isReason, primitive } from './values.js';

/*
 * One part of the record as one Observation: what was found on one side of one thing, with its facets as components, since they share
 * side and time, and nothing else does.
 */

/** The code of a part or facet: published ones first. */
function codeOf(code: string, text: string | undefined): Json {
  return concept([...publishedCodes(code), { system: SYSTEMS.field, code }], text);
}

function interpretation(code: string): Json {
  return [concept([{ system: SYSTEMS.interpretation, code }])];
}

const GRADE_MEANS: Readonly<Record<string, string>> = {
  absent: 'ND',
  normal: 'N',
  reduced: 'A',
  bounding: 'A',
};

/** What FHIR calls the value of the main leaf, where it has a word for it. */
function interpreted({ field: { code }, value, kind }: Leaf): Json | undefined {
  if (/^pulses\..*\.grade$/.test(code)) return interpretation(GRADE_MEANS[String(value)] ?? 'A');
  if (/^bruits\..*\.bruit$/.test(code)) return interpretation(value === 'none' ? 'ND' : 'A');
  return kind === 'pressure' && value === 0 ? interpretation('ND') : undefined;
}

/** A strength of a pulse with the numeral of its scale, where that has a published code. */
function withNumeral({ examination }: Context, leaf: Leaf, own: Element): Element {
  const [part, site = ''] = leaf.field.code.split('.');
  if (part !== 'pulses' || !isSite(site) || !own.valueCodeableConcept) return own;
  const step = stepOf(
    pulseAt(examination, { site, side: sideOf(leaf.path) ?? 'midline' }),
    examination.scale,
  );
  const numeral = leaf.value === 'absent' ? 0 : step?.numeral;
  const loinc = numeral === null || numeral === undefined ? undefined : LOINC_GRADES[numeral];
  if (!loinc) return own;
  const value = own.valueCodeableConcept as { coding: readonly Json[] };
  return {
    valueCodeableConcept: { ...value, coding: [{ system: SYSTEMS.loinc, code: loinc }, ...value.coding] },
  };
}

/** What a part of the record consists of in FHIR. */
interface Facets {
  readonly main: Leaf | undefined;
  readonly reason: Leaf | undefined;
  readonly notes: readonly Leaf[];
  readonly rest: readonly Leaf[];
}

function facetsOf(path: RecordPath, leaves: readonly Leaf[]): Facets {
  const isMain = (leaf: Leaf): boolean =>
    leaf.kind !== 'words' &&
    !isReason(leaf) &&
    (leaf.path.length === path.length || /^(pulses\..*\.grade|bruits\..*\.bruit)$/.test(leaf.field.code));
  const main = leaves.find(isMain);
  const reason = main ? undefined : leaves.find(isReason);
  const isNote = (leaf: Leaf): boolean => leaf.kind === 'text' && leaf.path.at(-1) === 'note';
  return {
    main,
    reason,
    notes: leaves.filter(isNote),
    rest: leaves.filter((leaf) => leaf !== main && leaf !== reason && !isNote(leaf)),
  };
}

function components({ language, examination }: Context, leaves: readonly Leaf[]): readonly Element[] {
  return leaves.flatMap((leaf) => {
    const code = codeOf(leaf.field.code, labelOf(language, leaf.field.code));
    return elementsOf(leaf, wordText(language, examination, leaf)).map((own) => element({ code, ...own }));
  });
}

/** The place in its list, which the order of a bundle does not keep. */
function position(context: Context, index: number): Element {
  return {
    code: codeOf('position', context.language.parts.exchange.fields.position),
    valueInteger: index,
  };
}

const CATEGORIES: readonly (readonly [RegExp, string])[] = [
  [/^(context|history)/, 'survey'],
  [/./, 'exam'],
];

/** What every Observation of the bundle has. */
export function frame(context: Context, key: string, title: string, lines: readonly string[]): Element {
  const { options, tag } = context;
  return {
    resourceType: 'Observation',
    id: context.idOf(key),
    language: tag,
    text: narrative(lines.length ? [title, ...lines] : [title], tag),
    status: context.status,
    subject: options.subject as Json | undefined,
    encounter: options.encounter as Json | undefined,
    ...context.effective,
    performer: context.performer,
  };
}

function categoryOf(code: string): Json {
  const [, category = 'exam'] = CATEGORIES.find(([pattern]) => pattern.test(code)) ?? [];
  return [concept([{ system: SYSTEMS.category, code: category }])];
}

/** The place of a part of the record; of a graft that of its artery. */
function placeOf(
  { language, options }: Context,
  code: string,
  path: RecordPath,
  leaves: readonly Leaf[],
): Json | undefined {
  const side = sideOf(path);
  if (!side) return undefined;
  const words = { place: placeText(language, code, side), side: language.map.anatomy.sides[side] };
  return leaves.length ? bodySite(code, side, words, { snomed: options.snomed === true }) : undefined;
}

/** The Observation of one part of the record. */
export function observationOf(context: Context, path: RecordPath, leaves: readonly Leaf[]): Element {
  const { language, examination, options } = context;
  const code = fieldOf(path)?.code ?? 'record';
  const { main, reason, notes, rest } = facetsOf(path, leaves);
  const say = (leaf: Leaf) => wordText(language, examination, leaf);
  const index = path.at(-1);
  const component = [
    ...(typeof index === 'number' ? [position(context, index)] : []),
    ...components(context, rest),
  ];
  const value = main && elementsOf(main, say(main))[0];
  const absent = reason && elementsOf(reason, say(reason))[0];
  const isBare = !value && !absent && component.length === 0;
  const title = titleOf(language, path);
  const isPulse = /^pulses\.[^.]+$/.test(code);
  return element({
    ...frame(context, JSON.stringify(path), title, narrated(language, examination, path, leaves)),
    category: categoryOf(code),
    code: codeOf(code, title),
    bodySite: placeOf(context, code, path, leaves),
    method:
      isPulse && main && options.snomed
        ? concept([{ system: SYSTEMS.snomed, code: SNOMED.palpation }])
        : undefined,
    ...(main && value ? withNumeral(context, main, value) : {}),
    ...absent,
    ...(isBare && { dataAbsentReason: concept([{ system: SYSTEMS.absent, code: 'unknown' }]) }),
    interpretation: main && interpreted(main),
    note: notes.map(({ value: text }) => primitive('text', text as string, legible(text as string)) as Json),
    component: component as Json,
  });
}
