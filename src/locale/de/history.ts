import type {
  LimbHistory,
  PatientHistory,
  RiskFactor,
  Rhythm,
  Severity,
  Symptom,
} from '../../examination/index.js';
import type { HistoryWords } from '../en/history.js';
import { decimal } from './phrases.js';

const symptoms: Record<Symptom, string> = {
  none: 'keine Beschwerden',
  claudication: 'Claudicatio',
  'rest-pain': 'Ruheschmerz',
  'tissue-loss': 'Gewebeverlust',
};

const severities: Record<Severity, string> = { mild: 'leicht', moderate: 'mäßig', severe: 'schwer' };
const onsets: Record<NonNullable<LimbHistory['onset']>, string> = {
  sudden: 'plötzlicher Beginn',
  gradual: 'allmählicher Beginn',
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
const riskOptions: Record<RiskFactor, string> = {
  ...risks,
  'high-cholesterol': 'Hohes Cholesterin',
  'coronary-disease': 'Koronare Herzkrankheit',
  'recent-heart-attack': 'Kürzlicher Herzinfarkt',
  'earlier-embolus': 'Frühere Embolie',
  'known-aneurysm': 'Bekanntes Aneurysma',
  'family-history': 'Familiäre Belastung',
};

/** Hours as one says them after "seit": hours up to two days, then days. */
function duration(hours: number): string {
  if (hours < 48) return `${decimal(hours)} ${hours === 1 ? 'Stunde' : 'Stunden'}`;
  return `${Math.round(hours / 24)} Tagen`;
}

/** Everything recorded of one limb, in phrases. */
function limb({ symptom, distance, severity, onset, hours, note }: LimbHistory): string[] {
  return [
    ...(symptom ? [symptoms[symptom]] : []),
    ...(severity ? [`nach ärztlichem Urteil ${severities[severity]}`] : []),
    ...(distance === undefined ? [] : [`schmerzfreie Gehstrecke ${decimal(distance)} m`]),
    ...(onset ? [onsets[onset]] : []),
    ...(hours === undefined ? [] : [`seit ${duration(hours)}`]),
    ...(note ? [`Notiz: ${note}`] : []),
  ];
}

/** What is not about one limb, in phrases. */
function whole({ rhythm, risks: stated, operations }: PatientHistory): string[] {
  return [
    ...(rhythm ? [`Herzrhythmus: ${rhythms[rhythm]}`] : []),
    ...(stated
      ? [
          stated.length
            ? `Risikofaktoren: ${stated.map((r) => risks[r]).join(', ')}`
            : 'keine Risikofaktoren genannt',
        ]
      : []),
    ...(operations ? [`frühere Eingriffe: ${operations}`] : []),
  ];
}

export const history: HistoryWords = {
  title: 'Anamnese',
  symptom: 'Beschwerden',
  symptoms,
  symptomOptions: {
    none: 'Keine',
    claudication: 'Claudicatio',
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
  beganOptions: { sudden: 'Plötzlich', gradual: 'Allmählich' },
  hours: 'Stunden seither',
  hoursUnit: 'h',
  rhythm: 'Herzrhythmus',
  rhythms,
  risks: 'Risikofaktoren',
  riskOptions,
  operations: 'Frühere Eingriffe',
  note: 'Notiz',
  onset: 'Beginn der jetzigen Beschwerden',
  arm: 'Arme',
  limb,
  whole,
};
