import { describe, expect, it } from 'vitest';
import { placeKey, PLACES } from '../../../src/anatomy/index.js';
import {
  AXIS,
  courseOf,
  cropOf,
  FIGURE_HEIGHT,
  FIGURE_WIDTH,
  positionOf,
  sampleAt,
} from '../../../src/drawing/index.js';
import { ARTERY_IDS, VESSELS, vesselKey } from '../../../src/anatomy/index.js';
import { place } from '../../tools/examinations.js';

/** To tens of figure units: what a redrawn curve may move before someone has to look at it. */
const round = (value: number): number => Math.round(value / 10) * 10;

describe('the figure', () => {
  it('has the sites where they were looked at last', () => {
    const looked = {
      'left superficial-temporal': [660, 110],
      'left carotid': [640, 240],
      'left subclavian': [710, 270],
      'left axillary': [770, 360],
      'left brachial': [850, 470],
      'left radial': [990, 580],
      'left ulnar': [1000, 660],
      'midline abdominal-aorta': [600, 560],
      'left renal': [680, 540],
      'left iliac': [640, 660],
      'left femoral': [660, 730],
      'left adductor-canal': [670, 890],
      'left popliteal': [700, 990],
      'left posterior-tibial': [710, 1350],
      'left dorsalis-pedis': [780, 1370],
    };
    const spots = Object.keys(looked).map((key) => {
      const { x, y } = positionOf(place(key));
      return [key, [round(x), round(y)]];
    });
    expect(Object.fromEntries(spots)).toEqual(looked);
  });

  it('has every artery begin and end where it was looked at last', () => {
    const ends = VESSELS.filter(({ side }) => side !== 'right').map((vessel) => {
      const [from, to] = [0, 1].map((t) => sampleAt(courseOf(vessel), t));
      return [
        vesselKey(vessel),
        round(from?.x ?? 0),
        round(from?.y ?? 0),
        round(to?.x ?? 0),
        round(to?.y ?? 0),
      ].join(' ');
    });
    expect(ends).toMatchInlineSnapshot(`
      [
        "midline ascending-aorta 600 420 600 320",
        "midline aortic-arch 600 320 640 370",
        "left common-carotid 610 310 640 200",
        "left internal-carotid 640 200 620 100",
        "left external-carotid 640 200 650 140",
        "left superficial-temporal 650 140 640 70",
        "left subclavian 630 330 730 290",
        "left vertebral 670 270 600 130",
        "left internal-thoracic 670 270 650 480",
        "left axillary 730 290 780 380",
        "left brachial 780 380 880 500",
        "left radial 880 500 1010 600",
        "left ulnar 880 500 1000 660",
        "left deep-palmar-arch 1010 600 1000 660",
        "left superficial-palmar-arch 1000 660 1050 630",
        "midline thoracic-aorta 640 370 610 510",
        "midline suprarenal-aorta 610 510 600 540",
        "left renal 610 530 680 540",
        "midline infrarenal-aorta 600 540 600 600",
        "left common-iliac 600 600 630 640",
        "left internal-iliac 630 640 620 710",
        "left external-iliac 630 640 660 700",
        "left common-femoral 660 700 670 760",
        "left deep-femoral 670 760 710 910",
        "left superficial-femoral 670 760 690 940",
        "left popliteal 690 940 710 1040",
        "left anterior-tibial 710 1040 750 1320",
        "left dorsalis-pedis 750 1320 830 1420",
        "left tibioperoneal-trunk 710 1040 700 1080",
        "left posterior-tibial 700 1080 720 1390",
        "left peroneal 700 1080 730 1280",
        "left plantar-arch 720 1390 830 1420",
      ]
    `);
  });

  it('draws every artery of the tree within the frame', () => {
    expect(new Set(VESSELS.map(({ artery }) => artery)).size).toBe(ARTERY_IDS.length);
    for (const vessel of VESSELS) {
      for (let i = 0; i <= 20; i++) {
        const { x, y } = sampleAt(courseOf(vessel), i / 20);
        expect(x, vesselKey(vessel)).toBeGreaterThan(0);
        expect(x).toBeLessThan(FIGURE_WIDTH);
        expect(y).toBeGreaterThan(0);
        expect(y).toBeLessThan(FIGURE_HEIGHT);
      }
    }
  });

  it('puts the patient’s right on the reader’s left', () => {
    for (const place of PLACES) {
      const { x } = positionOf(place);
      if (place.side === 'right') expect(x, placeKey(place)).toBeLessThan(AXIS);
      if (place.side === 'left') expect(x, placeKey(place)).toBeGreaterThan(AXIS);
    }
  });

  it('keeps the sites far enough apart for a finger at the size they are drawn for', () => {
    // Drawn 872 px high, as on a desk.
    const scale = 872 / cropOf('whole').height;
    PLACES.forEach((a, i) => {
      for (const b of PLACES.slice(i + 1)) {
        const [p, q] = [positionOf(a), positionOf(b)];
        const distance = Math.hypot(p.x - q.x, p.y - q.y) * scale;
        expect(distance, `${placeKey(a)} and ${placeKey(b)}`).toBeGreaterThanOrEqual(44);
      }
    });
  });
});
