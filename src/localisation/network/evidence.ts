import { LISTENING_PLACES, type Place, PULSE_PLACES, type Side, SIDES } from '../../anatomy/index.js';
import { bruitAt, type Examination, pulseAt } from '../../examination/index.js';
import { ankleMeasured, cuffs } from './cuffs.js';
import { type Feet, feetOf } from './feet.js';
import {
  beyond,
  type Finding,
  heardPiece,
  isMute,
  limbsAt,
  type PressureEvidence,
  pulsePiece,
} from './finding.js';
import { bruit, byStrength, bySound, palpation, tempered } from './likelihoods.js';
import { lostPieces } from './model.js';
import { hasAccess, hasRadialLine } from './known.js';
import { delays, graftPulses, handArch, pains, seen, steals } from './told-and-seen.js';
import type { Tables } from './types.js';

/** Probability that the artery under a wrist pulse was taken or steered away, whatever lies above. */
export function takenAt({ site, side }: Place, examination: Examination, { taken }: Tables): number {
  if (side === 'midline' || (site !== 'radial' && site !== 'ulnar')) return 0;
  const line = site === 'radial' && hasRadialLine(examination, side) ? taken.cannula : 0;
  return Math.max(line, hasAccess(examination, side) ? taken.access : 0);
}

/** Pulses of a leg that a cuff at its ankle outweighs. */
const BELOW_GROIN = new Set<string>(['popliteal', 'dorsalis-pedis', 'posterior-tibial']);

/** Everything in a record that the network takes in, in the order of examination. */
export function findingsOf(
  examination: Examination,
  tables: Tables,
  pressures: PressureEvidence = {},
  feet: readonly Feet[] = feetOf(examination, tables),
  earlier?: Examination,
): Finding[] {
  const { context } = examination;
  const out: Finding[] = [];
  const add = (
    id: Finding['id'],
    piece: number,
    likelihood: ReturnType<typeof byStrength>,
    place: Place,
  ): void => {
    out.push({ id, factors: [{ piece, ...likelihood }], limbs: limbsAt(place) });
  };
  const cuffed = new Set<Place['side']>(SIDES.filter((side) => ankleMeasured(pressures, side)));
  for (const place of PULSE_PLACES) {
    const found = pulseAt(examination, place);
    if (!found || isMute(place, context)) continue;
    const { site, side } = place;
    const piece = pulsePiece(place);
    const steered =
      side !== 'midline' && /radial|ulnar|brachial|axillary/.test(site) && hasAccess(examination, side);
    if (found.grade) {
      const likelihood = palpation(site, found.grade, tables, feet, takenAt(place, examination, tables));
      const outweighed = BELOW_GROIN.has(site) && cuffed.has(side);
      const again = earlier !== undefined && pulseAt(earlier, place)?.grade === found.grade;
      const power = (outweighed ? tables.besideCuff.power : 1) * (again ? 1 + tables.earlier.power : 1);
      add(
        { kind: 'pulse', place, grade: found.grade },
        piece,
        power === 1 ? likelihood : tempered(likelihood, power),
        place,
      );
    }
    if (found.doppler) {
      const signal = found.doppler;
      add({ kind: 'doppler', place, signal }, piece, byStrength(tables.doppler[signal]), place);
    }
    if (found.thrill && !steered) {
      add({ kind: 'thrill', place }, beyond(place), bySound(tables.sound.thrill), place);
    }
  }
  for (const place of LISTENING_PLACES) {
    const heard = bruitAt(examination, place)?.bruit;
    // The sound of a dialysis access carries up the arm and is no narrowing.
    const steered = /subclavian|axillary/.test(place.site) && hasAccess(examination, place.side as Side);
    if (!heard || (steered && heard !== 'none')) continue;
    add(
      { kind: 'bruit', place, bruit: heard },
      heardPiece(place, tables),
      bruit(place.site, heard, tables),
      place,
    );
  }
  const lost = lostPieces(context);
  return [
    ...out,
    ...delays(examination, tables),
    ...cuffs(pressures, tables),
    ...handArch(examination, tables),
    ...pains(examination, tables),
    ...steals(examination, tables),
    ...graftPulses(examination, tables),
    ...seen(examination, tables),
  ].flatMap((finding) => {
    if (lost.size === 0) return [finding];
    const factors = finding.factors.filter(({ piece }) => !lost.has(piece));
    return factors.length ? [{ ...finding, factors }] : [];
  });
}
