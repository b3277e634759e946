import type {
  AcuteClass,
  FontaineStage,
  Overrule,
  RutherfordCategory,
  Staging,
  WifiGrade,
  WifiStage,
} from '../../examination/index.js';
import { type NoteCode, RUTHERFORD_GRADES, type WifiExclusion, type WifiRisk } from '../../staging/index.js';
import { ACUTE_TIMING } from '../../triage/index.js';
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
  'no-single-class': 'These findings fit no single Rutherford class; the least that they allow is shown.',
  'fixed-mottling': 'Fixed mottling goes with the irreversible class.',
  'described-for-leg': 'The classes were described for the leg.',
  'old-deficit': 'A known old deficit of power or sensation is not counted.',
  'pressures-not-met':
    'The objective pressure criteria of this category are not met: recheck symptom and pressures.',
  'pressures-of-rest-pain': 'Pressures are in the range of rest pain; neuropathy may mask pain.',
  'disease-not-shown': 'Arterial disease is not shown by pulses and pressures: look for another cause.',
  'disease-untested': 'Arterial disease is not proven: pulses, ABPI, toe pressure or waveform are needed.',
  'other-causes': 'A completed walk without a fall: think of spine, hip and veins.',
  'at-200': 'Exactly 200 m is not defined by the scheme; set the convention you use.',
  'toe-decides': 'ABPI and toe pressure give different grades; the toe pressure decides.',
  incompressible: 'Ankle arteries incompressible: grade by toe pressure or TcPO₂.',
  'one-incompressible': 'One ankle artery is incompressible: the grade may be worse.',
  'both-arms': 'Both arms may be obstructed: the ABPI may read too high, and the grade may be worse.',
  'not-atherosclerotic':
    'Limb threat is defined for atherosclerosis; another disease is recorded as the cause.',
  'diabetes-ankle': 'In diabetes the ankle pressure may read too high: the grade may be worse.',
  'worse-counts': 'ABPI and ankle pressure give different grades; the worse counts.',
  'at-70': '70 mmHg is printed in two grades; set the convention you use.',
  'one-sign-only': 'One sign alone does not make an infection by this scheme.',
};

const excluded: Record<WifiExclusion, string> = {
  amputated: 'The foot is lost: the scheme does not apply.',
  acute: 'Not meant for acute limb ischaemia.',
  vasculitis: 'Not meant for vasculitis.',
  buerger: 'Not meant for thromboangiitis obliterans (Buerger’s disease).',
  vasospasm: 'Not meant for vasospasm.',
  injury: 'Not meant for injury.',
  'venous-ulcer': 'Not meant for venous ulcers.',
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
  grades: 'The three WIfI components',
  wifiTitle: 'Wound, ischaemia and foot infection (WIfI)',
  meanings,
  notes,
  excluded,
  risks,
  stage,
  nothing: 'Not enough recorded to tell',
  /** In place of all stages where the record they follow from cannot be read. */
  unread:
    'The record cannot be read here, so no stage is worked out from it. Stages you have set yourself stay as they are.',
  open: (scheme: SchemeId, candidates: readonly (string | number)[]) =>
    `${list(candidates.map(String), 'or')}${
      candidates.length > 2
        ? ''
        : `: ${list(
            candidates.map((c) => meanings[scheme][c] ?? ''),
            'or',
          )}`
    }`,
  /** The classes that are open, from the least to the most. */
  between: (atLeast: AcuteClass, atMost: AcuteClass) =>
    `At least ${atLeast} (${acute[atLeast]}), at most ${atMost} (${acute[atMost]})`,
  ifAcute: 'If acute:',
  notAcute:
    'No acute onset recorded: not classified as acute limb ischaemia. If symptoms are under 2 weeks, record the onset.',
  acuteUnknown:
    'Applies to symptoms of under 2 weeks, however they began. The onset is not recorded: establish it now.',
  timing: (value: AcuteClass) => {
    const { hours } = ACUTE_TIMING[value];
    if (!hours)
      return 'Guidelines: primary amputation may have to be considered; decided by the vascular team. Call now.';
    return `Guideline window for revascularisation: within ${hours[0] ? `${hours[0]} to ` : ''}${hours[1]} hours. Call now.`;
  },
  beside: (phrases: readonly string[]) => `Beside it: ${list(phrases)}, in the range of rest pain.`,
  objective: {
    met: 'Objective pressure criteria met.',
    'not-met': 'Objective pressure criteria not met.',
    'not-measured': 'Objective pressure criteria not measured.',
  },
  differ: 'Fontaine and Rutherford disagree here: compare the findings behind each.',
  from: (phrases: readonly string[]) => `From: ${list(phrases)}.`,
  risk: (risk: WifiRisk) => `Estimated 1-year risk of major amputation: ${risks[risk]}.`,
  benefit: (benefit: WifiRisk) => `Estimated benefit of revascularisation: ${risks[benefit]}.`,
  /** Scheme and edition, shown with the stage. */
  edition: 'WIfI tables after Mills 2014.',
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
