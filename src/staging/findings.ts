import {
  type LimbKind,
  placeKey,
  PULSE_PLACES,
  type Side,
  siteDefinition,
  type Place,
  type PulseSiteId,
} from '../anatomy/index.js';
import {
  type Examination,
  type LimbHistory,
  type LimbInspection,
  type Movement,
  pulseAt,
  type Sensation,
  type Symptom,
  type VenousSignal,
} from '../examination/index.js';
import { given, ground, type Ground } from './derived.js';
import { STAGING_SOURCES } from './sources.js';

export type StagedKind = Exclude<LimbKind, 'head'>;
export interface StagedLimb {
  readonly kind: StagedKind;
  readonly side: Side;
}

/** Shorter than this the trouble is acute, in hours (two weeks). */
export const ACUTE_HOURS = { value: 14 * 24, source: STAGING_SOURCES.rcem } as const;

/** What the record says of one limb, gathered from its parts. A field left out was not stated. */
export interface LimbFindings extends StagedLimb {
  readonly history: LimbHistory;
  readonly inspection: Partial<LimbInspection>;
  readonly symptom?: Symptom;
  readonly acute: 'yes' | 'no' | 'unknown';
  readonly sensation?: Sensation;
  readonly movement?: Movement;
  /** Signal or pulse of the two arteries at the limb's end. */
  readonly arterial?: 'audible' | 'inaudible';
  readonly venous?: VenousSignal;
  readonly tissueLoss: boolean;
  /** Places of the limb, from the trunk outward, felt for and not there. */
  readonly absent: readonly Place<PulseSiteId>[];
  /** Signs and symptoms of too little blood, besides those the acute classes go by. */
  readonly signs: readonly Ground[];
  /** Lost above the ankle or wrist, so that the foot or hand cannot be staged. */
  readonly endLost: boolean;
}

const ENDS: Record<StagedKind, readonly PulseSiteId[]> = {
  leg: ['dorsalis-pedis', 'posterior-tibial'],
  arm: ['radial', 'ulnar'],
};

/** Whether blood is heard or felt at the end of a limb; silent only when both arteries are known to be. */
function arterialSignal(
  examination: Examination,
  { kind, side }: StagedLimb,
): 'audible' | 'inaudible' | undefined {
  const ends = ENDS[kind].map((site) => pulseAt(examination, { site, side }));
  const heard = ends.some(
    (end) =>
      (end?.doppler !== undefined && end.doppler !== 'absent') ||
      (end?.doppler === undefined && end?.grade !== undefined && end.grade !== 'absent'),
  );
  if (heard) return 'audible';
  return ends.every((end) => end?.doppler === 'absent') ? 'inaudible' : undefined;
}

function placesOf({ kind, side }: StagedLimb): readonly Place<PulseSiteId>[] {
  return PULSE_PLACES.filter((place) => place.side === side && siteDefinition(place.site).region === kind);
}

const SICK_COLOURS = ['pale', 'blue', 'mottled', 'fixed-mottled'];
const LOST_LEGS = ['below-knee', 'through-knee', 'above-knee', 'hip'];
const LOST_ARMS = ['hand', 'below-elbow', 'above-elbow', 'shoulder'];

/** Gathers what the record says of one limb. */
export function limbFindings(examination: Examination, limb: StagedLimb): LimbFindings {
  const { kind, side } = limb;
  const history: LimbHistory = examination.history?.[kind]?.[side] ?? {};
  const inspection: Partial<LimbInspection> = examination.inspection?.[kind]?.[side] ?? {};
  const { symptom, hours } = history;
  const { sensation, movement } = inspection;
  const places = placesOf(limb).map((place) => ({ place, grade: pulseAt(examination, place)?.grade }));
  const arterial = arterialSignal(examination, limb);
  const ulcer = inspection.ulcer !== undefined && inspection.ulcer !== 'none';
  const gangrene = inspection.gangrene !== undefined && inspection.gangrene !== 'none';
  const tissueLoss = ulcer || gangrene || symptom === 'tissue-loss';
  const signs: Ground[] = [
    ...given(symptom === 'claudication' || symptom === 'rest-pain', ground('symptom', { value: symptom })),
    ...given(SICK_COLOURS.includes(inspection.colour ?? ''), ground('colour', { value: inspection.colour })),
    ...given(inspection.temperature === 'cold', ground('temperature', { value: inspection.temperature })),
    ...places.filter(({ grade }) => grade === 'absent').map(({ place }) => groundAt('pulse-absent', place)),
  ];
  const affected =
    signs.length > 0 ||
    arterial === 'inaudible' ||
    (sensation !== undefined && sensation !== 'normal') ||
    (movement !== undefined && movement !== 'normal');
  const lost =
    kind === 'leg'
      ? LOST_LEGS.includes(examination.context?.legAmputation?.[side] ?? '')
      : LOST_ARMS.includes(examination.context?.armAmputation?.[side] ?? '');
  return {
    ...limb,
    history,
    inspection,
    ...(symptom && { symptom }),
    acute: acuteness(examination, history, hours, affected),
    signs,
    ...(sensation && { sensation }),
    ...(movement && { movement }),
    ...(arterial && { arterial }),
    ...(inspection.venousDoppler && { venous: inspection.venousDoppler }),
    tissueLoss,
    absent: places.filter(({ grade }) => grade === 'absent').map(({ place }) => place),
    endLost: lost,
  };
}

/** The limb's own history decides, then the onset given for the whole examination, for limbs with something wrong. */
function acuteness(
  examination: Examination,
  history: LimbHistory,
  hours: number | undefined,
  affected: boolean,
): LimbFindings['acute'] {
  const suffers = history.symptom !== undefined && history.symptom !== 'none';
  if (!affected && !suffers) return 'no';
  if (hours !== undefined && hours >= ACUTE_HOURS.value) return 'no';
  if (history.onset === 'gradual') return 'no';
  if (history.onset === 'sudden' || hours !== undefined) return 'yes';
  // An onset given for the whole examination is not about a limb whose only trouble is an old wound.
  if (!affected) return 'no';
  if (examination.onset === 'acute') return 'yes';
  return examination.onset === 'chronic' ? 'no' : 'unknown';
}

/** The wounds a stage rests on. */
export function woundGrounds({ inspection, symptom }: LimbFindings): Ground[] {
  const { ulcer, ulcerPlace, gangrene, gangreneExtent } = inspection;
  return [
    ...given(symptom === 'tissue-loss', ground('symptom', { value: symptom })),
    ...given(ulcer && ulcer !== 'none', ground('ulcer', { value: ulcer, place: ulcerPlace })),
    ...given(
      gangrene && gangrene !== 'none',
      ground('gangrene', { value: gangrene, extent: gangreneExtent }),
    ),
  ];
}

/** A finding at a place of the map. */
export function groundAt(code: 'pulse-absent' | 'expansile', place: Place): Ground {
  return ground(code, { place: placeKey(place) });
}
