import { placeKey, type PlaceKey, type Side, SIDES } from '../anatomy/index.js';
import { type Examination, pulseAt } from '../examination/index.js';
import { armDifference } from './arms.js';
import { indexOf, mmHgAt } from './indices.js';
import type { PressureSettings } from './settings.js';
import { PRESSURE_SOURCES } from './sources.js';

/** What makes one doubt that the higher arm stands for the pressure of the aorta. */
export type ArmsDoubt =
  /** The ankle lies above the range although both arms are low. */
  | {
      readonly code: 'ankle-above-low-arms';
      readonly side: Side;
      readonly index: number;
      readonly below: number;
    }
  /** The arms differ, and the ankle index is normal or high: the higher arm may be obstructed as well. */
  | { readonly code: 'arms-apart'; readonly mmHg: number }
  /** Pulses weak or absent in both arms. */
  | { readonly code: 'arm-pulses'; readonly places: readonly PlaceKey[] }
  /** Both arms low in a person known to be hypertensive. */
  | { readonly code: 'low-though-hypertensive'; readonly below: number }
  /** A blood pressure on record that both arms stay under. */
  | { readonly code: 'below-recorded'; readonly mmHg: number };
export type ArmsDoubtCode = ArmsDoubt['code'];

/** Limits of the doubt, in mmHg. */
export interface ArmsDoubtLimits {
  /** Both arms below this are low. */
  readonly lowBelow: number;
  /** Arms further apart than this. */
  readonly apartOver: number;
  /** A recorded systolic pressure higher than the higher arm by more than this. */
  readonly recordedOver: number;
}
export const DEFAULT_ARMS_DOUBT: ArmsDoubtLimits = { lowBelow: 100, apartOver: 15, recordedOver: 20 };
export const ARMS_DOUBT_SOURCE = `${PRESSURE_SOURCES.laboratory} (both arms lowered by disease of both); limits: ${PRESSURE_SOURCES.practice}`;

type Read = Pick<Examination, 'pressures' | 'pulses' | 'history' | 'circulation' | 'context'>;

const ARM_SITES = ['axillary', 'brachial', 'radial', 'ulnar'] as const;

/** Pulses of one arm that are weak or absent; a radial artery that was taken as a graft tells nothing. */
function poorPulses(record: Read, side: Side): PlaceKey[] {
  return ARM_SITES.filter((site) => {
    if (site === 'radial' && record.context?.radialHarvested?.includes(side)) return false;
    const { grade } = pulseAt(record, { site, side }) ?? {};
    return grade === 'absent' || grade === 'reduced';
  }).map((site) => placeKey({ site, side }));
}

/**
 * What speaks for obstruction of both arms, which makes every ankle and toe index read too high; empty where nothing does, or where no
 * index is divided by an arm. In shock low arms and weak pulses say nothing of the arteries.
 * @param record the pressures, and whatever else is known; in mmHg
 */
export function armsDoubt(
  record: Read,
  settings: PressureSettings,
  limits: ArmsDoubtLimits = DEFAULT_ARMS_DOUBT,
): ArmsDoubt[] {
  const { pressures = {}, history, circulation } = record;
  const indices = SIDES.flatMap((side) => indexOf('ankle', side, pressures, settings) ?? []);
  const toes = SIDES.flatMap((side) => indexOf('toe', side, pressures, settings) ?? []);
  const arms = SIDES.flatMap((side) => mmHgAt(pressures.brachial, side) ?? []);
  if (![...indices, ...toes].some(({ value }) => value !== undefined)) return [];
  const shock = circulation?.shock === true;
  const low = arms.length === 2 && arms.every((mmHg) => mmHg < limits.lowBelow);
  const above = indices.find(({ value, band }) => value !== undefined && band === 'incompressible');
  const apart = armDifference(pressures)?.mmHg ?? 0;
  const noLow = indices.some(({ value }) => value !== undefined) && indices.every(isNotLow);
  const poor = SIDES.map((side) => poorPulses(record, side));
  const recorded = circulation?.systolic;
  const found: ArmsDoubt[] = [];
  if (low && above?.value !== undefined) {
    const { side, value: index } = above;
    found.push({ code: 'ankle-above-low-arms', side, index, below: limits.lowBelow });
  }
  if (apart > limits.apartOver && noLow) found.push({ code: 'arms-apart', mmHg: apart });
  if (!shock && poor.every((places) => places.length > 0))
    found.push({ code: 'arm-pulses', places: poor.flat() });
  if (!shock && low && history?.risks?.includes('hypertension'))
    found.push({ code: 'low-though-hypertensive', below: limits.lowBelow });
  if (recorded !== undefined && recorded - Math.max(...arms) > limits.recordedOver)
    found.push({ code: 'below-recorded', mmHg: recorded });
  return found;
}

const isNotLow = ({ band }: { readonly band?: string }): boolean =>
  band === undefined || band === 'normal' || band === 'incompressible';
