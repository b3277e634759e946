import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Place, placeKey, PULSE_PLACES, siteDefinition } from '../../../src/anatomy/index.js';
import {
  emptyExamination,
  isStated,
  portionNormal,
  pulseAt,
  unstatedPlaces,
  unstatedPortions,
} from '../../../src/examination/index.js';
import { anyExamination } from '../../tools/arbitraries.js';

const anyPlaces: fc.Arbitrary<Place[]> = fc.subarray([...PULSE_PLACES]);
const keys = (places: readonly Place[]): string[] => places.map((place) => placeKey(place)).sort();

describe('what can be stated as normal', () => {
  it('is every place on the screen that is not stated, in one portion each, and no other', () => {
    fc.assert(
      fc.property(anyExamination, anyPlaces, (examination, among) => {
        const offered = unstatedPortions(examination, among).flatMap(({ places }) => places);
        const open = new Set(keys(unstatedPlaces(examination)));
        expect(keys(offered)).toEqual(keys(among).filter((key) => open.has(key)));
      }),
    );
  });

  it('writes what its portion named and nothing else; a stated site stays as it is', () => {
    fc.assert(
      fc.property(anyExamination, anyPlaces, fc.nat(), (before, among, at) => {
        const portions = unstatedPortions(before, among);
        const portion = portions[at % Math.max(1, portions.length)];
        if (!portion) return;
        const after = portionNormal(before, portion);
        const named = new Set(keys(portion.places));
        for (const place of PULSE_PLACES) {
          if (named.has(placeKey(place))) expect(pulseAt(after, place)?.grade).toBe('normal');
          else expect(pulseAt(after, place)).toEqual(pulseAt(before, place));
        }
        expect({ ...after, pulses: null }).toEqual({ ...before, pulses: null, format: after.format });
        expect(portionNormal(after, portion)).toBe(after);
      }),
    );
  });

  it('leaves out a site stated since it was named', () => {
    fc.assert(
      fc.property(anyExamination, (stale) => {
        for (const portion of unstatedPortions(emptyExamination())) {
          const after = portionNormal(stale, portion);
          for (const place of portion.places)
            if (isStated(pulseAt(stale, place))) expect(pulseAt(after, place)).toEqual(pulseAt(stale, place));
        }
      }),
    );
  });

  it('never crosses a limb, and names a hand or foot only where nothing above is written', () => {
    fc.assert(
      fc.property(anyExamination, anyPlaces, (examination, among) => {
        for (const { portion, places } of unstatedPortions(examination, among)) {
          if (!('side' in portion)) continue;
          expect(new Set(places.map(({ side }) => side))).toEqual(new Set([portion.side]));
          const kinds = new Set(places.map(({ site }) => siteDefinition(site).region));
          expect([...kinds]).toEqual([/foot|leg/.test(portion.part) ? 'leg' : 'arm']);
          if (portion.part === 'foot')
            for (const { site } of places) expect(['posterior-tibial', 'dorsalis-pedis']).toContain(site);
          if (portion.part === 'hand')
            for (const { site } of places) expect(['radial', 'ulnar']).toContain(site);
        }
      }),
    );
  });
});
