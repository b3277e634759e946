import {
  type Limb,
  limbKey,
  type LimbKey,
  LIMBS,
  LISTENING_PLACES,
  type ListeningSiteId,
  type Place,
  placeKey,
  PULSE_PLACES,
  type PulseSiteId,
  type Side,
  SIDES,
} from '../../anatomy/index.js';
import { bruitAt, DOPPLER_SIGNALS, type Examination, isStated, pulseAt } from '../../examination/index.js';
import { takenAt } from './evidence.js';
import { type Feet, feetName } from './feet.js';
import { acrossEnd, type Finding, heardPiece, isMute, limbsAt, pulsePiece, stretchPiece } from './finding.js';
import { bandsOf, bruit, byStrength, type Likelihood, palpation } from './likelihoods.js';
import { kept } from './kept.js';
import { lostPieces } from './model.js';
import type { Factor } from './columns.js';
import { piecesOfStretch } from './tree.js';
import type { Pain, Tables } from './types.js';

/** Something that could be done next. */
export type ActId =
  | { readonly kind: 'feel' | 'listen'; readonly place: Place }
  | { readonly kind: 'doppler'; readonly place: Place<PulseSiteId> }
  | { readonly kind: 'ankle-pressure' | 'toe-pressure'; readonly side: Side }
  | { readonly kind: 'arm-pressures' }
  | { readonly kind: 'delay'; readonly of: 'radio-radial' | 'radio-femoral' }
  | { readonly kind: 'pain-level'; readonly limb: Limb }
  | { readonly kind: 'onset' };
/** The kinds of act; `inspect` stands for what is asked and seen and answers a red flag only. */
export type ActKind = ActId['kind'] | 'inspect';

/** What an act costs in time and trouble, in nats of what it must tell to be worth it. Judgement, no source. */
export const COST: Readonly<Record<ActId['kind'], number>> = {
  onset: 0.005,
  'pain-level': 0.01,
  feel: 0.01,
  delay: 0.015,
  listen: 0.02,
  doppler: 0.03,
  'arm-pressures': 0.03,
  'ankle-pressure': 0.04,
  'toe-pressure': 0.06,
};

export interface Act {
  readonly id: ActId;
  /** The limbs it is done on. */
  readonly limbs: readonly LimbKey[];
  /** The pieces that its report bears on, and for each outcome its likelihoods. */
  readonly pieces: readonly number[];
  readonly outcomes: readonly (readonly Factor[])[];
  /** Whether exactly one of the outcomes must come, so that their likelihoods sum to one. */
  readonly exhaustive: boolean;
}

const GRADES = ['absent', 'reduced', 'normal', 'bounding'] as const;
const PAIN_ACTS = { leg: ['none', 'buttock', 'calf-upper'], arm: ['none', 'arm'] } as const;

/** What is left out of the likelihoods given: the outcome "anything else". */
function rest(given: readonly Likelihood[]): Likelihood {
  const most = Math.max(...given.map(({ by }) => by.length));
  return {
    by: Array.from({ length: most }, (_, t) =>
      Array.from({ length: 6 }, (_, x) =>
        Math.max(0, 1 - given.reduce((sum, { by }) => sum + (by[t] ?? by[0]!)[x]!, 0)),
      ),
    ),
  };
}

function actOf(
  id: ActId,
  limbs: readonly LimbKey[],
  outcomes: readonly (readonly Factor[])[],
  exhaustive = true,
): Act {
  const pieces = [...new Set(outcomes.flatMap((one) => one.map(({ piece }) => piece)))];
  return { id, limbs, pieces, outcomes, exhaustive };
}

/** The pulse reports; bounding counts with normal, since it says nearly the same of the arteries above. */
function feeling(place: Place<PulseSiteId>, tables: Tables, feet: readonly Feet[], taken: number): Act {
  const piece = pulsePiece(place);
  const weak = GRADES.slice(0, 2).map((grade) => palpation(place.site, grade, tables, feet, taken));
  const outcomes = [...weak, rest(weak)].map((likelihood) => [{ piece, ...likelihood }]);
  return actOf({ kind: 'feel', place }, limbsAt(place), outcomes);
}

function sounding(place: Place<PulseSiteId>, { doppler }: Tables): Act {
  const piece = pulsePiece(place);
  return actOf(
    { kind: 'doppler', place },
    limbsAt(place),
    DOPPLER_SIGNALS.map((signal) => [{ piece, ...byStrength(doppler[signal]) }]),
  );
}

function listening(place: Place<ListeningSiteId>, tables: Tables): Act {
  const piece = heardPiece(place, tables);
  const silent = bruit(place.site, 'none', tables);
  return actOf(
    { kind: 'listen', place },
    limbsAt(place),
    [silent, rest([silent])].map((one) => [{ piece, ...one }]),
  );
}

const LIMITS = { ankle: [0.4, 0.9], toe: [0.3, 0.7] } as const;

function measuring(cuff: 'ankle' | 'toe', side: Side, tables: Tables): Act {
  const leg = { side, kind: 'leg' } as const;
  return actOf(
    { kind: `${cuff}-pressure`, side },
    [limbKey(leg)],
    bandsOf(cuff, LIMITS[cuff], tables).map((band) => acrossEnd(leg, band)),
    false,
  );
}

function comparingArms(tables: Tables): Act {
  const pieces = SIDES.map((side) => pulsePiece({ site: 'brachial', side }));
  const bands = bandsOf('arm', [0.7, 0.9], tables);
  const best = bands.at(-1)!;
  // The higher arm is the reference, so what is told is which side is lower and how far.
  const pairs = bands.flatMap((band) =>
    band === best
      ? [[best, best]]
      : [
          [band, best],
          [best, band],
        ],
  );
  return actOf(
    { kind: 'arm-pressures' },
    ['right arm', 'left arm'],
    pairs.map((pair) => pair.map((own, j) => ({ piece: pieces[j]!, ...own }))),
    false,
  );
}

function timing({ delay }: Tables): Act {
  const [piece] = piecesOfStretch('suprarenal-aorta');
  return actOf(
    { kind: 'delay', of: 'radio-femoral' },
    ['right leg', 'left leg'],
    [delay.later, delay.none].map((values) => [{ piece: piece!, ...byStrength(values) }]),
  );
}

function askingPain(limb: Limb & { kind: 'leg' | 'arm' }, { claudication }: Tables): Act {
  const table = claudication[limb.kind] as Readonly<Record<string, Pain>>;
  const outcomes = PAIN_ACTS[limb.kind].map((muscle) => {
    const { at, pain } = table[muscle]!;
    return [{ piece: stretchPiece(at, limb.side), ...byStrength(pain) }];
  });
  return actOf({ kind: 'pain-level', limb }, [limbKey(limb)], outcomes, false);
}

/** The acts on a record that are open, each kept with the tables unless the record itself bends it. */
function openActs(
  examination: Examination,
  findings: readonly Finding[],
  tables: Tables,
  feet: readonly Feet[],
): Act[] {
  const open: Act[] = [];
  const { context, delays } = examination;
  const has = (holds: (id: Finding['id']) => boolean): boolean => findings.some(({ id }) => holds(id));
  for (const place of PULSE_PLACES) {
    const found = pulseAt(examination, place);
    if (isMute(place, context)) continue;
    const key = placeKey(place);
    if (!isStated(found)) {
      const taken = takenAt(place, examination, tables);
      const make = (): Act => feeling(place, tables, feet, taken);
      open.push(taken > 0 ? make() : kept(tables, `feel ${key} ${feetName(feet)}`, make));
    }
    const weak = found?.grade === 'absent' || found?.grade === 'reduced';
    if (!weak || found.doppler || !/tibial|pedis|radial|ulnar/.test(place.site)) continue;
    open.push(kept(tables, `doppler ${key}`, () => sounding(place, tables)));
  }
  for (const place of LISTENING_PLACES) {
    const found = bruitAt(examination, place);
    if (found?.bruit || found?.couldNotExamine) continue;
    open.push(kept(tables, `listen ${placeKey(place)}`, () => listening(place, tables)));
  }
  for (const side of SIDES) {
    const known = has(
      (id) =>
        (id.kind === 'ankle-index' && id.side === side) ||
        ((id.kind === 'index' || id.kind === 'incompressible') &&
          id.place.side === side &&
          /tibial|pedis/.test(id.place.site)),
    );
    const digit = has((id) => id.kind === 'digit-index' && id.limb.kind === 'leg' && id.limb.side === side);
    if (known && digit) continue;
    const cuff = known ? 'toe' : 'ankle';
    open.push(kept(tables, `${cuff} ${side}`, () => measuring(cuff, side, tables)));
  }
  if (!has((id) => id.kind === 'index' && id.place.site === 'brachial')) {
    open.push(kept(tables, 'arms', () => comparingArms(tables)));
  }
  if (!delays?.radioFemoral) open.push(kept(tables, 'radio-femoral', () => timing(tables)));
  for (const { side, kind } of LIMBS) {
    if (kind === 'head') continue;
    const known = kind === 'leg' ? context?.legClaudication?.[side] : context?.armClaudication?.[side];
    if (!known) open.push(kept(tables, `pain ${side} ${kind}`, () => askingPain({ side, kind }, tables)));
  }
  return open;
}

/** Every act not yet done that the record leaves open on limbs in question. */
export function actsLeft(
  examination: Examination,
  findings: readonly Finding[],
  tables: Tables,
  feet: readonly Feet[],
  wanted: ReadonlySet<LimbKey>,
): readonly Act[] {
  if (wanted.size === 0) return [];
  const lost = lostPieces(examination.context);
  return openActs(examination, findings, tables, feet).filter(
    ({ limbs, pieces }) => limbs.some((limb) => wanted.has(limb)) && !pieces.some((piece) => lost.has(piece)),
  );
}
