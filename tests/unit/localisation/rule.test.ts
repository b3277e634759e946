import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Level,
  type LimbKey,
  limbKey,
  LIMBS,
  type LimbKind,
  oppositeSide,
  pieceAbove,
  pieceFromKey,
  piecesTo,
  type Place,
  placeKey,
  PULSE_PLACES,
  type PulseSiteId,
  type Side,
  SIDES,
  stationsOf,
} from '../../../src/anatomy/index.js';
import {
  emptyExamination,
  type Examination,
  type Grade,
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
import { examined, mirrored } from '../../tools/examinations.js';

type PulsePlace = Place<PulseSiteId>;

/** One row of the worked sequence: with this pulse lost, where the block lies. `S` stands for the side. */
interface Row {
  readonly kind: LimbKind;
  /** Pulses lost: the first station without a pulse and all beyond it. */
  readonly lost: readonly string[];
  readonly above?: string;
  readonly below: readonly string[];
  readonly pieces: readonly string[];
  readonly levels: readonly Level[];
  readonly single?: true;
}

/**
 * The block at every level of every limb while all other pulses are felt. The rule is common practice, no source; the arteries between two sites
 * follow the vessel table of HRA-VCCF (CC BY 4.0), cut at the sites.
 */
const ROWS: readonly Row[] = [
  {
    kind: 'leg',
    lost: ['S femoral', 'S popliteal', 'S posterior-tibial', 'S dorsalis-pedis'],
    above: 'midline abdominal-aorta',
    below: ['S femoral'],
    pieces: ['S common-iliac', 'S external-iliac', 'S common-femoral proximal'],
    levels: ['aorto-iliac', 'femoro-popliteal'],
  },
  {
    kind: 'leg',
    lost: ['S popliteal', 'S posterior-tibial', 'S dorsalis-pedis'],
    above: 'S femoral',
    below: ['S popliteal'],
    pieces: ['S common-femoral distal', 'S superficial-femoral', 'S popliteal proximal'],
    levels: ['femoro-popliteal'],
  },
  {
    kind: 'leg',
    lost: ['S posterior-tibial', 'S dorsalis-pedis'],
    above: 'S popliteal',
    below: ['S posterior-tibial', 'S dorsalis-pedis'],
    pieces: [
      'S popliteal distal',
      'S tibioperoneal-trunk',
      'S posterior-tibial proximal',
      'S anterior-tibial',
      'S dorsalis-pedis proximal',
    ],
    levels: ['femoro-popliteal', 'infrapopliteal'],
  },
  {
    kind: 'leg',
    lost: ['S posterior-tibial'],
    above: 'S popliteal',
    below: ['S posterior-tibial'],
    pieces: ['S tibioperoneal-trunk', 'S posterior-tibial proximal'],
    levels: ['infrapopliteal'],
    single: true,
  },
  {
    kind: 'leg',
    lost: ['S dorsalis-pedis'],
    above: 'S popliteal',
    below: ['S dorsalis-pedis'],
    pieces: ['S anterior-tibial', 'S dorsalis-pedis proximal'],
    levels: ['infrapopliteal'],
    single: true,
  },
  {
    kind: 'arm',
    lost: ['S subclavian', 'S axillary', 'S brachial', 'S radial', 'S ulnar'],
    below: ['S subclavian'],
    pieces: ['S subclavian proximal'],
    levels: ['arm-inflow'],
  },
  {
    kind: 'arm',
    lost: ['S axillary', 'S brachial', 'S radial', 'S ulnar'],
    above: 'S subclavian',
    below: ['S axillary'],
    pieces: ['S subclavian distal', 'S axillary proximal'],
    levels: ['arm-inflow', 'axillo-brachial'],
  },
  {
    kind: 'arm',
    lost: ['S brachial', 'S radial', 'S ulnar'],
    above: 'S axillary',
    below: ['S brachial'],
    pieces: ['S axillary distal', 'S brachial proximal'],
    levels: ['axillo-brachial'],
  },
  {
    kind: 'arm',
    lost: ['S radial', 'S ulnar'],
    above: 'S brachial',
    below: ['S radial', 'S ulnar'],
    pieces: ['S brachial distal', 'S radial proximal', 'S ulnar proximal'],
    levels: ['axillo-brachial', 'forearm-hand'],
  },
  {
    kind: 'arm',
    lost: ['S radial'],
    above: 'S brachial',
    below: ['S radial'],
    pieces: ['S radial proximal'],
    levels: ['forearm-hand'],
    single: true,
  },
  {
    kind: 'arm',
    lost: ['S ulnar'],
    above: 'S brachial',
    below: ['S ulnar'],
    pieces: ['S ulnar proximal'],
    levels: ['forearm-hand'],
    single: true,
  },
  {
    kind: 'head',
    lost: ['S carotid', 'S superficial-temporal'],
    below: ['S carotid'],
    pieces: ['S common-carotid proximal'],
    levels: ['carotid'],
  },
  {
    kind: 'head',
    lost: ['S superficial-temporal'],
    above: 'S carotid',
    below: ['S superficial-temporal'],
    pieces: ['S common-carotid distal', 'S external-carotid', 'S superficial-temporal proximal'],
    levels: ['carotid'],
  },
];

function all(keys: readonly string[], grade: Grade): Record<string, Grade> {
  return Object.fromEntries(keys.map((key) => [key, grade]));
}

function limbOf(examination: Examination, limb: LimbKey): LimbRule {
  return readByRule(examination)[limb];
}

function only(rule: LimbRule): RuleLesion {
  expect(rule.lesions.length).toBe(1);
  return rule.lesions[0] as RuleLesion;
}

const keys = (places: readonly Place[]): string[] => places.map(placeKey);

describe('the worked sequence', () => {
  for (const side of SIDES) {
    const of = (text: string) => text.replace('S ', `${side} `);
    for (const row of ROWS) {
      const lost = row.lost.map(of);
      for (const [grade, kind] of [
        ['absent', 'block'],
        ['reduced', 'narrowing'],
      ] as const) {
        it(`puts a ${kind} with ${lost.join(', ')} ${grade} between its bounds`, () => {
          const reading = readByRule(restNormal(examined(all(lost, grade))));
          const rule = reading[`${side} ${row.kind}`];
          const found = only(rule);
          expect(rule.outcome).toBe('lesion');
          expect(found.kind).toBe(kind);
          expect(found.above && placeKey(found.above)).toBe(row.above && of(row.above));
          expect(keys(found.below)).toEqual(row.below.map(of));
          expect(found.pieces).toEqual(row.pieces.map(of));
          expect(found.levels).toEqual(row.levels);
          expect(found.singleArtery).toBe(row.single);
          expect(found.unstated).toEqual([]);
          expect(found.sharedWith).toEqual([]);
          expect(rule.contradictions).toEqual([]);
          for (const limb of LIMBS.map(limbKey).filter((key) => key !== `${side} ${row.kind}`)) {
            expect(reading[limb].outcome, limb).toBe('normal');
          }
        });
      }
    }
  }

  it('puts a block above the aorta beyond the arch, for both legs, when the arms have pulses', () => {
    const legs = SIDES.flatMap((side) =>
      ['femoral', 'popliteal', 'posterior-tibial', 'dorsalis-pedis'].map((s) => `${side} ${s}`),
    );
    const reading = readByRule(restNormal(examined(all(['midline abdominal-aorta', ...legs], 'absent'))));
    for (const limb of ['right leg', 'left leg'] as const) {
      const found = only(reading[limb]);
      expect(keys(found.below)).toEqual(['midline abdominal-aorta']);
      expect(found.pieces).toEqual([
        'midline thoracic-aorta',
        'midline suprarenal-aorta',
        'midline infrarenal-aorta proximal',
      ]);
      expect(found.levels).toEqual(['central', 'aorto-iliac']);
    }
    expect(reading['right arm'].outcome).toBe('normal');
  });
});

describe('sites without a grade', () => {
  it('widen the interval and are named', () => {
    const found = only(
      limbOf(
        examined({
          'left femoral': 'normal',
          'left posterior-tibial': 'absent',
          'left dorsalis-pedis': 'absent',
        }),
        'left leg',
      ),
    );
    expect(keys(found.unstated)).toEqual(['left popliteal']);
    expect(found.pieces).toEqual([
      'left common-femoral distal',
      'left superficial-femoral',
      'left popliteal proximal',
      'left popliteal distal',
      'left tibioperoneal-trunk',
      'left posterior-tibial proximal',
      'left anterior-tibial',
      'left dorsalis-pedis proximal',
    ]);
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

  it('name the twin that was not felt', () => {
    const found = only(
      limbOf(examined({ 'left popliteal': 'normal', 'left posterior-tibial': 'absent' }), 'left leg'),
    );
    expect(keys(found.unstated)).toEqual(['left dorsalis-pedis']);
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
    expect(keys(rule.unstated)).toEqual([
      'midline abdominal-aorta',
      'left posterior-tibial',
      'left dorsalis-pedis',
    ]);
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
    const right = [
      'subclavian',
      'axillary',
      'brachial',
      'radial',
      'ulnar',
      'carotid',
      'superficial-temporal',
    ];
    const reading = readByRule(
      restNormal(
        examined(
          all(
            right.map((site) => `right ${site}`),
            'absent',
          ),
        ),
      ),
    );
    const arm = only(reading['right arm']);
    expect(arm.sharedWith).toEqual(['right head']);
    expect(arm.sharedPieces).toEqual(['right brachiocephalic']);
    expect(only(reading['right head']).sharedWith).toEqual(['right arm']);
  });

  it('is not claimed for the left, whose arteries leave the arch apart', () => {
    const left = ['subclavian', 'axillary', 'brachial', 'radial', 'ulnar', 'carotid', 'superficial-temporal'];
    const reading = readByRule(
      restNormal(
        examined(
          all(
            left.map((site) => `left ${site}`),
            'absent',
          ),
        ),
      ),
    );
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
          'left popliteal': 'absent',
          'left posterior-tibial': 'absent',
          'left dorsalis-pedis': 'absent',
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

  it('are a narrowing above both twins and a block of one', () => {
    const rule = limbOf(
      restNormal(examined({ 'left posterior-tibial': 'reduced', 'left dorsalis-pedis': 'absent' })),
      'left leg',
    );
    expect(rule.lesions.map((one) => [one.kind, keys(one.below), one.singleArtery ?? false])).toEqual([
      ['narrowing', ['left posterior-tibial', 'left dorsalis-pedis'], false],
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
          'left posterior-tibial': 'reduced',
          'left dorsalis-pedis': 'reduced',
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

  it('do not make an absent pulse the upper bound of a twin', () => {
    const rule = limbOf(
      examined({
        'left popliteal': 'absent',
        'left posterior-tibial': 'reduced',
        'left dorsalis-pedis': 'absent',
      }),
      'left leg',
    );
    const twin = rule.lesions.find((one) => one.singleArtery);
    expect(twin?.above).toBeUndefined();
    expect(twin?.witness && placeKey(twin.witness)).toBe('left posterior-tibial');
  });
});

describe('sameEverywhere', () => {
  const wide = ['right carotid', 'left carotid', 'right femoral', 'left femoral'];
  it('tells that no pulse is felt anywhere, or every one weakly', () => {
    expect(sameEverywhere(readByRule(examined(all(wide, 'absent'))))).toBe('block');
    expect(sameEverywhere(readByRule(examined(all(wide, 'reduced'))))).toBe('narrowing');
  });
  it('keeps silent when one pulse is full, when one limb alone was felt, and when nothing was', () => {
    expect(
      sameEverywhere(readByRule(examined({ ...all(wide, 'absent'), 'right radial': 'normal' }))),
    ).toBeUndefined();
    expect(
      sameEverywhere(readByRule(examined({ ...all(wide, 'absent'), 'left radial': 'reduced' }))),
    ).toBeUndefined();
    expect(
      sameEverywhere(readByRule(examined(all(['left femoral', 'left popliteal'], 'absent')))),
    ).toBeUndefined();
    expect(
      sameEverywhere(readByRule(examined(all(['left femoral', 'right femoral'], 'absent')))),
    ).toBeUndefined();
    expect(sameEverywhere(readByRule(emptyExamination()))).toBeUndefined();
    expect(sameEverywhere(readByRule(restNormal(emptyExamination())))).toBeUndefined();
  });
});

const STRENGTH: Record<Grade, number> = { absent: 0, reduced: 1, normal: 2, bounding: 2 };
const strength = (e: Examination, at: PulsePlace) => {
  const grade = pulseAt(e, at)?.grade;
  return grade === undefined ? undefined : STRENGTH[grade];
};

describe('for any examination', () => {
  it('a bounding pulse counts as a full one', () => {
    fc.assert(
      fc.property(gradedExamination, (examination) => {
        const plain = PULSE_PLACES.reduce(
          (e, at) => (pulseAt(e, at)?.grade === 'bounding' ? setPulse(e, at, { grade: 'normal' }) : e),
          examination,
        );
        expect(readByRule(plain)).toEqual(readByRule(examination));
      }),
    );
  });

  it('no artery is blamed that leads to a pulse better than the lesion lets through', () => {
    fc.assert(
      fc.property(gradedExamination, (examination) => {
        for (const rule of Object.values(readByRule(examination))) {
          for (const one of rule.lesions) {
            const limit = one.kind === 'block' ? 0 : 1;
            const gates = one.below.map((at) => pieceAbove(at as PulsePlace).key);
            for (const at of PULSE_PLACES) {
              const way = piecesTo(pieceAbove(at)).map((piece) => piece.key);
              if ((strength(examination, at) ?? -1) <= limit || gates.some((gate) => way.includes(gate)))
                continue;
              expect(one.pieces.filter((piece) => way.includes(piece))).toEqual([]);
            }
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  it('every lesion ends at a weak pulse, lies on the way to it, and begins below what was felt', () => {
    fc.assert(
      fc.property(gradedExamination, (examination) => {
        for (const rule of Object.values(readByRule(examination))) {
          for (const one of rule.lesions) {
            const worst = one.below.map((at) => strength(examination, at as PulsePlace) as number);
            expect(Math.max(...worst)).toBe(one.kind === 'block' ? 0 : 1);
            const ways = one.below.flatMap((at) => piecesTo(pieceAbove(at as PulsePlace)));
            for (const key of one.pieces) expect(ways).toContain(pieceFromKey(key));
            for (const at of one.below) expect(one.pieces).toContain(pieceAbove(at as PulsePlace).key);
            if (one.above)
              expect(strength(examination, one.above) as number).toBeGreaterThan(Math.max(...worst));
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  it('a limb has a lesion exactly when a graded pulse of it is weak', () => {
    fc.assert(
      fc.property(gradedExamination, (examination) => {
        const reading = readByRule(examination);
        for (const limb of LIMBS) {
          const grades = stationsOf(limb)
            .flat()
            .map((at) => strength(examination, at));
          const weak = grades.some((value) => value !== undefined && value < 2);
          expect(reading[limbKey(limb)].outcome === 'lesion').toBe(weak);
          expect(reading[limbKey(limb)].unstated.length).toBe(
            grades.filter((value) => value === undefined).length,
          );
        }
      }),
    );
  });

  it('swapping left and right swaps the answer, but for the brachiocephalic trunk', () => {
    const swap = (text: string) => text.replace(/^(right|left)/, (side) => oppositeSide(side as Side));
    const flat = (rule: LimbRule, turn: (text: string) => string) => ({
      outcome: rule.outcome,
      feltTo: keys(rule.feltTo).map(turn),
      unstated: keys(rule.unstated).map(turn),
      contradictions: rule.contradictions.map((c) => [turn(placeKey(c.weaker)), turn(placeKey(c.stronger))]),
      lesions: rule.lesions.map((one) => ({
        kind: one.kind,
        above: one.above && turn(placeKey(one.above)),
        below: keys(one.below).map(turn),
        pieces: one.pieces.filter((piece) => !piece.endsWith('brachiocephalic')).map(turn),
        unstated: keys(one.unstated).map(turn),
        single: one.singleArtery,
        doubt: one.contradictedBy && turn(placeKey(one.contradictedBy)),
      })),
    });
    fc.assert(
      fc.property(gradedExamination, (examination) => {
        const reading = readByRule(examination);
        const other = readByRule(mirrored(examination));
        for (const limb of LIMBS) {
          const here = flat(reading[limbKey(limb)], (text) => text);
          const there = flat(other[limbKey({ ...limb, side: oppositeSide(limb.side) })], swap);
          expect(there).toEqual(here);
        }
      }),
      { numRuns: 200 },
    );
  });
});
