import { type Limb, type Place, PLACES, PULSE_PLACES, siteDefinition } from '../anatomy/index.js';
import { isLocked } from './carried.js';
import { clearPlace, otherSide, setBruit, setPulse } from './edits.js';
import { checkedWord, compact, withFields } from './finish.js';
import { bruitAt, isHeard, isStated, pulseAt, unstatedPlaces } from './queries.js';
import type { Patch } from './types/common.js';
import { ARM_DELAYS, type Delays, LEG_DELAYS } from './types/pulses.js';
import { type Examination, type Onset, ONSETS } from './types/record.js';

/* Edits of the whole record and of whole limbs, in the manner of those of a place (`edits.ts`). */

/**
 * Sets or, with `undefined`, removes how the trouble began.
 * @throws EditError for an onset that does not exist
 */
export function setOnset(examination: Examination, onset: Onset | undefined): Examination {
  if (isLocked(examination, ['onset'])) return examination;
  return withFields(examination, { onset: checkedWord(onset, ONSETS, ['onset']) });
}

/**
 * Changes the pulse delays between the arms and between arm and leg; fields left out stay, fields set to `undefined` go.
 * @throws EditError for a delay that does not exist
 */
export function setDelays(examination: Examination, patch: Patch<Delays>): Examination {
  if (isLocked(examination, ['delays'])) return examination;
  const { radioRadial, radioFemoral, ...unseen } = { ...examination.delays, ...patch };
  const legs = Object.entries(radioFemoral ?? {}).map(([side, delay]) => [
    side,
    checkedWord(delay, LEG_DELAYS, ['delays', 'radioFemoral', side]),
  ]);
  const delays: Delays = {
    ...unseen,
    ...compact({
      radioRadial: checkedWord(radioRadial, ARM_DELAYS, ['delays', 'radioRadial']),
      radioFemoral: compact(Object.fromEntries(legs)),
    }),
  };
  return withFields(examination, { delays: compact(delays) });
}

/**
 * Records every pulse not yet stated as normal. Never touches a site that is stated, in whatever way.
 * @param among only these, such as the sites on the screen
 */
export function restNormal(examination: Examination, among: readonly Place[] = PULSE_PLACES): Examination {
  return unstatedPlaces(examination)
    .filter((place) => among.some(({ site, side }) => site === place.site && side === place.side))
    .reduce((next, place) => setPulse(next, place, { grade: 'normal' }), examination);
}

/** The places of a limb on its own side: sites of the trunk that are paired count with the leg. */
export function placesOfLimb({ side, kind }: Limb): Place[] {
  return PLACES.filter((place) => {
    const { region } = siteDefinition(place.site);
    return place.side === side && (region === kind || (kind === 'leg' && region === 'trunk'));
  });
}

/** Takes everything back that was recorded on a limb. */
export function clearLimb(examination: Examination, limb: Limb): Examination {
  return placesOfLimb(limb).reduce(clearPlace, examination);
}

/**
 * Records on a limb, wherever no pulse or no bruit is stated yet, the grade, bruit or reason of the other side. Never touches what is
 * stated, and leaves notes and marks where they are.
 */
export function fillFromOtherSide(examination: Examination, limb: Limb): Examination {
  return placesOfLimb(limb).reduce((filled, place) => {
    const { pulse, bruit } = otherSide(examination, place);
    let next = filled;
    const own = pulseAt(examination, place);
    // Its own marks win: where a thrill was felt, the other side's reason is not taken over.
    if (isStated(pulse) && !isStated(own)) next = setPulse(next, place, { ...pulse, ...own });
    if (isHeard(bruit) && !isHeard(bruitAt(examination, place))) next = setBruit(next, place, bruit ?? {});
    return next;
  }, examination);
}
