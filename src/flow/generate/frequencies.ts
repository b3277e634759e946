import type { ArteryId } from '../../anatomy/index.js';

/*
 * How often what occurs in the generated patients. Frequencies are published counts, each with its source, or rules of thumb; they
 * were not taken from the localisation's tables and are not changed to please it.
 */

/** What is wrong with a generated patient. */
export const PATTERNS = [
  'sound',
  'cold-body',
  'low-output',
  'shock',
  'atherosclerosis',
  'diabetic',
  'arm-atherosclerosis',
  'embolism',
  'small-artery',
  'large-vessel',
  'coarctation',
] as const;
export type Pattern = (typeof PATTERNS)[number];

/**
 * The mix of people that are examined because a limb is suspected. Rule of thumb; of those with arterial disease one in ten has it in
 * an arm (Ibrahim T, Klinische Angiologie, Springer 2023).
 */
export const MIX: readonly (readonly [Pattern, number])[] = [
  ['sound', 22],
  ['cold-body', 3],
  ['low-output', 4],
  ['shock', 2],
  ['atherosclerosis', 40],
  ['diabetic', 10],
  ['arm-atherosclerosis', 6],
  ['embolism', 8],
  ['small-artery', 2],
  ['large-vessel', 2],
  ['coarctation', 1],
];

export type Segment = 'aortoiliac' | 'femoropopliteal' | 'crural';

/** Which segments of a leg are diseased together: 132 patients, 17 aortoiliac alone, 45 femoropopliteal, 25 crural, 45 several (journal record 75649925). How the 45 split: two parts in five of Edinburgh's 192 had the upper two (PMID 8601246); the rest is a rule of thumb. */
export const SEGMENTS: readonly (readonly [readonly Segment[], number])[] = [
  [['aortoiliac'], 17],
  [['femoropopliteal'], 45],
  [['crural'], 25],
  [['aortoiliac', 'femoropopliteal'], 20],
  [['femoropopliteal', 'crural'], 20],
  [['aortoiliac', 'femoropopliteal', 'crural'], 5],
];

/** Diabetes with a foot ulcer: of 2893 lesions 1% iliac, 74% below the knee (Graziani L et al., Eur J Vasc Endovasc Surg 2007;33:453-460). */
export const DIABETIC_SEGMENTS: readonly (readonly [readonly Segment[], number])[] = [
  [['crural'], 64],
  [['femoropopliteal', 'crural'], 28],
  [['femoropopliteal'], 7],
  [['aortoiliac', 'crural'], 1],
];

/** Where in a segment, and how often blocked rather than narrowed. Mostly the adductor canal (McGee S, Evidence-Based Physical Diagnosis, ch. 54); 66% of lesions below the knee are blocks (Graziani 2007); the rest are rules of thumb. */
export const PLACES_OF_SEGMENT: Readonly<
  Record<'aortoiliac' | 'femoropopliteal', readonly (readonly [ArteryId | 'aorta', number])[]>
> = {
  aortoiliac: [
    ['common-iliac', 50],
    ['external-iliac', 38],
    ['aorta', 12],
  ],
  femoropopliteal: [
    ['superficial-femoral', 76],
    ['popliteal', 14],
    ['common-femoral', 10],
  ],
};
export const BLOCKED_SHARE: Readonly<Record<Segment | 'arm', number>> = {
  aortoiliac: 0.4,
  femoropopliteal: 0.6,
  crural: 0.66,
  arm: 0.4,
};

/** Emboli of the limbs: 28 femoral, 18 aortoiliac, 17 popliteal, 10 brachial (5-Minute Clinical Consult). */
export const EMBOLI: readonly (readonly [
  'femoral' | 'iliac' | 'saddle' | 'popliteal' | 'brachial',
  number,
])[] = [
  ['femoral', 28],
  ['iliac', 12],
  ['saddle', 6],
  ['popliteal', 17],
  ['brachial', 10],
];
/** Emboli of an arm on the right: 35 of 56 (Landry GJ et al. 2013). */
export const ARM_EMBOLUS_RIGHT = 35 / 56;

/** Left to right subclavian disease 4 to 1 (StatPearls, Subclavian artery thrombosis). */
export const SUBCLAVIAN_LEFT = 0.8;
/** Of arm disease, the share in the subclavian, brachiocephalic and axillary of atherosclerosis. Rule of thumb. */
export const ARM_PLACES: readonly (readonly [ArteryId, number])[] = [
  ['subclavian', 70],
  ['brachiocephalic', 8],
  ['axillary', 10],
  ['radial', 6],
  ['ulnar', 6],
];

/** Large-vessel vasculitis: subclavian 42%, axillary 32% of 187 patients (Kermani TA et al., Semin Arthritis Rheum 2018;48:707-713). */
export const VASCULITIS: readonly (readonly [ArteryId, number])[] = [
  ['subclavian', 0.42],
  ['axillary', 0.32],
];

/** Limbs that thromboangiitis takes: two 16%, three 41%, four 43% (Shionoya S, Int J Cardiol 1998). */
export const SMALL_ARTERY_LIMBS: readonly (readonly [number, number])[] = [
  [2, 16],
  [3, 41],
  [4, 43],
];

/** A dorsalis pedis that was never there: 9 people of 547 on both sides, 6 on one (Robertson GS et al., Ann R Coll Surg Engl 1990;72:99-100). */
export const NO_DORSALIS_PEDIS = { both: 9 / 547, one: 6 / 547 };

/** Narrowing of half the diameter is the least that the series count as disease. */
export const COUNTS_FROM = 50;
