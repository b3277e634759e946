import { describe, expect, it } from 'vitest';
import {
  ARTERIES,
  type ArteryId,
  type Laterality,
  LATERALITIES,
  levelOf,
  limbKey,
  LIMBS,
  LISTENING_PLACES,
  LISTENING_SITE_IDS,
  oppositeSide,
  pathTo,
  type Place,
  placeFromKey,
  placeKey,
  PLACES,
  placesUpstream,
  PULSE_PLACES,
  PULSE_SITE_IDS,
  SITE_IDS,
  type SiteId,
  siteDefinition,
  stationsOf,
  vesselKey,
  vesselOf,
} from '../../../src/anatomy/index.js';

/**
 * The artery under the finger or the stethoscope at each site, written down apart from the table so that a site cannot move
 * unnoticed. Sources: arteries felt, SVS/AVF venous leg ulcer guideline 2014, arterial assessment (radial, ulnar, brachial,
 * carotid, femoral, popliteal, dorsalis pedis, posterior tibial). That the groin is the common femoral, the neck the common
 * carotid, and all others: common practice, no source.
 */
const ARTERY_OF: Readonly<Record<SiteId, ArteryId>> = {
  'superficial-temporal': 'superficial-temporal',
  carotid: 'common-carotid',
  subclavian: 'subclavian',
  axillary: 'axillary',
  brachial: 'brachial',
  radial: 'radial',
  ulnar: 'ulnar',
  'abdominal-aorta': 'infrarenal-aorta',
  renal: 'renal',
  iliac: 'external-iliac',
  femoral: 'common-femoral',
  'adductor-canal': 'superficial-femoral',
  popliteal: 'popliteal',
  'posterior-tibial': 'posterior-tibial',
  'dorsalis-pedis': 'dorsalis-pedis',
};

describe('places', () => {
  it('are 23 for the pulse and 17 for the ear', () => {
    expect(PULSE_PLACES.length).toBe(23);
    expect(LISTENING_PLACES.length).toBe(17);
  });

  it('cover the pulses that a guideline asks to be felt', () => {
    // Source: SVS/AVF venous leg ulcer guideline 2014, arterial assessment.
    const list = [
      'radial',
      'ulnar',
      'brachial',
      'carotid',
      'femoral',
      'popliteal',
      'dorsalis-pedis',
      'posterior-tibial',
    ];
    expect(PULSE_SITE_IDS).toEqual(expect.arrayContaining(list));
  });

  it('come right before left, and once each', () => {
    for (const places of [PULSE_PLACES, LISTENING_PLACES, PLACES]) {
      const keys = places.map(placeKey);
      expect(new Set(keys).size).toBe(keys.length);
      for (const [i, place] of places.entries()) {
        if (place.side === 'left') expect(places[i - 1]).toEqual({ site: place.site, side: 'right' });
      }
    }
  });

  it('on the map are those of finger and ear together', () => {
    const ids = new Set([...PULSE_SITE_IDS, ...LISTENING_SITE_IDS]);
    expect(new Set(SITE_IDS)).toEqual(ids);
    expect(SITE_IDS.length).toBe(ids.size);
  });

  it('lie within their artery, in the midline only where the artery does', () => {
    for (const id of SITE_IDS) {
      const { artery, at, occurs } = siteDefinition(id);
      expect(at).toBeGreaterThan(0);
      expect(at).toBeLessThan(1);
      expect(occurs).toBe(ARTERIES[artery].occurs);
    }
  });

  it('lie on the artery that is felt or heard there', () => {
    expect(Object.fromEntries(SITE_IDS.map((site) => [site, siteDefinition(site).artery]))).toEqual(
      ARTERY_OF,
    );
  });

  it('where a pulse is felt are one an artery at most: it is cut into two parts there, no more', () => {
    const vessels = PULSE_PLACES.map((place) => vesselKey(vesselOf(place)));
    expect(new Set(vessels).size).toBe(vessels.length);
  });

  it('are found by their key, and only where they exist', () => {
    for (const place of PLACES) expect(placeFromKey(placeKey(place))).toEqual(place);
    for (const key of ['left abdominal-aorta', 'midline femoral', 'left knee', '', '__proto__', 'toString']) {
      expect(placeFromKey(key)).toBeUndefined();
    }
  });
});

describe('stations of a limb', () => {
  it('lead from the trunk outward: each lies downstream of the one before', () => {
    for (const limb of LIMBS) {
      const stations = stationsOf(limb);
      for (const [i, station] of stations.entries()) {
        const before = stations[i - 1]?.[0];
        if (!before) continue;
        for (const place of station) {
          const way = pathTo(vesselOf(place)).map(vesselKey);
          if (limb.kind === 'head') expect(way).toContain(vesselKey(vesselOf(before)));
          else expect(way.slice(0, -1)).toContain(vesselKey(vesselOf(before)));
        }
      }
    }
  });

  it('hold every pulse place, the aorta for both legs', () => {
    const felt = LIMBS.flatMap((limb) => stationsOf(limb).flat().map(placeKey));
    expect(new Set(felt)).toEqual(new Set(PULSE_PLACES.map(placeKey)));
    expect(felt.filter((key) => key === 'midline abdominal-aorta').length).toBe(2);
    expect(felt.length).toBe(PULSE_PLACES.length + 1);
  });

  it('stay on their own side', () => {
    for (const limb of LIMBS) {
      const sides = new Set(
        stationsOf(limb)
          .flat()
          .map((place) => place.side),
      );
      expect([...sides].filter((side) => side !== 'midline')).toEqual([limb.side]);
    }
  });

  it('hold at one station what is fed by the place before, each through an artery of its own', () => {
    for (const limb of LIMBS) {
      const stations = stationsOf(limb);
      for (const [i, station] of stations.entries()) {
        for (const place of station) {
          const before = placesUpstream(place, stations.flat());
          expect(before.map(placeKey), placeKey(place)).toEqual(
            stations.slice(0, i).map((other) => placeKey(other[0] as Place)),
          );
        }
      }
    }
  });

  it('end at wrist and foot with both arteries that are felt there', () => {
    const last = (kind: 'leg' | 'arm') =>
      stationsOf({ side: 'left', kind })
        .at(-1)
        ?.map(({ site }) => site);
    expect(last('leg')).toEqual(expect.arrayContaining(['posterior-tibial', 'dorsalis-pedis']));
    expect(last('arm')).toEqual(expect.arrayContaining(['radial', 'ulnar']));
  });

  it('are told for six limbs with six keys', () => {
    expect(LIMBS.map(limbKey)).toEqual([
      'right leg',
      'left leg',
      'right arm',
      'left arm',
      'right head',
      'left head',
    ]);
  });
});

describe('levels', () => {
  it('call the arch inflow for the arm and central for the leg', () => {
    expect(levelOf('aortic-arch', 'leg')).toBe('central');
    expect(levelOf('aortic-arch', 'arm')).toBe('arm-inflow');
    expect(levelOf('brachiocephalic', 'arm')).toBe('arm-inflow');
  });

  it('run in order along the way to each foot', () => {
    const order = ['central', 'aorto-iliac', 'femoro-popliteal', 'infrapopliteal'];
    for (const artery of ['dorsalis-pedis', 'plantar-arch', 'peroneal'] as const) {
      const ranks = pathTo({ artery, side: 'left' }).map((vessel) =>
        order.indexOf(levelOf(vessel.artery, 'leg')),
      );
      expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
      expect(new Set(ranks)).toEqual(new Set([0, 1, 2, 3]));
    }
  });
});

describe('oppositeSide', () => {
  it('swaps right and left, leaves the midline, and undoes itself', () => {
    expect(LATERALITIES.map((side: Laterality) => oppositeSide(side))).toEqual(['left', 'right', 'midline']);
    for (const side of LATERALITIES) expect(oppositeSide(oppositeSide(side))).toBe(side);
  });
});
