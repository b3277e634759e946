import type {
  ArmClaudication,
  LegClaudication,
  LimbHistory,
  PatientHistory,
  RiskFactor,
  Rhythm,
  Severity,
  Symptom,
} from '../../examination/index.js';
import { sentence } from './phrases.js';

const symptoms: Record<Symptom, string> = {
  none: 'no symptoms',
  claudication: 'claudication',
  'rest-pain': 'rest pain',
  'tissue-loss': 'tissue loss',
};

const severities: Record<Severity, string> = { mild: 'mild', moderate: 'moderate', severe: 'severe' };
const onsets: Record<NonNullable<LimbHistory['onset']>, string> = { sudden: 'sudden', gradual: 'gradual' };

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

/** Hours as one says them: hours up to two days, then days. */
function duration(hours: number): string {
  if (hours < 48) return `${hours} ${hours === 1 ? 'hour' : 'hours'}`;
  const days = Math.round(hours / 24);
  return `${days} days`;
}

/** Everything recorded of one limb, in phrases. */
function limb(history: LimbHistory): string[] {
  const { symptom, distance, severity, onset, hours, note } = history;
  return [
    ...(symptom ? [symptoms[symptom]] : []),
    ...(severity ? [`${severities[severity]} in the clinician’s judgement`] : []),
    ...(distance === undefined ? [] : [`pain-free walking distance ${distance} m`]),
    ...(onset ? [`${onsets[onset]} onset`] : []),
    ...(hours === undefined ? [] : [`for ${duration(hours)}`]),
    ...(note ? [`note: ${note}`] : []),
  ];
}

/** What is not about one limb, in phrases. */
function whole({ rhythm, risks: stated, operations }: PatientHistory): string[] {
  return [
    ...(rhythm ? [`heart rhythm ${rhythms[rhythm]}`] : []),
    ...(stated
      ? [stated.length ? `risk factors: ${stated.map((r) => risks[r]).join(', ')}` : 'no risk factors named']
      : []),
    ...(operations ? [`earlier operations: ${operations}`] : []),
  ];
}

export const history = {
  title: 'History',
  symptom: 'Symptom',
  symptoms,
  symptomOptions: {
    none: 'None',
    claudication: 'Claudication',
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
  beganOptions: { sudden: 'Suddenly', gradual: 'Gradually' },
  hours: 'Hours since',
  hoursUnit: 'h',
  rhythm: 'Heart rhythm',
  rhythms,
  risks: 'Risk factors',
  riskOptions: Object.fromEntries(Object.entries(risks).map(([k, word]) => [k, sentence(word)])) as Record<
    RiskFactor,
    string
  >,
  operations: 'Earlier operations',
  note: 'Note',
  onset: 'Onset of the present trouble',
  arm: 'Arms',
  limb,
  whole,
};
export type HistoryWords = typeof history;
