import type { LimbHistory, RiskFactor, Rhythm, Severity, Symptom } from '../../examination/index.js';
import type { HistoryStatement, LimbHistoryStatement } from '../../statements/index.js';
import type { HistoryWords } from '../en/history.js';
import { render, type Renderings } from '../render.js';
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
  symptom: ({ value }) => symptoms[value],
  severity: ({ value }) => `nach ärztlichem Urteil ${severities[value]}`,
  distance: ({ value }) => `schmerzfreie Gehstrecke ${decimal(value)} m`,
  onset: ({ value }) => onsets[value],
  hours: ({ hours }) => `seit ${decimal(hours)} ${hours === 1 ? 'Stunde' : 'Stunden'}`,
  days: ({ days }) => `seit ${days} Tagen`,
  note: ({ value }) => `Notiz: ${value}`,
};

const whole: Renderings<HistoryStatement> = {
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
  rhythm: 'Herzrhythmus',
  rhythms,
  risks: 'Risikofaktoren',
  riskOptions: capitalised(risks),
  operations: 'Frühere Eingriffe',
  note: 'Notiz',
  onset: 'Beginn der jetzigen Beschwerden',
  arm: 'Arme',
  limb: (statement) => render(limb, statement),
  whole: (statement) => render(whole, statement),
};
