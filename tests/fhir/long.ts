import { FHIR_VERSIONS, fromBundle, fromResponse, toBundle, toResponse } from '../../src/fhir.js';
import { equal } from '../../src/examination/json.js';
import '../../src/locale/de/register.js';
import { recordFrom } from '../tools/any-record.js';

/*
 * Thousands of random records through FHIR and back: `FHIR_RUNS=5000 FHIR_SEED=1 npm run test:fhir`. Records are drawn by seed, so that one
 * that does not come back can be looked at again; each is written in one of the ways by turns, and as answers to the form.
 */

const runs = Number(process.env.FHIR_RUNS ?? 5000);
const first = Number(process.env.FHIR_SEED ?? 1);
const DENSITIES = [0.1, 0.2, 0.3, 0.4] as const;
const LATER = [0, 0, 0.03] as const;
const WAYS = FHIR_VERSIONS.flatMap((fhirVersion) =>
  [true, false].flatMap((snomed) =>
    (['collection', 'document'] as const).flatMap((kind) =>
      ['en', 'de'].map((language) => ({ fhirVersion, snomed, kind, language })),
    ),
  ),
);
const nth = <T>(list: readonly T[], i: number): T => list[i % list.length] as T;
const sent = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

const counts = new Map<string, number>();
const bad: string[] = [];
for (let i = 0; i < runs; i += 1) {
  const seed = first + i;
  const record = sent(
    recordFrom(seed, nth(DENSITIES, Math.floor(i / WAYS.length)), nth(LATER, i)),
  ) as ReturnType<typeof recordFrom>;
  const way = nth(WAYS, i);
  const readings = {
    [`${way.fhirVersion} ${way.kind}, SNOMED CT ${way.snomed ? 'on' : 'off'}`]: fromBundle(
      sent(toBundle(record, { ...way, timestamp: '2026-05-01T12:00:00Z' })),
    ),
    [`${way.fhirVersion} answers`]: fromResponse(sent(toResponse(record, way))),
  };
  for (const [name, { examination, unread }] of Object.entries(readings)) {
    counts.set(name, (counts.get(name) ?? 0) + 1);
    if (unread.length || !equal(examination, record))
      bad.push(`seed ${seed}, ${name}: ${JSON.stringify(unread)}`);
  }
  if ((i + 1) % 500 === 0) console.log(`${i + 1} of ${runs} records, ${bad.length} not equal`);
}
for (const [name, count] of [...counts].sort()) console.log(`${name.padEnd(32)}${count}`);
for (const one of bad.slice(0, 20)) console.error(one);
console.log(
  `${runs} records, ${bad.length} of ${[...counts.values()].reduce((a, b) => a + b, 0)} round trips not equal`,
);
if (bad.length) process.exitCode = 1;
