import type {
  ArmClaudication,
  LegClaudication,
  LimbHistory,
  RiskFactor,
  Rhythm,
  Severity,
  Symptom,
} from '../../examination/index.js';
import type { CirculationStatement, HistoryStatement, LimbHistoryStatement } from '../../statements/index.js';
import { render, type Renderings } from '../render.js';
import { clockTime } from '../phrases.js';
import { signs } from './grounds.js';
import { capitalised, decimal, sentence } from './phrases.js';
import { terms } from './terms.js';

const symptoms: Record<Symptom, string> = {
  none: 'no symptoms',
  get claudication() {
    return terms.claudication;
  },
  'rest-pain': 'rest pain',
  'tissue-loss': 'tissue loss',
};

const severities: Record<Severity, string> = { mild: 'mild', moderate: 'moderate', severe: 'severe' };
const onsets: Record<NonNullable<LimbHistory['onset']>, string> = {
  sudden: 'sudden',
  gradual: 'gradual',
  unknown: 'onset not known',
};

const rhythms: Record<Rhythm, string> = {
  regular: 'regular',
  'atrial-fibrillation': 'atrial fibrillation',
  'other-irregular': 'otherwise irregular',
};

const risks: Record<RiskFactor, string> = {
  hypertension: 'high blood pressure',
  'high-cholesterol': 'high cholesterol',
  'kidney-disease': 'kidney disease',
  'coronary-disease': 'coronary disease',
  'recent-heart-attack': 'recent heart attack',
  'heart-valve-disease': 'heart valve disease',
  stroke: 'stroke or passing stroke',
  'earlier-embolus': 'earlier embolus',
  'known-aneurysm': 'known aneurysm',
  'clotting-tendency': 'clotting tendency',
  'anticoagulant-stopped': 'anticoagulant stopped',
  'connective-tissue-disease': 'connective tissue disease',
  'family-history': 'family history',
};

const limb: Renderings<LimbHistoryStatement> = {
  suddenPain: 'sudden pain',
  newComplaint: 'something new',
  onsetAt: ({ value }) => `began ${clockTime(value, 'en-GB')}`,
  coldFingers: 'fingers turn white or cold in attacks',
  dizzyOnUse: 'dizzy or faint when the arm is used',
  symptom: ({ value }) => symptoms[value],
  severity: ({ value }) => `${severities[value]} in the clinician’s judgement`,
  distance: ({ value }) => `pain-free walking distance ${decimal(value)} m`,
  onset: ({ value }) => `${onsets[value]} onset`,
  hours: ({ hours }) => `for ${decimal(hours)} ${hours === 1 ? 'hour' : 'hours'}`,
  days: ({ days }) => `for ${days} days`,
  note: ({ value }) => `note: ${value}`,
};

const circulation: Renderings<CirculationStatement> = {
  shock: ({ value }) => (value ? 'in shock' : 'not in shock'),
  'blood-pressure': ({ systolic, diastolic }) =>
    `blood pressure ${systolic ?? 'not stated'} over ${diastolic ?? 'not stated'} mmHg`,
  heartRate: ({ value }) => `heart rate ${decimal(value)} a minute`,
};

const whole: Renderings<HistoryStatement> = {
  elsewhere: ({ symptoms: named }) => `elsewhere: ${named.map((one) => signs.elsewhere[one]).join(', ')}`,
  'nothing-elsewhere': 'no symptoms elsewhere',
  rhythm: ({ value }) => `heart rhythm ${rhythms[value]}`,
  risks: ({ risks: named }) => `risk factors: ${named.map((risk) => risks[risk]).join(', ')}`,
  'no-risks': 'no risk factors named',
  operations: ({ value }) => `earlier operations: ${value}`,
};

export const history = {
  title: 'History',
  symptom: 'Symptom',
  symptoms,
  symptomOptions: {
    none: 'None',
    get claudication() {
      return sentence(terms.claudication);
    },
    'rest-pain': 'Rest pain',
    'tissue-loss': 'Tissue loss',
  } satisfies Record<Symptom, string>,
  claudicates: 'Hurts on walking',
  tires: 'Tires on use',
  muscles: {
    none: 'nowhere',
    buttock: 'buttock',
    thigh: 'thigh',
    'calf-upper': 'upper calf',
    'calf-lower': 'lower calf',
    foot: 'foot',
    arm: 'arm',
  } satisfies Record<LegClaudication | ArmClaudication, string>,
  noRisks: 'None of these',
  distance: 'Walks without pain',
  metres: 'm',
  severity: 'Severity, in your judgement',
  severities,
  began: 'Began',
  beganOptions: { sudden: 'Suddenly', gradual: 'Gradually', unknown: 'Cannot say' },
  hours: 'Hours since',
  hoursUnit: 'h',
  /** What is new or sudden, as buttons. */
  newSigns: { suddenPain: 'Sudden pain', newComplaint: 'Something new' },
  exactly: 'Sudden, new, time on the clock',
  newSign: 'Sudden or new',
  onsetAt: 'Began at',
  refusedTime: (typed: string) => `“${typed}” was not taken. Expected a date and time that has passed.`,
  armSign: 'On use and in attacks',
  armSigns: { coldFingers: 'Cold fingers in attacks', dizzyOnUse: 'Dizzy when the arm is used' },
  elsewhere: 'Symptoms elsewhere',
  elsewhereOptions: capitalised(signs.elsewhere),
  circulationTitle: 'Circulation',
  shock: 'Shock',
  bloodPressure: { systolic: 'Systolic', diastolic: 'Diastolic' },
  heartRate: 'Heart rate',
  aMinute: '/min',
  rhythm: 'Heart rhythm',
  rhythms,
  risks: 'Risk factors',
  riskOptions: capitalised(risks),
  operations: 'Earlier operations',
  note: 'Note',
  onset: 'Onset of the present trouble',
  arm: 'Arms',
  limb: (statement: LimbHistoryStatement) => render(limb, statement),
  circulation: (statement: CirculationStatement) => render(circulation, statement),
  whole: (statement: HistoryStatement) => render(whole, statement),
};
export type HistoryWords = typeof history;
