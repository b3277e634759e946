import type { LimbEnd, Spot } from '../../statements/index.js';
import { anatomy, withArticle } from './anatomy.js';

export const ends: Record<LimbEnd, string> = { wrist: 'Handgelenkspulse', foot: 'Fußpulse' };

/** "Poplitea links", "den Fußpulsen links", as it stands after "und" following "zwischen". */
export const dative = (spot: Spot): string =>
  spot.code === 'site' ? anatomy.place(spot.place) : `den ${ends[spot.end]}n ${anatomy.sides[spot.side]}`;

/** "der Poplitea links", "der Fußpulse links", as it stands after "oberhalb". */
export const genitive = (spot: Spot): string =>
  spot.code === 'site'
    ? withArticle(anatomy.place(spot.place), 'genitive')
    : `der ${ends[spot.end]} ${anatomy.sides[spot.side]}`;

/** "zur Poplitea links", "zu den Fußpulsen links", as it stands after "bis". */
export const toward = (spot: Spot): string =>
  spot.code === 'site' ? `zur ${anatomy.place(spot.place)}` : `zu ${dative(spot)}`;
