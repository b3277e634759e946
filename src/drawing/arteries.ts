import { type ArteryId, levelOf, type Vessel, vesselKey } from '../anatomy/index.js';
import { type Course, COURSES, type Depth } from './figure.js';
import { type DrawnFlow, type Flow, REDUCED_WIDTH } from './flow.js';
import { type PathUnit, PathWriter } from './path-writer.js';
import { drawRibbon } from './ribbon.js';
import { courseOf, radiusAt } from './vessels.js';
import { WEBS } from './webs.js';

/** Path data of the arteries in tenths of a figure unit, one path per tone; empty if the tone is unused. */
export type ArteryPaths = Readonly<Record<Depth | 'hollow' | 'thinning', string>>;

/** A stretch of one artery, one depth and one flow. */
interface Stretch {
  readonly vessel: Vessel;
  readonly from: number;
  to: number;
  readonly depth: Depth;
  readonly flow: Flow;
  /** Share of the width at both ends, where it is not the flow's own. */
  readonly width?: readonly [number, number];
  /** Share of the width that is seen at both ends, where the artery runs away from the reader. */
  readonly shown?: readonly [number, number];
}

/** Whether an artery lies in the arm and is hidden together with it. */
export function ofArm(artery: ArteryId): boolean {
  const level = levelOf(artery, 'leg');
  return level === 'axillo-brachial' || level === 'forearm-hand';
}

/** The share of its width to which an artery narrows that runs away from the reader. */
const DIVED = 0.15;

/** How much of its width an artery shows at a share of its length. */
function shown({ dives }: Course, t: number): number {
  return dives === undefined || t <= dives ? 1 : 1 - ((1 - DIVED) * (t - dives)) / (1 - dives);
}

/** A drawn part of an artery, cut where the artery changes its depth, and where it begins to run away from the reader. */
function stretchesOf({ piece, from, to, flow, width }: DrawnFlow): Stretch[] {
  const course = COURSES[piece.artery];
  const { depths, dives = 1 } = course;
  const cuts = [...depths.map(([at]) => at), dives].filter((at) => at > from && at < to);
  const stops = [from, ...cuts.sort((x, y) => x - y), to];
  return stops.slice(1).map((end, i): Stretch => {
    const start = stops[i] as number;
    const widthAt = (t: number): number =>
      width ? width[0] + ((width[1] - width[0]) * (t - from)) / (to - from || 1) : 1;
    const [, depth] = depths.findLast(([at]) => at <= start) ?? (depths[0] as (typeof depths)[number]);
    return {
      vessel: piece,
      flow,
      depth,
      from: start,
      to: end,
      ...(width && { width: [widthAt(start), widthAt(end)] }),
      ...(end > dives && { shown: [shown(course, start), shown(course, end)] }),
    };
  });
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
      last.flow === stretch.flow &&
      !last.width &&
      !stretch.width &&
      !last.shown &&
      !stretch.shown
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

/** Path data of a stretch at these shares of its width. Cached, since most stretches do not change from one edit to the next. */
function ribbonOf(stretch: Stretch, share: readonly [number, number], unit: PathUnit): string {
  const { vessel, from, to, shown: [near, far] = [1, 1] } = stretch;
  const { artery, side } = vessel;
  const [first, last] = [share[0] * near, share[1] * far];
  const key = `${unit} ${side} ${artery} ${from} ${to} ${Math.round(100 * first)} ${Math.round(100 * last)}`;
  let d = RIBBONS.get(key);
  if (d === undefined) {
    const path = new PathWriter(unit);
    const width = (t: number): number => first + ((last - first) * (t - from)) / (to - from);
    drawRibbon(path, courseOf(vessel), from, to, (t) => width(t) * radiusAt(artery, t));
    d = path.toString();
    if (RIBBONS.size >= KEPT) RIBBONS.clear();
    RIBBONS.set(key, d);
  }
  return d;
}

const WIDTHS: Record<Flow, readonly [number, number]> = {
  full: [1, 1],
  reduced: [REDUCED_WIDTH, REDUCED_WIDTH],
  none: [1, 1],
};
/** Thinner than this share of its width, what is left of a flow is not drawn. */
const LEAST_WIDTH = 0.04;

/** One stretch of an artery as it is drawn. */
export interface ArteryPart {
  readonly vessel: Vessel;
  readonly tone: keyof ArteryPaths;
  readonly d: string;
}

/**
 * The arterial tree stretch by stretch, in the order in which it is drawn within each tone.
 * @param arms whether the arteries of the arms are drawn
 */
export function arteryParts(
  flow: readonly DrawnFlow[],
  arms: boolean,
  unit: Exclude<PathUnit, 'unit'> = 'tenth',
): ArteryPart[] {
  const drawn = flow.filter(({ piece }) => arms || !ofArm(piece.artery)).flatMap(stretchesOf);
  return joined(drawn).flatMap((stretch): ArteryPart[] => {
    const { flow, width, depth, vessel } = stretch;
    // Webs are finer than what whole units show.
    const forks = unit !== 'whole' && stretch.from === 0 && flow !== 'reduced';
    const web = (forks && WEBS[vesselKey(vessel)]) || '';
    if (flow !== 'none')
      return [{ vessel, tone: depth, d: web + ribbonOf(stretch, width ?? WIDTHS[flow], unit) }];
    const hollow: ArteryPart = { vessel, tone: 'hollow', d: web + ribbonOf(stretch, WIDTHS.none, unit) };
    if (!width || Math.max(...width) <= LEAST_WIDTH) return [hollow];
    return [hollow, { vessel, tone: 'thinning', d: ribbonOf(stretch, width, unit) }];
  });
}

/**
 * The arterial tree as path data, one path per tone: by depth where there is flow, one hollow path where there is none, and
 * what may still flow within that.
 * @param arms whether the arteries of the arms are drawn
 */
export function arteryPaths(flow: readonly DrawnFlow[], arms: boolean): ArteryPaths {
  const paths: Record<keyof ArteryPaths, string> = {
    behind: '',
    deep: '',
    trunk: '',
    near: '',
    hollow: '',
    thinning: '',
  };
  for (const { tone, d } of arteryParts(flow, arms)) paths[tone] += d;
  return paths;
}
