import {
  placeKey,
  type PlaceKey,
  PULSE_PLACES,
  type PulseSiteId,
  type Side,
  siteDefinition,
} from '../anatomy/index.js';
import { type Context, type Examination, type Grade, pulseAt } from '../examination/index.js';
import { mmHgAt } from '../pressures/index.js';
import {
  contextOf,
  type HistoryFacts,
  historyOf,
  type InspectionFacts,
  inspectionOf,
  type StagedKind,
  type StagedLimb,
} from './record.js';
import type { TriageSettings } from './settings.js';

/** What one pulse site of a limb says. */
export interface PulseFacts {
  readonly site: PulseSiteId;
  readonly key: PlaceKey;
  /** Absent by the finger, else by the Doppler; a multiphasic signal makes it present. */
  readonly state: 'absent' | 'present' | 'unknown';
  /** Normal or bounding without a poor signal, or multiphasic. */
  readonly normal: boolean;
  /** Heard or felt. */
  readonly audible: boolean;
  readonly silent: boolean;
  readonly grade?: Grade;
  readonly expansile: boolean;
  readonly thrill: boolean;
}

/** The arteries at the end of a limb, the one whose loss is commonest in health first. */
export const END_SITES = {
  leg: ['dorsalis-pedis', 'posterior-tibial'],
  arm: ['radial', 'ulnar'],
} as const satisfies Record<StagedKind, readonly PulseSiteId[]>;

/** Sites above the ends whose loss counts; a subclavian pulse is often not felt in health. */
const PROXIMAL_SITES = {
  leg: ['femoral'],
  arm: ['axillary', 'brachial'],
} as const satisfies Record<StagedKind, readonly PulseSiteId[]>;

/** Sites that go with each amputation. */
const LOST_SITES: Readonly<Record<string, readonly PulseSiteId[]>> = {
  'below-knee': ['posterior-tibial', 'dorsalis-pedis'],
  'through-knee': ['posterior-tibial', 'dorsalis-pedis', 'popliteal'],
  'above-knee': ['posterior-tibial', 'dorsalis-pedis', 'popliteal'],
  hip: ['posterior-tibial', 'dorsalis-pedis', 'popliteal', 'femoral'],
  hand: ['radial', 'ulnar'],
  'below-elbow': ['radial', 'ulnar'],
  'above-elbow': ['radial', 'ulnar', 'brachial'],
  shoulder: ['radial', 'ulnar', 'brachial', 'axillary'],
};

/** What the pulses, signals and pressures of a limb say of its flow. */
export interface FlowFacts {
  /** Points of the flow group. */
  readonly points: number;
  readonly bothEndsNormal: boolean;
  readonly oneEndNormal: boolean;
  /** No signal at either end, by Doppler or by pressures of 0. */
  readonly silent: boolean;
  /** Blood heard or felt at an end; `inaudible` only when both ends were found silent. */
  readonly arterial?: 'audible' | 'inaudible';
}

/** What the record says of one limb. */
export interface LimbFacts extends StagedLimb {
  readonly history: HistoryFacts;
  readonly inspection: InspectionFacts;
  /** Pulses from the trunk outward, but for those that tell nothing. */
  readonly pulses: readonly PulseFacts[];
  readonly ends: readonly PulseFacts[];
  readonly flow: FlowFacts;
  /** Lost above the ankle or wrist, so that foot or hand cannot be staged. */
  readonly endLost: boolean;
  /** Feeling and power where their loss is not known to be old and of another cause. */
  readonly feeling: 'unknown' | 'normal' | 'digits' | 'beyond-digits' | 'lost';
  readonly power: 'unknown' | 'normal' | 'weak' | 'paralysed';
}

const MULTIPHASIC = ['triphasic', 'biphasic'];

function pulseFacts(examination: Examination, site: PulseSiteId, side: Side, counted: boolean): PulseFacts {
  const found = pulseAt(examination, { site, side });
  const { grade, doppler } = found ?? {};
  const multiphasic = doppler !== undefined && MULTIPHASIC.includes(doppler);
  const poor = doppler === 'monophasic' || doppler === 'absent';
  const absent = !multiphasic && (grade === 'absent' || (grade === undefined && doppler === 'absent'));
  const present = multiphasic || (grade !== undefined && !absent) || doppler === 'monophasic';
  return {
    site,
    key: placeKey({ site, side }),
    state: absent ? (counted ? 'absent' : 'unknown') : present ? 'present' : 'unknown',
    normal: multiphasic || ((grade === 'normal' || grade === 'bounding') && !poor),
    audible: doppler === undefined ? grade !== undefined && grade !== 'absent' : doppler !== 'absent',
    silent: doppler === 'absent',
    ...(grade && { grade }),
    expansile: found?.expansile === true,
    thrill: found?.thrill === true,
  };
}

function isCounted({ absentFromBirth, radialHarvested }: Context, site: PulseSiteId, side: Side): boolean {
  if (site === 'radial') return !radialHarvested?.includes(side);
  return !absentFromBirth?.[side]?.includes(site as 'dorsalis-pedis' | 'posterior-tibial');
}

/** Pressures at the two ends of a limb, in mmHg. */
function endPressures({ pressures }: Examination, { kind, side }: StagedLimb) {
  return END_SITES[kind].map((site) => ({
    value: mmHgAt(pressures?.[site], side),
    incompressible: pressures?.[site]?.[side] === 'incompressible',
  }));
}

/**
 * The points of flow and what else the two ends say. Source of the single lines: RCEM (signs); the points are a safety rule.
 */
export function flowFacts(
  { kind }: { readonly kind: StagedKind },
  pulses: readonly PulseFacts[],
  ends: readonly PulseFacts[],
  pressures: readonly { readonly value?: number | undefined; readonly incompressible: boolean }[],
  { points: { flow: line }, endPressureBelow }: TriageSettings,
): FlowFacts {
  const two = ends.length === 2;
  const absent = ends.filter(({ state }) => state === 'absent').length;
  const present = ends.some(({ state }) => state === 'present');
  const lost = (sites: readonly string[]) =>
    pulses.some(({ site, state }) => sites.includes(site) && state === 'absent');
  const noPressure = two && pressures.every(({ value }) => value === 0);
  const highest = Math.max(-1, ...pressures.map(({ value }) => value ?? -1));
  const low =
    two &&
    highest >= 0 &&
    highest < endPressureBelow &&
    pressures.every(({ incompressible }) => !incompressible);
  const silent = (two && ends.every((end) => end.silent)) || noPressure;
  const audible = ends.some((end) => end.audible);
  const points = Math.max(
    0,
    silent ? line.silent : 0,
    low ? line.endPressureLow : 0,
    absent > 0 ? (present ? line.oneEndAbsent : line.endsAbsent) : 0,
    lost(PROXIMAL_SITES[kind]) ? (present ? line.proximalAbsentEndPresent : line.proximalAbsent) : 0,
    lost(['popliteal']) ? (present ? line.poplitealAbsentEndPresent : line.poplitealAbsent) : 0,
  );
  return {
    points,
    bothEndsNormal: two && ends.every(({ normal }) => normal),
    oneEndNormal: ends.some(({ normal }) => normal),
    silent,
    ...(audible ? { arterial: 'audible' } : silent ? { arterial: 'inaudible' } : {}),
  };
}

/** Gathers what the record says of one limb. */
export function limbFacts(examination: Examination, limb: StagedLimb, settings: TriageSettings): LimbFacts {
  const { kind, side } = limb;
  const context = contextOf(examination);
  const history = historyOf(examination, limb);
  const inspection = inspectionOf(examination, limb);
  const amputation = (kind === 'leg' ? context.legAmputation : context.armAmputation)?.[side];
  const gone = LOST_SITES[amputation ?? ''] ?? [];
  const pulses = PULSE_PLACES.filter(
    ({ site, side: at }) => at === side && siteDefinition(site).region === kind && !gone.includes(site),
  ).map(({ site }) => pulseFacts(examination, site, side, isCounted(context, site, side)));
  const ends = pulses.filter(({ site }) => (END_SITES[kind] as readonly string[]).includes(site));
  const { sensation = 'unknown', movement = 'unknown', deficitKnown } = inspection;
  return {
    ...limb,
    history,
    inspection,
    pulses,
    ends,
    flow: flowFacts(limb, pulses, ends, endPressures(examination, limb), settings),
    endLost: gone.length > 0,
    feeling: deficitKnown ? 'unknown' : sensation,
    power: deficitKnown ? 'unknown' : movement,
  };
}

/** Whether feeling or power is lost, each by how much. */
export const feelsLess = ({ feeling }: LimbFacts): boolean => !['unknown', 'normal'].includes(feeling);
export const isWeak = ({ power }: LimbFacts): boolean => !['unknown', 'normal'].includes(power);

/** Places of a limb whose pulse is absent, or weak. */
export function placesWith(
  { pulses }: { readonly pulses: readonly PulseFacts[] },
  holds: (pulse: PulseFacts) => boolean,
): PlaceKey[] {
  return pulses.filter(holds).map(({ key }) => key);
}
