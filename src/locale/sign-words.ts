import type {
  AccessSign,
  AneurysmPlace,
  ArterialDevice,
  FalseAneurysmSign,
  GraftInfectionSign,
  GraftRoute,
  InjurySign,
  SymptomElsewhere,
  ThrombosisSign,
} from '../examination/index.js';
import { wordFor } from './words.js';

type Of<K extends string> = Readonly<Record<K, string>>;

/** Which arm or leg signs a limb can show: each kind has a dislocation of its own. */
type InjuryOf = Readonly<Record<'leg' | 'arm', Partial<Of<InjurySign>>>>;

/** The words of signs that flags, controls and summary share: a sign is called the same everywhere. */
export interface SignWords {
  readonly elsewhere: Of<SymptomElsewhere>;
  readonly injury: Of<InjurySign>;
  readonly injuryOf: InjuryOf;
  readonly falseAneurysm: Of<FalseAneurysmSign>;
  readonly access: Of<AccessSign>;
  /** Without `other`, which is said in each place in its own way. */
  readonly aneurysms: Of<Exclude<AneurysmPlace, 'other'>>;
  readonly devices: Of<ArterialDevice>;
  readonly graft: Of<GraftInfectionSign>;
  readonly routes: Of<GraftRoute>;
  readonly thrombosis: Of<ThrombosisSign>;
}

/**
 * Picks these words from a language's words of recorded values.
 * @param word the word of a value
 */
export function signWords(word: (value: string) => string): SignWords {
  // Looked up when they are read, as a word may differ by register.
  const of = <K extends string>(...values: readonly K[]): Of<K> => wordFor(values, word);
  const EITHER = [
    'pulsatile-bleeding',
    'expanding-haematoma',
    'bleeding-at-scene',
    'stable-haematoma',
    'near-artery',
  ] as const;
  return {
    elsewhere: of(
      'abdominal-pain',
      'back-pain',
      'loin-pain',
      'collapse',
      'sudden-chest-or-back-pain',
      'passing-stroke',
      'passing-blindness',
      'deficit-now',
    ),
    injury: of(...EITHER, 'knee-dislocation', 'elbow-dislocation-or-supracondylar'),
    injuryOf: {
      leg: of(...EITHER, 'knee-dislocation'),
      arm: of(...EITHER, 'elbow-dislocation-or-supracondylar'),
    },
    falseAneurysm: of('growing', 'painful', 'skin-thin', 'infected'),
    access: of('bleeding', 'thin-skin-or-ulcer', 'no-thrill'),
    aneurysms: of('thoracic-aorta', 'abdominal-aorta', 'iliac', 'femoral', 'popliteal', 'subclavian'),
    devices: of('arterial-line', 'radial-catheter', 'femoral-sheath'),
    graft: of('sinus', 'discharge', 'redness', 'exposed', 'bleeding'),
    routes: of('axillo-femoral', 'cross-over'),
    thrombosis: of(
      'whole-limb-swollen',
      'calf-wider',
      'one-sided-pitting',
      'tender-along-veins',
      'surface-veins',
    ),
  };
}
