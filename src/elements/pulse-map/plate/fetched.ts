import {
  isPlateView,
  type Plate,
  type PlateName,
  plateOf,
  type PlateView,
} from '../../../drawing/plates/plate.js';
import type { PreparedPlate } from '../../../drawing/plates/prepared.js';
import type { StillPlate } from '../../../drawing/still/plate.js';
import type { View } from '../../../drawing/views.js';
import { Later } from '../../common/later.js';

/** What draws plates, fetched with the first of them. */
export const plateKit = new Later(() => import('./kit.js'));

/** Each plate is fetched by itself when it is first shown. */
const PLATES: Readonly<Record<PlateName, Later<{ readonly plate: Plate }>>> = {
  hand: new Later(() => import('../../../drawing/plates/hand.js')),
  foot: new Later(() => import('../../../drawing/plates/foot.js')),
  sole: new Later(() => import('../../../drawing/plates/sole.js')),
  knee: new Later(() => import('../../../drawing/plates/knee.js')),
  'legs-behind': new Later(() => import('../../../drawing/plates/legs-behind.js')),
};

/** The plate of a view, once it and what draws it have been fetched. */
export function plateFor(view: PlateView): PreparedPlate | undefined {
  const data = PLATES[plateOf(view).name].part;
  return data && plateKit.part?.preparedPlate(data.plate, view);
}

/** Fetches a plate and what draws it; resolves too when that fails. */
export async function fetchPlate(view: PlateView): Promise<void> {
  await Promise.all([plateKit.load(), PLATES[plateOf(view).name].load()]);
}

/** The plate of a view for still pictures; `undefined` for one that is no plate, or has not been fetched. */
export function stillPlateFor(view: View): StillPlate | undefined {
  const plate = isPlateView(view) ? plateFor(view) : undefined;
  return plate && plateKit.part?.stillPlate(plate);
}
