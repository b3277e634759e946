import {
  type Limb,
  LISTENING_PLACES,
  type ListeningSiteId,
  type Place,
  placeKey,
  PULSE_PLACES,
  type PulseSiteId,
  type Side,
  SIDES,
} from '../anatomy/index.js';
import { BEDSIDE_TESTS } from '../bedside/index.js';
import { type BedsideTestId, PULSE_FIELDS } from '../examination/index.js';

/** What can be asked. */
export const QUESTIONS_ASKED = ['onset', 'walking', 'background'] as const;
export type Asked = (typeof QUESTIONS_ASKED)[number];

/** Cuffs, each with the sites of the record that it fills. */
export const CUFF_SITES = {
  arm: ['brachial'],
  wrist: ['radial', 'ulnar', 'finger'],
  ankle: ['dorsalis-pedis', 'posterior-tibial'],
  toe: ['toe'],
  thigh: ['high-thigh', 'low-thigh', 'calf'],
} as const;
export type PracticeCuff = keyof typeof CUFF_SITES;

/** Tests of one side that a simulated patient answers. */
export const PRACTICE_TESTS = [
  'elevation',
  'colour-return',
  'venous-filling',
  'hand-arch',
  'scalene',
  'costoclavicular',
  'hyperabduction',
  'arm-stress',
] as const satisfies readonly BedsideTestId[];
export type PracticeTest = (typeof PRACTICE_TESTS)[number];

/** One thing done at the bedside. */
export type PracticeAct =
  | { readonly kind: 'ask'; readonly about: Asked }
  | { readonly kind: 'rhythm' | 'circulation' | 'exercise' }
  | { readonly kind: 'look' | 'feeling'; readonly limb: Limb }
  | { readonly kind: 'feel' | 'doppler'; readonly place: Place<PulseSiteId> }
  | { readonly kind: 'listen'; readonly place: Place<ListeningSiteId> }
  | { readonly kind: 'vertebral'; readonly side: Side }
  | { readonly kind: 'delay'; readonly of: 'radio-radial' | 'radio-femoral' }
  | { readonly kind: 'cuff'; readonly cuff: PracticeCuff; readonly side: Side }
  | { readonly kind: 'test'; readonly test: PracticeTest; readonly side: Side };
export type PracticeActKind = PracticeAct['kind'];

/** Name of an act: `feel left femoral`, `ask onset`, `cuff ankle right`. */
export type PracticeActId = string;

export function practiceActId(act: PracticeAct): PracticeActId {
  switch (act.kind) {
    case 'ask':
      return `ask ${act.about}`;
    case 'look':
    case 'feeling':
      return `${act.kind} ${act.limb.side} ${act.limb.kind}`;
    case 'feel':
    case 'doppler':
    case 'listen':
      return `${act.kind} ${placeKey(act.place)}`;
    case 'vertebral':
      return `vertebral ${act.side}`;
    case 'delay':
      return `delay ${act.of}`;
    case 'cuff':
      return `cuff ${act.cuff} ${act.side}`;
    case 'test':
      return `test ${act.test} ${act.side}`;
    default:
      return act.kind;
  }
}

const LIMBS_SEEN: readonly Limb[] = (['leg', 'arm'] as const).flatMap((kind) =>
  SIDES.map((side): Limb => ({ side, kind })),
);
/** Where one puts the probe at the bedside. */
const SOUNDED: readonly PulseSiteId[] = [
  'radial',
  'ulnar',
  'popliteal',
  'posterior-tibial',
  'dorsalis-pedis',
];

/** Everything that can be done, in the order of the examination: asked, seen, felt, heard, measured, tested. */
export const PRACTICE_ACTS: readonly PracticeAct[] = [
  ...QUESTIONS_ASKED.map((about): PracticeAct => ({ kind: 'ask', about })),
  ...LIMBS_SEEN.map((limb): PracticeAct => ({ kind: 'look', limb })),
  ...LIMBS_SEEN.map((limb): PracticeAct => ({ kind: 'feeling', limb })),
  { kind: 'circulation' },
  { kind: 'rhythm' },
  ...PULSE_PLACES.map((place): PracticeAct => ({ kind: 'feel', place })),
  { kind: 'delay', of: 'radio-radial' },
  { kind: 'delay', of: 'radio-femoral' },
  ...LISTENING_PLACES.map((place): PracticeAct => ({ kind: 'listen', place })),
  ...PULSE_PLACES.filter(({ site }) => SOUNDED.includes(site)).map((place): PracticeAct => ({
    kind: 'doppler',
    place,
  })),
  ...SIDES.map((side): PracticeAct => ({ kind: 'vertebral', side })),
  ...(Object.keys(CUFF_SITES) as PracticeCuff[]).flatMap((cuff) =>
    SIDES.map((side): PracticeAct => ({ kind: 'cuff', cuff, side })),
  ),
  { kind: 'exercise' },
  ...PRACTICE_TESTS.flatMap((test) => SIDES.map((side): PracticeAct => ({ kind: 'test', test, side }))),
];

const BY_ID = new Map(PRACTICE_ACTS.map((act) => [practiceActId(act), act]));
export const PRACTICE_ACT_IDS: readonly PracticeActId[] = [...BY_ID.keys()];

/** The act of a name; `undefined` for what is none. */
export const practiceActOf = (id: PracticeActId): PracticeAct | undefined => BY_ID.get(id);

/** A place in a record: names from the outside inward. */
export type RecordPath = readonly string[];

const PULSE = Object.keys(PULSE_FIELDS).filter((field) => field !== 'doppler');
/** What needs the patient's answer or a tool, and so is not seen by looking. */
const TRIED = ['sensation', 'movement', 'monofilament', 'stretchPain', 'deficitKnown'];
const SEEN = [
  'colour',
  'temperature',
  'temperatureLevel',
  'hair',
  'nails',
  'muscle',
  'oedema',
  'ulcer',
  'ulcerPlace',
  'ulcerCause',
  'ulcerSizeMm',
  'gangrene',
  'gangreneExtent',
  'infection',
  'rednessCm',
  'deepInfection',
  'probeToBone',
  'charcotSuspected',
  'systemic',
  'refill',
  'painOutOfProportion',
  'injurySigns',
  'falseAneurysmSigns',
  'thrombosisSigns',
  'digits',
  'lymphNodes',
  'lymphoedema',
  'varices',
  'pigment',
];
const TOLD = {
  onset: ['onset', 'hours', 'onsetAt', 'suddenPain', 'newComplaint'],
  walking: ['symptom', 'distance', 'severity', 'coldFingers', 'dizzyOnUse', 'chestPainOnUse'],
} as const;

const inHistory = (fields: readonly string[]): RecordPath[] =>
  LIMBS_SEEN.flatMap(({ kind, side }) => fields.map((field) => ['history', kind, side, field]));

/** The paths of the record that an act finds; each belongs to one act, so that nothing is told by another. */
export function pathsOf(act: PracticeAct): readonly RecordPath[] {
  switch (act.kind) {
    case 'ask':
      if (act.about === 'onset') return [['onset'], ...inHistory(TOLD.onset)];
      if (act.about === 'walking')
        return [['context', 'legClaudication'], ['context', 'armClaudication'], ...inHistory(TOLD.walking)];
      return [
        ...['smoking', 'diabetes', 'mechanism', 'injury', 'aneurysms', 'access', 'devices'].map((field) => [
          'context',
          field,
        ]),
        ...['risks', 'elsewhere', 'operations'].map((field) => ['history', field]),
      ];
    case 'rhythm':
      return [['history', 'rhythm']];
    case 'circulation':
      return [['circulation']];
    case 'exercise':
      return [['pressures', 'afterExercise']];
    case 'look':
      return SEEN.map((field) => ['inspection', act.limb.kind, act.limb.side, field]);
    case 'feeling':
      return TRIED.map((field) => ['inspection', act.limb.kind, act.limb.side, field]);
    case 'feel':
      return PULSE.map((field) => ['pulses', act.place.site, act.place.side, field]);
    case 'doppler':
      return [['pulses', act.place.site, act.place.side, 'doppler']];
    case 'listen':
      return [['bruits', act.place.site, act.place.side]];
    case 'vertebral':
      return [['inspection', 'arm', act.side, 'vertebralFlow']];
    case 'delay':
      return [['delays', act.of === 'radio-radial' ? 'radioRadial' : 'radioFemoral']];
    case 'cuff':
      return CUFF_SITES[act.cuff].map((site) => ['pressures', site, act.side]);
    case 'test':
      return [['bedside', act.test, act.side]];
  }
}

/** The limb that an act is done on; missing where it is about the patient, or about several limbs. */
export function limbOfAct(act: PracticeAct): Limb | undefined {
  switch (act.kind) {
    case 'look':
    case 'feeling':
      return act.limb;
    case 'feel':
    case 'doppler':
    case 'listen': {
      const { site, side } = act.place;
      if (side === 'midline' || site === 'carotid' || site === 'superficial-temporal' || site === 'renal')
        return undefined;
      const arm = ['subclavian', 'axillary', 'brachial', 'radial', 'ulnar'].includes(site);
      return { side, kind: arm ? 'arm' : 'leg' };
    }
    case 'cuff':
      return { side: act.side, kind: act.cuff === 'arm' || act.cuff === 'wrist' ? 'arm' : 'leg' };
    case 'test': {
      const { limb } = BEDSIDE_TESTS[act.test];
      return { side: act.side, kind: limb };
    }
    default:
      return undefined;
  }
}

/** Whether an act tells of the arteries of its limb by hand, ear, probe or cuff, not by what is told or seen. */
export const examinesArteries = ({ kind }: PracticeAct): boolean =>
  kind === 'feel' || kind === 'listen' || kind === 'doppler' || kind === 'cuff';
