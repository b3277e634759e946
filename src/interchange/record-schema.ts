import * as z from 'zod/mini';
import {
  examinationSchema,
  FORMAT_MAJOR,
  FORMAT_NAME,
  LOWEST_PRESSURE,
  HIGHEST_PRESSURE,
  NO_PRESSURE,
} from '../examination/index.js';

/** What a JSON Schema can say of the two values that the record checks by rules of its own. */
const CUSTOM = {
  format: { type: 'string', pattern: `^${FORMAT_NAME}/${FORMAT_MAJOR}(\\.(0|[1-9][0-9]{0,8}))?$` },
  pressure: {
    anyOf: [
      { const: 0 },
      { type: 'number', minimum: LOWEST_PRESSURE, maximum: HIGHEST_PRESSURE },
      { enum: [...NO_PRESSURE] },
    ],
  },
} as const;

/**
 * The form of a record as JSON Schema (draft 2020-12), for editors and other programs. Rules between fields, such as a grade or a reason and
 * not both, are those of `parseExamination`; fields of later versions pass.
 */
export function examinationJsonSchema(): Readonly<Record<string, unknown>> {
  const schema = z.toJSONSchema(examinationSchema, {
    unrepresentable: 'any',
    override: ({ zodSchema, jsonSchema, path }) => {
      if (zodSchema._zod.def.type !== 'custom') return;
      Object.assign(jsonSchema, path.at(-1) === 'format' ? CUSTOM.format : CUSTOM.pressure);
    },
  });
  const carried = {
    type: 'array',
    items: {
      type: 'object',
      properties: { path: { type: 'array' }, value: {} },
      required: ['path', 'value'],
    },
  };
  return { ...schema, title: 'Pulse Map examination', properties: { ...schema.properties, carried } };
}
