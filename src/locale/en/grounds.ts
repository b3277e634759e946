import { placeFromKey, type PlaceKey } from '../../anatomy/index.js';
import type { Ground, StagedLimb } from '../../triage/index.js';
import { render, type Renderings } from '../render.js';
import { signWords } from '../sign-words.js';
import { anatomy } from './anatomy.js';
import { decimal, list } from './phrases.js';
import { terms } from './terms.js';

const VALUES: Readonly<Record<string, string>> = {
  get claudication() {
    return terms.claudication;
  },
  'rest-pain': 'rest pain',
  'tissue-loss': 'tissue loss',
  none: 'none',
  normal: 'normal',
  weak: 'weak',
  paralysed: 'paralysed',
  audible: 'audible',
  inaudible: 'inaudible',
  shallow: 'shallow',
  deep: 'deep',
  extensive: 'deep and extensive',
  dry: 'dry',
  wet: 'wet',
  digits: 'toes or fingers',
  forefoot: 'forefoot or hand',
  midfoot: 'midfoot',
  heel: 'heel',
  sole: 'sole',
  ankle: 'ankle',
  shin: 'shin',
  'back-of-leg': 'back of the leg',
  other: 'other site',
  'above-foot': 'above the foot or hand',
  pale: 'pale',
  red: 'red',
  blue: 'blue',
  mottled: 'mottled',
  'fixed-mottled': 'fixed mottling',
  warm: 'warm',
  cool: 'cool',
  cold: 'cold',
  tense: 'tense',
  rigid: 'rigid',
  tender: 'tender',
  wasted: 'wasted',
  pitting: 'pitting',
  firm: 'firm',
  embolic: 'embolism',
  thrombotic: 'thrombosis',
  dissection: 'aortic dissection',
  vasculitis: 'vasculitis',
  buerger: 'thromboangiitis obliterans',
  vasospasm: 'vasospasm',
  compression: 'compression',
  injury: 'injury',
  pelvis: 'pelvis',
  groin: 'groin',
  thigh: 'thigh',
  knee: 'knee',
  'lower-leg': 'lower leg',
  'ankle-foot': 'ankle or foot',
  shoulder: 'shoulder',
  'upper-arm': 'upper arm',
  elbow: 'elbow',
  forearm: 'forearm',
  'wrist-hand': 'wrist or hand',
  temperature: 'temperature above 38 or below 36 °C',
  'heart-rate': 'heart rate above 90/min',
  breathing: 'respiratory rate above 20/min',
  'white-cells': 'white cells above 12 or below 4 × 10⁹/L',
  swelling: 'swelling',
  redness: 'redness',
  tenderness: 'tenderness',
  warmth: 'warmth',
  pus: 'pus',
  mild: 'mild',
  moderate: 'moderate',
  severe: 'severe',
  arterial: 'arterial',
  venous: 'venous',
  neuropathic: 'neuropathic',
  mixed: 'mixed',
  unknown: 'of unknown cause',
  first: 'first',
  second: 'second',
  third: 'third',
  fourth: 'fourth',
  fifth: 'fifth',
  'pulsatile-bleeding': 'pulsatile bleeding',
  'expanding-haematoma': 'expanding or pulsatile haematoma',
  'bleeding-at-scene': 'bleeding at the scene',
  'stable-haematoma': 'small stable haematoma',
  'near-artery': 'wound near a named artery',
  'knee-dislocation': 'knee dislocation',
  'elbow-dislocation-or-supracondylar': 'elbow dislocation or supracondylar fracture',
  growing: 'growing',
  painful: 'painful',
  'skin-thin': 'thin skin',
  infected: 'infected',
  sinus: 'sinus',
  discharge: 'discharge',
  exposed: 'exposed graft',
  bleeding: 'bleeding',
  'thin-skin-or-ulcer': 'thin or ulcerated skin',
  'no-thrill': 'no thrill',
  'arterial-line': 'arterial line',
  'radial-catheter': 'radial catheter',
  'femoral-sheath': 'femoral sheath',
  'abdominal-pain': 'abdominal pain',
  'back-pain': 'back pain',
  'loin-pain': 'loin pain',
  collapse: 'collapse',
  'sudden-chest-or-back-pain': 'sudden chest or back pain',
  'passing-stroke': 'transient stroke symptoms',
  'passing-blindness': 'transient loss of vision in one eye',
  'deficit-now': 'stroke symptoms present now',
  'thoracic-aorta': 'thoracic aorta',
  'abdominal-aorta': 'abdominal aorta',
  iliac: 'iliac artery',
  femoral: 'femoral artery',
  popliteal: 'popliteal artery',
  subclavian: 'subclavian artery',
  bypass: 'bypass',
  stent: 'stent',
  'axillo-femoral': 'axillofemoral bypass',
  'cross-over': 'crossover bypass',
};

const word = (value: string | undefined): string => (value && VALUES[value]) ?? value ?? '';
const words = (values: readonly string[]): string => list(values.map(word));

/** Words of signs for controls and summary. */
export const signs = signWords(word);

const places = (keys: readonly PlaceKey[]): string =>
  list(
    keys.map((key) => {
      const place = placeFromKey(key);
      return place ? anatomy.place(place) : key;
    }),
  );
const limbs = (of: readonly StagedLimb[]): string =>
  list(of.map(({ kind, side }) => anatomy.limbs[`${side} ${kind}`]));
const below = (limit: number | undefined): string => (limit === undefined ? '' : `, limit ${limit}`);
const index = (value: number): string => decimal(value, 2);

const SENSATION = {
  normal: 'sensation normal',
  digits: 'sensation lost in toes or fingers only',
  'beyond-digits': 'sensation lost beyond toes or fingers',
  lost: 'anaesthetic',
} as const;
const MEASURES = { ankle: 'ankle pressure', toe: 'toe pressure', tcpo2: 'TcPO₂', index: 'ABPI' } as const;

const SAYS: Renderings<Ground> = {
  symptom: ({ value }) => (value === 'none' ? 'no symptoms' : word(value)),
  severity: ({ value }) => `${word(value)} in the clinician’s judgement`,
  distance: ({ metres, limit }) => `pain-free walking distance ${metres} m (cut-off ${limit} m)`,
  'sudden-pain': 'sudden pain',
  'new-complaint': 'new complaint',
  'onset-acute': 'acute onset',
  'onset-unknown': 'onset unknown',
  hours: ({ hours }) => `for ${decimal(hours)} ${hours === 1 ? 'hour' : 'hours'}`,
  sensation: ({ value }) => SENSATION[value],
  movement: ({ value }) => `power ${word(value)}`,
  arterial: ({ value }) => (value === 'inaudible' ? 'no arterial Doppler signal' : 'arterial signal audible'),
  venous: ({ value }) => (value === 'inaudible' ? 'no venous Doppler signal' : 'venous signal audible'),
  colour: ({ value }) => (value === 'fixed-mottled' ? word(value) : `skin ${word(value)}`),
  temperature: ({ value }) => `skin ${word(value)}`,
  muscle: ({ value }) => `muscle ${word(value)}`,
  oedema: ({ value }) => `${word(value)} ${terms.oedema}`,
  refill: ({ seconds, limit }) => `capillary refill ${decimal(seconds)} s (over ${decimal(limit)} s)`,
  ulcer: ({ depth, place, cause }) =>
    depth === 'none'
      ? 'no ulcer'
      : [`${word(depth)} ulcer`, ...(place ? [word(place)] : []), ...(cause ? [word(cause)] : [])].join(', '),
  gangrene: ({ kind, extent }) =>
    kind === 'none' ? 'no gangrene' : `${word(kind)} gangrene${extent ? `, ${word(extent)}` : ''}`,
  digits: ({ state, digits }) => `${word(state)}: ${words(digits)} digit`,
  'infection-signs': ({ signs }) => `local signs of infection: ${words(signs)}`,
  systemic: ({ signs }) => `systemic inflammatory signs (SIRS): ${words(signs)}`,
  redness: ({ cm }) => `redness reaches ${decimal(cm)} cm`,
  'no-infection-signs': 'no local signs of infection',
  'deep-infection': 'infection deeper than the skin',
  'probe-to-bone': 'bone felt on probing',
  charcot: 'hot swollen foot (Charcot?)',
  'stretch-pain': 'pain on passive stretch',
  'pain-out-of-proportion': 'pain out of proportion',
  reperfused: 'flow restored recently',
  'cold-fingers': 'attacks of white or cold fingers',
  'ulnar-release-white': 'no palmar flush on ulnar release',
  shock: 'shock',
  diabetes: 'diabetes',
  'connective-tissue-disease': 'connective tissue disease',
  'no-end-pressure': 'no signal under the cuffs',
  'pulses-absent': ({ places: at }) => `absent: ${places(at)} ${at.length === 1 ? 'pulse' : 'pulses'}`,
  'pulses-reduced': ({ places: at }) => `reduced: ${places(at)} ${at.length === 1 ? 'pulse' : 'pulses'}`,
  expansile: ({ places: at }) => `expansile: ${places(at)}`,
  bounding: ({ places: at }) => `unusually easy to feel: ${places(at)}`,
  thrill: ({ places: at }) => `thrill: ${places(at)}`,
  bruit: ({ places: at }) => `bruit: ${places(at)}`,
  delay: ({ between }) => (between === 'radio-radial' ? 'radio-radial delay' : 'radio-femoral delay'),
  injury: ({ place }) => `injury, operation or puncture: ${word(place)}`,
  'injury-signs': ({ signs }) => words(signs),
  'false-aneurysm-signs': ({ signs }) => `swelling over the artery: ${words(signs)}`,
  mechanism: ({ value }) => `${word(value)} recorded as the cause`,
  'known-aneurysm': ({ place, side }) =>
    `known aneurysm${place ? `: ${side ? `${side} ` : ''}${word(place)}` : ''}`,
  graft: ({ kind, artery, side, pulse }) =>
    `${word(kind)}, ${anatomy.vessel({ artery, side })}${pulse ? `, graft pulse ${pulse}` : ''}`,
  'graft-infection-signs': ({ signs }) => `over the graft: ${words(signs)}`,
  access: ({ signs }) => `dialysis access${signs.length ? `: ${words(signs)}` : ''}`,
  device: ({ kind }) => word(kind),
  'cold-injury': ({ hours }) =>
    hours === undefined ? 'cold injury, time unknown' : `cold injury ${decimal(hours)} h ago`,
  elsewhere: ({ symptoms }) => words(symptoms),
  'arm-difference': ({ mmHg, lower }) => `arm pressures differ by ${mmHg} mmHg, lower on the ${lower}`,
  limbs: ({ limbs: of }) => limbs(of),
  'own-class': ({ stage }) => `set by the clinician to Rutherford class ${stage}`,
  'own-fontaine': ({ stage }) => `set by the clinician to Fontaine ${stage}`,
  'own-rutherford': ({ stage }) => `set by the clinician to Rutherford category ${stage}`,
  'walk-completed': ({ mmHg }) => `exercise protocol completed; ankle pressure ${mmHg} mmHg after exercise`,
  'walk-not-completed': ({ mmHg }) =>
    `exercise protocol not completed; ankle pressure ${mmHg} mmHg after exercise`,
  'ankle-pressure': ({ mmHg, limit }) => `ankle pressure ${mmHg} mmHg${below(limit)}`,
  'toe-pressure': ({ mmHg, limit }) => `toe pressure ${mmHg} mmHg${below(limit)}`,
  'ankle-index': ({ value, limit }) => `ABPI ${index(value)}${limit ? `, limit ${index(limit)}` : ''}`,
  'toe-index': ({ value, limit }) => `TBPI ${index(value)}${limit ? `, limit ${index(limit)}` : ''}`,
  'forearm-index': ({ value, limit }) =>
    `forearm index over the other arm ${index(value)}${limit ? `, limit ${index(limit)}` : ''}`,
  tcpo2: ({ mmHg }) => `TcPO₂ ${mmHg} mmHg`,
  threat: ({ measure, value, limit, artery }) =>
    measure === 'index'
      ? `${MEASURES.index} ${index(value)} (limit ${index(limit)})`
      : `${MEASURES[measure]} ${value} mmHg (limit ${limit})${
          artery === 'dorsalis-pedis'
            ? ', dorsalis pedis; posterior tibial incompressible'
            : artery === 'posterior-tibial'
              ? ', posterior tibial; dorsalis pedis incompressible'
              : ''
        }`,
  wound: ({ grade }) => `wound grade ${grade}`,
  ischaemia: ({ grade }) => `ischaemia grade ${grade}`,
  infection: ({ grade }) => `infection grade ${grade}`,
};

/** One finding that a stage or a flag rests on. */
export const groundWords = (ground: Ground): string => render(SAYS, ground);
