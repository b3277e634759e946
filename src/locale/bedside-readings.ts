import type {
  ArteryVerdict,
  BedsideNote,
  BedsideReading,
  ColdPhase,
  HandArteries,
  PositionReading,
} from '../bedside/index.js';
import type { BedsideTestId, OutletSymptom, Reason, ScaleneWay, StopReason } from '../examination/index.js';
import { sentence } from './phrases.js';
import { render, type Renderings } from './render.js';
import type { Of } from './words.js';

/** A sentence about a time, with its unit. */
type Within = (time: string) => string;
/** The same with the limit it is compared with, with its unit. */
type Compared = (time: string, limit: string) => string;
type Codes<Id extends BedsideTestId> = Exclude<BedsideReading<Id>['code'], 'not-done' | 'incomplete'>;

/** What each reading means, in a sentence that names the limit it used. */
export interface ReadingsTable {
  readonly symptoms: Of<OutletSymptom>;
  readonly ways: Of<ScaleneWay>;
  readonly stops: Of<StopReason>;
  readonly phases: Of<ColdPhase>;
  readonly notes: Of<BedsideNote>;
  notDone(reason: string): string;
  readonly incomplete: string;
  /** After so long, and for so long, behind what it is said of. */
  readonly after: Within;
  readonly held: Within;
  readonly watchedTooShort: Compared;
  readonly elevation: {
    keepsColour(angle: string): string;
    notRaisedFully(angle: string): string;
    paleAt(angle: string): string;
    belowLimit(pale: string, limit: string): string;
    inRange(pale: string, limit: string): string;
    high(pale: string, limit: string): string;
  };
  readonly colourReturn: Readonly<Record<Exclude<Codes<'colour-return'>, 'watched-too-short'>, Compared>>;
  readonly venousFilling: Readonly<Record<Exclude<Codes<'venous-filling'>, 'watched-too-short'>, Compared>>;
  readonly rubor: {
    seen(after: string): string;
    readonly none: Within;
    readonly noneSoFar: string;
    /** How long the limb still has to hang. */
    letHang(none: string, limit: string): string;
  };
  readonly hand: {
    artery(artery: 'radial' | 'ulnar'): string;
    /** What an artery showed when it was let go; `after` is empty where no time was taken. */
    readonly released: Readonly<Record<ArteryVerdict | 'not-yet', (artery: string, after: string) => string>>;
    limit(limit: string): string;
    slow(arteries: string): string;
    tracingLost(pressed: string): string;
    readonly tracingKept: string;
  };
  readonly cold: {
    readonly threePhases: string;
    readonly twoPhases: string;
    only(phases: string): string;
    slow(minutes: string, limit: string): string;
    readonly noChange: string;
    warm(minutes: string): string;
  };
  readonly position: {
    readonly pulse: Of<'lost' | 'reduced'>;
    both(pulse: string, symptoms: string): string;
    symptoms(symptoms: string): string;
    readonly lost: string;
    readonly reduced: string;
    readonly negative: string;
    /** What was found in these ways of taking up a position. */
    inWays(ways: string, found: string): string;
  };
  readonly stress: {
    stoppedEarly(time: string, of: string, why: string): string;
    symptomsEarly(time: string, of: string, symptoms: string): string;
    symptoms(symptoms: string): string;
    readonly fatigueOnly: Within;
    tooShort(time: string, of: string): string;
    readonly completed: Within;
  };
}

/** What other areas of a language lend to it. */
interface Lent {
  readonly examination: { readonly reasons: Readonly<Record<Reason, string>> };
  readonly speech: {
    decimal(value: number): string;
    list(items: readonly string[]): string;
  };
}

type Timed = { readonly params: { readonly seconds: number }; readonly limit: number };
type Raised = { readonly params: { readonly angle: number; readonly seconds?: number } };

/** The words of what a bedside test showed. */
export function bedsideReadingsFrom(table: ReadingsTable, { examination, speech }: Lent) {
  const { decimal, list } = speech;
  const { elevation, colourReturn, venousFilling, rubor, hand, cold, position, stress } = table;
  const secs = (n: number): string => `${decimal(n)} s`;
  const ifTimed = (seconds: number | undefined, say: Within): string =>
    seconds === undefined ? '' : say(secs(seconds));
  const after = (seconds: number | undefined): string => ifTimed(seconds, table.after);
  const named = (of: readonly OutletSymptom[]): string => list(of.map((one) => table.symptoms[one]));
  const compared =
    (say: Compared) =>
    ({ params, limit }: Timed): string =>
      say(secs(params.seconds), secs(limit));
  const degrees = (angle: number): string => `${decimal(angle)}°`;
  const pale = ({ params }: Raised): string =>
    `${elevation.paleAt(degrees(params.angle))}${after(params.seconds)}`;

  const without: Renderings<Extract<PositionReading, { code: 'not-done' | 'incomplete' }>> = {
    'not-done': ({ params }) => table.notDone(examination.reasons[params.reason]),
    incomplete: () => table.incomplete,
  };
  const watched = compared((time, limit) => table.watchedTooShort(time, limit));

  const positions: Renderings<PositionReading> = {
    ...without,
    'pulse-and-symptoms': ({ params }) => position.both(position.pulse[params.pulse], named(params.symptoms)),
    symptoms: ({ params }) => position.symptoms(named(params.symptoms)),
    'pulse-lost': () => position.lost,
    'pulse-reduced': () => position.reduced,
    negative: () => position.negative,
  };
  const inWays = (reading: BedsideReading<'scalene'>): string => {
    const found = render(positions, reading);
    if (reading.code === 'not-done' || reading.code === 'incomplete') return found;
    return position.inWays(sentence(list(reading.params.ways.map((way) => table.ways[way]))), found);
  };
  const arteries = ({ params, limit }: { params: HandArteries; limit: number }): string => {
    const { radial = 'not-yet', radialSeconds, ulnar = 'not-yet', ulnarSeconds } = params;
    const first = hand.released[radial](hand.artery('radial'), after(radialSeconds));
    const second = hand.released[ulnar](hand.artery('ulnar'), after(ulnarSeconds));
    return `${sentence(first)}; ${second}. ${hand.limit(secs(limit))}`;
  };

  const elevated: Renderings<BedsideReading<'elevation'>> = {
    ...without,
    'keeps-colour': ({ params }) =>
      elevation.keepsColour(`${degrees(params.angle)}${ifTimed(params.seconds, table.held)}`),
    'not-raised-fully': ({ params }) => elevation.notRaisedFully(degrees(params.angle)),
    'pale-below-limit': (r) => elevation.belowLimit(pale(r), degrees(r.limit)),
    'pale-in-range': (r) => elevation.inRange(pale(r), degrees(r.limit)),
    'pale-high': (r) => elevation.high(pale(r), degrees(r.limit)),
  };
  const coloured: Renderings<BedsideReading<'colour-return'>> = {
    ...without,
    usual: compared((...of) => colourReturn.usual(...of)),
    'slower-than-usual': compared((...of) => colourReturn['slower-than-usual'](...of)),
    prolonged: compared((...of) => colourReturn.prolonged(...of)),
    severe: compared((...of) => colourReturn.severe(...of)),
    'not-returned': compared((...of) => colourReturn['not-returned'](...of)),
    'watched-too-short': watched,
  };
  const filled: Renderings<BedsideReading<'venous-filling'>> = {
    ...without,
    usual: compared((...of) => venousFilling.usual(...of)),
    'slower-than-usual': compared((...of) => venousFilling['slower-than-usual'](...of)),
    prolonged: compared((...of) => venousFilling.prolonged(...of)),
    severe: compared((...of) => venousFilling.severe(...of)),
    'not-filled': compared((...of) => venousFilling['not-filled'](...of)),
    unreliable: compared((...of) => venousFilling.unreliable(...of)),
    'watched-too-short': watched,
  };
  const reddened: Renderings<BedsideReading<'dependent-rubor'>> = {
    ...without,
    rubor: ({ params }) => rubor.seen(after(params.seconds)),
    'no-rubor': ({ params }) => `${rubor.none(secs(params.seconds))}.`,
    'hung-too-short': ({ params: { seconds }, limit }) =>
      rubor.letHang(seconds === undefined ? rubor.noneSoFar : rubor.none(secs(seconds)), secs(limit)),
  };
  const pressed: Renderings<BedsideReading<'hand-arch'>> = {
    ...without,
    patent: arteries,
    slow: (reading) => hand.slow(arteries(reading)),
    blocked: arteries,
    'one-artery': arteries,
    'tracing-lost': ({ params }) => hand.tracingLost(hand.artery(params.pressed)),
    'tracing-kept': () => hand.tracingKept,
  };
  const cooled: Renderings<BedsideReading<'cold-provocation'>> = {
    ...without,
    'three-phases': () => cold.threePhases,
    'two-phases': () => cold.twoPhases,
    'single-phase': ({ params }) => cold.only(list(params.phases.map((one) => table.phases[one]))),
    'slow-rewarming': ({ params, limit }) => cold.slow(decimal(params.rewarm), decimal(limit)),
    'no-change': () => cold.noChange,
    'rewarming-only': ({ params }) => cold.warm(decimal(params.rewarm)),
  };
  const stressed: Renderings<BedsideReading<'arm-stress'>> = {
    ...without,
    'stopped-early': ({ params, limit }) =>
      stress.stoppedEarly(secs(params.seconds), decimal(limit), table.stops[params.stopped]),
    'symptoms-early': ({ params, limit }) =>
      stress.symptomsEarly(secs(params.seconds), decimal(limit), named(params.symptoms)),
    symptoms: ({ params }) => stress.symptoms(named(params.symptoms)),
    'fatigue-only': ({ params }) => stress.fatigueOnly(secs(params.seconds)),
    'too-short': ({ params, limit }) => stress.tooShort(secs(params.seconds), decimal(limit)),
    completed: ({ params }) => stress.completed(secs(params.seconds)),
  };
  const renderings: { readonly [Id in Exclude<BedsideTestId, 'scalene'>]: Renderings<BedsideReading<Id>> } = {
    elevation: elevated,
    'colour-return': coloured,
    'dependent-rubor': reddened,
    'venous-filling': filled,
    'hand-arch': pressed,
    'cold-provocation': cooled,
    hyperabduction: positions,
    costoclavicular: positions,
    'arm-stress': stressed,
  };
  return {
    symptoms: table.symptoms,
    ways: table.ways,
    stops: table.stops,
    phases: table.phases,
    notes: table.notes,
    secs,
    /** What a result means; the words of the reading come first, then what weakens or completes it. */
    readingWords: <Id extends BedsideTestId>(id: Id, reading: BedsideReading<Id>): string =>
      id === 'scalene'
        ? inWays(reading as BedsideReading<'scalene'>)
        : render(renderings[id as 'elevation'], reading as BedsideReading<'elevation'>),
  };
}
