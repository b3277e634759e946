import type {
  ArmClaudication,
  ArmHistory,
  LegClaudication,
  RiskFactor,
  Rhythm,
  Severity,
  Symptom,
} from '../examination/index.js';
import type { CirculationStatement, HistoryStatement, LimbHistoryStatement } from '../statements/index.js';
import { clockTime, sentence } from './phrases.js';
import { type LongTime, longTime } from './long-time.js';
import { render, type Renderings } from './render.js';
import type { SignWords } from './sign-words.js';
import { together } from './terms.js';
import { eachWord, type Of, without, type YesNo } from './words.js';

type LimbOnset = NonNullable<ArmHistory['onset']>;
/** A phrase around a word or a number. */
type Around = (is: string) => string;

/** The words of history and circulation. */
export interface HistoryTable {
  readonly title: string;
  readonly symptom: string;
  readonly symptoms: Of<Symptom>;
  /** The same as buttons. */
  readonly symptomOptions: Of<Symptom>;
  readonly claudicates: string;
  readonly tires: string;
  readonly muscles: Of<LegClaudication | ArmClaudication>;
  readonly noRisks: string;
  readonly distance: string;
  readonly severity: string;
  readonly severities: Of<Severity>;
  readonly began: string;
  readonly beganOptions: Of<LimbOnset>;
  readonly hours: string;
  /** What is new or sudden, as buttons. */
  readonly newSigns: Of<'suddenPain' | 'newComplaint'>;
  readonly exactly: string;
  readonly newSign: string;
  readonly onsetAt: string;
  refusedTime(typed: string): string;
  readonly armSign: string;
  readonly armSigns: Of<'coldFingers' | 'dizzyOnUse' | 'chestPainOnUse'>;
  readonly elsewhere: string;
  readonly circulationTitle: string;
  readonly shock: string;
  readonly bloodPressure: Of<'systolic' | 'diastolic'>;
  readonly heartRate: string;
  readonly rhythm: string;
  readonly rhythms: Of<Rhythm>;
  readonly risks: string;
  readonly riskNames: Of<RiskFactor>;
  readonly operations: string;
  readonly note: string;
  readonly onset: string;
  readonly arm: string;
  /** What was told, as a phrase. */
  readonly said: {
    readonly suddenPain: string;
    readonly newComplaint: string;
    readonly onsetAt: Around;
    readonly coldFingers: string;
    readonly dizzyOnUse: string;
    readonly chestPainOnUse: string;
    readonly severity: Around;
    readonly distance: Around;
    readonly onset: Of<LimbOnset>;
    hours(hours: string, one: boolean): string;
    /** How long, with a larger unit where days alone are hard to grasp. */
    days(days: number, long: LongTime | undefined): string;
    readonly note: Around;
    readonly shock: YesNo;
    bloodPressure(systolic: string, diastolic: string): string;
    readonly notStated: string;
    readonly heartRate: Around;
    readonly elsewhere: Around;
    readonly nothingElsewhere: string;
    readonly rhythm: Around;
    readonly risks: Around;
    readonly noRisks: string;
    readonly operations: Around;
  };
}

/** What other areas of a language lend to it. */
interface Lent {
  /** How the language writes a date, as BCP 47 tag. */
  readonly dates: string;
  readonly signs: Pick<SignWords, 'elsewhere'>;
  decimal(value: number): string;
}

/** The words of history and circulation, for controls and for what is said of a record. */
export function historyFrom(table: HistoryTable, { dates, signs, decimal }: Lent) {
  const words = without(table, 'said', 'riskNames');
  const { said, riskNames: risks } = table;
  const limb: Renderings<LimbHistoryStatement> = {
    suddenPain: () => said.suddenPain,
    newComplaint: () => said.newComplaint,
    onsetAt: ({ value }) => said.onsetAt(clockTime(value, dates)),
    coldFingers: () => said.coldFingers,
    dizzyOnUse: () => said.dizzyOnUse,
    chestPainOnUse: () => said.chestPainOnUse,
    symptom: ({ value }) => words.symptoms[value],
    severity: ({ value }) => said.severity(words.severities[value]),
    distance: ({ value }) => said.distance(decimal(value)),
    onset: ({ value }) => said.onset[value],
    hours: ({ hours }) => said.hours(decimal(hours), hours === 1),
    days: ({ days }) => said.days(days, longTime(days)),
    note: ({ value }) => said.note(value),
  };
  const pressure = (value: number | undefined): string =>
    value === undefined ? said.notStated : decimal(value);
  const circulation: Renderings<CirculationStatement> = {
    shock: ({ value }) => (value ? said.shock.yes : said.shock.no),
    'blood-pressure': ({ systolic, diastolic }) =>
      said.bloodPressure(pressure(systolic), pressure(diastolic)),
    heartRate: ({ value }) => said.heartRate(decimal(value)),
  };
  const whole: Renderings<HistoryStatement> = {
    elsewhere: ({ symptoms }) => said.elsewhere(symptoms.map((one) => signs.elsewhere[one]).join(', ')),
    'nothing-elsewhere': () => said.nothingElsewhere,
    rhythm: ({ value }) => said.rhythm(words.rhythms[value]),
    risks: ({ risks: named }) => said.risks(named.map((risk) => risks[risk]).join(', ')),
    'no-risks': () => said.noRisks,
    operations: ({ value }) => said.operations(value),
  };
  return together(words, {
    metres: 'm',
    hoursUnit: 'h',
    aMinute: '/min',
    elsewhereOptions: eachWord(signs.elsewhere, sentence),
    riskOptions: eachWord(risks, sentence),
    limb: (statement: LimbHistoryStatement): string => render(limb, statement),
    circulation: (statement: CirculationStatement): string => render(circulation, statement),
    whole: (statement: HistoryStatement): string => render(whole, statement),
  });
}
export type HistoryWords = ReturnType<typeof historyFrom>;
