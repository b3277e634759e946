import type { Plate } from './plate.js';

/** The left knee from behind. Drawn from anatomical knowledge (from memory). */
// prettier-ignore
export const plate: Plate = {
  name: 'knee',
  given: 'left',
  unitsPerMm: 2.75,
  factor: 2.15,
  outlines: [
    '264 -71 275 3 290 108 305 212 319 311 333 394 338 460 341 515 346 567 346 614 337 674 324 751 319 828 324 922 340 1015 355 1084 635 1084 653 1015 670 927 679 839 676 757 661 674 646 608 643 559 648 509 653 460 653 399 660 322 670 229 683 113 697 3 705 -71',
  ],
  tones: [
    {segments: ['488 111 475 177 459 242 441 307 422 371 404 436 387 501', '387 501 411 555 433 608 454 663 471 718 485 776 492 833', '492 833 502 774 519 719 538 663 557 607 577 553 596 498', '596 498 577 434 557 370 538 306 522 241 503 176 488 111'], closed: false, strength: 0.17},
  ],
  nails: [

  ],
  lines: [
    {points: '499 -19 494 64 477 168 449 278 419 383 393 476 374 553 363 592', weight: 3},
    {points: '355 11 353 108 355 218 356 328 355 427 353 509 353 570', weight: 2.2},
    {points: '481 75 495 146 520 234 545 333 573 421 597 498 613 559', weight: 3, over: true},
    {points: '542 9 548 108 564 212 583 311 605 410 622 498 631 581 627 641', weight: 2.2, over: true},
    {points: '561 47 569 135 583 234 602 333 621 427 634 504 639 575', weight: 1.8, over: true},
    {points: '377 468 389 506 407 546 429 597 452 658 473 724 489 801 493 845', weight: 3, over: true, helps: ['popliteal']},
    {points: '609 460 595 501 580 545 561 597 538 663 514 735 495 806 491 850', weight: 3, over: true, helps: ['popliteal']},
    {points: '490 795 495 867 498 938 498 1004', weight: 2.6},
    {points: '487 977 454 971 415 949 382 911 360 856', weight: 2},
    {points: '506 1015 542 1015 583 993 616 955 638 894', weight: 2},
    {points: '382 523 426 535 487 539 547 534 599 517', weight: 2.4, helps: ['popliteal']},
    {points: '347 583 358 570 373 573 381 592 377 614 370 641', weight: 2.2},
    {points: '527 160 542 131 572 117 602 127 619 157 620 190', weight: 3.2, helps: ['adductor-canal']},
    {points: '441 792 429 764 408 757 391 773 389 801', weight: 2.6},
    {points: '421 839 418 905 419 977 422 1048', weight: 1.6},
  ],
  arteries: [
    {id: 'superficial-femoral', depth: 'behind', artery: 'superficial-femoral', span: [[0, 0.5], [0.55, 0.72], [1, 1]], points: '629.5 -71.2 621.3 -2.5 607.5 71.8 588.3 135 571.8 179'},
    {id: 'popliteal', depth: 'deep', artery: 'popliteal', span: [[0, 0], [0.722, 0.5], [1, 1]], points: '574 173.5 556.9 217.5 533.3 283.5 514 360.5 503 443 496.4 525.5 490.4 608 485.4 679.5 483.8 718', bare: true},
    {id: 'tibioperoneal-trunk', depth: 'deep', artery: 'tibioperoneal-trunk', span: [[0, 0], [1, 1]], points: '484.6 696 484.3 704.8 484 712.5 483.8 718 483.3 729 485.4 759.3 489.3 789.5 494.2 817', fillet: ['anterior-tibial-start']},
    {id: 'anterior-tibial-start', depth: 'deep', artery: 'anterior-tibial', span: [[0, 0], [1, 0.12]], points: '488.2 663 482.7 701.5 467.3 734.5 442.5 759.3 422.2 778.5', fillet: ['popliteal', 'tibioperoneal-trunk']},
    {id: 'anterior-tibial', depth: 'behind', artery: 'anterior-tibial', span: [[0, 0.12], [1, 0.5]], points: '422.7 778 407.9 796.7 399.1 828 397.4 877.5 399.6 946.3 402.9 1015 406.8 1097.5'},
    {id: 'posterior-tibial', depth: 'deep', artery: 'posterior-tibial', span: [[0, 0], [1, 0.4]], points: '485.8 762.7 488.5 784.5 491.6 803.5 494.2 817 495.2 822.4 502.2 847.3 511.8 880.3 522.3 924.3 533.3 1009.5 537.1 1103', fillet: ['tibioperoneal-trunk', 'peroneal']},
    {id: 'peroneal', depth: 'deep', artery: 'peroneal', span: [[0, 0], [1, 0.45]], points: '485.8 762.7 488.5 784.5 491.6 803.5 494.2 817 495.2 822.4 492 847.3 481 881.9 469.5 924.3 458.5 1004 452.4 1103', fillet: ['tibioperoneal-trunk', 'posterior-tibial']},
    {id: 'superior-lateral-genicular', depth: 'deep', source: ['popliteal', 0.31], mm: [0.52, 0.13], points: '506.9 415.5 486.5 396.3 453.5 383.6 415 382.5 379.3 394.6 357.3 411.1 343.5 426.5', faint: true, fillet: ['popliteal']},
    {id: 'superior-medial-genicular', depth: 'deep', source: ['popliteal', 0.28], mm: [0.52, 0.13], points: '509.6 390.8 529.4 371.5 560.8 359.4 596.5 362.2 625.1 378.7 645.5 400.1', faint: true, fillet: ['popliteal']},
    {id: 'middle-genicular', depth: 'deep', source: ['popliteal', 0.39], mm: [0.4, 0.14], points: '500.3 476 511.3 489.8 523.4 496.4 534.9 496.4', faint: true, fillet: ['popliteal']},
    {id: 'inferior-lateral-genicular', depth: 'deep', source: ['popliteal', 0.48], mm: [0.48, 0.13], points: '494.5 547.5 475.5 561.3 445.3 565.1 412.3 555.8 384.8 542 354.5 535.4', faint: true, fillet: ['popliteal']},
    {id: 'inferior-medial-genicular', depth: 'deep', source: ['popliteal', 0.6], mm: [0.48, 0.13], points: '490.9 594.3 511.3 615.2 541.5 625.6 577.3 621.8 607.5 607.5 635 588.8', faint: true, fillet: ['popliteal']},
  ],
  sites: [
    {site: 'adductor-canal', on: 'superficial-femoral', name: 'right'},
    {site: 'popliteal', on: 'popliteal', name: 'right'},
  ],
  captions: [
    {word: 'lateral', x: 340, y: 1020},
    {word: 'medial', x: 656, y: 1020},
  ],
};
