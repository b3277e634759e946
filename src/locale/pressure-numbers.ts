import type { Method, PressureUnit } from '../examination/index.js';
import { type Band, fromMmHg, type IndexReading } from '../pressures/index.js';
import type { MethodStatement, UsedMethod } from '../statements/index.js';

type Decimal = (value: number, digits?: number) => string;

/** Writes pressures as a language writes its numbers: kPa to one decimal, mmHg as they were recorded. */
export function pressureNumbers(
  decimal: Decimal,
  units: Readonly<Record<PressureUnit, string>>,
): Record<'number' | 'withUnit', (mmHg: number, unit: PressureUnit) => string> {
  const number = (mmHg: number, unit: PressureUnit): string =>
    unit === 'kPa' ? decimal(fromMmHg(mmHg, unit), 1) : decimal(fromMmHg(mmHg, unit));
  return { number, withUnit: (mmHg, unit) => `${number(mmHg, unit)} ${units[unit]}` };
}

interface IndexWords {
  readonly number: (mmHg: number, unit: PressureUnit) => string;
  readonly decimal: Decimal;
  readonly bands: Readonly<Record<Band, string>>;
  readonly severe: string;
}

/** Says an index with its band, and from which pressures it was worked out. */
export function indexWords({ number, decimal, bands, severe }: IndexWords) {
  const band = (reading: Pick<IndexReading, 'band' | 'severe'>): string =>
    reading.severe ? severe : reading.band ? bands[reading.band] : '';
  return {
    /** What an index is called, empty where it could not be judged. */
    band,
    /** An index to two decimals and what it is called. */
    index: (reading: IndexReading): string =>
      [reading.value === undefined ? '' : decimal(reading.value, 2), band(reading)]
        .filter(Boolean)
        .join(', '),
    /** Which pressures went into the index, as a sum; empty where one is missing. */
    sum: ({ numerator, denominator }: IndexReading, unit: PressureUnit): string =>
      numerator && denominator ? `${number(numerator.mmHg, unit)} ÷ ${number(denominator.mmHg, unit)}` : '',
  };
}

/** What a choice of method is called, and each of its options. */
export type MethodWords = {
  readonly [K in keyof Method]-?: {
    readonly label: string;
    readonly options: Readonly<Record<NonNullable<Method[K]>, string>>;
  };
};

/** Says choices of method: those that stand in a record, and those that a verdict rests on. */
export function methodWords(words: MethodWords, byDefault: string) {
  const method = ({ field, option }: MethodStatement): string =>
    `${words[field].label}: ${(words[field].options as Readonly<Record<string, string>>)[option] ?? ''}`;
  const used = (one: UsedMethod): string =>
    one.byDefault ? `${method(one.method)} (${byDefault})` : method(one.method);
  return {
    /** What it is about, and what was chosen. */
    method,
    /** The same of each, and which of them are the default because nobody chose. */
    methodsUsed: (all: readonly UsedMethod[]): string => `${all.map(used).join('; ')}.`,
    byDefault,
  };
}
