import { type Grade, GRADES, type ScaleId, SCALES } from '../examination/index.js';
import { LOINC_GRADES, SYSTEMS } from './codes.js';
import { at, codesIn, textAt } from './resource.js';

/** Which strength each numeral may stand for on the scales of this library: numeral, blank, strength. */
export const SCALE_NUMERALS: ReadonlySet<string> = new Set(
  Object.values(SCALES).flatMap(({ steps }) =>
    steps.flatMap(({ numeral, grade }) => (numeral === null ? [] : [`${numeral} ${grade}`])),
  ),
);

/** A strength that another program wrote, or `undefined` where its scale is not known. */
export interface Strength {
  readonly grade: Grade;
  readonly scale?: ScaleId;
}

/** "2+ of 3", "2/3", "2 (0-3)", with or without its plus sign. */
const OF_SCALE = /^(\d)\s*\+?\s*(?:\/|of|on a scale of 0 to|\(0\s*(?:-|to)\s*(?=\d\)))\s*(\d)\)?$/i;

/**
 * Reads the strength of a pulse from another program's value. Nought means absent on every scale; any other numeral is read on the scale
 * of 0 to 3 only, where 2 is normal: on those of 0 to 4 it may be weak or normal. A word counts where it is one of the record's own.
 */
export function readStrength(value: unknown): Strength | undefined {
  const numerals = [
    ...new Set(codesIn(value, SYSTEMS.loinc).map((code) => LOINC_GRADES.indexOf(code as never))),
  ].filter((one) => one >= 0);
  const text = (textAt(value, 'text') ?? '').trim().toLowerCase().slice(0, 100);
  const said = GRADES.find((grade) => grade === text);
  const [, numeral, most] = OF_SCALE.exec(text) ?? [];
  const bare = /^([0-4])\s*\+?$/.exec(text)?.[1];
  const told = [
    ...numerals,
    ...(numeral === undefined ? [] : [Number(numeral)]),
    ...(bare === undefined ? [] : [Number(bare)]),
  ];
  if (new Set(told).size > 1) return undefined;
  const isOther = text !== '' && said === undefined && numeral === undefined && bare === undefined;
  if (isOther) return undefined;
  if (told[0] === 0) return said === undefined || said === 'absent' ? { grade: 'absent' } : undefined;
  if (told.length === 0) return said ? { grade: said } : undefined;
  const step = SCALES['0-3'].steps.find((one) => one.numeral === told[0]);
  if (most === '3' && step) return { grade: step.grade, scale: '0-3' };
  return said && SCALE_NUMERALS.has(`${told[0]} ${said}`) ? { grade: said } : undefined;
}

/** A bare number given as a strength: nought is absent on every scale. */
export function readNumeral(own: unknown): Strength | undefined {
  const value = at(own, 'valueInteger') ?? at(at(own, 'valueQuantity'), 'value');
  return value === 0 ? { grade: 'absent' } : undefined;
}
