import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { partMessagesFor } from '../../../src/locale/parts.js';
import '../../../src/locale/de/register.js';
import { longTime } from '../../../src/locale/long-time.js';

const DAYS = { week: 7, month: 30.44, year: 365.25 } as const;
const said = (days: number): string[] =>
  ['en', 'de'].map((tag) => partMessagesFor(tag).history.limb({ code: 'days', days }));

describe('a long time in words', () => {
  it('reads as a person thinks of it, the days beside it', () => {
    expect([3, 21, 45, 180, 1100].map((days) => said(days))).toEqual([
      ['for 3 days', 'seit 3 Tagen'],
      ['for 3 weeks (21 days)', 'seit 3 Wochen (21 Tagen)'],
      ['for about 6 weeks (45 days)', 'seit etwa 6 Wochen (45 Tagen)'],
      ['for about 6 months (180 days)', 'seit etwa 6 Monaten (180 Tagen)'],
      ['for about 3 years (1100 days)', 'seit etwa 3 Jahren (1100 Tagen)'],
    ]);
  });

  it('is never further from the days than half of its unit, never called exact where it is not, and never leaves them out', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20_000 }), (days) => {
        const long = longTime(days);
        for (const text of said(days)) expect(text).toContain(String(days));
        if (!long) {
          expect(days).toBeLessThan(14);
          return;
        }
        const off = Math.abs(long.count * DAYS[long.unit] - days);
        expect(off).toBeLessThanOrEqual(DAYS[long.unit] / 2);
        expect(long.exact).toBe(long.unit === 'week' && off === 0);
        // One of a unit would read "for 1 weeks" in a language that declines it.
        expect(long.count).toBeGreaterThan(1);
      }),
    );
  });
});
