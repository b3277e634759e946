import type { AcuteClass } from '../examination/index.js';
import { classFindings, classInterval, flowHours } from './acute-class.js';
import type { Case, Raised } from './flag.js';
import { placesWith } from './facts.js';
import { given, type Ground } from './ground.js';
import { hasDeficit, isAcutelyIschaemic, type LimbState } from './limb.js';
import { limbQuestions, type QuestionCode } from './questions.js';
import { limbGrounds } from './limb-grounds.js';
import { ownStagesOf } from './record.js';
import { popliteals } from './aneurysms.js';
import type { TriageSettings } from './settings.js';

function withClass(
  code: Raised['code'],
  state: LimbState,
  ask: readonly QuestionCode[],
  { settings }: Case,
): Raised {
  const { atLeast, atMost } = classInterval(classFindings(state), settings);
  return acute(code, state, settings, ask, limbGrounds(state), atLeast, atMost);
}

function acute(
  code: Raised['code'],
  { limb, began }: LimbState,
  settings: TriageSettings,
  ask: readonly QuestionCode[],
  because: readonly Ground[],
  atLeast: AcuteClass,
  atMost: AcuteClass,
): Raised {
  const hours = flowHours(atLeast, settings);
  return {
    code,
    urgency: 'now',
    limb,
    because,
    ask,
    class: { atLeast, atMost },
    ...(hours && { flowWithin: hours }),
    ...(began.hours !== undefined && began.state === 'acute' && { sinceOnset: began.hours }),
  };
}

const codeOfClass = (atLeast: AcuteClass): Raised['code'] =>
  atLeast === 'III' ? 'acute-limb-irreversible' : atLeast === 'I' ? 'acute-limb' : 'acute-limb-threatened';

function now(state: LimbState, ask: readonly QuestionCode[], known: Case): Raised {
  const { limb, points, circulation, onset } = state;
  const because = limbGrounds(state);
  if (circulation === 0 && points.complaint === 0) {
    // Nothing of the circulation is against the limb: nerve, cord or muscle, or the pulses were not felt yet.
    const ofMuscle = points.muscle > 0 && points.power === 0;
    return { code: ofMuscle ? 'compartment-syndrome' : 'neuro-deficit', urgency: 'now', limb, because, ask };
  }
  if (onset === 'chronic' && !hasDeficit(state))
    return { code: 'fixed-mottling', urgency: 'now', limb, because, ask };
  const { atLeast } = classInterval(classFindings(state), known.settings);
  return withClass(codeOfClass(atLeast), state, ask, known);
}

function later(state: LimbState, ask: readonly QuestionCode[]): Raised[] {
  const { limb, urgency, onset, silent } = state;
  if (urgency === 'none' || urgency === 'now') return [];
  const code = hasDeficit(state)
    ? 'neuro-deficit'
    : onset !== 'chronic'
      ? 'acute-limb-possible'
      : silent && urgency === 'today'
        ? 'no-doppler'
        : 'perfusion-poor';
  return [{ code, urgency, limb, because: limbGrounds(state), ask }];
}

/** The flag of one limb by its points, and those that a class set by the clinician raises. */
function limbFlags(state: LimbState, known: Case): Raised[] {
  const ask = limbQuestions(state, known.limbs, known.examination, known.settings);
  const { acute: own } = ownStagesOf(known.examination, state.limb);
  if (own) {
    const because: Ground[] = [{ code: 'own-class', stage: own }, ...limbGrounds(state)];
    return [acute(codeOfClass(own), state, known.settings, ask, because, own, own)];
  }
  const { colour } = state.facts.inspection;
  const flags = state.urgency === 'now' ? [now(state, ask, known)] : later(state, ask);
  const fixed = colour === 'fixed-mottled' && !flags.some(({ code }) => code === 'fixed-mottling');
  return [
    ...flags,
    ...given(fixed, {
      code: 'fixed-mottling',
      urgency: 'now',
      limb: state.limb,
      because: [{ code: 'colour', value: 'fixed-mottled' }],
    } as const),
  ];
}

const ACUTE_CODES: readonly string[] = ['acute-limb', 'acute-limb-threatened', 'acute-limb-irreversible'];

/** A flag of an acutely ischaemic leg behind which a popliteal aneurysm may stand. */
function joinPopliteal(flag: Raised, known: Case): Raised {
  const state = known.limbs.find(({ limb }) => limb.kind === flag.limb?.kind && limb.side === flag.limb.side);
  if (!state || !ACUTE_CODES.includes(flag.code) || state.limb.kind !== 'leg' || state.onset === 'chronic')
    return flag;
  const behind = popliteals(known);
  return behind.length
    ? { ...flag, code: 'popliteal-aneurysm-acute', because: [...behind, ...flag.because] }
    : flag;
}

/** Both legs lost at the groin: the aorta; three or four limbs lost: the circulation. */
function joined({ limbs, settings: { poorFrom } }: Case): Raised[] {
  const legs = limbs.filter(({ limb }) => limb.kind === 'leg');
  const noFemoral = ({ facts }: LimbState) =>
    placesWith(facts, ({ site, state }) => site === 'femoral' && state === 'absent');
  const poor = limbs.filter(
    ({ circulation, onset }) => circulation >= poorFrom.oneOfSeveral && onset !== 'chronic',
  );
  const aorta = legs.every((leg) => isAcutelyIschaemic(leg) && noFemoral(leg).length > 0);
  return [
    ...given(aorta, {
      code: 'aortic-occlusion',
      urgency: 'now',
      because: [{ code: 'pulses-absent', places: legs.flatMap(noFemoral) }],
    } as const),
    ...given(poor.length >= poorFrom.limbs, {
      code: 'circulation',
      urgency: 'now',
      because: [{ code: 'limbs', limbs: poor.map(({ limb }) => limb) }],
    } as const),
  ];
}

/** Flags of the limbs by their points, single and joined. Sources: RCEM, ESVS 2020, Rutherford 1997; joining: common practice. */
export function acuteFlags(known: Case): Raised[] {
  const flags = known.limbs.flatMap((state) => limbFlags(state, known));
  return [...flags.map((flag) => joinPopliteal(flag, known)), ...joined(known)];
}
