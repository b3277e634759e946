import { describe, expect, it } from 'vitest';
import { levelOf, PIECES, SIDES } from '../../../src/anatomy/index.js';
import { emptyExamination, setPulse } from '../../../src/examination/index.js';
import { feetOf, withFeet } from '../../../src/localisation/network/feet.js';
import { pulsePiece } from '../../../src/localisation/network/finding.js';
import { palpation } from '../../../src/localisation/network/likelihoods.js';
import { TABLES } from '../../../src/localisation/network/index.js';
import { modelOf, READINGS } from '../../../src/localisation/network/model.js';
import type { Factor, Model } from '../../../src/localisation/network/columns.js';
import { Propagation } from '../../../src/localisation/network/propagate.js';

/*
 * Patients drawn from the model before any finding, beside the patterns of a series: which levels of the legs are diseased,
 * one or several. A crural lesion means two arteries of one leg, as the series counts it.
 */

/** Numbers from 0 to 1, the same in every run. */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1664525 + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

function drawn(model: Model, next: () => number): number[] {
  let left = next();
  let column = 0;
  while (column < model.weight.length - 1 && left > model.weight[column]!) left -= model.weight[column++]!;
  const cause = model.cause[column]!;
  const causes = model.struck.length;
  for (;;) {
    const ill = PIECES.flatMap((_, i) => {
      const k = i * causes + cause;
      return next() < model.narrowed[k]! + model.blocked[k]! ? [i] : [];
    });
    if (ill.length || !model.struck[cause]) return ill;
  }
}

const CRURAL = ['anterior-tibial', 'posterior-tibial', 'peroneal'];

function levelsOf(ill: readonly number[]): Set<string> {
  const out = new Set<string>();
  for (const side of SIDES) {
    const crural = new Set<string>();
    for (const piece of ill.map((i) => PIECES[i]!).filter((one) => one.side === side)) {
      if (CRURAL.includes(piece.artery)) crural.add(piece.artery);
      if (piece.artery === 'tibioperoneal-trunk') for (const one of CRURAL.slice(1)) crural.add(one);
    }
    if (crural.size > 1) out.add('crural');
  }
  for (const i of ill) {
    const level = levelOf(PIECES[i]!.artery, 'leg');
    if (level === 'aorto-iliac' && PIECES[i]!.artery !== 'internal-iliac') out.add('aorto-iliac');
    if (level === 'femoro-popliteal') out.add('femoro-popliteal');
  }
  return out;
}

/** Shares of patients with leg disease by its pattern, in percent. */
function patterns(diabetes?: boolean): Record<string, number> {
  const context = { ageBand: '60-79' as const, ...(diabetes !== undefined && { diabetes }) };
  const model = modelOf({ ...emptyExamination(), onset: 'chronic', context }, TABLES);
  const next = numbers(7);
  const counts: Record<string, number> = {};
  let patients = 0;
  for (let k = 0; k < 6000; k++) {
    const levels = levelsOf(drawn(model, next));
    if (levels.size === 0) continue;
    patients++;
    const name = levels.size > 1 ? 'several' : [...levels][0]!;
    counts[name] = (counts[name] ?? 0) + 1;
  }
  return Object.fromEntries(Object.entries(counts).map(([name, count]) => [name, (100 * count) / patients]));
}

describe('Patients drawn from the model', () => {
  // Segmental peripheral atherosclerosis and risk factors, 132 patients; the whole entry stands in network/sources.ts.
  it('have the patterns of 132 patients: aorto-iliac only 12.9, femoro-popliteal only 34.1, crural only 18.9, several 34.1%', () => {
    const found = patterns();
    expect(Math.abs(found['aorto-iliac']! - 12.9)).toBeLessThan(5);
    // More than in the series: what walks into a clinic has fewer lesions than what is sent for an angiogram.
    expect(Math.abs(found['femoro-popliteal']! - 34.1)).toBeLessThan(11);
    expect(Math.abs(found['crural']! - 18.9)).toBeLessThan(5);
    expect(Math.abs(found['several']! - 34.1)).toBeLessThan(6);
  });

  it('have crural disease more often in diabetes (odds ratio 1.8, 1.04 to 3.19; J Vasc Bras 2023)', () => {
    const odds = (share: number): number => share / (100 - share);
    const ratio = odds(patterns(true)['crural']!) / odds(patterns(false)['crural']!);
    expect(ratio).toBeGreaterThan(1.04);
    expect(ratio).toBeLessThan(4.5);
  });
});

describe('Healthy people whose feet are felt (Armstrong 2013, 1338 people with normal indices)', () => {
  const FOOT = ['dorsalis-pedis', 'posterior-tibial'] as const;
  type Missed = readonly (readonly [site: (typeof FOOT)[number], side: 'right' | 'left'])[];

  /** How often these pulses are missed where every artery is open. */
  function missed(pulses: Missed): number {
    const all = FOOT.reduce(
      (next, site) => SIDES.reduce((one, side) => setPulse(one, { site, side }, { grade: 'absent' }), next),
      emptyExamination(),
    );
    const feet = feetOf(all, TABLES);
    const model = modelOf({ ...emptyExamination(), onset: 'chronic' }, TABLES);
    const sound = {
      ...model,
      weight: model.weight.map((_, c) => Number(c === 0)),
      struck: model.struck.map(() => false),
      narrowed: model.narrowed.map(() => 0),
      blocked: model.blocked.map(() => 0),
    };
    const factors = pulses.map(([site, side]): Factor => ({
      piece: pulsePiece({ site, side }),
      ...palpation(site, 'absent', TABLES, feet),
    }));
    const net = new Propagation(sound, factors, READINGS.gone + 1 + feet.length);
    net.divide(withFeet(sound, feet, () => 'divide'));
    return 100 * net.total();
  }

  const both = (site: (typeof FOOT)[number]): Missed => [
    [site, 'right'],
    [site, 'left'],
  ];

  it.each([
    ['one dorsalis pedis', [['dorsalis-pedis', 'right']], 15.4],
    ['one posterior tibial', [['posterior-tibial', 'right']], 8.9],
    ['both dorsalis pedis', both('dorsalis-pedis'), 10.4],
    ['both posterior tibials', both('posterior-tibial'), 6.1],
    [
      'both pulses of one foot',
      [
        ['dorsalis-pedis', 'right'],
        ['posterior-tibial', 'right'],
      ],
      2.5,
    ],
    ['all four', [...both('dorsalis-pedis'), ...both('posterior-tibial')], 1.3],
  ] as readonly (readonly [string, Missed, number])[])('miss %s as often as found', (_, pulses, percent) => {
    expect(missed(pulses)).toBeGreaterThan(percent * 0.8);
    expect(missed(pulses)).toBeLessThan(percent * 1.25);
  });
});
