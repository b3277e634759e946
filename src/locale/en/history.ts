import { historyFrom, type HistoryTable } from '../history.js';
import { inRegisters } from '../terms.js';
import { yesNo } from '../words.js';
import { signs } from './grounds.js';
import { plainHistory } from './history-plain.js';
import { decimal } from './phrases.js';

const trade: HistoryTable = {
  title: 'History',
  symptom: 'Symptom',
  symptoms: {
    none: 'no symptoms',
    claudication: 'claudication',
    'rest-pain': 'rest pain',
    'tissue-loss': 'tissue loss',
  },
  symptomOptions: {
    none: 'None',
    claudication: 'Claudication',
    'rest-pain': 'Rest pain',
    'tissue-loss': 'Tissue loss',
  },
  claudicates: 'Claudication in',
  tires: 'Claudication in',
  muscles: {
    none: 'nowhere',
    buttock: 'buttock',
    thigh: 'thigh',
    'calf-upper': 'upper calf',
    'calf-lower': 'lower calf',
    foot: 'foot',
    arm: 'arm',
  },
  noRisks: 'None of these',
  distance: 'Pain-free walking distance',
  severity: 'Severity, in your judgement',
  severities: { mild: 'mild', moderate: 'moderate', severe: 'severe' },
  began: 'Began',
  beganOptions: { sudden: 'Suddenly', gradual: 'Gradually', unknown: 'Cannot say' },
  hours: 'Hours since',
  newSigns: { suddenPain: 'Sudden pain', newComplaint: 'Something new' },
  exactly: 'Sudden, new, time on the clock',
  newSign: 'Sudden or new',
  onsetAt: 'Began at',
  refusedTime: (typed) => `“${typed}” was not taken. Expected a date and time that has passed.`,
  armSign: 'On use and in attacks',
  armSigns: {
    coldFingers: 'Cold fingers in attacks',
    dizzyOnUse: 'Dizzy when the arm is used',
    chestPainOnUse: 'Chest pain when the arm is used',
  },
  elsewhere: 'Symptoms elsewhere',
  circulationTitle: 'Circulation',
  shock: 'Shock',
  bloodPressure: { systolic: 'Systolic', diastolic: 'Diastolic' },
  heartRate: 'Heart rate',
  rhythm: 'Heart rhythm',
  rhythms: {
    regular: 'regular',
    'atrial-fibrillation': 'atrial fibrillation',
    'other-irregular': 'otherwise irregular',
  },
  risks: 'Risk factors',
  riskNames: {
    hypertension: 'hypertension',
    'high-cholesterol': 'hypercholesterolaemia',
    'kidney-disease': 'chronic kidney disease',
    'coronary-disease': 'ischaemic heart disease',
    'recent-heart-attack': 'recent myocardial infarction',
    'heart-valve-disease': 'valvular heart disease',
    'heart-failure': 'heart failure',
    stroke: 'stroke or transient ischaemic attack (TIA)',
    'earlier-embolus': 'earlier embolus',
    'known-aneurysm': 'known aneurysm',
    'clotting-tendency': 'thrombophilia',
    'anticoagulant-stopped': 'anticoagulation interrupted',
    'connective-tissue-disease': 'connective tissue disease',
    'family-history': 'family history',
  },
  operations: 'Earlier operations',
  note: 'Note',
  onset: 'Onset of the present complaint',
  arm: 'Arms',
  said: {
    suddenPain: 'sudden pain',
    newComplaint: 'something new',
    onsetAt: (is) => `began ${is}`,
    coldFingers: 'fingers turn white or cold in attacks',
    dizzyOnUse: 'dizzy or faint when the arm is used',
    chestPainOnUse: 'chest pain when the arm is used',
    severity: (is) => `${is} in the clinician’s judgement`,
    distance: (is) => `pain-free walking distance ${is} m`,
    onset: { sudden: 'sudden onset', gradual: 'gradual onset', unknown: 'onset not known' },
    hours: (hours, one) => `for ${hours} ${one ? 'hour' : 'hours'}`,
    days: (days, long) => {
      if (!long) return `for ${days} days`;
      const { unit, count, exact } = long;
      return `for ${exact ? '' : 'about '}${count} ${unit}${count === 1 ? '' : 's'} (${days} days)`;
    },
    note: (is) => `note: ${is}`,
    shock: yesNo('in shock', 'not in shock'),
    bloodPressure: (systolic, diastolic) => `blood pressure ${systolic} over ${diastolic} mmHg`,
    notStated: 'not stated',
    heartRate: (is) => `heart rate ${is} a minute`,
    elsewhere: (is) => `elsewhere: ${is}`,
    nothingElsewhere: 'no symptoms elsewhere',
    rhythm: (is) => `heart rhythm ${is}`,
    risks: (is) => `risk factors: ${is}`,
    noRisks: 'no risk factors named',
    operations: (is) => `earlier operations: ${is}`,
  },
};

export const history = historyFrom(inRegisters(trade, plainHistory), { dates: 'en-GB', signs, decimal });
