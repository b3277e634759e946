import type { Pressures } from '../examination/index.js';
import { ARMS_DOUBT_SOURCE } from './both-arms.js';
import type { PressureSettings } from './settings.js';
import {
  ANKLE_RULES,
  ARM_DIFFERENCE_LIMITS,
  ARM_DROP_LIMITS,
  ARM_RULES,
  DROP_LEVELS,
  DROP_LIMITS,
  EXERCISE_LIMITS,
  FINGER_LIMITS,
  INCOMPRESSIBLE_LIMITS,
  INDEX_STANDARDS,
  SEVERE_INDEX_LIMITS,
  SIDE_DIFFERENCE_LIMITS,
  THREAT_CRITERIA,
  TOE_LIMITS,
  WRIST_DIFFERENCE_LIMITS,
  WRIST_LIMITS,
} from './tables.js';

/** What the reading of these pressures rests on, as cited: the limits in use for what was measured, and no others. */
export function pressureSources(pressures: Pressures, settings: PressureSettings): readonly string[] {
  const ankle = pressures['dorsalis-pedis'] ?? pressures['posterior-tibial'];
  const segments = pressures['high-thigh'] ?? pressures['low-thigh'] ?? pressures.calf;
  const wrist = pressures.radial ?? pressures.ulnar;
  const used: readonly (readonly [unknown, readonly { readonly source: string }[]])[] = [
    [
      ankle,
      [
        INDEX_STANDARDS[settings.standard],
        ANKLE_RULES[settings.ankle],
        ARM_RULES[settings.arm],
        INCOMPRESSIBLE_LIMITS[settings.incompressible],
        SEVERE_INDEX_LIMITS[settings.severeIndex],
      ],
    ],
    [pressures.toe, [TOE_LIMITS[settings.toe]]],
    [ankle ?? pressures.toe ?? pressures.tcpo2 ?? pressures.volumeCurve, [THREAT_CRITERIA[settings.threat]]],
    [pressures.brachial, [ARM_DIFFERENCE_LIMITS[settings.armDifference]]],
    [pressures.brachial && (ankle ?? pressures.toe), [{ source: ARMS_DOUBT_SOURCE }]],
    [
      wrist,
      [
        WRIST_LIMITS[settings.wrist],
        WRIST_DIFFERENCE_LIMITS[settings.wristDifference],
        ARM_DROP_LIMITS[settings.armDrop],
      ],
    ],
    [pressures.finger, [FINGER_LIMITS[settings.finger]]],
    [
      segments,
      [
        DROP_LIMITS[settings.drop],
        SIDE_DIFFERENCE_LIMITS[settings.sideDifference],
        ...Object.values(DROP_LEVELS),
      ],
    ],
    [pressures.afterExercise, [EXERCISE_LIMITS[settings.exercise]]],
  ];
  return [
    ...new Set(used.flatMap(([measured, figures]) => (measured ? figures.map(({ source }) => source) : []))),
  ];
}
