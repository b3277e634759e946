import { moduleNow } from './earlier-state.js';
import { cpuTimes } from './cpu-time.js';
import type * as fhir from '../../src/fhir.js';
import { recordFrom } from '../tools/any-record.js';
import { chronic } from '../../stories/limb-records.js';

/*
 * What it costs to write a record as FHIR and to read it back, beside plain JSON of the same: `npm run bench:fhir [-- --json]`.
 * Processor time in one run, the median of several rounds; the ratios compare between machines, the milliseconds do not.
 */

const { fromBundle, toBundle } = (await moduleNow('fhir.ts')) as unknown as typeof fhir;

const RECORDS = { 'a usual examination': chronic, 'every field filled': recordFrom(0, 1) };

const rows = Object.entries(RECORDS).map(([name, record]) => {
  const [recordText, bundle] = [JSON.stringify(record), toBundle(record)];
  const bundleText = JSON.stringify(bundle);
  const { examination, unread } = fromBundle(JSON.parse(bundleText));
  if (unread.length || JSON.stringify(examination) !== JSON.stringify(fromBundle(bundle).examination))
    throw new Error(`${name} does not come back`);
  const times = cpuTimes({
    write: () => void toBundle(record),
    'write, without what is derived': () => void toBundle(record, { derived: false }),
    read: () => void fromBundle(bundle),
    'JSON of the record': () => void JSON.parse(JSON.stringify(record)),
    'JSON of the bundle': () => void JSON.parse(JSON.stringify(bundle)),
  });
  const ms = new Map(times.map((one) => [one.name, one.ms]));
  const beside = (reference: string) =>
    times.map((one) => [one.name, Number((one.ms / ms.get(reference)!).toFixed(2))] as const);
  return {
    name,
    entries: bundle.entry.length,
    kilobytes: { record: recordText.length / 1000, bundle: bundleText.length / 1000 },
    times,
    besideRecord: beside('JSON of the record'),
    besideBundle: beside('JSON of the bundle'),
  };
});

if (process.argv.includes('--json')) console.log(JSON.stringify(rows, null, 2));
else
  for (const { name, entries, kilobytes, times, besideRecord, besideBundle } of rows) {
    console.log(
      `\n${name}: record ${kilobytes.record} kB, bundle ${kilobytes.bundle} kB, ${entries} entries`,
    );
    console.log(`${''.padEnd(32)}${'ms'.padStart(10)}${'× record'.padStart(12)}${'× bundle'.padStart(12)}`);
    for (const [i, one] of times.entries())
      console.log(
        one.name.padEnd(32) +
          one.ms.toFixed(3).padStart(10) +
          String(besideRecord[i]![1]).padStart(12) +
          String(besideBundle[i]![1]).padStart(12),
      );
  }
