import {
  type Limb,
  type LimbKey,
  LISTENING_PLACES,
  type ListeningSiteId,
  type Place,
  placeFromKey,
  pieceAbove,
  piecesOf,
  PULSE_PLACES,
  type PulseSiteId,
  type Side,
  SIDES,
  siteDefinition,
  vesselOf,
} from '../../anatomy/index.js';
import {
  type ArmClaudication,
  type Bruit,
  bruitAt,
  type Context,
  type DopplerSignal,
  type Examination,
  type Grade,
  type LegClaudication,
  pulseAt,
} from '../../examination/index.js';
import { lostPieces } from './model.js';
import type { Factor } from './propagate.js';
import { indexOf, piecesOfStretch } from './tree.js';
import type { ByStrength, Pain, StretchKey, Tables } from './types.js';

/**
 * Pressures the network can use, as plain ratios to the higher arm pressure: by pulse place (`left posterior-tibial`,
 * `right brachial`), or for a whole ankle where the artery is not known.
 */
export interface PressureEvidence {
  readonly at?: Readonly<Record<string, number>>;
  readonly ankle?: { readonly right?: number; readonly left?: number };
}

export type Muscle = LegClaudication | ArmClaudication;

/** What a finding is, for words and for weighing. */
export type FindingId =
  | { readonly kind: 'pulse'; readonly place: Place<PulseSiteId>; readonly grade: Grade }
  | { readonly kind: 'doppler'; readonly place: Place<PulseSiteId>; readonly signal: DopplerSignal }
  | { readonly kind: 'thrill'; readonly place: Place<PulseSiteId> }
  | { readonly kind: 'bruit'; readonly place: Place<ListeningSiteId>; readonly bruit: Bruit }
  | { readonly kind: 'index'; readonly place: Place<PulseSiteId>; readonly value: number }
  | { readonly kind: 'ankle-index'; readonly side: Side; readonly value: number }
  | { readonly kind: 'pain'; readonly limb: Limb; readonly muscle: Muscle }
  | {
      readonly kind: 'delay';
      readonly of: 'radio-radial' | 'radio-femoral';
      readonly side: Side | 'both' | 'none';
    };

/** A finding with its likelihoods at the pieces it depends on, and the limbs it was made on. */
export interface Finding {
  readonly id: FindingId;
  readonly factors: readonly Factor[];
  readonly limbs: readonly LimbKey[];
}

export function byStrength(
  [n, r, a]: ByStrength,
  [n2, r2, a2]: ByStrength = [n, r, a],
): Omit<Factor, 'piece'> {
  return { usual: [n, r, a, n, r, a], second: [n2, r2, a2, n2, r2, a2] };
}

function bySound([silent, sounding]: readonly [number, number]): Omit<Factor, 'piece'> {
  const usual = [silent, silent, silent, sounding, sounding, sounding];
  return { usual, second: usual };
}

/** The column of a palpation table that a grade stands in. */
const COLUMN = { absent: 0, reduced: 1, normal: 2, bounding: 2 } as const;

/** Likelihood of a grade at a site. */
export function palpation(site: PulseSiteId, grade: Grade, tables: Tables): Omit<Factor, 'piece'> {
  const table = tables.palpation[site];
  const low = tables.lowFlow[table.peripheral ? 'peripheral' : 'central'];
  const column = COLUMN[grade];
  const [bn, br, ba] = tables.bounding.share;
  const [fn, fr, fa] =
    grade === 'bounding' ? [bn, br, ba] : grade === 'normal' ? [1 - bn, 1 - br, 1 - ba] : [1, 1, 1];
  const gone = column === 0 ? table.missing : 0;
  const of = (row: readonly number[], share: number): number =>
    (1 - table.missing) * row[column]! * share + gone;
  const usual: ByStrength = [of(table.normal, fn), of(table.reduced, fr), of(table.absent, fa)];
  // With low flow the pulse of an open artery is either felt as reduced, or reported as ever.
  return byStrength(usual, [(1 - low) * usual[0] + (grade === 'reduced' ? low : 0), usual[1], usual[2]]);
}

export function bruit(site: ListeningSiteId, heard: Bruit, { sound }: Tables): Omit<Factor, 'piece'> {
  const systolic = site === 'carotid' ? sound.carotid : sound.systolic;
  const { continuous } = sound;
  if (heard === 'systolic') return bySound(systolic);
  if (heard === 'continuous') return bySound(continuous);
  return bySound([1 - systolic[0] - continuous[0], 1 - systolic[1] - continuous[1]]);
}

/** The band of a pressure index, or `undefined` where it says nothing. */
function bandOf(value: number, tables: Tables): ByStrength | undefined {
  const { limits, bands, incompressible } = tables.index;
  if (value > incompressible) return undefined;
  const band = limits.findIndex((limit) => value <= limit);
  return bands[band < 0 ? limits.length : band];
}

export const pulsePiece = (place: Place<PulseSiteId>): number => indexOf(pieceAbove(place).key);
const beyond = (place: Place): number => indexOf(piecesOf(vesselOf(place)).at(-1)!.key);
export const heardPiece = (place: Place<ListeningSiteId>, tables: Tables): number =>
  piecesOfStretch(tables.sound.heardAt[place.site], place.side === 'midline' ? undefined : place.side)[0]!;
const stretchPiece = (key: StretchKey, side: Side): number => piecesOfStretch(key, side)[0]!;

/** The limbs a place belongs to; what is found at the midline is found on both legs. */
export function limbsAt({ site, side }: Place): LimbKey[] {
  const { region } = siteDefinition(site);
  const kind = region === 'trunk' ? 'leg' : region;
  return side === 'midline' ? SIDES.map((s) => `${s} ${kind}` as const) : [`${side} ${kind}`];
}

/** Whether a pulse at a place says nothing about the arteries above it: never there, or the artery was taken. */
export function isMute(place: Place<PulseSiteId>, context: Context | undefined): boolean {
  if (place.side === 'midline') return false;
  if (place.site === 'radial') return context?.radialHarvested?.includes(place.side) ?? false;
  return (context?.absentFromBirth?.[place.side] as string[] | undefined)?.includes(place.site) ?? false;
}

function pains({ context }: Examination, tables: Tables): Finding[] {
  return SIDES.flatMap((side): Finding[] => {
    const found = { leg: context?.legClaudication?.[side], arm: context?.armClaudication?.[side] };
    return (['leg', 'arm'] as const).flatMap((kind): Finding[] => {
      const muscle = found[kind];
      if (!muscle) return [];
      const { at, pain } = (tables.claudication[kind] as Record<Muscle, Pain>)[muscle];
      const factor = { piece: stretchPiece(at, side), ...byStrength(pain) };
      return [
        { id: { kind: 'pain', limb: { side, kind }, muscle }, factors: [factor], limbs: [`${side} ${kind}`] },
      ];
    });
  });
}

function delays({ delays: found }: Examination, tables: Tables): Finding[] {
  const out: Finding[] = [];
  const { later, none } = tables.delay;
  const legs = SIDES.filter((side) => found?.radioFemoral?.[side] === 'delayed');
  const inTime = SIDES.filter((side) => found?.radioFemoral?.[side] === 'none');
  if (legs.length || inTime.length) {
    // Late on one side and in time on the other points beyond the fork; otherwise to the aorta above it.
    const oneSided = legs.length === 1 && inTime.length === 1;
    const piece = oneSided
      ? stretchPiece('external-iliac', legs[0]!)
      : piecesOfStretch('suprarenal-aorta')[0]!;
    const side = oneSided ? legs[0]! : legs.length ? 'both' : 'none';
    out.push({
      id: { kind: 'delay', of: 'radio-femoral', side },
      factors: [{ piece, ...byStrength(legs.length ? later : none) }],
      limbs: [...legs, ...inTime].map((s) => `${s} leg` as const),
    });
  }
  const arms = found?.radioRadial;
  if (arms) {
    const side = arms === 'none' ? 'none' : arms === 'right-later' ? 'right' : 'left';
    out.push({
      id: { kind: 'delay', of: 'radio-radial', side },
      factors: SIDES.filter((s) => side === 'none' || side === s).map((s) => ({
        piece: stretchPiece('axillary proximal', s),
        ...byStrength(side === 'none' ? none : later),
      })),
      limbs: ['right arm', 'left arm'],
    });
  }
  return out;
}

function indices({ at, ankle }: PressureEvidence, tables: Tables): Finding[] {
  const out: Finding[] = [];
  for (const [key, value] of Object.entries(at ?? {})) {
    const place = placeFromKey(key) as Place<PulseSiteId> | undefined;
    const band = bandOf(value, tables);
    if (!place || !PULSE_PLACES.some((p) => p.site === place.site) || !band) continue;
    const factors = [{ piece: pulsePiece(place), ...byStrength(band) }];
    out.push({ id: { kind: 'index', place, value }, factors, limbs: limbsAt(place) });
  }
  for (const side of SIDES) {
    const value = ankle?.[side];
    const band = value === undefined ? undefined : bandOf(value, tables);
    if (value === undefined || !band) continue;
    out.push({
      id: { kind: 'ankle-index', side, value },
      factors: [{ piece: anklePiece(side), ...byStrength(band) }],
      limbs: [`${side} leg`],
    });
  }
  return out;
}

/** Where an ankle index of unknown artery is read: the fork below the knee, which feeds all arteries of the ankle. */
export const anklePiece = (side: Side): number => stretchPiece('popliteal distal', side);

/** Everything in a record that the network takes in, in the order of examination. */
export function findingsOf(
  examination: Examination,
  tables: Tables,
  pressures: PressureEvidence = {},
): Finding[] {
  const { context } = examination;
  const lost = lostPieces(context);
  const out: Finding[] = [];
  const add = (id: FindingId, piece: number, likelihood: Omit<Factor, 'piece'>, limbs: LimbKey[]): void => {
    if (!lost.has(piece)) out.push({ id, factors: [{ piece, ...likelihood }], limbs });
  };
  for (const place of PULSE_PLACES) {
    const found = pulseAt(examination, place);
    if (!found || isMute(place, context)) continue;
    const limbs = limbsAt(place);
    const piece = pulsePiece(place);
    if (found.grade) {
      add(
        { kind: 'pulse', place, grade: found.grade },
        piece,
        palpation(place.site, found.grade, tables),
        limbs,
      );
    }
    if (found.doppler) {
      const signal = found.doppler;
      add({ kind: 'doppler', place, signal }, piece, byStrength(tables.doppler[signal]), limbs);
    }
    if (found.thrill) add({ kind: 'thrill', place }, beyond(place), bySound(tables.sound.thrill), limbs);
  }
  for (const place of LISTENING_PLACES) {
    const heard = bruitAt(examination, place)?.bruit;
    if (!heard) continue;
    add(
      { kind: 'bruit', place, bruit: heard },
      heardPiece(place, tables),
      bruit(place.site, heard, tables),
      limbsAt(place),
    );
  }
  return [
    ...out,
    ...delays(examination, tables),
    ...indices(pressures, tables),
    ...pains(examination, tables),
  ];
}
