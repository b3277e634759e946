/** A complex number that a function writes its result into. */
export interface Complex {
  re: number;
  im: number;
}

/** Above this Womersley number the asymptotic series is exact to 1e-8. */
const LARGE = 25;

/**
 * Womersley's function F10 = 2 J1(z)/(z J0(z)) with z = i^(3/2) alpha, the share of the section that the viscous layer takes.
 * By continued fraction, for large alpha by the asymptotic series. Source: Womersley JR, J Physiol 1955;127:553-563.
 * @param alpha Womersley number, radius times the root of (angular frequency x density / viscosity)
 */
export function womersley(alpha: number, out: Complex): void {
  if (alpha > LARGE) {
    // y = J1/J0 = i + 1/(2z) + i/(8z²) - 1/(8z³) - 25i/(128z⁴); F = 2y/z. In powers of 1/z with z = alpha e^(3πi/4).
    const h = Math.SQRT1_2 / alpha;
    const ur = -h;
    const ui = -h;
    const u2i = 1 / (alpha * alpha);
    // 1/z² = i/alpha², so 1/z³ = u·i/alpha² and 1/z⁴ = -1/alpha⁴.
    const yr = 0.5 * ur - 0.125 * u2i - 0.125 * -ui * u2i;
    const yi = 1 + 0.5 * ui - 0.125 * ur * u2i + (25 / 128) * u2i * u2i;
    out.re = 2 * (yr * ur - yi * ui);
    out.im = 2 * (yr * ui + yi * ur);
    return;
  }
  // J1/J0 = z/(2 - z²/(4 - z²/(6 - ...))), and z² = -i alpha².
  const square = alpha * alpha;
  let m = Math.ceil(0.75 * alpha) + 10;
  let dr = 2 * m;
  let di = 0;
  for (m--; m >= 1; m--) {
    const scale = square / (dr * dr + di * di);
    // z²/d = -i alpha² conj(d)/|d|² = -(di + i dr) alpha²/|d|²
    const nr = 2 * m + di * scale;
    di = dr * scale;
    dr = nr;
  }
  const scale = 2 / (dr * dr + di * di);
  out.re = dr * scale;
  out.im = -di * scale;
}
