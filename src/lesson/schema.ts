import * as z from 'zod/mini';
import { LEVELS, LIMB_KINDS, type LimbKey, limbKey, LIMBS } from '../anatomy/index.js';
import { examinationSchema } from '../examination/schema/record.js';
import { patientSchema } from '../flow/schema.js';
import { LANGUAGES, type LanguageTag } from '../locale/index.js';
import { LESSON_FORMAT } from './lesson.js';
import { STEP_IDS } from './steps.js';

/** Longest text of a lesson in one language, in characters. */
const LONGEST = 2000;
/** Longest lesson that can be planned, in minutes. */
const LONGEST_LESSON = 240;

const TAGS = LANGUAGES.map(({ tag }) => tag) as [LanguageTag, ...LanguageTag[]];
const limbKeys = LIMBS.map(limbKey) as [LimbKey, ...LimbKey[]];

const textSchema = z
  .strictObject(
    Object.fromEntries(
      TAGS.map((tag) => [tag, z.optional(z.string().check(z.minLength(1), z.maxLength(LONGEST)))]),
    ) as Record<LanguageTag, z.ZodMiniOptional<z.ZodMiniString>>,
  )
  .check(z.refine((text) => Object.keys(text).length > 0, { error: 'a text in at least one language' }));

const additionSchema = z.strictObject({
  notes: z.optional(textSchema),
  question: z.optional(textSchema),
});

type Texts = z.infer<typeof textSchema>;

/** The languages that a text lacks of those that the title has. */
const lacking = (title: Texts, text: Texts | undefined): boolean =>
  text !== undefined && Object.keys(title).some((tag) => !Object.hasOwn(text, tag));

/** Every text is in all languages of the title. */
const inAllLanguages = (path: readonly string[], error: string) =>
  z.refine<z.infer<typeof fields>>(
    (lesson) => {
      let at: unknown = lesson;
      for (const name of path) at = (at as Record<string, unknown> | undefined)?.[name];
      return !lacking(lesson.title, at as Texts | undefined);
    },
    { path: [...path], error },
  );

const fields = z.strictObject({
  format: z.literal(LESSON_FORMAT),
  id: z.string().check(z.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/), z.maxLength(60)),
  title: textSchema,
  story: textSchema,
  minutes: z.optional(z.number().check(z.minimum(1), z.maximum(LONGEST_LESSON))),
  limbs: z._default(z.array(z.enum(LIMB_KINDS)).check(z.minLength(1)), [...LIMB_KINDS]),
  patient: z.optional(patientSchema),
  examination: z.optional(examinationSchema),
  without: z._default(z.array(z.enum(STEP_IDS as [string, ...string[]])), []),
  steps: z._default(z.partialRecord(z.enum(STEP_IDS as [string, ...string[]]), additionSchema), {}),
  answer: z.strictObject({
    lesions: z.array(z.strictObject({ limb: z.enum(limbKeys), level: z.enum(LEVELS) })),
    text: textSchema,
    differs: z.optional(textSchema),
  }),
});

const EVERY_LANGUAGE = 'a text in each language of the title';

/** A lesson as written down, with every default filled in. */
export const lessonSchema = fields.check(
  z.refine(({ patient, examination }) => patient !== undefined || examination !== undefined, {
    path: ['patient'],
    error: 'a patient, an examination, or both',
  }),
  inAllLanguages(['story'], EVERY_LANGUAGE),
  inAllLanguages(['answer', 'text'], EVERY_LANGUAGE),
  inAllLanguages(['answer', 'differs'], EVERY_LANGUAGE),
  ...STEP_IDS.flatMap((id) =>
    (['notes', 'question'] as const).map((name) => inAllLanguages(['steps', id, name], EVERY_LANGUAGE)),
  ),
);

/** The schema of a lesson as JSON Schema (draft 2020-12), for editors and other programs. */
export function lessonJsonSchema(): unknown {
  return z.toJSONSchema(fields, { io: 'input', unrepresentable: 'any' });
}
