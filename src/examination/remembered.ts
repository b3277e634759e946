import type { Examination } from './types/record.js';

/** How many results are kept. A long undo history holds a thousand records, which would else hold a result each. */
const KEPT = 12;

/**
 * The same derivation, made once for each of the records asked for last, however many elements show them.
 * @param derive a pure function of the record
 */
export function remembered<T>(derive: (examination: Examination) => T): (examination: Examination) => T {
  /** The latest first. */
  const kept: { readonly examination: Examination; readonly result: T }[] = [];
  return (examination) => {
    const at = kept.findIndex((one) => one.examination === examination);
    const [known] = at < 0 ? [] : kept.splice(at, 1);
    const result = known ? known.result : derive(examination);
    kept.unshift({ examination, result });
    kept.length = Math.min(kept.length, KEPT);
    return result;
  };
}
