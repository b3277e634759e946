import type { LimbHistory, RiskFactor, Rhythm, Severity, Symptom } from '../../examination/index.js';
import type { CirculationStatement, HistoryStatement, LimbHistoryStatement } from '../../statements/index.js';
import type { HistoryWords } from '../en/history.js';
import { render, type Renderings } from '../render.js';
import { clockTime } from '../phrases.js';
import { signs } from './grounds.js';
import { capitalised, decimal, sentence } from './phrases.js';
import { terms } from './terms.js';

const symptoms: Record<Symptom, string> = {
  none: 'keine Beschwerden',
  get claudication() {
    return terms.claudication;
  },
  'rest-pain': 'Ruheschmerz',
  'tissue-loss': 'Gewebeverlust',
};

const severities: Record<Severity, string> = { mild: 'leicht', moderate: 'mäßig', severe: 'schwer' };
const onsets: Record<NonNullable<LimbHistory['onset']>, string> = {
  sudden: 'plötzlicher Beginn',
  gradual: 'allmählicher Beginn',
  unknown: 'Beginn nicht bekannt',
};

const rhythms: Record<Rhythm, string> = {
  regular: 'regelmäßig',
  'atrial-fibrillation': 'Vorhofflimmern',
  'other-irregular': 'anders unregelmäßig',
};

const risks: Record<RiskFactor, string> = {
  hypertension: 'Bluthochdruck',
  'high-cholesterol': 'hohes Cholesterin',
  'kidney-disease': 'Nierenerkrankung',
  'coronary-disease': 'koronare Herzkrankheit',
  'recent-heart-attack': 'kürzlicher Herzinfarkt',
  'heart-valve-disease': 'Herzklappenerkrankung',
  stroke: 'Schlaganfall oder TIA',
  'earlier-embolus': 'frühere Embolie',
  'known-aneurysm': 'bekanntes Aneurysma',
  'clotting-tendency': 'Thromboseneigung',
  'anticoagulant-stopped': 'Gerinnungshemmer abgesetzt',
  'connective-tissue-disease': 'Bindegewebserkrankung',
  'family-history': 'familiäre Belastung',
};
const limb: Renderings<LimbHistoryStatement> = {
  suddenPain: 'plötzlicher Schmerz',
  newComplaint: 'neu aufgetreten',
  onsetAt: ({ value }) => `begann am ${clockTime(value, 'de-DE')}`,
  coldFingers: 'Finger werden anfallsweise weiß oder kalt',
  dizzyOnUse: 'Schwindel oder Schwäche bei Gebrauch des Arms',
  symptom: ({ value }) => symptoms[value],
  severity: ({ value }) => `nach ärztlichem Urteil ${severities[value]}`,
  distance: ({ value }) => `schmerzfreie Gehstrecke ${decimal(value)} m`,
  onset: ({ value }) => onsets[value],
  hours: ({ hours }) => `seit ${decimal(hours)} ${hours === 1 ? 'Stunde' : 'Stunden'}`,
  days: ({ days }) => `seit ${days} Tagen`,
  note: ({ value }) => `Notiz: ${value}`,
};

const circulation: Renderings<CirculationStatement> = {
  shock: ({ value }) => (value ? 'im Schock' : 'kein Schock'),
  'blood-pressure': ({ systolic, diastolic }) =>
    `Blutdruck ${systolic ?? 'nicht angegeben'} zu ${diastolic ?? 'nicht angegeben'} mmHg`,
  heartRate: ({ value }) => `Herzfrequenz ${decimal(value)} pro Minute`,
};

const whole: Renderings<HistoryStatement> = {
  elsewhere: ({ symptoms: named }) => `andernorts: ${named.map((one) => signs.elsewhere[one]).join(', ')}`,
  'nothing-elsewhere': 'keine Beschwerden andernorts',
  rhythm: ({ value }) => `Herzrhythmus: ${rhythms[value]}`,
  risks: ({ risks: named }) => `Risikofaktoren: ${named.map((risk) => risks[risk]).join(', ')}`,
  'no-risks': 'keine Risikofaktoren genannt',
  operations: ({ value }) => `frühere Eingriffe: ${value}`,
};

export const history: HistoryWords = {
  title: 'Anamnese',
  symptom: 'Beschwerden',
  symptoms,
  symptomOptions: {
    none: 'Keine',
    get claudication() {
      return sentence(terms.claudication);
    },
    'rest-pain': 'Ruheschmerz',
    'tissue-loss': 'Gewebeverlust',
  },
  claudicates: 'Schmerz beim Gehen',
  tires: 'Ermüdet bei Gebrauch',
  muscles: {
    none: 'nirgends',
    buttock: 'Gesäß',
    thigh: 'Oberschenkel',
    'calf-upper': 'obere Wade',
    'calf-lower': 'untere Wade',
    foot: 'Fuß',
    arm: 'Arm',
  },
  noRisks: 'Keiner davon',
  distance: 'Geht ohne Schmerz',
  metres: 'm',
  severity: 'Schwere nach Ihrem Urteil',
  severities,
  began: 'Begann',
  beganOptions: { sudden: 'Plötzlich', gradual: 'Allmählich', unknown: 'Nicht zu sagen' },
  hours: 'Stunden seither',
  hoursUnit: 'h',
  newSigns: { suddenPain: 'Plötzlicher Schmerz', newComplaint: 'Neu aufgetreten' },
  exactly: 'Plötzlich, neu, Uhrzeit',
  newSign: 'Plötzlich oder neu',
  onsetAt: 'Begann um',
  refusedTime: (typed) =>
    `„${typed}“ wurde nicht übernommen. Erwartet wird ein vergangener Zeitpunkt mit Datum und Uhrzeit.`,
  armSign: 'Bei Gebrauch und anfallsweise',
  armSigns: { coldFingers: 'Anfallsweise kalte Finger', dizzyOnUse: 'Schwindel bei Gebrauch des Arms' },
  elsewhere: 'Beschwerden andernorts',
  elsewhereOptions: capitalised(signs.elsewhere),
  circulationTitle: 'Kreislauf',
  shock: 'Schock',
  bloodPressure: { systolic: 'Systolisch', diastolic: 'Diastolisch' },
  heartRate: 'Herzfrequenz',
  aMinute: '/min',
  rhythm: 'Herzrhythmus',
  rhythms,
  risks: 'Risikofaktoren',
  riskOptions: capitalised(risks),
  operations: 'Frühere Eingriffe',
  note: 'Notiz',
  onset: 'Beginn der jetzigen Beschwerden',
  arm: 'Arme',
  limb: (statement) => render(limb, statement),
  circulation: (statement) => render(circulation, statement),
  whole: (statement) => render(whole, statement),
};
