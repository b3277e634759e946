import type { PressureUnit } from '../examination/index.js';

/** Millimetres of mercury in one kilopascal; 1 mmHg = 133.322387415 Pa (ISO 80000-4). */
export const MMHG_PER_KPA = 1000 / 133.322387415;

/**
 * A pressure in mmHg as a number in the unit shown: whole mmHg, or kPa to one decimal.
 */
export function fromMmHg(mmHg: number, unit: PressureUnit): number {
  return unit === 'kPa' ? Math.round((mmHg / MMHG_PER_KPA) * 10) / 10 : Math.round(mmHg);
}

/** Converts an entered pressure to mmHg with one decimal, so that kPa values round-trip. */
export function toMmHg(value: number, unit: PressureUnit): number {
  return Math.round((unit === 'kPa' ? value * MMHG_PER_KPA : value) * 10) / 10;
}
