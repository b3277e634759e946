import type { HistoryTable } from '../history.js';
import type { Otherwise } from '../terms.js';

/** History, for a reader who is no clinician. */
export const plainHistory: Otherwise<HistoryTable> = {
  title: 'Ihre Beschwerden',
  symptoms: {
    claudication: 'Schmerz beim Gehen',
    'rest-pain': 'Schmerz in Ruhe oder nachts',
    'tissue-loss': 'Wunde oder abgestorbenes Gewebe',
  },
  symptomOptions: {
    claudication: 'Schmerz beim Gehen',
    'rest-pain': 'Schmerz in Ruhe oder nachts',
    'tissue-loss': 'Wunde oder abgestorbenes Gewebe',
  },
  claudicates: 'Schmerz beim Gehen',
  tires: 'Ermüdet bei Gebrauch',
  distance: 'Geht ohne Schmerz',
  shock: 'Kreislaufversagen (Schock)',
  bloodPressure: { systolic: 'Oberer Wert', diastolic: 'Unterer Wert' },
  heartRate: 'Herzschläge pro Minute',
  riskNames: {
    hypertension: 'Bluthochdruck',
    'high-cholesterol': 'hohes Cholesterin',
    'kidney-disease': 'Nierenerkrankung',
    'recent-heart-attack': 'kürzlicher Herzinfarkt',
    'heart-valve-disease': 'Herzklappenfehler',
    'coronary-disease': 'Erkrankung der Herzkranzgefäße',
    'heart-failure': 'Herzschwäche',
    stroke: 'Schlaganfall oder kurzer Schlaganfall',
    'earlier-embolus': 'früher eingeschwemmtes Gerinnsel',
    'known-aneurysm': 'bekannte erweiterte Schlagader',
    'clotting-tendency': 'Blut, das zu leicht gerinnt',
    'anticoagulant-stopped': 'Blutverdünner abgesetzt',
    'family-history': 'solche Krankheiten in der Familie',
  },
  said: {
    distance: (is) => `geht ${is} m ohne Schmerz`,
    shock: { yes: 'Kreislaufversagen (Schock)', no: 'kein Kreislaufversagen (kein Schock)' },
    heartRate: (is) => `${is} Herzschläge pro Minute`,
  },
};
