import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LISTENING_SITE_IDS, PULSE_SITE_IDS } from '../../../src/anatomy/index.js';
import {
  type Fault,
  LONGEST_TEXT,
  parseExamination,
  parseExaminationText,
} from '../../../src/examination/index.js';
import { anyExamination } from '../../tools/arbitraries.js';
import { faultLine } from '../../tools/faults.js';

const base = { format: 'pulse-map/1', scale: '0-3' };
const left = (finding: unknown) => ({ ...base, pulses: { femoral: { left: finding } } });

function faultsIn(input: unknown): readonly Fault[] {
  const parsed = parseExamination(input);
  return parsed.ok ? [] : parsed.faults;
}

function told(input: unknown): string[] {
  return faultsIn(input).map(faultLine);
}

/** The same for a reader that refuses what it does not know. */
function toldStrictly(input: unknown): string[] {
  const parsed = parseExamination(input, { strict: true });
  return parsed.ok ? [] : parsed.faults.map(faultLine);
}

const GRADES_EXPECTED = '"absent"|"reduced"|"normal"|"bounding"';

describe('a record that is right', () => {
  const accepted: [string, object][] = [
    ['holds nothing yet', {}],
    ['holds a grade', { pulses: { femoral: { left: { grade: 'reduced' } } } }],
    [
      'holds everything a pulse site can',
      {
        pulses: {
          'abdominal-aorta': {
            midline: {
              grade: 'bounding',
              increased: true,
              expansile: true,
              thrill: true,
              doppler: 'triphasic',
              note: 'wide',
            },
          },
        },
      },
    ],
    [
      'holds a reason with a Doppler signal',
      { pulses: { 'dorsalis-pedis': { right: { couldNotExamine: 'oedema', doppler: 'monophasic' } } } },
    ],
    ['holds a Doppler signal alone', { pulses: { 'dorsalis-pedis': { right: { doppler: 'absent' } } } }],
    [
      'holds bruits',
      {
        bruits: { 'adductor-canal': { left: { bruit: 'continuous' } }, renal: { right: { bruit: 'none' } } },
      },
    ],
    [
      'holds delays',
      { delays: { radioRadial: 'left-later', radioFemoral: { right: 'delayed', left: 'none' } } },
    ],
    ['holds onset and examiner', { onset: 'acute', examiner: 'Dr A. Example' }],
    ['holds a time to the minute', { examinedAt: '2026-03-05T09:30Z' }],
    ['holds a time to the second with an offset', { examinedAt: '2026-03-05T09:30:15+02:00' }],
    ['holds a time to a fraction', { examinedAt: '2026-03-05T09:30:15.123Z' }],
    ['holds a leap day', { examinedAt: '2024-02-29T09:30Z' }],
    ['holds the longest text', { examiner: 'x'.repeat(LONGEST_TEXT) }],
    ['holds empty parts', { pulses: {}, bruits: { femoral: {} } }],
  ];
  for (const [name, fields] of accepted) {
    it(name, () => {
      expect(parseExamination({ ...base, ...fields })).toEqual({ ok: true, value: { ...base, ...fields } });
    });
  }

  it('takes each of the three scales', () => {
    for (const scale of ['0-3', '0-4', 'words']) expect(parseExamination({ ...base, scale }).ok).toBe(true);
  });
});

describe('a record that is wrong', () => {
  const rejected: [string, unknown, string[]][] = [
    [
      'a grade of 7',
      left({ grade: 7 }),
      [`not-allowed at pulses.femoral.left.grade: 7, not ${GRADES_EXPECTED}`],
    ],
    [
      'a grade of null',
      left({ grade: null }),
      [`not-allowed at pulses.femoral.left.grade: null, not ${GRADES_EXPECTED}`],
    ],
    [
      'a later version',
      { ...base, format: 'pulse-map/2', wholly: 'new' },
      ['later-version at format: "pulse-map/2", not "pulse-map/1.1"'],
    ],
    [
      'a much later version',
      { format: 'pulse-map/117' },
      ['later-version at format: "pulse-map/117", not "pulse-map/1.1"'],
    ],
    [
      'another format',
      { ...base, format: 'pulses' },
      ['not-allowed at format: "pulses", not "pulse-map/1.1"'],
    ],
    [
      'an earlier version that never was',
      { ...base, format: 'pulse-map/0' },
      ['not-allowed at format: "pulse-map/0", not "pulse-map/1.1"'],
    ],
    ['no format', { scale: '0-3' }, ['missing at format: nothing, not "pulse-map/1.1"']],
    ['no scale', { format: 'pulse-map/1' }, ['missing at scale: nothing, not "0-3"|"0-4"|"words"']],
    [
      'both grade and reason',
      left({ grade: 'normal', couldNotExamine: 'cast' }),
      ['conflict at pulses.femoral.left.couldNotExamine: "cast", not grade-or-reason'],
    ],
    [
      'both bruit and reason',
      { ...base, bruits: { femoral: { left: { bruit: 'none', couldNotExamine: 'pain' } } } },
      ['conflict at bruits.femoral.left.couldNotExamine: "pain", not bruit-or-reason'],
    ],
    [
      'a thrill felt where nothing could be felt',
      left({ thrill: true, couldNotExamine: 'cast' }),
      ['conflict at pulses.femoral.left.thrill: true, not thrill-only-felt'],
    ],
    [
      'an increase of a pulse that is not bounding',
      left({ grade: 'normal', increased: true }),
      ['conflict at pulses.femoral.left.increased: true, not increased-only-bounding'],
    ],
    [
      'false for a mark',
      left({ thrill: false }),
      ['not-allowed at pulses.femoral.left.thrill: false, not true'],
    ],
    [
      'text that is too long',
      { ...base, examiner: 'x'.repeat(LONGEST_TEXT + 1) },
      [`not-allowed at examiner: "${'x'.repeat(58)}…, not at-most 2000 characters`],
    ],
    [
      'empty text',
      left({ note: '' }),
      ['not-allowed at pulses.femoral.left.note: "", not at-least 1 characters'],
    ],
    ['text that is a number', { ...base, examiner: 5 }, ['wrong-type at examiner: 5, not text']],
    ['a list for a site', left(['normal']), ['wrong-type at pulses.femoral.left: ["normal"], not object']],
    ['a word for a site', left('normal'), ['wrong-type at pulses.femoral.left: "normal", not object']],
    ['null for the pulses', { ...base, pulses: null }, ['wrong-type at pulses: null, not object']],
    [
      'a time of day alone',
      { ...base, examinedAt: '09:30' },
      ['not-allowed at examinedAt: "09:30", not instant'],
    ],
    [
      'a time without offset',
      { ...base, examinedAt: '2026-03-05T09:30' },
      ['not-allowed at examinedAt: "2026-03-05T09:30", not instant'],
    ],
    [
      'a day that does not exist',
      { ...base, examinedAt: '2026-02-29T09:30Z' },
      ['not-allowed at examinedAt: "2026-02-29T09:30Z", not instant'],
    ],
    [
      'several things at once',
      { ...base, onset: 5, pulses: { femoral: { left: { grade: 3 }, right: { thrill: 'yes' } } } },
      [
        'not-allowed at onset: 5, not "acute"|"chronic"|"unknown"',
        'not-allowed at pulses.femoral.right.thrill: "yes", not true',
        `not-allowed at pulses.femoral.left.grade: 3, not ${GRADES_EXPECTED}`,
      ],
    ],
  ];
  for (const [name, input, lines] of rejected) {
    it(`is told for ${name}`, () => {
      expect(told(input)).toEqual(lines);
    });
  }

  const unknown: [string, unknown, string[]][] = [
    [
      'a grade word that is none',
      left({ grade: 'weak' }),
      [`not-allowed at pulses.femoral.left.grade: "weak", not ${GRADES_EXPECTED}`],
    ],
    [
      'a site that does not exist',
      { ...base, pulses: { 'femoral ': { left: {} } } },
      ['unknown-field at pulses.femoral : {"left":{}}, not ' + PULSE_SITE_IDS.join('|')],
    ],
    [
      'a side that does not exist',
      { ...base, pulses: { femoral: { both: {} } } },
      ['unknown-field at pulses.femoral.both: {}, not right|left'],
    ],
    [
      'a left aorta',
      { ...base, pulses: { 'abdominal-aorta': { left: {} } } },
      ['unknown-field at pulses.abdominal-aorta.left: {}, not midline'],
    ],
    [
      'a field that does not exist',
      left({ grades: 'normal' }),
      [
        'unknown-field at pulses.femoral.left.grades: "normal", not grade|increased|couldNotExamine|expansile|thrill|doppler|note',
      ],
    ],
    [
      'a bruit where nobody listens',
      { ...base, bruits: { radial: { left: { bruit: 'systolic' } } } },
      ['unknown-field at bruits.radial: {"left":{"bruit":"systolic"}}, not ' + LISTENING_SITE_IDS.join('|')],
    ],
    [
      'an unknown reason',
      left({ couldNotExamine: 'busy' }),
      [
        'not-allowed at pulses.femoral.left.couldNotExamine: "busy", not "dressing"|"cast"|"oedema"|"pain"|"amputated"|"line-in-place"|"no-cuff"|"dialysis-access"|"declined"|"other"',
      ],
    ],
  ];
  for (const [name, input, lines] of unknown) {
    it(`that is strict is told for ${name}, and only that`, () => {
      expect(toldStrictly(input)).toEqual(lines);
      expect(told(input)).toEqual([]);
    });
  }

  it('says what it is when it is no object at all', () => {
    const kinds: [unknown, string][] = [
      [[], '[]'],
      [null, 'null'],
      [3, '3'],
      ['text', '"text"'],
      [true, 'true'],
      [10n, 'bigint'],
      [Symbol('s'), 'symbol'],
      [() => 1, 'function'],
    ];
    for (const [input, found] of kinds) {
      expect(told(input)).toEqual([`wrong-type at : ${found}, not object`]);
    }
    expect(told(undefined)).toEqual(['missing at : nothing, not object']);
  });
});

describe('a hostile record', () => {
  const throwing = () => {
    throw new Error('hostile');
  };
  const cyclic: Record<string, unknown> = { ...base };
  cyclic.pulses = cyclic;
  let deep: unknown = 'end';
  for (let i = 0; i < 50_000; i += 1) deep = { deep };
  const revoked = Proxy.revocable({}, {});
  revoked.revoke();
  const hostile: [string, unknown][] = [
    [
      'a getter that throws',
      {
        ...base,
        get pulses() {
          return throwing();
        },
      },
    ],
    [
      'a getter that throws deep within',
      left({
        get grade() {
          return throwing();
        },
      }),
    ],
    [
      'a proxy that throws at every touch',
      new Proxy({}, { get: throwing, has: throwing, ownKeys: throwing, getPrototypeOf: throwing }),
    ],
    ['a revoked proxy', revoked.proxy],
    ['a cycle', cyclic],
    ['very deep nesting in an unknown field', { ...base, deep }],
    ['very deep nesting in a known field', left({ grade: deep })],
    ['a toJSON that throws', { ...base, extra: { toJSON: throwing } }],
    ['a toString that throws', left({ grade: { toString: throwing } })],
    [
      'prototype keys',
      JSON.parse('{"format":"pulse-map/1","scale":"0-3","__proto__":{"x":1},"constructor":{},"toString":1}'),
    ],
    [
      'prototype keys as sites',
      JSON.parse('{"format":"pulse-map/1","scale":"0-3","pulses":{"__proto__":{"left":{}},"valueOf":{}}}'),
    ],
    [
      'prototype keys as sides',
      JSON.parse('{"format":"pulse-map/1","scale":"0-3","pulses":{"femoral":{"__proto__":{}}}}'),
    ],
    ['a huge list', { ...base, pulses: new Array(1_000_000) }],
    ['a format that is an object', { ...base, format: { toString: () => 'pulse-map/1' } }],
    ['bytes', new Uint8Array(8)],
    ['a date', { ...base, examinedAt: new Date(0) }],
    ['a map', { ...base, pulses: new Map([['femoral', {}]]) }],
  ];
  for (const [name, input] of hostile) {
    it(`with ${name} is told as faults, without throwing`, () => {
      const parsed = parseExamination(input, { strict: true });
      const faults = parsed.ok ? [] : parsed.faults;
      expect(() => parseExamination(input)).not.toThrow();
      if (name !== 'a map') expect(faults.length).toBeGreaterThan(0);
      for (const fault of faults) {
        expect(Array.isArray(fault.path)).toBe(true);
        expect(fault.found.length).toBeLessThanOrEqual(60);
        expect(fault.expected.code).not.toBe('');
      }
    });
  }

  it('never reaches the prototype of all objects', () => {
    parseExamination(JSON.parse('{"format":"pulse-map/1","scale":"0-3","__proto__":{"polluted":true}}'));
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  it('of any make gives a record or faults, never an exception', () => {
    fc.assert(
      fc.property(
        fc.anything({ withBigInt: true, withMap: true, withNullPrototype: true, withTypedArray: true }),
        (input) => {
          const parsed = parseExamination(input);
          return parsed.ok || parsed.faults.length > 0;
        },
      ),
      { numRuns: 500 },
    );
  });

  it('made from a right one by one wrong value is told with the path of that value', () => {
    const wrong = fc.oneof(fc.integer(), fc.boolean(), fc.constant(null), fc.array(fc.integer()));
    fc.assert(
      fc.property(anyExamination, wrong, (examination, value) => {
        const broken = {
          ...examination,
          pulses: { ...examination.pulses, femoral: { right: { grade: value } } },
        };
        return faultsIn(broken).some((fault) => fault.path.join('.') === 'pulses.femoral.right.grade');
      }),
    );
  });
});

describe('parseExaminationText', () => {
  it('reads back what JSON.stringify wrote', () => {
    fc.assert(
      fc.property(anyExamination, (examination) => {
        expect(parseExaminationText(JSON.stringify(examination))).toEqual({ ok: true, value: examination });
      }),
    );
  });

  it('tells text that is no JSON', () => {
    expect(parseExaminationText('{"format":')).toEqual({
      ok: false,
      faults: [
        {
          code: 'unreadable',
          path: [],
          found: '"{\\"format\\":"',
          expected: { code: 'type', type: 'json-text' },
        },
      ],
      more: 0,
    });
  });

  it('never throws for any text', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary' }), (text) => !parseExaminationText(text).ok));
  });
});
