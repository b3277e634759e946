import { describe, expect, it } from 'vitest';
import { FOOT } from '../../tools/examinations.js';
import { levelOf, PIECES, PULSE_SITE_IDS } from '../../../src/anatomy/index.js';
import { CAUSES, TABLES } from '../../../src/localisation/network/index.js';
import { modelOf } from '../../../src/localisation/network/model.js';
import { emptyExamination } from '../../../src/examination/index.js';
import { type Accuracy, againstIndex, chanceOf, felt, gone, silent, wayTo } from './accuracy.js';

/*
 * What falls out of the network as a whole, set beside what studies found. Where it differs from the published figure, the
 * reason stands beside the test.
 */

const SIDE = 'left';
const LEG = wayTo('left dorsalis-pedis proximal', 'left posterior-tibial proximal');
const allNormal = (['femoral', 'popliteal', 'posterior-tibial', 'dorsalis-pedis'] as const).map((s) =>
  felt(s, SIDE),
);
const noBruit = (['iliac', 'femoral', 'popliteal'] as const).map((s) => silent(s, SIDE));
const bothGone = (['posterior-tibial', 'dorsalis-pedis'] as const).map((s) => gone(s, SIDE));

/** Of the finding's opposite: `chanceOf` was asked for everything being normal. */
const abnormal = ({
  given,
  without,
}: Accuracy): { sensitivity: number; specificity: number; lr: number } => ({
  sensitivity: 1 - given,
  specificity: without,
  lr: (1 - given) / (1 - without),
});

describe('The network beside published accuracies', () => {
  it('gives "any pulse abnormal" a likelihood ratio within 2.2 to 9.9 (Khan 2006, 4.7, legs with symptoms)', () => {
    const { lr } = abnormal(chanceOf(allNormal, LEG));
    expect(lr).toBeGreaterThan(2.2);
    expect(lr).toBeLessThan(9.9);
  });

  it('gives "no pulse abnormal" a ratio near 0.23 to 0.64 (Khan 2006, 0.38, moderate to severe disease)', () => {
    const { given, without } = chanceOf(allNormal, LEG);
    // A network with four pulses to feel misses a little less than one study's examiners.
    expect(given / without).toBeGreaterThan(0.2);
    expect(given / without).toBeLessThan(0.64);
  });

  it('gives an iliac, femoral or popliteal bruit a likelihood ratio within 4.7 to 6.7 (Khan 2006, 5.6)', () => {
    const { lr, sensitivity, specificity } = abnormal(chanceOf(noBruit, LEG));
    expect(lr).toBeGreaterThan(4.7);
    expect(lr).toBeLessThan(6.7);
    // McGee & Boyko 1998: limb bruit 0.20-0.50 and 0.92-0.99.
    expect(sensitivity).toBeGreaterThan(0.2);
    expect(sensitivity).toBeLessThan(0.5);
    expect(specificity).toBeGreaterThan(0.92);
    // The ratio of "no bruit", 0.39 in Khan 2006, needs a sensitivity of 0.63: the two reviews disagree. Blocks are silent
    // here, as they are in the neck (Johansson 2008), so the network stays with the lower sensitivity.
  });

  it('gives absent foot pulses on one side a specificity within 0.92 to 0.99 (McGee, from memory)', () => {
    const { given, without } = againstIndex(bothGone, SIDE);
    expect(1 - without).toBeGreaterThan(0.92);
    expect(1 - without).toBeLessThan(0.99);
    // Published sensitivity 0.63-0.72; here lower, since weak and absent are told apart and a weak foot pulse is commoner.
    expect(given).toBeGreaterThan(0.4);
    const weak = againstIndex(
      (['posterior-tibial', 'dorsalis-pedis'] as const).map((s) => felt(s, SIDE)),
      SIDE,
    );
    expect(1 - weak.given).toBeGreaterThan(0.63);
  });

  it('gives an abnormal posterior tibial pulse for disease above the ankle about 0.71 and 0.91 (Criqui 1985, from memory)', () => {
    const { sensitivity, specificity } = abnormal(
      chanceOf([felt('posterior-tibial', SIDE)], wayTo('left popliteal distal')),
    );
    expect(Math.abs(sensitivity - 0.712)).toBeLessThan(0.06);
    // Lower by what a diseased tibial artery adds below a healthy large one, and by Armstrong's 9% of absent pulses in the healthy.
    expect(Math.abs(specificity - 0.913)).toBeLessThan(0.14);
  });

  it('gives an abnormal femoral pulse for aorto-iliac disease a specificity near 1.00 (McGee & Boyko 1998)', () => {
    const inflow = (piece: number): boolean => levelOf(PIECES[piece]!.artery, 'leg') === 'aorto-iliac';
    const way = wayTo('left common-femoral proximal');
    const { sensitivity, specificity } = abnormal(
      chanceOf([felt('femoral', SIDE)], way, {}, 'chronic', inflow),
    );
    expect(specificity).toBeGreaterThan(0.96);
    // Published sensitivity 0.38 for any narrowing over half on an angiogram; "narrowed" here means that it matters to flow.
    expect(sensitivity).toBeGreaterThan(0.38);
  });

  it('lets healthy people miss foot pulses as often as Armstrong 2013 found: 8.7-9.0% and 14.7-16.1%', () => {
    const missed = (site: 'posterior-tibial' | 'dorsalis-pedis'): number =>
      chanceOf([gone(site, SIDE)], LEG).without;
    expect(missed('posterior-tibial')).toBeGreaterThan(0.075);
    expect(missed('posterior-tibial')).toBeLessThan(0.1);
    expect(missed('dorsalis-pedis')).toBeGreaterThan(0.13);
    expect(missed('dorsalis-pedis')).toBeLessThan(0.17);
    expect(chanceOf(bothGone, LEG).without).toBeLessThan(0.025);
  });

  it('holds the share of people born without a foot pulse (Robertson 1990: 24 of 1094 feet, 1 of 547 people)', () => {
    expect(TABLES.palpation['dorsalis-pedis'].missing).toBeCloseTo(24 / 1094, 3);
    expect(TABLES.palpation['posterior-tibial'].missing).toBeCloseTo(1 / 547, 3);
    for (const site of PULSE_SITE_IDS) {
      if (FOOT.includes(site)) continue;
      expect(TABLES.palpation[site].missing).toBe(0);
    }
  });

  it('hears a carotid bruit without stenosis in 17% (McColgan 2012: specificity 0.83, sensitivity 0.53)', () => {
    const { specificity } = abnormal(chanceOf([silent('carotid', SIDE)], wayTo('left internal-carotid')));
    expect(specificity).toBeCloseTo(0.83, 1);
    expect(TABLES.sound.carotid[1]).toBeCloseTo(0.53, 2);
    // The sensitivity of the whole network is lower, since a blocked carotid is silent (Johansson 2008: heard in 0.26).
  });

  it('lodges limb emboli as published: arms 35% (Landry 2013), of the legs femoral 44, aorto-iliac 29, popliteal 27%', () => {
    const sum = (...names: readonly string[]): number =>
      Object.entries(TABLES.causes.embolic.sites).reduce(
        (total, [key, share]) => total + (names.includes(key.split(' ')[0]!) ? share : 0),
        0,
      );
    expect(sum('subclavian', 'axillary', 'brachial', 'radial', 'ulnar')).toBeCloseTo(0.35, 2);
    expect(sum('common-femoral', 'deep-femoral', 'superficial-femoral') / 0.65).toBeCloseTo(28 / 63, 1);
    expect(sum('infrarenal-aorta', 'common-iliac', 'external-iliac') / 0.65).toBeCloseTo(18 / 63, 1);
    const below = sum(
      'popliteal',
      'tibioperoneal-trunk',
      'anterior-tibial',
      'posterior-tibial',
      'dorsalis-pedis',
    );
    expect(below / 0.65).toBeCloseTo(17 / 63, 1);
  });

  it('narrows the left subclavian four times as often as the right (StatPearls), and blocks the aorta above the renals from birth only', () => {
    const model = modelOf({ ...emptyExamination(), onset: 'chronic' }, TABLES);
    const causes = CAUSES.length;
    const at = (key: string): number => PIECES.findIndex((piece) => piece.key === key);
    const focal = (key: string): number => model.narrowed[at(key) * causes + CAUSES.indexOf('focal')]!;
    expect(focal('left subclavian proximal') / focal('right subclavian proximal')).toBeCloseTo(4, 0);
    for (const artery of ['ascending-aorta', 'aortic-arch', 'thoracic-aorta', 'suprarenal-aorta']) {
      const i = at(`midline ${artery}`);
      const blocked = CAUSES.map((cause, c) =>
        cause === 'coarctation' ? 0 : model.blocked[i * causes + c]!,
      );
      expect(Math.max(...blocked)).toBe(0);
    }
  });
});
