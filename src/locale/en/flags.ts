import { placeFromKey, type Side } from '../../anatomy/index.js';
import {
  type FlagCode,
  type Ground,
  type GroundCode,
  type MissingCode,
  type RedFlag,
  type StagedKind,
  type Urgency,
} from '../../staging/index.js';
import { anatomy } from './anatomy.js';
import { list, sentence } from './phrases.js';

type Params = Readonly<Record<string, string | number>>;

const VALUES: Record<string, string> = {
  claudication: 'claudication',
  'rest-pain': 'rest pain',
  'tissue-loss': 'tissue loss',
  none: 'none',
  normal: 'normal',
  digits: 'toes or fingers only',
  'beyond-digits': 'lost beyond toes or fingers',
  lost: 'lost altogether',
  weak: 'weak',
  paralysed: 'paralysed',
  audible: 'audible',
  inaudible: 'not audible',
  shallow: 'shallow',
  deep: 'deep',
  extensive: 'deep and extensive',
  dry: 'dry',
  wet: 'wet',
  forefoot: 'forefoot or hand',
  midfoot: 'midfoot',
  heel: 'heel',
  ankle: 'ankle',
  shin: 'shin',
  other: 'elsewhere',
  'above-foot': 'above the foot or hand',
  pale: 'pale',
  blue: 'blue',
  mottled: 'mottled',
  cold: 'cold',
  tense: 'tense',
  tender: 'tender',
  'fixed-mottled': 'mottled and fixed on pressing',
  dissection: 'dissection of the aorta',
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
  temperature: 'temperature',
  'heart-rate': 'heart rate',
  breathing: 'breathing',
  'white-cells': 'white cells',
  swelling: 'swelling',
  redness: 'redness',
  tenderness: 'tenderness',
  warmth: 'warmth',
  pus: 'pus',
  mild: 'mild',
  moderate: 'moderate',
  severe: 'severe',
};

const word = (value: string | number | undefined): string => VALUES[String(value)] ?? String(value ?? '');
const words = (value: string | number | undefined): string => list(String(value).split(' ').map(word));

function at(p: Params): string {
  const place = placeFromKey(String(p['place']));
  return place ? anatomy.place(place) : '';
}

const grounds: Record<GroundCode, (p: Params) => string> = {
  symptom: (p) => (p['value'] === 'none' ? 'no symptoms' : word(p['value'])),
  severity: (p) => `${word(p['value'])} in the clinician’s judgement`,
  distance: (p) => `walks ${p['metres']} m without pain (limit ${p['limit']} m)`,
  hours: (p) => `for ${p['hours']} ${p['hours'] === 1 ? 'hour' : 'hours'}`,
  sensation: (p) => `feeling ${p['value'] === 'digits' ? 'lost in toes or fingers only' : word(p['value'])}`,
  movement: (p) => `movement ${word(p['value'])}`,
  arterial: (p) => `arterial signal ${word(p['value'])}`,
  venous: (p) => `venous signal ${word(p['value'])}`,
  colour: (p) => `skin ${word(p['value'])}`,
  temperature: (p) => `skin ${word(p['value'])}`,
  muscle: (p) => `muscle ${word(p['value'])}`,
  ulcer: (p) =>
    p['value'] === 'none'
      ? 'no ulcer'
      : `${word(p['value'])} ulcer${p['place'] ? `, ${word(p['place'])}` : ''}`,
  gangrene: (p) =>
    p['value'] === 'none'
      ? 'no gangrene'
      : `${word(p['value'])} gangrene${p['extent'] ? `, ${word(p['extent'])}` : ''}`,
  'infection-signs': (p) => `signs of infection: ${words(p['signs'])}`,
  'no-infection-signs': () => 'no signs of infection',
  redness: (p) => `redness reaches ${p['cm']} cm`,
  'deep-infection': () => 'infection deeper than the skin',
  systemic: (p) => `signs of the whole body: ${words(p['signs'])}`,
  'pulse-absent': (p) => `${at(p)} felt for and not there`,
  expansile: (p) => `expansile pulse, ${at(p)}`,
  injury: (p) => `injured at the ${word(p['place'])}`,
  mechanism: (p) => `${word(p['value'])} named as the cause`,
  'walk-completed': (p) => `whole walk done, ankle ${p['mmHg']} mmHg afterwards`,
  'walk-not-completed': (p) => `walk not completed, ankle ${p['mmHg']} mmHg afterwards`,
  'ankle-pressure': (p) => `ankle ${p['mmHg']} mmHg${p['limit'] ? `, below ${p['limit']}` : ''}`,
  'ankle-index': (p) => `ankle index ${Number(p['value']).toFixed(2)}`,
  'toe-pressure': (p) => `toe ${p['mmHg']} mmHg${p['limit'] ? `, below ${p['limit']}` : ''}`,
  tcpo2: (p) => `foot oxygen pressure ${p['mmHg']} mmHg`,
  'ankle-threat': (p) => `ankle ${p['value']} mmHg (limit ${p['limit']})`,
  'toe-threat': (p) => `toe ${p['value']} mmHg (limit ${p['limit']})`,
  'tcpo2-threat': (p) => `foot oxygen pressure ${p['value']} mmHg (limit ${p['limit']})`,
  'index-threat': (p) => `ankle index ${Number(p['value']).toFixed(2)} (limit ${p['limit']})`,
  wound: (p) => `wound grade ${p['grade']}`,
  ischaemia: (p) => `ischaemia grade ${p['grade']}`,
  infection: (p) => `infection grade ${p['grade']}`,
};

const missing: Record<MissingCode, string> = {
  onset: 'when it began',
  symptom: 'the symptom',
  severity: 'how severe it is',
  distance: 'the walking distance',
  exercise: 'ankle pressures after exercise',
  restingAnkle: 'the ankle pressure at rest',
  pressures: 'ankle or toe pressure',
  toe: 'the toe pressure',
  sensation: 'feeling',
  movement: 'movement',
  arterial: 'the arterial Doppler signals at foot or wrist',
  venous: 'the venous Doppler signal',
  ulcer: 'whether there is an ulcer',
  ulcerPlace: 'where the ulcer lies',
  gangrene: 'whether there is gangrene',
  gangreneExtent: 'how far gangrene reaches',
  infection: 'signs of infection',
  rednessCm: 'how far redness reaches',
  systemic: 'signs of the whole body',
  wound: 'the wound',
  ischaemia: 'pressures',
};

const limbName = ({ kind, side }: { kind: StagedKind; side: Side }): string =>
  anatomy.limbs[`${side} ${kind}`];

/** What the flag warns of. Without a limb the name is empty. */
const headings: Record<FlagCode, (limb: string) => string> = {
  'acute-limb-irreversible': (limb) => `${limb} may be beyond saving`,
  'acute-limb-threatened': (limb) => `${limb} may be in immediate danger`,
  'injured-limb-pulseless': (limb) => `${limb}: injured, and a pulse beyond is gone`,
  dissection: () => 'The aorta may be torn',
  'wet-gangrene': (limb) => `${limb}: wet gangrene`,
  'spreading-infection': (limb) => `${limb}: infection may have reached the blood`,
  'fixed-mottling': (limb) => `${limb}: mottling that pressing does not blanch`,
  'tense-muscle': (limb) => `${limb}: pressure in the muscle may be too high`,
  'expansile-mass': () => 'There may be an aneurysm',
  'acute-limb': (limb) => `${limb}: sudden loss of blood flow is possible`,
  weakness: (limb) => `${limb} is weak`,
  'sensory-loss': (limb) => `${limb} has lost feeling`,
  'no-doppler': (limb) => `${limb}: no arterial signal at its end`,
  'deep-infection': (limb) => `${limb}: infection is deep or spreading`,
  'chronic-limb-threat': (limb) => `${limb} may be threatened by long-standing lack of blood`,
  'threatening-pressure': (limb) => `${limb}: pressure in the range of a threatened limb`,
};

const actions: Record<FlagCode, string> = {
  'acute-limb-irreversible': 'Call the vascular team now, by your acute-limb pathway.',
  'acute-limb-threatened': 'Call the vascular team now, by your acute-limb pathway.',
  'injured-limb-pulseless': 'Call the trauma or vascular team now, by your local pathway.',
  dissection: 'Call the emergency team now, by your local pathway.',
  'wet-gangrene': 'Call the surgical or vascular team now, by your local pathway.',
  'spreading-infection': 'Treat as an emergency now, by your sepsis pathway.',
  'fixed-mottling': 'Call the vascular team now, by your acute-limb pathway.',
  'tense-muscle': 'Call the surgical or vascular team now, by your local pathway.',
  'expansile-mass':
    'Arrange imaging and vascular review, by your aneurysm pathway; at once with pain or collapse.',
  'acute-limb': 'Call the vascular team, by your acute-limb pathway.',
  weakness: 'Ask when it began, and follow your acute-limb pathway if it is new.',
  'sensory-loss': 'Ask when it began, and follow your acute-limb pathway if it is new.',
  'no-doppler': 'Ask when it began, and follow your acute-limb pathway if it is new.',
  'deep-infection': 'Have it seen today, by your diabetic-foot or surgical pathway.',
  'chronic-limb-threat': 'Refer urgently to the vascular team, by your local pathway.',
  'threatening-pressure': 'Refer to the vascular team, by your local pathway.',
};

const urgencies: Record<Urgency, string> = { now: 'Now', today: 'Today', soon: 'Within days' };

export const flags = {
  grounds,
  missing,
  urgencies,
  heading: ({ code, limb }: RedFlag) => headings[code](limb ? sentence(limbName(limb)) : ''),
  action: ({ code }: RedFlag) => actions[code],
  ground: ({ code, params = {} }: Ground) => grounds[code](params),
  /** What raised the flag, in one sentence. */
  because: (flag: RedFlag) =>
    `${sentence(list(flag.grounds.map(({ code, params = {} }) => grounds[code](params))))}.`,
  stillMissing: (codes: readonly MissingCode[]) =>
    `Still missing: ${list(codes.map((code) => missing[code]))}.`,
  hours: ([from, to]: readonly [number, number]) =>
    from
      ? `Guidelines ask for restored flow within ${from} to ${to} hours.`
      : `Guidelines ask for restored flow within ${to} hours.`,
  title: 'Red flags',
  more: (count: number) => (count === 1 ? 'One more red flag' : `${count} more red flags`),
  fold: 'Fold to one line',
  unfold: 'Show what raised it',
  caution:
    'A warning from what was recorded; it is not a diagnosis. Your local pathway and a licensed clinician decide what happens next.',
};
export type FlagWords = typeof flags;
