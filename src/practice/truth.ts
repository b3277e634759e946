import { type Level, type LimbKey, type Side, SIDES } from '../anatomy/index.js';
import { readBedside } from '../bedside/index.js';
import type { BruitFinding, Examination, PressureSite } from '../examination/index.js';
import type { Patient, Pattern } from '../flow/index.js';
import type { LessonCause, LessonText } from '../lesson/index.js';

const CAUSE_OF: Readonly<Record<Pattern, LessonCause>> = {
  sound: 'none',
  'cold-body': 'cold',
  'low-output': 'low-flow',
  shock: 'low-flow',
  atherosclerosis: 'atherosclerosis',
  diabetic: 'atherosclerosis',
  'arm-atherosclerosis': 'atherosclerosis',
  embolism: 'embolism',
  'small-artery': 'small-artery',
  'large-vessel': 'large-vessel',
  coarctation: 'coarctation',
};
export const causeOf = (pattern: Pattern): LessonCause => CAUSE_OF[pattern];

/** A diseased limb with the level that is right, and what else counts as right. */
export interface TrueLesion {
  readonly limb: LimbKey;
  readonly levels: readonly [Level, ...Level[]];
}

/** What is wrong with a patient, and all that a perfect examiner would find. */
export interface Truth {
  readonly record: Examination;
  readonly lesions: readonly TrueLesion[];
  /** Missing where the patient's author does not say. */
  readonly cause?: LessonCause;
  /** The simulated patient, where there is one. */
  readonly patient?: Patient;
  /** The author's own answer. */
  readonly text?: LessonText;
}

const ARM = /^(brachiocephalic|subclavian|axillary|brachial|radial|ulnar)$/;
const LEG = /aorta|iliac|femoral|popliteal|tibial|tibioperoneal|peroneal|pedis|plantar/;
/** Whether an artery feeds an arm, or a leg; those of the head feed neither. */
export const isOfArm = (artery: string): boolean => ARM.test(artery);
export const isOfLeg = (artery: string): boolean => LEG.test(artery);

const PULSES_OF = {
  leg: ['femoral', 'popliteal', 'dorsalis-pedis', 'posterior-tibial'],
  arm: ['subclavian', 'axillary', 'brachial', 'radial', 'ulnar'],
} as const;
const HEARD_OF = { leg: /iliac|femoral|adductor|popliteal/, arm: /subclavian|axillary/ } as const;
const END_OF = { leg: ['dorsalis-pedis', 'posterior-tibial'], arm: ['radial', 'ulnar'] } as const;
/** Up to it an index is that of disease (Aboyans V et al., Circulation 2012;126:2890). */
const ILL = 0.9;

const mmHg = (record: Examination, site: PressureSite, side: Side): number | undefined => {
  const value = record.pressures?.[site]?.[side];
  return typeof value === 'number' ? value : undefined;
};

/** Highest pressure at the end of a limb over the better arm. */
function indexOfLimb(record: Examination, kind: 'leg' | 'arm', side: Side): number | undefined {
  const ends = END_OF[kind].flatMap((site) => mmHg(record, site, side) ?? []);
  const arms = SIDES.flatMap((own) => mmHg(record, 'brachial', own) ?? []);
  return ends.length && arms.length ? Math.max(...ends) / Math.max(1, ...arms) : undefined;
}

/** Limbs on which something can be found at the bedside that is not as in health: a pulse, a bruit, an index, the arch of a hand. */
export function withinReach(record: Examination): readonly LimbKey[] {
  return (['leg', 'arm'] as const).flatMap((kind) =>
    SIDES.flatMap((side): LimbKey[] => {
      const weak = PULSES_OF[kind].some((site) =>
        /absent|reduced/.test(record.pulses?.[site]?.[side]?.grade ?? ''),
      );
      const heard = Object.entries(record.bruits ?? {}).some(
        ([site, sides]) =>
          HEARD_OF[kind].test(site) &&
          ((sides as Partial<Record<Side, BruitFinding>>)[side]?.bruit ?? 'none') !== 'none',
      );
      const low = (indexOfLimb(record, kind, side) ?? 1) <= ILL;
      const arch = kind === 'arm' && readBedside('hand-arch', side, record.bedside)?.verdict === 'severe';
      return weak || heard || low || arch ? [`${side} ${kind}`] : [];
    }),
  );
}
