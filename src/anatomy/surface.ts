import { AXIS } from './figure-box.js';
import { LATERALITIES, type Laterality, type Side, SIDES } from './sides.js';

/*
 * The skin as the record knows it, in units of the figure's box. The region names are part of the record's format and do
 * not change with the drawing.
 */

export type SurfacePoint = readonly [x: number, y: number];

/** The part of the body a region belongs to, for views that leave one out. */
export type SurfacePart = 'trunk' | 'arm' | 'leg';

interface Region {
  readonly of: SurfacePart;
  /**
   * A strip of the patient's left: down its outer edge from the heart outward, and back up the inner edge with as many
   * points. So the first and the last point are the near end, and the middle two the far end.
   */
  readonly strip: readonly SurfacePoint[];
  /** Long enough to be told apart as upper, mid and lower. */
  readonly long?: true;
  /** The name for several fingers or toes. */
  readonly row?: 'fingers' | 'toes';
}

/** A finger or toe: from its root to its tip, `width` across. */
function digit(
  row: 'fingers' | 'toes',
  [ax, ay]: SurfacePoint,
  [bx, by]: SurfacePoint,
  width: number,
): Region {
  const length = Math.hypot(bx - ax, by - ay);
  const [ux, uy] = [((bx - ax) / length) * (width / 2), ((by - ay) / length) * (width / 2)];
  const [tx, ty] = [bx + ux, by + uy];
  return {
    of: row === 'toes' ? 'leg' : 'arm',
    row,
    strip: [
      [ax + uy, ay - ux],
      [tx + uy, ty - ux],
      [tx - uy, ty + ux],
      [ax - uy, ay + ux],
    ],
  };
}

/** Every region, from the heart outward within its part. */
const TABLE = {
  head: {
    of: 'trunk',
    strip: [
      [655, 30],
      [672, 120],
      [645, 208],
      [600, 208],
      [600, 120],
      [600, 30],
    ],
  },
  neck: {
    of: 'trunk',
    strip: [
      [645, 208],
      [690, 250],
      [600, 250],
      [600, 208],
    ],
  },
  chest: {
    of: 'trunk',
    strip: [
      [706, 250],
      [750, 330],
      [752, 390],
      [726, 480],
      [600, 480],
      [600, 390],
      [600, 330],
      [600, 250],
    ],
  },
  abdomen: {
    of: 'trunk',
    strip: [
      [726, 480],
      [712, 555],
      [716, 606],
      [738, 668],
      [600, 732],
      [600, 606],
      [600, 555],
      [600, 480],
    ],
  },
  shoulder: {
    of: 'arm',
    strip: [
      [713, 252],
      [804, 280],
      [842, 345],
      [752, 390],
      [750, 330],
      [706, 250],
    ],
  },
  'upper-arm': {
    of: 'arm',
    long: true,
    strip: [
      [842, 345],
      [894, 424],
      [818, 480],
      [752, 390],
    ],
  },
  elbow: {
    of: 'arm',
    strip: [
      [894, 424],
      [942, 480],
      [862, 545],
      [818, 480],
    ],
  },
  forearm: {
    of: 'arm',
    long: true,
    strip: [
      [942, 480],
      [1000, 553],
      [934, 618],
      [862, 545],
    ],
  },
  wrist: {
    of: 'arm',
    strip: [
      [1000, 553],
      [1044, 599],
      [966, 660],
      [934, 618],
    ],
  },
  hand: {
    of: 'arm',
    strip: [
      [1044, 599],
      [1096, 645],
      [1004, 722],
      [966, 660],
    ],
  },
  thumb: digit('fingers', [1056, 615], [1111, 626.5], 31),
  'index-finger': digit('fingers', [1079.5, 657.3], [1133, 716.9], 26),
  'middle-finger': digit('fingers', [1057.8, 674.9], [1119.7, 748.2], 27),
  'ring-finger': digit('fingers', [1036, 692.5], [1091.4, 760.9], 26),
  'little-finger': digit('fingers', [1015, 709.5], [1053, 761.1], 23),
  groin: {
    of: 'leg',
    strip: [
      [738, 668],
      [758, 745],
      [611, 786],
      [600, 732],
    ],
  },
  thigh: {
    of: 'leg',
    long: true,
    strip: [
      [758, 745],
      [764, 830],
      [752, 938],
      [659, 938],
      [640, 850],
      [611, 786],
    ],
  },
  knee: {
    of: 'leg',
    strip: [
      [752, 938],
      [749, 1005],
      [667, 1005],
      [659, 938],
    ],
  },
  shin: {
    of: 'leg',
    long: true,
    strip: [
      [749, 1005],
      [776, 1104],
      [786, 1170],
      [778, 1290],
      [697, 1290],
      [682, 1190],
      [668, 1130],
      [667, 1005],
    ],
  },
  ankle: {
    of: 'leg',
    strip: [
      [778, 1290],
      [795, 1330],
      [686, 1352],
      [697, 1290],
    ],
  },
  heel: {
    of: 'leg',
    strip: [
      [686, 1352],
      [738, 1341.5],
      [744, 1428],
      [690, 1424],
    ],
  },
  midfoot: {
    of: 'leg',
    strip: [
      [738, 1341.5],
      [795, 1330],
      [786, 1442],
      [744, 1428],
    ],
  },
  forefoot: {
    of: 'leg',
    strip: [
      [795, 1330],
      [860, 1380],
      [822, 1452],
      [786, 1442],
    ],
  },
  'great-toe': digit('toes', [828, 1436], [863, 1457], 31),
  'second-toe': digit('toes', [838, 1424], [882, 1445], 21),
  'third-toe': digit('toes', [844, 1413], [888, 1428], 19),
  'fourth-toe': digit('toes', [850, 1402], [888, 1411], 18),
  'little-toe': digit('toes', [852, 1392], [884, 1396], 17),
} as const satisfies Record<string, Region>;

export type SkinRegionId = keyof typeof TABLE;
export const SKIN_REGIONS: Readonly<Record<SkinRegionId, Region>> = TABLE;
export const SKIN_REGION_IDS = Object.keys(TABLE) as SkinRegionId[];

/** A region of one side; those of the trunk also stand in the midline. */
export interface SkinPlace {
  readonly region: SkinRegionId;
  readonly side: Laterality;
}

/** Every region of every side a mark can be put on. */
export const SKIN_PLACES: readonly SkinPlace[] = SKIN_REGION_IDS.flatMap((region) =>
  (SKIN_REGIONS[region].of === 'trunk' ? LATERALITIES : SIDES).map((side) => ({ region, side })),
);

/** The mirror image of a point. */
export function mirrorPoint([x, y]: SurfacePoint): SurfacePoint {
  return [2 * AXIS - x, y];
}

/** The side a point lies on. */
export function sideOfPoint([x]: SurfacePoint): Side {
  return x >= AXIS ? 'left' : 'right';
}
