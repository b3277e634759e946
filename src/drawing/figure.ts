import type { ArteryId } from '../anatomy/index.js';

/*
 * The figure as data, in units of a 1200 x 1500 box. The patient faces the reader; coordinates are of the patient's left
 * (x > AXIS), the right is its mirror image unless given. The drawing is our own. Trunk and limbs have the lengths of a body;
 * hands, wrists, ankles and feet are enlarged so that every site can be hit with a finger.
 */

export { AXIS, FIGURE_HEIGHT, FIGURE_WIDTH } from '../anatomy/index.js';

/** Depth of an artery: near the skin, deep in muscle, in the trunk behind the heart, behind bone. */
export type Depth = 'near' | 'deep' | 'trunk' | 'behind';

export interface Course {
  /** Points as "x y x y", from the origin on. */
  readonly points: string;
  /** Another course on the right, where the sides differ. */
  readonly right?: string;
  /** How deep it lies from each share of its length on. */
  readonly depths: readonly (readonly [from: number, depth: Depth])[];
  /** The share of its length from which it runs away from the reader: it narrows to its end. */
  readonly dives?: number;
}

// prettier-ignore
export const COURSES: Readonly<Record<ArteryId, Course>> = {
  'ascending-aorta': { points: '601 416 588.5 396 581 371 581 347 589 328 604 319', depths: [[0, 'trunk'], [0.3, 'near']], },
  'aortic-arch': { points: '604 319 620 322.5 631.5 335 636 352 636 370', depths: [[0, 'near']], },
  brachiocephalic: { points: '592 326 582 315 568 299', depths: [[0, 'near']], },
  'common-carotid': { points: '611 313 619 294 630 264 637 230 637 196', right: '568 299 560 266 560 230 563 196', depths: [[0, 'near']], },
  'internal-carotid': { points: '637 196 631 174 626 150 620 122 617 102', depths: [[0, 'near'], [0.16, 'deep']], dives: 0.6, },
  'external-carotid': { points: '637 196 643 178 649.5 161 653 144', depths: [[0, 'near']], },
  'superficial-temporal': { points: '653 144 655.5 120 653 96 643.5 73', depths: [[0, 'near']], },
  subclavian: { points: '628 331 638 308 651 283 673 266 702 267 728 286', right: '568 299 551 279 526 265 498 267 472 286', depths: [[0, 'near']], },
  vertebral: { points: '671 267 649 260 631 240 623 220 620 196 619 172 610 150 602 132', right: '546 275 563 257 575 232 580 204 581 172 590 150 598 132', depths: [[0, 'deep']], dives: 0.7, },
  'internal-thoracic': { points: '671 267 650 306 653 340 652 386 651 440 650 484', right: '546 275 548 304 547 340 548 386 549 440 550 484', depths: [[0, 'deep']], dives: 0.8, },
  axillary: { points: '728 286 750 315 766 348 782 384', depths: [[0, 'near']], },
  brachial: { points: '782 384 806 424 838 461 882.4 497.5', depths: [[0, 'near']], },
  radial: { points: '882.4 497.5 905.4 510.3 934.3 525.5 966.9 552.6 992.2 583.5 1007.5 602.9', depths: [[0, 'near']], },
  ulnar: { points: '882.4 497.5 892.7 518.7 907 549 929.5 579.8 960.8 613 985.1 639.7 1004.4 661.4', depths: [[0, 'near'], [0.08, 'deep'], [0.45, 'near']], },
  'deep-palmar-arch': { points: '1007.5 602.9 1026.8 615.7 1039.4 627.1 1042.8 644.8 1034.1 658.9 1017.8 665.1 1004.4 661.4', depths: [[0, 'near'], [0.16, 'deep']], },
  'superficial-palmar-arch': { points: '1004.4 661.4 1014.9 676.4 1033.2 679.4 1048.9 671 1056.8 657.7 1057.6 644.3 1052.8 632.2', depths: [[0, 'near']], },
  'thoracic-aorta': { points: '636 370 633.5 418 623 468 609 514', depths: [[0, 'near'], [0.2, 'trunk'], [0.75, 'near']], },
  'suprarenal-aorta': { points: '609 514 606.4 525 604.6 535', depths: [[0, 'near']], },
  renal: { points: '606 534 630 530.5 656 534 682 543', depths: [[0, 'near'], [0.2, 'deep']], },
  'infrarenal-aorta': { points: '604.6 535 601.6 567 600 600', depths: [[0, 'near']], },
  'common-iliac': { points: '600 600 612 620 630.4 644', depths: [[0, 'near']], },
  'external-iliac': { points: '630.4 644 641 667 655 700', depths: [[0, 'near']], },
  'internal-iliac': { points: '630.4 644 633 668 631 692 622 714', depths: [[0, 'near'], [0.12, 'deep']], dives: 0.55, },
  'common-femoral': { points: '655 700 663 726 667 758', depths: [[0, 'near']], },
  'superficial-femoral': { points: '667 758 668 806 668 852 674 897 690 938', depths: [[0, 'near'], [0.76, 'deep'], [0.93, 'behind']], },
  'deep-femoral': { points: '667 758 681 782 698 820 706 864 709 910', depths: [[0, 'near'], [0.12, 'deep']], dives: 0.6, },
  popliteal: { points: '690 938 700 966 705 1000 706 1042', depths: [[0, 'behind'], [0.75, 'deep']], },
  'tibioperoneal-trunk': { points: '706 1042 704 1060 702 1078', depths: [[0, 'deep']], },
  'anterior-tibial': { points: '706 1042 717 1060 733 1090 744.5 1134 747 1190 744 1250 749 1318', depths: [[0, 'deep'], [0.2, 'near']], },
  'dorsalis-pedis': { points: '749 1318 766 1346 794 1378 832 1416', depths: [[0, 'near']], },
  'posterior-tibial': { points: '702 1078 691 1108 686 1150 691 1200 701 1254 708 1304 708 1346 722 1392', depths: [[0, 'deep'], [0.62, 'near']], },
  peroneal: { points: '702 1078 712 1106 716 1150 719 1200 724 1246 730 1280', depths: [[0, 'deep']], dives: 0.75, },
  'plantar-arch': { points: '722 1392 744 1412 776 1423 812 1430 832 1416', depths: [[0, 'near'], [0.22, 'deep'], [0.4, 'behind'], [0.85, 'deep']], },
};

/** Arteries that continue their parent instead of branching off; their joint is drawn without a kink. */
export const CONTINUES: Partial<Record<ArteryId, ArteryId>> = {
  'aortic-arch': 'ascending-aorta',
  'thoracic-aorta': 'aortic-arch',
  'suprarenal-aorta': 'thoracic-aorta',
  'infrarenal-aorta': 'suprarenal-aorta',
  axillary: 'subclavian',
  brachial: 'axillary',
  'external-carotid': 'common-carotid',
  'superficial-temporal': 'external-carotid',
  'external-iliac': 'common-iliac',
  'common-femoral': 'external-iliac',
  'superficial-femoral': 'common-femoral',
  popliteal: 'superficial-femoral',
  'tibioperoneal-trunk': 'popliteal',
  'posterior-tibial': 'tibioperoneal-trunk',
  'dorsalis-pedis': 'anterior-tibial',
};

/** Branches at the end of their stem, which start along its way. */
export const LEANS: Partial<Record<ArteryId, true>> = {
  'internal-iliac': true,
  'deep-femoral': true,
  'anterior-tibial': true,
  peroneal: true,
  radial: true,
  ulnar: true,
  'internal-carotid': true,
};
