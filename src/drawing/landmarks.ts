import { AXIS, type Laterality, type SiteId } from '../anatomy/index.js';
import { closedPath, mirrored, openPath, type Point, pointsFrom } from './geometry.js';
import { PathWriter } from './path-writer.js';

/** A line of the figure by which a site is found, or that only gives form. */
export interface Landmark {
  readonly points: string;
  /** Named where a text says how to find a site, so that it stands out while that site is open. */
  readonly named?: true;
  readonly closed?: true;
  /** Lies before the arteries. */
  readonly over?: true;
  /** A spot: its radius in figure units. */
  readonly dot?: number;
}

// prettier-ignore
export const LANDMARKS = {
  jaw: { points: '648.5 180.5 633.5 195 619 206.5 608 209.6 600 210', named: true },
  ear: { points: '664.5 107 669.5 107.5 669.5 116 664.5 122 663.5 131' },
  larynx: { points: '592 221 596 230 600 234' },
  sternomastoid: { points: '641 198 632 226 620 254 610 274' },
  sternalNotch: { points: '586 277 592 284 600 286.5 608 284 614 277', named: true },
  clavicle: { points: '612 285 624 281 644 283 670 277.5 698 266.5 726 261.5 749 265 762 272 757 278 738 273 714 274.5 688 284 660 293 632 295.5 615 294', named: true, closed: true, over: true },
  pectoral: { points: '757 387 747 398 730 409 708 416' },
  axillaryFold: { points: '757 387 753.5 374 754 358' },
  costalMargin: { points: '600 438 607 444 621 466 641 490 667 511 695 526 719.5 530', named: true },
  umbilicus: { points: '592.5 586 595.5 591 600 592.5 604.5 591 607.5 586', named: true, over: true },
  iliacCrest: { points: '731 632.5 720 627 709 634 701.5 648 697.4 661.5', named: true },
  iliacSpine: { points: '696 666', named: true, dot: 4.6 },
  inguinalLigament: { points: '692.6 669.6 676 689 653 706 630 718.5 615 725.5', named: true },
  pubicCrest: { points: '615 725.5 608 729.5 600 730.5', named: true },
  symphysis: { points: '600 730.5 600 744', named: true },
  patella: { points: '687.5 964 694 954.5 705 951 717 953.5 723.5 963.5 721.5 977 713 988.5 704.5 993.5 696 988.5 689.5 977', named: true, closed: true, over: true },
  patellarTendon: { points: '704 997 705.5 1014 704 1028' },
  gastrocnemius: { points: '671 1066 671 1102 677 1142 687 1182' },
  medialMalleolus: { points: '716 1304 721 1294.5 731 1293 739.5 1301 740.5 1314 733 1325 723 1327', named: true },
  lateralMalleolus: { points: '761.5 1302 758 1312 760.5 1323 769 1330', named: true },
  achilles: { points: '705 1286 704.5 1312 699 1342' },
  extensorTendon: { points: '744 1332 766 1364 802 1404 842 1442' },
  arch: { points: '742 1424 764 1416 788 1420 812 1436 834 1452' },
  elbowCrease: { points: '858 499 878.7 487.1 897.3 471.5', named: true },
  wristCrease: { points: '983.3 647.1 1004.7 631.7 1022.2 611', named: true },
  thenar: { points: '1011.1 629.7 1028 638.3 1051.3 643.5 1073.8 646.5' },
  palmCrease: { points: '1076.6 657.9 1056 664 1034.7 673.7 1013.4 680.6' },
  toe1: { points: '884 1446 872 1441.8 863 1440' },
  toe2: { points: '884 1428.3 870 1423.7 862 1422' },
  toe3: { points: '879.5 1411.2 867 1407.5 860 1406.5' },
  toe4: { points: '870.5 1395.2 860 1392 854 1391' },
  nail: { points: '879 1455.5 888 1456 892 1462.5 885.5 1467 877 1465.5' },
} as const satisfies Record<string, Landmark>;
export type LandmarkId = keyof typeof LANDMARKS;

/** The landmarks by which each site is found, as its technique says. */
export const FINDS: Readonly<Partial<Record<SiteId, readonly LandmarkId[]>>> = {
  'superficial-temporal': ['ear'],
  carotid: ['larynx', 'sternomastoid'],
  subclavian: ['clavicle', 'sternomastoid', 'sternalNotch'],
  axillary: ['axillaryFold'],
  brachial: ['elbowCrease'],
  radial: ['wristCrease'],
  ulnar: ['wristCrease'],
  'abdominal-aorta': ['umbilicus', 'costalMargin'],
  renal: ['umbilicus', 'costalMargin'],
  iliac: ['umbilicus', 'iliacSpine', 'inguinalLigament', 'symphysis'],
  femoral: ['iliacSpine', 'inguinalLigament', 'pubicCrest', 'symphysis'],
  'adductor-canal': ['patella'],
  popliteal: ['patella'],
  'posterior-tibial': ['medialMalleolus', 'achilles'],
  'dorsalis-pedis': ['extensorTendon', 'medialMalleolus', 'lateralMalleolus'],
};

/** Landmarks of the arm and the hand, hidden with them. */
const OF_ARM: readonly LandmarkId[] = ['elbowCrease', 'wristCrease', 'thenar', 'palmCrease'];
/** Landmarks of the whole: given in full. */
const SINGLE: readonly LandmarkId[] = ['sternalNotch', 'umbilicus', 'symphysis'];
const IDS = Object.keys(LANDMARKS) as readonly LandmarkId[];

function spot(path: PathWriter, [x, y]: Point, radius: number): void {
  path.moveTo(x - radius, y);
  path.halfCircleTo(true, x + radius, y);
  path.halfCircleTo(true, x - radius, y);
  path.closePath();
}

function draw(path: PathWriter, id: LandmarkId, points: readonly Point[]): void {
  const { dot, closed }: Landmark = LANDMARKS[id];
  if (dot !== undefined) spot(path, points[0] as Point, dot);
  else (closed ? closedPath : openPath)(points, path);
}

/** Path data of landmarks of one side, or of both, in tenths of a figure unit. */
function pathOf(ids: readonly LandmarkId[], side: Laterality): string {
  const path = new PathWriter('tenth');
  for (const id of ids) {
    const points = pointsFrom(LANDMARKS[id].points);
    if (SINGLE.includes(id) || side !== 'right') draw(path, id, points);
    if (!SINGLE.includes(id) && side !== 'left') draw(path, id, mirrored(points, AXIS));
  }
  return path.toString();
}

/** The landmarks as path data in tenths of a figure unit. */
export interface Landmarks {
  /** Named ones, and lines that only give form; those that lie before the arteries apart. */
  readonly named: string;
  readonly form: string;
  readonly over: string;
}

const ALL = new Map<boolean, Landmarks>();

/** Landmarks with or without those of the arms; computed once. */
export function landmarksOf(arms: boolean): Landmarks {
  const known = ALL.get(arms);
  if (known) return known;
  const shown = IDS.filter((id) => arms || !OF_ARM.includes(id));
  const those = (wanted: (landmark: Landmark) => boolean): string =>
    pathOf(
      shown.filter((id) => wanted(LANDMARKS[id])),
      'midline',
    );
  const landmarks = {
    named: those(({ named, over }) => named === true && !over),
    form: those(({ named }) => !named),
    over: those(({ over }) => over === true),
  };
  ALL.set(arms, landmarks);
  return landmarks;
}

/** The landmarks by which a site is found, on its side; empty for a site without. */
export function landmarksFor(site: SiteId, side: Laterality): string {
  return pathOf(FINDS[site] ?? [], side);
}
