import { VESSELS } from '../anatomy/index.js';
import {
  DOPPLER_SIGNALS,
  type DopplerSignal,
  emptyExamination,
  type Examination,
  type Movement,
  MOVEMENTS,
  type RevascularisedArtery,
  REVASCULARISATIONS,
  type Sensation,
  SENSATIONS,
  SKIN_COLOURS,
} from '../examination/index.js';
import { type FlagSettings, redFlags } from './flags.js';
import type { RedFlag } from './flag.js';
import type { StagedLimb } from './record.js';

/*
 * A limb watched by the hour after an operation. It is a document of its own and no part of the record of an examination: a chart runs
 * over days and shifts, is written by others than the examiner, and thirty rows of it must not make a record that every other part reads.
 * What a chart says of danger is not decided here: its rows are handed to the triage as a record.
 */

export const CHART_FORMAT = 'pulse-map-chart/1';

type SkinColour = (typeof SKIN_COLOURS)[number];

/** One round at the bedside; what is missing was not looked at. */
export interface LimbObservation {
  /** ISO 8601 with `Z` or an offset. */
  readonly at: string;
  /** The signal of the watched artery. */
  readonly signal?: DopplerSignal;
  readonly colour?: SkinColour;
  readonly sensation?: Sensation;
  readonly movement?: Movement;
  /** Capillary refill in seconds, 0 to 60. */
  readonly refill?: number;
  /** From 0, none, to 10, the worst. */
  readonly pain?: number;
  readonly note?: string;
}

/** The chart of one limb. */
export interface ObservationChart {
  readonly format: typeof CHART_FORMAT;
  readonly limb: StagedLimb;
  /** What was done to the limb, where an artery was opened again or replaced. */
  readonly graft?: RevascularisedArtery;
  /** Minutes from one round to the next. */
  readonly every: number;
  /** In the order of their times. */
  readonly observations: readonly LimbObservation[];
}

/** What a row asks for, in the order of the bedside. */
export const OBSERVED = ['signal', 'colour', 'sensation', 'movement', 'refill', 'pain'] as const;
export type Observed = (typeof OBSERVED)[number];

/** The words that may be entered, best first; the other fields are numbers. */
export const OBSERVED_WORDS = {
  signal: DOPPLER_SIGNALS,
  colour: SKIN_COLOURS,
  sensation: SENSATIONS,
  movement: MOVEMENTS,
} as const;
export const OBSERVED_RANGES = { refill: [0, 60], pain: [0, 10] } as const;

/** A chart without a row. An hour between rounds is common practice; the local pathway decides. */
export function emptyChart(limb: StagedLimb, every = 60): ObservationChart {
  return Object.freeze({ format: CHART_FORMAT, limb, every, observations: [] });
}

const isTaken = (field: Observed, value: unknown): boolean => {
  if (field in OBSERVED_WORDS)
    return (OBSERVED_WORDS[field as keyof typeof OBSERVED_WORDS] as readonly unknown[]).includes(value);
  const [least, most] = OBSERVED_RANGES[field as keyof typeof OBSERVED_RANGES];
  return typeof value === 'number' && value >= least && value <= most;
};

const ZONED = /(?:Z|[+-]\d\d:\d\d)$/;

function checked(row: LimbObservation): LimbObservation {
  // Without its zone a time is another one on every machine.
  if (!ZONED.test(row.at) || Number.isNaN(Date.parse(row.at)))
    throw new RangeError(`at: found ${JSON.stringify(row.at)}, expected a point of time with Z or an offset`);
  for (const field of OBSERVED)
    if (row[field] !== undefined && !isTaken(field, row[field]))
      throw new RangeError(`${field}: found ${JSON.stringify(row[field])}, expected what a chart takes`);
  return row;
}

/** Rows in the order of their times; of two of the same time the later given. */
function inOrder(rows: readonly LimbObservation[]): readonly LimbObservation[] {
  const byTime = new Map(rows.map((row) => [Date.parse(row.at), row]));
  return [...byTime].sort(([a], [b]) => a - b).map(([, row]) => row);
}

/**
 * The chart with one more row, or with the row of the same time replaced.
 * @throws RangeError for a time that is none, and for a word or number that a chart does not take
 */
export function observe(chart: ObservationChart, row: LimbObservation): ObservationChart {
  return { ...chart, observations: inOrder([...chart.observations, checked(row)]) };
}

function isGraft({ artery, side, kind, infectionSigns = [] }: RevascularisedArtery): boolean {
  return (
    VESSELS.some((vessel) => vessel.artery === artery && vessel.side === side) &&
    REVASCULARISATIONS.includes(kind) &&
    Array.isArray(infectionSigns)
  );
}

/** The chart of a text; `undefined` where it is none. Never throws. */
export function parseChart(text: string): ObservationChart | undefined {
  try {
    const { format, limb, every, observations, graft } = JSON.parse(text) as ObservationChart;
    const known = ['leg', 'arm'].includes(limb.kind) && ['right', 'left'].includes(limb.side);
    if (format !== CHART_FORMAT || !known || !(every > 0) || !Array.isArray(observations)) return undefined;
    if (graft && !isGraft(graft)) return undefined;
    return {
      ...emptyChart(limb, every),
      ...(graft && { graft }),
      observations: inOrder((observations as readonly LimbObservation[]).map(checked)),
    };
  } catch {
    return undefined;
  }
}

/** What stands of each field: the last word on it. A lost signal stands until it is heard again. */
export function standing({ observations }: ObservationChart): Partial<LimbObservation> {
  const stated = observations.flatMap(({ note: _, ...row }) =>
    Object.entries(row).filter(([, value]) => value !== undefined),
  );
  return Object.fromEntries(stated) as Partial<LimbObservation>;
}

/** Whether a value says that something is wrong. Two phases of a signal do not; numbers say nothing by themselves. */
export function isWorseThanNormal(field: Observed, value: LimbObservation[Observed]): boolean {
  if (typeof value !== 'string' || !(field in OBSERVED_WORDS)) return false;
  const best = OBSERVED_WORDS[field as keyof typeof OBSERVED_WORDS][0];
  return value !== best && !(field === 'signal' && value === 'biphasic');
}

const isWorse = (seen: Partial<LimbObservation>): boolean =>
  OBSERVED.some((field) => isWorseThanNormal(field, seen[field]));

/** What stands, as a record that the triage reads. Whatever is wrong in the hours after an operation is new. */
export function chartRecord({ limb, graft, observations, ...chart }: ObservationChart): Examination {
  const { kind, side } = limb;
  const seen = standing({ ...chart, limb, observations });
  const { signal, colour, sensation, movement, refill } = seen;
  const looked = { colour, sensation, movement, refill };
  const inspection = Object.fromEntries(Object.entries(looked).filter(([, value]) => value !== undefined));
  const sites =
    kind === 'leg' ? (['posterior-tibial', 'dorsalis-pedis'] as const) : (['radial', 'ulnar'] as const);
  return {
    ...emptyExamination(),
    ...(isWorse(seen) && { onset: 'acute', history: { [kind]: { [side]: { newComplaint: true } } } }),
    ...(graft && { context: { revascularisations: [graft] } }),
    // One artery is watched for the limb: what is heard there is all that is known of the foot or hand.
    ...(signal && {
      pulses: Object.fromEntries(sites.map((site) => [site, { [side]: { doppler: signal } }])),
    }),
    ...(Object.keys(inspection).length && { inspection: { [kind]: { [side]: inspection } } }),
  } as Examination;
}

/** The red flags that stand by a chart, gravest first. */
export function chartFlags(chart: ObservationChart, settings?: FlagSettings): readonly RedFlag[] {
  return chart.observations.length ? redFlags(chartRecord(chart), settings) : [];
}

/** When the next round is due, in ms since 1970; at once where there was none. */
export function nextDue({ observations, every }: ObservationChart, now: number): number {
  const last = observations.at(-1);
  return last ? Date.parse(last.at) + every * 60_000 : now;
}
