import type {
  ArmInspection,
  Digit,
  DigitState,
  GangreneExtent,
  InfectionSign,
  LegInspection,
  Reason,
  Sensation,
  SystemicSign,
  ThrombosisSign,
  UlcerDepth,
} from '../examination/index.js';
import type { RefillReading } from '../bedside/index.js';
import type { InspectionStatement } from '../statements/index.js';
import { render, type Renderings } from './render.js';
import type { SignWords } from './sign-words.js';
import { together } from './terms.js';
import { type Choice, type Of, without, type YesNo } from './words.js';

/** Where the skin of a limb changes from warm to cold. */
type SkinLevel = NonNullable<(LegInspection | ArmInspection)['temperatureLevel']>;
type Both = LegInspection & Pick<ArmInspection, 'vertebralFlow'>;
type Value<K extends keyof Both> = Extract<NonNullable<Both[K]>, string>;
/** A phrase around the word of a value. */
type Around = (word: string) => string;

/** The words of inspection and touch. */
export interface InspectionTable {
  readonly title: string;
  readonly skin: string;
  readonly wounds: string;
  readonly nerves: string;
  readonly rest: string;
  readonly colour: Choice<Value<'colour'>>;
  readonly temperature: Choice<Value<'temperature'>>;
  readonly temperatureLevel: string;
  readonly levels: Of<SkinLevel>;
  readonly refill: string;
  readonly refillSaid: Readonly<Record<RefillReading['code'], (limit: string) => string>>;
  readonly refillHow: string;
  readonly hair: Choice<Value<'hair'>>;
  readonly nails: Choice<Value<'nails'>>;
  readonly muscle: Choice<Value<'muscle'>>;
  readonly oedema: Choice<Value<'oedema'>>;
  readonly lymphNodes: Choice<Value<'lymphNodes'>>;
  readonly lymphoedema: Choice<Value<'lymphoedema'>>;
  readonly ulcer: Choice<UlcerDepth>;
  /** Words of the depth where there is room for a phrase. */
  readonly ulcers: Of<UlcerDepth>;
  readonly ulcerPlace: Choice<Value<'ulcerPlace'>>;
  readonly ulcerCause: Choice<Value<'ulcerCause'>>;
  readonly ulcerSize: string;
  readonly gangrene: Choice<Value<'gangrene'>>;
  readonly gangreneExtent: Choice<GangreneExtent>;
  /** Shorter words for the buttons, by kind of limb. */
  readonly legExtents: Of<GangreneExtent>;
  readonly armExtents: Of<'digits' | 'forefoot' | 'above-foot'>;
  readonly infection: Choice<InfectionSign>;
  readonly noInfection: string;
  readonly rednessCm: string;
  readonly deepInfection: string;
  readonly systemic: Choice<SystemicSign>;
  readonly systemicShort: Of<SystemicSign>;
  readonly movement: Choice<Value<'movement'>>;
  readonly sensation: Choice<Sensation>;
  /** Shorter words for the buttons, by kind of limb. */
  readonly legSensations: Of<Sensation>;
  readonly armSensations: Of<Sensation>;
  readonly venousDoppler: Choice<Value<'venousDoppler'>>;
  readonly vertebralFlow: Choice<Value<'vertebralFlow'>>;
  readonly probeToBone: string;
  readonly charcot: string;
  readonly yesNo: YesNo;
  readonly deficit: string;
  readonly deficitKnown: string;
  readonly filament: Choice<Value<'monofilament'>>;
  readonly compartmentOf: Of<'leg' | 'arm'>;
  readonly stretchPain: string;
  readonly outOfProportion: string;
  readonly flow: string;
  readonly reperfused: string;
  readonly injurySigns: string;
  readonly falseAneurysm: string;
  readonly digitsOf: Of<'leg' | 'arm'>;
  /** A toe or a finger within a sentence. */
  readonly digit: { readonly leg: Of<Digit>; readonly arm: Of<Digit> };
  readonly toes: Of<Digit>;
  readonly fingers: Of<Digit>;
  readonly digitStates: Of<DigitState>;
  readonly veins: string;
  readonly varices: string;
  readonly pigment: string;
  readonly thrombosis: Choice<ThrombosisSign>;
  readonly couldNotExamine: string;
  readonly note: string;
  /** What stands in place of an empty list. */
  readonly none: string;
  /** What was found, as a phrase. */
  readonly said: {
    readonly colour: Around;
    temperature(word: string, from: string | undefined): string;
    readonly refill: Around;
    readonly hair: Around;
    readonly nails: Around;
    readonly muscle: Around;
    readonly oedema: Around;
    ulcer(word: string, at: string | undefined): string;
    readonly ulcerCause: Around;
    readonly ulcerSizeMm: Around;
    gangrene(word: string, extent: string | undefined): string;
    readonly infection: Around;
    readonly rednessCm: Around;
    readonly deepInfection: YesNo;
    readonly systemic: Around;
    readonly probeToBone: YesNo;
    readonly charcotSuspected: YesNo;
    readonly deficitKnown: string;
    readonly monofilament: Around;
    readonly stretchPain: YesNo;
    readonly painOutOfProportion: YesNo;
    readonly reperfused: string;
    readonly injurySigns: Around;
    readonly falseAneurysmSigns: Around;
    readonly varices: YesNo;
    readonly pigment: YesNo;
    readonly thrombosisSigns: Around;
    readonly movement: Around;
    readonly sensation: Around;
    readonly venousDoppler: Around;
    readonly vertebralFlow: Around;
    readonly lymphNodes: Around;
    readonly lymphoedema: Of<Value<'lymphoedema'>>;
    readonly note: Around;
  };
}

/** What other areas of a language lend to it. */
interface Lent {
  readonly examination: { couldNot(reason: Reason): string };
  readonly recorded: Pick<SignWords, 'injury' | 'injuryOf' | 'falseAneurysm'>;
  decimal(value: number): string;
}

/** The words of inspection and touch, for controls and for what is said of a record. */
export function inspectionFrom(table: InspectionTable, { examination, recorded, decimal }: Lent) {
  const words = without(table, 'said', 'refillSaid');
  const { said, refillSaid } = table;
  const ifSo = (is: { yes: string; no: string }, value: boolean): string => (value ? is.yes : is.no);
  const signs = <K extends string>(values: readonly K[], of: Readonly<Record<K, string>>): string =>
    values.map((value) => of[value]).join(', ') || words.none;
  const statements: Renderings<InspectionStatement> = {
    couldNotExamine: ({ value }) => examination.couldNot(value),
    colour: ({ value }) => said.colour(words.colour.words[value]),
    temperature: ({ temperature, from }) =>
      said.temperature(words.temperature.words[temperature], from && words.levels[from]),
    refill: ({ value }) => said.refill(decimal(value)),
    hair: ({ value }) => said.hair(words.hair.words[value]),
    nails: ({ value }) => said.nails(words.nails.words[value]),
    muscle: ({ value }) => said.muscle(words.muscle.words[value]),
    oedema: ({ value }) => said.oedema(words.oedema.words[value]),
    ulcer: ({ depth, at }) => said.ulcer(words.ulcers[depth], at && words.ulcerPlace.words[at]),
    gangrene: ({ gangrene, extent }) =>
      said.gangrene(words.gangrene.words[gangrene], extent && words.gangreneExtent.words[extent]),
    infection: ({ value }) => said.infection(signs(value, words.infection.words)),
    rednessCm: ({ value }) => said.rednessCm(decimal(value)),
    deepInfection: ({ value }) => ifSo(said.deepInfection, value),
    systemic: ({ value }) => said.systemic(signs(value, words.systemic.words)),
    ulcerCause: ({ value }) => said.ulcerCause(words.ulcerCause.words[value]),
    ulcerSizeMm: ({ value }) => said.ulcerSizeMm(decimal(value)),
    digit: ({ of, digit, state }) => `${words.digit[of][digit]}: ${words.digitStates[state]}`,
    probeToBone: ({ value }) => ifSo(said.probeToBone, value),
    charcotSuspected: ({ value }) => ifSo(said.charcotSuspected, value),
    deficitKnown: () => said.deficitKnown,
    monofilament: ({ value }) => said.monofilament(words.filament.words[value]),
    stretchPain: ({ value }) => ifSo(said.stretchPain, value),
    painOutOfProportion: ({ value }) => ifSo(said.painOutOfProportion, value),
    reperfused: () => said.reperfused,
    injurySigns: ({ value }) => said.injurySigns(signs(value, recorded.injury)),
    falseAneurysmSigns: ({ value }) => said.falseAneurysmSigns(signs(value, recorded.falseAneurysm)),
    varices: ({ value }) => ifSo(said.varices, value),
    pigment: ({ value }) => ifSo(said.pigment, value),
    thrombosisSigns: ({ value }) => said.thrombosisSigns(signs(value, words.thrombosis.words)),
    movement: ({ value }) => said.movement(words.movement.words[value]),
    sensation: ({ value }) => said.sensation(words.sensation.words[value]),
    venousDoppler: ({ value }) => said.venousDoppler(words.venousDoppler.words[value]),
    vertebralFlow: ({ value }) => said.vertebralFlow(words.vertebralFlow.words[value]),
    lymphoedema: ({ value }) => said.lymphoedema[value],
    lymphNodes: ({ value }) => said.lymphNodes(words.lymphNodes.words[value]),
    note: ({ value }) => said.note(value),
  };
  return together(words, {
    seconds: 's',
    centimetres: 'cm',
    millimetres: 'mm',
    extentOptions: { leg: words.legExtents, arm: words.armExtents },
    sensationOptions: { leg: words.legSensations, arm: words.armSensations },
    digits: { leg: words.toes, arm: words.fingers },
    refillSaid: (code: RefillReading['code'], limit: number): string => refillSaid[code](decimal(limit)),
    injuryOptions: recorded.injuryOf,
    falseAneurysmOptions: recorded.falseAneurysm,
    limb: (statement: InspectionStatement): string => render(statements, statement),
  });
}
export type InspectionWords = ReturnType<typeof inspectionFrom>;
