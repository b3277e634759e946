import {
  type Digit,
  DIGITS,
  type DigitState,
  foundGangrene,
  foundUlcer,
  type UlcerCause,
} from '../examination/index.js';
import type { LimbFacts } from './facts.js';
import { given, type Ground } from './ground.js';
import type { Disease } from './disease.js';
import type { InspectionFacts } from './record.js';

/** Causes that make an ulcer count as one of the arteries without further proof of its cause. */
const ARTERIAL: readonly (UlcerCause | undefined)[] = ['arterial', 'mixed'];
const OTHER_CAUSE: readonly (UlcerCause | undefined)[] = ['venous', 'neuropathic', 'other'];

/** The wounds of a limb: what is there, what was not looked at, and whether the ulcer's cause is another than the arteries. */
export interface Wounds {
  readonly ulcer: boolean;
  readonly gangrene: boolean;
  /** Told as the symptom, while no wound was inspected. */
  readonly toldOnly: boolean;
  /** On the foot, or its place not stated. */
  readonly onFoot: boolean;
  readonly otherCause: boolean;
  readonly arterialCause: boolean;
  /** Neither the ulcer field nor the gangrene field leaves a wound open. */
  readonly looked: boolean;
  readonly because: readonly Ground[];
}

const LEG_PLACES: readonly InspectionFacts['ulcerPlace'][] = ['shin', 'ankle', 'back-of-leg'];

/** The fingers or toes in one state. */
export function digitsIn({ digits = {} }: InspectionFacts, state: DigitState): Digit[] {
  return DIGITS.filter((digit) => digits[digit] === state);
}

const ofDigits = (inspection: InspectionFacts, state: DigitState): Ground[] => {
  const digits = digitsIn(inspection, state);
  return given(digits.length, { code: 'digits', state, digits } as const);
};

/** The ulcers of a limb: the worst, else those of its fingers or toes. */
export function ulcerGrounds(inspection: InspectionFacts): Ground[] {
  const { ulcer: depth, ulcerPlace: place, ulcerCause: cause } = inspection;
  return depth && depth !== 'none' ? [{ code: 'ulcer', depth, place, cause }] : ofDigits(inspection, 'ulcer');
}

/** The gangrene of a limb, and the fingers or toes that have it. */
export function gangreneGrounds(inspection: InspectionFacts): Ground[] {
  const { gangrene: kind, gangreneExtent: extent } = inspection;
  return [
    ...(kind && kind !== 'none' ? [{ code: 'gangrene', kind, extent } as const] : []),
    ...ofDigits(inspection, 'gangrene'),
  ];
}

export function woundsOf({ inspection, history }: Pick<LimbFacts, 'inspection' | 'history'>): Wounds {
  const { ulcerPlace, ulcerCause } = inspection;
  const ulcer = foundUlcer(inspection);
  const gangrene = foundGangrene(inspection);
  const toldOnly = history.symptom === 'tissue-loss' && !ulcer && !gangrene;
  return {
    ulcer,
    gangrene,
    toldOnly,
    onFoot: !LEG_PLACES.includes(ulcerPlace),
    otherCause: OTHER_CAUSE.includes(ulcerCause),
    arterialCause: ARTERIAL.includes(ulcerCause),
    looked: inspection.ulcer !== undefined && inspection.gangrene !== undefined,
    because: [
      ...given(history.symptom === 'tissue-loss', { code: 'symptom', value: 'tissue-loss' } as const),
      ...ulcerGrounds(inspection),
      ...gangreneGrounds(inspection),
    ],
  };
}

/**
 * Whether a limb's tissue loss is one of the arteries: certainly, possibly (then a stage keeps both open), or not. An ulcer of another
 * cause counts only where arterial disease is proven.
 */
export function countsAsTissueLoss(wounds: Wounds, { state }: Disease): 'yes' | 'open' | 'no' {
  const diseased = state === 'proven' || state === 'probable';
  if (wounds.gangrene) return state === 'not-shown' ? 'open' : 'yes';
  if (wounds.ulcer) {
    if (wounds.arterialCause) return 'yes';
    if (wounds.otherCause) return state === 'proven' ? 'yes' : 'no';
    return diseased ? 'yes' : state === 'not-shown' ? 'no' : 'open';
  }
  return wounds.toldOnly ? 'open' : 'no';
}
