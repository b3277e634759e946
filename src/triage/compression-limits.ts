/**
 * Limits of compression of a leg, in mmHg and as indices. Sources of the defaults stand in {@link COMPRESSION_SOURCES}; a hospital
 * sets its own by its pathway.
 */
export interface CompressionLimits {
  /** Ankle index from which full compression is within the limits, and above which it tells nothing. */
  readonly indexFrom: number;
  readonly indexTo: number;
  /** Below these an opinion on the arteries comes first. */
  readonly indexAdvice: number;
  readonly ankleAdvice: number;
  readonly toeAdvice: number;
  readonly tcpo2Advice: number;
  /** Toe pressure from which full compression is within the limits. */
  readonly toeFrom: number;
}

export const DEFAULT_COMPRESSION_LIMITS: CompressionLimits = {
  indexFrom: 0.8,
  indexTo: 1.3,
  indexAdvice: 0.6,
  ankleAdvice: 60,
  toeAdvice: 30,
  tcpo2Advice: 20,
  toeFrom: 60,
};

export const COMPRESSION_SOURCES = [
  'National Wound Care Strategy, lower limb: full compression from 0.80 to 1.30',
  'Rabe E et al., Phlebology 2020;35:447-460 (from memory): advice below ankle index 0.60, ankle 60, toe 30 and oxygen pressure 20 mmHg; deep vein thrombosis, neuropathy, heart failure, grafts',
  'toe pressure from 60 mmHg: common practice, no source',
] as const;

export type CompressionChoices = { readonly [L in keyof CompressionLimits]?: number };

/** Limits with the defaults filled in, also where one is `undefined`. */
export function compressionLimits(choices: CompressionChoices = {}): CompressionLimits {
  const chosen = Object.entries(choices).filter(([, value]) => (value as number | undefined) !== undefined);
  return { ...DEFAULT_COMPRESSION_LIMITS, ...Object.fromEntries(chosen) };
}
