import { describe, expect, it } from 'vitest';
import type { Pressures } from '../../../src/examination/index.js';
import { exerciseReadings, type PressureSettings, pressureSettings } from '../../../src/pressures/index.js';

const chosen = (settings: Partial<PressureSettings> = {}) => pressureSettings(settings);

// Aboyans 2012: fall of the index by more than 20%, of the ankle by more than 30 mmHg; secondary sources print "at least".
describe('exerciseReadings', () => {
  const walk = (rest: number, after: number, arm = 100): Pressures => ({
    brachial: { right: arm, left: arm },
    'posterior-tibial': { right: rest },
    afterExercise: { 'posterior-tibial': { right: after } },
  });

  it.each<[PressureSettings['exercise'], number, boolean]>([
    ['more-than', 29, false],
    ['more-than', 30, false],
    ['more-than', 31, true],
    ['at-least', 29, false],
    ['at-least', 30, true],
  ])('by "%s" an ankle fall of %i mmHg counts: %s', (exercise, fall, counts) => {
    const [reading] = exerciseReadings(walk(150, 150 - fall), chosen({ exercise }));
    expect(reading?.met.includes('ankle-fall')).toBe(counts);
  });

  it.each<[PressureSettings['exercise'], number, boolean]>([
    ['more-than', 80.1, false],
    ['more-than', 80, false],
    ['more-than', 79.9, true],
    ['at-least', 80.1, false],
    ['at-least', 80, true],
  ])('by "%s" an index of %f percent of rest counts: %s', (exercise, percent, counts) => {
    const pressures = walk(100, percent);
    const after = { ...pressures.afterExercise, brachial: { right: 100 } };
    const [reading] = exerciseReadings({ ...pressures, afterExercise: after }, chosen({ exercise }));
    expect(reading?.met.includes('index-fall')).toBe(counts);
  });

  it.each([
    [89, true],
    [90, false],
    [91, false],
  ])('an index of %i hundredths afterwards counts: %s (from memory)', (after, counts) => {
    const [reading] = exerciseReadings(
      {
        brachial: { left: 100 },
        'dorsalis-pedis': { left: 100 },
        afterExercise: { brachial: { left: 100 }, 'dorsalis-pedis': { left: after } },
      },
      chosen(),
    );
    expect(reading?.met.includes('index-after')).toBe(counts);
  });

  it('compares one artery before and after: of those measured both times the one with the higher rest pressure', () => {
    const arms = { right: 140, left: 140 };
    const [reading] = exerciseReadings(
      {
        brachial: arms,
        'dorsalis-pedis': { left: 150 },
        'posterior-tibial': { left: 120 },
        afterExercise: { brachial: arms, 'posterior-tibial': { left: 118 } },
      },
      chosen(),
    );
    // The index was low at rest (0.86): that it is low afterwards says nothing new.
    expect(reading).toMatchObject({ artery: 'posterior-tibial', fall: 2, indexRest: 0.86, code: 'normal' });
    const [apart] = exerciseReadings(
      {
        brachial: arms,
        'dorsalis-pedis': { left: 140 },
        afterExercise: { brachial: arms, 'posterior-tibial': { left: 100 } },
      },
      chosen(),
    );
    expect(apart).toMatchObject({
      code: 'incomplete',
      missing: [{ site: 'posterior-tibial', side: 'left', when: 'rest' }],
    });
  });

  it('without an arm pressure afterwards tells the fall in mmHg alone', () => {
    const [reading] = exerciseReadings(
      { ...walk(140, 120, 130), brachial: { right: 130, left: 130 } },
      chosen(),
    );
    expect(reading).toMatchObject({ fall: 20, code: 'normal' });
    expect(reading?.indexFall).toBeUndefined();
  });

  it('does not borrow the arm pressure at rest for the index afterwards, and says what is missing', () => {
    const [reading] = exerciseReadings(walk(100, 60), chosen());
    expect(reading).toMatchObject({ fall: 40, code: 'abnormal' });
    expect(reading?.indexFall).toBeUndefined();
    expect(reading?.missing).toContainEqual({ site: 'brachial', side: 'left', when: 'after' });
  });

  it('is incomplete with nothing at rest and no arm afterwards', () => {
    const [reading] = exerciseReadings({ afterExercise: { 'dorsalis-pedis': { right: 80 } } }, chosen());
    expect(reading?.code).toBe('incomplete');
  });
});
