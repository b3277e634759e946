import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type LimbKey,
  limbKey,
  LIMBS,
  oppositeSide,
  type Place,
  placeKey,
  PULSE_PLACES,
  SIDES,
} from '../../../src/anatomy/index.js';
import {
  emptyExamination,
  type Examination,
  pulseAt,
  restNormal,
  setPulse,
} from '../../../src/examination/index.js';
import {
  anythingGraded,
  type LimbRule,
  readByRule,
  type RuleLesion,
  sameEverywhere,
} from '../../../src/localisation/rule.js';
import { gradedExamination } from '../../tools/arbitraries.js';
import { examined, FOOT, graded, outwardFrom } from '../../tools/examinations.js';

function limbOf(examination: Examination, limb: LimbKey): LimbRule {
  return readByRule(examination)[limb];
}

function only(rule: LimbRule): RuleLesion {
  expect(rule.lesions.length).toBe(1);
  return rule.lesions[0] as RuleLesion;
}

const FEET = FOOT.map((site) => `left ${site}`);
const keys = (places: readonly Place[]): string[] => places.map(placeKey);

describe('sites without a grade', () => {
  it('widen the interval and are named', () => {
    const found = only(limbOf(examined({ 'left femoral': 'normal', ...graded(FEET, 'absent') }), 'left leg'));
    expect(keys(found.unstated)).toEqual(['left popliteal']);
    expect(found.pieces.slice(0, 4)).toEqual([
      'left common-femoral distal',
      'left superficial-femoral',
      'left popliteal proximal',
      'left popliteal distal',
    ]);
    expect(found.pieces).toEqual(
      expect.arrayContaining([
        'left tibioperoneal-trunk',
        'left posterior-tibial proximal',
        'left anterior-tibial',
        'left dorsalis-pedis proximal',
      ]),
    );
  });

  it('widen it just the same when they could not be examined', () => {
    fc.assert(
      fc.property(gradedExamination, (examination) => {
        const silent = PULSE_PLACES.reduce(
          (e, at) => setPulse(e, at, pulseAt(e, at)?.couldNotExamine ? { couldNotExamine: undefined } : {}),
          examination,
        );
        expect(readByRule(silent)).toEqual(readByRule(examination));
      }),
    );
  });

  it('name what was not felt at the same station', () => {
    const found = only(
      limbOf(examined({ 'left popliteal': 'normal', 'left posterior-tibial': 'absent' }), 'left leg'),
    );
    expect(keys(found.unstated)).toEqual(FEET.filter((key) => key !== 'left posterior-tibial'));
    expect(found.singleArtery).toBeUndefined();
    expect(found.pieces[0]).toBe('left popliteal distal');
  });

  it('are not blamed where a pulse elsewhere shows the artery there open', () => {
    const found = only(limbOf(examined({ 'right femoral': 'normal', 'left femoral': 'absent' }), 'left leg'));
    expect(found.witness && placeKey(found.witness)).toBe('right femoral');
    expect(found.pieces).toEqual([
      'left common-iliac',
      'left external-iliac',
      'left common-femoral proximal',
    ]);
    expect(found.unstated).toEqual([]);
  });

  it('leave the heart as the upper bound when nothing nearer was felt', () => {
    const found = only(limbOf(examined({ 'left femoral': 'absent' }), 'left leg'));
    expect(found.above).toBeUndefined();
    expect(found.witness).toBeUndefined();
    expect(found.pieces[0]).toBe('midline ascending-aorta');
    expect(keys(found.unstated)).toEqual(['midline abdominal-aorta']);
  });

  it('give "felt as far as" while none is weak, never "normal"', () => {
    const rule = limbOf(examined({ 'left femoral': 'normal', 'left popliteal': 'bounding' }), 'left leg');
    expect(rule.outcome).toBe('felt-as-far');
    expect(keys(rule.feltTo)).toEqual(['left popliteal']);
    expect(keys(rule.unstated)).toEqual(['midline abdominal-aorta', ...FEET]);
  });

  it('leave every limb unspoken for in an empty examination', () => {
    const reading = readByRule(emptyExamination());
    for (const limb of LIMBS) expect(reading[limbKey(limb)].outcome).toBe('nothing');
    expect(anythingGraded(emptyExamination())).toBe(false);
    expect(anythingGraded(examined({ 'left radial': { couldNotExamine: 'line-in-place' } }))).toBe(false);
    expect(anythingGraded(examined({ 'left radial': 'absent' }))).toBe(true);
  });
});

describe('one lesion for two limbs', () => {
  it('lies at the fork when both femorals are gone below a felt aorta', () => {
    const reading = readByRule(
      examined({ 'midline abdominal-aorta': 'normal', 'right femoral': 'absent', 'left femoral': 'absent' }),
    );
    for (const side of SIDES) {
      const found = only(reading[`${side} leg`]);
      expect(found.sharedWith).toEqual([`${oppositeSide(side)} leg`]);
      expect(found.sharedBelow.map(keys)).toEqual([[`${oppositeSide(side)} femoral`]]);
      expect(found.sharedPieces).toEqual(['midline infrarenal-aorta distal']);
    }
  });

  it('lies in the brachiocephalic trunk when right arm and right carotid are gone', () => {
    const lost = ['right subclavian', 'right carotid'].flatMap(outwardFrom);
    const reading = readByRule(restNormal(examined(graded(lost, 'absent'))));
    const arm = only(reading['right arm']);
    expect(arm.sharedWith).toEqual(['right head']);
    expect(arm.sharedPieces).toEqual(['right brachiocephalic']);
    expect(only(reading['right head']).sharedWith).toEqual(['right arm']);
  });

  it('is not claimed for the left, whose arteries leave the arch apart', () => {
    const lost = ['left subclavian', 'left carotid'].flatMap(outwardFrom);
    const reading = readByRule(restNormal(examined(graded(lost, 'absent'))));
    expect(only(reading['left arm']).sharedWith).toEqual([]);
    expect(only(reading['left head']).sharedWith).toEqual([]);
  });

  it('names the limb that parts last, not one that shares the arch only', () => {
    const reading = readByRule(
      examined({ 'right femoral': 'absent', 'left femoral': 'absent', 'right subclavian': 'absent' }),
    );
    expect(only(reading['right leg']).sharedWith).toEqual(['left leg']);
    expect(only(reading['right arm']).sharedWith).toEqual(['right leg', 'left leg']);
  });

  it('is not claimed when one leg has a femoral pulse', () => {
    const reading = readByRule(
      examined({ 'right femoral': 'normal', 'right popliteal': 'absent', 'left femoral': 'absent' }),
    );
    expect(only(reading['right leg']).sharedWith).toEqual([]);
    expect(only(reading['left leg']).sharedWith).toEqual([]);
  });
});

describe('several lesions in one limb', () => {
  it('are a narrowing and then a block', () => {
    const rule = limbOf(
      restNormal(
        examined({
          'left femoral': 'reduced',
          ...graded(outwardFrom('left popliteal'), 'absent'),
        }),
      ),
      'left leg',
    );
    expect(rule.lesions.map((one) => [one.kind, one.above && placeKey(one.above), keys(one.below)])).toEqual([
      ['narrowing', 'midline abdominal-aorta', ['left femoral']],
      ['block', 'left femoral', ['left popliteal']],
    ]);
    expect(rule.contradictions).toEqual([]);
  });

  it('are a narrowing above all pulses of the foot and a block of one', () => {
    const rule = limbOf(
      restNormal(examined({ ...graded(FEET, 'reduced'), 'left dorsalis-pedis': 'absent' })),
      'left leg',
    );
    expect(rule.lesions.map((one) => [one.kind, keys(one.below), one.singleArtery ?? false])).toEqual([
      ['narrowing', FEET, false],
      ['block', ['left dorsalis-pedis'], true],
    ]);
  });
});

describe('contradictions', () => {
  it('name a full pulse below one that is not there, and put the block in doubt', () => {
    const rule = limbOf(restNormal(examined({ 'left popliteal': 'absent' })), 'left leg');
    expect(rule.contradictions.map((c) => [placeKey(c.weaker), placeKey(c.stronger)])).toEqual([
      ['left popliteal', 'left posterior-tibial'],
    ]);
    expect(only(rule).contradictedBy).toEqual({ site: 'posterior-tibial', side: 'left' });
    expect(only(rule).refilled).toBeUndefined();
  });

  it('tell weak pulses beyond a block as refilled', () => {
    const rule = limbOf(
      restNormal(
        examined({
          'left popliteal': 'absent',
          ...graded(FEET, 'reduced'),
        }),
      ),
      'left leg',
    );
    expect(only(rule).refilled).toBe(true);
    expect(rule.contradictions.length).toBe(1);
  });

  it('never take a pulse fed through the weak site as proof that the way to it is open', () => {
    const rule = limbOf(
      examined({ 'midline abdominal-aorta': 'normal', 'left femoral': 'absent', 'left popliteal': 'normal' }),
      'left leg',
    );
    expect(only(rule).pieces).toEqual([
      'midline infrarenal-aorta distal',
      'left common-iliac',
      'left external-iliac',
      'left common-femoral proximal',
    ]);
  });

  it('do not make an absent pulse the upper bound of an artery alone', () => {
    const rule = limbOf(
      examined({
        'left popliteal': 'absent',
        'left posterior-tibial': 'reduced',
        'left dorsalis-pedis': 'absent',
      }),
      'left leg',
    );
    const alone = rule.lesions.find((one) => one.singleArtery);
    expect(alone?.above).toBeUndefined();
    expect(alone?.witness && placeKey(alone.witness)).toBe('left posterior-tibial');
  });
});

describe('sameEverywhere', () => {
  const wide = ['right carotid', 'left carotid', 'right femoral', 'left femoral'];
  it('tells that no pulse is felt anywhere, or every one weakly', () => {
    expect(sameEverywhere(readByRule(examined(graded(wide, 'absent'))))).toBe('block');
    expect(sameEverywhere(readByRule(examined(graded(wide, 'reduced'))))).toBe('narrowing');
  });
  it('keeps silent when one pulse is full, when one limb alone was felt, and when nothing was', () => {
    expect(
      sameEverywhere(readByRule(examined({ ...graded(wide, 'absent'), 'right radial': 'normal' }))),
    ).toBeUndefined();
    expect(
      sameEverywhere(readByRule(examined({ ...graded(wide, 'absent'), 'left radial': 'reduced' }))),
    ).toBeUndefined();
    expect(
      sameEverywhere(readByRule(examined(graded(['left femoral', 'left popliteal'], 'absent')))),
    ).toBeUndefined();
    expect(
      sameEverywhere(readByRule(examined(graded(['left femoral', 'right femoral'], 'absent')))),
    ).toBeUndefined();
    expect(
      sameEverywhere(readByRule(examined(graded(['left femoral', 'left carotid'], 'absent')))),
    ).toBeUndefined();
    expect(sameEverywhere(readByRule(emptyExamination()))).toBeUndefined();
    expect(sameEverywhere(readByRule(restNormal(emptyExamination())))).toBeUndefined();
  });
});
