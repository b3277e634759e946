import { placeKey, type PlaceKey, SIDES } from '../anatomy/index.js';
import { pulseAt } from '../examination/index.js';
import { armDifference } from '../pressures/index.js';
import { placesWith } from './facts.js';
import type { Case, Raised } from './flag.js';
import { given, type Ground } from './ground.js';
import { hasDeficit, type LimbState } from './limb.js';
import { elsewhereOf, inShock } from './record.js';

/** Places whose pulse is absent, and those whose pulse is weak: each is told as what it is. */
interface Lost {
  readonly absent: readonly PlaceKey[];
  readonly weak: readonly PlaceKey[];
}

const lostOf = (states: readonly LimbState[]): Lost => ({
  absent: placesOf(states),
  weak: states.flatMap(({ facts }) =>
    placesWith(facts, ({ state, grade }) => state !== 'absent' && grade === 'reduced'),
  ),
});

function carotids({ examination }: Case): Lost {
  const found = SIDES.map((side) => {
    const place = { site: 'carotid', side } as const;
    const { grade, doppler } = pulseAt(examination, place) ?? {};
    return { key: placeKey(place), absent: (grade ?? doppler) === 'absent', weak: grade === 'reduced' };
  });
  return {
    absent: found.filter(({ absent }) => absent).map(({ key }) => key),
    weak: found.filter(({ weak }) => weak).map(({ key }) => key),
  };
}

const pulseGrounds = (...all: readonly Lost[]): Ground[] => {
  const absent = all.flatMap((one) => one.absent);
  const weak = all.flatMap((one) => one.weak);
  return [
    ...given(absent.length, { code: 'pulses-absent', places: absent } as const),
    ...given(weak.length, { code: 'pulses-reduced', places: weak } as const),
  ];
};

function delays({ examination: { delays: found } }: Case): Ground[] {
  const arms = found?.radioRadial !== undefined && found.radioRadial !== 'none';
  const legs = SIDES.some((side) => found?.radioFemoral?.[side] === 'delayed');
  return [
    ...given(arms, { code: 'delay', between: 'radio-radial' } as const),
    ...given(legs, { code: 'delay', between: 'radio-femoral' } as const),
  ];
}

/** Findings that go with a dissection, each at its place. */
function signs(known: Case) {
  const { limbs, examination, settings } = known;
  const of = (kind: 'leg' | 'arm') => limbs.filter(({ limb }) => limb.kind === kind);
  const difference = armDifference(examination.pressures ?? {});
  const apart = difference?.lower !== undefined && difference.mmHg > settings.armDifferenceOver;
  const arms: Ground[] =
    apart && difference.lower
      ? [{ code: 'arm-difference', mmHg: difference.mmHg, lower: difference.lower }]
      : [];
  const poor = (state: LimbState) => state.points.flow >= settings.poorFrom.dissection;
  const carotid = carotids(known);
  return {
    arms,
    lost: pulseGrounds(lostOf(limbs), carotid),
    armLost: pulseGrounds(lostOf(of('arm')), carotid),
    absentFemoral: of('leg').flatMap(({ facts }) =>
      placesWith(facts, ({ site, state }) => site === 'femoral' && state === 'absent'),
    ),
    legs: of('leg').filter(poor),
    armsPoor: of('arm').filter(poor),
    carotid: carotid.absent,
  };
}

const placesOf = (states: readonly LimbState[]): PlaceKey[] =>
  states.flatMap(({ facts }) => placesWith(facts, ({ state }) => state === 'absent'));

/** What speaks against the flow of some limbs: pulses that are absent, and limbs without one, whose pressures or signals are poor. */
const flowGrounds = (states: readonly LimbState[], more: readonly PlaceKey[] = []): Ground[] => {
  const places = [...placesOf(states), ...more];
  const others = states.filter((state) => placesOf([state]).length === 0);
  return [
    ...given(places.length, { code: 'pulses-absent', places } as const),
    ...given(others.length, { code: 'limbs', limbs: others.map(({ limb }) => limb) } as const),
  ];
};

/** Pain with one more sign. Source: ADD risk score; pain alone: same day. */
function withPain(known: Case): Raised[] {
  if (!elsewhereOf(known.examination)?.includes('sudden-chest-or-back-pain')) return [];
  const { arms, lost } = signs(known);
  const shock = inShock(known.examination);
  const deficit = known.limbs.filter(hasDeficit);
  const more: Ground[] = [
    ...arms,
    ...lost,
    ...delays(known),
    ...given(deficit.length, { code: 'limbs', limbs: deficit.map(({ limb }) => limb) } as const),
    ...given(shock, { code: 'shock' } as const),
  ];
  return [
    {
      code: 'dissection',
      urgency: more.length ? 'now' : 'today',
      because: [{ code: 'elsewhere', symptoms: ['sudden-chest-or-back-pain'] }, ...more],
    },
  ];
}

/** Arms that differ, a leg and an arm or carotid pulse lost: the pattern fits, whatever was told. */
function pattern(known: Case): Raised[] {
  const { arms, absentFemoral, armLost, legs } = signs(known);
  if (known.examination.onset === 'chronic' || !arms.length || !armLost.length) return [];
  if (!absentFemoral.length && !legs.length) return [];
  const ofLegs: Ground[] = absentFemoral.length
    ? [{ code: 'pulses-absent', places: absentFemoral }]
    : flowGrounds(legs);
  return [
    {
      code: 'dissection',
      urgency: 'now',
      because: [...arms, ...armLost, ...ofLegs],
      ask: given(!elsewhereOf(known.examination), 'chest-or-back-pain' as const),
    },
  ];
}

/** An arm or a carotid and a leg lost together: dissection, or emboli. Common practice, no source. */
function together(known: Case): Raised[] {
  const { legs, armsPoor, carotid } = signs(known);
  const fresh = (states: readonly LimbState[]) => states.filter(({ onset }) => onset !== 'chronic');
  const [leg, arm] = [fresh(legs), fresh(armsPoor)];
  if (!leg.length || (!arm.length && !carotid.length)) return [];
  const told = [...leg, ...arm].some(({ onset, points }) => onset === 'acute' || points.complaint > 0);
  return [
    {
      code: 'dissection',
      urgency: told ? 'now' : 'today',
      because: flowGrounds([...arm, ...leg], carotid),
      ask: given(!elsewhereOf(known.examination), 'chest-or-back-pain' as const),
    },
  ];
}

function named({ examination }: Case, flagged: boolean): Raised[] {
  if (examination.context?.mechanism !== 'dissection') return [];
  const old = examination.onset === 'chronic';
  return [
    {
      code: 'dissection',
      urgency: !old ? 'now' : flagged ? 'today' : 'soon',
      because: [{ code: 'mechanism', value: 'dissection' }],
    },
  ];
}

/**
 * Flags of a dissection of the aorta: named, with pain, by its pattern, or by an arm and a leg lost together.
 * @param flagged whether a limb is flagged by itself
 */
export function dissectionFlags(known: Case, flagged: boolean): Raised[] {
  return [...named(known, flagged), ...withPain(known), ...pattern(known), ...together(known)];
}
