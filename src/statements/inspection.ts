import {
  type ArmInspection,
  type Digit,
  DIGITS,
  type DigitState,
  type LegInspection,
} from '../examination/index.js';
import { type FieldStatement, fieldStatements, stated } from './stated.js';

/** The fields of a leg and of an arm; some only one of them has. */
type Inspection = {
  readonly [K in keyof LegInspection | keyof ArmInspection]?:
    | (K extends keyof LegInspection ? LegInspection[K] : never)
    | (K extends keyof ArmInspection ? ArmInspection[K] : never);
};
type Recorded<K extends keyof Inspection> = NonNullable<Inspection[K]>;

const BEFORE_ULCER = ['refill', 'hair', 'nails', 'muscle', 'oedema'] as const;
const AFTER_GANGRENE = [
  'infection',
  'rednessCm',
  'deepInfection',
  'probeToBone',
  'charcotSuspected',
  'systemic',
  'movement',
  'sensation',
  'deficitKnown',
  'monofilament',
  'stretchPain',
  'painOutOfProportion',
  'reperfused',
  'injurySigns',
  'falseAneurysmSigns',
  'venousDoppler',
  'vertebralFlow',
  'varices',
  'pigment',
  'thrombosisSigns',
  'lymphoedema',
  'lymphNodes',
  'note',
] as const;

/** Something seen or felt on one limb. */
export type InspectionStatement =
  | FieldStatement<
      Inspection,
      | 'couldNotExamine'
      | 'colour'
      | (typeof BEFORE_ULCER)[number]
      | 'ulcerCause'
      | 'ulcerSizeMm'
      | (typeof AFTER_GANGRENE)[number]
    >
  | {
      readonly code: 'temperature';
      readonly temperature: Recorded<'temperature'>;
      /** From where down. */
      readonly from?: Recorded<'temperatureLevel'>;
    }
  | { readonly code: 'ulcer'; readonly depth: Recorded<'ulcer'>; readonly at?: Recorded<'ulcerPlace'> }
  | {
      readonly code: 'gangrene';
      readonly gangrene: Recorded<'gangrene'>;
      readonly extent?: Recorded<'gangreneExtent'>;
    }
  | {
      readonly code: 'digit';
      /** Whether it is a toe or a finger. */
      readonly of: 'leg' | 'arm';
      readonly digit: Digit;
      readonly state: DigitState;
    };

/** Everything recorded of one limb, in the order of the form. */
export function inspectionStatements(
  limb: LegInspection | ArmInspection,
  kind: 'leg' | 'arm',
): InspectionStatement[] {
  const found: Inspection = limb;
  const { temperatureLevel, ulcerPlace, gangreneExtent } = found;
  return [
    ...fieldStatements(found, ['couldNotExamine', 'colour']),
    ...stated(found.temperature, (temperature) => ({
      code: 'temperature' as const,
      temperature,
      ...(temperatureLevel && { from: temperatureLevel }),
    })),
    ...fieldStatements(found, BEFORE_ULCER),
    ...stated(found.ulcer, (depth) => ({
      code: 'ulcer' as const,
      depth,
      ...(ulcerPlace && { at: ulcerPlace }),
    })),
    ...fieldStatements(found, ['ulcerCause', 'ulcerSizeMm']),
    ...DIGITS.flatMap((digit) =>
      stated(found.digits?.[digit], (state) => ({ code: 'digit' as const, of: kind, digit, state })),
    ),
    ...stated(found.gangrene, (gangrene) => ({
      code: 'gangrene' as const,
      gangrene,
      ...(gangreneExtent && { extent: gangreneExtent }),
    })),
    ...fieldStatements(found, AFTER_GANGRENE),
  ];
}
