import fc from 'fast-check';

import { type Examination, parseExamination } from '../../../src/examination/index.js';
import { anyExamination } from '../../tools/arbitraries.js';
import { LEAVES, recordWith } from '../../tools/record-fields.js';

type Json = Record<string, unknown>;

/** Puts one record into another, field by field; lists and values of the second count. */
function merged(into: Json, from: Json): Json {
  const out: Json = { ...into };
  for (const [key, value] of Object.entries(from)) {
    const own = out[key];
    const both = [own, value].every((one) => typeof one === 'object' && one !== null && !Array.isArray(one));
    out[key] = both ? merged(own as Json, value as Json) : value;
  }
  return out;
}

/** Fields whose words a test may mistake for a side or a site: what a person typed. */
const TYPED = ['note', 'operations', 'examiner', 'why', 'whom', 'by', 'id'];
const fields = LEAVES.filter(({ path }) => !TYPED.includes(String(path.at(-1))) && path[0] !== 'marks');

/** One more field of any part of the record, with one of its words or its sample. */
const anyField: fc.Arbitrary<Json> = fc
  .constantFrom(...fields)
  .chain((leaf) =>
    fc
      .constantFrom(...(leaf.words.length && typeof leaf.value !== 'boolean' ? leaf.words : [leaf.value]))
      .map((value) => recordWith(leaf.path, value) as unknown as Json),
  );

/** A record with anything in any of its parts: pulses and bruits densely, the rest here and there. Rules between fields hold. */
export const anyRecord: fc.Arbitrary<Examination> = fc
  .tuple(anyExamination, fc.array(anyField, { maxLength: 14 }))
  .map(([examination, more]) => {
    let record = examination;
    for (const one of more) {
      const parsed = parseExamination(merged(record as unknown as Json, one));
      // A field that does not go with what is there is left out.
      if (parsed.ok) record = parsed.value;
    }
    return record;
  });
