import Ajv from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { examinationJsonSchema } from '../../../src/fhir.js';
import { anyRecord, recordFrom } from '../../tools/any-record.js';
import { LEAVES, recordWith } from '../../tools/record-fields.js';

const validate = new Ajv({ strict: false }).compile(examinationJsonSchema());

describe('the JSON Schema of the record', () => {
  it('takes every record', () => {
    fc.assert(
      fc.property(anyRecord, (record) => validate(record)),
      { numRuns: 60 },
    );
    expect(validate(recordFrom(1, 1))).toBe(true);
  });

  it('takes each field with each of its words', () => {
    for (const { path, words, value } of LEAVES)
      for (const one of [value, ...words.filter(() => typeof value === 'string' && !path.includes(0))])
        expect(validate(recordWith(path, one)), `${path.join('.')}: ${JSON.stringify(one)}`).toBe(true);
  });

  it('refuses each field with something that it cannot hold', () => {
    for (const { path } of LEAVES)
      expect(validate(recordWith(path, { nothing: 'of this' })), path.join('.')).toBe(false);
  });

  it.each([null, 1, 'x', [], {}, { format: 'pulse-map/2', scale: '0-3' }, { format: 'pulse-map/1' }])(
    'refuses %j',
    (value) => {
      expect(validate(value)).toBe(false);
    },
  );
});
