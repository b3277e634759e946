import type { ArteryId, Laterality, PlaceKey, Side } from '../anatomy/index.js';
import type {
  AcuteClass,
  FontaineStage,
  Gangrene,
  GangreneExtent,
  InfectionSign,
  InjuryPlace,
  LimbInspection,
  Mechanism,
  Movement,
  PressureSite,
  RutherfordCategory,
  Sensation,
  Severity,
  Symptom,
  SystemicSign,
  UlcerDepth,
  VenousSignal,
  AccessSign,
  AneurysmPlace,
  ArterialDevice,
  Digit,
  DigitState,
  FalseAneurysmSign,
  GraftInfectionSign,
  InjurySign,
  SymptomElsewhere,
  ThrombosisSign,
  UlcerCause,
  VolumeCurve,
} from '../examination/index.js';
import type { InspectionFacts, StagedLimb } from './record.js';

/** Which of the pressures that support a threatened limb. */
export type ThreatMeasure = 'ankle' | 'toe' | 'tcpo2' | 'index';

/** One finding a stage or a flag rests on. */
export type Ground =
  | { readonly code: 'symptom'; readonly value: Symptom }
  | { readonly code: 'severity'; readonly value: Severity }
  | { readonly code: 'distance'; readonly metres: number; readonly limit: number }
  | { readonly code: 'sudden-pain' | 'new-complaint' | 'onset-acute' | 'onset-unknown' }
  | { readonly code: 'hours'; readonly hours: number }
  | { readonly code: 'sensation'; readonly value: Sensation }
  | { readonly code: 'movement'; readonly value: Movement }
  | { readonly code: 'arterial'; readonly value: 'audible' | 'inaudible' }
  | { readonly code: 'venous'; readonly value: VenousSignal }
  | { readonly code: 'colour'; readonly value: NonNullable<LimbInspection['colour']> }
  | { readonly code: 'temperature'; readonly value: NonNullable<LimbInspection['temperature']> }
  | { readonly code: 'muscle'; readonly value: NonNullable<InspectionFacts['muscle']> }
  | { readonly code: 'oedema'; readonly value: NonNullable<LimbInspection['oedema']> }
  | { readonly code: 'thrombosis-signs'; readonly signs: readonly ThrombosisSign[] }
  | { readonly code: 'volume-curve'; readonly shape: VolumeCurve }
  | { readonly code: 'refill'; readonly seconds: number; readonly limit: number }
  | {
      readonly code: 'ulcer';
      readonly depth: UlcerDepth;
      readonly place?: InspectionFacts['ulcerPlace'];
      readonly cause?: UlcerCause | undefined;
    }
  | { readonly code: 'gangrene'; readonly kind: Gangrene; readonly extent?: GangreneExtent | undefined }
  | { readonly code: 'digits'; readonly state: DigitState; readonly digits: readonly Digit[] }
  | { readonly code: 'infection-signs'; readonly signs: readonly InfectionSign[] }
  | { readonly code: 'systemic'; readonly signs: readonly SystemicSign[] }
  | { readonly code: 'redness'; readonly cm: number }
  | {
      readonly code:
        | 'no-infection-signs'
        | 'deep-infection'
        | 'probe-to-bone'
        | 'charcot'
        | 'stretch-pain'
        | 'pain-out-of-proportion'
        | 'reperfused'
        | 'cold-fingers'
        | 'ulnar-release-white'
        | 'shock'
        | 'diabetes'
        | 'connective-tissue-disease'
        | 'no-end-pressure';
    }
  | {
      readonly code: 'pulses-absent' | 'pulses-reduced' | 'expansile' | 'bounding' | 'thrill' | 'bruit';
      readonly places: readonly PlaceKey[];
    }
  | { readonly code: 'delay'; readonly between: 'radio-radial' | 'radio-femoral' }
  | { readonly code: 'injury'; readonly place: InjuryPlace }
  | { readonly code: 'injury-signs'; readonly signs: readonly InjurySign[] }
  | { readonly code: 'false-aneurysm-signs'; readonly signs: readonly FalseAneurysmSign[] }
  | { readonly code: 'mechanism'; readonly value: Mechanism }
  | { readonly code: 'known-aneurysm'; readonly place?: AneurysmPlace; readonly side?: Side | undefined }
  | {
      readonly code: 'graft';
      readonly kind: string;
      readonly artery: ArteryId;
      readonly side: Laterality;
      readonly pulse?: 'present' | 'absent' | undefined;
    }
  | { readonly code: 'graft-infection-signs'; readonly signs: readonly GraftInfectionSign[] }
  | { readonly code: 'access'; readonly signs: readonly AccessSign[] }
  | { readonly code: 'device'; readonly kind: ArterialDevice }
  | { readonly code: 'cold-injury'; readonly hours?: number | undefined }
  | { readonly code: 'elsewhere'; readonly symptoms: readonly SymptomElsewhere[] }
  | { readonly code: 'arm-difference'; readonly mmHg: number; readonly lower: Side }
  | { readonly code: 'limbs'; readonly limbs: readonly StagedLimb[] }
  | { readonly code: 'own-class'; readonly stage: AcuteClass }
  | { readonly code: 'own-fontaine'; readonly stage: FontaineStage }
  | { readonly code: 'own-rutherford'; readonly stage: RutherfordCategory }
  | { readonly code: 'walk-completed' | 'walk-not-completed'; readonly mmHg: number }
  | { readonly code: 'ankle-pressure' | 'toe-pressure'; readonly mmHg: number; readonly limit?: number }
  | {
      readonly code: 'ankle-index' | 'toe-index' | 'forearm-index';
      readonly value: number;
      readonly limit?: number;
    }
  | { readonly code: 'tcpo2'; readonly mmHg: number }
  | {
      readonly code: 'threat';
      readonly measure: ThreatMeasure;
      /** mmHg, or the ankle index. */
      readonly value: number;
      readonly limit: number;
      /** The ankle artery it was taken from, told where its sister cannot be compressed. */
      readonly artery?: PressureSite | undefined;
    }
  | { readonly code: 'wound' | 'ischaemia' | 'infection'; readonly grade: number };
export type GroundCode = Ground['code'];

/** The items where a condition holds, else none. */
export function given<const T>(condition: unknown, ...items: readonly T[]): T[] {
  return condition ? [...items] : [];
}
