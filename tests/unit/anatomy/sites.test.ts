import { describe, expect, it } from 'vitest';
import {
  ARTERIES,
  type Laterality,
  LATERALITIES,
  levelOf,
  limbKey,
  LIMBS,
  LISTENING_PLACES,
  LISTENING_SITE_IDS,
  oppositeSide,
  pathTo,
  placeFromKey,
  placeKey,
  PLACES,
  PULSE_PLACES,
  PULSE_SITE_IDS,
  SIDES,
  SITE_IDS,
  siteDefinition,
  stationsOf,
  vesselKey,
  vesselOf,
} from '../../../src/anatomy/index.js';

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

  it('of finger and ear share one spot on the artery where they share a name', () => {
    for (const id of LISTENING_SITE_IDS.filter((site) => (PULSE_SITE_IDS as string[]).includes(site))) {
      const heard = LISTENING_PLACES.find((place) => place.site === id);
      expect(heard && vesselOf(heard)).toEqual(vesselOf({ site: id, side: heard?.side ?? 'midline' }));
    }
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

  it('end in twins at wrist and foot', () => {
    for (const side of SIDES) {
      expect(
        stationsOf({ side, kind: 'leg' })
          .at(-1)
          ?.map((p) => p.site),
      ).toEqual(['posterior-tibial', 'dorsalis-pedis']);
      expect(
        stationsOf({ side, kind: 'arm' })
          .at(-1)
          ?.map((p) => p.site),
      ).toEqual(['radial', 'ulnar']);
    }
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
