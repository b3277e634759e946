import {
  ARTERIES,
  levelOf,
  PIECES,
  PULSE_PLACES,
  SIDES,
  type Vessel,
  vesselOf,
} from '../../anatomy/index.js';
import { type Context, type Examination, pulseAt } from '../../examination/index.js';
import { graftedPieces } from './grafts.js';
import { circulationOf, knownAneurysms } from './known.js';
import { acuteShare } from './onset.js';
import type { Model } from './columns.js';
import { CHILDREN, PARENT, piecesOfStretch } from './tree.js';
import { type Cause, type CauseFactors, CAUSES, type StretchKey, type Tables } from './types.js';

/** The most a piece may be expected to be diseased, whatever multiplies its prior. */
const MOST_LIKELY = 0.9;

const ATHEROSCLEROTIC: readonly Cause[] = ['none', 'focal', 'diffuse', 'low-flow'];
const ARM = new Set(['subclavian', 'axillary', 'brachial', 'radial', 'ulnar']);

function blend(pair: { acute: number; chronic: number }, acute: number): number {
  return acute * pair.acute + (1 - acute) * pair.chronic;
}

function weights(examination: Examination, tables: Tables, acute: number): Float64Array {
  const { context, history } = examination;
  const factors: CauseFactors[] = [];
  if (context?.ageBand) factors.push(tables.age[context.ageBand]);
  if (context?.mechanism) factors.push(tables.mechanism[context.mechanism]);
  else if (context?.injury?.right ?? context?.injury?.left) factors.push(tables.mechanism.injury);
  if (context?.smoking) factors.push(tables.smoking[context.smoking].causes);
  if (context?.diabetes !== undefined) factors.push(tables.diabetes[context.diabetes ? 'yes' : 'no'].causes);
  if (history?.rhythm === 'atrial-fibrillation') factors.push(tables.history['atrial-fibrillation'] ?? {});
  for (const risk of history?.risks ?? []) factors.push(tables.history[risk] ?? {});
  factors.push({
    'low-flow': lowFlowFactor(examination, tables),
    aneurysm: aneurysmFactor(examination, tables),
  });
  const weight = new Float64Array(CAUSES.length);
  let sum = 0;
  CAUSES.forEach((cause, c) => {
    weight[c] = factors.reduce((w, by) => w * (by[cause] ?? 1), blend(tables.causes[cause].weight, acute));
    sum += weight[c]!;
  });
  return weight.map((w) => w / sum);
}

/** How blood pressure, shock and cold limbs move the weight of low flow. */
function lowFlowFactor(examination: Examination, { lowFlow }: Tables): number {
  const { systolic, shock } = circulationOf(examination);
  const { inspection } = examination;
  const cold = SIDES.flatMap((side) => [inspection?.leg?.[side], inspection?.arm?.[side]]).filter(
    (limb) => limb?.temperature === 'cold' || limb?.temperature === 'cool',
  );
  const by = systolic === undefined ? 1 : (lowFlow.systolic.find(([upTo]) => systolic <= upTo)?.[1] ?? 1);
  return by * (shock ? lowFlow.shock : 1) * (cold.length > 2 ? lowFlow.coldLimbs : 1);
}

/** Arteries on which an aneurysm is known or was felt; of the aorta only the weight is moved, since it seldom closes. */
function aneurysmsOf(examination: Examination): { felt: boolean; pieces: number[] }[] {
  const known = knownAneurysms(examination).map(({ artery, side }) => ({
    felt: false,
    pieces: artery && !AORTIC.has(artery) ? [...piecesOfStretch(artery, side)] : [],
  }));
  const felt = PULSE_PLACES.flatMap((place) => {
    const { side } = place;
    const found = pulseAt(examination, place);
    const easy =
      place.site === 'popliteal' &&
      found?.grade === 'bounding' &&
      pulseAt(examination, { site: 'femoral', side } as typeof place)?.grade !== 'bounding';
    if (!found?.expansile && !easy) return [];
    const { artery } = vesselOf(place);
    return [
      {
        felt: true,
        pieces: AORTIC.has(artery) || side === 'midline' ? [] : [...piecesOfStretch(artery, side)],
      },
    ];
  });
  return [...known, ...felt];
}

const AORTIC = new Set<string>(['infrarenal-aorta', 'suprarenal-aorta', 'thoracic-aorta', 'aortic-arch']);

function aneurysmFactor(examination: Examination, { aneurysm }: Tables): number {
  const named = examination.history?.risks?.includes('known-aneurysm');
  const found = aneurysmsOf(examination);
  if (found.some(({ felt, pieces }) => felt && pieces.length)) return aneurysm.felt;
  return named || found.length ? aneurysm.known : 1;
}

/** The right side's share of an artery's lesions. */
function sideShare(cause: Cause, { artery, side }: Vessel, tables: Tables): number {
  const { rightShare } = tables;
  const right =
    (cause === 'embolic' && ARM.has(artery) ? rightShare['embolic arm'] : undefined) ??
    (ATHEROSCLEROTIC.includes(cause) && artery === 'subclavian' ? rightShare.subclavian : undefined) ??
    0.5;
  return side === 'right' ? right : 1 - right;
}

/** One entry of a cause's sites: how many of the whole patient's lesions fall on a piece. */
interface Spread {
  readonly piece: number;
  readonly lesions: number;
  readonly level: 'aorto-iliac' | 'infrapopliteal' | 'other';
}

function spreadOf(cause: Cause, tables: Tables): Spread[] {
  const { sites, lesions } = tables.causes[cause];
  return (Object.entries(sites) as [StretchKey, number][]).flatMap(([key, share]) =>
    piecesOfStretch(key).map((i): Spread => {
      const piece = PIECES[i]!;
      const sided = ARTERIES[piece.artery].occurs !== 'paired' ? 1 : sideShare(cause, piece, tables);
      const length = key.includes(' ') ? 1 : piece.to - piece.from;
      const level = levelOf(piece.artery, 'leg');
      return {
        piece: i,
        lesions: lesions * share * sided * length,
        level: level === 'aorto-iliac' || level === 'infrapopliteal' ? level : 'other',
      };
    }),
  );
}

const SPREADS = new WeakMap<Tables, readonly Spread[][]>();

/** The spread of every cause's lesions; worked out once for each set of tables. */
function spreadsOf(tables: Tables): readonly Spread[][] {
  let found = SPREADS.get(tables);
  if (!found) {
    found = CAUSES.map((cause) => spreadOf(cause, tables));
    SPREADS.set(tables, found);
  }
  return found;
}

/** Expected number of a cause's lesions in each piece, for one patient. */
function expected(
  spread: readonly Spread[],
  cause: Cause,
  context: Context | undefined,
  tables: Tables,
): Float64Array {
  const out = new Float64Array(PIECES.length);
  const athero = ATHEROSCLEROTIC.includes(cause);
  const factors = {
    'aorto-iliac': athero && context?.smoking ? tables.smoking[context.smoking].aortoIliac : 1,
    infrapopliteal:
      athero && context?.diabetes !== undefined
        ? tables.diabetes[context.diabetes ? 'yes' : 'no'].infrapopliteal
        : 1,
    other: 1,
  };
  for (const { piece, lesions, level } of spread) out[piece]! += lesions * factors[level];
  return out;
}

/** An injury known to lie somewhere draws the lesions there. */
function draw(at: Float64Array, context: Context | undefined, tables: Tables): void {
  const places = SIDES.filter((side) => context?.injury?.[side]);
  if (places.length === 0) return;
  const { certainty } = tables.injury;
  for (let i = 0; i < at.length; i++) at[i]! *= 1 - certainty;
  for (const side of places) {
    const pieces = tables.injury.places[context!.injury![side]!].flatMap((key) => piecesOfStretch(key, side));
    for (const i of pieces) at[i]! += certainty / (places.length * pieces.length);
  }
}

/** No living patient has the aorta above the renal arteries blocked, but for an interruption that was there from birth. */
const CENTRAL = PIECES.map(({ artery }) => levelOf(artery, 'leg') === 'central' && artery !== 'renal');
const CALIBRE = PIECES.map(({ key }, i) => (CENTRAL[i] ? 1 : / subclavian proximal$/.test(key) ? 2 : 0));

/** Where an amputation cuts: everything fed through these is gone. */
const CUT: Record<string, readonly StretchKey[]> = {
  toes: [],
  forefoot: ['dorsalis-pedis distal', 'plantar-arch'],
  'below-knee': ['anterior-tibial', 'posterior-tibial', 'peroneal'],
  'through-knee': ['popliteal distal'],
  'above-knee': ['popliteal'],
  hip: ['deep-femoral', 'superficial-femoral'],
  fingers: [],
  hand: ['deep-palmar-arch', 'superficial-palmar-arch', 'radial distal', 'ulnar distal'],
  'below-elbow': ['radial', 'ulnar'],
  'above-elbow': ['brachial distal'],
  shoulder: ['axillary distal'],
};

const NONE_LOST: ReadonlySet<number> = new Set();

/** The pieces that an amputation took, by the record's context. */
export function lostPieces(context: Context | undefined): ReadonlySet<number> {
  if (!context?.legAmputation && !context?.armAmputation) return NONE_LOST;
  const lost = new Set<number>();
  for (const side of SIDES) {
    for (const level of [context?.legAmputation?.[side], context?.armAmputation?.[side]]) {
      for (const key of level ? (CUT[level] ?? []) : [])
        for (const i of piecesOfStretch(key, side)) lost.add(i);
    }
  }
  if (lost.size) {
    PARENT.forEach((parent, i) => {
      if (lost.has(parent)) lost.add(i);
    });
  }
  return lost;
}

/** Passage by calibre: arteries, then the aorta above the renal arteries, in which a narrowing never stops the pulse. */
function rows(through: 'narrowed' | 'blocked', { passage }: Tables, acute: number): Float64Array {
  const usual = [passage.acute[through], passage.chronic[through]] as const;
  const central = through === 'narrowed' ? ([passage.central, passage.central] as const) : usual;
  const steal = through === 'blocked' ? ([passage.steal, passage.steal] as const) : usual;
  const out = new Float64Array(27);
  [usual, central, steal].forEach(([a, c], calibre) => {
    for (let r = 0; r < 2; r++) {
      for (let t = 0; t < 3; t++) {
        out[calibre * 9 + r * 3 + t] = blend({ acute: a[r]![t]!, chronic: c[r]![t]! }, acute);
      }
    }
    out[calibre * 9 + 8] = 1;
  });
  return out;
}

/** Ways in which findings are read, by place in `Factor.by`; those for feet hard to feel come after them. */
export const READINGS = { usual: 0, weak: 1, gone: 2 } as const;

/** One column a cause, and two for low flow. */
function columnsOf(weight: Float64Array, { lowFlow }: Tables): Pick<Model, 'weight' | 'cause' | 'reading'> {
  const low = CAUSES.indexOf('low-flow');
  const cause = [...CAUSES.keys(), low];
  const all = Float64Array.from(cause, (c) => weight[c]!);
  all[low]! *= 1 - lowFlow.share;
  all[all.length - 1]! *= lowFlow.share;
  const reading = cause.map((c, k) =>
    c !== low ? READINGS.usual : k === low ? READINGS.weak : READINGS.gone,
  );
  return { weight: all, cause, reading };
}

const STRUCK = CAUSES.map((cause) => cause !== 'none' && cause !== 'low-flow');

/** The network of one patient before any finding: tables bent by what is known beforehand. */
export function modelOf(examination: Examination, tables: Tables, earlier?: Examination): Model {
  const acute = acuteShare(examination, tables, earlier);
  const weight = weights(examination, tables, acute);
  const aneurysms = aneurysmsOf(examination);
  const { context } = examination;
  // Most edits of a record are findings, which leave the model as it was.
  let found = LATEST.find(
    (one) =>
      one.tables === tables &&
      one.acute === acute &&
      weight.every((w, c) => w === one.weight[c]) &&
      (one.context === context || JSON.stringify(one.context) === JSON.stringify(context)) &&
      JSON.stringify(one.aneurysms) === JSON.stringify(aneurysms),
  );
  if (!found) {
    const model = built(context, tables, acute, weight, aneurysms);
    found = { tables, acute, weight, context, aneurysms, model };
    LATEST.unshift(found);
    LATEST.length = Math.min(LATEST.length, KEPT);
  }
  return found.model;
}

interface Known {
  readonly tables: Tables;
  readonly acute: number;
  readonly weight: Float64Array;
  readonly context: Context | undefined;
  readonly aneurysms: ReturnType<typeof aneurysmsOf>;
  readonly model: Model;
}

/** The latest models: of the record as it stands, and as if its onset were known. */
const KEPT = 6;
const LATEST: Known[] = [];

function built(
  context: Context | undefined,
  tables: Tables,
  acute: number,
  weight: Float64Array,
  aneurysms: ReturnType<typeof aneurysmsOf>,
): Model {
  const causes = CAUSES.length;
  const narrowed = new Float64Array(PIECES.length * causes);
  const blocked = new Float64Array(PIECES.length * causes);
  const lost = lostPieces(context);
  const spreads = spreadsOf(tables);
  CAUSES.forEach((cause, c) => {
    const lesions = expected(spreads[c]!, cause, context, tables);
    if (cause === 'injury') draw(lesions, context, tables);
    if (cause === 'aneurysm') {
      for (const { pieces } of aneurysms)
        for (const i of pieces) lesions[i]! += tables.aneurysm.lesions / pieces.length;
    }
    const share = blend(tables.causes[cause].blocked, acute);
    for (let i = 0; i < PIECES.length; i++) {
      if (lesions[i] === 0 || lost.has(i)) continue;
      const p = Math.min(MOST_LIKELY, 1 - Math.exp(-lesions[i]!));
      const block = CENTRAL[i] && cause !== 'coarctation' ? 0 : share;
      narrowed[i * causes + c] = p * (1 - block);
      blocked[i * causes + c] = p * block;
    }
  });
  const { repaired, passed } = graftedPieces(context);
  const fill = (piece: number, narrow: number, block: number): void => {
    if (lost.has(piece)) return;
    narrowed.fill(narrow, piece * causes, (piece + 1) * causes);
    blocked.fill(block, piece * causes, (piece + 1) * causes);
  };
  for (const piece of passed) fill(piece, 0, 0);
  for (const { piece, kind, share } of repaired) {
    const own = tables.revascularisation[kind];
    fill(piece, own.narrowed * share, own.blocked * share);
  }
  return {
    parent: PARENT,
    children: CHILDREN,
    ...columnsOf(weight, tables),
    struck: STRUCK,
    narrowed,
    blocked,
    throughNarrowed: rows('narrowed', tables, acute),
    throughBlocked: rows('blocked', tables, acute),
    calibre: CALIBRE,
    carries: tables.sound.carries,
  };
}
