import { historyFrom, type HistoryTable } from '../history.js';
import { inRegisters } from '../terms.js';
import { yesNo } from '../words.js';
import { signs } from './grounds.js';
import { plainHistory } from './history-plain.js';
import { decimal } from './phrases.js';

const trade: HistoryTable = {
  title: 'Anamnese',
  symptom: 'Beschwerden',
  symptoms: {
    none: 'keine Beschwerden',
    claudication: 'Claudicatio',
    'rest-pain': 'Ruheschmerz',
    'tissue-loss': 'Gewebsdefekt',
  },
  symptomOptions: {
    none: 'Keine',
    claudication: 'Claudicatio',
    'rest-pain': 'Ruheschmerz',
    'tissue-loss': 'Gewebsdefekt',
  },
  claudicates: 'Claudicatio in',
  tires: 'Claudicatio in',
  muscles: {
    none: 'nirgends',
    buttock: 'Gesäß',
    thigh: 'Oberschenkel',
    'calf-upper': 'obere Wade',
    'calf-lower': 'untere Wade',
    foot: 'Fuß',
    arm: 'Arm',
  },
  noRisks: 'Nichts davon',
  distance: 'Schmerzfreie Gehstrecke',
  severity: 'Schwere nach Ihrem Urteil',
  severities: { mild: 'leicht', moderate: 'mäßig', severe: 'schwer' },
  began: 'Begann',
  beganOptions: { sudden: 'Plötzlich', gradual: 'Allmählich', unknown: 'Nicht zu sagen' },
  hours: 'Stunden seither',
  newSigns: { suddenPain: 'Plötzlicher Schmerz', newComplaint: 'Neu aufgetreten' },
  exactly: 'Plötzlich, neu, Uhrzeit',
  newSign: 'Plötzlich oder neu',
  onsetAt: 'Begann um',
  refusedTime: (typed) =>
    `„${typed}“ wurde nicht übernommen. Erwartet wird ein vergangener Zeitpunkt mit Datum und Uhrzeit.`,
  armSign: 'Bei Gebrauch und anfallsweise',
  armSigns: {
    coldFingers: 'Anfallsweise kalte Finger',
    dizzyOnUse: 'Schwindel bei Gebrauch des Arms',
    chestPainOnUse: 'Brustschmerz bei Gebrauch des Arms',
  },
  elsewhere: 'Beschwerden andernorts',
  circulationTitle: 'Kreislauf',
  shock: 'Schock',
  bloodPressure: { systolic: 'Systolisch', diastolic: 'Diastolisch' },
  heartRate: 'Herzfrequenz',
  rhythm: 'Herzrhythmus',
  rhythms: {
    regular: 'regelmäßig',
    'atrial-fibrillation': 'Vorhofflimmern',
    'other-irregular': 'anders unregelmäßig',
  },
  risks: 'Risikofaktoren',
  riskNames: {
    hypertension: 'arterielle Hypertonie',
    'high-cholesterol': 'Hypercholesterinämie',
    'kidney-disease': 'chronische Niereninsuffizienz',
    'coronary-disease': 'koronare Herzkrankheit',
    'recent-heart-attack': 'kürzlicher Myokardinfarkt',
    'heart-valve-disease': 'Herzklappenerkrankung',
    'heart-failure': 'Herzinsuffizienz',
    stroke: 'Schlaganfall oder transitorische ischämische Attacke (TIA)',
    'earlier-embolus': 'frühere Embolie',
    'known-aneurysm': 'bekanntes Aneurysma',
    'clotting-tendency': 'Thrombophilie',
    'anticoagulant-stopped': 'Antikoagulation unterbrochen',
    'connective-tissue-disease': 'Bindegewebserkrankung',
    'family-history': 'familiäre Belastung',
  },
  operations: 'Frühere Eingriffe',
  note: 'Notiz',
  onset: 'Beginn der jetzigen Beschwerden',
  arm: 'Arme',
  said: {
    suddenPain: 'plötzlicher Schmerz',
    newComplaint: 'neu aufgetreten',
    onsetAt: (is) => `begann am ${is}`,
    coldFingers: 'Finger werden anfallsweise weiß oder kalt',
    dizzyOnUse: 'Schwindel oder Schwäche bei Gebrauch des Arms',
    chestPainOnUse: 'Brustschmerz bei Gebrauch des Arms',
    severity: (is) => `nach ärztlichem Urteil ${is}`,
    distance: (is) => `schmerzfreie Gehstrecke ${is} m`,
    onset: {
      sudden: 'plötzlicher Beginn',
      gradual: 'allmählicher Beginn',
      unknown: 'Beginn nicht bekannt',
    },
    hours: (hours, one) => `seit ${hours} ${one ? 'Stunde' : 'Stunden'}`,
    days: (days, long) => {
      if (!long) return `seit ${days} Tagen`;
      const unit = { week: 'Wochen', month: 'Monaten', year: 'Jahren' }[long.unit];
      return `seit ${long.exact ? '' : 'etwa '}${long.count} ${unit} (${days} Tagen)`;
    },
    note: (is) => `Notiz: ${is}`,
    shock: yesNo('im Schock', 'kein Schock'),
    bloodPressure: (systolic, diastolic) => `Blutdruck ${systolic} zu ${diastolic} mmHg`,
    notStated: 'nicht angegeben',
    heartRate: (is) => `Herzfrequenz ${is} pro Minute`,
    elsewhere: (is) => `andernorts: ${is}`,
    nothingElsewhere: 'keine Beschwerden andernorts',
    rhythm: (is) => `Herzrhythmus: ${is}`,
    risks: (is) => `Risikofaktoren: ${is}`,
    noRisks: 'keine Risikofaktoren genannt',
    operations: (is) => `frühere Eingriffe: ${is}`,
  },
};

export const history = historyFrom(inRegisters(trade, plainHistory), { dates: 'de-DE', signs, decimal });
