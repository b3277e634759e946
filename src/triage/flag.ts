import type { AcuteClass, Examination, TeamCall } from '../examination/index.js';
import type { PressureSettings } from '../pressures/index.js';
import type { Ground } from './ground.js';
import type { LimbState } from './limb.js';
import type { QuestionCode } from './questions.js';
import type { StagedLimb } from './record.js';
import type { TriageSettings } from './settings.js';
import type { Urgency } from './urgency.js';

/** Who is called, each by the local pathway. */
export const TEAMS = [
  'vascular',
  'vascular-if-new',
  'vascular-referral',
  'vascular-urgent',
  'emergency',
  'emergency-and-vascular',
  'emergency-aortic',
  'trauma',
  'trauma-and-vascular',
  'compartment',
  'neurology',
  'aneurysm-imaging',
  'line-team',
  'access',
  'access-bleeding',
  'cold-injury',
  'hand-vascular',
  'hand-clinic',
  'surgical-or-vascular',
  'surgical',
  'sepsis',
  'foot-clinic',
  'foot-emergency',
  'foot-service',
  'tia',
  'stroke',
] as const;
export type Team = (typeof TEAMS)[number];

/** What a flag warns of and who is called, in the order in which flags of one urgency are shown. */
export const FLAGS = {
  circulation: 'emergency',
  'aneurysm-symptomatic': 'emergency-and-vascular',
  dissection: 'emergency-aortic',
  'stroke-now': 'stroke',
  'access-bleeding': 'access-bleeding',
  'arterial-injury': 'trauma-and-vascular',
  'aortic-occlusion': 'vascular',
  'aneurysm-with-acute-limb': 'vascular',
  'popliteal-aneurysm-acute': 'vascular',
  'acute-limb-irreversible': 'vascular',
  'acute-limb-threatened': 'vascular',
  'acute-limb': 'vascular',
  'graft-occlusion': 'vascular',
  'iatrogenic-hand': 'line-team',
  'fixed-mottling': 'vascular',
  'compartment-syndrome': 'compartment',
  'arterial-injury-possible': 'trauma',
  phlegmasia: 'vascular',
  'graft-infection': 'vascular',
  'false-aneurysm': 'vascular',
  'access-steal': 'access',
  'cold-injury': 'cold-injury',
  'wet-gangrene': 'surgical-or-vascular',
  'spreading-infection': 'sepsis',
  'diabetic-foot-emergency': 'foot-emergency',
  'threatened-hand': 'hand-vascular',
  'neuro-deficit': 'neurology',
  'acute-limb-possible': 'vascular-if-new',
  'no-doppler': 'vascular-if-new',
  'perfusion-poor': 'vascular-referral',
  'aneurysm-possible': 'aneurysm-imaging',
  'popliteal-aneurysm-possible': 'aneurysm-imaging',
  'access-thrombosed': 'access',
  'digital-ischaemia': 'vascular',
  'deep-infection': 'surgical',
  'diabetic-foot-active': 'foot-service',
  tia: 'tia',
  'chronic-limb-threat': 'vascular-urgent',
  'foot-ulcer-unproven': 'foot-clinic',
  'ulnar-artery-hand': 'hand-clinic',
  'threatening-pressure': 'vascular-referral',
} as const satisfies Record<string, Team>;
export type FlagCode = keyof typeof FLAGS;
export const FLAG_CODES = Object.keys(FLAGS) as FlagCode[];

/** The class of a limb a flag is about, for words such as "IIa to IIb". */
export interface FlagClass {
  readonly atLeast: AcuteClass;
  readonly atMost: AcuteClass;
}

/**
 * One red flag as data: what to take seriously, how soon, in which limb, for what findings, who is called and what to ask next. It
 * raises a call by the local pathway, never a treatment and never a diagnosis.
 */
export interface RedFlag {
  readonly code: FlagCode;
  readonly urgency: Urgency;
  /** Missing where it is not about one limb. */
  readonly limb?: StagedLimb;
  readonly because: readonly Ground[];
  readonly whom: Team;
  /** What to ask or examine next, in this order, while it is unanswered. */
  readonly ask: readonly QuestionCode[];
  /** The acute class that is open, for an acutely ischaemic limb. */
  readonly class?: FlagClass;
  /** Hours within which guidelines ask for restored flow; no time to spend before the call. */
  readonly flowWithin?: readonly [from: number, to: number];
  /** Hours from the onset to the examination. */
  readonly sinceOnset?: number;
  /** The clock behind an urgency of days, by local pathway. */
  readonly clock?: FlagClock;
  /** Calls of this team about this limb that were noted. */
  readonly calls?: readonly TeamCall[];
}

/** Days that a pathway allows: until flow is restored, or until a service sees the patient. */
export type FlagClock =
  | { readonly code: 'days-to-flow'; readonly inHospital: number; readonly atHome: number }
  | { readonly code: 'working-days'; readonly days: number };

/** A flag without what follows from its code. */
export type Raised = Omit<RedFlag, 'whom' | 'ask' | 'clock' | 'calls'> & {
  readonly ask?: readonly QuestionCode[];
};

/** All a table reads: the record, its limbs weighed, and the choices. */
export interface Case {
  readonly examination: Examination;
  readonly limbs: readonly LimbState[];
  readonly settings: TriageSettings;
  readonly pressures: PressureSettings;
}

function clockOf({ code, urgency }: Raised, { clocks }: TriageSettings): FlagClock | undefined {
  if (code === 'diabetic-foot-active') return { code: 'working-days', days: clocks.footWorkingDays };
  if (code !== 'chronic-limb-threat' || urgency !== 'soon') return undefined;
  return { code: 'days-to-flow', inHospital: clocks.inHospital, atHome: clocks.atHome };
}

export function raise(flag: Raised, settings: TriageSettings): RedFlag {
  const clock = clockOf(flag, settings);
  return { ...flag, whom: FLAGS[flag.code], ask: flag.ask ?? [], ...(clock && { clock }) };
}
