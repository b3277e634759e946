import { type Side, SIDES } from '../anatomy/index.js';
import type { Examination } from '../examination/index.js';
import { type PressureSettings, methodOf } from '../pressures/index.js';
import {
  countsAsTissueLoss,
  type Disease,
  diseaseOf,
  type LimbFacts,
  type LimbState,
  limbStates,
  type StagedLimb,
  type TriageChoices,
  type TriageSettings,
  triageSettings,
  type Wounds,
  woundsOf,
} from '../triage/index.js';

/** What the stages of a leg rest on. */
export interface LegFindings {
  readonly side: Side;
  readonly examination: Examination;
  readonly state: LimbState;
  readonly facts: LimbFacts;
  readonly wounds: Wounds;
  readonly disease: Disease;
  /** Whether its wounds are ones of the arteries. */
  readonly tissueLoss: 'yes' | 'open' | 'no';
  readonly pressures: PressureSettings;
  readonly triage: TriageSettings;
}

/** One limb of a record, weighed. */
export function limbState(examination: Examination, limb: StagedLimb, settings: TriageSettings): LimbState {
  const states = limbStates(examination, settings);
  return states.find(({ limb: { kind, side } }) => kind === limb.kind && side === limb.side) as LimbState;
}

export function legFindings(
  examination: Examination,
  side: Side,
  choices: {
    readonly triage?: TriageChoices | undefined;
    readonly pressures?: Partial<PressureSettings> | undefined;
  } = {},
): LegFindings {
  const settings = triageSettings(choices.triage);
  const pressures = methodOf(examination, choices.pressures);
  const state = limbState(examination, { kind: 'leg', side }, settings);
  const { facts } = state;
  const wounds = woundsOf(facts);
  const disease = diseaseOf(examination, facts, pressures, settings);
  return {
    side,
    examination,
    state,
    facts,
    wounds,
    disease,
    tissueLoss: countsAsTissueLoss(wounds, disease),
    pressures,
    triage: settings,
  };
}

/** Whether wounds were not looked at, or one of unknown cause is open: then tissue loss cannot be excluded. */
export function leavesWoundsOpen({ wounds, tissueLoss }: LegFindings): boolean {
  return tissueLoss === 'open' || (!wounds.looked && tissueLoss !== 'yes');
}

/** Sides whose leg has a wound that counts as one of the arteries, for the limits of limb threat. */
export function sidesWithTissueLoss(
  examination: Examination,
  choices: Parameters<typeof legFindings>[2] = {},
): Side[] {
  return SIDES.filter((side) => legFindings(examination, side, choices).tissueLoss === 'yes');
}
