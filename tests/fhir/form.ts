import fhirpath from 'fhirpath';
import r4Model from 'fhirpath/fhir-context/r4';
import r5Model from 'fhirpath/fhir-context/r5';
import definitions from './r5-definitions.json' with { type: 'json' };

/*
 * A form and its answers. The rules of a form hold for its items at every depth, which the checks of a bundle do not reach; and no package
 * looks whether answers keep to their form, so that is done here, knowing nothing of how either was made.
 */

type Json = { readonly [name: string]: unknown };
const isObject = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const list = (value: unknown, name: string): readonly Json[] => {
  const found = isObject(value) ? value[name] : undefined;
  return Array.isArray(found) ? found.filter(isObject) : [];
};
const text = (value: unknown, name: string): string => {
  const found = isObject(value) ? value[name] : undefined;
  return typeof found === 'string' ? found : '';
};

/** R4 4.0.1, from memory; those of R5 come from its definitions. */
const R4_RULES: readonly (readonly [key: string, rule: string])[] = [
  ['que-1', "(type='group' implies item.empty().not()) and (type='display' implies item.empty())"],
  ['que-3', "type!='display' or code.empty()"],
  ['que-4', 'answerOption.empty() or answerValueSet.empty()'],
  [
    'que-5',
    "(type='choice' or type='open-choice' or type='integer' or type='date' or type='time' or type='string' or type='quantity') or (answerValueSet.empty() and answerOption.empty())",
  ],
  ['que-8', "(type!='group' and type!='display') or initial.empty()"],
  [
    'que-10',
    "(type in ('boolean' | 'decimal' | 'integer' | 'string' | 'text' | 'url' | 'open-choice')) or maxLength.empty()",
  ],
  ['que-11', 'answerOption.empty() or initial.empty()'],
  ['que-13', 'repeats=true or initial.count() <= 1'],
];
const R5_RULES = (
  definitions.rules as unknown as { readonly Questionnaire: readonly string[][] }
).Questionnaire.flatMap(([key = '', path, rule = '']) =>
  path === 'Questionnaire.item' ? [[key, rule] as const] : [],
);
const compiled = (rules: readonly (readonly [string, string])[], model: typeof r4Model) =>
  rules.map(
    ([key, rule]) =>
      [key, fhirpath.compile({ base: 'Questionnaire.item', expression: rule }, model)] as const,
  );
const RULES = { R4: compiled(R4_RULES, r4Model), R5: compiled(R5_RULES, r5Model) };

/** Every item with the linkIds around it. */
function flat(
  items: readonly Json[],
  around: readonly string[] = [],
): readonly { item: Json; around: readonly string[] }[] {
  return items.flatMap((item) => [
    { item, around },
    ...flat(list(item, 'item'), [...around, text(item, 'linkId')]),
  ]);
}

/** What is wrong with the items of a form. */
export function formFaults(form: unknown, version: 'R4' | 'R5'): readonly string[] {
  const items = flat(list(form, 'item')).map(({ item }) => item);
  const ids = items.map((item) => text(item, 'linkId'));
  const twice = ids
    .filter((id, i) => id === '' || ids.indexOf(id) !== i)
    .map((id) => `${id}: twice, or none`);
  const rules = items.flatMap((item) =>
    RULES[version].flatMap(([key, rule]) =>
      (rule(item, { resource: form as object }) as unknown[])[0] === false
        ? [`${text(item, 'linkId')}: ${key}`]
        : [],
    ),
  );
  return [
    ...twice,
    ...rules,
    ...items.filter((item) => !text(item, 'text')).map((item) => `${text(item, 'linkId')}: no text`),
  ];
}

const VALUE_OF: Readonly<Record<string, string>> = {
  choice: 'valueCoding',
  coding: 'valueCoding',
  boolean: 'valueBoolean',
  quantity: 'valueQuantity',
  string: 'valueString',
  text: 'valueString',
  dateTime: 'valueDateTime',
};

function answerFaults(question: Json, answer: Json, path: string): readonly string[] {
  const names = Object.keys(answer).filter((name) => /^_?value/.test(name));
  const wanted = VALUE_OF[text(question, 'type')] ?? '';
  if (names.length === 0 || names.some((name) => name.replace('_', '') !== wanted))
    return [`${path}: not ${wanted}`];
  const options = list(question, 'answerOption').map(({ valueCoding }) => valueCoding);
  const coding = answer.valueCoding;
  const isOption = options.some(
    (one) => text(one, 'system') === text(coding, 'system') && text(one, 'code') === text(coding, 'code'),
  );
  const units = list(question, 'extension').filter(({ url }) =>
    String(url).endsWith('questionnaire-unitOption'),
  );
  const isUnit = units.some(
    ({ valueCoding }) => text(valueCoding, 'code') === text(answer.valueQuantity, 'code'),
  );
  const most = question.maxLength;
  return [
    ...(options.length && !isOption ? [`${path}: not offered`] : []),
    ...(units.length && !isUnit ? [`${path}: another unit`] : []),
    ...(typeof most === 'number' && text(answer, wanted).length > most ? [`${path}: too long`] : []),
  ];
}

/** In which answers depart from their form: unknown or misplaced questions, order, types, options, units, lengths and numbers of answers. */
export function answersFaults(form: unknown, response: unknown): readonly string[] {
  const visit = (questions: readonly Json[], items: readonly Json[], path: string): readonly string[] => {
    const order = questions.map((question) => text(question, 'linkId'));
    const at = items.map((item) => order.indexOf(text(item, 'linkId')));
    return items.flatMap((item, i) => {
      const place = `${path}/${text(item, 'linkId')}`;
      const question = questions[at[i] as number];
      if (!question) return [`${place}: not asked here`];
      const answers = list(item, 'answer');
      const isGroup = question.type === 'group';
      return [
        ...(i > 0 && (at[i - 1] as number) > (at[i] as number) ? [`${place}: out of order`] : []),
        ...(i > 0 && at[i - 1] === at[i] && !(isGroup && question.repeats) ? [`${place}: twice`] : []),
        ...(text(item, 'text') === text(question, 'text') ? [] : [`${place}: another question`]),
        ...(isGroup === answers.length > 0 ? [`${place}: ${isGroup ? 'answered' : 'not answered'}`] : []),
        ...(answers.length > 1 && !question.repeats ? [`${place}: several answers`] : []),
        ...answers.flatMap((answer) => answerFaults(question, answer, place)),
        ...visit(list(question, 'item'), list(item, 'item'), place),
      ];
    });
  };
  const named = text(response, 'questionnaire');
  const isNamed = named === `${text(form, 'url')}|${text(form, 'version')}`;
  return [
    ...(isNamed ? [] : [`${named}: another form`]),
    ...visit(list(form, 'item'), list(response, 'item'), ''),
  ];
}
