import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SIDES } from '../../../src/anatomy/index.js';
import { METHODS, type Method, type Pressures } from '../../../src/examination/index.js';
import { methodOf, readPressures } from '../../../src/pressures/index.js';
import { pressureNotes, pressureVerdicts } from '../../../src/statements/index.js';

const value = fc.option(
  fc.oneof(fc.integer({ min: 0, max: 300 }), fc.constantFrom('incompressible' as const, 'pain' as const)),
  { nil: undefined },
);
const sided = fc.record({ right: value, left: value });
const pressures = fc
  .record({ brachial: sided, 'dorsalis-pedis': sided, 'posterior-tibial': sided, toe: sided, radial: sided })
  .map((all) => JSON.parse(JSON.stringify(all)) as Pressures)
  .filter(({ brachial }) => !SIDES.every((side) => brachial?.[side] === 0));
const method = fc.record(
  Object.fromEntries(Object.entries(METHODS).map(([name, words]) => [name, fc.constantFrom(...words)])),
  { requiredKeys: [] },
) as fc.Arbitrary<Method>;

const notesOf = (p: Pressures, own?: Method) =>
  pressureNotes({ pressures: p }, readPressures(p, methodOf(own ? { method: own } : {})), undefined, own);
const codesOf = (p: Pressures) => notesOf(p).map(({ code }) => code);

describe('pressureNotes', () => {
  it('say how an index was worked out only where there is one, and ask for an arm only where one is missing', () => {
    fc.assert(
      fc.property(pressures, method, (p, own) => {
        const reading = readPressures(p, methodOf({ method: own }));
        const codes = notesOf(p, own).map(({ code }) => code);
        const divided = reading.indices.some((index) => index.numerator && index.denominator);
        expect(codes.includes('sums')).toBe(divided && reading.denominator !== undefined);
        expect(codes.includes('no-arm')).toBe(reading.indices.length > 0 && !reading.denominator);
        if (codes.includes('one-arm')) {
          const arms = SIDES.filter((side) => typeof p.brachial?.[side] === 'number');
          expect(arms).toHaveLength(1);
        }
        expect(new Set(codes.filter((code) => code !== 'incompressible')).size).toBe(
          codes.filter((code) => code !== 'incompressible').length,
        );
      }),
    );
  });

  it('call a method a default exactly where nobody chose it', () => {
    fc.assert(
      fc.property(pressures, method, method, (p, own, page) => {
        const reading = readPressures(p, methodOf({ method: own }, page));
        for (const note of pressureNotes({ pressures: p }, reading, undefined, own, page)) {
          if (note.code !== 'methods') continue;
          for (const { method: used, byDefault } of note.used) {
            expect(used.option).toBe(reading.settings[used.field]);
            expect(byDefault).toBe(own[used.field] === undefined && page[used.field] === undefined);
          }
        }
      }),
    );
  });

  it('name the criterion wherever a pressure could threaten the limb', () => {
    fc.assert(
      fc.property(pressures, (p) => {
        const verdicts = pressureVerdicts(p, readPressures(p));
        const methods = notesOf(p).flatMap((note) => (note.code === 'methods' ? note.used : []));
        if (verdicts.some(({ code }) => code === 'threat'))
          expect(methods.map(({ method: { field } }) => field)).toContain('threat');
      }),
    );
  });

  // Common practice, no source: arms under 100 mmHg beside ankles that seem incompressible.
  it.each([
    [{ brachial: { right: 80, left: 90 }, 'posterior-tibial': { left: 140 } }, true],
    [{ brachial: { right: 95, left: 100 }, 'posterior-tibial': { left: 150 } }, false],
    [{ brachial: { right: 80 }, 'posterior-tibial': { left: 140 } }, false],
    [{ brachial: { right: 90, left: 90 }, 'posterior-tibial': { left: 90 } }, false],
  ] as const)('doubt both arms of %j: %s', (p, doubted) => {
    expect(codesOf(p).includes('both-arms')).toBe(doubted);
  });
});

describe('pressureVerdicts', () => {
  // Reporting standards 1997 (from memory): 0.15. What a graft's surveillance watches for.
  it('tells an ankle index that fell or rose since the visit before, and no smaller change', () => {
    const at = (ankle: number) => ({
      brachial: { right: 100, left: 100 },
      'posterior-tibial': { left: ankle },
    });
    const told = (before: number, now: number) =>
      pressureVerdicts(at(now), readPressures(at(now)), [], at(before)).flatMap((verdict) =>
        verdict.code === 'index-change' ? [verdict.change.by] : [],
      );
    expect(told(95, 80)).toEqual([-0.15]);
    expect(told(70, 95)).toEqual([0.25]);
    expect(told(95, 81)).toEqual([]);
  });

  // Global Vascular Guidelines 2019 (from memory); no other criterion offered names it.
  it('names a flat volume curve by the criterion that it belongs to', () => {
    const p = { volumeCurve: { left: 'flat', right: 'rounded' } } as const;
    expect(pressureVerdicts(p, readPressures(p))).toEqual([{ code: 'flat-curve', side: 'left' }]);
    expect(pressureVerdicts(p, readPressures(p, { threat: 'parc-2015' }))).toEqual([]);
  });

  // PARC 2015: ankle below 50 with rest pain, below 70 with tissue loss.
  it('take the limit for wounds on the side that has one', () => {
    const p: Pressures = { 'posterior-tibial': { right: 60, left: 60 } };
    const reading = readPressures(p, methodOf({ method: { threat: 'parc-2015' } }));
    expect(pressureVerdicts(p, reading)).toEqual([]);
    expect(pressureVerdicts(p, reading, ['left'])).toMatchObject([
      { code: 'threat', side: 'left', threats: [{ side: 'left', measure: 'ankle', limit: 70 }] },
    ]);
  });
});
