import type { Pressures, RutherfordCategory } from '../examination/index.js';
import { beyond, exerciseReadings, type PressureSettings, pressureSettings } from '../pressures/index.js';
import {
  type BySymptoms,
  type ChronicSettings,
  type ChronicStage,
  DEFAULT_CHRONIC_SETTINGS,
  type Objective,
  objectiveOf,
  RUTHERFORD_PRESSURES,
} from './chronic.js';
import { derive, given, ground } from './derived.js';
import { type LimbFindings, woundGrounds } from './findings.js';
import { STAGING_SOURCES } from './sources.js';

/** Roman grade of each category in the 1997 standard; the 2005 ACC/AHA table prints IV for category 6 (from memory). */
export const RUTHERFORD_GRADES: Readonly<Record<RutherfordCategory, string>> = {
  0: '0',
  1: 'I',
  2: 'I',
  3: 'I',
  4: 'II',
  5: 'III',
  6: 'III',
};

/** From which category on a limb is threatened. */
export const LIMB_THREATENING = { from: 4, source: STAGING_SOURCES.gvg2019 } as const;

type Clinical = BySymptoms<RutherfordCategory>;
const SEVERITY_CATEGORY = { mild: 1, moderate: 2, severe: 3 } as const;
const BEYOND_FOREFOOT = ['midfoot', 'heel', 'above-foot'];

/** Tissue loss that reaches above the bases of the toes is major; an extent not stated leaves both open. */
function tissueLoss(findings: LimbFindings): Clinical {
  const { gangrene, gangreneExtent } = findings.inspection;
  const grounds = woundGrounds(findings);
  if (!gangrene || gangrene === 'none') return { candidates: [5], grounds, missing: [] };
  if (!gangreneExtent) return { candidates: [5, 6], grounds, missing: ['gangreneExtent'] };
  return { candidates: [BEYOND_FOREFOOT.includes(gangreneExtent) ? 6 : 5], grounds, missing: [] };
}

function claudication(findings: LimbFindings, pressures: Pressures, settings: PressureSettings): Clinical {
  const told = ground('symptom', { value: 'claudication' });
  const walk = exerciseReadings(pressures, settings).find(({ side }) => side === findings.side);
  const completed = pressures.afterExercise?.completed;
  if (!walk || completed === undefined) {
    const { severity } = findings.history;
    if (!severity) return { candidates: [1, 2, 3], grounds: [told], missing: ['severity', 'exercise'] };
    return {
      candidates: [SEVERITY_CATEGORY[severity]],
      grounds: [told, ground('severity', { value: severity })],
      missing: ['exercise'],
    };
  }
  const grounds = [told, ground(completed ? 'walk-completed' : 'walk-not-completed', { mmHg: walk.after })];
  if (!completed && beyond(walk.after, RUTHERFORD_PRESSURES.notWalkedBelow)) {
    return { candidates: [3], grounds, missing: [] };
  }
  if (completed && walk.after > RUTHERFORD_PRESSURES.walkedAbove) {
    if (walk.fall === undefined) return { candidates: [1, 2], grounds, missing: ['restingAnkle'] };
    if (walk.fall >= RUTHERFORD_PRESSURES.fallAtLeast) return { candidates: [1], grounds, missing: [] };
  }
  // The printed table puts everything between its first and third row into the second.
  return { candidates: [2], grounds, missing: [] };
}

function bySymptoms(findings: LimbFindings, pressures: Pressures, settings: PressureSettings): Clinical {
  const { symptom } = findings;
  if (findings.tissueLoss) return tissueLoss(findings);
  if (symptom === undefined) return { candidates: [], grounds: [], missing: ['symptom'] };
  if (symptom === 'claudication') return claudication(findings, pressures, settings);
  const grounds = [ground('symptom', { value: symptom })];
  return { candidates: [symptom === 'rest-pain' ? 4 : 0], grounds, missing: [] };
}

/** A threatened limb with or without the pressures printed beside its category. */
function threatened(clinical: Clinical, objective: Objective): ChronicStage<RutherfordCategory> {
  const met = clinical.candidates.includes(4) ? objective.restPain : objective.tissueLoss;
  return {
    ...derive(clinical.candidates, {
      grounds: [...clinical.grounds, ...met],
      missing: [...clinical.missing, ...given(!objective.measured, 'pressures')],
      notes: given(objective.measured && !met.length, 'pressures-not-met'),
    }),
    objective: !objective.measured ? 'not-measured' : met.length ? 'met' : 'not-met',
  };
}

/** The chronic category of a leg by symptoms, wounds, exercise, and the pressures printed beside the categories. */
export function rutherfordStage(
  findings: LimbFindings,
  pressures: Pressures = {},
  settings: ChronicSettings = DEFAULT_CHRONIC_SETTINGS,
  choices?: Partial<PressureSettings>,
): ChronicStage<RutherfordCategory> {
  const chosen = pressureSettings(choices);
  const clinical = bySymptoms(findings, pressures, chosen);
  const objective = objectiveOf(findings.side, pressures, chosen);
  if ((clinical.candidates.at(-1) ?? 0) >= LIMB_THREATENING.from) return threatened(clinical, objective);
  // Nerves dulled by diabetes can hide rest pain: the pressures then speak for the limb.
  if (!settings.upgrade || !objective.restPain.length) return derive(clinical.candidates, clinical);
  return {
    ...derive<RutherfordCategory>([4], {
      grounds: [...clinical.grounds, ...objective.restPain],
      missing: clinical.missing,
      notes: ['raised-by-pressures'],
    }),
    bySymptoms: clinical.candidates,
    objective: 'met',
  };
}
