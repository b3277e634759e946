import * as z from 'zod/mini';
import { ARTERIES, LISTENING_SITE_IDS, PULSE_SITE_IDS } from '../../anatomy/index.js';
import {
  AGE_BANDS,
  ARM_CLAUDICATION,
  ARM_LEVELS,
  DOPPLER_SIGNALS,
  INJURY_PLACES,
  LEG_CLAUDICATION,
  LEG_LEVELS,
  MECHANISMS,
  type Parsed,
  parseWith,
  REVASCULARISATIONS,
  SMOKING,
  VERTEBRAL_FLOWS,
} from '../../examination/index.js';
import { piecesOfStretch } from './tree.js';
import { CAUSES, CUFFS, HARD_SITES, ONSET_SIGNS, type StretchKey, type Tables } from './types.js';

/** How far a row may be from one: room for figures printed with few digits. */
const ROUNDING = 1e-6;

const probability = z.number().check(z.minimum(0), z.maximum(1));
const positive = z.number().check(z.minimum(0), z.maximum(1000));
const source = z.array(z.string());
const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

function sumsToOne<T>(values: (value: T) => readonly number[]) {
  return z.refine<T>((value) => Math.abs(sum(values(value)) - 1) <= ROUNDING, {
    params: { expected: { code: 'sums-to-one' } },
  });
}

const three = z.tuple([probability, probability, probability]);
const row = three.check(sumsToOne((values) => values));
const pair = z.tuple([probability, probability]);
const acuteChronic = z.strictObject({ acute: probability, chronic: probability });
const factors = z.partialRecord(z.enum(CAUSES), positive);

function isStretch(key: string): key is StretchKey {
  const [artery, stretch, more] = key.split(' ');
  if (more !== undefined || !Object.hasOwn(ARTERIES, artery ?? '')) return false;
  return stretch === undefined || piecesOfStretch(key as StretchKey).length > 0;
}
const stretch = z.custom<StretchKey>((key) => typeof key === 'string' && isStretch(key), {
  params: { expected: { code: 'stretch' } },
});
const sites = z.record(z.string(), probability).check(
  z.refine((value) => Object.keys(value).every(isStretch), {
    params: { expected: { code: 'stretches-as-keys' } },
  }),
  sumsToOne((value) => Object.values(value)),
);

const each = <K extends string, T extends z.ZodMiniType>(keys: readonly K[], schema: T) =>
  z.strictObject(Object.fromEntries(keys.map((key) => [key, schema])) as Record<K, T>);
const sourced = <K extends string, T extends z.ZodMiniType>(keys: readonly K[], schema: T) =>
  z.strictObject({ ...(Object.fromEntries(keys.map((key) => [key, schema])) as Record<K, T>), source });

const cause = z.strictObject({
  weight: acuteChronic,
  lesions: z.number().check(z.positive(), z.maximum(50)),
  blocked: acuteChronic,
  sites,
  source,
});

/** Strength never rises on its way: a reduced pulse is not handed on as a normal one. */
const falling = z.tuple([row, row]).check(
  z.refine(([, reduced]) => reduced[0] === 0, {
    params: { expected: { code: 'strength-never-rises' } },
  }),
);
const passage = z.strictObject({ narrowed: falling, blocked: falling, source });
const palpation = z.strictObject({
  normal: row,
  reduced: row,
  absent: row,
  missing: probability,
  peripheral: z.boolean(),
  source,
});
const pain = z.strictObject({ at: stretch, pain: three });
const bell = z.tuple([positive, z.number().check(z.positive(), z.maximum(10))]);
const SEEN = ['cold', 'warm', 'wound', 'numb', 'archWhite', 'archFills'] as const;

/** The form of a set of tables. */
export const tablesSchema = z.strictObject({
  causes: each(CAUSES, cause).check(
    ...(['acute', 'chronic'] as const).map((onset) =>
      z.refine<Record<string, { weight: { acute: number; chronic: number } }>>(
        (value) => Math.abs(sum(Object.values(value).map((one) => one.weight[onset])) - 1) <= ROUNDING,
        { params: { expected: { code: `${onset}-weights-sum-to-one` } } },
      ),
    ),
  ),
  rightShare: z.strictObject({
    'embolic arm': z.optional(probability),
    subclavian: z.optional(probability),
    source,
  }),
  age: sourced(AGE_BANDS, factors),
  mechanism: sourced(MECHANISMS, factors),
  history: z.catchall(z.strictObject({ source }), factors),
  smoking: sourced(SMOKING, z.strictObject({ aortoIliac: positive, causes: factors })),
  diabetes: sourced(['yes', 'no'], z.strictObject({ infrapopliteal: positive, causes: factors })),
  injury: z.strictObject({
    certainty: probability,
    places: each(INJURY_PLACES, z.array(stretch).check(z.minLength(1))),
    source,
  }),
  revascularisation: sourced(
    REVASCULARISATIONS,
    z.strictObject({ narrowed: probability, blocked: probability }).check(
      z.refine((p) => p.narrowed + p.blocked <= 1, {
        params: { expected: { code: 'shares-at-most-one' } },
      }),
    ),
  ),
  passage: z.strictObject({ acute: passage, chronic: passage, central: falling, steal: falling }),
  palpation: each(PULSE_SITE_IDS, palpation),
  bounding: z.strictObject({ share: three, source }),
  lowFlow: z.strictObject({
    weak: each(['central', 'peripheral'], probability),
    gone: each(['central', 'peripheral'], z.tuple([row, row, row])),
    share: probability,
    systolic: z.array(z.tuple([positive, positive])),
    shock: positive,
    coldLimbs: positive,
    cold: each(['weak', 'gone'], probability),
    source,
  }),
  hardToFeel: z.strictObject({
    sites: each(HARD_SITES, z.strictObject({ share: probability, normal: row, reduced: row })),
    both: probability,
    source,
  }),
  besideCuff: sourced(['power'], probability),
  earlier: sourced(['power'], probability),
  doppler: sourced(DOPPLER_SIGNALS, three).check(
    z.refine(
      (value) =>
        [0, 1, 2].every((s) => Math.abs(sum(DOPPLER_SIGNALS.map((d) => value[d][s]!)) - 1) <= ROUNDING),
      {
        params: { expected: { code: 'signals-sum-to-one' } },
      },
    ),
  ),
  sound: z.strictObject({
    carries: probability,
    systolic: pair,
    carotid: pair,
    continuous: pair,
    thrill: pair,
    heardAt: each(LISTENING_SITE_IDS, stretch),
    source,
  }),
  index: z.strictObject({
    cuffs: each(CUFFS, z.tuple([bell, bell, bell])),
    blunder: probability,
    widest: positive,
    incompressible: positive,
    stiff: three,
    fallsAfterExercise: three,
    source,
  }),
  seen: z.strictObject({
    coldLeg: each(LEG_LEVELS, pain),
    coldArm: each(ARM_LEVELS, pain),
    spared: z.partialRecord(z.enum([...LEG_LEVELS, ...ARM_LEVELS]), pain),
    ...(Object.fromEntries(SEEN.map((name) => [name, three])) as Record<(typeof SEEN)[number], typeof three>),
    source,
  }),
  onset: z.strictObject({ unknown: z.number(), signs: each(ONSET_SIGNS, z.number()), source }),
  aneurysm: sourced(['known', 'felt', 'lesions'], positive),
  taken: sourced(['access', 'cannula'], probability),
  claudication: z.strictObject({
    leg: each(LEG_CLAUDICATION, pain),
    arm: each(ARM_CLAUDICATION, pain),
    source,
  }),
  delay: z.strictObject({ later: three, none: three, source }),
  graftPulse: z.strictObject({ present: three, absent: three, source }),
  steal: z.strictObject({
    flow: each(VERTEBRAL_FLOWS, three).check(
      z.refine(
        (value) =>
          [0, 1, 2].every((s) => Math.abs(sum(VERTEBRAL_FLOWS.map((f) => value[f][s]!)) - 1) <= ROUNDING),
        {
          params: { expected: { code: 'signals-sum-to-one' } },
        },
      ),
    ),
    dizzy: three,
    chestPain: three,
    shared: probability,
    source,
  }),
});

/**
 * Reads own tables, as an integrator passes them to `localise`. Never throws.
 * @returns the tables, or every fault with its path, what was found and what was expected
 */
export function parseTables(input: unknown): Parsed<Tables> {
  const parsed = parseWith(tablesSchema, input, { strict: true });
  return parsed.ok ? { ok: true, value: parsed.value as Tables } : parsed;
}
