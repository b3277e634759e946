import type { Examination } from '../examination/index.js';
import { limbFacts } from './facts.js';
import { graftsOf } from './grafts.js';
import { contextOf, inspectionOf, type StagedLimb } from './record.js';
import { type TriageChoices, triageSettings } from './settings.js';
import { TRIAGE_SOURCES } from './sources.js';
import { limbStates } from './limb.js';
import { woundsOf } from './wounds.js';

/** Why a cuff on a limb wants thought before it is put on. Source: teaching and laboratory pages; who may cuff a graft is a local rule. */
export const CUFF_CAUTIONS = [
  'acute',
  'access',
  'lymphoedema',
  'thrombosis',
  'graft',
  'wound',
  'infection',
  'pain',
] as const;
export type CuffCautionCode = (typeof CUFF_CAUTIONS)[number];
/** What the caution comes to: call before measuring, no cuff, the local rule first, or a cuff elsewhere. */
export const CUFF_RULES = ['call-first', 'no-cuff', 'ask-first', 'elsewhere'] as const;
export type CuffRule = (typeof CUFF_RULES)[number];

/** A caution for the cuffs of one limb, from what the record holds. */
export interface CuffCaution {
  readonly limb: StagedLimb;
  readonly code: CuffCautionCode;
  readonly rule: CuffRule;
}
export const CUFF_SOURCE = TRIAGE_SOURCES.cuffs;

const LIMBS: readonly StagedLimb[] = (['arm', 'leg'] as const).flatMap((kind) =>
  (['right', 'left'] as const).map((side): StagedLimb => ({ kind, side })),
);

/**
 * What stands against a cuff on each limb by what is recorded: an acutely ischaemic limb whose call may not wait, dialysis access,
 * lymphoedema or removed nodes, signs of deep vein thrombosis, a graft or stent, a wound, an infection. What is not recorded (a fracture) is
 * no less a reason.
 */
export function cuffCautions(examination: Examination, choices?: TriageChoices): readonly CuffCaution[] {
  const settings = triageSettings(choices);
  const { access = [] } = contextOf(examination);
  const acute = limbStates(examination, settings).filter(
    ({ urgency, onset }) => urgency === 'now' && onset !== 'chronic',
  );
  return LIMBS.flatMap((limb): CuffCaution[] => {
    const { kind, side } = limb;
    const {
      lymphoedema = 'none',
      thrombosisSigns = [],
      infection = [],
      stretchPain,
      painOutOfProportion,
    } = inspectionOf(examination, limb);
    const { ulcer, gangrene } = woundsOf(limbFacts(examination, limb, settings));
    const rules: readonly (readonly [CuffCautionCode, CuffRule, boolean])[] = [
      ['acute', 'call-first', acute.some(({ limb: of }) => of.kind === kind && of.side === side)],
      ['access', 'no-cuff', kind === 'arm' && access.some((one) => one.side === side)],
      ['lymphoedema', 'no-cuff', lymphoedema !== 'none'],
      ['thrombosis', 'no-cuff', thrombosisSigns.length > 0],
      [
        'graft',
        settings.graftCuff === 'no-cuff' ? 'no-cuff' : 'ask-first',
        settings.graftCuff !== 'allowed' && graftsOf(examination, limb).length > 0,
      ],
      ['wound', 'elsewhere', ulcer || gangrene],
      ['infection', 'elsewhere', infection.length >= settings.infection.signs],
      ['pain', 'elsewhere', stretchPain === true || painOutOfProportion === true],
    ];
    return rules.flatMap(([code, rule, holds]) => (holds ? [{ limb, code, rule }] : []));
  });
}
