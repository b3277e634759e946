import { SIDES, type Side } from '../anatomy/index.js';
import { isLocked } from './carried.js';
import { checkedWord, withFields } from './finish.js';
import { patchAt } from './patch.js';
import {
  type ArmInspection,
  type Digit,
  DIGIT_STATES,
  DIGITS,
  type DigitState,
  type Inspection,
  type LegInspection,
} from './types/inspection.js';
import type { Examination } from './types/record.js';

type Found = Partial<
  Omit<LegInspection, 'temperatureLevel'> & Pick<ArmInspection, 'temperatureLevel' | 'vertebralFlow'>
>;

/** Whether an ulcer was found: the worst one, or one of a finger or toe. */
export const foundUlcer = ({ ulcer, digits }: Pick<Found, 'ulcer' | 'digits'>): boolean =>
  (ulcer !== undefined && ulcer !== 'none') || Object.values(digits ?? {}).includes('ulcer');

/** Whether gangrene was found: of the limb, or of one of its fingers or toes. */
export const foundGangrene = ({ gangrene, digits }: Pick<Found, 'gangrene' | 'digits'>): boolean =>
  (gangrene !== undefined && gangrene !== 'none') || Object.values(digits ?? {}).includes('gangrene');

/** Whether signs of infection were found. */
export const foundInfection = ({ infection }: Pick<Found, 'infection'>): boolean =>
  (infection?.length ?? 0) > 0;

/** Whether power or feeling was found to be lost. */
export const foundDeficit = ({ movement, sensation }: Pick<Found, 'movement' | 'sensation'>): boolean =>
  [movement, sensation].some((found) => found !== undefined && found !== 'normal');

/** An inspection without what depends on a finding that is not there, as its rules ask for. */
export function tidyInspection(inspection: Inspection | undefined): Inspection | undefined {
  let tidy = inspection;
  for (const kind of ['leg', 'arm'] as const)
    for (const side of SIDES) {
      const f: Found = (inspection?.[kind]?.[side] ?? {}) as Found;
      const drop = (field: keyof LegInspection | keyof ArmInspection, gone: boolean): void => {
        if (gone) tidy = patchAt(tidy, [kind, side, field], undefined);
      };
      drop('temperatureLevel', !f.temperature || f.temperature === 'warm');
      drop('ulcerPlace', !f.ulcer || f.ulcer === 'none');
      drop('ulcerCause', !foundUlcer(f));
      drop('ulcerSizeMm', !foundUlcer(f));
      drop('gangreneExtent', !f.gangrene || f.gangrene === 'none');
      drop('rednessCm', !f.infection?.includes('redness'));
      drop('deepInfection', !foundInfection(f));
      drop('systemic', !foundInfection(f));
      drop('deficitKnown', !foundDeficit(f));
    }
  return tidy;
}

/** A limb with fingers or toes. */
export interface DigitLimb {
  readonly kind: 'leg' | 'arm';
  readonly side: Side;
}

/** What was seen of the fingers or toes of a limb; one left out was not looked at. */
export function digitsAt(
  { inspection }: Examination,
  { kind, side }: DigitLimb,
): Readonly<Partial<Record<Digit, DigitState>>> {
  return inspection?.[kind]?.[side]?.digits ?? {};
}

/** Whether a finger or toe is recorded in a way this version does not know. */
export function isDigitLocked(examination: Examination, { kind, side }: DigitLimb, digit: Digit): boolean {
  return isLocked(examination, ['inspection', kind, side, 'digits', digit]);
}

/**
 * Sets or, with `undefined`, removes what is seen of a finger or toe. What only goes with an ulcer goes with the last one.
 * @throws EditError for a digit or state that does not exist
 */
export function setDigit(
  examination: Examination,
  limb: DigitLimb,
  digit: Digit,
  state: DigitState | undefined,
): Examination {
  const { kind, side } = limb;
  const at = ['inspection', kind, side, 'digits'];
  checkedWord(digit, DIGITS, at);
  const checked = checkedWord(state, DIGIT_STATES, [...at, digit]);
  if (isDigitLocked(examination, limb, digit) || digitsAt(examination, limb)[digit] === checked)
    return examination;
  const next = patchAt(examination.inspection, [kind, side, 'digits', digit], checked);
  return withFields(examination, { inspection: tidyInspection(next) });
}
