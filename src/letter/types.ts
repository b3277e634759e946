import type { LimbKey, Place, PulseSiteId, Side } from '../anatomy/index.js';
import type {
  Bruit,
  Delays,
  DopplerSignal,
  Examination,
  Grade,
  Onset,
  Reason,
  TeamCall,
} from '../examination/index.js';
import type { RuleContradiction, Whereabouts } from '../localisation/index.js';
import type { IndexKind, IndexReading } from '../pressures/index.js';
import type { FindingPath, ReportLine, StageReport } from '../report/index.js';
import type { StagingSettings } from '../staging/index.js';
import type {
  BedsideLine,
  CirculationStatement,
  ContextStatement,
  FirmStatement,
  HistoryStatement,
  ImpossibleStatement,
  InspectionStatement,
  LeadStatement,
  LimbHistoryStatement,
  MethodStatement,
  NatureStatement,
  PressureStatement,
  PressureVerdict,
  VoicesStatement,
} from '../statements/index.js';
import type { RedFlag } from '../triage/index.js';

/** How much is said: one line for a list, a few lines, a letter, or a handover by situation, background, assessment and recommendation. */
export const LETTER_LENGTHS = ['line', 'short', 'letter', 'handover'] as const;
export type LetterLength = (typeof LETTER_LENGTHS)[number];

/** What a letter is made with beside the record. */
export interface LetterContext {
  readonly length: LetterLength;
  /** The patient as the page names him; missing where it does not. */
  readonly subject?: string | undefined;
  /** Choices that flags, indices and stages depend on. */
  readonly settings?: Partial<StagingSettings> | undefined;
  /** The record of the visit before, which the localisation weighs. */
  readonly earlier?: Examination | undefined;
}

/** Parts of a limb where pulses are felt; the trunk has the aorta. */
export type PulseRegion = LimbKey | 'trunk';

/** Sites of one limb with the same pulse, proximal first. */
export interface PulseGroup {
  readonly grade: Grade;
  readonly increased?: true;
  readonly sites: readonly PulseSiteId[];
}

/** The schemes that a letter tells; grades of their parts stand in the examination. */
export const STAGED_SCHEMES = [
  'acute',
  'fontaine',
  'rutherford',
  'wifi',
] as const satisfies readonly StageReport['scheme'][];
export type StagedScheme = (typeof STAGED_SCHEMES)[number];

/** A stage that counts: the clinician's own, or the derived one where the findings leave one. */
export interface StageStatement {
  readonly scheme: StagedScheme;
  readonly stage: string | number;
  readonly own: boolean;
  /** Why the clinician set it, as typed. */
  readonly why?: string;
}

/** A mark on the skin, and where it lies. */
export type MarkLine = Extract<ReportLine, { readonly code: 'mark' }>;

/** The delays of a record, each with what was found. */
export type DelayStatement =
  | { readonly of: 'radio-radial'; readonly found: NonNullable<Delays['radioRadial']> }
  | { readonly of: 'radio-femoral'; readonly side: Side; readonly found: 'none' | 'delayed' };

/** One sentence. */
export type LetterStatement =
  /** How the record stands, where a reader must know. */
  | { readonly code: 'status'; readonly status: 'entered-in-error' | 'preliminary' }
  /** What a flag warns of, and how soon. */
  | { readonly code: 'flag'; readonly flag: RedFlag }
  /** The same in a situation, with the time since the onset, or in a line. */
  | { readonly code: 'flag-named'; readonly flag: RedFlag; readonly brief: boolean }
  | { readonly code: 'more-flags'; readonly count: number }
  /** What raised a flag. */
  | { readonly code: 'flag-because'; readonly flag: RedFlag }
  /** What a flag asks for. */
  | { readonly code: 'flag-action'; readonly flag: RedFlag }
  | { readonly code: 'no-flag' }
  | { readonly code: 'call'; readonly call: TeamCall }
  | { readonly code: 'opening'; readonly subject?: string; readonly examinedAt?: string }
  | { readonly code: 'onset'; readonly onset: Onset }
  | {
      readonly code: 'complaint';
      readonly limb: LimbKey;
      readonly statements: readonly (LimbHistoryStatement | ContextStatement)[];
    }
  /** Asked for and denied in all of these limbs. */
  | { readonly code: 'no-complaint'; readonly limbs: readonly LimbKey[] }
  | {
      readonly code: 'background';
      readonly statements: readonly (ContextStatement | HistoryStatement | CirculationStatement)[];
      /** Asked for, and not so. */
      readonly denied: boolean;
    }
  /** These pulses are normal, of regions of which not every pulse was graded. */
  | { readonly code: 'normal-places'; readonly places: readonly Place[] }
  /** Every pulse site of these regions is graded, and normal. */
  | { readonly code: 'all-pulses'; readonly regions: readonly PulseRegion[] }
  | { readonly code: 'pulses'; readonly region: PulseRegion; readonly groups: readonly PulseGroup[] }
  /** How many further pulses are normal. */
  | { readonly code: 'normal-pulses'; readonly count: number; readonly others: boolean }
  | { readonly code: 'thrill' | 'expansile'; readonly places: readonly Place[] }
  | { readonly code: 'doppler'; readonly signal: DopplerSignal; readonly places: readonly Place[] }
  | { readonly code: 'bruit'; readonly bruit: Bruit; readonly places: readonly Place[] }
  | { readonly code: 'delay'; readonly delay: DelayStatement }
  | { readonly code: 'place-note'; readonly place: Place; readonly note: string }
  | {
      readonly code: 'inspection';
      readonly limb: LimbKey;
      readonly statements: readonly InspectionStatement[];
      /** Looked for, and as usual. */
      readonly usual: boolean;
    }
  | { readonly code: 'marks'; readonly marks: readonly MarkLine[] }
  | { readonly code: 'bedside'; readonly line: BedsideLine }
  | { readonly code: 'index'; readonly kind: IndexKind; readonly readings: readonly IndexReading[] }
  | {
      readonly code: 'pressures';
      readonly statements: readonly PressureStatement[];
      readonly unit: 'mmHg' | 'kPa';
      /** They could not be measured. */
      readonly missing?: true;
    }
  /** Methods and limits that the examiner chose. */
  | { readonly code: 'methods'; readonly methods: readonly MethodStatement[] }
  | { readonly code: 'verdict'; readonly verdict: PressureVerdict; readonly unit: 'mmHg' | 'kPa' }
  | { readonly code: 'stage'; readonly limb: LimbKey; readonly stages: readonly StageStatement[] }
  /** Where the pulse of a limb is lost, with how firm that is. */
  | {
      readonly code: 'conclusion';
      readonly where: Whereabouts;
      readonly firm?: FirmStatement['code'];
      readonly brief: boolean;
    }
  | { readonly code: 'voices'; readonly voices: VoicesStatement }
  /** What holds for the whole body, as the bedside rule says it. */
  | { readonly code: 'everywhere'; readonly lead: LeadStatement }
  /** What the bedside rule alone finds in a limb. */
  | { readonly code: 'rule'; readonly lead: LeadStatement }
  | { readonly code: 'contradiction'; readonly contradiction: RuleContradiction }
  | { readonly code: 'impossible'; readonly impossible: ImpossibleStatement }
  | { readonly code: 'nature'; readonly nature: NatureStatement }
  | {
      readonly code: 'could-not';
      readonly act: 'feel' | 'listen';
      readonly reason: Reason;
      readonly places: readonly Place[];
    }
  | { readonly code: 'could-not-inspect'; readonly reason: Reason; readonly limb: LimbKey }
  | { readonly code: 'unread-places'; readonly places: readonly Place[] }
  /** Some or all pulses were not examined. */
  | { readonly code: 'other-pulses-not-examined'; readonly some: boolean }
  | { readonly code: 'later-entries'; readonly count: number }
  /** No lesion is suggested by the pulses examined. */
  | { readonly code: 'no-lesion' | 'nothing-abnormal' | 'nothing-recorded' | 'caution' }
  | { readonly code: 'signed'; readonly examiner: string };

/** A sentence, and the findings it comes from. */
export interface LetterSentence {
  readonly says: LetterStatement;
  /** Where in the record what it says stands; empty for a sentence that rests on no single finding. */
  readonly from: readonly FindingPath[];
}

export const LETTER_PARTS = [
  'status',
  'flags',
  'opening',
  'complaint',
  'background',
  'findings',
  'tests',
  'conclusion',
  'not-examined',
  'closing',
  'situation',
  'assessment',
  'recommendation',
] as const;
export type LetterPartId = (typeof LETTER_PARTS)[number];

/** A paragraph. */
export interface LetterPart {
  readonly id: LetterPartId;
  /** The limb or region it is about, where it is about one. */
  readonly limb?: PulseRegion;
  readonly sentences: readonly LetterSentence[];
}
