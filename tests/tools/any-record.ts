import fc from 'fast-check';
import {
  examinationSchema,
  type Examination,
  formatExamination,
  type Json,
  parseExamination,
  type RecordPath,
} from '../../src/examination/index.js';

/*
 * Records with anything in them that the schema takes: every field and word, odd texts and times, empty parts, and fields and words of
 * later versions. Drawn from a seed, which is quicker than one arbitrary for each field.
 */

interface Def {
  readonly type: string;
  readonly innerType?: { readonly def: Def };
  readonly shape?: Readonly<Record<string, { readonly def: Def }>>;
  readonly element?: { readonly def: Def };
  readonly items?: readonly { readonly def: Def }[];
  readonly entries?: Readonly<Record<string, string>>;
  readonly values?: readonly Json[];
  readonly params?: { readonly expected: { readonly words?: readonly string[] } };
}

export type Random = () => number;

/** Mulberry32, from memory. */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

const TEXTS = [
  'x',
  ' ',
  'left & right <b>"bold"</b>',
  'a\u0000b',
  '\ud800',
  'ß\u2028\u00a0',
  '😀',
  '\ufffe',
  ']]>',
  "it's",
  '\t\r\n',
  '__proto__',
];
const TIMES = [
  '2026-05-01T10:30Z',
  '2024-02-29T23:59:59.123456789012+14:00',
  '2026-05-01T10:30:00+23:30',
  '0000-01-01T00:00Z',
  '9999-12-31T23:59:59-23:59',
  '2026-05-01T10:30-00:00',
];

class Maker {
  constructor(
    readonly random: Random,
    /** How much of what may be missing is there. */
    readonly density: number,
    /** How often something of a later version stands beside it. */
    readonly later: number,
  ) {}

  pick<T>(list: readonly T[]): T {
    return list[Math.floor(this.random() * list.length)] as T;
  }

  chance(of: number): boolean {
    return this.random() < of;
  }

  number(): number {
    return this.pick([0, 1, 2, 7, 30, 0.5, 80, 120, 12.75, 1e-7, 1 / 3, 299]);
  }

  list(def: Def, name: string): Json {
    const element = def.element as { readonly def: Def };
    if (element.def.type === 'enum')
      return Object.values(element.def.entries ?? {}).filter(() => this.chance(0.3));
    const some = Array.from({ length: Math.floor(this.random() * 4) }, () => this.make(element.def, name));
    return element.def.type === 'tuple' ? [...some, this.point(), this.point(), this.point()] : some;
  }

  point(): Json {
    return [Math.round(this.random() * 4000) / 10, Math.round(this.random() * 4000) / 10];
  }

  object(def: Def): Json {
    const fields = Object.entries(def.shape ?? {}).flatMap(([key, { def: one }]): [string, Json][] =>
      one.type === 'optional' && !this.chance(this.density) ? [] : [[key, this.make(one, key)]],
    );
    const extra: [string, Json][] = this.chance(this.later)
      ? [
          [
            this.pick(['future', '__proto__', 'toString', 'right', '😀', '0']),
            this.pick<Json>([1, 'x', null, [{}], { deep: [1, 'a\u0000'] }]),
          ],
        ]
      : [];
    return Object.fromEntries([...extra, ...fields]);
  }

  make(def: Def, name: string): Json {
    switch (def.type) {
      case 'optional':
        return this.make((def.innerType as { readonly def: Def }).def, name);
      case 'object':
        return this.object(def);
      case 'array':
        return this.list(def, name);
      case 'tuple':
        return this.point();
      case 'enum':
        return this.chance(this.later) ? 'a-later-word' : this.pick(Object.values(def.entries ?? {}));
      case 'literal':
        return this.pick(def.values ?? []);
      case 'boolean':
        return this.chance(0.5);
      case 'number':
        return this.number();
      case 'custom':
        return name === 'format'
          ? this.pick(['pulse-map/1', 'pulse-map/1.7'])
          : this.pick<Json>([...(def.params?.expected.words ?? []), 0, 1, 97.5, 300]);
      default:
        return ['examinedAt', 'onsetAt', 'at'].includes(name)
          ? this.pick(TIMES)
          : this.pick(TEXTS).repeat(this.chance(0.05) ? 40 : 1) +
              (name === 'id' ? Math.floor(this.random() * 1e9) : '');
    }
  }
}

function without(value: Json, [key, ...rest]: RecordPath): Json {
  if (key === undefined) return value;
  if (Array.isArray(value)) {
    const list = value as readonly Json[];
    return rest.length
      ? list.map((one, i) => (i === key ? without(one, rest) : one))
      : list.filter((_, i) => i !== key);
  }
  return Object.fromEntries(
    Object.entries(value as object).flatMap(([name, one]: [string, Json]) =>
      name !== key ? [[name, one]] : rest.length ? [[name, without(one, rest)]] : [],
    ),
  );
}

/** The value without what a fault is about; what is missing goes with what it is missing from. */
function takenOut(value: Json, path: RecordPath): Json {
  const next = without(value, path);
  return JSON.stringify(next) === JSON.stringify(value) && path.length
    ? takenOut(value, path.slice(0, -1))
    : next;
}

/** What stays of a value when everything that the record refuses is taken out. */
function repaired(value: Json): Examination {
  let left = value;
  for (;;) {
    const parsed = parseExamination(left);
    if (parsed.ok) return parsed.value;
    // From behind, so that the places of lists before them stay.
    const paths = parsed.faults.map(({ path }) => path);
    left = paths.reduceRight(
      (rest, path, i) => (paths.indexOf(path) === i ? takenOut(rest, path) : rest),
      left,
    );
  }
}

/** One record from a seed; the same each time. */
export function recordFrom(seed: number, density = 0.3, later = 0): Examination {
  const maker = new Maker(randomFrom(seed), density, later);
  return repaired(maker.make((examinationSchema as unknown as { def: Def }).def, ''));
}

/** Any record that the schema takes, from nearly empty to nearly full, with and without entries of later versions. */
export const anyRecord: fc.Arbitrary<Examination> = fc
  .tuple(fc.integer(), fc.constantFrom(0.1, 0.2, 0.3, 0.4), fc.constantFrom(0, 0, 0.03))
  .map(([seed, density, later]) => recordFrom(seed, density, later))
  // As JSON: what a reader gets.
  .map((record) => repaired(JSON.parse(formatExamination(record)) as Json));
