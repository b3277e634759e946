import { RUTHERFORD_CATEGORIES, type RutherfordCategory } from '../examination/index.js';
import { beyond, exerciseReadings } from '../pressures/index.js';
import type { Ground } from '../triage/index.js';
import { given } from '../triage/ground.js';
import { acuteNotes } from './acute-leg.js';
import {
  type BySymptoms,
  type ChronicStage,
  diseaseNotes,
  isSilent,
  objectiveOf,
  RUTHERFORD_PRESSURES,
  woundsMissing,
} from './chronic.js';
import { derive, type MissingCode } from './derived.js';
import { leavesWoundsOpen, type LegFindings } from './findings.js';
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

function ofGangrene({ facts: { inspection } }: LegFindings): {
  open: RutherfordCategory[];
  missing: MissingCode[];
} {
  const { gangrene, gangreneExtent } = inspection;
  const dead = gangrene !== undefined && gangrene !== 'none';
  if (!dead)
    return { open: Object.values(inspection.digits ?? {}).includes('gangrene') ? [5] : [], missing: [] };
  if (!gangreneExtent) return { open: [5, 6], missing: ['gangreneExtent'] };
  return { open: [BEYOND_FOREFOOT.includes(gangreneExtent) ? 6 : 5], missing: [] };
}

function ofUlcer({ facts: { inspection }, wounds }: LegFindings): {
  open: RutherfordCategory[];
  missing: MissingCode[];
} {
  const { ulcer, ulcerPlace } = inspection;
  if (!wounds.ulcer) return { open: [], missing: [] };
  if (ulcer !== 'extensive') return { open: [5], missing: [] };
  if (!ulcerPlace) return { open: [5, 6], missing: ['ulcerPlace'] };
  return { open: ulcerPlace === 'midfoot' || ulcerPlace === 'heel' ? [5, 6] : [5], missing: [] };
}

/** Tissue loss that reaches above the bases of the toes is major; an extent not stated leaves both open. */
function tissueLoss(findings: LegFindings): Clinical {
  const gangrene = ofGangrene(findings);
  const ulcer = ofUlcer(findings);
  const both = gangrene.open.length && ulcer.open.length;
  const open = both
    ? gangrene.open.flatMap((g) => ulcer.open.map((u) => Math.max(g, u) as RutherfordCategory))
    : [...gangrene.open, ...ulcer.open];
  return {
    candidates: RUTHERFORD_CATEGORIES.filter((category) => open.includes(category)),
    grounds: findings.wounds.because,
    missing: [...gangrene.missing, ...ulcer.missing],
  };
}

/** Exercise by the same artery before and after. A completed walk without a fall is category 0: another cause is likely. */
function walked(findings: LegFindings, told: Ground): Clinical | undefined {
  const { examination, pressures, side } = findings;
  const { afterExercise } = examination.pressures ?? {};
  const walk = exerciseReadings(examination.pressures ?? {}, pressures).find((one) => one.side === side);
  const completed = afterExercise?.completed;
  if (!walk || completed === undefined) return undefined;
  const grounds: Ground[] = [
    told,
    { code: completed ? 'walk-completed' : 'walk-not-completed', mmHg: walk.after },
  ];
  const { walkedAbove, fallAtLeast, notWalkedBelow } = RUTHERFORD_PRESSURES;
  if (!completed) {
    return { candidates: [beyond(walk.after, notWalkedBelow) ? 3 : 2], grounds, missing: [] };
  }
  const fell: RutherfordCategory = walk.after > walkedAbove ? 1 : 2;
  if (walk.fall === undefined) return { candidates: [0, fell], grounds, missing: ['same-artery'] };
  // The printed table puts everything between its first and third row into the second.
  if (walk.fall >= fallAtLeast) return { candidates: [fell], grounds, missing: [] };
  return { candidates: [0], grounds, missing: [], notes: ['other-causes'] };
}

function claudication(findings: LegFindings): Clinical {
  const told: Ground = { code: 'symptom', value: 'claudication' };
  const byWalk = walked(findings, told);
  if (byWalk) return byWalk;
  const { severity } = findings.facts.history;
  if (!severity) return { candidates: [1, 2, 3], grounds: [told], missing: ['severity', 'exercise'] };
  return {
    candidates: [SEVERITY_CATEGORY[severity]],
    grounds: [told, { code: 'severity', value: severity }],
    missing: ['exercise'],
  };
}

function bySymptom(findings: LegFindings): Clinical {
  const { symptom } = findings.facts.history;
  if (symptom === undefined || symptom === 'tissue-loss') {
    return {
      candidates: [0, 1, 2, 3, 4],
      grounds: given(symptom, { code: 'symptom', value: 'tissue-loss' } as const),
      missing: given(symptom === undefined, 'symptom' as const),
    };
  }
  if (symptom === 'claudication') return claudication(findings);
  return {
    candidates: [symptom === 'rest-pain' ? 4 : 0],
    grounds: [{ code: 'symptom', value: symptom }],
    missing: [],
  };
}

function clinicalOf(findings: LegFindings): Clinical {
  if (isSilent(findings)) return { candidates: [], grounds: [], missing: ['symptom', 'ulcer', 'gangrene'] };
  if (findings.tissueLoss === 'yes') return tissueLoss(findings);
  const clinical = bySymptom(findings);
  if (!leavesWoundsOpen(findings)) return clinical;
  return {
    ...clinical,
    candidates: RUTHERFORD_CATEGORIES.filter(
      (category) => category >= 5 || clinical.candidates.includes(category),
    ),
    grounds: [...clinical.grounds, ...findings.wounds.because.filter(({ code }) => code !== 'symptom')],
    missing: [...clinical.missing, ...woundsMissing(findings)],
  };
}

/**
 * The chronic category of a leg by symptoms, wounds and exercise. The pressures printed beside the categories are told, and
 * never raise it.
 */
export function rutherfordStage(findings: LegFindings): ChronicStage<RutherfordCategory> {
  const clinical = clinicalOf(findings);
  const objective = objectiveOf(findings);
  const { candidates } = clinical;
  const threatening =
    candidates.length > 0 && candidates.every((category) => category >= LIMB_THREATENING.from);
  const met = candidates.every((category) => category === 4) ? objective.restPain : objective.tissueLoss;
  const beside = threatening ? [] : objective.restPain;
  return {
    ...derive(candidates, {
      grounds: [...clinical.grounds, ...(threatening ? met : [])],
      missing: [...clinical.missing, ...given(threatening && !objective.measured, 'pressures' as const)],
      notes: [
        ...(clinical.notes ?? []),
        ...acuteNotes(findings, candidates),
        ...given(threatening && objective.measured && !met.length, 'pressures-not-met' as const),
        ...given(beside.length, 'pressures-of-rest-pain' as const),
        ...diseaseNotes(findings, threatening),
      ],
    }),
    ...(threatening && {
      objective: !objective.measured ? 'not-measured' : met.length ? 'met' : 'not-met',
    }),
    beside,
    disease: findings.disease.state,
  };
}
