import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseExamination } from '../../../src/examination/index.js';
import { fromBundle, toBundle } from '../../../src/fhir.js';
import { recordFrom } from '../../tools/any-record.js';
import { runs } from '../../tools/runs.js';

/** Reads, and holds what was read to what must hold of anything: a valid record, and a place and a reason for all else. */
function read(input: unknown) {
  const result = fromBundle(input);
  expect(parseExamination(result.examination).ok).toBe(true);
  expect(result.unread.every(({ path, why }) => typeof path === 'string' && why.length > 0)).toBe(true);
  return result;
}

const entries = (resources: readonly unknown[]) => ({
  resourceType: 'Bundle',
  type: 'collection',
  entry: resources.map((resource) => ({ resource })),
});

/** One place of a tree of JSON set to something else. */
function changed(value: unknown, chances: readonly number[], to: unknown): unknown {
  const [chance = 0, ...rest] = chances;
  if (typeof value !== 'object' || value === null || rest.length === 0) return to;
  const keys = Object.keys(value);
  const key = keys[Math.floor(chance * keys.length)];
  if (key === undefined) return to;
  const inner = (value as Record<string, unknown>)[key];
  const next = changed(inner, rest, to);
  return Array.isArray(value)
    ? value.map((one: unknown, i) => (String(i) === key ? next : one))
    : { ...value, [key]: next };
}

describe('any JSON read as a bundle', () => {
  it('never throws', () => {
    fc.assert(fc.property(fc.jsonValue(), (value) => void read(value)));
    fc.assert(fc.property(fc.array(fc.jsonValue()), (list) => void read(entries(list))));
  });

  it('never throws for a bundle of ours with anything put anywhere, and gives a valid record', () => {
    const bundles = [1, 2, 3].map(
      (seed) => JSON.parse(JSON.stringify(toBundle(recordFrom(seed, 0.3)))) as unknown,
    );
    const odd = fc.oneof(
      fc.jsonValue(),
      fc.constantFrom<unknown>(
        { resourceType: 'Observation' },
        [[]],
        '__proto__',
        { __proto__: 1 },
        -0,
        '\ud800',
      ),
    );
    const chances = fc.array(fc.double({ min: 0, max: 0.999, noNaN: true }), { minLength: 3, maxLength: 9 });
    fc.assert(
      fc.property(
        fc.constantFrom(...bundles),
        chances,
        odd,
        (bundle, where, what) => void read(changed(bundle, where, what)),
      ),
      { numRuns: runs(300) },
    );
  });

  it('reads on around what is nested deep', () => {
    let deep: unknown = 'x';
    for (let i = 0; i < 50_000; i += 1) deep = [deep];
    const own = toBundle(recordFrom(5, 0.3));
    const { examination } = fromBundle(own);
    const result = read({
      ...own,
      entry: [...own.entry, { resource: { resourceType: 'Observation', value: deep } }],
    });
    expect(result.examination).toEqual(examination);
    expect(result.unread).toEqual([{ path: `entry[${own.entry.length}].resource`, why: 'status' }]);
  });

  it('takes a hundred thousand entries, and lists each that it does not read', () => {
    const many = Array.from({ length: 100_000 }, () => ({ resourceType: 'Observation', status: 'final' }));
    expect(read(entries(many)).unread).toHaveLength(100_000);
  });

  it('puts nothing on any prototype', () => {
    const bundle = JSON.parse(
      JSON.stringify(toBundle(recordFrom(6, 0.3))).replaceAll(
        '"resourceType"',
        '"__proto__":{"polluted":1},"resourceType"',
      ),
    ) as unknown;
    const kept = { path: ['__proto__', 'polluted'], value: 1 };
    read(bundle);
    read(
      entries([
        {
          resourceType: 'Observation',
          status: 'final',
          code: { coding: [{ system: 'urn:pulse-map:field', code: 'record' }] },
          component: [
            {
              code: { coding: [{ system: 'urn:pulse-map:field', code: 'kept' }] },
              valueString: JSON.stringify(kept),
            },
          ],
        },
      ]),
    );
    expect('polluted' in {}).toBe(false);
  });

  it.each([null, 1, 'x', [], {}, { resourceType: 'Bundle' }, { resourceType: 'Patient' }])(
    'tells that %j is none',
    (value) => {
      const { unread } = read(value);
      expect(unread).toEqual(
        (value as { resourceType?: string } | null)?.resourceType === 'Bundle'
          ? []
          : [{ path: '', why: 'no-bundle' }],
      );
    },
  );
});
