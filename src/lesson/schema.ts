import * as z from 'zod/mini';
import { LEVELS, LIMB_KINDS, type LimbKey, limbKey, LIMBS } from '../anatomy/index.js';
import { only, type RuleParams } from '../examination/schema/common.js';
import { examinationSchema } from '../examination/schema/record.js';
import type { RuleCode } from '../examination/index.js';
import { patientSchema } from '../flow/schema.js';
import { LANGUAGES, type LanguageTag } from '../locale/index.js';
import { LESSON_CAUSES } from './causes.js';
import { LESSON_FORMAT } from './lesson.js';
import { STEP_IDS } from './steps.js';

/** Longest text of a lesson in one language, in characters. */
const LONGEST = 2000;
/** Longest lesson that can be planned, in minutes. */
const LONGEST_LESSON = 240;

const SHORT_NAME = /^[a-z0-9]+(-[a-z0-9]+)*$/;

const TAGS = LANGUAGES.map(({ tag }) => tag) as [LanguageTag, ...LanguageTag[]];
const limbKeys = LIMBS.map(limbKey) as [LimbKey, ...LimbKey[]];

const textSchema = z
  .strictObject(
    Object.fromEntries(
      TAGS.map((tag) => [tag, z.optional(z.string().check(z.minLength(1), z.maxLength(LONGEST)))]),
    ) as Record<LanguageTag, z.ZodMiniOptional<z.ZodMiniString>>,
  )
  .check(only('some-language', (text) => Object.keys(text).length > 0, true));

const additionSchema = z.strictObject({
  notes: z.optional(textSchema),
  question: z.optional(textSchema),
});

type Texts = z.infer<typeof textSchema>;

/** The languages that a text lacks of those that the title has. */
const lacking = (title: Texts, text: Texts | undefined): boolean =>
  text !== undefined && Object.keys(title).some((tag) => !Object.hasOwn(text, tag));

type Fields = z.infer<typeof fields>;

/** A rule of the whole lesson that is told at one of its fields. */
const ruleAt = (path: readonly string[], code: RuleCode, holds: (lesson: Fields) => boolean) =>
  z.refine<Fields>(holds, {
    path: [...path],
    params: { expected: { code }, alone: true } satisfies RuleParams as never,
  });

/** Every text is in all languages of the title. */
const inAllLanguages = (...path: readonly string[]) =>
  ruleAt(path, 'title-languages', (lesson) => {
    let at: unknown = lesson;
    for (const name of path) at = (at as Record<string, unknown> | undefined)?.[name];
    return !lacking(lesson.title, at as Texts | undefined);
  });

const fields = z.strictObject({
  format: z.literal(LESSON_FORMAT),
  id: z
    .string()
    .check(
      z.maxLength(60),
      only('short-name', (id) => SHORT_NAME.test(id), true),
    )
    .register(z.globalRegistry, { pattern: SHORT_NAME.source }),
  title: textSchema,
  story: textSchema,
  real: z.optional(z.literal(true)),
  minutes: z.optional(z.number().check(z.minimum(1), z.maximum(LONGEST_LESSON))),
  limbs: z._default(z.array(z.enum(LIMB_KINDS)).check(z.minLength(1)), [...LIMB_KINDS]),
  patient: z.optional(patientSchema),
  examination: z.optional(examinationSchema),
  without: z._default(z.array(z.enum(STEP_IDS as [string, ...string[]])), []),
  steps: z._default(z.partialRecord(z.enum(STEP_IDS as [string, ...string[]]), additionSchema), {}),
  answer: z.strictObject({
    lesions: z.array(z.strictObject({ limb: z.enum(limbKeys), level: z.enum(LEVELS) })),
    cause: z.optional(z.enum(LESSON_CAUSES)),
    text: textSchema,
    differs: z.optional(textSchema),
  }),
});

/** A lesson as written down, with every default filled in. */
export const lessonSchema = fields.check(
  ruleAt(
    ['patient'],
    'someone-to-examine',
    ({ patient, examination }) => patient !== undefined || examination !== undefined,
  ),
  inAllLanguages('story'),
  inAllLanguages('answer', 'text'),
  inAllLanguages('answer', 'differs'),
  ...STEP_IDS.flatMap((id) =>
    (['notes', 'question'] as const).map((name) => inAllLanguages('steps', id, name)),
  ),
);

/** The schema of a lesson as JSON Schema (draft 2020-12), for editors and other programs. */
export function lessonJsonSchema(): unknown {
  return z.toJSONSchema(fields, { io: 'input', unrepresentable: 'any' });
}
