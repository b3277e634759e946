import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PLACES, placeKey, type Place } from '../../../src/anatomy/index.js';
import { type Change, CHANGE_WEIGHTS, compareExaminations } from '../../../src/comparison/index.js';
import {
  ACUTE_CLASSES,
  BRUITS,
  bruitAt,
  type DopplerSignal,
  emptyExamination,
  type Examination,
  FONTAINE_STAGES,
  GRADES,
  pulseAt,
  RUTHERFORD_CATEGORIES,
  setBruit,
  setPulse,
  WIFI_STAGES,
} from '../../../src/examination/index.js';
import { examine, randomPatient } from '../../../src/flow/index.js';
import { anyExamination } from '../../tools/arbitraries.js';
import { WHOLE_VISITS } from '../../tools/whole-visits.js';

const left = (site: 'popliteal' | 'dorsalis-pedis' | 'femoral') => ({ site, side: 'left' }) as const;
const graft = (graftPulse?: 'present' | 'absent') => ({
  artery: 'superficial-femoral' as const,
  side: 'left' as const,
  kind: 'bypass' as const,
  ...(graftPulse && { graftPulse }),
});

const grafted = (record: Examination, graftPulse?: 'present' | 'absent'): Examination => ({
  ...record,
  context: { revascularisations: [graft(graftPulse)] },
});

/** What a change is about, without from and to. */
const about = (change: Change): string => {
  switch (change.code) {
    case 'pulse':
    case 'doppler':
    case 'bruit':
      return `${change.code} ${placeKey(change.place)}`;
    case 'flag':
      return `flag ${change.flag.code} ${change.flag.limb?.side} ${change.flag.limb?.kind}`;
    case 'stage':
      return `stage ${change.scheme} ${change.limb.side} ${change.limb.kind}`;
    case 'bedside':
      return `bedside ${change.test} ${change.side}`;
    case 'graft-pulse':
      return `graft ${change.artery} ${change.side}`;
    default:
      return `${change.code} ${change.side}`;
  }
};
const OPPOSITE = { worse: 'better', better: 'worse', other: 'other' } as const;

const anyRecord = fc.oneof(anyExamination, fc.constantFrom(...WHOLE_VISITS));

describe('two visits', () => {
  it('alike differ in nothing', () => {
    fc.assert(
      fc.property(anyRecord, (record) => {
        const { changes, notExaminedNow, notExaminedBefore } = compareExaminations(record, record);
        expect(changes).toEqual([]);
        expect([...notExaminedNow, ...notExaminedBefore]).toEqual([]);
      }),
      { numRuns: 20 },
    );
  });

  it('read the other way round tell the same things with from and to exchanged', () => {
    fc.assert(
      fc.property(anyRecord, anyRecord, (a, b) => {
        const there = compareExaminations(a, b);
        const back = compareExaminations(b, a);
        const told = new Map(back.changes.map((one) => [about(one), one]));
        expect(there.changes.map(about).sort()).toEqual([...told.keys()].sort());
        for (const one of there.changes) {
          const other = told.get(about(one))!;
          expect([one.from, one.to]).toEqual([other.to, other.from]);
          if (one.code === 'pulse' || one.code === 'index' || one.code === 'stage')
            expect(one.way).toBe(OPPOSITE[other.way]);
        }
        expect(there.notExaminedNow).toEqual(back.notExaminedBefore);
        expect(there.same).toBe(back.same);
      }),
      { numRuns: 20 },
    );
  });

  it('claim nothing of a place that was not examined at one of them', () => {
    fc.assert(
      fc.property(anyRecord, anyRecord, (a, b) => {
        const { changes, notExaminedNow, notExaminedBefore } = compareExaminations(a, b);
        for (const change of changes) {
          if (change.code === 'pulse') {
            expect(pulseAt(a, change.place)?.grade).toBe(change.from);
            expect(pulseAt(b, change.place)?.grade).toBe(change.to);
          }
          if (change.code === 'bruit') expect(bruitAt(a, change.place)?.bruit).toBe(change.from);
        }
        const keys = (places: readonly Place[]): string[] => places.map(placeKey);
        expect(keys(notExaminedNow).filter((key) => keys(notExaminedBefore).includes(key))).toEqual([]);
        const empty = compareExaminations(a, emptyExamination());
        expect(empty.changes.filter(({ code }) => code !== 'flag')).toEqual([]);
        // A flag that nothing raises any more is never told as better.
        expect(empty.changes.filter(({ way }) => way === 'better')).toEqual([]);
      }),
      { numRuns: 20 },
    );
  });

  it('are told gravest first', () => {
    fc.assert(
      fc.property(anyRecord, anyRecord, (a, b) => {
        const ranks = compareExaminations(a, b).changes.map(({ weight }) => CHANGE_WEIGHTS.indexOf(weight));
        expect(ranks).toEqual([...ranks].sort((x, y) => x - y));
      }),
      { numRuns: 15 },
    );
  });
});

describe('a pulse', () => {
  const pairs = GRADES.flatMap((from) => GRADES.map((to) => [from, to] as const)).filter(([a, b]) => a !== b);

  it.each(pairs)('%s, then %s: lost or regained matters, weaker alone may be chance', (from, to) => {
    const before = setPulse(emptyExamination(), left('popliteal'), { grade: from });
    const now = setPulse(emptyExamination(), left('popliteal'), { grade: to });
    const pulse = compareExaminations(before, now).changes.find(({ code }) => code === 'pulse')!;
    expect(pulse).toMatchObject({ from, to });
    const crossed = (from === 'absent') !== (to === 'absent');
    if (crossed)
      expect(pulse).toMatchObject({ weight: 'matters', way: to === 'absent' ? 'worse' : 'better' });
    else expect(['chance', 'minor']).toContain(pulse.weight);
    // A graft in the limb never makes it weigh less; a pulse lost beyond one is urgent.
    const withGraft = [before, now].map((one) => grafted(one));
    const beyond = compareExaminations(withGraft[0]!, withGraft[1]!).changes.find(
      ({ code }) => code === 'pulse',
    )!;
    expect(CHANGE_WEIGHTS.indexOf(beyond.weight)).toBeLessThanOrEqual(CHANGE_WEIGHTS.indexOf(pulse.weight));
    if (to === 'absent') expect(beyond.weight).toBe('urgent');
  });

  it('of the other leg is not weighed by a graft', () => {
    const [before, now] = (['normal', 'absent'] as const).map((grade) =>
      setPulse(grafted(emptyExamination()), { site: 'popliteal', side: 'right' }, { grade }),
    );
    const pulse = compareExaminations(before!, now!).changes.find(({ code }) => code === 'pulse')!;
    expect(pulse.weight).toBe('matters');
  });
});

describe('other findings', () => {
  it('a signal or a graft that fell silent weighs most; a bruit that did says neither', () => {
    const heard = (doppler: DopplerSignal, graftPulse: 'present' | 'absent') =>
      setPulse(grafted(emptyExamination(), graftPulse), left('dorsalis-pedis'), {
        doppler,
      });
    const { changes } = compareExaminations(heard('biphasic', 'present'), heard('absent', 'absent'));
    expect(changes.find(({ code }) => code === 'doppler')).toMatchObject({ weight: 'urgent', way: 'worse' });
    expect(changes.find(({ code }) => code === 'graft-pulse')).toMatchObject({
      weight: 'urgent',
      way: 'worse',
    });
    for (const from of BRUITS.filter((one) => one !== 'none')) {
      const [a, b] = [from, 'none' as const].map((bruit) =>
        setBruit(emptyExamination(), { site: 'femoral', side: 'left' }, { bruit }),
      );
      expect(compareExaminations(a!, b!).changes).toMatchObject([
        { code: 'bruit', weight: 'minor', way: 'other' },
      ]);
    }
  });

  // A change of 0.15 or more is real: Rutherford RB et al., J Vasc Surg 1997;26:517-538 (from memory); Aboyans V et al., Circulation 2012.
  it.each([
    [120, 102, 'matters', -0.15],
    [120, 103, 'chance', -0.14],
    [96, 114, 'matters', 0.15],
  ] as const)('ankle pressure %i, then %i, arms 120: %s', (before, now, weight, by) => {
    const measured = (mmHg: number, more: Partial<Examination> = {}): Examination => ({
      ...emptyExamination(),
      ...more,
      pressures: {
        brachial: { right: 120, left: 120 },
        'dorsalis-pedis': { left: mmHg },
        'posterior-tibial': { left: 60 },
      },
    });
    const index = compareExaminations(measured(before), measured(now)).changes.find(
      ({ code }) => code === 'index',
    );
    expect(index).toMatchObject({ weight, by, side: 'left', limit: 0.15 });
    if (weight === 'matters' && by < 0) {
      const context = { context: { revascularisations: [graft()] } };
      const below = compareExaminations(measured(before, context), measured(now, context)).changes;
      expect(below.find(({ code }) => code === 'index')?.weight).toBe('urgent');
    }
  });

  it('a leg that became threatened is told first, with its flag', () => {
    const before = setPulse(emptyExamination(), left('femoral'), { grade: 'normal' });
    const now: Examination = {
      ...setPulse(before, left('femoral'), { grade: 'absent' }),
      onset: 'acute',
      inspection: { leg: { left: { temperature: 'cold', colour: 'pale', sensation: 'digits' } } },
    };
    const { changes } = compareExaminations(before, now);
    expect(changes[0]).toMatchObject({
      code: 'flag',
      weight: 'urgent',
      way: 'worse',
      from: 'none',
      to: 'now',
    });
    expect(changes.find(({ code }) => code === 'pulse')).toMatchObject({ from: 'normal', to: 'absent' });
  });

  const schemes = {
    acute: ACUTE_CLASSES,
    fontaine: FONTAINE_STAGES,
    rutherford: RUTHERFORD_CATEGORIES,
    wifi: WIFI_STAGES,
  } as const;

  it.each(Object.entries(schemes))(
    'a higher stage is worse, a lower one better: %s, every pair',
    (scheme, order) => {
      const staged = (stage: unknown): Examination =>
        ({ ...emptyExamination(), staging: { leg: { left: { [scheme]: { stage } } } } }) as Examination;
      for (const [i, from] of order.entries())
        for (const [j, to] of order.entries()) {
          const change = compareExaminations(staged(from), staged(to)).changes.find(
            ({ code }) => code === 'stage',
          );
          const way = j > i ? 'worse' : 'better';
          if (i === j) expect(change).toBeUndefined();
          else expect(change, `${from} to ${to}`).toMatchObject({ scheme, from, to, way });
        }
    },
  );

  it('of a patient whose artery closed come out as physics has them', () => {
    let worse = 0;
    for (let number = 0; number < 6; number++) {
      const { patient } = randomPatient(23, number);
      const closed = {
        ...patient,
        lesions: [...patient.lesions, { piece: 'left external-iliac' as const, extent: 'whole' as const }],
      };
      const parts = ['pulses', 'pressures'] as const;
      const { changes } = compareExaminations(examine(patient, { parts }), examine(closed, { parts }));
      const legs = changes.filter((one) => one.code === 'pulse' && one.place.side === 'left');
      expect(legs.filter(({ way }) => way === 'better')).toEqual([]);
      if (legs.some(({ way }) => way === 'worse')) worse++;
    }
    expect(worse).toBeGreaterThan(2);
  });
});

it('a place felt at one visit and only listened to at the other is neither alike nor left out', () => {
  const femoral = left('femoral');
  const felt = setPulse(emptyExamination(), femoral, { grade: 'absent' });
  const heard = setBruit(emptyExamination(), femoral, { bruit: 'none' });
  const nothing = { same: 0, notExaminedNow: [], notExaminedBefore: [] };
  expect(compareExaminations(felt, heard)).toMatchObject(nothing);
  expect(compareExaminations(setBruit(felt, femoral, { bruit: 'none' }), heard)).toMatchObject({ same: 1 });
});

it('no place is counted twice, as compared and as named apart', () => {
  fc.assert(
    fc.property(anyRecord, anyRecord, (a, b) => {
      const { notExaminedNow, notExaminedBefore, same } = compareExaminations(a, b);
      expect(notExaminedNow.length + notExaminedBefore.length + same).toBeLessThanOrEqual(PLACES.length);
    }),
    { numRuns: 20 },
  );
});
