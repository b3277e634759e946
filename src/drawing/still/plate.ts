import { type Piece, PIECES, type Place } from '../../anatomy/index.js';
import type { DrawnFlow, Flow } from '../flow.js';
import type { Point } from '../geometry.js';
import type { LabelText, Layout } from '../layout.js';
import { placeDigits } from '../plates/digits.js';
import { cropOfPlate, layOutPlate } from '../plates/layout.js';
import { DASH, INSIDE, PLATE_PAINT, SHADE } from '../plates/paint.js';
import { deepPath, type PlatePart, plateParts, type PlateUnit } from '../plates/parts.js';
import type { PlateView } from '../plates/plate.js';
import type { PreparedPlate } from '../plates/prepared.js';
import type { Paint } from '../paint.js';
import { type Ink, painted, type Painted } from './ink.js';
import { type Corner, fitted, type SmallLayout } from './small.js';
import { group, pathOf, tag, tenth } from './xml.js';

/** How the ground of a plate is drawn in a still picture. */
export interface PlateGround {
  readonly flow: readonly DrawnFlow[];
  readonly ink: Ink;
  /** Units of the plate of a px. */
  readonly px: number;
  /** Beginning of the ids of the picture's own clips. */
  readonly id: string;
  /** Whether a unit of the plate is exact enough, as in small pictures. */
  readonly coarse: boolean;
  /** Beginning of the ids under which the page has skin and healthy arteries, if it has them. */
  readonly shared: string | undefined;
  /** Nothing but the skin: for pictures too small for more. */
  readonly bare: boolean;
}

/** A plate as still pictures take it. */
export interface StillPlate {
  readonly view: PlateView;
  /** With names. */
  layOut(width: number, tallest: number, labelOf: (place: Place) => LabelText): Layout;
  small(width: number): SmallLayout;
  ground(ground: PlateGround): string;
  /** Whether a piece of the arterial tree is drawn on it. */
  shows(piece: Piece): boolean;
  /** What pictures refer to by ids that begin with a prefix. */
  shared(prefix: string, ink: Ink, px: number): string;
}

const TABLE: Readonly<Record<string, Paint>> = PLATE_PAINT;

/** With what a part is painted, in the units of its path. */
function paintOf(ink: Ink, kind: string, unit: number): Painted {
  return painted(ink, [TABLE[`.p-${kind}`] ?? {}], unit);
}

/** A part as text; its pieces by reference where the page has them. */
function partText(part: PlatePart, ink: Ink, unit: number, written: (part: PlatePart) => string): string {
  const { kind, width, opacity } = part;
  if (width === undefined) {
    const shift = SHADE.map((by) => tenth(by * unit)).join(' ');
    const more = { opacity, transform: kind === 'shade' ? `translate(${shift})` : undefined };
    return group({ ...paintOf(ink, kind, unit), ...more }, written(part));
  }
  const dashed = (name: string, share: number): string =>
    tag(
      'g',
      {
        ...painted(ink, [TABLE[`.p-${name}`] ?? {}]),
        'stroke-width': tenth(width * share),
        'stroke-dasharray': `${tenth(width * DASH.length)} ${tenth(width * DASH.gap)}`,
      },
      written(part),
    );
  const inside = kind === 'behind-hollow' ? dashed('behind-inside', INSIDE) : '';
  return tag('g', { opacity }, dashed(kind, 1) + inside);
}

/** Skin and landmarks under the arteries, which no finding changes; those over the deeper arteries are no less the same. */
const isUnder = ({ kind }: PlatePart): boolean => ['shade', 'body', 'tone', 'nail', 'line'].includes(kind);
const isSame = (part: PlatePart): boolean => isUnder(part) || part.kind === 'over';

const alike = (flow: Flow): DrawnFlow[] =>
  PIECES.map((piece) => ({ piece, from: piece.from, to: piece.to, flow }));

const changing = (parts: readonly PlatePart[]): readonly PlatePart[] => parts.filter((part) => !isSame(part));

const SHARED = new WeakMap<PreparedPlate, ReadonlyMap<string, string>>();

/** What of the arteries pictures refer to, by path data: at each flow, all together and one by one; computed once. */
function sharedIds(plate: PreparedPlate): ReadonlyMap<string, string> {
  const known = SHARED.get(plate);
  if (known) return known;
  const whole = (flow: Flow): PlatePart[] => [...changing(plateParts(plate, alike(flow), 'whole'))];
  const single = (flow: Flow): PlatePart[] =>
    alike(flow)
      .filter(({ piece }) => plate.strandsOf(piece).length > 0)
      .flatMap((one) => changing(plateParts(plate, [one], 'whole')));
  const all = [...whole('full'), ...whole('reduced')];
  const pieces = [...all, ...single('full'), ...single('reduced')].flatMap(({ d, pieces: own = [d] }) => own);
  const data = new Set([...all.map(({ d }) => d), ...pieces]);
  const ids = new Map([...data].map((d, i) => [d, i.toString(36)]));
  SHARED.set(plate, ids);
  return ids;
}

const use = (id: string): string => `<use href="#${id}"/>`;

/** Ids, without their prefix, of clips and layers: capitals, since arteries are numbered with small letters and digits. */
const CLIP_ID = { skin: 'S', deep: 'D' } as const;

/** The clips of a plate: its box, its skin, and the deeper arteries. */
function clips(plate: PreparedPlate, unit: PlateUnit, id: string, skin: string): string {
  const per = unit === 'tenth' ? 10 : 1;
  const [across, down] = plate.size;
  return [
    tag(
      'clipPath',
      { id: `${id}X` },
      tag('rect', { x: -across * per, width: 3 * across * per, height: down * per }),
    ),
    tag('clipPath', { id: `${id}S` }, pathOf(skin)),
    tag('clipPath', { id: `${id}D` }, pathOf(deepPath(plate, unit))),
  ].join('');
}

/** Neighbours that are clipped alike, in one group. */
function clipped(parts: readonly PlatePart[], id: string, text: (part: PlatePart) => string): string {
  let all = '';
  let at: PlatePart['clip'];
  let own = '';
  const close = (): void => {
    all += at ? group({ 'clip-path': `url(#${id}${CLIP_ID[at]})` }, own) : own;
    own = '';
  };
  for (const part of parts) {
    if (part.clip !== at) close();
    at = part.clip;
    own += text(part);
  }
  close();
  return all;
}

function groundText(plate: PreparedPlate, options: PlateGround): string {
  const { flow, ink, px, id, coarse, shared, bare } = options;
  if (bare && shared !== undefined) return use(`${shared}B`);
  const unit: PlateUnit = coarse || shared !== undefined ? 'whole' : 'tenth';
  const scale = unit === 'tenth' ? 0.1 : 1;
  const all = plateParts(plate, flow, unit);
  const parts = bare ? all.filter(({ kind }) => kind === 'shade' || kind === 'body') : all;
  const skin = parts.find(({ kind }) => kind === 'body')?.d ?? '';
  const prefix = shared ?? id;
  const ids = shared === undefined ? undefined : sharedIds(plate);
  const written = ({ d, pieces = [d] }: PlatePart): string => {
    if (!ids) return pathOf(d);
    const whole = ids.get(d);
    if (whole) return use(prefix + whole);
    const known = pieces.map((piece) => ids.get(piece));
    const own = pieces.filter((_, i) => known[i] === undefined).join('');
    return known.map((one) => (one === undefined ? '' : use(prefix + one))).join('') + pathOf(own);
  };
  const text = (part: PlatePart): string =>
    shared !== undefined && part.kind === 'over'
      ? use(`${shared}O`)
      : partText(part, ink, px / scale, written);
  const own = shared === undefined ? parts : parts.filter((part) => !isUnder(part));
  return (
    (shared === undefined ? clips(plate, unit, id, skin) : '') +
    group(
      { transform: scale === 1 ? undefined : `scale(${scale})`, 'clip-path': `url(#${prefix}X)` },
      (shared === undefined ? '' : use(`${shared}U`)) + clipped(own, prefix, text),
    )
  );
}

function sharedText(plate: PreparedPlate, prefix: string, ink: Ink, px: number): string {
  const parts = plateParts(plate, [], 'whole');
  const skin = parts.find(({ kind }) => kind === 'body')?.d ?? '';
  const text = (part: PlatePart): string => partText(part, ink, px, ({ d }) => pathOf(d));
  const under = parts.filter(isUnder);
  return [
    clips(plate, 'whole', prefix, skin),
    tag('g', { id: `${prefix}B` }, clipped(under.slice(0, 2), prefix, text)),
    tag('g', { id: `${prefix}U` }, use(`${prefix}B`) + clipped(under.slice(2), prefix, text)),
    tag(
      'g',
      { id: `${prefix}O` },
      clipped(
        parts.filter(({ kind }) => kind === 'over'),
        prefix,
        text,
      ),
    ),
    ...[...sharedIds(plate)].map(([d, id]) => pathOf(d, { id: prefix + id })),
  ].join('');
}

/** A plate of one side, or of both, for still pictures. */
export function stillPlate(plate: PreparedPlate): StillPlate {
  const { view } = plate;
  return {
    view,
    layOut: (width, tallest, labelOf) => layOutPlate(plate, width, tallest, labelOf),
    small: (width) => {
      const at = (place: Place): Point => plate.positionOf(place) as Point;
      const layout = fitted(view, width, cropOfPlate(plate), at, cornersOf(plate));
      const { scale, offsetX, offsetY, glyphScale } = layout;
      const px = ([x, y]: Point): Point => [x * scale + offsetX, y * scale + offsetY];
      return { ...layout, plate, digits: placeDigits(plate, px, glyphScale) };
    },
    shows: (piece) => plate.strandsOf(piece).length > 0,
    ground: (options) => groundText(plate, options),
    shared: (prefix, ink, px) => sharedText(plate, prefix, ink, px),
  };
}

/** The corners in which the letters of the sides stand: as on the large plate. */
function cornersOf({ view, plate: { pair } }: PreparedPlate): readonly Corner[] {
  if (pair)
    return [
      { side: 'left', right: false },
      { side: 'right', right: true },
    ];
  return [{ side: view.startsWith('right') ? 'right' : 'left', right: false }];
}
