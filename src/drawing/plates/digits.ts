import type { SkinName } from '../../anatomy/index.js';
import {
  type Digit,
  type DigitLimb,
  DIGITS,
  digitsAt,
  DIGIT_STATES,
  type DigitState,
  type Examination,
  isDigitLocked,
} from '../../examination/index.js';
import type { Messages } from '../../locale/index.js';
import type { Point } from '../geometry.js';
import type { GlyphPart } from '../glyphs.js';
import { TARGET_RADIUS } from '../glyphs.js';
import type { PaintTable } from '../paint.js';
import { isPlateView, plateOf } from './plate.js';
import type { PreparedPlate } from './prepared.js';

/*
 * Fingers and toes one by one, as the inspection records them, on the plates that show them from in front: what stands at each, how it is
 * drawn, and its words.
 */

/** Regions of the skin that the digits of a limb are, from the thumb or great toe outward. */
const REGIONS = {
  arm: ['thumb', 'index-finger', 'middle-finger', 'ring-finger', 'little-finger'],
  leg: ['great-toe', 'second-toe', 'third-toe', 'fourth-toe', 'little-toe'],
} as const;

/** The limb whose digits a view shows one by one; `undefined` for one that does not. */
export function digitLimbOf(view: string): DigitLimb | undefined {
  if (!isPlateView(view)) return undefined;
  const { name, side } = plateOf(view);
  if (side === 'midline' || !['hand', 'foot', 'sole'].includes(name)) return undefined;
  return { kind: name === 'hand' ? 'arm' : 'leg', side };
}

/** What is drawn at a digit: a state, or that there is none and why. */
export type DigitKind = DigitState | 'not-examined' | 'could-not' | 'unknown';
export const DIGIT_KINDS: readonly DigitKind[] = [...DIGIT_STATES, 'could-not', 'not-examined', 'unknown'];

/** Where a digit is marked, in px. */
export interface PlacedDigit {
  readonly digit: Digit;
  readonly x: number;
  readonly y: number;
}

/** Where the digits of a plate are marked. */
export interface PlacedDigits {
  readonly limb: DigitLimb;
  readonly spots: readonly PlacedDigit[];
  /** Half the distance of the nearest two in px, at most that of a site: within it a press means one of them. */
  readonly reach: number;
  /** Size of their glyphs, 1 being 24 px. */
  readonly glyphScale: number;
}

/** Least width of a target in px: digits that stand closer together are one target. */
export const LEAST_TARGET = 24;
/** Width of a glyph in the 24 units of its box, with the room between two. */
const GLYPH_ROOM = 22;
/** Factor of the size of the glyphs of pulses: these are narrower. */
const LARGER = 1.3;

/** Whether each digit is a target of its own. */
export const standApart = ({ reach }: PlacedDigits): boolean => 2 * reach >= LEAST_TARGET;

/**
 * Places the digits of a plate.
 * @param px from units of the plate to px
 * @param largest size of the glyphs of pulses, 1 being 24 px
 */
export function placeDigits(
  plate: PreparedPlate,
  px: (point: Point) => Point,
  largest: number,
): PlacedDigits | undefined {
  const limb = digitLimbOf(plate.view);
  const { digits } = plate.plate;
  if (!limb || !digits) return undefined;
  const spots = plate.placed(digits).map((point, i): PlacedDigit => {
    const [x, y] = px(point);
    return { digit: DIGITS[i] as Digit, x, y };
  });
  const gaps = spots.slice(1).map(({ x, y }, i) => {
    const before = spots[i] as PlacedDigit;
    return Math.hypot(x - before.x, y - before.y);
  });
  const nearest = Math.min(...gaps) / 2;
  return {
    limb,
    spots,
    reach: Math.min(TARGET_RADIUS * Math.max(1, largest), nearest),
    glyphScale: Math.min(LARGER * largest, (2 * nearest) / GLYPH_ROOM),
  };
}

/** What is shown of a digit. */
export interface DigitView {
  readonly digit: Digit;
  readonly kind: DigitKind;
  readonly state: DigitState | undefined;
  /** What is recorded, in words. */
  readonly said: string;
  /** What the compared record has, where that differs. */
  readonly earlier: string;
  /** How it is called: the patient's side, the digit, and what is recorded. */
  readonly name: string;
}

/** A level of amputation that takes the digits, all of them. */
function isLost({ context }: Examination, { kind, side }: DigitLimb): boolean {
  const leg = context?.legAmputation?.[side];
  const arm = context?.armAmputation?.[side];
  return kind === 'leg' ? leg !== undefined && leg !== 'toes' : arm !== undefined && arm !== 'fingers';
}

function stand(
  examination: Examination,
  limb: DigitLimb,
  digit: Digit,
  { marks, examination: words }: Messages,
): Pick<DigitView, 'kind' | 'state' | 'said'> {
  const state = digitsAt(examination, limb)[digit];
  if (isDigitLocked(examination, limb, digit)) return { kind: 'unknown', state, said: words.unknownHere };
  if (state) return { kind: state, state, said: marks.digitStates[state] };
  const reason = isLost(examination, limb)
    ? 'amputated'
    : examination.inspection?.[limb.kind]?.[limb.side]?.couldNotExamine;
  return reason
    ? { kind: 'could-not', state, said: words.couldNot(reason) }
    : { kind: 'not-examined', state, said: words.notExamined };
}

/** The region of the skin that a digit is. */
function regionOf({ kind, side }: DigitLimb, digit: Digit): SkinName {
  return { region: REGIONS[kind][DIGITS.indexOf(digit)] as SkinName['region'], side };
}

/** A digit as one says it: "Left thumb". */
export const digitWord = (limb: DigitLimb, digit: Digit, { marks }: Messages): string =>
  marks.placeWord(regionOf(limb, digit));

/** The digits of a limb together: "Left fingers". */
export const digitsWord = ({ kind, side }: DigitLimb, { marks }: Messages): string =>
  marks.placeWord({ region: kind === 'arm' ? 'fingers' : 'toes', side });

/** Every digit of a limb as a record has it. */
export function digitViews(
  examination: Examination,
  limb: DigitLimb,
  words: Messages,
  earlier?: Examination,
): readonly DigitView[] {
  return DIGITS.map((digit): DigitView => {
    const now = stand(examination, limb, digit, words);
    const before = earlier && stand(earlier, limb, digit, words);
    const known = before?.state && before.state !== now.state ? words.map.earlierFinding(before.said) : '';
    const name = `${digitWord(limb, digit, words)}: ${now.said}${known && `; ${known}`}`;
    return { digit, ...now, earlier: known, name };
  });
}

/** Whether any digit of a limb was looked at. */
export const isAnySeen = (views: readonly DigitView[]): boolean =>
  views.some(({ kind }) => kind !== 'not-examined' && kind !== 'could-not');

/** What is recorded of the digits of a limb, in one line: "Left fingers: thumb gangrene; others not examined". */
export function digitsSaid(views: readonly DigitView[], limb: DigitLimb, words: Messages): string {
  const { marks } = words;
  const seen = views.filter(({ kind }) => kind !== 'not-examined');
  const same = seen.length === views.length && new Set(views.map(({ said }) => said)).size === 1;
  const bare = (digit: Digit): string => marks.where([{ ...regionOf(limb, digit), side: 'midline' }]);
  const each = seen.map(({ digit, said, earlier }) =>
    [`${bare(digit)} ${said}`, earlier && `(${earlier})`].filter(Boolean).join(' '),
  );
  const changed = views.some(({ earlier }) => earlier);
  const text =
    seen.length === 0
      ? words.examination.notExamined
      : same && !changed
        ? (views[0]?.said ?? '')
        : [each.join(', '), seen.length < views.length ? marks.otherDigits() : ''].filter(Boolean).join('; ');
  return `${digitsWord(limb, words)}: ${text}`;
}

/** A fingertip. */
const TIP = 'M5.5 9.5A6.5 6.5 0 0 1 18.5 9.5V14.5A6.5 6.5 0 0 1 5.5 14.5Z';
const line: GlyphPart = { d: TIP, paint: 'line' };

/** The glyphs of the digits in a 24-unit box; their shape differs from those of pulses, and each from the others without colour. */
export const DIGIT_GLYPHS: Readonly<Record<DigitKind, readonly [GlyphPart, GlyphPart?]>> = {
  normal: [line, { d: 'M9 12.2 11.2 14.6 15 9.4', paint: 'bar' }],
  pale: [line],
  blue: [line, { d: 'M6.5 8.6H17.5M5.8 12H18.2M6.5 15.4H17.5', paint: 'bar' }],
  ulcer: [line, { d: 'M9 12A3 3 0 1 0 15 12A3 3 0 1 0 9 12Z', paint: 'bar' }],
  gangrene: [{ d: TIP, paint: 'fill' }],
  'could-not': [line, { d: 'M9 12H15', paint: 'bar' }],
  'not-examined': [{ d: TIP, paint: 'dash' }],
  unknown: [
    { d: TIP, paint: 'dash' },
    {
      d: 'M9.9 9.8C9.9 8.4 10.8 7.6 12 7.6S14.1 8.4 14.1 9.7C14.1 11.4 12 11.6 12 13.4M12 16.2V16.3',
      paint: 'bar',
    },
  ],
};

const SOUND = { fill: 'paper', stroke: 'pulse', width: 1.8 } as const;
const WRONG = { fill: 'paper', stroke: 'ink', width: 2 } as const;
const UNSEEN = { fill: 'paper', stroke: 'mute', width: 1.6 } as const;

/** The paint of their parts. */
export const DIGIT_PAINT = {
  '.tip path': { fill: 'none', cap: 'round', join: 'round' },
  '.tip .halo': { fill: 'body', stroke: 'body', width: 6 },
  '.t-normal .line': SOUND,
  '.t-normal .bar': { stroke: 'pulse', width: 2 },
  '.t-pale .line': WRONG,
  '.t-blue .line': WRONG,
  '.t-blue .bar': { stroke: 'ink', width: 1.5 },
  '.t-ulcer .line': { fill: 'weak', stroke: 'weak-edge', width: 2 },
  '.t-ulcer .bar': { fill: 'paper', stroke: 'weak-ink', width: 1.8 },
  '.t-gangrene .fill': { fill: 'gone', stroke: 'gone', width: 1 },
  '.t-could-not .line': UNSEEN,
  '.t-could-not .bar': { stroke: 'mute', width: 2 },
  '.t-not-examined .dash': { ...UNSEEN, dash: '2.35 2.05', cap: 'butt' },
  '.t-unknown .dash': { ...UNSEEN, dash: '2.35 2.05', cap: 'butt' },
  '.t-unknown .bar': { stroke: 'mute', width: 1.6 },
} as const satisfies PaintTable;
