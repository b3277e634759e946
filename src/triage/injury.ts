import { bruitAt, type InjurySign } from '../examination/index.js';
import {
  isListeningSite,
  LISTENING_PLACES,
  placeKey,
  type PlaceKey,
  siteDefinition,
} from '../anatomy/index.js';
import { indexOf, mmHgAt, ratio } from '../pressures/index.js';
import type { Case, Raised } from './flag.js';
import type { PulseFacts } from './facts.js';
import { given, type Ground } from './ground.js';
import { hasDeficit, isAcutelyIschaemic, type LimbState } from './limb.js';
import { limbGrounds } from './limb-grounds.js';
import type { QuestionCode } from './questions.js';
import { contextOf, inShock } from './record.js';
import { type Injury, injuryOf } from './injury-place.js';

const HARD: readonly InjurySign[] = ['pulsatile-bleeding', 'expanding-haematoma'];
const SOFT: readonly InjurySign[] = [
  'bleeding-at-scene',
  'stable-haematoma',
  'near-artery',
  'elbow-dislocation-or-supracondylar',
];

const oppositeOf = { right: 'left', left: 'right' } as const;

/** The index of an injured limb: the ankle's, or that of the forearm over the other arm, which the injury spares. */
function indexAfterInjury(
  { examination: { pressures = {} }, pressures: settings }: Case,
  { limb }: LimbState,
) {
  const { kind, side } = limb;
  if (kind === 'leg') return indexOf('ankle', side, pressures, settings)?.value;
  const wrist = Math.max(-1, mmHgAt(pressures.radial, side) ?? -1, mmHgAt(pressures.ulnar, side) ?? -1);
  const other = mmHgAt(pressures.brachial, oppositeOf[side]);
  return wrist >= 0 && other ? ratio(wrist, other) : undefined;
}

/** Places of a limb with a bruit or thrill that no dialysis access explains. */
function murmurs({ examination }: Case, { limb, facts }: LimbState): Ground[] {
  const { access } = contextOf(examination);
  if (limb.kind === 'arm' && access?.some(({ side }) => side === limb.side)) return [];
  const thrills = facts.pulses.filter(({ thrill }) => thrill).map(({ key }) => key);
  const heard = LISTENING_PLACES.filter((place) => {
    if (place.side !== limb.side || siteDefinition(place.site).region !== limb.kind) return false;
    const { bruit } = bruitAt(examination, place) ?? {};
    return isListeningSite(place.site) && (bruit === 'systolic' || bruit === 'continuous');
  }).map(placeKey);
  return [
    ...given(thrills.length, { code: 'thrill', places: thrills } as const),
    ...given(heard.length, { code: 'bruit', places: heard } as const),
  ];
}

interface Signs {
  readonly hard: readonly Ground[];
  /** Pulses at or beyond the injury that are absent, weak or silent. */
  readonly lost: readonly PulseFacts[];
  readonly murmurs: readonly Ground[];
  readonly index: number | undefined;
  readonly low: boolean;
}

function lostGrounds(lost: readonly PulseFacts[]): Ground[] {
  const [absent, reduced] = [true, false].map((gone) =>
    lost.filter(({ state }) => (state === 'absent') === gone).map(({ key }) => key),
  ) as [PlaceKey[], PlaceKey[]];
  return [
    ...given(absent.length, { code: 'pulses-absent', places: absent } as const),
    ...given(reduced.length, { code: 'pulses-reduced', places: reduced } as const),
  ];
}

function signsOf(known: Case, state: LimbState, injury: Injury): Signs {
  const { circulation, silent } = state;
  const lost = state.facts.pulses.filter(
    ({ site, state: pulse, grade, silent: mute }) =>
      injury.sites.includes(site) && (pulse === 'absent' || grade === 'reduced' || mute),
  );
  const index = indexAfterInjury(known, state);
  const low = index !== undefined && index < known.settings.injury.indexBelow;
  const heard = murmurs(known, state);
  const ofLost = lostGrounds(lost);
  const isAbsent = ofLost.some(({ code }) => code === 'pulses-absent');
  const hardSigns = injury.signs.filter((sign) => HARD.includes(sign));
  const ischaemic = circulation >= known.settings.poorFrom.injury || silent ? limbGrounds(state) : [];
  return {
    lost,
    murmurs: heard,
    index,
    low,
    hard: [
      ...given(hardSigns.length, { code: 'injury-signs', signs: hardSigns } as const),
      ...ofLost,
      ...heard,
      ...ischaemic.filter(({ code }) => code !== 'pulses-absent' || !isAbsent),
    ],
  };
}

/** One end artery lost, its partner normal, and the limb otherwise recorded as well: a soft sign. Source: case series of the forearm. */
function isOneEndOnly(
  { facts, circulation, silent }: LimbState,
  { lost, murmurs: heard }: Signs,
  injury: Injury,
  poorFrom: number,
) {
  const { inspection, ends } = facts;
  const [only, ...more] = lost;
  const partner = ends.find(({ site }) => site !== only?.site);
  return (
    only !== undefined &&
    more.length === 0 &&
    ends.includes(only) &&
    partner?.normal === true &&
    heard.length === 0 &&
    !silent &&
    circulation < poorFrom &&
    !injury.signs.some((sign) => HARD.includes(sign)) &&
    inspection.temperature === 'warm' &&
    inspection.colour === 'normal' &&
    inspection.sensation === 'normal' &&
    inspection.movement === 'normal'
  );
}

/** Urgency of the hard signs: two of them alone may be set lower. */
function hardUrgency({ settings }: Case, { hard, index, low, murmurs: heard }: Signs, injury: Injury) {
  const codes = new Set(hard.map(({ code }) => code));
  const only = (code: Ground['code']) => codes.size === 1 && codes.has(code);
  if (only('pulses-reduced') && index !== undefined && !low) return settings.injury.reducedAlone;
  if (only('bruit') && heard.length === 1 && injury.place === 'groin')
    return settings.injury.bruitOverPuncture;
  return 'now';
}

function ofLimb(known: Case, state: LimbState): Raised[] {
  const injury = injuryOf(known.examination, state.limb);
  if (!injury) return [];
  const { limb, facts, onset } = state;
  const { settings, examination } = known;
  const signs = signsOf(known, state, injury);
  const { index, low, lost } = signs;
  const indexGround: Ground[] =
    index !== undefined && low
      ? [
          {
            code: limb.kind === 'leg' ? 'ankle-index' : 'forearm-index',
            value: index,
            limit: settings.injury.indexBelow,
          },
        ]
      : [];
  const where: Ground[] = injury.place ? [{ code: 'injury', place: injury.place }] : [];
  const askIndex: QuestionCode[] =
    index === undefined ? [limb.kind === 'leg' ? 'ankle-index' : 'forearm-index'] : [];
  const old = onset === 'chronic' && injury.signs.length === 0;
  if (old) {
    return given(signs.hard.length || low, {
      code: 'arterial-injury',
      urgency: 'soon',
      limb,
      because: [...where, ...signs.hard, ...indexGround],
    } as const);
  }
  const elderly = ['60-79', '80-over'].includes(contextOf(examination).ageBand ?? '');
  const ask: QuestionCode[] = [
    ...askIndex,
    ...given(elderly && index !== undefined, 'other-side-index' as const),
  ];
  const oneEnd = isOneEndOnly(state, signs, injury, known.settings.poorFrom.injury);
  const hard = oneEnd ? [] : signs.hard;
  if (hard.length || low) {
    const byHard = hard.length ? hardUrgency(known, signs, injury) : 'today';
    const urgency = byHard === 'now' || (low && settings.injury.index === 'now') ? 'now' : 'today';
    return [{ code: 'arterial-injury', urgency, limb, because: [...where, ...hard, ...indexGround], ask }];
  }
  const dislocated = injury.signs.includes('knee-dislocation');
  const soft = injury.signs.filter((sign) => SOFT.includes(sign));
  const shock = inShock(examination);
  const because: Ground[] = [
    ...where,
    ...given(injury.signs.length, { code: 'injury-signs', signs: injury.signs } as const),
    ...(oneEnd ? lostGrounds(lost) : []),
    ...limbGrounds(state).filter(({ code }) => code === 'sensation' || code === 'movement'),
    ...given(shock, { code: 'shock' } as const),
  ];
  if (dislocated) {
    const shown = facts.flow.bothEndsNormal && index !== undefined;
    return [
      {
        code: 'arterial-injury-possible',
        urgency: shown ? 'today' : 'now',
        limb,
        because,
        ask: [...given(!facts.flow.bothEndsNormal, 'distal-pulses' as const), ...ask],
      },
    ];
  }
  if (soft.length || oneEnd || hasDeficit(state) || shock) {
    return [{ code: 'arterial-injury-possible', urgency: 'today', limb, because, ask }];
  }
  return [];
}

/** A limb in which a compartment may be under pressure: injured, acutely ischaemic, or with flow restored lately. */
function isAtRisk(known: Case, state: LimbState): boolean {
  const injury = injuryOf(known.examination, state.limb);
  const fresh = injury !== undefined && (state.onset !== 'chronic' || injury.signs.length > 0);
  const { devices } = contextOf(known.examination);
  const punctured =
    devices?.some(({ limb, side }) => limb === state.limb.kind && side === state.limb.side) === true;
  return fresh || punctured || isAcutelyIschaemic(state) || state.facts.inspection.reperfused === true;
}

/**
 * Compartment syndrome, by name. Pulses, refill and feeling that are normal never lower it. Source: BOAST 10, 2014.
 */
function compartment(known: Case, state: LimbState): Raised[] {
  const { limb, facts } = state;
  const { stretchPain, painOutOfProportion, muscle, reperfused } = facts.inspection;
  const tense = muscle === 'tense' || muscle === 'rigid';
  const because: Ground[] = [
    ...given(stretchPain, { code: 'stretch-pain' } as const),
    ...given(painOutOfProportion, { code: 'pain-out-of-proportion' } as const),
    ...(muscle && (tense || muscle === 'tender') ? [{ code: 'muscle', value: muscle } as const] : []),
  ];
  const risk: Ground[] = [
    ...(injuryOf(known.examination, limb)?.place
      ? [{ code: 'injury', place: injuryOf(known.examination, limb)?.place } as Ground]
      : []),
    ...given(reperfused, { code: 'reperfused' } as const),
    ...limbGrounds(state).filter(({ code }) => code === 'sensation' || code === 'movement'),
  ];
  const ask: QuestionCode[] = given(stretchPain === undefined, 'passive-stretch' as const);
  if (stretchPain || painOutOfProportion || tense) {
    return [{ code: 'compartment-syndrome', urgency: 'now', limb, because: [...because, ...risk], ask }];
  }
  if (muscle !== 'tender' || !isAtRisk(known, state)) return [];
  const urgent = hasDeficit(state) || isAcutelyIschaemic(state);
  return [
    {
      code: 'compartment-syndrome',
      urgency: urgent ? 'now' : 'today',
      limb,
      because: [...because, ...risk],
      ask,
    },
  ];
}

/** Flags of injured limbs and of muscle under pressure. Sources: hard and soft signs, EAST 2012, WTA, Mills 2004, Boyce 2015, BOAST. */
export function injuryFlags(known: Case): Raised[] {
  return known.limbs.flatMap((state) => [...ofLimb(known, state), ...compartment(known, state)]);
}
