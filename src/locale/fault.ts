import type { Counted, Expectation, Fault, FaultCode, RuleCode, ValueType } from '../examination/index.js';
import type { ExaminationWords } from './examination.js';
import { together } from './terms.js';

/** The words in which a language says what is wrong with a value. */
export interface FaultWords {
  /** What stands before the expectation, and how it is joined to it. */
  readonly faults: Readonly<Record<FaultCode, (found: string) => string>>;
  readonly types: Readonly<Record<Exclude<ValueType, 'json-text'>, string>>;
  /** A number of what a bound counts. */
  readonly counted: Readonly<Record<Exclude<Counted, 'number'>, (value: number) => string>>;
  readonly bounds: Readonly<Record<'at-least' | 'at-most' | 'more-than', string>>;
  readonly rules: Readonly<Record<RuleCode, string>>;
  pressure(least: number, most: number, words: readonly string[]): string;
  /** Several as alternatives. */
  or(items: readonly string[]): string;
  readonly nothing: string;
  readonly theValue: string;
}

/** Says one thing wrong with a value, in a sentence that names the field, what was found and what was expected. */
export function faultFrom(words: FaultWords): (fault: Fault) => string {
  const counted = ({ of, value }: Extract<Expectation, { readonly of: Counted }>): string =>
    of === 'number' ? String(value) : words.counted[of](value);
  const expected = (expectation: Expectation): string => {
    switch (expectation.code) {
      case 'one-of':
        return words.or(expectation.values.map((value) => JSON.stringify(value)));
      case 'type':
        return expectation.type === 'json-text' ? 'JSON' : words.types[expectation.type];
      case 'fields':
        return expectation.names.length ? words.or(expectation.names) : words.nothing;
      case 'at-least':
      case 'at-most':
      case 'more-than':
        return `${words.bounds[expectation.code]} ${counted(expectation)}`;
      case 'pressure':
        return words.pressure(expectation.least, expectation.most, expectation.words);
      default:
        return words.rules[expectation.code];
    }
  };
  return ({ code, path, found, expected: expectation }) => {
    const where = path.length ? path.join(' › ') : words.theValue;
    return `${where}: ${words.faults[code](found || words.nothing)} ${expected(expectation)}.`;
  };
}

/** The words of what is recorded at a site, and of what is wrong with a record. */
export const examinationFrom = (recorded: ExaminationWords, faults: FaultWords) =>
  together(recorded, { fault: faultFrom(faults) });
