import type { Side } from '../anatomy/index.js';
import type { Bedside, BedsideResult, BedsideTestId } from '../examination/index.js';
import { armStress } from './arm-stress.js';
import { coldProvocation } from './cold-provocation.js';
import { colourReturn } from './colour-return.js';
import { costoclavicular } from './costoclavicular.js';
import { dependentRubor } from './dependent-rubor.js';
import { elevation } from './elevation.js';
import { handArch } from './hand-arch.js';
import { hyperabduction } from './hyperabduction.js';
import { scalene } from './scalene.js';
import type { BedsideReading, BedsideTest } from './test.js';
import { venousFilling } from './venous-filling.js';

/** Every bedside test by its id, leg before arm, in the order of the bedside. */
export const BEDSIDE_TESTS: { readonly [Id in BedsideTestId]: BedsideTest<Id> } = {
  elevation,
  'colour-return': colourReturn,
  'dependent-rubor': dependentRubor,
  'venous-filling': venousFilling,
  'hand-arch': handArch,
  'cold-provocation': coldProvocation,
  scalene,
  hyperabduction,
  costoclavicular,
  'arm-stress': armStress,
};
export const BEDSIDE_TEST_IDS = Object.keys(BEDSIDE_TESTS) as BedsideTestId[];

/** Limits chosen by a practice, per test, in the test's unit. */
export type BedsideSettings = Partial<Record<BedsideTestId, number>>;

/** Reads one side of one test; `undefined` when nothing was recorded. */
export function readBedside<Id extends BedsideTestId>(
  id: Id,
  side: Side,
  bedside: Bedside | undefined,
  settings: BedsideSettings = {},
): BedsideReading<Id> | undefined {
  const result = bedside?.[id]?.[side] as BedsideResult<Id> | undefined;
  return result && BEDSIDE_TESTS[id].evaluate(result, settings[id]);
}
