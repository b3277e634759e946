import { FORMAT_MAJOR, FORMAT_MINOR, type Json, LONGEST_TEXT } from '../../examination/index.js';
import { SYSTEMS, unitOf } from '../codes.js';
import type { Language } from '../labels.js';
import { narrative } from '../narrative.js';
import { publishedCodes } from '../published.js';
import { element, type FhirVersion, listAt, ownValue } from '../resource.js';
import { languageOf } from '../speech.js';
import { FORM, type FormItem, KEPT } from './items.js';
import { itemText, optionText } from './texts.js';

/** What names the form where a host gives it no address of its own; it leads to no server. */
export const FORM_URL = 'urn:pulse-map:questionnaire:examination';
/** The version of the form: that of the record. */
export const FORM_VERSION = `${FORMAT_MAJOR}.${FORMAT_MINOR}`;

const HIDDEN = 'http://hl7.org/fhir/StructureDefinition/questionnaire-hidden';
const UNIT_OPTION = 'http://hl7.org/fhir/StructureDefinition/questionnaire-unitOption';

/** How the form is written. */
export interface QuestionnaireOptions {
  /** R4 (4.0.1) by default. */
  readonly fhirVersion?: FhirVersion;
  /** Language of the questions, as BCP 47 tag; it must have been registered. English by default. */
  readonly language?: string;
  /** The canonical URL under which the host publishes the form. */
  readonly url?: string;
}

/** A FHIR Questionnaire, as plain JSON. */
export interface Questionnaire {
  readonly resourceType: 'Questionnaire';
  readonly url: string;
  readonly version: string;
  readonly item: readonly Json[];
  readonly [name: string]: Json | undefined;
}

const HIDDEN_PARTS = new Set(['format', 'status', 'marks', 'marks.none', 'amendments', 'amendments.none']);

/** No question to a person: what a program notes, what is drawn on the figure, and that of something no more was said. */
function isHidden({ role, linkId }: FormItem): boolean {
  return HIDDEN_PARTS.has(linkId) || (role === 'empty' && linkId.endsWith('.no-more'));
}

function extensionsOf(item: FormItem): readonly Json[] {
  const unit = item.role === 'figure' ? 'mm[Hg]' : unitOf(item.field.code);
  return [
    ...(isHidden(item) ? [{ url: HIDDEN, valueBoolean: true }] : []),
    ...(item.type === 'quantity'
      ? [{ url: UNIT_OPTION, valueCoding: { system: SYSTEMS.ucum, code: unit, display: unit } }]
      : []),
  ];
}

/** The coding of a word, which is the answer, too. */
export function codingOf(item: FormItem, word: string, display: string): Json {
  return { ...(listAt(ownValue(item.field.code, word), 'coding')[0] as object), display } as Json;
}

function itemElement(language: Language, isR5: boolean, item: FormItem): Json {
  const { linkId, field, type, role, options, repeats, items } = item;
  const isCode = role === 'value' || role === 'figure';
  return element({
    extension: extensionsOf(item) as Json,
    linkId,
    code: isCode
      ? ([...publishedCodes(field.code), { system: SYSTEMS.field, code: field.code }] as unknown as Json)
      : undefined,
    text: itemText(language, item),
    type: type === 'choice' && isR5 ? 'coding' : type,
    repeats: repeats ? true : undefined,
    maxLength: field.kind === 'text' ? LONGEST_TEXT : undefined,
    answerConstraint: isR5 && type === 'choice' ? 'optionsOnly' : undefined,
    answerOption: options.map((word) => ({
      valueCoding: codingOf(item, word, optionText(language, item, word)),
    })),
    item: items.map((one) => itemElement(language, isR5, one)),
  }) as Json;
}

function keptElement({ parts }: Language): Json {
  const text = parts.exchange.fields.kept;
  return {
    extension: [{ url: HIDDEN, valueBoolean: true }],
    linkId: KEPT.group,
    text,
    type: 'group',
    repeats: true,
    item: [{ linkId: KEPT.part, text, type: 'string', repeats: true }],
  };
}

/**
 * The record as a FHIR Questionnaire, for hosts that keep forms: every field an item, each side an item of its own. Equal options give equal
 * output. An answer that is left blank says nothing; none of the questions must be answered but the scale.
 */
export function toQuestionnaire(options: QuestionnaireOptions = {}): Questionnaire {
  const { fhirVersion, language: tag = 'en', url = FORM_URL } = options;
  const language = languageOf(tag);
  const { title } = language.parts.exchange;
  return element({
    resourceType: 'Questionnaire',
    id: 'pulse-map-examination',
    language: tag,
    text: narrative([title], tag),
    url,
    version: FORM_VERSION,
    name: 'PulseMapExamination',
    title,
    status: 'active',
    subjectType: ['Patient'],
    item: [...FORM.map((item) => itemElement(language, fhirVersion === 'R5', item)), keptElement(language)],
  }) as unknown as Questionnaire;
}
