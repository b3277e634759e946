// A server that stores and reads examinations: no page, no bundler, the package as installed.
import assert from 'node:assert/strict';
import { fromResponse, toResponse } from 'pulse-map/fhir';

// snippet exchange
import { emptyExamination, setPulse } from 'pulse-map/core';
import { fromBundle, toBundle } from 'pulse-map/fhir';
import { summaryOf, summaryText } from 'pulse-map/letter';

let record = emptyExamination();
record = setPulse(record, { site: 'femoral', side: 'left' }, { grade: 'normal' });
record = setPulse(record, { site: 'popliteal', side: 'left' }, { grade: 'absent' });

const letter = summaryText(summaryOf(record, { length: 'letter', language: 'en' }));
const bundle = toBundle(record, { fhirVersion: 'R4', language: 'en' });
const { examination, unread } = fromBundle(bundle);
// snippet end

assert.match(letter, /left popliteal/i);
assert.deepEqual(examination, record);
assert.deepEqual(unread, []);
const sent = (resource) => JSON.parse(JSON.stringify(resource));
for (const fhirVersion of ['R4', 'R5']) {
  const read = fromBundle(sent(toBundle(record, { fhirVersion })));
  assert.deepEqual(read, { examination: record, unread: [] });
  const answers = fromResponse(sent(toResponse(record, { fhirVersion })));
  assert.deepEqual(answers, { examination: record, unread: [] });
}
