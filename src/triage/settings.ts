import { type ArmsDoubtLimits, DEFAULT_ARMS_DOUBT } from '../pressures/index.js';

/**
 * Every number and every arguable choice of the triage tables. The weights and thresholds together keep the urgency from
 * falling when a sign is added; whoever changes one weight should read `points.ts` first.
 */
export interface TriageSettings {
  /** Points of each group of findings; a group counts once, with its highest line. */
  readonly points: {
    readonly colour: { readonly ischaemic: number; readonly fixed: number; readonly whenEndsNormal: number };
    readonly temperature: {
      readonly cold: number;
      readonly cool: number;
      readonly coldWhenEndsNormal: number;
      readonly coolWhenEndsNormal: number;
    };
    readonly flow: {
      readonly silent: number;
      readonly endsAbsent: number;
      readonly oneEndAbsent: number;
      readonly proximalAbsent: number;
      readonly proximalAbsentEndPresent: number;
      readonly poplitealAbsent: number;
      readonly poplitealAbsentEndPresent: number;
      readonly endPressureLow: number;
    };
    readonly refill: number;
    readonly veins: number;
    readonly complaint: { readonly suddenPain: number; readonly restPain: number; readonly new: number };
    readonly feeling: { readonly partly: number; readonly lost: number };
    readonly power: number;
    readonly muscle: { readonly tender: number; readonly tense: number };
  };
  /** Capillary refill counts beyond this, in seconds. */
  readonly refillOver: number;
  /** The highest end pressure counts below this, in mmHg. */
  readonly endPressureBelow: number;
  /** Under this many hours a limb is acutely affected, however it began. Two weeks; source: RCEM Learning 2022. */
  readonly acuteUnderHours: number;
  /** Sum of all points from which an acute limb, or one of unknown onset, is seen at once or the same day. */
  readonly acute: { readonly now: number; readonly today: number };
  /** Points of circulation and skin from which a chronic limb is seen, and those beside which a deficit counts. */
  readonly chronic: {
    readonly today: number;
    readonly soon: number;
    readonly deficitFrom: number;
    readonly feelingNowFrom: number;
  };
  /** Points of the circulation, or of flow alone, from which a limb counts as poorly supplied beside another finding. */
  readonly poorFrom: {
    /** Circulation of a hand after a line, of an injured limb, at a false aneurysm, and of a foot with a diabetic ulcer. */
    readonly hand: number;
    readonly injury: number;
    readonly falseAneurysm: number;
    readonly diabeticUlcer: number;
    /** Circulation of a limb that is one of several, and so many limbs at once: then it is the whole circulation. */
    readonly oneOfSeveral: number;
    readonly limbs: number;
    /** Flow beyond a graft, in a dissection, in a sore finger, in cold injury or mottling, and where disease is probable. */
    readonly graft: number;
    readonly dissection: number;
    readonly soreFinger: number;
    readonly skin: number;
    readonly disease: number;
  };
  /** What proves arterial disease of a leg and what shows that there is none: indices, and mmHg at ankle, toe and skin. */
  readonly disease: {
    readonly ankleIndexTo: number;
    readonly toeIndexTo: number;
    readonly ankleBelow: number;
    readonly toeBelow: number;
    readonly tcpo2Below: number;
    readonly normalIndexFrom: number;
    readonly normalIndexTo: number;
    readonly normalToeFrom: number;
    /** Severe under a diabetic ulcer: the ankle index, and the toe pressure in mmHg. */
    readonly severeIndexBelow: number;
    readonly severeToeBelow: number;
  };
  /** From when on it is doubted that the higher arm stands for the pressure of the aorta, in mmHg. */
  readonly armsDoubt: ArmsDoubtLimits;
  /** Hours within which guidelines ask for restored flow, by acute class. */
  readonly flowWithin: Readonly<Record<'I' | 'IIa' | 'IIb', { readonly from: number; readonly to: number }>>;
  /** Points from which the onset is asked, and from which everything is asked. */
  readonly ask: { readonly onset: number; readonly all: number };
  /** Chronic loss of feeling with absent pulses in a limb that is warm. */
  readonly chronicNumbness: 'today' | 'now';
  /** Weakness of unknown onset where both end arteries are normal. */
  readonly weaknessWithPulses: 'now' | 'today';
  /** Numb toes or fingers of unknown onset in a limb that is warm and pink with a full pulse, nothing else: neuropathy, or not. */
  readonly numbnessWithPulses: 'today' | 'soon' | 'none';
  /** A limb without a pulse, of unknown onset, and nothing else. */
  readonly pulselessAlone: 'ask' | 'today';
  /** Sudden pain in a limb whose circulation is shown to be normal. */
  readonly suddenPainShownNormal: 'none' | 'today';
  /** What keeps the classes of an acute limb apart where sources differ. */
  readonly acuteClass: {
    /** Continuing rest pain keeps IIa open, is ignored, or means at least IIb. */
    readonly restPain: 'opens-IIa' | 'ignored' | 'at-least-IIb';
    /** A tender muscle means at least this. */
    readonly tender: 'IIa' | 'IIb';
  };
  readonly injury: {
    readonly indexBelow: number;
    readonly index: 'now' | 'today';
    /** A weak pulse beyond an injury with an index not below the limit, nothing else. */
    readonly reducedAlone: 'now' | 'today';
    /** A systolic bruit over a punctured groin, nothing else. */
    readonly bruitOverPuncture: 'now' | 'today';
  };
  /** Difference of the arms beyond which a dissection is thought of, in mmHg. */
  readonly armDifferenceOver: number;
  /** An expansile aorta where pain was not asked for. */
  readonly aortaUnasked: 'today' | 'soon';
  /** An expansile or unusually easy popliteal pulse without an acute leg. */
  readonly poplitealAneurysm: 'soon' | 'today' | 'now';
  /** Flow lost beyond a graft or stent, onset not stated. */
  readonly graftUnstated: 'today' | 'now';
  /** Radial pulse absent after a catheter, hand otherwise well. */
  readonly radialAfterCatheter: 'soon' | 'none';
  /** Dry gangrene of a leg, no diabetes. */
  readonly dryGangrene: 'today' | 'soon';
  /** Which diabetic foot ulcer with arterial disease is an emergency: with any, or only where it is severe (`disease.severe…`). */
  readonly diabeticUlcer: 'any-disease' | 'severe-disease';
  /** Hours after a cold injury until which it is seen at once and the same day. */
  readonly coldInjury: { readonly now: number; readonly today: number };
  /** The clocks behind the urgencies that are not an hour's, by local pathway. Source: VSGBI 2019 (referral to flow); NICE NG19 (working day). */
  readonly clocks: {
    /** Days from referral to restored flow for chronic limb threat: of a patient in hospital, and of one at home. */
    readonly inHospital: number;
    readonly atHome: number;
    /** Working days until the diabetic foot service sees an active foot. */
    readonly footWorkingDays: number;
  };
  /** What is said of a cuff over a graft or stent, or above a distal bypass. */
  readonly graftCuff: 'ask-first' | 'no-cuff' | 'allowed';
  readonly infection: {
    /** Local signs that make an infection. */
    readonly signs: number;
    /** Redness counts as a sign beyond this, in cm. */
    readonly rednessOver: number;
    /** Redness that reaches this far is moderate, in cm. */
    readonly moderateFrom: number;
    /** Redness exactly that far. */
    readonly atModerate: 'moderate' | 'mild';
    /** Signs of the systemic inflammatory response that make it severe. */
    readonly systemic: number;
  };
}

/** The tables as they are, where neither a pathway nor a caller chose otherwise. Units as in {@link TriageSettings}. */
export const DEFAULT_TRIAGE_SETTINGS: TriageSettings = {
  points: {
    colour: { ischaemic: 4, fixed: 8, whenEndsNormal: 1 },
    temperature: { cold: 4, cool: 1, coldWhenEndsNormal: 1, coolWhenEndsNormal: 0 },
    flow: {
      silent: 8,
      endsAbsent: 4,
      oneEndAbsent: 2,
      proximalAbsent: 4,
      proximalAbsentEndPresent: 2,
      poplitealAbsent: 4,
      poplitealAbsentEndPresent: 0,
      endPressureLow: 4,
    },
    refill: 2,
    veins: 4,
    complaint: { suddenPain: 8, restPain: 4, new: 4 },
    feeling: { partly: 4, lost: 8 },
    power: 8,
    muscle: { tender: 4, tense: 8 },
  },
  refillOver: 4.5,
  endPressureBelow: 50,
  acuteUnderHours: 336,
  acute: { now: 8, today: 6 },
  chronic: { today: 12, soon: 8, deficitFrom: 4, feelingNowFrom: 8 },
  poorFrom: {
    hand: 4,
    injury: 4,
    falseAneurysm: 4,
    diabeticUlcer: 4,
    oneOfSeveral: 8,
    limbs: 3,
    graft: 4,
    dissection: 4,
    soreFinger: 2,
    skin: 4,
    disease: 4,
  },
  disease: {
    ankleIndexTo: 0.9,
    toeIndexTo: 0.7,
    ankleBelow: 50,
    toeBelow: 30,
    tcpo2Below: 30,
    normalIndexFrom: 0.91,
    normalIndexTo: 1.4,
    normalToeFrom: 60,
    severeIndexBelow: 0.6,
    severeToeBelow: 40,
  },
  armsDoubt: DEFAULT_ARMS_DOUBT,
  flowWithin: { I: { from: 6, to: 24 }, IIa: { from: 0, to: 6 }, IIb: { from: 0, to: 6 } },
  ask: { onset: 4, all: 6 },
  chronicNumbness: 'today',
  weaknessWithPulses: 'now',
  numbnessWithPulses: 'today',
  pulselessAlone: 'ask',
  suddenPainShownNormal: 'none',
  acuteClass: { restPain: 'opens-IIa', tender: 'IIa' },
  injury: { indexBelow: 0.9, index: 'now', reducedAlone: 'now', bruitOverPuncture: 'now' },
  armDifferenceOver: 20,
  aortaUnasked: 'today',
  poplitealAneurysm: 'soon',
  graftUnstated: 'today',
  radialAfterCatheter: 'soon',
  dryGangrene: 'today',
  diabeticUlcer: 'any-disease',
  coldInjury: { now: 24, today: 72 },
  clocks: { inHospital: 5, atHome: 14, footWorkingDays: 1 },
  graftCuff: 'ask-first',
  infection: { signs: 2, rednessOver: 0.5, moderateFrom: 2, atModerate: 'moderate', systemic: 2 },
};

/** Choices of one's own, as deep as wanted. */
export type DeepPartial<T> = { readonly [K in keyof T]?: T[K] extends object ? DeepPartial<T[K]> : T[K] };
/** Settings of one's own, as deep as wanted; what is left out is the default. */
export type TriageChoices = DeepPartial<TriageSettings>;

function filled<T extends object>(defaults: T, choices: DeepPartial<T>): T {
  const entries = Object.entries(defaults).map(([key, value]: [string, unknown]) => {
    const own = (choices as Record<string, unknown>)[key];
    if (own === undefined) return [key, value];
    return [key, typeof value === 'object' && value !== null ? filled(value, own as object) : own];
  });
  return Object.fromEntries(entries) as T;
}

/** Settings with the defaults filled in; choices given later win. */
export function triageSettings(...choices: readonly (TriageChoices | undefined)[]): TriageSettings {
  return choices.reduce<TriageSettings>(
    (settings, own) => (own && Object.keys(own).length ? filled(settings, own) : settings),
    DEFAULT_TRIAGE_SETTINGS,
  );
}

/** A choice that a clinician should sign: where it is set, what else it may be, and which sentence it decides. */
export interface OpenChoice {
  readonly setting: string;
  readonly otherwise: readonly (string | number)[];
}

/** The choices the sources leave open. The default of each stands in {@link DEFAULT_TRIAGE_SETTINGS}. */
export const OPEN_CHOICES: readonly OpenChoice[] = [
  { setting: 'chronicNumbness', otherwise: ['now'] },
  { setting: 'injury.index', otherwise: ['today'] },
  { setting: 'graftUnstated', otherwise: ['now'] },
  { setting: 'aortaUnasked', otherwise: ['soon'] },
  { setting: 'dryGangrene', otherwise: ['soon'] },
  { setting: 'infection.atModerate', otherwise: ['mild'] },
  { setting: 'weaknessWithPulses', otherwise: ['today'] },
  { setting: 'numbnessWithPulses', otherwise: ['soon', 'none'] },
  { setting: 'radialAfterCatheter', otherwise: ['none'] },
  { setting: 'refillOver', otherwise: [2, 3, 5] },
  { setting: 'poplitealAneurysm', otherwise: ['today', 'now'] },
  { setting: 'suddenPainShownNormal', otherwise: ['today'] },
  { setting: 'injury.bruitOverPuncture', otherwise: ['today'] },
  { setting: 'injury.reducedAlone', otherwise: ['today'] },
  { setting: 'diabeticUlcer', otherwise: ['severe-disease'] },
  { setting: 'pulselessAlone', otherwise: ['today'] },
  { setting: 'graftCuff', otherwise: ['no-cuff', 'allowed'] },
  { setting: 'clocks.inHospital', otherwise: [2, 7] },
  { setting: 'clocks.atHome', otherwise: [7, 28] },
  { setting: 'clocks.footWorkingDays', otherwise: [2] },
  { setting: 'acuteClass.restPain', otherwise: ['ignored', 'at-least-IIb'] },
  { setting: 'acuteClass.tender', otherwise: ['IIb'] },
];
