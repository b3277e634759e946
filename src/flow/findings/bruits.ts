import {
  type ArteryId,
  type Laterality,
  type ListeningSiteId,
  type Place,
  pieceFromKey,
  sidesOf,
  siteDefinition,
  SIDES,
} from '../../anatomy/index.js';
import type { Bruit } from '../../examination/index.js';
import { OPEN } from '../mean/circulation.js';
import { throatTrace } from '../pulse/traces.js';
import type { Simulation } from '../simulate.js';
import { DENSITY, VISCOSITY } from '../units.js';
import { limit } from './rules.js';

/** The jet of one narrowing. Velocities in m/s. */
export interface Jet {
  readonly section: number;
  readonly artery: ArteryId;
  readonly side: Laterality;
  readonly peak: number;
  /** Slowest, in diastole. */
  readonly least: number;
  /** How much its peak outruns the flow before the narrowing. */
  readonly excess: number;
  readonly reynolds: number;
  readonly sound: Bruit;
}

/** The bruit that a jet makes. */
export function bruitOf(excess: number, reynolds: number, least: number): Bruit {
  if (excess < limit('bruitJet') || reynolds < limit('bruitReynolds')) return 'none';
  return least >= limit('bruitDiastolic') ? 'continuous' : 'systolic';
}

/** Every open narrowing with its jet. */
export function jetsOf({ circulation: c, network, beating }: Simulation): Jet[] {
  const out: Jet[] = [];
  network.sections.forEach(({ piece, radii }, section) => {
    if (c.state[section] !== OPEN || c.throat[section] === 0) return;
    const known = piece && pieceFromKey(piece);
    const trace = throatTrace(beating, section);
    if (!trace || !known) return;
    const throat = c.throat[section]!;
    let high = 0;
    let low = Infinity;
    for (const q of trace) {
      high = Math.max(high, Math.abs(q));
      low = Math.min(low, Math.abs(q));
    }
    const before = Math.PI * ((radii[0] + radii[1]) / 2) ** 2;
    const peak = high / throat / 100;
    const excess = peak - high / before / 100;
    const least = low / throat / 100;
    const reynolds = (peak * 100 * 2 * Math.sqrt(throat / Math.PI) * DENSITY) / VISCOSITY;
    const { artery, side } = known;
    out.push({
      section,
      artery,
      side,
      peak,
      least,
      excess,
      reynolds,
      sound: bruitOf(excess, reynolds, least),
    });
  });
  return out;
}

/** Where a narrowing of an artery is heard, the place over it first; a loud one also at the places that follow it. Rule of thumb. */
const HEARD: Readonly<Partial<Record<ArteryId, { over: ListeningSiteId[]; beyond?: ListeningSiteId[] }>>> = {
  'ascending-aorta': { over: ['carotid'], beyond: ['subclavian'] },
  'aortic-arch': { over: ['carotid', 'subclavian'] },
  brachiocephalic: { over: ['subclavian', 'carotid'] },
  subclavian: { over: ['subclavian'], beyond: ['axillary'] },
  axillary: { over: ['axillary'] },
  'common-carotid': { over: ['carotid'] },
  'internal-carotid': { over: ['carotid'] },
  'external-carotid': { over: ['carotid'] },
  'suprarenal-aorta': { over: ['abdominal-aorta'] },
  renal: { over: ['renal'] },
  'infrarenal-aorta': { over: ['abdominal-aorta'], beyond: ['iliac'] },
  'common-iliac': { over: ['iliac'], beyond: ['femoral'] },
  'internal-iliac': { over: ['iliac'] },
  'external-iliac': { over: ['iliac'], beyond: ['femoral'] },
  'common-femoral': { over: ['femoral'] },
  'deep-femoral': { over: ['femoral'] },
  'superficial-femoral': { over: ['adductor-canal'], beyond: ['popliteal'] },
  popliteal: { over: ['popliteal'] },
  'tibioperoneal-trunk': { over: ['popliteal'] },
};

/** The places at which a jet is heard. */
export function heardAt({ artery, side, excess }: Jet): Place<ListeningSiteId>[] {
  const { over, beyond } = HEARD[artery] ?? { over: [] };
  const sites = excess >= limit('bruitCarries') ? [...over, ...(beyond ?? [])] : over;
  return sites.flatMap((site) => {
    const sides = sidesOf(siteDefinition(site).occurs);
    const own = sides.includes(side as never) ? [side] : side === 'midline' ? SIDES : sides;
    return own.map((one) => ({ site, side: one }));
  });
}
