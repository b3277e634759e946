import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { oppositeSide, type Place, placeKey, PLACES, placesUpstream } from '../../../src/anatomy/index.js';
import {
  type Direction,
  placesIn,
  positionOf,
  travel,
  type TravelChart,
  travelOn,
  VIEWS,
} from '../../../src/drawing/index.js';
import { FOOT, place, WRIST } from '../../tools/examinations.js';

const ARROWS: readonly Direction[] = ['up', 'down', 'left', 'right'];

function reachable(from: Place, shown: readonly Place[], ways: readonly Direction[]): Set<string> {
  const seen = new Set([placeKey(from)]);
  const queue = [from];
  for (let at = queue.pop(); at; at = queue.pop()) {
    for (const way of ways) {
      const to = travel(at, way, shown);
      if (to && !seen.has(placeKey(to))) {
        seen.add(placeKey(to));
        queue.push(to);
      }
    }
  }
  return seen;
}

const go = (from: string, ...ways: Direction[]): string => {
  let at = place(from);
  for (const way of ways) at = travel(at, way, PLACES) ?? at;
  return placeKey(at);
};

describe('travel by arrows', () => {
  it.each(VIEWS)('reaches every place from every place of the view %s', (view) => {
    const shown = placesIn(view);
    for (const from of shown) {
      expect(reachable(from, shown, ARROWS).size, placeKey(from)).toBe(shown.length);
    }
  });

  it('never leaves the view', () => {
    for (const view of VIEWS) {
      const shown = placesIn(view);
      for (const from of shown) {
        for (const way of [...ARROWS, 'next', 'previous'] as const) {
          const to = travel(from, way, shown);
          if (to) expect(shown).toContain(to);
        }
      }
    }
  });

  it('goes down away from the heart, to a site fed by the one it leaves', () => {
    for (const from of PLACES) {
      const fed = PLACES.filter((at) => placesUpstream(at, PLACES).at(-1) === from);
      const down = travel(from, 'down', PLACES);
      expect(down && placeKey(down), placeKey(from)).toBe(fed[0] && placeKey(fed[0]));
    }
    expect(go('left popliteal', 'down')).toBe('left posterior-tibial');
    expect(go('right subclavian', 'down', 'down', 'down')).toBe('right radial');
  });

  it('comes back up to where it came from', () => {
    for (const from of PLACES) {
      const down = travel(from, 'down', PLACES);
      if (down) expect(travel(down, 'up', PLACES), placeKey(from)).toBe(from);
    }
  });

  it('goes left and right as the reader sees the sites, patient’s right first', () => {
    for (const view of VIEWS) {
      const shown = placesIn(view);
      for (const from of shown) {
        const right = travel(from, 'right', shown);
        if (right) {
          expect(positionOf(right).x, placeKey(from)).toBeGreaterThan(positionOf(from).x);
          expect(travel(right, 'left', shown)).toBe(from);
        }
      }
    }
  });

  it('crosses between the two sides of every paired site', () => {
    for (const from of PLACES.filter(({ side }) => side === 'right')) {
      let at: Place | undefined = from;
      const met: string[] = [];
      while (at && met.length < 6) met.push(placeKey((at = travel(at, 'right', PLACES) ?? from)));
      expect(met, placeKey(from)).toContain(placeKey({ ...from, side: oppositeSide(from.side) }));
    }
  });
});

describe('travelOn', () => {
  /** Any forest of places, shown in part, in any rows and at any positions, several at one. */
  const anyChart = fc
    .array(
      fc.record({
        parent: fc.option(fc.nat(), { nil: undefined }),
        group: fc.option(fc.constantFrom('a', 'b'), { nil: undefined }),
        x: fc.integer({ min: 0, max: 4 }),
        shown: fc.boolean(),
      }),
      { minLength: 1, maxLength: 14 },
    )
    .map((stops) => {
      // What feeds a place stands before it; the first place has nothing before it.
      const parents = stops.map(({ parent }, i) =>
        parent === undefined || i === 0 ? undefined : parent % i,
      );
      const chart: TravelChart<number> = {
        upstream: (i) => parents[i],
        groups: (i) => [stops[i]?.group ?? []].flat(),
        x: (i) => stops[i]?.x ?? 0,
      };
      return { chart, shown: stops.flatMap((stop, i) => (stop.shown ? [i] : [])) };
    });

  it('reaches every place shown from every other by arrows, whatever the chart', () => {
    fc.assert(
      fc.property(anyChart, ({ chart, shown }) => {
        for (const from of shown) {
          const seen = new Set([from]);
          for (const at of seen) {
            for (const way of ARROWS) {
              const to = travelOn(chart, at, way, shown);
              if (to !== undefined) seen.add(to);
            }
          }
          expect(seen.size).toBe(shown.length);
        }
      }),
    );
  });

  it('goes back by right where it went by left, and up where it went down', () => {
    fc.assert(
      fc.property(anyChart, ({ chart, shown }) => {
        for (const from of shown) {
          for (const [way, back] of [
            ['left', 'right'],
            ['right', 'left'],
            ['down', 'up'],
          ] as const) {
            const to = travelOn(chart, from, way, shown);
            if (to !== undefined) expect(travelOn(chart, to, back, shown)).toBe(from);
          }
        }
      }),
    );
  });
});

describe('travel to next and previous', () => {
  it.each(VIEWS)('visits every place of the view %s once, in the order of examination', (view) => {
    const shown = placesIn(view);
    const visited: Place[] = [];
    for (let at = shown[0]; at; at = travel(at, 'next', shown)) visited.push(at);
    expect(visited).toEqual(shown);
    const back: Place[] = [];
    for (let at = shown.at(-1); at; at = travel(at, 'previous', shown)) back.push(at);
    expect(back).toEqual([...shown].reverse());
  });
});

describe('placesIn', () => {
  it('shows every place on the whole body, and on arms and legs together', () => {
    expect(placesIn('whole')).toEqual(PLACES);
    const parts = new Set([...placesIn('arms'), ...placesIn('legs')]);
    expect(parts.size).toBe(PLACES.length);
  });

  it('shows on one side what it shows on the other', () => {
    for (const part of ['arm', 'leg', 'hand', 'foot'] as const) {
      const sites = (side: 'right' | 'left'): string[] => placesIn(`${side}-${part}`).map(({ site }) => site);
      expect(sites('right')).toEqual(sites('left'));
    }
  });

  it('shows at hand and foot the pulses felt there', () => {
    expect(placesIn('left-hand').map(placeKey)).toEqual(WRIST.map((site) => `left ${site}`));
    expect(placesIn('right-foot').map(placeKey)).toEqual(FOOT.map((site) => `right ${site}`));
  });
});
