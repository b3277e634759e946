import type {
  AcuteClass,
  FontaineStage,
  Overrule,
  RutherfordCategory,
  Staging,
  WifiGrade,
  WifiStage,
} from '../../examination/index.js';
import { ACUTE_TIMING, type NoteCode, RUTHERFORD_GRADES, type WifiRisk } from '../../staging/index.js';
import { anatomy } from './anatomy.js';
import { list, sentence } from './phrases.js';

const fontaine: Record<FontaineStage, string> = {
  I: 'no symptoms',
  IIa: 'mild claudication',
  IIb: 'moderate to severe claudication',
  III: 'rest pain',
  IV: 'ulcer or gangrene',
};
const rutherford: Record<RutherfordCategory, string> = {
  0: 'no symptoms',
  1: 'mild claudication',
  2: 'moderate claudication',
  3: 'severe claudication',
  4: 'rest pain',
  5: 'minor tissue loss',
  6: 'major tissue loss',
};
const acute: Record<AcuteClass, string> = {
  I: 'viable, not immediately threatened',
  IIa: 'marginally threatened',
  IIb: 'immediately threatened',
  III: 'irreversible',
};
const risks: Record<WifiRisk, string> = {
  'very-low': 'very low',
  low: 'low',
  moderate: 'moderate',
  high: 'high',
};
const wifiStages: Record<WifiStage, string> = {
  1: 'very low risk of amputation',
  2: 'low risk of amputation',
  3: 'moderate risk of amputation',
  4: 'high risk of amputation',
  5: 'foot that cannot be saved',
};
const wound: Record<WifiGrade, string> = {
  0: 'no wound',
  1: 'small or shallow ulcer',
  2: 'deeper ulcer, or gangrene of digits',
  3: 'extensive ulcer or gangrene',
};
const ischaemia: Record<WifiGrade, string> = { 0: 'none', 1: 'mild', 2: 'moderate', 3: 'severe' };
const infection: Record<WifiGrade, string> = { 0: 'none', 1: 'mild', 2: 'moderate', 3: 'severe' };

const notes: Record<NoteCode, string> = {
  'no-single-class': 'These findings together fit no printed class; none is forced.',
  'fixed-mottling': 'Fixed mottling goes with the irreversible class.',
  'described-for-leg':
    'The classes were described for the leg; for the arm they are used by common practice.',
  'pressures-not-met': 'The pressures printed beside this category are not met: check both.',
  'raised-by-pressures': 'Raised by the pressures; the symptoms alone say less. Diabetes can hide pain.',
  'at-200': 'Exactly 200 m is assigned by no source; the choice made here can be changed.',
  'toe-decides': 'Ankle index and toe pressure give different grades; the toe pressure decides.',
  'stiff-arteries': 'The ankle arteries are too stiff to grade by; toe or oxygen pressure is needed.',
  'worse-counts': 'Ankle index and ankle pressure give different grades; the worse counts.',
  'at-70': '70 mmHg is printed in two grades; the choice made here can be changed.',
  'one-sign-only': 'One sign alone does not make an infection by this scheme.',
};

const excluded: Record<string, string> = {
  amputated: 'The foot is lost: the scheme does not apply.',
  acute: 'Not meant for acute ischaemia.',
  vasculitis: 'Not meant for vasculitis.',
  injury: 'Not meant for injury.',
};

const schemes = {
  acute: 'Acute class (Rutherford)',
  fontaine: 'Fontaine stage',
  rutherford: 'Rutherford category',
  wound: 'Wound grade',
  ischaemia: 'Ischaemia grade',
  infection: 'Foot infection grade',
  wifi: 'WIfI stage',
};
export type SchemeId = keyof typeof schemes;

const meanings: Record<SchemeId, Readonly<Record<string | number, string>>> = {
  acute,
  fontaine,
  rutherford,
  wound,
  ischaemia,
  infection,
  wifi: wifiStages,
};

/** A stage as one says it: "IIb, immediately threatened". */
function stage(scheme: SchemeId, value: string | number): string {
  const grade = scheme === 'rutherford' ? ` (grade ${RUTHERFORD_GRADES[value as RutherfordCategory]})` : '';
  return `${value}${grade}, ${meanings[scheme][value]}`;
}

function overrule(scheme: SchemeId, { stage: own, derived, why }: Overrule<string | number>): string {
  const beside = derived === undefined ? 'nothing could be derived' : `derived was ${derived}`;
  return `set by the clinician to ${stage(scheme, own)} (${beside})${why ? `, because ${why}` : ''}`;
}

/** Every stage the clinician set, in phrases. */
function said({ leg, arm }: Staging): string[] {
  return [leg, arm].flatMap((limb, i) =>
    (['right', 'left'] as const).flatMap((side) =>
      Object.entries(limb?.[side] ?? {}).flatMap(([scheme, set]) =>
        set
          ? [
              `${anatomy.limbs[`${side} ${i === 0 ? 'leg' : 'arm'}`]}, ${schemes[scheme as SchemeId]}: ${overrule(scheme as SchemeId, set as Overrule<string | number>)}`,
            ]
          : [],
      ),
    ),
  );
}

export const staging = {
  title: 'Stages',
  schemes,
  eponyms: { acute: 'Rutherford', fontaine: 'Fontaine', rutherford: 'Rutherford', wifi: 'WIfI' },
  chronic: 'Chronic',
  acuteTitle: 'Acute',
  grades: 'Its three grades',
  wifiTitle: 'Wound, ischaemia and foot infection (WIfI)',
  meanings,
  notes,
  excluded,
  risks,
  stage,
  nothing: 'Not enough recorded to tell',
  open: (scheme: SchemeId, candidates: readonly (string | number)[]) =>
    `${list(candidates.map(String), 'or')}${
      candidates.length > 2
        ? ''
        : `: ${list(
            candidates.map((c) => meanings[scheme][c] ?? ''),
            'or',
          )}`
    }`,
  atLeast: (value: AcuteClass) => `At least ${value}, ${acute[value]}`,
  notAcute: 'Nothing acute is recorded for this limb.',
  acuteUnknown: 'Counts only if the trouble began within two weeks: when it began is not recorded.',
  timing: (value: AcuteClass) => {
    const { hours } = ACUTE_TIMING[value];
    if (!hours) return 'Guidelines consider primary amputation.';
    return `Guidelines ask for restored flow within ${hours[0] ? `${hours[0]} to ` : ''}${hours[1]} hours.`;
  },
  bySymptoms: (scheme: SchemeId, candidates: readonly (string | number)[]) =>
    candidates.length
      ? `By symptoms alone: ${list(
          candidates.map((c) => stage(scheme, c)),
          'or',
        )}.`
      : 'By symptoms alone nothing could be told.',
  objective: {
    met: 'Printed pressures met.',
    'not-met': 'Printed pressures not met.',
    'not-measured': 'Printed pressures not measured.',
  },
  differ: 'The two chronic schemes do not fit each other here: see what each rests on.',
  from: (phrases: readonly string[]) => `From: ${list(phrases)}.`,
  risk: (risk: WifiRisk) => `Amputation within a year: ${risks[risk]} risk.`,
  benefit: (benefit: WifiRisk) => `Benefit of restoring flow: ${risks[benefit]}.`,
  fromMemory:
    'The two tables of this scheme are recalled from memory, not read: check against the printed ones.',
  set: 'Set it yourself',
  setTo: (scheme: string) => `${scheme}, set by you`,
  asDerived: 'As derived',
  why: 'Why',
  overrule,
  yours: (value: string, derived: string | undefined) =>
    `Yours: ${value}.${derived === undefined ? ' Nothing was derived.' : ` Derived: ${derived}.`}`,
  sentence,
  said,
};
export type StagingWords = typeof staging;
