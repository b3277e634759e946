import type { Limb, Place, Side } from '../anatomy/index.js';
import type { BedsideTestId } from '../examination/index.js';

/** What is done at the bedside; a layer above has the list. */
export type PracticeSaid =
  | { readonly kind: 'ask'; readonly about: 'onset' | 'walking' | 'background' }
  | { readonly kind: 'rhythm' | 'circulation' | 'exercise' }
  | { readonly kind: 'look' | 'feeling'; readonly limb: Limb }
  | { readonly kind: 'feel' | 'doppler' | 'listen'; readonly place: Place }
  | { readonly kind: 'vertebral'; readonly side: Side }
  | { readonly kind: 'delay'; readonly of: 'radio-radial' | 'radio-femoral' }
  | { readonly kind: 'cuff'; readonly cuff: 'arm' | 'wrist' | 'ankle' | 'toe' | 'thigh'; readonly side: Side }
  | { readonly kind: 'test'; readonly test: BedsideTestId; readonly side: Side };

type Complaint =
  | 'leg-sudden'
  | 'arm-sudden'
  | 'foot-wound'
  | 'night-pain'
  | 'leg-walking'
  | 'arm-tires'
  | 'faint'
  | 'cold-limbs'
  | 'high-pressure'
  | 'check';
type Cause =
  | 'atherosclerosis'
  | 'thrombosis'
  | 'embolism'
  | 'aneurysm'
  | 'dissection'
  | 'entrapment'
  | 'injury'
  | 'small-artery'
  | 'large-vessel'
  | 'coarctation'
  | 'low-flow'
  | 'cold'
  | 'none';
type First =
  | 'call-now'
  | 'circulation'
  | 'same-day'
  | 'refer'
  | 'risk-and-walking'
  | 'look-elsewhere'
  | 'imaging-first'
  | 'compress'
  | 'raise-and-warm';
type Caution = 'cuff' | 'raised' | 'walked' | 'late-call' | 'first';
type Part = 'side' | 'level' | 'cause' | 'stage' | 'urgency' | 'first' | 'thrift';
type Verdict = 'right' | 'wrong' | 'claimed' | 'missed';

/** The words of a patient to practise on. */
export interface PracticeWords {
  readonly title: string;
  patient(code: string): string;
  readonly invented: string;
  /** Where a Doppler probe was held to a wrist. */
  readonly wristSignal: string;
  /** Who it is and what brings them, in one or two sentences. */
  brief(age: number, complaint: Complaint, side: Side | undefined): string;
  /** Beginning: which patient. */
  readonly choose: string;
  readonly number: string;
  readonly unknownNumber: string;
  readonly difficulty: string;
  readonly difficulties: Readonly<Record<'clear' | 'usual' | 'hard', string>>;
  readonly level: string;
  readonly anyLevel: string;
  readonly begin: string;
  readonly another: string;
  /** Examining. */
  act(act: PracticeSaid): string;
  readonly groups: Readonly<Record<'ask' | 'look' | 'hand' | 'pressures' | 'tests', string>>;
  readonly tools: string;
  readonly tool: Readonly<Record<'feel' | 'listen' | 'doppler', string>>;
  readonly views: string;
  readonly view: Readonly<Record<'whole' | 'arms' | 'legs', string>>;
  time(minutes: number, seconds: number): string;
  readonly bedside: string;
  readonly takes: string;
  readonly acts: string;
  readonly touch: string;
  readonly found: string;
  readonly nothingFound: string;
  readonly nothingYet: string;
  readonly hereToo: string;
  readonly close: string;
  readonly nameIt: string;
  readonly back: string;
  /** Answering. */
  readonly where: string;
  readonly noDisease: string;
  readonly cause: string;
  readonly causes: Readonly<Record<Cause, string>>;
  readonly stage: string;
  readonly acuteStage: string;
  readonly urgency: string;
  readonly urgencies: Readonly<Record<'none' | 'soon' | 'today' | 'now', string>>;
  readonly first: string;
  readonly firsts: Readonly<Record<First, string>>;
  readonly once: string;
  readonly show: string;
  /** The sheet. */
  readonly sheet: string;
  points(points: number, of: number): string;
  readonly parts: Readonly<Record<Part, string>>;
  readonly ungrounded: string;
  /** A part that was not answered: neither right nor wrong. */
  openPart(of: number): string;
  /** The findings leave several causes open, all of them right; the patient's own. */
  causesFit(own: string): string;
  /** The author names no cause. */
  readonly causeUntold: string;
  taken(points: number): string;
  readonly truth: string;
  readonly yours: string;
  readonly unanswered: string;
  readonly silent: string;
  readonly or: string;
  /** Every red flag that the patient has, each found or missed. */
  readonly flags: string;
  readonly flag: string;
  readonly flagMissed: string;
  readonly flagFound: string;
  readonly noFlags: string;
  readonly cautions: string;
  readonly noCautions: string;
  caution(code: Caution, act: string | undefined, minutes: number, seconds: number): string;
  readonly told: string;
  readonly noneTold: string;
  readonly toldNothing: string;
  readonly allTold: string;
  readonly undone: string;
  readonly noneUndone: string;
  /** The findings contradict each other, or there are none. */
  readonly undoneUnknown: string;
  readonly nothingDone: string;
  readonly rule: string;
  readonly ruleNothing: string;
  readonly expected: string;
  readonly done: string;
  readonly erred: string;
  readonly print: string;
  readonly again: string;
  readonly next: string;
  /** Presenting, voting, progress, examining others. */
  readonly present: string;
  readonly presentHow: string;
  readonly check: string;
  readonly verdicts: Readonly<Record<Verdict, string>>;
  readonly unread: string;
  readonly vote: string;
  readonly voteOn: string;
  voteHow(choices: number): string;
  readonly voteWrong: string;
  readonly count: string;
  readonly hands: string;
  readonly voteHidden: string;
  readonly progress: string;
  /** What share of the points the latest patients brought, and those before them; a `before` of 0 has none. */
  trend(last: number, share: number, before: number, shareBefore: number): string;
  readonly byLevel: string;
  rightOf(right: number, tried: number): string;
  readonly noLevelNamed: string;
  readonly keyRight: string;
  readonly keyWrong: string;
  /** How the chart runs, and how many earlier patients it leaves out. */
  oldestFirst(leftOut: number): string;
  readonly byPart: string;
  readonly latest: string;
  readonly keptHere: string;
  readonly keptNowhere: string;
  forgotten(count: number): string;
  readonly bringBack: string;
  readonly download: string;
  readonly forget: string;
  readonly examiner: string;
  /** What is ticked on the examiner's sheet. */
  readonly candidateDoes: string;
  readonly examinerHow: string;
  readonly mark: string;
  readonly loading: string;
  readonly failed: string;
  readonly notAdvice: string;
}
