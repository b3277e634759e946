import type { PressureSite } from '../examination/index.js';
import { isFlatThreat, limbThreats, mmHgAt } from '../pressures/index.js';
import { ankleOf, type Disease, diseaseOf } from './disease.js';
import type { Case, Raised } from './flag.js';
import { given, type Ground } from './ground.js';
import { infectionReading } from './infection.js';
import type { LimbState } from './limb.js';
import type { QuestionCode } from './questions.js';
import { contextOf, ownStagesOf } from './record.js';
import { type Wounds, woundsOf } from './wounds.js';

/** The pressures of a leg beyond the criterion chosen. */
function threatGrounds({ examination, pressures }: Case, state: LimbState, tissueLoss: boolean): Ground[] {
  const { side } = state.limb;
  const { incompressible } = ankleOf(examination, side, pressures);
  const flat = isFlatThreat(examination.pressures ?? {}, side, pressures);
  const limits = limbThreats(examination.pressures ?? {}, side, tissueLoss, pressures).map(
    ({ measure, value, limit, site }): Ground => ({
      code: 'threat',
      measure,
      value,
      limit,
      ...(incompressible && site && { artery: site as PressureSite }),
    }),
  );
  return [...limits, ...given(flat, { code: 'volume-curve', shape: 'flat' } as const)];
}

interface Leg {
  readonly known: Case;
  readonly state: LimbState;
  readonly wounds: Wounds;
  readonly disease: Disease;
  readonly ask: readonly QuestionCode[];
}

const isDiseased = ({ disease }: Leg): boolean => disease.state === 'proven' || disease.state === 'probable';

/** A wound of a leg without diabetes. Source: Global Vascular Guidelines 2019; wound strategy; NICE CG168. */
function woundFlags({ known, state, wounds, disease, ask }: Leg): Raised[] {
  const { limb, facts } = state;
  const leg = { known, state, wounds, disease, ask };
  const because: Ground[] = [...wounds.because, ...disease.because, ...threatGrounds(known, state, true)];
  if (wounds.gangrene) {
    return disease.state === 'not-shown'
      ? [{ code: 'digital-ischaemia', urgency: 'today', limb, because: wounds.because }]
      : [{ code: 'chronic-limb-threat', urgency: known.settings.dryGangrene, limb, because, ask }];
  }
  if (!wounds.ulcer && !wounds.toldOnly) return [];
  if (wounds.otherCause && disease.state !== 'proven') {
    return given(disease.state === 'probable', {
      code: 'foot-ulcer-unproven',
      urgency: 'soon',
      limb,
      because,
      ask: ['pad-tests', ...ask],
    } as const);
  }
  if (isDiseased(leg)) {
    const infected =
      infectionReading(facts.inspection, known.settings).signs.length >= known.settings.infection.signs;
    return [{ code: 'chronic-limb-threat', urgency: infected ? 'today' : 'soon', limb, because, ask }];
  }
  return given(disease.state === 'untested' && wounds.onFoot, {
    code: 'foot-ulcer-unproven',
    urgency: 'soon',
    limb,
    because,
    ask: ['pad-tests', ...ask],
  } as const);
}

/** Source: NICE NG19 1.4; Charcot foot there too. */
function diabeticFoot({ known, state, wounds, disease }: Leg): Raised[] {
  if (contextOf(known.examination).diabetes !== true) return [];
  const { limb, facts, circulation } = state;
  const { inspection } = facts;
  const { deep, signs } = infectionReading(inspection, known.settings);
  const ulcer = wounds.ulcer || wounds.toldOnly;
  const systemic = (inspection.systemic?.length ?? 0) > 0;
  const { severeIndexBelow, severeToeBelow } = known.settings.disease;
  const toe = mmHgAt(known.examination.pressures?.toe, limb.side);
  const severe =
    (toe !== undefined && toe < severeToeBelow) ||
    disease.because.some(
      (ground) =>
        (ground.code === 'ankle-index' && ground.value < severeIndexBelow) ||
        ground.code === 'ankle-pressure',
    );
  const diseased =
    known.settings.diabeticUlcer === 'any-disease'
      ? disease.state === 'proven' || disease.state === 'probable'
      : severe;
  const because: Ground[] = [
    { code: 'diabetes' },
    ...wounds.because,
    ...disease.because,
    ...given(deep, { code: 'deep-infection' } as const),
    ...given(signs.length, { code: 'infection-signs', signs } as const),
    ...given(systemic, { code: 'systemic', signs: inspection.systemic ?? [] } as const),
    ...given(inspection.charcotSuspected, { code: 'charcot' } as const),
  ];
  const emergency =
    wounds.gangrene ||
    deep ||
    (ulcer && (systemic || diseased || circulation >= known.settings.poorFrom.diabeticUlcer));
  if (emergency) return [{ code: 'diabetic-foot-emergency', urgency: 'now', limb, because }];
  const active =
    (ulcer && wounds.onFoot) || signs.length >= known.settings.infection.signs || inspection.charcotSuspected;
  return active ? [{ code: 'diabetic-foot-active', urgency: 'today', limb, because }] : [];
}

/** What asks for a measure: an artery that cannot be compressed, or nothing measured at all. */
function asks({ examination, pressures }: Case, state: LimbState, disease: Disease): QuestionCode[] {
  const { side } = state.limb;
  const noToe = examination.pressures?.toe?.[side] === undefined;
  const { incompressible } = ankleOf(examination, side, pressures);
  return given(noToe && (incompressible || disease.state === 'untested'), 'toe' as const);
}

/** The clinician's own stage in the range of limb threat. */
function ownStage({ examination }: Case, { limb }: LimbState): Ground[] {
  const { fontaine, rutherford } = ownStagesOf(examination, limb);
  return [
    ...(fontaine === 'III' || fontaine === 'IV' ? [{ code: 'own-fontaine', stage: fontaine } as const] : []),
    ...(rutherford !== undefined && rutherford >= 4
      ? [{ code: 'own-rutherford', stage: rutherford } as const]
      : []),
  ];
}

/**
 * Whether pain at rest is no sign of limb threat, which asks for disease shown: there is none, or nothing speaks of any in a leg that is
 * warm and pink with both foot pulses full, in a person known not to be diabetic. Source: Global Vascular Guidelines 2019.
 */
const isWell = ({ known: { examination }, state: { shownNormal, bothEndsNormal }, disease }: Leg): boolean =>
  disease.state === 'not-shown' ||
  (disease.state === 'untested' &&
    shownNormal &&
    bothEndsNormal &&
    contextOf(examination).diabetes === false);

function ofLeg(known: Case, state: LimbState): Raised[] {
  const { limb, facts, onset } = state;
  const wounds = woundsOf(facts);
  const disease = diseaseOf(known.examination, facts, known.pressures, known.settings);
  const leg: Leg = { known, state, wounds, disease, ask: asks(known, state, disease) };
  const foot = diabeticFoot(leg);
  // A limb that is seen at once needs no second flag for what threatens it slowly.
  if (state.urgency === 'now') return foot;
  const own = ownStage(known, state);
  const wound = foot.length ? [] : woundFlags(leg);
  const pain = facts.history.symptom === 'rest-pain';
  const wounded = wounds.ulcer || wounds.gangrene || wounds.toldOnly;
  const threats = threatGrounds(known, state, wounded);
  const flags: Raised[] = [...foot, ...wound];
  const hasThreat = wound.some(({ code }) => code === 'chronic-limb-threat');
  if (pain && onset === 'chronic' && !hasThreat && !isWell(leg)) {
    flags.push({
      code: 'chronic-limb-threat',
      urgency: 'soon',
      limb,
      because: [{ code: 'symptom', value: 'rest-pain' }, ...disease.because, ...threats],
      ask: leg.ask,
    });
  } else if (own.length && !hasThreat && !foot.length) {
    flags.push({ code: 'chronic-limb-threat', urgency: 'soon', limb, because: own, ask: leg.ask });
  } else if (threats.length && !wounded && !(pain && state.urgency !== 'none')) {
    // A limb in pain that is flagged by itself needs no second flag.
    flags.push({ code: 'threatening-pressure', urgency: 'soon', limb, because: threats, ask: leg.ask });
  }
  return flags;
}

/** Flags of legs threatened slowly, and of the diabetic foot. */
export function chronicFlags(known: Case): Raised[] {
  return known.limbs.filter(({ limb }) => limb.kind === 'leg').flatMap((state) => ofLeg(known, state));
}

/** Questions that a wound, or pain at rest of years, calls for although nobody need be called yet. */
export function woundQuestions(
  known: Case,
): { readonly code: QuestionCode; readonly limb: LimbState['limb'] }[] {
  return known.limbs
    .filter(({ limb }) => limb.kind === 'leg')
    .flatMap((state) => {
      const wounds = woundsOf(state.facts);
      const pain = state.facts.history.symptom === 'rest-pain' && state.onset === 'chronic';
      const wounded = wounds.ulcer || wounds.gangrene || wounds.toldOnly;
      if (!wounded && !pain) return [];
      const disease = diseaseOf(known.examination, state.facts, known.pressures, known.settings);
      const { diabetes } = contextOf(known.examination);
      return [
        ...given(disease.state === 'untested', { code: 'pad-tests', limb: state.limb } as const),
        ...given((pain || wounds.onFoot) && diabetes === undefined, {
          code: 'diabetes',
          limb: state.limb,
        } as const),
      ];
    });
}
