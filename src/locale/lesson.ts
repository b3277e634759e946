import type { LimbKey, Place, SiteId } from '../anatomy/index.js';
import { BEDSIDE_TESTS } from '../bedside/index.js';
import type { BedsideTestId, Bruit } from '../examination/index.js';

/** What is done in a step; a layer above has the sequence. */
type Act =
  | { readonly kind: 'history' | 'inspection' | 'delays' | 'pressures' | 'conclusion' }
  | { readonly kind: 'test'; readonly test: BedsideTestId }
  | { readonly kind: 'pulse'; readonly place: Place }
  | { readonly kind: 'listen'; readonly site: SiteId };

/** What a finding is called, and what it means. */
export interface Meaning {
  readonly name: string;
  readonly says: string;
}

/** The usual limit of a test, in its unit; 0 for one without. */
export const usualLimit = (test: BedsideTestId): number => BEDSIDE_TESTS[test].limits?.usual ?? 0;

/** The words of a lesson on a projector, and of the presenter's window. */
export interface LessonWords {
  readonly title: string;
  readonly slides: string;
  step(number: number, of: number): string;
  readonly patient: string;
  /** In its place where the findings are those of a record. */
  readonly real: string;
  minutes(count: number): string;
  /** What a step is called. */
  act(act: Act): string;
  /** How it is done, in one line; of a site its technique, of a test its steps. */
  how(act: Act): string;
  /**
   * What can be found, and what it means: of a pulse normal, reduced and absent, of an artery none, systolic and continuous, else normal
   * before abnormal.
   */
  meanings(act: Act): readonly Meaning[];
  readonly cautions: Readonly<Partial<Record<Act['kind'] | SiteId | BedsideTestId, string>>>;
  readonly question: string;
  readonly finding: string;
  readonly hidden: string;
  /** Nothing was recorded in this step. */
  readonly nothing: string;
  readonly reading: string;
  readonly nothingYet: string;
  readonly answer: string;
  agrees(limb: LimbKey): string;
  differs(limb: LimbKey): string;
  readonly caution: string;
  readonly sequence: string;
  readonly goTo: string;
  /** Heard, not seen, while the screen is black. */
  readonly black: string;
  readonly running: string;
  left(minutes: number): string;
  readonly time: string;
  readonly onScreen: string;
  readonly upNext: string;
  readonly end: string;
  readonly notes: string;
  readonly noNotes: string;
  readonly next: string;
  readonly back: string;
  readonly reveal: string;
  readonly hide: string;
  readonly overview: string;
  readonly blackScreen: string;
  readonly spotlight: string;
  readonly ink: string;
  readonly wipe: string;
  readonly fullScreen: string;
  /** Browser or page refuses to fill the screen. */
  readonly fullRefused: string;
  readonly restart: string;
  readonly keys: string;
  readonly controls: string;
  readonly loading: string;
  readonly failed: string;
  /** The sheet that is handed out. */
  readonly handOut: {
    readonly title: string;
    readonly notice: string;
    readonly real: string;
    readonly first: string;
    readonly pulses: string;
    readonly listen: string;
  };
  /** The button that shows the pulse wave, and its slide. */
  readonly wave: {
    readonly title: string;
    /** Whose pulse is shown: the patient's, a sound one before the answer is told, or a sound one where nobody is simulated. */
    readonly ofPatient: string;
    readonly ofSound: string;
    readonly ofNobody: string;
    /** Nothing moves, since the person asked for that. */
    readonly still: string;
    /** @param times how many times slower than the heart */
    slower(times: number): string;
    /** Name of the button for that. */
    speed(times: number): string;
    readonly play: string;
    readonly pause: string;
    readonly rate: string;
    beats(aMinute: number): string;
    readonly table: string;
    readonly site: string;
    /** @param ms after the heart */
    arrives(ms: number): string;
    readonly lost: string;
    /** With what a site is heard. */
    readonly listen: string;
    readonly by: Readonly<Record<'doppler' | 'bruit', string>>;
    readonly bruits: Readonly<Record<Bruit, string>>;
    /** Caption of the table of bruits. */
    readonly sounds: string;
    readonly press: Readonly<Record<'doppler' | 'bruit', string>>;
  };
  /** The map on which the room marks, beside what the lesson finds. */
  readonly marks: {
    /** The button that shows it. */
    readonly name: string;
    readonly title: string;
    readonly whose: string;
    /** In its place where the window only shows what another marks. */
    readonly mirror: string;
    /** Takes every mark away. */
    readonly wipe: string;
    readonly loading: string;
    readonly failed: string;
  };
  /** What is heard of the simulated patient; played at a press only. */
  readonly sound: {
    doppler(place: Place): string;
    bruit(place: Place): string;
    /** Said while it plays. */
    readonly playing: string;
  };
}
