import { describe, expect, it } from 'vitest';
import { placeKey, PLACES } from '../../../src/anatomy/index.js';
import {
  AXIS,
  courseOf,
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
      'left superficial-temporal': [660, 120],
      'left carotid': [640, 250],
      'left subclavian': [720, 280],
      'left axillary': [770, 350],
      'left brachial': [830, 460],
      'left radial': [990, 570],
      'left ulnar': [970, 640],
      'midline abdominal-aorta': [600, 570],
      'left renal': [690, 550],
      'left iliac': [640, 670],
      'left femoral': [680, 750],
      'left adductor-canal': [680, 900],
      'left popliteal': [710, 1000],
      'left posterior-tibial': [710, 1350],
      'left dorsalis-pedis': [790, 1370],
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
        "midline ascending-aorta 600 420 610 320",
        "midline aortic-arch 610 320 640 360",
        "left common-carotid 600 320 640 200",
        "left internal-carotid 640 200 620 120",
        "left external-carotid 640 200 660 150",
        "left superficial-temporal 660 150 650 80",
        "left subclavian 630 330 730 290",
        "left vertebral 670 270 600 130",
        "left internal-thoracic 670 270 650 490",
        "left axillary 730 290 780 380",
        "left brachial 780 380 860 480",
        "left radial 860 480 1010 590",
        "left ulnar 860 480 970 650",
        "left deep-palmar-arch 1010 590 980 650",
        "left superficial-palmar-arch 970 650 1050 630",
        "midline thoracic-aorta 640 360 610 520",
        "midline suprarenal-aorta 610 520 600 540",
        "left renal 610 540 690 550",
        "midline infrarenal-aorta 600 540 600 610",
        "left common-iliac 600 610 630 650",
        "left internal-iliac 630 650 620 730",
        "left external-iliac 630 650 670 720",
        "left common-femoral 670 720 690 780",
        "left deep-femoral 690 780 720 920",
        "left superficial-femoral 690 780 700 950",
        "left popliteal 700 950 710 1060",
        "left anterior-tibial 710 1060 770 1320",
        "left dorsalis-pedis 770 1320 830 1420",
        "left tibioperoneal-trunk 710 1060 710 1090",
        "left posterior-tibial 710 1090 720 1390",
        "left peroneal 710 1090 740 1290",
        "left plantar-arch 720 1390 830 1420",
      ]
    `);
  });

  it('draws every artery of the tree within the frame', () => {
    expect(new Set(VESSELS.map(({ artery }) => artery)).size).toBe(ARTERY_IDS.length);
    for (const vessel of VESSELS) {
      for (let t = 0; t <= 1; t += 0.05) {
        const { x, y } = sampleAt(courseOf(vessel), t);
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
    // Drawn 860 px high, as on a desk.
    const scale = 860 / 1460;
    PLACES.forEach((a, i) => {
      for (const b of PLACES.slice(i + 1)) {
        const [p, q] = [positionOf(a), positionOf(b)];
        const distance = Math.hypot(p.x - q.x, p.y - q.y) * scale;
        expect(distance, `${placeKey(a)} and ${placeKey(b)}`).toBeGreaterThanOrEqual(44);
      }
    });
  });
});
