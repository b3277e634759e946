import { PLATE_BOXES, type PlateName } from './plates.js';
import type { Side } from './sides.js';
import type { SurfacePoint } from './surface.js';
import type { SkinFace, SkinName } from './skin-name.js';

/** A named area of the skin on a plate. Areas overlap; the smallest that holds a point names it. */
export interface Zone {
  readonly name: SkinName['region'];
  readonly shape: readonly SurfacePoint[];
  /** Which face of it is seen, where its name leaves that open. */
  readonly face?: SkinFace;
  /** Long enough to be told apart as upper, mid and lower, from above to below. */
  readonly long?: true;
  /** The only third of it that the plate shows. */
  readonly third?: SkinName['third'];
  /** The name of three or more of its kind. */
  readonly row?: 'fingers' | 'toes' | 'forefoot';
}

/**
 * One drawing on a plate: its areas, and points that lie on it and on the whole figure. All of the patient's left, except that of the
 * legs from behind, which are given as the leg at the right of the plate.
 */
export interface Sheet {
  readonly zones: readonly Zone[];
  /** Pairs of a point of the plate and the same point of the figure's left: "x y x y" each. */
  readonly anchors: readonly (readonly [on: SurfacePoint, figure: SurfacePoint])[];
  /** The side of the body that faces the reader on it is that which the figure shows. */
  readonly facing?: true;
  /** Where it begins on the plate, from left to right. */
  readonly from: number;
}

/** A given point as it lies on a side of a plate, and the other way round: the tables hold one side of the body. */
export function fromGiven(name: PlateName, side: Side, [x, y]: SurfacePoint): SurfacePoint {
  const asGiven = (name === 'legs-behind') === (side === 'right');
  return asGiven ? [x, y] : [PLATE_BOXES[name][0] - x, y];
}

function points(text: string): SurfacePoint[] {
  const numbers = text.split(' ').map(Number);
  return Array.from({ length: numbers.length / 2 }, (_, i) => [
    numbers[2 * i] as number,
    numbers[2 * i + 1] as number,
  ]);
}

const CORNERS = 12;

/** An oval: its middle and its half axes. */
function oval(text: string): SurfacePoint[] {
  const [x = 0, y = 0, across = 0, down = 0] = text.split(' ').map(Number);
  return Array.from({ length: CORNERS }, (_, i) => {
    const angle = (2 * Math.PI * i) / CORNERS;
    return [x + across * Math.cos(angle), y + down * Math.sin(angle)];
  });
}

function anchors(text: string): Sheet['anchors'] {
  const all = points(text);
  return Array.from({ length: all.length / 2 }, (_, i) => [
    all[2 * i] as SurfacePoint,
    all[2 * i + 1] as SurfacePoint,
  ]);
}

const finger = (name: Zone['name'], shape: string): Zone => ({
  name,
  shape: points(shape),
  face: 'palmar',
  row: 'fingers',
});
const TOES = ['great-toe', 'second-toe', 'third-toe', 'fourth-toe', 'little-toe'] as const;
const HEADS = ['met-head-1', 'met-head-2', 'met-head-3', 'met-head-4', 'met-head-5'] as const;
const toes = (face: SkinFace, ...shapes: readonly string[]): Zone[] =>
  TOES.map((name, i) => ({ name, shape: oval(shapes[i] as string), face, row: 'toes' }));

/** Drawn from anatomical knowledge (from memory), in units of each plate. */
// prettier-ignore
export const SHEETS: Readonly<Record<PlateName, readonly Sheet[]>> = {
  hand: [{
    from: 0,
    facing: true,
    zones: [
      finger('thumb', '668 463 730 537 775 605 765 640 723 648 672 583 626 526'),
      finger('index-finger', '563 655 587 772 601 890 573 900 541 888 522 784 497 670'),
      finger('middle-finger', '490 678 494 811 492 934 461 951 430 935 425 813 421 680'),
      finger('ring-finger', '412 671 392 792 375 903 344 915 317 897 327 782 348 659'),
      finger('little-finger', '343 638 308 726 279 808 251 814 229 794 254 707 290 615'),
      {name: 'thenar', shape: points('463 352 487 341 520 348 554 372 587 405 616 441 640 480 612 520 591 528 565 548 535 542 506 517 480 479 465 432 461 385')},
      {name: 'hypothenar', shape: points('376 358 350 338 326 350 300 408 289 459 286 509 290 570 330 570 354 526 361 479 374 425')},
      {name: 'palm', shape: points('373 340 300 559 300 640 393 680 460 690 560 680 580 580 650 480 590 380 460 340')},
      {name: 'wrist', face: 'palmar', shape: points('330 238 330 340 440 350 548 340 545 238')},
      {name: 'forearm', face: 'palmar', shape: points('290 -40 336 238 545 238 590 -40')},
    ],
    anchors: anchors('645 490 1056 615 757 628 1111 626.5 530 662 1079.5 657.3 574 893 1133 716.9 455 680 1057.8 674.9 461 945 1119.7 748.2 380 665 1036 692.5 338 912 1091.4 760.9 316 628 1015 709.5 240 808 1053 761.1 545 288 1022 576 335 288 950 639 562 65 989 539 312 65 917 602'),
  }],
  foot: [{
    from: 0,
    facing: true,
    zones: [
      ...toes('dorsal', '183 718 34 62', '238 717 20 36', '277 700 20 34', '312 672 20 33', '344 636 20 33'),
      {name: 'first-web', shape: oval('213 656 12 18')},
      {name: 'met-head-1', face: 'dorsal', row: 'forefoot', shape: oval('167 617 24 30')},
      {name: 'met-head-5', face: 'dorsal', row: 'forefoot', shape: oval('340 553 20 30')},
      {name: 'dorsum', shape: points('170 385 165 480 148 600 152 640 207 640 255 655 300 640 345 600 356 560 338 480 322 395 246 382')},
      {name: 'medial-malleolus', shape: oval('182 339 20 32')},
      {name: 'lateral-malleolus', shape: oval('312 356 20 34')},
      {name: 'shin', shape: points('148 -40 170 180 178 300 182 385 246 400 320 395 312 300 316 180 348 -40'), third: 'lower'},
    ],
    anchors: anchors('183 660 828 1436 183 778 863 1457 237 690 838 1424 238 747 882 1445 277 672 844 1413 277 729 888 1428 312 645 850 1402 312 700 888 1411 344 608 852 1392 344 663 884 1396 155 617 808 1448 350 553 846 1372 172 339 692 1325 322 356 788 1322 182 40 688 1215 318 40 780 1215 250 450 768 1385'),
  }, {
    from: 402,
    zones: [
      {name: 'heel', face: 'medial', shape: oval('490 440 58 60')},
      {name: 'medial-malleolus', shape: oval('594 335 32 38')},
      {name: 'gaiter', shape: points('464 -40 490 100 514 230 540 300 645 300 680 290 668 223 672 95 684 -40')},
      {name: 'instep', shape: points('520 300 520 500 600 515 680 512 744 534 800 570 815 470 760 416 707 361 670 300')},
      {name: 'met-head-1', face: 'medial', row: 'forefoot', shape: oval('847 544 36 38')},
      {name: 'great-toe', face: 'medial', shape: oval('935 579 44 32')},
    ],
    anchors: anchors('487 432 715 1386 505 485 698 1422 450 440 692 1392 594 335 697 1325 500 60 686 1222 665 60 724 1222 706 470 762 1428 706 515 760 1437 847 544 806 1444 935 579 846 1448 760 416 772 1415 640 430 752 1405 560 420 736 1372'),
  }],
  sole: [{
    from: 0,
    zones: [
      ...toes('plantar', '393 117 50 72', '480 120 32 42', '543 149 30 38', '598 193 30 36', '649 252 30 38'),
      ...HEADS.map((name, i): Zone => ({name, face: 'plantar', row: 'forefoot', shape: oval(['393 312 52 52', '472 302 32 42', '528 322 31 44', '579 356 31 44', '628 397 34 44'][i] as string)})),
      {name: 'base-5', shape: oval('597 588 30 50')},
      {name: 'heel', face: 'plantar', shape: oval('493 836 112 116')},
      {name: 'midfoot', face: 'plantar', shape: points('390 760 404 600 385 460 340 330 345 230 440 210 560 220 640 290 668 350 655 450 630 554 608 760')},
    ],
    anchors: anchors('393 117 846 1446.5 480 120 860 1434.5 543 149 866 1420.5 598 193 869 1406.5 649 252 868 1394 393 312 808 1436 472 302 818 1424 528 322 824 1412 579 356 832 1396 628 397 838 1381 597 588 796 1350 430 560 762 1428 494 836 716 1386 494 935 694 1386 395 830 720 1416 592 830 734 1352'),
  }],
  knee: [{
    from: 0,
    zones: [
      {name: 'popliteal-fossa', shape: points('489 330 420 420 345 500 345 620 400 700 492 780 590 700 648 620 648 500 565 420')},
      {name: 'thigh-back', third: 'lower', shape: points('264 -40 300 150 330 380 342 520 492 560 648 520 660 330 680 130 697 -40')},
      {name: 'calf', third: 'upper', shape: points('346 560 330 720 319 830 340 1040 640 1040 672 920 676 757 646 608 492 660')},
    ],
    anchors: anchors('275 30 764 838 690 30 650 838 340 500 750 971 648 500 663 971 322 850 768 1069 674 850 664 1069 336 980 776 1105 650 980 667 1105'),
  }],
  'legs-behind': [{
    from: 494,
    zones: [
      {name: 'buttock', shape: points('494 -40 494 205 600 212 720 180 800 150 798 -40')},
      {name: 'thigh-back', long: true, shape: points('498 200 565 399 618 590 690 560 765 590 780 426 800 150 720 180 600 212')},
      {name: 'popliteal-fossa', shape: points('684 500 618 590 620 730 697 768 766 730 763 590 699 500')},
      {name: 'calf', long: true, shape: points('622 700 616 850 640 990 674 1110 800 1110 826 960 798 828 766 700 697 768')},
      {name: 'achilles', shape: points('672 1090 678 1230 684 1350 800 1350 796 1220 802 1090')},
      {name: 'medial-malleolus', shape: oval('682 1268 18 28')},
      {name: 'lateral-malleolus', shape: oval('802 1285 18 30')},
      {name: 'heel', face: 'posterior', shape: points('684 1340 674 1402 690 1465 750 1472 795 1440 806 1360 800 1340')},
      {name: 'midfoot', face: 'lateral', shape: points('790 1330 846 1400 850 1432 806 1445 780 1440')},
    ],
    anchors: anchors('798 0 740 672 500 0 604 736 799 156 752 722 510 156 610 775 780 430 756 848 580 430 645 848 763 600 752 936 624 600 660 936 800 830 757 1054 618 844 667 1054 823 1045 785 1164 650 1000 677 1164 795 1224 780 1256 680 1224 691 1256 722 1430 712 1388 780 1430 735 1350 686 1268 692 1322 802 1285 786 1318 840 1420 830 1366'),
  }],
};
