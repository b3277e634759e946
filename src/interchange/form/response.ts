import { type Examination, type Json, parseExamination, type RecordPath } from '../../examination/index.js';
import { fieldAt } from '../../examination/patch.js';
import { summaryStatements } from '../../statements/index.js';
import { type Context, contextOf } from '../context.js';
import { INDEX, type Leaf } from '../fields.js';
import { keptTexts } from '../kept.js';
import { narrative } from '../narrative.js';
import type { BundleOptions } from '../options.js';
import { type Element, element, legible } from '../resource.js';
import { wordText } from '../speech.js';
import { elementsOf, fhirTime } from '../values.js';
import { EMPTY, EMPTY_LIST, FORM, type FormItem, holds, KEPT, wordsFor, YES } from './items.js';
import { codingOf, FORM_URL, FORM_VERSION } from './questionnaire.js';
import { itemText, optionText } from './texts.js';

/** How a record is written as the answers to the form. */
export interface ResponseOptions extends Pick<
  BundleOptions,
  'fhirVersion' | 'subject' | 'encounter' | 'performer' | 'language' | 'id' | 'timestamp'
> {
  /** The canonical URL of the form where the host publishes it, with its version after a `|`. */
  readonly questionnaire?: string;
}

/** A FHIR QuestionnaireResponse, as plain JSON. */
export interface QuestionnaireResponse {
  readonly resourceType: 'QuestionnaireResponse';
  readonly questionnaire: string;
  readonly item: readonly Json[];
  readonly [name: string]: Json | undefined;
}

const STATUS: Readonly<Record<string, string>> = {
  preliminary: 'in-progress',
  final: 'completed',
  amended: 'amended',
  'entered-in-error': 'entered-in-error',
};

/** The answers of one value. */
function answersOf({ language, examination }: Context, item: FormItem, leaf: Leaf): readonly Element[] {
  if (item.type !== 'choice') return elementsOf(leaf, () => undefined);
  const say = wordText(language, examination, leaf);
  return wordsFor(item, leaf.value).map((word) => {
    const isOwn = [EMPTY, EMPTY_LIST, YES].includes(word);
    const display = isOwn ? optionText(language, item, word) : legible(say(word) ?? word);
    return { valueCoding: codingOf(item, word, display) };
  });
}

/** The items of a record below a place, in the order of the form; what was not said has none. */
function responded(context: Context, items: readonly FormItem[], place: number | undefined): readonly Json[] {
  return items.flatMap((item): readonly Json[] => {
    const path: RecordPath = item.way.map((key) => (key === INDEX ? (place ?? 0) : key));
    const value = fieldAt(context.examination, path) as Json | undefined;
    if (value === undefined) return [];
    const { linkId, field, items: inner, repeats } = item;
    const told = (own: Element): Json =>
      element({ linkId, text: itemText(context.language, item), ...own }) as Json;
    if (item.type === 'group' && repeats)
      return (value as readonly Json[]).map((_, i) => told({ item: responded(context, inner, i) }));
    if (item.type === 'group') {
      const within = responded(context, inner, place);
      return within.length ? [told({ item: within })] : [];
    }
    if (!holds(item, value)) return [];
    const leaf = { field, kind: field.kind as Leaf['kind'], path, value };
    return [told({ answer: answersOf(context, item, leaf) as readonly Json[] })];
  });
}

/** Entries of later versions, each as its parts. */
function keptItems({ examination, language }: Context): readonly Json[] {
  const text = language.parts.exchange.fields.kept;
  return keptTexts(examination).map((parts) => ({
    linkId: KEPT.group,
    text,
    item: [{ linkId: KEPT.part, text, answer: parts.map((valueString) => ({ valueString })) }],
  }));
}

/**
 * A record as the answers to `toQuestionnaire`, whole, in the order of the form. Equal input gives equal output. What follows from the record
 * is not in it; `toBundle` writes that.
 * @param examination a record, or anything that `parseExamination` reads as one
 * @throws RangeError for what is no record
 */
export function toResponse(examination: Examination, options: ResponseOptions = {}): QuestionnaireResponse {
  const parsed = parseExamination(examination);
  if (!parsed.ok) throw new RangeError(`no record: ${JSON.stringify(parsed.faults[0])}`);
  const context = contextOf(parsed.value, options);
  const { language, tag, performer } = context;
  const time = options.timestamp ?? parsed.value.examinedAt;
  const lines = language.parts.whole.summary(summaryStatements(parsed.value)).flatMap((part) => part.lines);
  return element({
    resourceType: 'QuestionnaireResponse',
    id: context.idOf('response'),
    language: tag,
    text: narrative([language.parts.exchange.title, ...lines], tag),
    questionnaire: options.questionnaire ?? `${FORM_URL}|${FORM_VERSION}`,
    status: STATUS[context.status],
    subject: context.options.subject as Json | undefined,
    encounter: context.options.encounter as Json | undefined,
    authored: time === undefined ? undefined : fhirTime(time),
    author: (performer as readonly Json[] | undefined)?.[0],
    item: [...responded(context, FORM, undefined), ...keptItems(context)],
  }) as unknown as QuestionnaireResponse;
}
