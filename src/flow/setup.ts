import type { Side } from '../anatomy/index.js';
import {
  type Circulation,
  close,
  GONE,
  narrow,
  OPEN,
  soundCirculation,
  STOPPED,
} from './mean/circulation.js';
import { narrowingOf } from './mean/laws.js';
import type { CollateralState, Lesion, Patient } from './patient.js';
import type { Network } from './tree/network.js';
import type { Effort, Variant } from './tree/types.js';
import { HYDROSTATIC, perSecond } from './units.js';

/** How far collaterals have grown from fresh (0) to developed (1). Rule of thumb. */
const GROWTH: Readonly<Record<CollateralState, number>> = { fresh: 0, poor: 0.5, usual: 1, good: 1.6 };
/** What a bed's resting flow is multiplied by while its muscles work. Rules of thumb. */
const EFFORTS = { walked: 5, 'arm-work': 6 } as const;
/** Resting flow of the skin in the cold, and of all beds but brain and heart at low output, over the usual. Rules of thumb. */
const COLD_SKIN = 0.3;
const LOW_OUTPUT = 0.6;
/** Length of the leg that is raised, cm. */
const LEG = 85;

/** The sections that each piece of the product's tree is made of, proximal first. */
const piecesOfNetwork = new WeakMap<Network, Map<string, number[]>>();
function sectionsByPiece(network: Network): Map<string, number[]> {
  let map = piecesOfNetwork.get(network);
  if (!map) {
    piecesOfNetwork.set(network, (map = new Map()));
    const add = (name: string, e: number): void => {
      const list = map!.get(name);
      if (list) list.push(e);
      else map!.set(name, [e]);
    };
    network.sections.forEach(({ piece }, e) => {
      if (!piece) return;
      add(piece, e);
      const whole = piece.replace(/ (proximal|distal)$/, '');
      if (whole !== piece) add(whole, e);
    });
  }
  return map;
}

/**
 * The sections a lesion takes, proximal first.
 * @throws RangeError where the piece or the place in it does not exist
 */
export function sectionsOf(network: Network, { piece, at, extent, narrowing }: Lesion): readonly number[] {
  const all = sectionsByPiece(network).get(piece);
  if (!all) throw new RangeError(`no artery "${piece}" in the tree`);
  if (extent === 'whole' && narrowing >= 100 && at === undefined) return all;
  const found = all.filter((e) =>
    at === undefined ? network.sections[e]!.seat : network.sections[e]!.spot === at,
  );
  if (!found.length) throw new RangeError(`"${piece}" has no place "${at}"`);
  return found.slice(0, 1);
}

/** Above this a narrowing is taken for a block: its law loses its meaning. */
export const AS_GOOD_AS_BLOCKED = 97;

export function addLesion(c: Circulation, lesion: Lesion): void {
  const sections = sectionsOf(c.network, lesion);
  if (lesion.narrowing <= 0) return;
  for (const e of sections) {
    const { radii, length } = c.network.sections[e]!;
    if (lesion.narrowing >= AS_GOOD_AS_BLOCKED) close(c, e, lesion.extent === 'whole' ? GONE : STOPPED);
    else {
      const long = Math.min(lesion.length, 0.9 * length);
      narrow(c, e, narrowingOf(lesion.narrowing, long, (radii[0] + radii[1]) / 2), long);
    }
  }
}

/** The sections that a variant takes away. */
const WITHOUT: Readonly<Record<Variant, readonly string[]>> = {
  'no-dorsalis-pedis': ['dorsalis pedis to its pulse site', 'dorsalis pedis to its end'],
  'incomplete-deep-palmar-arch': ['deep arch, ulnar half'],
  'incomplete-superficial-palmar-arch': ['superficial arch, radial half'],
  'incomplete-plantar-arch': ['deep plantar'],
  'no-anterior-communicating': ['anterior communicating'],
  'no-posterior-communicating': ['posterior communicating'],
  'high-brachial-division': ['radial to its pulse site'],
};
const ADDS: Readonly<Partial<Record<Variant, string>>> = { 'high-brachial-division': 'high radial' };

function addVariant(c: Circulation, variant: Variant, side: Side | undefined): void {
  const { sectionOf } = c.network;
  for (const name of WITHOUT[variant]) {
    const e = sectionOf.get(name) ?? sectionOf.get(`${side ?? 'right'} ${name}`);
    if (e !== undefined) close(c, e, GONE);
  }
  const added = ADDS[variant];
  const e = added && sectionOf.get(`${side ?? 'right'} ${added}`);
  if (e !== undefined && e !== '') c.state[e as number] = OPEN;
}

/** Share of an effort that each group of muscles has. */
const SHARE: Readonly<Record<'walked' | 'arm-work', Partial<Record<Effort, number>>>> = {
  walked: { calf: 1, thigh: 0.6, buttock: 0.6 },
  'arm-work': { forearm: 1, 'upper-arm': 0.6 },
};

/** Multiplies the resting flow of the beds that work. */
export function work(c: Circulation, kind: 'walked' | 'arm-work', times: number): void {
  c.network.beds.forEach(({ effort }, i) => {
    const share = effort && SHARE[kind][effort];
    if (share) c.resting[i]! *= 1 + share * (times - 1);
  });
}

/** The pressure of the blood column to the foot of a raised leg, mmHg. */
export const climbOf = (degrees: number): number => LEG * Math.sin((degrees * Math.PI) / 180) * HYDROSTATIC;

/** Raises a leg: blood must climb, while the veins empty and stay at their pressure. */
export function raise(c: Circulation, side: Side, degrees: number): void {
  const height = climbOf(degrees);
  c.network.beds.forEach(({ region, side: own, along }, i) => {
    if (region === 'leg' && own === side) c.outside[i]! += (along ?? 0) * height;
  });
}

/** Presses an artery at the wrist. */
export function press(c: Circulation, artery: 'radial' | 'ulnar', side: Side): void {
  const { sectionOf } = c.network;
  close(c, sectionOf.get(`${side} ${artery} to its end`)!, STOPPED);
}

/** Sets a patient's circulation up; what the state does to beds, and the lesions unless told otherwise. */
export function circulationOf(network: Network, patient: Patient, withLesions = true): Circulation {
  const c = soundCirculation(network, patient.meanPressure);
  const { state } = patient;
  if (state === 'walked' || state === 'arm-work') work(c, state, EFFORTS[state]);
  network.beds.forEach(({ kind }, i) => {
    if (state === 'cold' && kind === 'skin') c.resting[i]! *= COLD_SKIN;
    if (state === 'low-output' && kind !== 'brain' && kind !== 'heart') c.resting[i]! *= LOW_OUTPUT;
  });
  network.collaterals.forEach(({ fresh, developed, route }, i) => {
    c.gain[i] = perSecond(developed - fresh) * GROWTH[patient.routes[route] ?? patient.collaterals];
  });
  if (!withLesions) return c;
  for (const { variant, side } of patient.variants) addVariant(c, variant, side);
  for (const lesion of patient.lesions) addLesion(c, lesion);
  for (const { artery, side } of patient.pressed) press(c, artery, side);
  for (const side of patient.cuffs)
    close(c, network.sectionOf.get(`${side} brachial to its pulse site`)!, STOPPED);
  for (const side of ['right', 'left'] as const) {
    if (patient.raised[side]) raise(c, side, patient.raised[side]);
  }
  return c;
}
