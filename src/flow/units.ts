/*
 * Units inside this folder: pressure in mmHg, flow in ml/s, length in cm, time in s. Tables that clinicians read give bed flows
 * in ml/min and conductances in ml/min per mmHg; they are turned into ml/s where the network is built.
 */

/** One mmHg in dyn/cm². */
export const DYN_PER_MMHG = 1333.22;
/** Viscosity of blood in mmHg·s: 0.04 poise. Source: ADAN56 (Boileau E et al. 2015, doi:10.1002/cnm.2732). */
export const VISCOSITY = 0.04 / DYN_PER_MMHG;
/** Density of blood in mmHg·s²/cm²: 1.06 g/ml. Source: as the viscosity. */
export const DENSITY = 1.06 / DYN_PER_MMHG;
/** Pressure in the veins of a limb at heart level, mmHg. Rule of thumb. */
export const VENOUS_PRESSURE = 5;
/** Pressure of a column of blood, mmHg per cm. */
export const HYDROSTATIC = (1.06 * 980.665) / DYN_PER_MMHG;
/** The driving pressure at which a bed's table flow holds, mmHg. */
export const RESTING_DRIVE = 85;
/** Mean pressure in the aorta of the resting adult of the tables, mmHg. */
export const RESTING_PRESSURE = 95;

export const perSecond = (perMinute: number): number => perMinute / 60;
