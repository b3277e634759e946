import { levelOf, type Piece, PIECES, type Vessel } from '../../anatomy/index.js';
import { arteryParts, type ArteryPart } from '../arteries.js';
import type { DrawnFlow } from '../flow.js';
import { silhouetteOf } from '../healthy.js';
import { landmarksOf } from '../landmarks.js';
import { GROUND_PAINT, type Paint } from '../paint.js';
import { type Ink, keptPaint, painted, type Painted } from './ink.js';
import { group, pathOf, tag } from './xml.js';

/*
 * Body and arteries of a still picture. They are most of its bytes and mostly the same from one picture to the next, so a page
 * with many of them can have them once: every stretch that a picture draws as the healthy tree has it, it then only refers to.
 */

type Tone = ArteryPart['tone'];

/** What lies beneath every artery, so that pictures refer to it as one. */
const BENEATH = ['body', 'form', 'hints'] as const;

/** Body and arteries as they lie over each other. */
const LAYERS = [
  ...BENEATH,
  'behind',
  'organ',
  'deep',
  'trunk',
  'heart',
  'hollow',
  'thinning',
  'near',
  'over',
] as const;
type Layer = (typeof LAYERS)[number];
type Landmark = Exclude<Layer, Tone>;

const TONES: readonly Layer[] = ['behind', 'deep', 'trunk', 'hollow', 'thinning', 'near'];
const isLandmark = (layer: Layer): layer is Landmark => !TONES.includes(layer);

/** The path data of a layer of the body, in tenths of a figure unit. */
function bodyPath(layer: Landmark, arms: boolean): string {
  const { body, heart, kidneys, grooves } = silhouetteOf(arms);
  const { form, named, over } = landmarksOf(arms);
  return { body, form: form + grooves, hints: named, organ: kidneys + heart, heart, over }[layer];
}

/** Figure units a number of the body's path data stands for. */
const BODY_UNIT = 0.1;

/** Arteries that share a fate: what changes in one limb leaves those of the others as they are. */
function regionOf({ artery, side }: Vessel): string {
  const level = levelOf(artery, 'leg');
  if (level === 'axillo-brachial' || level === 'forearm-hand') return `${side}-arm`;
  return level === 'femoro-popliteal' || level === 'infrapopliteal' ? `${side}-leg` : 'trunk';
}

function inGroups(parts: readonly ArteryPart[]): Map<string, ArteryPart[]> {
  const groups = new Map<string, ArteryPart[]>();
  for (const part of parts) {
    const key = `${part.tone}-${regionOf(part.vessel)}`;
    const found = groups.get(key);
    if (found) found.push(part);
    else groups.set(key, [part]);
  }
  return groups;
}

const joined = (parts: readonly ArteryPart[]): string => parts.map(({ d }) => d).join('');

interface Shared {
  /** Id, without its prefix, of each group of the healthy tree and of each of its stretches, by path data. */
  readonly ids: ReadonlyMap<string, string>;
}

const SHARED = new Map<boolean, Shared>();

/** What of the healthy tree pictures refer to; computed once. */
function sharedTree(arms: boolean): Shared {
  let shared = SHARED.get(arms);
  if (!shared) {
    const healthy = PIECES.map((piece): DrawnFlow => ({
      piece,
      from: piece.from,
      to: piece.to,
      flow: 'full',
    }));
    const parts = arteryParts(healthy, arms, 'whole');
    const pieces = healthy.flatMap((piece) => arteryParts([piece], arms, 'whole'));
    const groups = [...inGroups(parts).values()].map(joined);
    const data = new Set([...groups, ...[...parts, ...pieces].map(({ d }) => d)]);
    shared = { ids: new Map([...data].map((d, i) => [d, i.toString(36)])) };
    SHARED.set(arms, shared);
  }
  return shared;
}

/** The paint of a layer, in the units of its path data. */
function paintOf(ink: Ink, layer: Layer, px: number): Painted {
  return keptPaint(ink, `${layer} ${px}`, () => layerPaint(ink, layer, px));
}

function layerPaint(ink: Ink, layer: Layer, px: number): Painted {
  const table: Readonly<Record<string, Paint>> = GROUND_PAINT;
  if (isLandmark(layer))
    return painted(ink, [table[layer === 'over' ? '.hints' : `.${layer}`] ?? {}], px / BODY_UNIT);
  if (layer === 'hollow') return painted(ink, [GROUND_PAINT['.hollow']], px);
  return painted(ink, [GROUND_PAINT['.artery'], table[`.artery.${layer}`] ?? {}], px);
}

const inBodyUnits = `scale(${BODY_UNIT})`;

function landmark(layer: Landmark, arms: boolean, ink: Ink, px: number): string {
  return pathOf(bodyPath(layer, arms), { ...paintOf(ink, layer, px), transform: inBodyUnits });
}

/** What the pictures of a page refer to by the ids that begin with a prefix. */
export function sharedGround(prefix: string, arms: boolean, ink: Ink, px: number): string {
  const { ids } = sharedTree(arms);
  const [beneath, others] = [BENEATH, LAYERS.slice(BENEATH.length).filter(isLandmark)].map((layers) =>
    layers.map((layer) => tag('g', { id: prefix + layer }, landmark(layer, arms, ink, px))).join(''),
  ) as [string, string];
  const paths = [...ids].map(([d, id]) => pathOf(d, { id: prefix + id }));
  return [tag('g', { id: `${prefix}base` }, beneath), others, ...paths].join('');
}

const use = (id: string): string => `<use href="#${id}"/>`;

/** Arteries of one tone that share a fate: by reference where the healthy tree has them. */
interface Referred {
  readonly tone: Tone;
  /** Place in the tree of the first of their pieces. */
  readonly first: number;
  readonly references: string;
  /** Path data of the rest. */
  readonly own: string;
}

/** Arteries of one region. */
function referredIn(flow: readonly DrawnFlow[], prefix: string, arms: boolean): Referred[] {
  const { ids } = sharedTree(arms);
  return [...inGroups(arteryParts(flow, arms, 'whole')).values()].map((some): Referred => {
    const [{ tone, vessel }] = some as [ArteryPart];
    const first = PIECES.indexOf(vessel as Piece);
    const whole = ids.get(joined(some));
    if (whole) return { tone, first, references: use(prefix + whole), own: '' };
    let [references, own] = ['', ''];
    for (const { d } of some) {
      const id = ids.get(d);
      if (id) references += use(prefix + id);
      else own += d;
    }
    return { tone, first, references, own };
  });
}

const REFERRED = new Map<string, readonly Referred[]>();
/** Most regions of most records have one of few patterns of flow. */
const MOST_KEPT = 400;

const REGIONS = new Map<Piece, string>(PIECES.map((piece) => [piece, regionOf(piece)]));

/** All arteries in the order in which they are drawn; those of a region are worked out once for each pattern of flow. */
function referred(flow: readonly DrawnFlow[], prefix: string, arms: boolean): Referred[] {
  const regions = new Map<string, { flow: DrawnFlow[]; pattern: string; thins: boolean }>();
  for (const one of flow) {
    const name = REGIONS.get(one.piece)!;
    let region = regions.get(name);
    if (!region) regions.set(name, (region = { flow: [], pattern: '', thins: false }));
    region.flow.push(one);
    region.pattern += one.flow[0];
    region.thins ||= one.width !== undefined;
  }
  return [...regions]
    .flatMap(([name, region]) => {
      if (region.thins) return referredIn(region.flow, prefix, arms);
      const key = `${prefix} ${name} ${region.pattern}`;
      let found = REFERRED.get(key);
      if (!found) {
        if (REFERRED.size >= MOST_KEPT) REFERRED.clear();
        REFERRED.set(key, (found = referredIn(region.flow, prefix, arms)));
      }
      return found;
    })
    .sort((a, b) => a.first - b.first);
}

/** How the ground of a picture is drawn. */
export interface Ground {
  readonly flow: readonly DrawnFlow[];
  readonly arms: boolean;
  readonly ink: Ink;
  /** Figure units of a px. */
  readonly px: number;
  /** Whether a figure unit is exact enough, as in small pictures. */
  readonly coarse: boolean;
  /** Beginning of the ids under which the page has body and healthy arteries, if it has them. */
  readonly shared: string | undefined;
  /** Nothing but the body: for pictures too small for more. */
  readonly bare: boolean;
}

/** Body and arteries in figure units. */
export function groundText({ flow, arms, ink, px, coarse, shared, bare }: Ground): string {
  if (bare) return shared === undefined ? landmark('body', arms, ink, px) : use(`${shared}body`);
  if (shared !== undefined) {
    const arteries = referred(flow, shared, arms);
    const above = LAYERS.slice(BENEATH.length).map((layer) => {
      if (isLandmark(layer)) return use(shared + layer);
      const own = arteries.filter(({ tone }) => tone === layer);
      const text =
        own.map(({ references }) => references).join('') + pathOf(own.map((one) => one.own).join(''));
      return group(paintOf(ink, layer, px), text);
    });
    return use(`${shared}base`) + above.join('');
  }
  const exact = !coarse;
  const parts = arteryParts(flow, arms, exact ? 'tenth' : 'whole');
  const scale = exact ? BODY_UNIT : 1;
  return LAYERS.map((layer) => {
    if (isLandmark(layer)) return landmark(layer, arms, ink, px);
    const d = joined(parts.filter(({ tone }) => tone === layer));
    return group(
      { ...paintOf(ink, layer, px / scale), transform: exact ? inBodyUnits : undefined },
      pathOf(d),
    );
  }).join('');
}
