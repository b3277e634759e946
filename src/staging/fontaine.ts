import { FONTAINE_STAGES, type FontaineStage } from '../examination/index.js';
import { given } from '../triage/ground.js';
import { acuteNotes } from './acute-leg.js';
import {
  type BySymptoms,
  type ChronicSettings,
  type ChronicStage,
  DEFAULT_CHRONIC_SETTINGS,
  diseaseNotes,
  isSilent,
  objectiveOf,
  woundsMissing,
} from './chronic.js';
import { derive } from './derived.js';
import { leavesWoundsOpen, type LegFindings } from './findings.js';
import { STAGING_SOURCES } from './sources.js';

/** Pain-free walking distance that parts stage IIa from IIb, in metres. */
export const FONTAINE_DISTANCE = { value: 200, source: STAGING_SOURCES.fontaine1954 } as const;

function claudication(
  { facts }: LegFindings,
  at200: ChronicSettings['fontaineAt200'],
): BySymptoms<FontaineStage> {
  const { distance, severity } = facts.history;
  const told = { code: 'symptom', value: 'claudication' } as const;
  const { value: limit } = FONTAINE_DISTANCE;
  if (distance !== undefined) {
    return {
      candidates: [distance > limit ? 'IIa' : distance < limit ? 'IIb' : at200],
      grounds: [told, { code: 'distance', metres: distance, limit }],
      missing: [],
      notes: given(distance === limit, 'at-200' as const),
    };
  }
  if (!severity) return { candidates: ['IIa', 'IIb'], grounds: [told], missing: ['distance'] };
  return {
    candidates: [severity === 'mild' ? 'IIa' : 'IIb'],
    grounds: [told, { code: 'severity', value: severity }],
    missing: ['distance'],
  };
}

function bySymptom(findings: LegFindings, settings: ChronicSettings): BySymptoms<FontaineStage> {
  const { symptom } = findings.facts.history;
  if (symptom === undefined || symptom === 'tissue-loss') {
    return {
      candidates: ['I', 'IIa', 'IIb', 'III'],
      grounds: given(symptom, { code: 'symptom', value: 'tissue-loss' } as const),
      missing: given(symptom === undefined, 'symptom' as const),
    };
  }
  if (symptom === 'claudication') return claudication(findings, settings.fontaineAt200);
  return {
    candidates: [symptom === 'rest-pain' ? 'III' : 'I'],
    grounds: [{ code: 'symptom', value: symptom }],
    missing: [],
  };
}

/**
 * The Fontaine stage of a leg by symptoms and wounds alone; pressures in the range of rest pain are told beside it. A wound not
 * looked at, or of open cause, leaves IV open.
 */
export function fontaineStage(
  findings: LegFindings,
  settings: ChronicSettings = DEFAULT_CHRONIC_SETTINGS,
): ChronicStage<FontaineStage> {
  const { restPain } = objectiveOf(findings);
  const { disease, tissueLoss, wounds } = findings;
  const at = (clinical: BySymptoms<FontaineStage>): ChronicStage<FontaineStage> => {
    const highest = clinical.candidates.at(-1);
    const certain = clinical.candidates.every((stage) => stage === 'III' || stage === 'IV');
    const beside = highest === 'III' || highest === 'IV' ? (certain ? [] : restPain) : restPain;
    return {
      ...derive(clinical.candidates, {
        ...clinical,
        notes: [
          ...(clinical.notes ?? []),
          ...acuteNotes(findings, clinical.candidates),
          ...given(beside.length, 'pressures-of-rest-pain' as const),
          ...diseaseNotes(findings, certain && clinical.candidates.length > 0),
        ],
      }),
      beside,
      disease: disease.state,
    };
  };
  if (isSilent(findings))
    return at({ candidates: [], grounds: [], missing: ['symptom', 'ulcer', 'gangrene'] });
  if (tissueLoss === 'yes') return at({ candidates: ['IV'], grounds: wounds.because, missing: [] });
  const clinical = bySymptom(findings, settings);
  if (!leavesWoundsOpen(findings)) return at(clinical);
  return at({
    ...clinical,
    candidates: FONTAINE_STAGES.filter((stage) => stage === 'IV' || clinical.candidates.includes(stage)),
    grounds: [...clinical.grounds, ...wounds.because.filter(({ code }) => code !== 'symptom')],
    missing: [...clinical.missing, ...woundsMissing(findings)],
  });
}
