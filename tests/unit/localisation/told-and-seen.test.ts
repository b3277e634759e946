import { describe, expect, it } from 'vitest';
import { SIDES } from '../../../src/anatomy/index.js';
import {
  emptyExamination,
  type Examination,
  LEG_DELAYS,
  SENSATIONS,
} from '../../../src/examination/index.js';
import { byStrength } from '../../../src/localisation/network/likelihoods.js';
import { acuteShare } from '../../../src/localisation/network/onset.js';
import { TABLES } from '../../../src/localisation/network/tables.js';
import { delays, handArch, seen } from '../../../src/localisation/network/told-and-seen.js';

const record = (part: Partial<Examination>): Examination => ({ ...emptyExamination(), ...part });

describe('what a finding of the network says', () => {
  it('of a late femoral pulse is said of the sides on which it was late, and of no other', () => {
    const found = [undefined, ...LEG_DELAYS];
    for (const right of found)
      for (const left of found) {
        const compared = { right, left };
        const radioFemoral = Object.fromEntries(
          SIDES.flatMap((side) => (compared[side] ? [[side, compared[side]]] : [])),
        );
        const [finding] = delays(record({ delays: { radioFemoral } }), TABLES);
        const late = SIDES.filter((side) => compared[side] === 'delayed');
        if (right === undefined && left === undefined) expect(finding).toBeUndefined();
        else expect(finding?.id).toMatchObject({ side: late.length === 2 ? 'both' : (late[0] ?? 'none') });
      }
  });

  it('of a palm that fills or stays white is what it is weighed as', () => {
    let found = 0;
    for (const seconds of [undefined, 0, 9, 10, 11, 60])
      for (const returned of [undefined, true, false]) {
        const radial = {
          ...(seconds !== undefined && { seconds }),
          ...(returned !== undefined && { returned }),
        };
        const [finding] = handArch(record({ bedside: { 'hand-arch': { left: { radial } } } }), TABLES);
        if (!finding) continue;
        found++;
        const { id, factors } = finding;
        const told = id.kind === 'hand-arch' && id.fills ? TABLES.seen.archFills : TABLES.seen.archWhite;
        expect(factors[0]?.by, JSON.stringify(radial)).toEqual(byStrength(told).by);
      }
    expect(found).toBeGreaterThan(12);
  });

  it('is nothing where a loss of feeling or power is old and of another cause', () => {
    for (const sensation of SENSATIONS) {
      const known = record({
        inspection: { leg: { left: { sensation, movement: 'paralysed', deficitKnown: true } } },
      });
      expect(seen(known, TABLES)).toEqual([]);
      expect(acuteShare(known, TABLES, undefined)).toBe(acuteShare(emptyExamination(), TABLES, undefined));
    }
  });
});

describe('whether the trouble is acute', () => {
  const examinedAt = '2026-03-15T12:00Z';
  it.each([
    [1, '2026-03-15T13:00+02:00'],
    [335, '2026-03-01T13:00Z'],
    [336, '2026-03-01T12:00Z'],
    [2000, '2025-12-22T04:00Z'],
  ])('is read alike from %i hours and from the clock time %s', (hours, onsetAt) => {
    const share = (leg: object): number =>
      acuteShare(record({ examinedAt, history: { leg: { left: leg } } }), TABLES, undefined);
    expect(share({ onsetAt })).toBe(share({ hours }));
    expect(share({ hours })).not.toBe(share({}));
  });

  it('is read from a wound of a toe as from one of the foot', () => {
    const share = (leg: object): number =>
      acuteShare(record({ inspection: { leg: { left: leg } } }), TABLES, undefined);
    expect(share({ digits: { first: 'gangrene' } })).toBe(share({ gangrene: 'dry' }));
    expect(share({ digits: { first: 'ulcer' } })).toBe(share({ ulcer: 'deep' }));
  });
});
