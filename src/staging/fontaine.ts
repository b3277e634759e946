import type { FontaineStage, Pressures } from '../examination/index.js';
import { type PressureSettings, pressureSettings } from '../pressures/index.js';
import {
  type BySymptoms,
  type ChronicSettings,
  type ChronicStage,
  DEFAULT_CHRONIC_SETTINGS,
  objectiveOf,
} from './chronic.js';
import { derive, given, ground } from './derived.js';
import { type LimbFindings, woundGrounds } from './findings.js';
import { STAGING_SOURCES } from './sources.js';

/** Pain-free walking distance that parts stage IIa from IIb, in metres. */
export const FONTAINE_DISTANCE = { value: 200, source: STAGING_SOURCES.fontaine1954 } as const;

function claudication(
  findings: LimbFindings,
  at200: ChronicSettings['fontaineAt200'],
): BySymptoms<FontaineStage> {
  const { distance, severity } = findings.history;
  const told = ground('symptom', { value: 'claudication' });
  const { value: limit } = FONTAINE_DISTANCE;
  if (distance !== undefined) {
    return {
      candidates: [distance > limit ? 'IIa' : distance < limit ? 'IIb' : at200],
      grounds: [told, ground('distance', { metres: distance, limit })],
      missing: [],
      notes: given(distance === limit, 'at-200'),
    };
  }
  if (!severity) return { candidates: ['IIa', 'IIb'], grounds: [told], missing: ['distance'] };
  return {
    candidates: [severity === 'mild' ? 'IIa' : 'IIb'],
    grounds: [told, ground('severity', { value: severity })],
    missing: ['distance'],
  };
}

function bySymptoms(findings: LimbFindings, settings: ChronicSettings): BySymptoms<FontaineStage> {
  const { symptom, tissueLoss } = findings;
  if (tissueLoss) return { candidates: ['IV'], grounds: woundGrounds(findings), missing: [] };
  if (symptom === undefined) return { candidates: [], grounds: [], missing: ['symptom'] };
  if (symptom === 'claudication') return claudication(findings, settings.fontaineAt200);
  const grounds = [ground('symptom', { value: symptom })];
  return { candidates: [symptom === 'rest-pain' ? 'III' : 'I'], grounds, missing: [] };
}

/** The Fontaine stage of a leg by symptoms and wounds, raised to III by pressures in the range of rest pain. */
export function fontaineStage(
  findings: LimbFindings,
  pressures: Pressures = {},
  settings: ChronicSettings = DEFAULT_CHRONIC_SETTINGS,
  choices?: Partial<PressureSettings>,
): ChronicStage<FontaineStage> {
  const clinical = bySymptoms(findings, settings);
  const { restPain } = objectiveOf(findings.side, pressures, pressureSettings(choices));
  const highest = clinical.candidates.at(-1);
  if (!settings.upgrade || !restPain.length || highest === 'III' || highest === 'IV') {
    return derive(clinical.candidates, clinical);
  }
  return {
    ...derive<FontaineStage>(['III'], {
      grounds: [...clinical.grounds, ...restPain],
      missing: clinical.missing,
      notes: ['raised-by-pressures'],
    }),
    bySymptoms: clinical.candidates,
    objective: 'met',
  };
}
