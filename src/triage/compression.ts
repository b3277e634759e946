import type { Side } from '../anatomy/index.js';
import type { Examination, Sensation, ThrombosisSign } from '../examination/index.js';
import {
  armsDoubt,
  type ArmsDoubtLimits,
  indexOf,
  methodOf,
  mmHgAt,
  type PressureSettings,
} from '../pressures/index.js';
import { type CompressionLimits, compressionLimits } from './compression-limits.js';
import { ankleOf } from './disease.js';
import { END_SITES } from './facts.js';
import type { FlagCode } from './flag.js';
import { type FlagSettings, triage } from './flags.js';
import { hasGraftAt } from './grafts.js';
import { triageSettings } from './settings.js';
import { contextOf, inspectionOf } from './record.js';

/**
 * What the findings of a leg allow of compression, from the least to the most caution: within the limits of full compression, reduced
 * compression if the specialist agrees, not known, none before advice on the arteries. Only the first is ever a go-ahead, and
 * that by the local protocol.
 */
export const COMPRESSION_VERDICTS = ['within-limits', 'reduced', 'not-known', 'advice-first'] as const;
export type CompressionVerdict = (typeof COMPRESSION_VERDICTS)[number];

/** Why, as data; pressures in mmHg. Each speaks for its own verdict. */
export type CompressionGround =
  | { readonly code: 'index-within'; readonly value: number; readonly from: number; readonly to: number }
  | { readonly code: 'index-below'; readonly value: number; readonly limit: number }
  | { readonly code: 'index-above'; readonly value: number; readonly limit: number }
  | { readonly code: 'toe-index-below'; readonly value: number }
  | {
      readonly code: 'pressure-within';
      readonly measure: 'toe';
      readonly mmHg: number;
      readonly limit: number;
    }
  | {
      readonly code: 'pressure-below';
      readonly measure: 'ankle' | 'toe' | 'tcpo2';
      readonly mmHg: number;
      readonly limit: number;
    }
  | { readonly code: 'incompressible' | 'arms-doubted' | 'graft' | 'heart-failure' | 'filament' }
  | { readonly code: 'feeling'; readonly value: Sensation }
  | { readonly code: 'thrombosis'; readonly signs: readonly ThrombosisSign[] }
  | { readonly code: 'flags'; readonly flags: readonly FlagCode[] };

/** What must be known before compression can be within the limits, in the order in which it is asked. */
export const COMPRESSION_ASKS = [
  'ankle-or-toe',
  'toe',
  'diabetes',
  'thrombosis-signs',
  'feeling',
  'heart-failure',
] as const;
export type CompressionAsk = (typeof COMPRESSION_ASKS)[number];

/** Signs of disease of the veins, for which compression is thought of. */
export type VenousSign = 'varices' | 'pigment' | 'oedema' | 'ulcer';

export interface CompressionReading {
  readonly side: Side;
  readonly verdict: CompressionVerdict;
  readonly grounds: readonly CompressionGround[];
  readonly missing: readonly CompressionAsk[];
  /** Why the question comes up. */
  readonly venous: readonly VenousSign[];
  readonly limits: CompressionLimits;
  /** Whether the pathway set any of the limits. */
  readonly ownLimits: boolean;
}

interface Weighed {
  readonly verdict: CompressionVerdict;
  readonly ground: CompressionGround;
}
type Part = { readonly grounds: readonly Weighed[]; readonly missing: readonly CompressionAsk[] };

const weigh = (verdict: CompressionVerdict, ground: CompressionGround): Weighed => ({ verdict, ground });
const rank = (verdict: CompressionVerdict): number => COMPRESSION_VERDICTS.indexOf(verdict);

/** Flags without a limb that are about the legs as well. */
const OF_BOTH_LEGS: readonly FlagCode[] = ['circulation', 'aortic-occlusion', 'aneurysm-with-acute-limb'];

/** Doubts about the arms that hold whatever the ankle reads. */
const ARMS = ['arm-pulses', 'low-though-hypertensive', 'below-recorded'];

function belowLimits(
  value: number | undefined,
  limits: readonly (readonly [limit: number, verdict: CompressionVerdict])[],
  ground: (value: number, limit: number) => CompressionGround,
): Weighed[] {
  if (value === undefined) return [];
  const beyond = limits.find(([limit]) => value < limit);
  return beyond ? [weigh(beyond[1], ground(value, beyond[0]))] : [];
}

/** The arteries: by the ankle index where it can be relied on, else by the toe. A pressure beyond its limit counts either way. */
function arteries(
  examination: Examination,
  side: Side,
  limits: CompressionLimits,
  settings: PressureSettings,
  doubt: ArmsDoubtLimits,
): Part {
  const { pressures = {} } = examination;
  const index = indexOf('ankle', side, pressures, settings);
  const value = index?.value;
  const toe = mmHgAt(pressures.toe, side);
  const toeIndex = indexOf('toe', side, pressures, settings);
  const ankle = ankleOf(examination, side, settings).chosen?.mmHg;
  const stiff = END_SITES.leg.some((site) => pressures[site]?.[side] === 'incompressible');
  const high = value !== undefined && value > limits.indexTo;
  const doubted = armsDoubt(examination, settings, doubt).some(({ code }) => ARMS.includes(code));
  const { diabetes } = contextOf(examination);
  const relied = value !== undefined && !high && !stiff && !doubted && diabetes === false;
  const pressure = (measure: 'ankle' | 'toe' | 'tcpo2') => (mmHg: number, limit: number) =>
    ({ code: 'pressure-below', measure, mmHg, limit }) as const;
  const grounds: Weighed[] = [
    ...belowLimits(
      value,
      [
        [limits.indexAdvice, 'advice-first'],
        [limits.indexFrom, 'reduced'],
      ],
      (found, limit) => ({ code: 'index-below', value: found, limit }),
    ),
    ...belowLimits(ankle, [[limits.ankleAdvice, 'advice-first']], pressure('ankle')),
    ...belowLimits(
      toe,
      [
        [limits.toeAdvice, 'advice-first'],
        [limits.toeFrom, 'reduced'],
      ],
      pressure('toe'),
    ),
    ...(toeIndex?.band === 'abnormal' && toeIndex.value !== undefined
      ? [weigh('reduced', { code: 'toe-index-below', value: toeIndex.value })]
      : []),
    ...belowLimits(pressures.tcpo2?.[side], [[limits.tcpo2Advice, 'advice-first']], pressure('tcpo2')),
    ...(high ? [weigh('within-limits', { code: 'index-above', value, limit: limits.indexTo })] : []),
    ...(stiff ? [weigh('within-limits', { code: 'incompressible' })] : []),
    ...(doubted ? [weigh('within-limits', { code: 'arms-doubted' })] : []),
    ...(relied && value >= limits.indexFrom
      ? [weigh('within-limits', { code: 'index-within', value, from: limits.indexFrom, to: limits.indexTo })]
      : []),
    ...(toe !== undefined && toe >= limits.toeFrom
      ? [
          weigh('within-limits', {
            code: 'pressure-within',
            measure: 'toe',
            mmHg: toe,
            limit: limits.toeFrom,
          }),
        ]
      : []),
  ];
  if (relied || toe !== undefined) return { grounds, missing: [] };
  if (value === undefined && !stiff) return { grounds, missing: ['ankle-or-toe'] };
  // An index alone can read too high in diabetes; whether there is any must be known.
  const onlyDiabetesOpen = !high && !stiff && !doubted && diabetes === undefined;
  return { grounds, missing: [onlyDiabetesOpen ? 'diabetes' : 'toe'] };
}

/** Veins, feeling, heart and grafts: what makes pressure from outside dangerous though the arteries are well. */
function others(examination: Examination, side: Side): Part {
  const limb = { kind: 'leg', side } as const;
  const { thrombosisSigns, sensation, monofilament, oedema } = inspectionOf(examination, limb) as ReturnType<
    typeof inspectionOf
  > & { readonly monofilament?: 'felt' | 'reduced' | 'not-felt' };
  const risks = examination.history?.risks;
  const numb = sensation !== undefined && sensation !== 'normal';
  const filament = monofilament === 'reduced' || monofilament === 'not-felt';
  const swollen = oedema !== undefined && oedema !== 'none';
  const graft = hasGraftAt(examination, limb);
  return {
    grounds: [
      ...(thrombosisSigns?.length
        ? [weigh('advice-first', { code: 'thrombosis', signs: thrombosisSigns })]
        : []),
      ...(numb
        ? [weigh(sensation === 'digits' ? 'reduced' : 'advice-first', { code: 'feeling', value: sensation })]
        : []),
      ...(filament ? [weigh('reduced', { code: 'filament' })] : []),
      ...(risks?.includes('heart-failure') ? [weigh('reduced', { code: 'heart-failure' })] : []),
      ...(graft ? [weigh('advice-first', { code: 'graft' })] : []),
    ],
    missing: [
      ...(thrombosisSigns === undefined ? (['thrombosis-signs'] as const) : []),
      ...(sensation === undefined && monofilament === undefined ? (['feeling'] as const) : []),
      ...(swollen && risks === undefined ? (['heart-failure'] as const) : []),
    ],
  };
}

function venousSigns(examination: Examination, side: Side): VenousSign[] {
  const leg = examination.inspection?.leg?.[side];
  const cause = leg?.ulcerCause;
  return [
    ...(leg?.varices ? (['varices'] as const) : []),
    ...(leg?.pigment ? (['pigment'] as const) : []),
    ...(leg?.oedema && leg.oedema !== 'none' ? (['oedema'] as const) : []),
    ...(cause === 'venous' || cause === 'mixed' ? (['ulcer'] as const) : []),
  ];
}

/**
 * Whether compression of a leg is within the limits, as far as the record tells. What was not recorded is never within them, a red flag
 * of the leg comes first, and the local protocol decides. See {@link COMPRESSION_SOURCES}.
 * @param choices limits and methods that the page or its pathway sets
 */
export function readCompression(
  examination: Examination,
  side: Side,
  choices: FlagSettings = {},
): CompressionReading {
  const limits = compressionLimits(choices.compression);
  const settings = methodOf(examination, choices.pressures);
  const flags = triage(examination, choices).flags.filter(({ code, limb }) =>
    limb ? limb.kind === 'leg' && limb.side === side : OF_BOTH_LEGS.includes(code),
  );
  const parts = [
    arteries(examination, side, limits, settings, triageSettings(choices.triage).armsDoubt),
    others(examination, side),
  ];
  const weighed = [
    ...(flags.length ? [weigh('advice-first', { code: 'flags', flags: flags.map(({ code }) => code) })] : []),
    ...parts.flatMap(({ grounds }) => grounds),
  ];
  const asked = parts.flatMap(({ missing }) => missing);
  const missing = COMPRESSION_ASKS.filter((ask) => asked.includes(ask));
  const worst = Math.max(
    missing.length ? rank('not-known') : 0,
    ...weighed.map(({ verdict }) => rank(verdict)),
  );
  return {
    side,
    verdict: COMPRESSION_VERDICTS[worst] as CompressionVerdict,
    grounds: [...weighed].sort((a, b) => rank(b.verdict) - rank(a.verdict)).map(({ ground }) => ground),
    missing,
    venous: venousSigns(examination, side),
    limits,
    ownLimits: Object.keys(choices.compression ?? {}).length > 0,
  };
}

/** Whether the question comes up for a leg: a sign of the veins, or of their thrombosis. */
export function asksCompression({ venous, grounds }: CompressionReading): boolean {
  return venous.length > 0 || grounds.some(({ code }) => code === 'thrombosis');
}
