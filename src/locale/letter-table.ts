import type { Laterality, LimbKind, PulseSiteId, Side, SiteId } from '../anatomy/index.js';
import type { Bruit, Grade, Onset, Smoking } from '../examination/index.js';
import type { LetterLength, LetterPartId, PulseRegion, StagedScheme } from '../letter/index.js';
import type { Whereabouts } from '../localisation/index.js';
import type { FirmStatement } from '../statements/index.js';
import type { Of } from './words.js';

/** A grade as a sentence has it, `increased` between normal and bounding. */
export type Strength = Grade | 'increased';
/** Sites with the same pulse. */
export interface Alike {
  readonly strength: Strength;
  readonly sites: readonly PulseSiteId[];
}
/** A limb, or both of a kind. */
export interface WholeLimb {
  readonly kind: LimbKind;
  readonly side: Side | 'both';
}
/** The negatives that a letter names. */
export type Negative =
  | 'ulcer'
  | 'gangrene'
  | 'infection'
  | 'systemic'
  | 'sensation'
  | 'movement'
  | 'muscle'
  | 'stretchPain'
  | 'venousDoppler';
type Headed = Extract<LetterPartId, 'situation' | 'background' | 'assessment' | 'recommendation'>;
/** Columns of the table of sites. */
export type SiteColumn = 'site' | 'side' | 'pulse' | 'thrill' | 'doppler' | 'bruit' | 'delay' | 'note';

/** The sentences, each with its full stop. */
interface LetterSays {
  readonly status: Of<'entered-in-error' | 'preliminary'>;
  flag(when: string, heading: string): string;
  moreFlags(count: number): string;
  because(what: string): string;
  readonly noFlag: string;
  /** Before a date. */
  on(date: string): string;
  /** Who was examined, with the date or nothing after it. */
  opening(subject: string, on: string): string;
  openingUnnamed(on: string): string;
  readonly onset: Of<Onset>;
  /** Where claudication is felt: after the word itself, or with it. */
  readonly claudicates: Of<'none' | 'arm' | 'no-arm'> & {
    felt(muscle: string): string;
    in(muscle: string): string;
  };
  noComplaint(limbs: readonly WholeLimb[]): string;
  /** Places of one side, or of both. */
  places(side: Laterality | 'both', sites: readonly SiteId[]): string;
  /** Pulses of one side, or of both. */
  pulsesAt(side: Laterality | 'both', sites: readonly SiteId[]): string;
  readonly aortaNormal: string;
  /** A limb as it stands in the next, and whether the pulse of the aorta is among them. */
  wholeLimb(limb: WholeLimb): string;
  allPulses(limbs: string, aorta: boolean): string;
  normalPlaces(pulses: string, count: number): string;
  pulses(region: PulseRegion, groups: readonly Alike[]): string;
  /** One pulse, the only one graded or the only other. */
  readonly normalPulse: Of<'only' | 'other'>;
  readonly both: string;
  all(count: number): string;
  /** Several pulses, which `all` names. */
  readonly normalPulses: Readonly<Record<'only' | 'other', (all: string) => string>>;
  expansile(places: string): string;
  thrill(places: string): string;
  doppler(signal: string, places: string): string;
  readonly bruit: Readonly<Record<Bruit, (places: string) => string>>;
  readonly radioRadial: Of<'none' | 'right-later' | 'left-later'>;
  readonly radioFemoral: Readonly<Record<'none' | 'delayed', (side: Side) => string>>;
  note(place: string, note: string): string;
  inspection(limb: string, phrases: readonly string[]): string;
  readonly negatives: Of<Negative>;
  marks(marks: readonly string[]): string;
  /** Figures of sites, each site once, with the unit said once. */
  pressures(unit: string, figures: readonly string[]): string;
  pressuresAfter(unit: string, figures: readonly string[]): string;
  notMeasured(sites: readonly string[]): string;
  /** What each scheme is called before its stage. */
  readonly schemes: Of<StagedScheme>;
  /** Beside a stage that the clinician set. */
  readonly ownStage: string;
  /** With the reason as it was typed. */
  ownStageBecause(why: string): string;
  /** Where the pulse is lost, between pulses that are named in full. */
  readonly between: {
    from(above: string, below: string): string;
    fromHeart(below: string): string;
    beyond(above: string): string;
    readonly somewhere: string;
  };
  readonly suspects: Of<Whereabouts['pulse']>;
  conclusion(what: string, where: string, howSure: string): string;
  probability(percent: string): string;
  readonly firm: Of<FirmStatement['code']>;
  suggests(what: string, where: string, percent: string): string;
  nature(nature: string, percent: string): string;
  readonly noLesion: string;
  readonly otherReason: string;
  couldNotFeel(places: string, reason: string): string;
  couldNotListen(places: string, reason: string): string;
  couldNotInspect(limb: string, reason: string): string;
  unreadPlaces(places: string): string;
  readonly otherPulses: Of<'some' | 'all'>;
  /** Before what the pulse rule alone finds. */
  byRule(lead: string): string;
  readonly smoker: Of<Smoking>;
  readonly nothingAbnormal: string;
  readonly caution: string;
  signed(examiner: string): string;
}

type ElementWord =
  | 'length'
  | 'text'
  | 'copy'
  | 'copied'
  | 'notCopied'
  | 'copyTable'
  | 'tableCopied'
  | 'renew'
  | 'renewed'
  | 'changed'
  | 'missing'
  | 'add'
  | 'added'
  | 'outdated'
  | 'takeOut'
  | 'takenOut'
  | 'takeNew'
  | 'keep'
  | 'kept'
  | 'how'
  | 'from'
  | 'fromNone'
  | 'ownWords';

/** The words of summaries, letters and handovers, and of the table of sites. */
export interface LetterTable {
  readonly lengths: Of<LetterLength>;
  readonly headings: Of<Headed>;
  /** Stands above a letter to a colleague. */
  readonly greeting: string;
  readonly says: LetterSays;
  /** The control that shows and copies the text. */
  readonly element: Of<ElementWord>;
  readonly sites: {
    readonly title: string;
    scale(scale: string): string;
    readonly columns: Of<SiteColumn>;
    readonly notAPulseSite: string;
    readonly notAListeningSite: string;
    readonly expansile: string;
    readonly noDelay: string;
    readonly later: string;
  };
}
