import { ARTERIES, levelOf, PIECES, SIDES, type Vessel } from '../../anatomy/index.js';
import type { Context, Examination } from '../../examination/index.js';
import type { Model } from './propagate.js';
import { CHILDREN, PARENT, piecesOfStretch } from './tree.js';
import { type Cause, type CauseFactors, CAUSES, type StretchKey, type Tables } from './types.js';

/** The most a piece may be expected to be diseased, whatever multiplies its prior. */
const MOST_LIKELY = 0.9;

const ATHEROSCLEROTIC: readonly Cause[] = ['none', 'focal', 'diffuse', 'low-flow'];
const ARM = new Set(['subclavian', 'axillary', 'brachial', 'radial', 'ulnar']);

/** How much of the acute figures counts: the two halves where the onset is not known. */
function acuteShare({ onset }: Examination): number {
  return onset === 'acute' ? 1 : onset === 'chronic' ? 0 : 0.5;
}

function blend(pair: { acute: number; chronic: number }, acute: number): number {
  return acute * pair.acute + (1 - acute) * pair.chronic;
}

function weights(examination: Examination, tables: Tables, acute: number): Float64Array {
  const { context, history } = examination;
  const factors: CauseFactors[] = [];
  if (context?.ageBand) factors.push(tables.age[context.ageBand]);
  if (context?.mechanism) factors.push(tables.mechanism[context.mechanism]);
  else if (context?.injury?.right ?? context?.injury?.left) factors.push(tables.mechanism.injury);
  if (context?.diabetes !== undefined) factors.push(tables.diabetes[context.diabetes ? 'yes' : 'no'].causes);
  if (history?.rhythm === 'atrial-fibrillation') factors.push(tables.history['atrial-fibrillation'] ?? {});
  for (const risk of history?.risks ?? []) factors.push(tables.history[risk] ?? {});
  const weight = new Float64Array(CAUSES.length);
  let sum = 0;
  CAUSES.forEach((cause, c) => {
    weight[c] = factors.reduce((w, by) => w * (by[cause] ?? 1), blend(tables.causes[cause].weight, acute));
    sum += weight[c]!;
  });
  return weight.map((w) => w / sum);
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

/** No living patient has the aorta above the renal arteries blocked: there it only narrows. */
const CENTRAL = PIECES.map(({ artery }) => levelOf(artery, 'leg') === 'central' && artery !== 'renal');
const CALIBRE = CENTRAL.map((central) => (central ? 1 : 0));

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

/** The pieces that an amputation took, by the record's context. */
export function lostPieces(context: Context | undefined): Set<number> {
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
  const out = new Float64Array(18);
  [usual, central].forEach(([a, c], calibre) => {
    for (let r = 0; r < 2; r++) {
      for (let t = 0; t < 3; t++) {
        out[calibre * 9 + r * 3 + t] = blend({ acute: a[r]![t]!, chronic: c[r]![t]! }, acute);
      }
    }
    out[calibre * 9 + 8] = 1;
  });
  return out;
}

/** The network of one patient before any finding: tables bent by what is known beforehand. */
export function modelOf(examination: Examination, tables: Tables): Model {
  const acute = acuteShare(examination);
  const { context } = examination;
  const causes = CAUSES.length;
  const narrowed = new Float64Array(PIECES.length * causes);
  const blocked = new Float64Array(PIECES.length * causes);
  const lost = lostPieces(context);
  const spreads = spreadsOf(tables);
  CAUSES.forEach((cause, c) => {
    const lesions = expected(spreads[c]!, cause, context, tables);
    if (cause === 'injury') draw(lesions, context, tables);
    const share = blend(tables.causes[cause].blocked, acute);
    for (let i = 0; i < PIECES.length; i++) {
      if (lesions[i] === 0 || lost.has(i)) continue;
      const p = Math.min(MOST_LIKELY, 1 - Math.exp(-lesions[i]!));
      const block = CENTRAL[i] ? 0 : share;
      narrowed[i * causes + c] = p * (1 - block);
      blocked[i * causes + c] = p * block;
    }
  });
  for (const { artery, side, kind } of context?.revascularisations ?? []) {
    const own = tables.revascularisation[kind];
    PIECES.forEach((piece, i) => {
      if (piece.artery !== artery || piece.side !== side || lost.has(i)) return;
      const length = piece.to - piece.from;
      narrowed.fill(own.narrowed * length, i * causes, (i + 1) * causes);
      blocked.fill(own.blocked * length, i * causes, (i + 1) * causes);
    });
  }
  return {
    parent: PARENT,
    children: CHILDREN,
    weight: weights(examination, tables, acute),
    second: CAUSES.map((cause) => cause === 'low-flow'),
    struck: CAUSES.map((cause) => cause !== 'none' && cause !== 'low-flow'),
    narrowed,
    blocked,
    throughNarrowed: rows('narrowed', tables, acute),
    throughBlocked: rows('blocked', tables, acute),
    calibre: CALIBRE,
    carries: tables.sound.carries,
  };
}
