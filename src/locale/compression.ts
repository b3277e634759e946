import type { Sensation } from '../examination/index.js';
import type {
  CompressionAsk,
  CompressionGround,
  CompressionLimits,
  CompressionReading,
  CompressionVerdict,
  VenousSign,
} from '../triage/index.js';
import { render, type Renderings } from './render.js';

/** The words of a language for the compression of a leg; `{}` stands for the figures, in their order. */
export interface CompressionTable {
  readonly title: string;
  /** What the findings allow, and who decides. */
  readonly verdicts: Readonly<Record<CompressionVerdict, string>>;
  readonly venous: Readonly<Record<VenousSign, string>>;
  readonly asks: Readonly<Record<CompressionAsk, string>>;
  readonly feeling: Readonly<Record<Sensation, string>>;
  readonly measures: Readonly<Record<'ankle' | 'toe' | 'tcpo2', string>>;
  readonly grounds: {
    readonly indexWithin: string;
    readonly indexBelow: string;
    readonly indexAbove: string;
    readonly toeIndexBelow: string;
    readonly pressureBelow: string;
    readonly pressureFrom: string;
    readonly incompressible: string;
    readonly armsDoubted: string;
    readonly graft: string;
    readonly heartFailure: string;
    readonly filament: string;
    readonly thrombosis: string;
    readonly flags: string;
  };
  readonly from: string;
  readonly missing: string;
  readonly because: string;
  readonly limits: string;
  /** After the limits: whose they are. */
  readonly ownLimits: string;
  readonly consensus: string;
}

interface Speech {
  readonly list: (parts: readonly string[]) => string;
  readonly decimal: (value: number, digits?: number) => string;
}

/** Puts figures where a sentence has `{}`. */
const filled = (sentence: string, ...figures: readonly string[]): string =>
  figures.reduce((text, figure) => text.replace('{}', () => figure), sentence);

/** Says what a leg allows of compression: one builder for every language. */
export function compressionFrom(table: CompressionTable, { list, decimal }: Speech) {
  const two = (value: number): string => decimal(value, 2);
  const ground = (one: CompressionGround): string => {
    const { grounds } = table;
    const says: Renderings<CompressionGround> = {
      'index-within': ({ value, from, to }) => filled(grounds.indexWithin, two(value), two(from), two(to)),
      'index-below': ({ value, limit }) => filled(grounds.indexBelow, two(value), two(limit)),
      'index-above': ({ value, limit }) => filled(grounds.indexAbove, two(value), two(limit)),
      'toe-index-below': ({ value }) => filled(grounds.toeIndexBelow, two(value)),
      'pressure-within': ({ measure, mmHg, limit }) =>
        filled(grounds.pressureFrom, table.measures[measure], decimal(mmHg), decimal(limit)),
      'pressure-below': ({ measure, mmHg, limit }) =>
        filled(grounds.pressureBelow, table.measures[measure], decimal(mmHg), decimal(limit)),
      incompressible: grounds.incompressible,
      'arms-doubted': grounds.armsDoubted,
      graft: grounds.graft,
      'heart-failure': grounds.heartFailure,
      filament: grounds.filament,
      feeling: ({ value }) => table.feeling[value],
      thrombosis: grounds.thrombosis,
      flags: grounds.flags,
    };
    return render(says, one);
  };
  const limits = (of: CompressionLimits, own: boolean): string => {
    const figures = [of.indexFrom, of.indexTo].map(two);
    const pressures = [of.ankleAdvice, of.toeAdvice, of.tcpo2Advice].map((mmHg) => decimal(mmHg));
    const said = filled(table.limits, ...figures, decimal(of.toeFrom), two(of.indexAdvice), ...pressures);
    return `${said} ${own ? table.ownLimits : table.consensus}`;
  };
  return {
    /** Heads the section. */
    get title(): string {
      return table.title;
    },
    verdict: (verdict: CompressionVerdict): string => table.verdicts[verdict],
    /** Everything that stands under the verdict, a paragraph each. */
    lines: ({ grounds, missing, venous, limits: used, ownLimits }: CompressionReading): string[] => [
      ...(grounds.length ? [filled(table.from, list(grounds.map(ground)))] : []),
      ...(missing.length ? [filled(table.missing, list(missing.map((ask) => table.asks[ask])))] : []),
      ...(venous.length ? [filled(table.because, list(venous.map((sign) => table.venous[sign])))] : []),
      limits(used, ownLimits),
    ],
  };
}
export type CompressionWords = ReturnType<typeof compressionFrom>;
