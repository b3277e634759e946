import { type ArteryId, levelOf, type Vessel } from '../anatomy/index.js';
import { COURSES, type Depth } from './figure.js';
import type { DrawnFlow, Flow } from './flow.js';
import { PathWriter } from './path-writer.js';
import { drawRibbon } from './ribbon.js';
import { courseOf, radiusAt } from './vessels.js';

/** Path data of the arteries in tenths of a figure unit, one path per tone; empty if the tone is unused. */
export type ArteryPaths = Readonly<Record<Depth | 'hollow', string>>;

/** Width of an artery beyond a narrowing, as a share of its own. */
const REDUCED_WIDTH = 0.5;

/** A stretch of one artery, one depth and one flow. */
interface Stretch {
  readonly vessel: Vessel;
  readonly from: number;
  to: number;
  readonly depth: Depth;
  readonly flow: Flow;
}

/** Whether an artery lies in the arm and is hidden together with it. */
function ofArm(artery: ArteryId): boolean {
  const level = levelOf(artery, 'leg');
  return level === 'axillo-brachial' || level === 'forearm-hand';
}

/** A drawn part of an artery, cut where the artery changes its depth. */
function stretchesOf({ piece, from, to, flow }: DrawnFlow): Stretch[] {
  const { depth, changesDepthAt: at } = COURSES[piece.artery];
  const whole = { vessel: piece, flow };
  if (at === undefined) return [{ ...whole, from, to, depth }];
  const beyond: Depth = depth === 'deep' ? 'near' : 'deep';
  return [
    { ...whole, from, to: Math.min(at, to), depth },
    { ...whole, from: Math.max(at, from), to, depth: beyond },
  ];
}

/** Joins consecutive stretches of equal depth and flow. */
function joined(stretches: readonly Stretch[]): Stretch[] {
  const result: Stretch[] = [];
  for (const stretch of stretches) {
    const last = result.at(-1);
    if (stretch.to - stretch.from < 1e-6) continue;
    if (
      last?.vessel.artery === stretch.vessel.artery &&
      last.vessel.side === stretch.vessel.side &&
      last.to === stretch.from &&
      last.depth === stretch.depth &&
      last.flow === stretch.flow
    ) {
      last.to = stretch.to;
    } else {
      result.push({ ...stretch });
    }
  }
  return result;
}

const RIBBONS = new Map<string, string>();
/** Cache size: several times what one record needs. */
const KEPT = 1000;

/** Path data of a stretch. Cached, since most stretches do not change from one edit to the next. */
function ribbonOf({ vessel, from, to, flow }: Stretch): string {
  const { artery, side } = vessel;
  const width = flow === 'reduced' ? REDUCED_WIDTH : 1;
  const key = `${side} ${artery} ${from} ${to} ${width}`;
  let d = RIBBONS.get(key);
  if (d === undefined) {
    const path = new PathWriter('tenth');
    drawRibbon(path, courseOf(vessel), from, to, (t) => width * radiusAt(artery, t));
    d = path.toString();
    if (RIBBONS.size >= KEPT) RIBBONS.clear();
    RIBBONS.set(key, d);
  }
  return d;
}

/**
 * The arterial tree as path data, one path per tone: by depth where there is flow, one hollow path where there is none.
 * @param arms whether the arteries of the arms are drawn
 */
export function arteryPaths(flow: readonly DrawnFlow[], arms: boolean): ArteryPaths {
  const paths: Record<keyof ArteryPaths, string> = { behind: '', deep: '', trunk: '', near: '', hollow: '' };
  const drawn = flow.filter(({ piece }) => arms || !ofArm(piece.artery)).flatMap(stretchesOf);
  for (const stretch of joined(drawn)) {
    paths[stretch.flow === 'none' ? 'hollow' : stretch.depth] += ribbonOf(stretch);
  }
  return paths;
}
