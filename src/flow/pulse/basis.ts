/** Cosines and sines of the harmonics at evenly spaced times of one period: `harmonic * samples + sample`, harmonics from the first. */
export interface Basis {
  readonly samples: number;
  readonly cos: Float64Array;
  readonly sin: Float64Array;
}

const kept = new Map<number, Basis>();

/** Eight samples a period of the highest harmonic. */
export function basisOf(harmonics: number): Basis {
  let basis = kept.get(harmonics);
  if (!basis) {
    const samples = 8 * harmonics;
    const cos = new Float64Array(harmonics * samples);
    const sin = new Float64Array(harmonics * samples);
    for (let k = 0, at = 0; k < harmonics; k++) {
      for (let i = 0; i < samples; i++, at++) {
        const angle = (2 * Math.PI * (((k + 1) * i) % samples)) / samples;
        cos[at] = Math.cos(angle);
        sin[at] = Math.sin(angle);
      }
    }
    kept.set(harmonics, (basis = { samples, cos, sin }));
  }
  return basis;
}

/** Adds the wave of a harmonic, the first being 0, to a trace: the real part of (re + i im) e^(i angle). */
export function addWave(
  trace: Float64Array,
  { samples, cos, sin }: Basis,
  harmonic: number,
  re: number,
  im: number,
): void {
  const row = harmonic * samples;
  for (let i = 0; i < samples; i++) trace[i]! += re * cos[row + i]! - im * sin[row + i]!;
}
