import type { HistoryTable } from '../history.js';
import type { Otherwise } from '../terms.js';

/** History, for a reader who is no clinician. */
export const plainHistory: Otherwise<HistoryTable> = {
  title: 'Your story',
  symptoms: {
    claudication: 'pain on walking',
    'rest-pain': 'pain at rest or at night',
    'tissue-loss': 'wound or dead tissue',
  },
  symptomOptions: {
    claudication: 'Pain on walking',
    'rest-pain': 'Pain at rest or at night',
    'tissue-loss': 'Wound or dead tissue',
  },
  claudicates: 'Hurts on walking',
  tires: 'Tires on use',
  distance: 'Walks without pain',
  elsewhere: 'Symptoms in other places',
  shock: 'Circulation failing (shock)',
  bloodPressure: { systolic: 'Upper value', diastolic: 'Lower value' },
  riskNames: {
    hypertension: 'high blood pressure',
    'high-cholesterol': 'high cholesterol',
    'kidney-disease': 'kidney disease',
    'recent-heart-attack': 'recent heart attack',
    'heart-valve-disease': 'heart valve disease',
    stroke: 'stroke or mini-stroke',
    'coronary-disease': 'disease of the heart’s own arteries',
    'heart-failure': 'weak heart',
    'earlier-embolus': 'earlier clot that travelled',
    'known-aneurysm': 'known widened artery',
    'clotting-tendency': 'blood that clots too easily',
    'anticoagulant-stopped': 'blood thinner stopped',
    'family-history': 'such diseases in the family',
  },
  onset: 'When the present complaint began',
  said: {
    distance: (is) => `walks ${is} m without pain`,
    onset: { sudden: 'began suddenly', gradual: 'began gradually', unknown: 'not known how it began' },
    shock: { yes: 'circulation failing (shock)', no: 'circulation not failing (no shock)' },
    elsewhere: (is) => `in other places: ${is}`,
    nothingElsewhere: 'no symptoms in other places',
  },
};
