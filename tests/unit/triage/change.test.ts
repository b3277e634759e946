import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  FLAG_CODES,
  flagChange,
  flagKey,
  FLAGS,
  type RedFlag,
  URGENCIES,
  urgencyRank,
} from '../../../src/triage/index.js';

const flag = (
  code: RedFlag['code'],
  urgency: RedFlag['urgency'] = 'now',
  side?: 'left' | 'right',
): RedFlag => ({
  code,
  urgency,
  ...(side && { limb: { kind: 'leg' as const, side } }),
  because: [],
  whom: FLAGS[code],
  ask: [],
});

const flags = fc.uniqueArray(
  fc
    .tuple(
      fc.constantFrom(...FLAG_CODES),
      fc.constantFrom(...URGENCIES),
      fc.constantFrom(undefined, 'left' as const, 'right' as const),
    )
    .map(([code, urgency, side]) => flag(code, urgency, side)),
  { selector: flagKey, maxLength: 5 },
);
const stands = (all: readonly RedFlag[]): string[] =>
  all.map((one) => `${flagKey(one)} ${one.urgency}`).sort();

describe('what became of the flags', () => {
  it('is told if and only if other flags stand, or with another urgency', () => {
    fc.assert(
      fc.property(flags, flags, (before, after) => {
        const same = JSON.stringify(stands(before)) === JSON.stringify(stands(after));
        expect(flagChange(before, after) === undefined).toBe(same);
      }),
    );
  });

  it('speaks of a flag that stands, and of one that stood where it was withdrawn', () => {
    fc.assert(
      fc.property(flags, flags, (before, after) => {
        const change = flagChange(before, after);
        if (!change) return;
        const is = after.map(flagKey).includes(flagKey(change.flag));
        expect(is).toBe(change.code !== 'withdrawn');
      }),
    );
  });

  it('never passes over what became worse for what became better', () => {
    fc.assert(
      fc.property(flags, flags, (before, after) => {
        const was = new Map(before.map((one) => [flagKey(one), urgencyRank(one.urgency)]));
        const worse = after.filter((one) => urgencyRank(one.urgency) > (was.get(flagKey(one)) ?? -1));
        const change = flagChange(before, after);
        if (worse.length) expect(['raised', 'worsened']).toContain(change?.code);
        else expect(['raised', 'worsened']).not.toContain(change?.code);
        if (worse.length) {
          const worst = Math.max(...worse.map(({ urgency }) => urgencyRank(urgency)));
          expect(change && urgencyRank(change.flag.urgency)).toBe(worst);
        }
      }),
    );
  });

  it('calls a flag that takes the place of a milder one of the same limb worse, of another limb raised', () => {
    const mild = flag('acute-limb-possible', 'now', 'left');
    const threatened = flag('acute-limb-threatened', 'now', 'left');
    expect(flagChange([mild], [threatened])).toEqual({ code: 'worsened', flag: threatened });
    const other = flag('acute-limb-threatened', 'now', 'right');
    expect(flagChange([mild], [mild, other])).toEqual({ code: 'raised', flag: other });
    expect(flagChange([threatened], [])).toEqual({ code: 'withdrawn', flag: threatened });
    expect(flagChange([flag('tia', 'now')], [flag('tia', 'today')])).toEqual({
      code: 'eased',
      flag: flag('tia', 'today'),
    });
  });
});
