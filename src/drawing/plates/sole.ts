import { PLATE_BOXES } from '../../anatomy/index.js';
import type { Plate } from './plate.js';

/** The sole of the left foot with the toes up, as seen from the foot of the bed. Drawn from anatomical knowledge (from memory). */
// prettier-ignore
export const plate: Plate = {
  name: 'sole',
  given: 'left',
  size: PLATE_BOXES.sole,
  unitsPerMm: 3.4,
  factor: 2.3,
  outlines: [
    '492 948 448 940 410 913 388 870 383 819 390 764 401 703 406 635 404 567 392 492 372 418 349 356 334 309 332 271 338 222 341 200 342 177 341 154 341 132 345 112 351 84 364 64 381 53 402 50 421 58 435 73 442 95 442 123 441 142 437 163 433 183 432 202 439 212 447 166 449 146 450 126 452 111 456 93 464 80 474 71 486 69 497 74 506 84 510 99 510 118 508 132 505 148 503 166 501 185 506 201 512 177 513 159 515 143 518 127 526 114 535 105 547 103 558 107 567 117 572 131 572 150 570 161 567 175 564 190 562 207 564 233 568 218 570 204 571 190 574 175 581 163 589 154 600 151 611 154 620 163 625 178 626 197 622 215 617 233 615 250 617 275 619 268 621 253 624 239 628 226 636 216 647 212 658 214 668 222 675 237 676 259 673 274 669 288 665 305 665 346 665 384 659 431 645 492 630 554 620 615 611 683 605 751 601 812 595 863 574 911 536 939',
  ],
  tones: [
    {segments: ['492 930 455 922 422 897 405 856 405 809 424 766 461 734 508 696 536 642 548 581 543 520 512 465 465 428 410 402 370 377 344 336 341 288 359 253 397 239 434 244 475 229 519 241 560 266 597 300 631 337 654 373 654 418 640 475 627 540 616 608 606 676 599 744 593 809 585 861 563 902 529 924'], closed: true, strength: 0.2},
    {segments: ['432 133 429 104 417 81 398 71 378 77 361 96 353 125 355 154 367 177 386 187 406 181 423 162'], closed: true, strength: 0.2},
    {segments: ['504 120 502 106 495 95 484 90 472 93 462 102 457 115 459 129 466 139 477 144 490 142 499 133'], closed: true, strength: 0.2},
    {segments: ['566 149 565 135 558 125 547 120 535 122 525 131 520 143 522 157 529 168 540 173 552 170 561 162'], closed: true, strength: 0.2},
    {segments: ['620 193 619 181 612 170 601 166 590 168 581 176 577 189 578 201 585 211 596 216 607 214 616 206'], closed: true, strength: 0.2},
    {segments: ['671 251 669 238 662 228 651 224 639 227 631 236 627 248 629 261 636 271 647 275 659 273 667 264'], closed: true, strength: 0.2},
  ],
  nails: [

  ],
  lines: [
    {points: '336 227 359 212 390 208 421 212 439 219', weight: 2.8},
    {points: '444 209 475 197 506 202 533 212 562 234 589 250 614 278 638 297 663 326', weight: 2.8},
    {points: '350 178 370 184 387 187 404 186 425 183', weight: 1.8},
    {points: '417 404 458 382 506 377 550 392 587 424', weight: 2},
    {points: '441 635 449 567 446 499 434 445', weight: 2},
    {points: '478 608 490 550 489 499', weight: 1.6},
  ],
  arteries: [
    {id: 'posterior-tibial', depth: 'behind', artery: 'posterior-tibial', span: [[0, 0.9], [1, 1]], points: '405 852.8 400.9 818.8 400.2 781.4 403.6 744'},
    {id: 'plantar-arch', depth: 'deep', artery: 'plantar-arch', span: [[0, 0], [1, 1]], points: '403.6 744 416.5 718.8 442.4 689.6 485.2 653.6 529.4 614.1 565.4 574 581.1 533.2 575.6 491 551.2 459.1 514.4 442.8 476.4 446.8 448.5 467.2 436.2 487', bare: true, ridge: -1},
    {id: 'deep-plantar', depth: 'behind', artery: 'dorsalis-pedis', span: [[0, 0.8], [1, 1]], points: '436.9 485.6 428.1 506 424 533.2 422.6 560.4'},
    {id: 'medial-plantar', depth: 'deep', source: ['plantar-arch', 0.01], mm: [0.75, 0.36], points: '406.3 738.6 416.5 713.4 417.2 676 414.5 614.8 409 546.8 399.5 472 386.6 397.2 371.6 329.2 361.4 281.6', fillet: ['plantar-arch']},
    {id: 'metatarsal-1', depth: 'deep', source: ['plantar-arch', 0.94], mm: [0.58, 0.44], points: '453.2 462.5 439.6 434.6 432.2 383.6 432.2 315.6 436.9 264.6', fillet: ['plantar-arch']},
    {id: 'metatarsal-2', depth: 'deep', source: ['plantar-arch', 0.87], mm: [0.5, 0.39], points: '483.2 444.8 489.3 421 495.4 366.6 503.6 298.6 507.6 251', fillet: ['plantar-arch']},
    {id: 'metatarsal-3', depth: 'deep', source: ['plantar-arch', 0.79], mm: [0.5, 0.39], points: '522.6 444.8 530.8 422.4 543 373.4 556.6 319 564.1 291.8', fillet: ['plantar-arch']},
    {id: 'metatarsal-4', depth: 'deep', source: ['plantar-arch', 0.71], mm: [0.5, 0.37], points: '555.9 463.2 569.5 444.8 588.6 402.6 608.3 359.8 616.4 340.8', fillet: ['plantar-arch']},
    {id: 'metatarsal-5', depth: 'deep', source: ['plantar-arch', 0.58], mm: [0.46, 0.33], points: '581.4 526.4 596 493.8 624.6 434.6 644.3 380.2 652.5 342.8', fillet: ['plantar-arch']},
    {id: 'proper-1-medial', depth: 'near', source: ['plantar-arch', 0.01], mm: [0.36, 0.16], points: '365 298.2 363.6 291.6 362.3 285.8 361.4 281.6 359.3 271.6 357.8 186.6 359.8 154 363.7 125.9 372.6 104.8 384.8 93.3 388.6 91.6 391.7 90.8 394.2 90.6 396.6 90.7', bare: true, fillet: ['medial-plantar']},
    {id: 'proper-1-lateral', depth: 'near', source: ['plantar-arch', 0.94], mm: [0.46, 0.16], points: '435.1 281.5 435.8 274.7 436.5 268.8 436.9 264.6 438.1 254.5 428.8 213.6 418.9 159.3 420.5 132.2 416.6 110 407.4 96 404.1 93.5 401.2 92 398.9 91.2 396.6 90.7', bare: true, fillet: ['metatarsal-1', 'proper-2-medial']},
    {id: 'proper-2-medial', depth: 'near', source: ['plantar-arch', 0.94], mm: [0.46, 0.16], points: '435.1 281.5 435.8 274.7 436.5 268.8 436.9 264.6 438.1 254.5 448.5 213.6 460 155 462 133.6 465.9 115.8 475.1 103.7 478.3 102.2 479.9 101.7 482.4 101.6', bare: true, fillet: ['metatarsal-1', 'proper-1-lateral']},
    {id: 'proper-2-lateral', depth: 'near', source: ['plantar-arch', 0.87], mm: [0.4, 0.16], points: '506.4 268 506.9 261.2 507.3 255.2 507.6 251 508.4 240.8 500.8 203.4 491.9 158.5 494.8 137.6 495.2 119.2 489 105.3 486.2 103.1 484.7 102.3 482.4 101.6', bare: true, fillet: ['metatarsal-2', 'proper-3-medial']},
    {id: 'proper-3-medial', depth: 'near', source: ['plantar-arch', 0.87], mm: [0.4, 0.16], points: '506.4 268 506.9 261.2 507.3 255.2 507.6 251 508.4 240.8 517.2 210.2 522.7 178.7 525.1 159.9 528.9 144.4 537.1 134.4 540 132.9 542.4 132.2 544.8 132.1', bare: true, fillet: ['metatarsal-2', 'proper-2-lateral']},
    {id: 'proper-3-lateral', depth: 'near', source: ['plantar-arch', 0.79], mm: [0.4, 0.16], points: '559.6 308.2 561.4 301.6 562.9 295.9 564.1 291.8 566.8 282 558 244.2 553.6 183.3 557 164.7 557.6 148 551.9 135.9 549.3 133.8 547.1 132.7 544.8 132.1', bare: true, fillet: ['metatarsal-3', 'proper-4-medial']},
    {id: 'proper-4-medial', depth: 'near', source: ['plantar-arch', 0.79], mm: [0.4, 0.16], points: '559.6 308.2 561.4 301.6 562.9 295.9 564.1 291.8 566.8 282 573.6 251 578.8 220.3 581.4 203.3 585 189.5 592.5 180.2 595.6 178.6 597.2 178.1 599.7 177.9', bare: true, fillet: ['metatarsal-3', 'proper-3-lateral']},
    {id: 'proper-4-lateral', depth: 'near', source: ['plantar-arch', 0.71], mm: [0.39, 0.16], points: '609.8 356.4 612.5 350.2 614.8 344.7 616.4 340.8 620.4 331.4 610.3 291.8 608 225.8 611.7 208.4 612.3 192.5 606.6 181.2 603.8 179.1 602.2 178.4 599.7 177.9', bare: true, fillet: ['metatarsal-4', 'proper-5-medial']},
    {id: 'proper-5-medial', depth: 'near', source: ['plantar-arch', 0.71], mm: [0.39, 0.16], points: '609.8 356.4 612.5 350.2 614.8 344.7 616.4 340.8 620.4 331.4 625.3 298.6 629.1 277 631.9 261.4 635.1 248.8 642.1 239.9 645.1 238.1 646.7 237.5 649.2 237.2', bare: true, fillet: ['metatarsal-4', 'proper-4-lateral']},
    {id: 'proper-5-lateral', depth: 'near', source: ['plantar-arch', 0.58], mm: [0.33, 0.16], points: '649.2 359.5 650.5 352.8 651.7 347 652.5 342.8 654.4 332.8 658.9 283.6 662.6 266.4 662.8 250.6 656.4 239.8 653.7 238.2 651.5 237.4 649.2 237.2', bare: true, fillet: ['metatarsal-5']},
  ],
  sites: [

  ],
  captions: [
    {word: 'medial', x: 300, y: 560},
    {word: 'lateral', x: 715, y: 560},
  ],
};
