import {
  isListeningSite,
  isPulseSite,
  LISTENING_PLACES,
  type ListeningSiteId,
  type Place,
  PLACES,
  PULSE_PLACES,
  type PulseSiteId,
  SIDES,
  siteDefinition,
} from '../anatomy/index.js';
import { BEDSIDE_TEST_IDS, readBedside, type Verdict, VERDICTS } from '../bedside/index.js';
import {
  ACUTE_CLASSES,
  type Bruit,
  bruitAt,
  type DopplerSignal,
  DOPPLER_SIGNALS,
  type Examination,
  FONTAINE_STAGES,
  type Grade,
  isBruitLocked,
  isPulseLocked,
  pulseAt,
  RUTHERFORD_CATEGORIES,
  WIFI_STAGES,
} from '../examination/index.js';
import { indexChanges, pressureSettings } from '../pressures/index.js';
import { finalStage, stageArm, stageLeg } from '../staging/index.js';
import {
  flagKey,
  hasGraftAt,
  type RedFlag,
  redFlags,
  type StagedLimb,
  urgencyRank,
} from '../triage/index.js';
import {
  type Change,
  CHANGE_WEIGHTS,
  type ChangeWay,
  type ChangeWeight,
  type ComparedScheme,
  type Comparison,
  type StageValues,
} from './change.js';
import { isScatter, trendValue } from './trends.js';

/** A change of what was felt or heard at a place. */
type PlacedChange = Extract<Change, { readonly place: Place }>;
type Pair = readonly [earlier: Examination, later: Examination];
type Weighed = { readonly weight: ChangeWeight; readonly way: ChangeWay };

const wayOf = (by: number): ChangeWay => (by > 0 ? 'worse' : by < 0 ? 'better' : 'other');

/** Whether a graft or stent feeds a limb that the place lies on the way to. */
function hasGraft(pair: Pair, { site, side }: Place): boolean {
  const { region } = siteDefinition(site);
  if (region === 'head') return false;
  const kind = region === 'arm' ? 'arm' : 'leg';
  const sides = side === 'midline' ? SIDES : [side];
  return sides.some((at) => pair.some((one) => hasGraftAt(one, { kind, side: at })));
}

/**
 * A pulse that came or went is more than scatter between examiners, one that is merely weaker is not: kappa 0.52 to 0.92 for felt or
 * not, 0.01 to 0.15 for normal or reduced (McGee S, Evidence-Based Physical Diagnosis, from memory).
 */
function weighPulse(from: Grade, to: Grade, graft: boolean): Weighed {
  if (to === 'absent') return { weight: graft ? 'urgent' : 'matters', way: 'worse' };
  if (from === 'absent') return { weight: 'matters', way: 'better' };
  if (from === 'bounding' || to === 'bounding') return { weight: 'minor', way: 'other' };
  return { weight: 'chance', way: to === 'reduced' ? 'worse' : 'better' };
}

/** How much each signal has left, from none to all three phases. */
const signalRank = (signal: DopplerSignal): number => -DOPPLER_SIGNALS.indexOf(signal);
const isPoor = (signal: DopplerSignal): boolean => signal === 'monophasic' || signal === 'absent';

function weighDoppler(from: DopplerSignal, to: DopplerSignal, graft: boolean): Weighed {
  const way = wayOf(signalRank(from) - signalRank(to));
  if (to === 'absent') return { weight: graft ? 'urgent' : 'matters', way };
  return { weight: isPoor(from) !== isPoor(to) || from === 'absent' ? 'matters' : 'minor', way };
}

/** A bruit that falls silent may come of a wider or of a closed artery. */
function weighBruit(from: Bruit, to: Bruit): Weighed {
  if (to === 'none') return { weight: 'minor', way: 'other' };
  if (from === 'none' || to === 'continuous') return { weight: 'matters', way: 'worse' };
  return { weight: 'minor', way: 'better' };
}

/** What stood at both visits, read by one function; nothing where it was unknown at one of them or alike. */
function both<T>(pair: Pair, read: (one: Examination) => T | undefined): { from: T; to: T } | undefined {
  const [from, to] = pair.map(read);
  return from === undefined || to === undefined || from === to ? undefined : { from, to };
}

const pulseOf = (one: Examination, place: Place<PulseSiteId>) =>
  isPulseLocked(one, place) ? undefined : pulseAt(one, place);
const bruitOf = (one: Examination, place: Place<ListeningSiteId>) =>
  isBruitLocked(one, place) ? undefined : bruitAt(one, place)?.bruit;

/** Pulses and Doppler signals that are otherwise than before. */
export function pulseChanges(...pair: Pair): PlacedChange[] {
  return PULSE_PLACES.flatMap((place): PlacedChange[] => {
    const graft = hasGraft(pair, place);
    const grade = both(pair, (one) => pulseOf(one, place)?.grade);
    const signal = both(pair, (one) => pulseOf(one, place)?.doppler);
    return [
      ...(grade
        ? [{ code: 'pulse' as const, place, ...grade, ...weighPulse(grade.from, grade.to, graft) }]
        : []),
      ...(signal
        ? [{ code: 'doppler' as const, place, ...signal, ...weighDoppler(signal.from, signal.to, graft) }]
        : []),
    ];
  });
}

/** Bruits that are otherwise than before. */
export function bruitChanges(...pair: Pair): PlacedChange[] {
  return LISTENING_PLACES.flatMap((place): PlacedChange[] => {
    const heard = both(pair, (one) => bruitOf(one, place));
    return heard ? [{ code: 'bruit', place, ...heard, ...weighBruit(heard.from, heard.to) }] : [];
  });
}

function grafts(pair: Pair): Change[] {
  const [before, now] = pair.map(({ context }) => context?.revascularisations ?? []);
  return now!.flatMap((graft): Change[] => {
    const { artery, side, kind, graftPulse: to } = graft;
    const old = before!.filter((one) => one.artery === artery && one.side === side && one.kind === kind);
    const from = old.length === 1 ? old[0]!.graftPulse : undefined;
    if (!from || !to || from === to) return [];
    const weighed: Weighed =
      to === 'absent' ? { weight: 'urgent', way: 'worse' } : { weight: 'matters', way: 'better' };
    return [{ code: 'graft-pulse', artery, side, from, to, ...weighed }];
  });
}

/** Ankle indices, both by the choices of the later record. A fall below a graft is what its surveillance watches for. */
function indices(pair: Pair): Change[] {
  const [earlier, later] = pair;
  const settings = pressureSettings(later.method);
  return indexChanges(earlier.pressures ?? {}, later.pressures ?? {}, settings).flatMap(
    ({ side, before: from, value: to, by, real, limit }): Change[] => {
      if (by === 0) return [];
      const graft = pair.some((one) => hasGraftAt(one, { kind: 'leg', side }));
      const weight: ChangeWeight = !real ? 'chance' : graft && by < 0 ? 'urgent' : 'matters';
      return [{ code: 'index', side, from, to, by, limit, weight, way: wayOf(-by) }];
    },
  );
}

function distances(pair: Pair): Change[] {
  return SIDES.flatMap((side): Change[] => {
    const walked = both(pair, (one) => one.history?.leg?.[side]?.distance);
    if (!walked) return [];
    const weight: ChangeWeight = isScatter('distance', walked.from, walked.to) ? 'chance' : 'matters';
    return [{ code: 'distance', side, ...walked, weight, way: wayOf(walked.from - walked.to) }];
  });
}

/** Toe pressures, which tell of a limb whose ankle cannot be compressed. */
function toes(pair: Pair): Change[] {
  return SIDES.flatMap((side): Change[] => {
    const measured = both(pair, (one) => {
      const value = trendValue(one, 'toe-pressure', side);
      return typeof value === 'number' ? value : undefined;
    });
    if (!measured) return [];
    const weight: ChangeWeight = isScatter('toe-pressure', measured.from, measured.to) ? 'chance' : 'matters';
    return [{ code: 'toe-pressure', side, ...measured, weight, way: wayOf(measured.from - measured.to) }];
  });
}

const isDecided = (verdict: Verdict | undefined): verdict is Verdict =>
  verdict !== undefined && verdict !== 'not-done' && verdict !== 'incomplete';

function tests(pair: Pair): Change[] {
  return BEDSIDE_TEST_IDS.flatMap((test) =>
    SIDES.flatMap((side): Change[] => {
      const verdict = both(pair, (one) => {
        const read = readBedside(test, side, one.bedside)?.verdict;
        return isDecided(read) ? read : undefined;
      });
      if (!verdict) return [];
      const by = VERDICTS.indexOf(verdict.to) - VERDICTS.indexOf(verdict.from);
      return [{ code: 'bedside', test, side, ...verdict, weight: 'minor', way: wayOf(by) }];
    }),
  );
}

type Stages = { readonly [S in keyof StageValues]?: StageValues[S] | undefined };

function stagesOf(one: Examination, { kind, side }: StagedLimb): Stages {
  if (kind === 'arm') return { acute: finalStage(stageArm(one, side)) };
  const { fontaine, rutherford, wifi, acute } = stageLeg(one, side);
  return {
    fontaine: finalStage(fontaine),
    rutherford: finalStage(rutherford),
    wifi: finalStage(wifi.stage),
    acute: finalStage(acute),
  };
}

/** The stages of each scheme, mildest first. */
const STAGES: { readonly [S in ComparedScheme]: readonly StageValues[S][] } = {
  acute: ACUTE_CLASSES,
  fontaine: FONTAINE_STAGES,
  rutherford: RUTHERFORD_CATEGORIES,
  wifi: WIFI_STAGES,
};
const SCHEMES = Object.keys(STAGES) as ComparedScheme[];

function stages(pair: Pair): Change[] {
  const limbs = (['leg', 'arm'] as const).flatMap((kind) => SIDES.map((side) => ({ kind, side })));
  return limbs.flatMap((limb): Change[] => {
    const [before, now] = pair.map((one) => stagesOf(one, limb));
    return SCHEMES.flatMap((scheme): Change[] => {
      const [from, to] = [before![scheme], now![scheme]];
      if (from === undefined || to === undefined || from === to) return [];
      const order: readonly unknown[] = STAGES[scheme];
      const way = wayOf(order.indexOf(to) - order.indexOf(from));
      return [{ code: 'stage', scheme, limb, from, to, weight: 'matters', way } as Change];
    });
  });
}

/**
 * Flags of both visits. One that is not raised any more only says that today's findings do not raise it, since what was not examined
 * today raises none.
 */
function flags(pair: Pair): Change[] {
  const [before, now] = pair.map((one) => new Map(redFlags(one).map((flag) => [flagKey(flag), flag])));
  const told = (key: string, flag: RedFlag): Change[] => {
    const from = before!.get(key)?.urgency ?? 'none';
    const to = now!.get(key)?.urgency ?? 'none';
    if (from === to) return [];
    const worse = urgencyRank(to) > urgencyRank(from);
    const weight: ChangeWeight = !worse ? 'minor' : to === 'soon' ? 'matters' : 'urgent';
    return [{ code: 'flag', flag, from, to, weight, way: worse ? 'worse' : 'other' }];
  };
  const gone = [...before!].filter(([key]) => !now!.has(key));
  return [...now!, ...gone].flatMap(([key, flag]) => told(key, flag));
}

/** What was felt and what was heard at a place, as far as this version can read it. */
const foundAt = (one: Examination, place: Place): readonly (Grade | Bruit | undefined)[] => [
  isPulseSite(place.site) ? pulseOf(one, place as Place<PulseSiteId>)?.grade : undefined,
  isListeningSite(place.site) ? bruitOf(one, place as Place<ListeningSiteId>) : undefined,
];
const isKnown = (found: unknown): boolean => found !== undefined;

/**
 * What is otherwise than at an earlier visit. Only what was known both times is compared: what was not examined at one of them is named
 * apart, and no change is claimed of it. Pressures are read by the choices of the later record.
 */
export function compareExaminations(earlier: Examination, later: Examination): Comparison {
  const pair: Pair = [earlier, later];
  const changes = [
    ...flags(pair),
    ...pulseChanges(...pair),
    ...bruitChanges(...pair),
    ...grafts(pair),
    ...indices(pair),
    ...toes(pair),
    ...distances(pair),
    ...tests(pair),
    ...stages(pair),
  ];
  const changed = new Set(changes.flatMap((one) => ('place' in one ? [one.place] : [])));
  const places = PLACES.map((place) => {
    const before = foundAt(earlier, place);
    const now = foundAt(later, place);
    return {
      place,
      before: before.some(isKnown),
      now: now.some(isKnown),
      // A pulse of one visit and a bruit of the other cannot be held against each other.
      compared: before.some((found, i) => isKnown(found) && isKnown(now[i])),
    };
  });
  const placesWhere = (holds: (one: (typeof places)[number]) => boolean): Place[] =>
    places.filter(holds).map(({ place }) => place);
  return {
    changes: changes.sort((a, b) => CHANGE_WEIGHTS.indexOf(a.weight) - CHANGE_WEIGHTS.indexOf(b.weight)),
    notExaminedNow: placesWhere(({ before, now }) => before && !now),
    notExaminedBefore: placesWhere(({ before, now }) => now && !before),
    same: placesWhere(({ compared }) => compared).filter((place) => !changed.has(place)).length,
  };
}
