import { SIDES, type Side } from '../../anatomy/index.js';
import type { Lesion, Patient, PatientInput } from '../patient.js';
import { patientOf } from '../patient.js';
import { between, type Chance, chanceOf, happens, pick } from './chance.js';
import {
  ARM_EMBOLUS_RIGHT,
  ARM_PLACES,
  BLOCKED_SHARE,
  COUNTS_FROM,
  DIABETIC_SEGMENTS,
  EMBOLI,
  MIX,
  NO_DORSALIS_PEDIS,
  type Pattern,
  PLACES_OF_SEGMENT,
  type Segment,
  SEGMENTS,
  SMALL_ARTERY_LIMBS,
  SUBCLAVIAN_LEFT,
  VASCULITIS,
} from './frequencies.js';

/** A generated patient and the pattern that was drawn. */
export interface Generated {
  readonly pattern: Pattern;
  readonly patient: Patient;
}

type Draft = Partial<Lesion> & Pick<Lesion, 'piece'>;
const CALF = ['anterior-tibial', 'posterior-tibial', 'peroneal'] as const;

const anySide = (chance: Chance): Side => (happens(chance, 0.5) ? 'right' : 'left');

/** A block or a narrowing that counts, as often as in the segment. */
function severity(chance: Chance, blocked: number): Pick<Lesion, 'narrowing' | 'extent' | 'length'> {
  if (!happens(chance, blocked)) {
    return {
      narrowing: Math.round(between(chance, COUNTS_FROM + 2, 88)),
      extent: 'short',
      length: between(chance, 1, 4),
    };
  }
  return { narrowing: 100, extent: happens(chance, 0.5) ? 'whole' : 'short', length: 2 };
}

function legLesions(chance: Chance, side: Side, segments: readonly Segment[]): Draft[] {
  return segments.flatMap((segment): Draft[] => {
    if (segment === 'crural') {
      // Two arteries of the calf at least make crural disease (Haltmayer M et al., Int Angiol 2001;20:200-207); all three in 28%.
      if (happens(chance, 0.12))
        return [{ piece: `${side} tibioperoneal-trunk`, ...severity(chance, BLOCKED_SHARE.crural) }];
      const spared = happens(chance, 0.28)
        ? undefined
        : pick(
            chance,
            CALF.map((artery) => [artery, artery === 'peroneal' ? 2 : 1] as const),
          );
      return CALF.filter((artery) => artery !== spared).map((artery) => ({
        piece: `${side} ${artery}` as Lesion['piece'],
        ...severity(chance, BLOCKED_SHARE.crural),
      }));
    }
    const artery = pick(chance, PLACES_OF_SEGMENT[segment]);
    const how = severity(chance, BLOCKED_SHARE[segment]);
    if (artery === 'aorta') return [{ piece: 'midline infrarenal-aorta distal', ...how }];
    if (artery === 'common-femoral' || artery === 'popliteal') {
      const stretch = happens(chance, 0.5) ? 'proximal' : 'distal';
      return [{ piece: `${side} ${artery} ${stretch}` as Lesion['piece'], ...how }];
    }
    return [{ piece: `${side} ${artery}` as Lesion['piece'], ...how }];
  });
}

function bothLegs(chance: Chance, table: readonly (readonly [readonly Segment[], number])[]): Draft[] {
  const first = anySide(chance);
  const lesions = legLesions(chance, first, pick(chance, table));
  // Disease of the other leg too in about half. Rule of thumb.
  if (happens(chance, 0.5))
    lesions.push(...legLesions(chance, first === 'right' ? 'left' : 'right', pick(chance, table)));
  return lesions;
}

function embolus(chance: Chance): Draft[] {
  const where = pick(chance, EMBOLI);
  const side =
    where === 'brachial' ? (happens(chance, ARM_EMBOLUS_RIGHT) ? 'right' : 'left') : anySide(chance);
  const block = { narrowing: 100, extent: 'short' } as const;
  switch (where) {
    case 'saddle':
      return [
        { piece: 'midline infrarenal-aorta distal', ...block },
        ...SIDES.map((one) => ({ piece: `${one} common-iliac` as const, ...block })),
      ];
    case 'iliac':
      return [{ piece: `${side} ${happens(chance, 0.5) ? 'common' : 'external'}-iliac`, ...block }];
    case 'femoral':
      // At the fork of the common femoral (Knoop KJ et al., Atlas of Emergency Medicine): both its branches are shut off.
      return [{ piece: `${side} common-femoral distal`, narrowing: 100, extent: 'whole' }];
    case 'popliteal':
      return [{ piece: `${side} popliteal distal`, narrowing: 100, extent: 'whole' }];
    case 'brachial':
      return [{ piece: `${side} brachial ${happens(chance, 0.6) ? 'distal' : 'proximal'}`, ...block }];
  }
}

function armLesion(chance: Chance): Draft[] {
  const artery = pick(chance, ARM_PLACES);
  const side = artery === 'brachiocephalic' ? 'right' : happens(chance, SUBCLAVIAN_LEFT) ? 'left' : 'right';
  const piece =
    artery === 'brachiocephalic' ? artery : `${artery} ${artery === 'axillary' ? 'distal' : 'proximal'}`;
  return [{ piece: `${side} ${piece}` as Lesion['piece'], ...severity(chance, BLOCKED_SHARE.arm) }];
}

/** Small arteries of two to four limbs: two of three in a calf, one in a forearm. */
function smallArteries(chance: Chance): Draft[] {
  const limbs = [
    ...SIDES.map((side) => ['leg', side] as const),
    ...SIDES.map((side) => ['arm', side] as const),
  ];
  const count = pick(chance, SMALL_ARTERY_LIMBS);
  return limbs.slice(0, count).flatMap(([kind, side]): Draft[] => {
    const block = { narrowing: 100, extent: 'whole' } as const;
    if (kind === 'arm') return [{ piece: `${side} ${happens(chance, 0.6) ? 'ulnar' : 'radial'}`, ...block }];
    const spared = pick(
      chance,
      CALF.map((artery) => [artery, 1] as const),
    );
    return CALF.filter((artery) => artery !== spared).map((artery) => ({
      piece: `${side} ${artery}` as Lesion['piece'],
      ...block,
    }));
  });
}

function vasculitis(chance: Chance): Draft[] {
  const lesions = SIDES.flatMap((side) =>
    VASCULITIS.flatMap(([artery, often]): Draft[] =>
      happens(chance, often)
        ? [{ piece: `${side} ${artery} distal` as Lesion['piece'], ...severity(chance, 0.4), length: 4 }]
        : [],
    ),
  );
  return lesions.length
    ? lesions
    : [{ piece: `${anySide(chance)} axillary distal`, ...severity(chance, 0.4) }];
}

const AGES: Readonly<Record<Pattern, readonly [number, number]>> = {
  sound: [30, 80],
  'cold-body': [25, 80],
  'low-output': [55, 88],
  shock: [25, 85],
  atherosclerosis: [50, 84],
  diabetic: [50, 84],
  'arm-atherosclerosis': [48, 82],
  embolism: [55, 90],
  'small-artery': [25, 48],
  'large-vessel': [22, 78],
  coarctation: [18, 40],
};

function lesionsOf(chance: Chance, pattern: Pattern): Draft[] {
  switch (pattern) {
    case 'atherosclerosis':
      return bothLegs(chance, SEGMENTS);
    case 'diabetic':
      return bothLegs(chance, DIABETIC_SEGMENTS);
    case 'arm-atherosclerosis':
      return armLesion(chance);
    case 'embolism':
      return embolus(chance);
    case 'small-artery':
      return smallArteries(chance);
    case 'large-vessel':
      return vasculitis(chance);
    case 'coarctation':
      return [
        {
          piece: 'midline thoracic-aorta',
          narrowing: Math.round(between(chance, 55, 92)),
          length: 1,
          extent: 'short',
        },
      ];
    case 'sound':
    case 'cold-body':
    case 'low-output':
    case 'shock':
      return [];
  }
}

/** Plaques that narrow a little and count as no disease. Rule of thumb: in half of those past sixty. */
function slightPlaques(chance: Chance, age: number): Draft[] {
  if (age < 60 || !happens(chance, 0.5)) return [];
  const piece = pick<Lesion['piece']>(chance, [
    [`${anySide(chance)} superficial-femoral`, 3],
    [`${anySide(chance)} common-iliac`, 2],
    [`${anySide(chance)} common-carotid distal`, 2],
    [`${anySide(chance)} internal-carotid`, 2],
    ['midline infrarenal-aorta distal', 1],
  ]);
  return [{ piece, narrowing: Math.round(between(chance, 10, 40)), length: 1.5, extent: 'short' }];
}

/**
 * A patient drawn by chance from published frequencies: the same number gives the same patient.
 * @param seed the run
 * @param index which patient of the run
 */
export function randomPatient(seed: number, index: number): Generated {
  const chance = chanceOf((Math.imul(seed, 0x9e3779b1) + Math.imul(index + 1, 0x85ebca77)) >>> 0);
  const pattern = pick(chance, MIX);
  const [youngest, oldest] = AGES[pattern];
  const age = Math.round(between(chance, youngest, oldest));
  const lesions = [...lesionsOf(chance, pattern), ...slightPlaques(chance, age)];
  const both = happens(chance, NO_DORSALIS_PEDIS.both);
  const one = !both && happens(chance, NO_DORSALIS_PEDIS.one) ? anySide(chance) : undefined;
  const acute = pattern === 'embolism' || pattern === 'shock';
  const base: PatientInput = {
    age,
    lesions,
    collaterals: acute
      ? 'fresh'
      : pick(chance, [
          ['poor', 3],
          ['usual', 5],
          ['good', 2],
        ]),
    variants: SIDES.filter((side) => both || side === one).map((side) => ({
      variant: 'no-dorsalis-pedis' as const,
      side,
    })),
    seed: Math.floor(chance() * 0xffffffff),
  };
  if (pattern === 'cold-body') return { pattern, patient: patientOf({ ...base, state: 'cold' }) };
  if (pattern === 'low-output' || pattern === 'shock')
    return { pattern, patient: patientOf({ ...base, state: pattern }) };
  // Pressures and rates are rounded so that sound twins can be shared. Spread: rule of thumb.
  return {
    pattern,
    patient: patientOf({
      ...base,
      meanPressure: 5 * Math.round(between(chance, 82, 112) / 5),
      heartRate: 5 * Math.round(between(chance, 58, 92) / 5),
    }),
  };
}
