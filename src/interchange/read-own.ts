import { type Json, LONGEST_TEXT } from '../examination/index.js';
import { readBodySite } from './body-site.js';
import { LOINC_GRADES, SYSTEMS } from './codes.js';
import { type Field, FIELDS_OF, INDEX, pathOf, SIDE } from './fields.js';
import { joined, type Reading, unread, withLists } from './found.js';
import { readKeptTexts } from './kept.js';
import { arteryAt, ownPlace } from './places.js';
import { at, codesIn, isElement, listAt, textAt } from './resource.js';
import { SCALE_NUMERALS } from './strength.js';
import { exactText, valueIn, valueNames } from './values.js';
import { legible } from './resource.js';

/*
 * Observations that carry this library's own codes. Every other code beside them must say the same, or the value is not taken.
 */

/** Elements of an Observation that say nothing of what was found. */
const FRAME = new Set(
  'resourceType id meta language text contained identifier status category code subject encounter effectiveDateTime _effectiveDateTime issued performer bodySite method interpretation note component hasMember derivedFrom basedOn partOf dataAbsentReason'.split(
    ' ',
  ),
);

const markers = (template: readonly string[]): number => template.filter((key) => key.startsWith('$')).length;

/** The part of the record that an Observation of a code is about. */
function groupFor(code: string): Field | undefined {
  return FIELDS_OF.get(code)?.at(-1);
}

/** The field of a facet within a part. */
function fieldIn(group: Field, code: string): Field | undefined {
  return FIELDS_OF.get(code)?.find(
    ({ template }) =>
      markers(template) === markers(group.template) && group.template.every((key, i) => template[i] === key),
  );
}

/** The field of the value of an Observation itself. */
function mainField(group: Field, own: unknown): Field | undefined {
  const { code } = group;
  if (group.kind !== 'object') return group;
  if (at(own, 'dataAbsentReason') !== undefined)
    return fieldIn(group, `${code}.couldNotExamine`) ?? fieldIn(group, `${code}.notDone`);
  if (codesIn(at(own, 'valueCodeableConcept'), SYSTEMS.value).includes(`${code}.empty`)) return group;
  if (code.startsWith('pulses.')) return fieldIn(group, `${code}.grade`);
  return code.startsWith('bruits.') ? fieldIn(group, `${code}.bruit`) : undefined;
}

/** Whether a reason for no value says nothing more than that there is none. */
function isBare(own: unknown): boolean {
  const absent = at(own, 'dataAbsentReason');
  const codes = codesIn(absent, SYSTEMS.absent);
  return codesIn(absent, SYSTEMS.value).length === 0 && codes.length === 1 && codes[0] === 'unknown';
}

/** The side of an Observation, or why it has none. */
function sideIn(
  group: Field,
  own: unknown,
): { readonly side?: string; readonly why?: 'no-side' | 'sides-differ' | 'no-place' } {
  if (!group.template.includes(SIDE)) return {};
  const { sides, places, own: named } = readBodySite(at(own, 'bodySite'));
  const [side] = sides;
  if (side === undefined) return { why: 'no-side' };
  if (sides.length > 1 || !group.sides.includes(side)) return { why: 'sides-differ' };
  const artery = arteryAt(group.code);
  const isElsewhere =
    named.some((place) => place !== side && place !== ownPlace(group.code, side)) ||
    places.some((place) => place.artery !== undefined && artery !== undefined && place.artery !== artery);
  return isElsewhere ? { why: 'no-place' } : { side };
}

/** Whether a published answer or interpretation beside a strength says another one. */
function contradicts(value: Json, own: unknown): boolean {
  const numerals = codesIn(at(own, 'valueCodeableConcept'), SYSTEMS.loinc).map((code) =>
    LOINC_GRADES.indexOf(code as never),
  );
  if (numerals.some((numeral) => numeral >= 0 && !SCALE_NUMERALS.has(`${numeral} ${String(value)}`)))
    return true;
  const means = listAt(own, 'interpretation').flatMap((one) => codesIn(one, SYSTEMS.interpretation));
  const isAbsent = value === 'absent' || value === 'none';
  return means.some((code) => (code === 'ND') !== isAbsent && ['ND', 'N', 'A', 'AA'].includes(code));
}

interface Where {
  readonly group: Field;
  readonly side: string | undefined;
  readonly index: number | undefined;
  readonly path: string;
}

/** One facet: a component, or the value of the Observation itself. */
function readFacet(field: Field, own: unknown, path: string, { side, index }: Where): Reading {
  const read = valueIn(field, own);
  if ('why' in read) return unread(path, read.why);
  const of = pathOf(field, side, index);
  if (field.kind === 'words' && !Array.isArray(read.value))
    return { found: [{ path: of, value: [read.value], at: path }], unread: [] };
  return { found: [{ path: of, value: read.value, at: path }], unread: [] };
}

function readComponent(component: Json, path: string, where: Where): Reading {
  const codes = codesIn(at(component, 'code'), SYSTEMS.field);
  if (codes.length !== 1) return unread(path, 'unknown-code');
  const [code = ''] = codes;
  if (code === 'position' || code.startsWith('kept')) return joined([]);
  const field = fieldIn(where.group, code);
  if (!field) return unread(path, 'unknown-code');
  const strange = isElement(component)
    ? Object.keys(component).filter((key) => !/^(code|id|dataAbsentReason|_?value[A-Z].*)$/.test(key))
    : [];
  if (strange.includes('modifierExtension')) return unread(path, 'modifier');
  return joined([
    readFacet(field, component, path, where),
    ...strange.map((key) => unread(`${path}.${key}`, 'not-kept')),
  ]);
}

function readNotes(own: unknown, where: Where): Reading {
  const notes = listAt(own, 'note');
  if (notes.length === 0) return joined([]);
  const field = fieldIn(where.group, `${where.group.code}.note`);
  const texts = notes.map((note) => exactText(note, 'text', legible));
  const text = texts.map((one) => ('value' in one ? String(one.value) : '')).join('\n');
  const path = `${where.path}.note`;
  if (!field) return unread(path, 'not-kept');
  if (texts.some((one) => 'why' in one) || text.length > LONGEST_TEXT) return unread(path, 'not-understood');
  return { found: [{ path: pathOf(field, where.side, where.index), value: text, at: path }], unread: [] };
}

function readMain(own: unknown, where: Where): Reading {
  const { group, path } = where;
  const names = valueNames(own);
  if (names.length === 0 && (at(own, 'dataAbsentReason') === undefined || isBare(own))) return joined([]);
  const field = mainField(group, own);
  const name = names[0]?.replace('_', '') ?? 'dataAbsentReason';
  if (!field) return unread(`${path}.${name}`, 'not-kept');
  const reading = readFacet(field, own, `${path}.${name}`, where);
  const value = reading.found[0]?.value;
  const isStrength = field.code.endsWith('.grade') || field.code.endsWith('.bruit');
  if (isStrength && value !== undefined && contradicts(value, own))
    return unread(`${path}.${name}`, 'contradicts');
  return reading;
}

/** The place in a list that an Observation names. */
export function positionOf(own: unknown): number | undefined {
  const component = listAt(own, 'component').find((one) =>
    codesIn(at(one, 'code'), SYSTEMS.field).includes('position'),
  );
  const value = at(component, 'valueInteger');
  return typeof value === 'number' && Number.isSafeInteger(value) && value >= 0 ? value : undefined;
}

/**
 * Reads an Observation that has this library's own code.
 * @param spare a place in its list for an entry that names none
 */
export function readOwn(own: Json, code: string, path: string, spare: number): Reading {
  const group = groupFor(code);
  if (!group) return unread(path, 'unknown-code');
  const { side, why } = sideIn(group, own);
  if (why) return unread(path, why);
  const index = group.template.includes(INDEX) ? (positionOf(own) ?? spare) : undefined;
  const where: Where = { group, side, index, path };
  const strange = Object.keys(own as object).filter((key) => !FRAME.has(key) && !/^_?value[A-Z]/.test(key));
  const contained = listAt(own, 'contained').length > 0 ? ['contained'] : [];
  const parts = [
    readMain(own, where),
    readNotes(own, where),
    ...listAt(own, 'component').map((one, i) => readComponent(one, `${path}.component[${i}]`, where)),
    ...[...strange, ...contained].map((key) => unread(`${path}.${key}`, 'not-kept')),
  ];
  const all = joined(parts);
  return { found: withLists(all.found), unread: all.unread };
}

/** Reads the entries of later versions that an Observation of the record itself keeps. */
export function readKept(own: Json, path: string): ReturnType<typeof readKeptTexts> {
  const texts: { text: string; at: string }[] = [];
  for (const [i, component] of listAt(own, 'component').entries()) {
    const [code] = codesIn(at(component, 'code'), SYSTEMS.field);
    const text = textAt(component, 'valueString') ?? '';
    const last = texts.at(-1);
    if (code === 'kept-more' && last) last.text += text;
    else if (code === 'kept' || code === 'kept-more') texts.push({ text, at: `${path}.component[${i}]` });
  }
  return readKeptTexts(texts);
}
