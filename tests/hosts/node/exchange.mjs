// A server that stores and reads examinations: no page, no bundler, the package as installed.
import assert from 'node:assert/strict';
import { emptyExamination, setPulse } from 'pulse-map/core';
import { fromBundle, fromResponse, toBundle, toResponse } from 'pulse-map/fhir';
import { summaryOf, summaryText } from 'pulse-map/letter';

const record = setPulse(
  setPulse(emptyExamination(), { site: 'popliteal', side: 'left' }, { grade: 'absent' }),
  { site: 'femoral', side: 'left' },
  { grade: 'normal' },
);
const sent = (resource) => JSON.parse(JSON.stringify(resource));
for (const fhirVersion of ['R4', 'R5']) {
  const bundle = fromBundle(sent(toBundle(record, { fhirVersion })));
  assert.deepEqual(bundle.examination, record);
  assert.deepEqual(bundle.unread, []);
  const answers = fromResponse(sent(toResponse(record, { fhirVersion })));
  assert.deepEqual(answers.examination, record);
  assert.deepEqual(answers.unread, []);
}
assert.match(summaryText(summaryOf(record, { length: 'letter' })), /left popliteal/i);
