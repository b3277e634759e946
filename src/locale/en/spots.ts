import type { Place } from '../../anatomy/index.js';
import type { LimbEnd, Spot } from '../../statements/index.js';
import { termsFrom } from '../terms.js';
import { anatomy } from './anatomy.js';

export const ends = termsFrom<LimbEnd>({ wrist: 'wrist', foot: { trade: 'pedal', plain: 'foot' } });

/** A place as it stands within a sentence. */
export const at = (place: Place): string =>
  place.side === 'midline' ? `the ${anatomy.place(place)}` : anatomy.place(place);

/** "left popliteal", "both left pedal pulses". */
export const spot = (where: Spot): string =>
  where.code === 'site'
    ? at(where.place)
    : `${where.sites === 2 ? 'both' : 'all'} ${anatomy.sides[where.side]} ${ends[where.end]} pulses`;
