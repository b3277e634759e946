import { examinationSchema, type RecordPath } from '../../src/examination/index.js';

/** One field of the record that holds a value and no further fields, as its schema says. */
export interface Leaf {
  readonly path: RecordPath;
  /** The words it takes; empty where it takes no words. */
  readonly words: readonly string[];
  /** A value it takes. */
  readonly value: unknown;
}

interface Def {
  readonly type: string;
  readonly innerType?: { readonly def: Def };
  readonly shape?: Readonly<Record<string, { readonly def: Def }>>;
  readonly element?: { readonly def: Def };
  readonly items?: readonly { readonly def: Def }[];
  readonly entries?: Readonly<Record<string, string>>;
  readonly values?: readonly unknown[];
  readonly params?: {
    readonly expected: { readonly words?: readonly string[]; readonly values?: unknown[] };
  };
}

/** Texts that are more than any text, and lists that need their entries whole. */
const VALUES: Readonly<Record<string, unknown>> = {
  examinedAt: '2026-05-01T10:30Z',
  onsetAt: '2026-05-01T10:30Z',
  at: '2026-05-01T10:30Z',
  points: [
    [700, 700],
    [710, 710],
    [700, 710],
  ],
};

function leavesOf(def: Def, path: RecordPath): readonly Leaf[] {
  const leaf = (value: unknown, words: readonly string[] = []): readonly Leaf[] => [{ path, value, words }];
  const name = String(path.at(-1));
  if (name in VALUES) return leaf(VALUES[name]);
  switch (def.type) {
    case 'optional':
      return leavesOf(def.innerType!.def, path);
    case 'object':
      return Object.entries(def.shape!).flatMap(([field, inner]) => leavesOf(inner.def, [...path, field]));
    case 'array':
      return leavesOf(def.element!.def, [...path, 0]);
    case 'enum':
      return leaf(Object.values(def.entries!)[0], Object.values(def.entries!));
    case 'literal':
      return leaf(def.values![0]);
    case 'boolean':
      return leaf(true);
    case 'number':
      return leaf(7);
    case 'string':
      return leaf('x');
    case 'custom': {
      const { words, values } = def.params!.expected;
      return words ? leaf(80, words) : leaf(values![0]);
    }
    default:
      throw new Error(`a schema of type "${def.type}" at ${path.join('.')}`);
  }
}

/** Every field of the record that holds a value, worked out from its schema. */
export const LEAVES: readonly Leaf[] = leavesOf((examinationSchema as unknown as { def: Def }).def, []);

/** What an entry must hold besides the field in question. */
const AROUND: readonly (readonly [RegExp, Readonly<Record<string, unknown>>])[] = [
  [
    /^marks\.0\.on\./,
    { id: 'a', kind: 'scar', points: VALUES.points, on: { plate: 'left-sole', points: VALUES.points } },
  ],
  [/^marks\.0\./, { id: 'a', kind: 'scar', points: VALUES.points }],
  [/^amendments\.0\./, { kind: 'amended', at: VALUES.onsetAt }],
  [/^calls\.0\./, { team: 'vascular', at: VALUES.onsetAt }],
  [/^context\.revascularisations\.0\.route$/, { artery: 'popliteal', side: 'left', kind: 'bypass' }],
  [/^context\.revascularisations\.0\./, { artery: 'popliteal', side: 'left', kind: 'stent' }],
  [/^context\.aneurysms\.0\./, { place: 'popliteal' }],
  [/^context\.access\.0\./, { side: 'left', kind: 'fistula' }],
  [/^context\.devices\.0\./, { limb: 'arm', side: 'left', kind: 'arterial-line' }],
  [/^staging\..*\.fontaine\.(derived|why)$/, { stage: 'I' }],
  [/^staging\..*\.acute\.(derived|why)$/, { stage: 'I' }],
  [/^staging\..*\.\w+\.(derived|why)$/, { stage: 2 }],
  [/\.increased$/, { grade: 'bounding' }],
  [/\.ulcer(Place|Cause|SizeMm)$/, { ulcer: 'deep' }],
  [/\.gangreneExtent$/, { gangrene: 'dry' }],
  [/\.rednessCm$/, { infection: ['redness'] }],
  [/\.temperatureLevel$/, { temperature: 'cold' }],
];

function put(into: unknown, [key, ...rest]: RecordPath, value: unknown): unknown {
  if (key === undefined) return value;
  if (typeof key === 'number') return [put((into as unknown[] | undefined)?.[key], rest, value)];
  const own = (into ?? {}) as Record<string, unknown>;
  return { ...own, [key]: put(own[key], rest, value) };
}

/** A record, as any JSON, with one field set to a value and no more around it than must be there. */
export function recordWith(path: RecordPath, value: unknown, format = 'pulse-map/1.7'): unknown {
  const [, around] = AROUND.find(([where]) => where.test(path.join('.'))) ?? [];
  const base = { format, scale: '0-3' };
  // What an entry of a list must hold stands in the entry, not in what is within it.
  const entry =
    path[0] === 'context' || path[0] === 'marks' ? path.slice(0, path.indexOf(0) + 1) : path.slice(0, -1);
  return put(around ? put(base, entry, around) : base, path, value);
}
