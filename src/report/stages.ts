import { type LimbKey, SIDES } from '../anatomy/index.js';
import type { Examination } from '../examination/index.js';
import {
  type Derived,
  finalStage,
  stageArm,
  stageLeg,
  type StageScheme,
  type StagingSettings,
} from '../staging/index.js';

type Stage = string | number;

/** One scheme of one limb as it finally stands, with what it rests on and what is missing. */
export interface StageReport {
  readonly limb: LimbKey;
  readonly scheme: StageScheme;
  /** The clinician's, else the derived one; missing while several are open. */
  readonly stage?: Stage;
  readonly derived: Derived<Stage>;
}

/** The stages that the record decides or leaves open between a few; schemes of which it says nothing are left out. */
export function stagesOf(examination: Examination, choices: Partial<StagingSettings>): StageReport[] {
  const one = (limb: LimbKey, scheme: StageScheme, derived: Derived<Stage>): StageReport[] => {
    const stage = finalStage(derived);
    if (stage === undefined && !derived.candidates.length) return [];
    return [{ limb, scheme, ...(stage !== undefined && { stage }), derived }];
  };
  const legs = SIDES.flatMap((side) => {
    const limb: LimbKey = `${side} leg`;
    const { acute, fontaine, rutherford, wifi } = stageLeg(examination, side, choices);
    return [
      ...(acute.applies !== 'no' || acute.overrule ? one(limb, 'acute', acute) : []),
      ...one(limb, 'fontaine', fontaine),
      ...one(limb, 'rutherford', rutherford),
      ...(wifi.applies || wifi.stage.overrule ? one(limb, 'wifi', wifi.stage) : []),
    ];
  });
  const arms = SIDES.flatMap((side) => {
    const acute = stageArm(examination, side, choices);
    return acute.applies !== 'no' || acute.overrule ? one(`${side} arm`, 'acute', acute) : [];
  });
  return [...legs, ...arms];
}
