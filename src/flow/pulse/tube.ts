import type { Section, Wall } from '../tree/types.js';
import { DENSITY, RESTING_PRESSURE, VISCOSITY } from '../units.js';
import { type Complex, womersley } from './womersley.js';

/** Years by which the walls of elastic and muscular arteries stiffen e-fold. Rule of thumb. */
const STIFFENING: Readonly<Record<Wall, number>> = { elastic: 0.0105, muscular: 0.003 };
/** The phase by which the viscous wall lags, in rad. Published range 5 to 15 degrees, from memory. */
const WALL_LAG: Readonly<Record<Wall, number>> = { elastic: 0.1, muscular: 0.25 };

/**
 * Speed of the pulse wave in cm/s. Source: 13.3/d^0.3 m/s with the diameter in mm, Reymond P et al., Am J Physiol 2009;297:H208-H222
 * (from memory); rise with age and pressure are rules of thumb.
 */
export function waveSpeed(radius: number, wall: Wall, age: number, meanPressure: number): number {
  const young = 1330 / (20 * radius) ** 0.3;
  return young * Math.exp(STIFFENING[wall] * (age - 35)) * Math.sqrt(meanPressure / RESTING_PRESSURE);
}

/** A tube between two nodes at one frequency: flow into either end = `y11` own pressure + `y12` the other's. */
export interface TwoPort {
  y11: Complex;
  y12: Complex;
}

/** Properties of a section that no frequency changes. */
export interface Tube {
  readonly length: number;
  readonly radius: number;
  readonly area: number;
  readonly speed: number;
  readonly lag: number;
  /** Poiseuille's resistance and plain inertia in place of Womersley's: what a chain of lumps in time tends to. */
  readonly plain?: true;
}

export function tubeOf({ length, radii, wall }: Section, age: number, meanPressure: number): Tube {
  const radius = (radii[0] + radii[1]) / 2;
  return {
    length,
    radius,
    area: Math.PI * radius ** 2,
    speed: waveSpeed(radius, wall, age, meanPressure),
    lag: WALL_LAG[wall],
  };
}

const f10: Complex = { re: 0, im: 0 };

/** Writes the series impedance per cm and the propagation constant per cm of a tube at an angular frequency. */
export function propagation(tube: Tube, omega: number, impedance: Complex, constant: Complex): void {
  if (tube.plain) {
    impedance.re = (8 * Math.PI * VISCOSITY) / tube.area ** 2;
    impedance.im = (omega * DENSITY) / tube.area;
  } else {
    womersley(tube.radius * Math.sqrt((omega * DENSITY) / VISCOSITY), f10);
    const nr = 1 - f10.re;
    const ni = -f10.im;
    // Z' = i omega rho / (A (1 - F10))
    const inverse = (omega * DENSITY) / (tube.area * (nr * nr + ni * ni));
    impedance.re = ni * inverse;
    impedance.im = nr * inverse;
  }
  // Y' = i omega C' e^(-i lag)
  const capacity = (omega * tube.area) / (DENSITY * tube.speed ** 2);
  const yr = capacity * Math.sin(tube.lag);
  const yi = capacity * Math.cos(tube.lag);
  const sr = impedance.re * yr - impedance.im * yi;
  const si = impedance.re * yi + impedance.im * yr;
  const size = Math.sqrt(sr * sr + si * si);
  constant.re = Math.sqrt((size + sr) / 2);
  constant.im = Math.sqrt(Math.max(0, (size - sr) / 2));
  if (si < 0) constant.im = -constant.im;
}

const z: Complex = { re: 0, im: 0 };
const g: Complex = { re: 0, im: 0 };

/** The two-port of a uniform tube of this length: y11 = coth(gL)/Zc, y12 = -1/(Zc sinh gL), with Zc = Z'/g. */
export function openTube(tube: Tube, omega: number, out: TwoPort): void {
  propagation(tube, omega, z, g);
  // 1/Zc = g/Z'
  const scale = 1 / (z.re * z.re + z.im * z.im);
  const yr = (g.re * z.re + g.im * z.im) * scale;
  const yi = (g.im * z.re - g.re * z.im) * scale;
  const decay = Math.exp(-g.re * tube.length);
  const er = decay * Math.cos(g.im * tube.length);
  const ei = -decay * Math.sin(g.im * tube.length);
  const e2r = er * er - ei * ei;
  const e2i = 2 * er * ei;
  const dr = 1 - e2r;
  const div = 1 / (dr * dr + e2i * e2i);
  // coth = (1 + e²)/(1 - e²); 1/sinh = 2e/(1 - e²)
  const cr = ((1 + e2r) * dr - e2i * e2i) * div;
  const ci = (e2i * dr + (1 + e2r) * e2i) * div;
  const sr = 2 * (er * dr - ei * e2i) * div;
  const si = 2 * (ei * dr + er * e2i) * div;
  out.y11.re = yr * cr - yi * ci;
  out.y11.im = yr * ci + yi * cr;
  out.y12.re = -(yr * sr - yi * si);
  out.y12.im = -(yr * si + yi * sr);
}

/** Half a tube as a transfer: at its end P = cosh·P0 - b·Q0 and Q = cosh·Q0 - d·P0. */
export interface Half {
  readonly cosh: Complex;
  readonly b: Complex;
  readonly d: Complex;
}

/** The transfer of a tube's half beside a narrowing (or a closed point) in its middle. */
export function halfTube(tube: Tube, length: number, omega: number): Half {
  propagation(tube, omega, z, g);
  const x = g.re * length;
  const y = g.im * length;
  const cosh = { re: Math.cosh(x) * Math.cos(y), im: Math.sinh(x) * Math.sin(y) };
  const sinh = { re: Math.sinh(x) * Math.cos(y), im: Math.cosh(x) * Math.sin(y) };
  const scale = 1 / (g.re * g.re + g.im * g.im);
  const zc = { re: (z.re * g.re + z.im * g.im) * scale, im: (z.im * g.re - z.re * g.im) * scale };
  const inverse = 1 / (zc.re * zc.re + zc.im * zc.im);
  return {
    cosh,
    b: { re: zc.re * sinh.re - zc.im * sinh.im, im: zc.re * sinh.im + zc.im * sinh.re },
    d: {
      re: (sinh.re * zc.re + sinh.im * zc.im) * inverse,
      im: (sinh.im * zc.re - sinh.re * zc.im) * inverse,
    },
  };
}

const times = (a: Complex, b: Complex): Complex => ({
  re: a.re * b.re - a.im * b.im,
  im: a.re * b.im + a.im * b.re,
});
const over = (a: Complex, b: Complex): Complex => {
  const scale = 1 / (b.re * b.re + b.im * b.im);
  return { re: (a.re * b.re + a.im * b.im) * scale, im: (a.im * b.re - a.re * b.im) * scale };
};

/** The two-port of half a tube, a series impedance and the other half. */
export function narrowedTube({ cosh, b, d }: Half, series: Complex): TwoPort {
  const cs = times(cosh, series);
  const through: Complex = { re: cs.re + b.re, im: cs.im + b.im };
  const bc = times(b, cosh);
  const ct = times(through, cosh);
  const all: Complex = { re: bc.re + ct.re, im: bc.im + ct.im };
  const c2 = times(cosh, cosh);
  const td = times(through, d);
  return {
    y11: over({ re: c2.re + td.re, im: c2.im + td.im }, all),
    y12: over({ re: -1, im: 0 }, all),
  };
}

/** The input admittance of a stump that is closed at its far end. */
export function stump({ cosh, d }: Half): Complex {
  return over(d, cosh);
}

/** Characteristic impedance of a tube without losses, mmHg·s/ml. */
export function idealImpedance({ speed, area }: Tube): number {
  return (DENSITY * speed) / area;
}
