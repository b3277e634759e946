import { placeKey, SIDES } from '../anatomy/index.js';
import { pulseAt } from '../examination/index.js';
import { armDifference } from '../pressures/index.js';
import { placesWith } from './facts.js';
import type { Case, Raised } from './flag.js';
import { given, type Ground } from './ground.js';
import { hasDeficit, type LimbState } from './limb.js';
import { elsewhereOf, inShock } from './record.js';

const isLost = ({ state, grade }: { state: string; grade?: string }) =>
  state === 'absent' || grade === 'reduced';

/** Carotid pulses that are absent, or absent or weak. */
function carotids({ examination }: Case, orWeak: boolean) {
  return SIDES.filter((side) => {
    const { grade, doppler } = pulseAt(examination, { site: 'carotid', side }) ?? {};
    if (grade === 'absent' || (grade === undefined && doppler === 'absent')) return true;
    return orWeak && grade === 'reduced';
  }).map((side) => placeKey({ site: 'carotid', side }));
}

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
  const lost = limbs.flatMap(({ facts }) => placesWith(facts, isLost));
  const absentFemoral = of('leg').flatMap(({ facts }) =>
    placesWith(facts, ({ site, state }) => site === 'femoral' && state === 'absent'),
  );
  const poor = (state: LimbState) => state.points.flow >= settings.poorFrom.dissection;
  return {
    arms,
    absentFemoral,
    lost: [...lost, ...carotids(known, true)],
    armLost: [...of('arm').flatMap(({ facts }) => placesWith(facts, isLost)), ...carotids(known, true)],
    legs: of('leg').filter(poor),
    armsPoor: of('arm').filter(poor),
    carotid: carotids(known, false),
  };
}

const placesOf = (states: readonly LimbState[]) =>
  states.flatMap(({ facts }) => placesWith(facts, ({ state }) => state === 'absent'));

/** Pain with one more sign. Source: ADD risk score; pain alone: same day. */
function withPain(known: Case): Raised[] {
  if (!elsewhereOf(known.examination)?.includes('sudden-chest-or-back-pain')) return [];
  const { arms, lost } = signs(known);
  const shock = inShock(known.examination);
  const deficit = known.limbs.filter(hasDeficit);
  const more: Ground[] = [
    ...arms,
    ...given(lost.length, { code: 'pulses-absent', places: lost } as const),
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
  const places = [...armLost, ...(absentFemoral.length ? absentFemoral : placesOf(legs))];
  return [
    {
      code: 'dissection',
      urgency: 'now',
      because: [...arms, { code: 'pulses-absent', places }],
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
      because: [{ code: 'pulses-absent', places: [...placesOf([...arm, ...leg]), ...carotid] }],
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
