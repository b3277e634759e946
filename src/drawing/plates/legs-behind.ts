import type { Plate } from './plate.js';

/** Both legs from behind. Given is the leg on the right of the plate, which is the right one. Drawn from anatomical knowledge (from memory). */
// prettier-ignore
export const plate: Plate = {
  name: 'legs-behind',
  given: 'right',
  pair: true,
  unitsPerMm: 1.5,
  factor: 1.9,
  outlines: [
    '498 -152 646 -156 794 -152 798 -57 795 0 800 76 799 156 795 243 788 334 778 426 769 513 763 578 762 627 768 676 770 718 779 768 798 828 816 897 826 969 823 1045 811 1121 798 1186 793 1224 802 1254 814 1277 816 1298 808 1319 807 1341 805 1368 800 1398 789 1433 772 1459 749 1471 718 1474 692 1463 676 1438 674 1402 681 1360 685 1324 679 1300 670 1277 669 1254 677 1227 681 1189 673 1129 657 1060 639 988 624 912 618 844 623 787 629 741 625 699 618 654 611 608 600 547 584 479 565 399 540 315 513 247 502 220 498 205 498 133 498 38 498 -57',
    '790 1341 809 1357 828 1381 844 1408 846 1429 832 1441 806 1443 775 1440 768 1395',
  ],
  tones: [
    {segments: ['684 429 663 532 646 612 638 661 657 707 680 741 697 768 718 737 741 699 756 654 741 600 720 513 699 429'], closed: true, strength: 0.17},
  ],
  nails: [

  ],
  lines: [
    {points: '505 175 543 198 600 205 657 192 707 163', weight: 3},
    {points: '657 391 648 494 638 589 633 676', weight: 2.2},
    {points: '695 391 716 498 737 593 752 684', weight: 2.2},
    {points: '629 661 661 675 699 678 733 671 758 656', weight: 3, helps: ['popliteal']},
    {points: '695 752 701 836 699 916 692 980', weight: 1.6},
    {points: '640 977 652 1005 671 1017 692 980 716 1001 754 992 792 950 817 904', weight: 2.2},
    {points: '675 1094 703 1189 713 1273 705 1357', weight: 2.2, helps: ['posterior-tibial']},
    {points: '798 1094 760 1189 745 1273 749 1357', weight: 2.2},
    {points: '680 1231 693 1246 694 1271 681 1292', weight: 3, helps: ['posterior-tibial']},
    {points: '802 1254 789 1271 789 1296 804 1315', weight: 3},
    {points: '684 1402 722 1417 764 1402', weight: 1.6},
    {points: '828 1441 819 1429 820 1414', weight: 2.2},
  ],
  arteries: [
    {id: 'superficial-femoral', depth: 'deep', artery: 'superficial-femoral', span: [[0, 0.55], [1, 1]], points: '611.8 262.2 621.3 357.2 636.5 444.6 666.9 524.4'},
    {id: 'popliteal', depth: 'near', artery: 'popliteal', span: [[0, 0], [1, 1]], points: '666.9 524.4 689.7 592.8 699.2 661.2 695.4 744.8', bare: true},
    {id: 'tibioperoneal-trunk', depth: 'deep', artery: 'tibioperoneal-trunk', span: [[0, 0], [1, 1]], points: '695.4 744.8 689.7 780.9 684 817', bare: true},
    {id: 'anterior-tibial', depth: 'deep', artery: 'anterior-tibial', span: [[0, 0], [1, 0.15]], points: '695.4 744.8 710.6 777.1 733.4 809.4 750.5 847.4', fillet: ['popliteal', 'tibioperoneal-trunk']},
    {id: 'posterior-tibial', depth: 'deep', artery: 'posterior-tibial', span: [[0, 0], [0.82, 0.85], [1, 1]], points: '684 817 666.9 874 659.3 965.2 666.9 1064 685.9 1162.8 701.1 1254 703 1318.6 695.4 1387', bare: true},
    {id: 'peroneal', depth: 'deep', artery: 'peroneal', span: [[0, 0], [1, 1]], points: '684 817 706.8 874 723.9 965.2 737.2 1064 752.4 1162.8 763.8 1238.8', fillet: ['posterior-tibial', 'tibioperoneal-trunk']},
  ],
  sites: [
    {site: 'popliteal', on: 'popliteal', name: 'right'},
    {site: 'posterior-tibial', on: 'posterior-tibial', name: 'right'},
  ],
  captions: [

  ],
};
