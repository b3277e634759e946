import type { Examination } from '../../../src/examination/index.js';
import {
  circulationPoints,
  circulationSum,
  complaintPoints,
  DEFAULT_TRIAGE_SETTINGS,
  type FlowFacts,
  flowFacts,
  type HistoryFacts,
  type InspectionFacts,
  type LimbFacts,
  limbUrgency,
  nervePoints,
  onsetOf,
  type PulseFacts,
  shownNormal,
  urgencyRank,
  weigh,
} from '../../../src/triage/index.js';

/*
 * Every combination of the levels that the rules tell apart, by exact factoring: all raw combinations of colour, warmth,
 * pulses, refill and veins are brought to the distinct circulations they make (with every worsening step between them), and
 * those are crossed with all the rest.
 */

const settings = DEFAULT_TRIAGE_SETTINGS;

/** Levels of one finding, each with the levels that are one step worse. */
export interface Scale<T> {
  readonly levels: readonly T[];
  readonly worse: readonly (readonly number[])[];
}

function scale<T>(levels: readonly T[], worse: readonly (readonly number[])[]): Scale<T> {
  return { levels, worse };
}

const COLOUR = scale<InspectionFacts['colour']>(
  [undefined, 'normal', 'pale', 'blue', 'mottled', 'fixed-mottled'],
  [[2, 3, 4, 5], [2, 3, 4, 5], [3, 4, 5], [4, 5], [5], []],
);
const TEMPERATURE = scale<InspectionFacts['temperature']>(
  [undefined, 'warm', 'cool', 'cold'],
  [[2, 3], [2, 3], [3], []],
);
const REFILL = scale<number | undefined>([undefined, 4.5, 4.6], [[2], [2], []]);
const VEINS = scale<InspectionFacts['venousDoppler']>([undefined, 'audible', 'inaudible'], [[2], [2], []]);
/** Pulses as they come out of the record. */
const PULSES = {
  unexamined: { state: 'unknown', normal: false, audible: false, silent: false },
  normal: { state: 'present', normal: true, audible: true, silent: false },
  reduced: { state: 'present', normal: false, audible: true, silent: false },
  absent: { state: 'absent', normal: false, audible: false, silent: false },
  monophasic: { state: 'absent', normal: false, audible: true, silent: false },
  silent: { state: 'absent', normal: false, audible: false, silent: true },
} as const;
type Level = keyof typeof PULSES;
const END = scale<Level>(
  ['unexamined', 'normal', 'reduced', 'monophasic', 'absent', 'silent'],
  [[3, 4, 5], [2, 3, 4, 5], [3, 4, 5], [5], [5], []],
);
const PROXIMAL = scale<Level>(['unexamined', 'normal', 'absent'], [[2], [2], []]);

const FEELING = scale<LimbFacts['feeling']>(
  ['unknown', 'normal', 'digits', 'beyond-digits', 'lost'],
  [[2, 3, 4], [2, 3, 4], [3, 4], [4], []],
);
const POWER = scale<LimbFacts['power']>(
  ['unknown', 'normal', 'weak', 'paralysed'],
  [[2, 3], [2, 3], [3], []],
);
const MUSCLE = scale<InspectionFacts['muscle']>(
  [undefined, 'normal', 'tender', 'tense', 'rigid'],
  [[2, 3, 4], [2, 3, 4], [3, 4], [4], []],
);
const COMPLAINT = scale<HistoryFacts>(
  [{}, { symptom: 'claudication' }, { newComplaint: true }, { symptom: 'rest-pain' }, { suddenPain: true }],
  [[2, 3, 4], [2, 3, 4], [3, 4], [4], []],
);
interface OnsetLevel {
  readonly history: HistoryFacts;
  readonly whole?: Examination['onset'];
}
const ONSETS: readonly OnsetLevel[] = [
  { history: {} },
  { history: { onset: 'unknown' } },
  { history: { hours: 335 } },
  { history: { onset: 'gradual', hours: 24 } },
  { history: { onset: 'sudden' } },
  { history: {}, whole: 'acute' },
  { history: { hours: 336 } },
  { history: {}, whole: 'chronic' },
  { history: { hours: 400 }, whole: 'acute' },
];

/** One circulation that the rules tell from all others. */
interface Circulation {
  readonly flow: FlowFacts;
  readonly inspection: InspectionFacts;
  readonly worse: Set<number>;
}

/** A scale with the levels that the rules do not tell apart taken together, each step between them kept. */
function factored<T>({ levels, worse }: Scale<T>, keyOf: (level: T) => string): Scale<T> {
  const keys = [...new Set(levels.map(keyOf))];
  const groups = keys.map((key) => levels.flatMap((level, i) => (keyOf(level) === key ? [i] : [])));
  const groupOf = (level: number) => groups.findIndex((group) => group.includes(level));
  return scale(
    groups.map(([first]) => levels[first as number] as T),
    groups.map((group, own) =>
      [...new Set(group.flatMap((level) => (worse[level] ?? []).map(groupOf)))].filter(
        (next) => next !== own,
      ),
    ),
  );
}

const nerve = { feeling: 'unknown', power: 'unknown', inspection: {} } as const;
const REST = [
  factored(FEELING, (feeling) =>
    [nervePoints({ ...nerve, feeling }, settings).feeling, feeling === 'digits', feeling === 'lost'].join(),
  ),
  factored(POWER, (power) =>
    [nervePoints({ ...nerve, power }, settings).power, power === 'paralysed'].join(),
  ),
  factored(MUSCLE, (muscle) => String(nervePoints({ ...nerve, inspection: { muscle } }, settings).muscle)),
  factored(COMPLAINT, (history) =>
    [
      complaintPoints({ history }, history.newComplaint === true, false, settings),
      complaintPoints({ history: { ...history, onset: 'sudden' } }, true, false, settings),
      history.newComplaint,
    ].join(),
  ),
] as const;
const RAW_REST = [FEELING, POWER, MUSCLE, COMPLAINT].reduce((count, { levels }) => count * levels.length, 1);
const ONSET_LEVELS = factored(
  scale(
    ONSETS,
    ONSETS.map(() => []),
  ),
  ({ history, whole }) =>
    [0, 8]
      .map((circulation) => {
        const { state, newComplaint } = onsetOf(
          whole ? { onset: whole } : {},
          { history },
          circulation,
          settings,
        );
        return `${state} ${newComplaint}`;
      })
      .concat(String(history.onset === 'sudden'))
      .join(),
).levels;

/** Odometer over scales, the first the fastest: calls back with the index of each, and with the number of the combination. */
function each(sizes: readonly number[], visit: (at: readonly number[], combination: number) => void): number {
  const at = sizes.map(() => 0);
  for (let count = 0; ;) {
    visit(at, count++);
    let place = 0;
    while (place < sizes.length && ++(at[place] as number) === sizes[place]) at[place++] = 0;
    if (place === sizes.length) return count;
  }
}

/** By how much the number of a combination grows with each level of each scale. */
const stridesOf = (sizes: readonly number[]): number[] =>
  sizes.map((_size, place) => sizes.slice(0, place).reduce((a, b) => a * b, 1));

/** Every flow that two end arteries and two above them make, with the worsening steps between them. */
function flowsOf(kind: 'leg' | 'arm'): Scale<FlowFacts> & { readonly raw: number } {
  const sites =
    kind === 'leg'
      ? (['dorsalis-pedis', 'posterior-tibial', 'femoral', 'popliteal'] as const)
      : (['radial', 'ulnar', 'brachial', 'axillary'] as const);
  const scales = [END, END, PROXIMAL, PROXIMAL];
  const none = [{ incompressible: false }, { incompressible: false }];
  const raw = new Map<string, FlowFacts>();
  const count = each(
    scales.map(({ levels }) => levels.length),
    (at) => {
      const pulses = at.map((level, i): PulseFacts => {
        const site = sites[i] as PulseFacts['site'];
        const found = PULSES[(scales[i] as Scale<Level>).levels[level] as Level];
        return { site, key: `left ${site}`, expansile: false, thrill: false, ...found };
      });
      raw.set(at.join(), flowFacts({ kind }, pulses, pulses.slice(0, 2), none, settings));
    },
  );
  const entries = [...raw];
  const places = entries.map(([key]) => key.split(',').map(Number));
  const order = new Map(entries.map(([key], i) => [key, i]));
  const flows = scale(
    entries.map(([, flow]) => flow),
    places.map((at) =>
      scales.flatMap(({ worse }, i) =>
        (worse[at[i] as number] ?? []).map((level) => order.get(at.with(i, level).join()) as number),
      ),
    ),
  );
  const { levels, worse } = factored(flows, (flow) =>
    [flow.points, flow.bothEndsNormal, flow.oneEndNormal, flow.silent].join(),
  );
  return { levels, worse, raw: count };
}

/** Every circulation of a leg or arm that the rules tell from all others, and the number of raw combinations behind them. */
function circulations(kind: 'leg' | 'arm') {
  const flows = flowsOf(kind);
  const skin = [COLOUR, TEMPERATURE, REFILL, VEINS] as const;
  const scales: readonly Scale<unknown>[] = [...skin, flows];
  const sizes = scales.map(({ levels }) => levels.length);
  const list: Circulation[] = [];
  const ids = new Map<string, number>();
  const strides = stridesOf(sizes);
  const found: number[] = [];
  each(sizes, (at, combination) => {
    const [colour, temperature, refill, veins, stream] = at as [number, number, number, number, number];
    const inspection = {
      colour: COLOUR.levels[colour],
      temperature: TEMPERATURE.levels[temperature],
      refill: REFILL.levels[refill],
      venousDoppler: VEINS.levels[veins],
    };
    const flow = flows.levels[stream] as FlowFacts;
    const points = circulationPoints({ inspection, flow }, settings);
    const sum = circulationSum(points);
    // What the rules read of a circulation: nothing else of it tells one from another.
    const key = [
      sum,
      points.colour >= settings.points.colour.fixed,
      points.flow + points.capillary + points.veins === 0,
      flow.bothEndsNormal,
      flow.silent,
      shownNormal({ flow, inspection }, sum),
    ].join();
    const id = ids.get(key) ?? list.push({ flow, inspection, worse: new Set() }) - 1;
    ids.set(key, id);
    found[combination] = id;
  });
  each(sizes, (at, combination) => {
    const from = found[combination] as number;
    scales.forEach(({ worse }, i) => {
      for (const level of worse[at[i] as number] ?? []) {
        const to = found[combination + (level - (at[i] as number)) * (strides[i] as number)] as number;
        if (to !== from) list[from]?.worse.add(to);
      }
    });
  });
  return { list, combinations: flows.raw * skin.reduce((count, { levels }) => count * levels.length, 1) };
}

/** No urgency yet. */
const UNKNOWN = 255;

/** What was counted, and every step that lowered the urgency. */
export interface Counted {
  /** Combinations of raw levels that stand behind those visited. */
  combinations: number;
  /** Combinations and steps visited after factoring. */
  visited: number;
  steps: number;
  withoutOnset: number;
  lowered: string[];
}

export function countEveryCombination(kind: 'leg' | 'arm'): Counted {
  const { list, combinations } = circulations(kind);
  const sizes = [list.length, ...REST.map(({ levels }) => levels.length), ONSET_LEVELS.length];
  const strides = stridesOf(sizes);
  const others = kind === 'arm' ? [false, true] : [false];
  const counted: Counted = { combinations: 0, visited: 0, steps: 0, withoutOnset: 0, lowered: [] };
  for (const otherEndsNormal of others) {
    const urgencies = new Uint8Array(sizes.reduce((a, b) => a * b, 1));
    const blank = urgencies.length / ONSET_LEVELS.length;
    const withoutOnset = new Uint8Array(blank * 4).fill(UNKNOWN);
    const stated = (at: readonly number[], onset: OnsetLevel, complaint?: HistoryFacts) => {
      const [c, f, p, m, t] = at as [number, number, number, number, number];
      const { flow, inspection } = list[c] as Circulation;
      const facts: LimbFacts = {
        kind,
        side: 'left',
        history: { ...(complaint ?? REST[3].levels[t]), ...onset.history },
        inspection: { ...inspection, muscle: REST[2].levels[m] },
        pulses: [],
        ends: [],
        flow,
        endLost: false,
        feeling: REST[0].levels[f] as LimbFacts['feeling'],
        power: REST[1].levels[p] as LimbFacts['power'],
      };
      const weighed = weigh(facts, onset.whole ? { onset: onset.whole } : {}, otherEndsNormal, settings);
      return { weighed, urgency: urgencyRank(limbUrgency(weighed, settings)) };
    };
    counted.visited += each(sizes, (at, combination) => {
      const onset = ONSET_LEVELS[at[5] as number] as OnsetLevel;
      const { weighed, urgency } = stated(at, onset);
      urgencies[combination] = urgency;
      if (weighed.sum < settings.acute.now) return;
      counted.withoutOnset += 1;
      // Entering the onset wrote what is new, so that taking the time away leaves it.
      const told = {
        ...REST[3].levels[at[4] as number],
        ...(weighed.began.newComplaint && { newComplaint: true as const }),
      };
      const sudden = weighed.suddenPain ? { suddenPain: true as const } : {};
      // The onset is the last scale, so that what is left of the number without it tells the rest.
      const rest =
        (combination % blank) * 4 + (weighed.began.newComplaint ? 2 : 0) + (weighed.suddenPain ? 1 : 0);
      const known = withoutOnset[rest] as number;
      const after = known === UNKNOWN ? stated(at, { history: {} }, { ...told, ...sudden }).urgency : known;
      withoutOnset[rest] = after;
      if (after < urgency) counted.lowered.push(`without onset: ${at.join()}`);
    });
    each(sizes, (at, combination) => {
      const from = urgencies[combination] as number;
      const step = (place: number, level: number) => {
        counted.steps += 1;
        const to = combination + (level - (at[place] as number)) * (strides[place] as number);
        if ((urgencies[to] as number) < from) counted.lowered.push(`${at.join()}: ${place} to ${level}`);
      };
      for (const worse of (list[at[0] as number] as Circulation).worse) step(0, worse);
      REST.forEach(({ worse }, i) =>
        (worse[at[i + 1] as number] ?? []).forEach((level) => step(i + 1, level)),
      );
    });
    counted.combinations += combinations * RAW_REST * ONSETS.length;
  }
  return counted;
}
