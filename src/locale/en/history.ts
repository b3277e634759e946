import type {
  ArmClaudication,
  LegClaudication,
  LimbHistory,
  RiskFactor,
  Rhythm,
  Severity,
  Symptom,
} from '../../examination/index.js';
import type { HistoryStatement, LimbHistoryStatement } from '../../statements/index.js';
import { render, type Renderings } from '../render.js';
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
  symptom: ({ value }) => symptoms[value],
  severity: ({ value }) => `${severities[value]} in the clinician’s judgement`,
  distance: ({ value }) => `pain-free walking distance ${decimal(value)} m`,
  onset: ({ value }) => `${onsets[value]} onset`,
  hours: ({ hours }) => `for ${decimal(hours)} ${hours === 1 ? 'hour' : 'hours'}`,
  days: ({ days }) => `for ${days} days`,
  note: ({ value }) => `note: ${value}`,
};

const whole: Renderings<HistoryStatement> = {
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
  rhythm: 'Heart rhythm',
  rhythms,
  risks: 'Risk factors',
  riskOptions: capitalised(risks),
  operations: 'Earlier operations',
  note: 'Note',
  onset: 'Onset of the present trouble',
  arm: 'Arms',
  limb: (statement: LimbHistoryStatement) => render(limb, statement),
  whole: (statement: HistoryStatement) => render(whole, statement),
};
export type HistoryWords = typeof history;
