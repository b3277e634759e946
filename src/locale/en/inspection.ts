import type {
  Digit,
  DigitState,
  GangreneExtent,
  InfectionSign,
  LegInspection,
  Movement,
  Sensation,
  SystemicSign,
  ThrombosisSign,
  UlcerCause,
  UlcerDepth,
  UlcerPlace,
} from '../../examination/index.js';
import type { InspectionStatement } from '../../statements/index.js';
import { render, type Renderings } from '../render.js';
import { examination } from './examination.js';
import { signs as recorded } from './grounds.js';
import { decimal, sentence } from './phrases.js';
import { skinLevels } from './skin-levels.js';
import { terms } from './terms.js';

type Word<K extends keyof LegInspection> = NonNullable<LegInspection[K]> & string;

const colours: Record<Word<'colour'>, string> = {
  normal: 'normal',
  pale: 'pale',
  red: 'red',
  blue: 'blue',
  mottled: 'mottled, blanching',
  'fixed-mottled': 'mottled, fixed',
};
const temperatures: Record<Word<'temperature'>, string> = { warm: 'warm', cool: 'cool', cold: 'cold' };
const hair: Record<Word<'hair'>, string> = { normal: 'normal', sparse: 'sparse', absent: 'absent' };
const nails: Record<Word<'nails'>, string> = { normal: 'normal', thickened: 'thickened', brittle: 'brittle' };
const muscle: Record<Word<'muscle'>, string> = {
  normal: 'normal',
  wasted: 'wasted',
  tender: 'tender',
  tense: 'tense',
  rigid: 'rigid',
};
const oedema: Record<Word<'oedema'>, string> = { none: 'none', pitting: 'pitting', firm: 'firm' };
const lymphNodes: Record<Word<'lymphNodes'>, string> = {
  none: 'not felt',
  enlarged: 'enlarged',
  tender: 'tender',
};
const ulcers: Record<UlcerDepth, string> = {
  none: 'none',
  shallow: 'shallow',
  deep: 'deep, to bone, joint or tendon',
  extensive: 'deep and extensive',
};
const ulcerPlaces: Record<UlcerPlace, string> = {
  digits: 'toes or fingers',
  forefoot: 'forefoot',
  midfoot: 'midfoot',
  heel: 'heel',
  ankle: 'ankle',
  shin: 'shin',
  sole: 'sole',
  'back-of-leg': 'back of the leg',
  other: 'elsewhere',
};
const gangrene: Record<Word<'gangrene'>, string> = { none: 'none', dry: 'dry', wet: 'wet' };
const extents: Record<GangreneExtent, string> = {
  digits: 'toes or fingers only',
  forefoot: 'forefoot or hand',
  midfoot: 'midfoot',
  heel: 'heel',
  'above-foot': 'above the foot or hand',
};
const infection: Record<InfectionSign, string> = {
  swelling: 'swelling',
  redness: 'redness',
  tenderness: 'tenderness',
  warmth: 'warmth',
  pus: 'pus',
};
const systemic: Record<SystemicSign, string> = {
  temperature: 'temperature over 38 or under 36 °C',
  'heart-rate': 'heart rate over 90',
  breathing: 'over 20 breaths a minute',
  'white-cells': 'white cells over 12 or under 4',
};
const movements: Record<Movement, string> = { normal: 'normal', weak: 'weak', paralysed: 'paralysed' };
const sensations: Record<Sensation, string> = {
  normal: 'normal',
  digits: 'lost in toes or fingers only',
  'beyond-digits': 'lost beyond toes or fingers',
  lost: 'lost altogether',
};
const venous: Record<Word<'venousDoppler'>, string> = { audible: 'audible', inaudible: 'not audible' };
const ulcerCauses: Record<UlcerCause, string> = {
  arterial: 'arterial',
  venous: 'venous',
  neuropathic: 'neuropathic',
  mixed: 'mixed',
  other: 'other',
  unknown: 'not known',
};
const digits: Record<Digit, string> = {
  first: 'great toe or thumb',
  second: 'second digit',
  third: 'third digit',
  fourth: 'fourth digit',
  fifth: 'little toe or finger',
};
const digitStates: Record<DigitState, string> = {
  normal: 'normal',
  pale: 'pale',
  blue: 'blue',
  ulcer: 'ulcer',
  gangrene: 'gangrene',
};
const thrombosisSigns: Record<ThrombosisSign, string> = {
  'whole-limb-swollen': 'whole limb swollen',
  'calf-wider': 'calf more than 3 cm wider',
  'one-sided-pitting': 'pitting on one side only',
  'tender-along-veins': 'tender along the deep veins',
  'surface-veins': 'collateral surface veins',
};
const filament: Record<Word<'monofilament'>, string> = {
  felt: 'felt',
  reduced: 'felt in part',
  'not-felt': 'not felt',
};

const signs = (words: readonly string[]): string => words.join(', ') || 'none';

const statements: Renderings<InspectionStatement> = {
  couldNotExamine: ({ value }) => examination.couldNot(value),
  colour: ({ value }) => `colour ${colours[value]}`,
  temperature: ({ temperature, from }) =>
    `${temperatures[temperature]}${from ? ` from the ${skinLevels[from]} down` : ''}`,
  refill: ({ value }) => `capillary refill ${decimal(value)} s`,
  hair: ({ value }) => `hair ${hair[value]}`,
  nails: ({ value }) => `nails ${nails[value]}`,
  muscle: ({ value }) => `muscle ${muscle[value]}`,
  oedema: ({ value }) => `${terms.oedema} ${oedema[value]}`,
  ulcer: ({ depth, at }) => `ulcer ${ulcers[depth]}${at ? `, ${ulcerPlaces[at]}` : ''}`,
  gangrene: ({ gangrene: kind, extent }) =>
    `gangrene ${gangrene[kind]}${extent ? `, ${extents[extent]}` : ''}`,
  infection: ({ value }) => `signs of infection: ${signs(value.map((sign) => infection[sign]))}`,
  rednessCm: ({ value }) => `redness reaches ${decimal(value)} cm`,
  deepInfection: ({ value }) =>
    value ? 'infection deeper than the skin' : 'infection not deeper than the skin',
  systemic: ({ value }) => `signs of the whole body: ${signs(value.map((sign) => systemic[sign]))}`,
  ulcerCause: ({ value }) => `cause of the ulcer: ${ulcerCauses[value]}`,
  ulcerSizeMm: ({ value }) => `ulcer ${decimal(value)} mm across`,
  digit: ({ digit, state }) => `${digits[digit]}: ${digitStates[state]}`,
  probeToBone: ({ value }) => (value ? 'probe touches bone' : 'probe does not touch bone'),
  charcotSuspected: ({ value }) =>
    value ? 'hot swollen foot, Charcot foot suspected' : 'no hot swollen foot',
  deficitKnown: 'loss of power or feeling is old and unchanged',
  monofilament: ({ value }) => `10 g filament ${filament[value]}`,
  stretchPain: ({ value }) => (value ? 'pain on passive stretch' : 'no pain on passive stretch'),
  painOutOfProportion: ({ value }) => (value ? 'pain out of proportion' : 'no pain out of proportion'),
  reperfused: 'flow restored recently',
  injurySigns: ({ value }) =>
    `signs of arterial injury: ${signs(value.map((sign) => recorded.injury[sign]))}`,
  falseAneurysmSigns: ({ value }) =>
    `swelling over the artery: ${signs(value.map((sign) => recorded.falseAneurysm[sign]))}`,
  varices: ({ value }) => (value ? 'varicose veins' : 'no varicose veins'),
  pigment: ({ value }) => (value ? 'brown pigment' : 'no brown pigment'),
  thrombosisSigns: ({ value }) =>
    `signs of deep vein thrombosis: ${signs(value.map((sign) => thrombosisSigns[sign]))}`,
  movement: ({ value }) => `movement ${movements[value]}`,
  sensation: ({ value }) => `feeling ${sensations[value]}`,
  venousDoppler: ({ value }) => `venous Doppler signal ${venous[value]}`,
  lymphNodes: ({ value }) => `lymph nodes ${lymphNodes[value]}`,
  note: ({ value }) => `note: ${value}`,
};

export const inspection = {
  title: 'Inspection and touch',
  skin: 'Skin',
  wounds: 'Wounds and infection',
  nerves: 'Movement and feeling',
  rest: 'Nutrition and the rest',
  colour: 'Colour',
  colours,
  temperature: 'Temperature',
  temperatures,
  temperatureLevel: 'Changes at',
  levels: skinLevels,
  refill: 'Capillary refill',
  refillSaid: {
    short: () => 'up to 2 s. Compare with the other limb; of little value for arterial disease.',
    'over-traditional': (limit: number) =>
      `over 2 s, within the 95% limit of healthy people of this age (${limit} s). Compare with the other limb; of little value for arterial disease.`,
    slow: (limit: number) =>
      `over 2 s and over ${limit} s, the 95% limit of healthy people of this age. Compare with the other limb.`,
  },
  refillHow: 'Press a fingertip-sized patch for 5 seconds; count until the colour is back.',
  seconds: 's',
  hair: 'Hair',
  hairOptions: hair,
  nails: 'Nails',
  nailOptions: nails,
  muscle: 'Muscle',
  muscleOptions: muscle,
  get oedema() {
    return sentence(terms.oedema);
  },
  oedemaOptions: oedema,
  lymphNodes: 'Lymph nodes',
  lymphNodeOptions: lymphNodes,
  ulcer: 'Ulcer',
  ulcers,
  ulcerOptions: {
    none: 'none',
    shallow: 'shallow',
    deep: 'to bone or tendon',
    extensive: 'deep, extensive',
  } satisfies Record<UlcerDepth, string>,
  ulcerPlace: 'Ulcer lies at',
  ulcerPlaces,
  gangrene: 'Gangrene',
  gangreneOptions: gangrene,
  gangreneExtent: 'Gangrene reaches',
  extents,
  extentOptions: {
    leg: {
      digits: 'toes',
      forefoot: 'forefoot',
      midfoot: 'midfoot',
      heel: 'heel',
      'above-foot': 'above the foot',
    },
    arm: { digits: 'fingers', forefoot: 'hand', 'above-foot': 'above the hand' },
  } satisfies Record<'leg' | 'arm', Partial<Record<GangreneExtent, string>>>,
  infection: 'Signs of infection',
  infectionOptions: infection,
  noInfection: 'None',
  rednessCm: 'Redness reaches',
  centimetres: 'cm',
  deepInfection: 'Deeper than the skin',
  systemic: 'Whole body',
  systemicOptions: systemic,
  systemicShort: {
    temperature: '> 38 or < 36 °C',
    'heart-rate': 'heart rate > 90',
    breathing: 'breaths > 20',
    'white-cells': 'white cells > 12 or < 4',
  } satisfies Record<SystemicSign, string>,
  movement: 'Movement',
  movements,
  sensation: 'Feeling',
  sensations,
  /** Shorter words for the buttons, by kind of limb. */
  sensationOptions: {
    leg: {
      normal: 'normal',
      digits: 'lost in toes',
      'beyond-digits': 'lost beyond toes',
      lost: 'lost altogether',
    },
    arm: {
      normal: 'normal',
      digits: 'lost in fingers',
      'beyond-digits': 'lost beyond fingers',
      lost: 'lost altogether',
    },
  } satisfies Record<'leg' | 'arm', Record<Sensation, string>>,
  venousDoppler: 'Venous Doppler',
  venous,
  ulcerCause: 'Cause of the ulcer',
  ulcerCauses,
  ulcerSize: 'Ulcer across',
  millimetres: 'mm',
  probeToBone: 'Probe touches bone',
  charcot: 'Charcot foot suspected',
  yesNo: { yes: 'yes', no: 'no' },
  deficit: 'Loss of power or feeling',
  deficitKnown: 'old and unchanged',
  filament: '10 g filament on the sole',
  filamentOptions: filament,
  compartmentOf: { leg: 'Compartment and injury, legs', arm: 'Compartment and injury, arms' },
  stretchPain: 'Pain on passive stretch',
  outOfProportion: 'Pain out of proportion',
  flow: 'Flow',
  reperfused: 'restored recently',
  injurySigns: 'Signs of arterial injury',
  injuryOptions: recorded.injuryOf,
  falseAneurysm: 'Swelling at a puncture or graft',
  falseAneurysmOptions: recorded.falseAneurysm,
  digitsOf: { leg: 'Toes one by one', arm: 'Fingers one by one' },
  digits: {
    leg: {
      first: 'Great toe',
      second: 'Second toe',
      third: 'Third toe',
      fourth: 'Fourth toe',
      fifth: 'Little toe',
    },
    arm: {
      first: 'Thumb',
      second: 'Index finger',
      third: 'Middle finger',
      fourth: 'Ring finger',
      fifth: 'Little finger',
    },
  } satisfies Record<'leg' | 'arm', Record<Digit, string>>,
  digitStates,
  veins: 'Veins',
  varices: 'Varicose veins',
  pigment: 'Brown pigment',
  thrombosisSigns: 'Signs of deep vein thrombosis',
  thrombosisOptions: thrombosisSigns,
  couldNotExamine: 'Could not examine',
  note: 'Note',
  limb: (statement: InspectionStatement) => render(statements, statement),
};
export type InspectionWords = typeof inspection;
