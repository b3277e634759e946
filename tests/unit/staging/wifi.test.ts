import { describe, expect, it } from 'vitest';
import {
  emptyExamination,
  type Examination,
  type LegInspection,
  type Pressures,
  WIFI_GRADES,
} from '../../../src/examination/index.js';
import {
  amputationRisk,
  combineWifi,
  infectionGrade,
  ischaemiaGrade,
  legFindings,
  revascularisationBenefit,
  stageLeg,
  WIFI_RISKS,
  woundGrade,
} from '../../../src/staging/index.js';
import { derive } from '../../../src/staging/derived.js';

const leg = (inspection: LegInspection, more: Partial<Examination> = {}) =>
  legFindings({ ...emptyExamination(), ...more, inspection: { leg: { left: inspection } } }, 'left');

/*
 * Mills 2014, tables 4 and 5, laid out as printed: one block an ischaemia grade, one row a wound grade, one column a
 * foot infection grade. From memory; two independent recalls agree in all 128 cells.
 */
const AMPUTATION_PRINTED = [
  // ischaemia 0   wound 0            1              2              3
  ['VL VL L M', 'VL VL L M', 'L L M H', 'M M H H'],
  ['VL L M H', 'VL L M H', 'M M H H', 'H H H H'],
  ['L L M H', 'L M H H', 'M H H H', 'H H H H'],
  ['L M M H', 'M M H H', 'H H H H', 'H H H H'],
];
const BENEFIT_PRINTED = [
  ['VL VL VL VL', 'VL VL VL VL', 'VL VL VL VL', 'VL VL VL VL'],
  ['VL L L M', 'L M M M', 'M M H H', 'M M M H'],
  ['L L M M', 'M H H H', 'H H H H', 'H H H H'],
  ['M H H H', 'H H H H', 'H H H H', 'H H H H'],
];
const LONG: Record<string, string> = { VL: 'very-low', L: 'low', M: 'moderate', H: 'high' };

const CELLS = WIFI_GRADES.flatMap((wound) =>
  WIFI_GRADES.flatMap((ischaemia) =>
    WIFI_GRADES.map((infection) => {
      const at = (table: string[][]) => LONG[table[ischaemia]?.[wound]?.split(' ')[infection] ?? ''];
      return { wound, ischaemia, infection, risk: at(AMPUTATION_PRINTED), benefit: at(BENEFIT_PRINTED) };
    }),
  ),
);

describe('wound, ischaemia and foot infection: all 64 combinations of both tables (from memory)', () => {
  it.each(CELLS)('W$wound I$ischaemia fI$infection: risk $risk, benefit $benefit', (cell) => {
    const { wound, ischaemia, infection, risk, benefit } = cell;
    const found = amputationRisk(wound, ischaemia, infection);
    expect(found.risk).toBe(risk);
    expect(found.stage).toBe(WIFI_RISKS.indexOf(found.risk) + 1);
    expect(revascularisationBenefit(wound, ischaemia, infection)).toBe(benefit);
  });

  // Counts of the two recalled grids.
  it('holds 6, 10, 16 and 32 cells of stages 1 to 4', () => {
    const counts = [1, 2, 3, 4].map(
      (stage) =>
        CELLS.filter((c) => amputationRisk(c.wound, c.ischaemia, c.infection).stage === stage).length,
    );
    expect(counts).toEqual([6, 10, 16, 32]);
  });

  it('holds 17, 5, 13 and 29 cells of very low, low, moderate and high benefit', () => {
    const counts = WIFI_RISKS.map(
      (risk) =>
        CELLS.filter((c) => revascularisationBenefit(c.wound, c.ischaemia, c.infection) === risk).length,
    );
    expect(counts).toEqual([17, 5, 13, 29]);
  });

  it('a worse grade never lowers the stage', () => {
    for (const { wound: w, ischaemia: i, infection: f } of CELLS) {
      const { stage } = amputationRisk(w, i, f);
      for (const next of [
        [Math.min(3, w + 1), i, f],
        [w, Math.min(3, i + 1), f],
        [w, i, Math.min(3, f + 1)],
      ] as [typeof w, typeof i, typeof f][]) {
        expect(amputationRisk(...next).stage).toBeGreaterThanOrEqual(stage);
      }
    }
  });
});

// Mills 2014, grades of wound.
describe('woundGrade', () => {
  it.each<[LegInspection, number]>([
    [{ ulcer: 'none', gangrene: 'none' }, 0],
    [{ ulcer: 'shallow', ulcerPlace: 'digits', gangrene: 'none' }, 1],
    [{ ulcer: 'shallow', ulcerPlace: 'shin', gangrene: 'none' }, 1],
    [{ ulcer: 'shallow', ulcerPlace: 'heel', gangrene: 'none' }, 2],
    [{ ulcer: 'deep', ulcerPlace: 'forefoot', gangrene: 'none' }, 2],
    [{ ulcer: 'deep', ulcerPlace: 'heel', gangrene: 'none' }, 3],
    [{ ulcer: 'extensive', ulcerPlace: 'midfoot', gangrene: 'none' }, 3],
    [{ ulcer: 'none', gangrene: 'dry', gangreneExtent: 'digits' }, 2],
    [{ ulcer: 'shallow', ulcerPlace: 'digits', gangrene: 'wet', gangreneExtent: 'digits' }, 2],
    [{ ulcer: 'none', gangrene: 'dry', gangreneExtent: 'forefoot' }, 3],
    [{ ulcer: 'none', gangrene: 'dry', gangreneExtent: 'midfoot' }, 3],
    [{ ulcer: 'none', gangrene: 'wet', gangreneExtent: 'heel' }, 3],
    [{ ulcer: 'none', gangrene: 'wet', gangreneExtent: 'above-foot' }, 3],
  ])('%j is grade %i', (inspection, grade) => {
    expect(woundGrade(leg(inspection))).toMatchObject({ stage: grade, missing: [] });
  });

  it('leaves grades 2 and 3 open while nobody said how far gangrene reaches', () => {
    const grade = woundGrade(leg({ ulcer: 'none', gangrene: 'dry' }));
    expect(grade.stage).toBeUndefined();
    expect(grade).toMatchObject({ candidates: [2, 3], missing: ['gangreneExtent'] });
  });

  it('is nothing while neither ulcer nor gangrene was looked for', () => {
    expect(woundGrade(leg({}))).toMatchObject({ candidates: [], missing: ['ulcer', 'gangrene'] });
  });
});

// Mills 2014, grades of ischaemia: index 0.80, 0.60, 0.40; ankle 100, 70, 50; toe or oxygen pressure 60, 40, 30.
describe('ischaemiaGrade, each bound at, just under and just over', () => {
  const grade = (pressures: Pressures, at70?: 1 | 2) =>
    ischaemiaGrade(leg({}, { pressures }), { ischaemiaAt70: at70 ?? 2 });

  it.each([
    [60, 0],
    [61, 0],
    [59, 1],
    [40, 1],
    [41, 1],
    [39, 2],
    [30, 2],
    [31, 2],
    [29, 3],
    [0, 3],
  ])('toe pressure of %i is grade %i, and so is an oxygen pressure', (mmHg, expected) => {
    expect(grade({ toe: { left: mmHg } }).stage).toBe(expected);
    expect(grade({ tcpo2: { left: mmHg } }).stage).toBe(expected);
  });

  // With the ankle alone and no arm, only the absolute pressure counts. 70 mmHg is printed in two rows.
  it.each([
    [101, 0],
    [100, 1],
    [99, 1],
    [71, 1],
    [70, 2],
    [69, 2],
    [51, 2],
    [50, 2],
    [49, 3],
  ])('ankle pressure of %i is grade %i', (mmHg, expected) => {
    expect(grade({ 'posterior-tibial': { left: mmHg } }).stage).toBe(expected);
  });

  it('an ankle pressure of exactly 70 can be given to the milder row', () => {
    expect(grade({ 'posterior-tibial': { left: 70 } }, 1).stage).toBe(1);
    expect(grade({ 'posterior-tibial': { left: 70 } }).notes).toContain('at-70');
  });

  // Arms of 250 keep the ankle pressure above 100 so that the index decides.
  it.each([
    [202, 0],
    [200, 0],
    [197, 1],
    [150, 1],
    [147, 2],
    [112, 2],
  ])('an ankle of %i over an arm of 250 is grade %i', (mmHg, expected) => {
    expect(grade({ brachial: { right: 250, left: 240 }, 'dorsalis-pedis': { left: mmHg } }).stage).toBe(
      expected,
    );
  });

  it.each([
    [0.4, 2],
    [0.39, 3],
  ])('an index of %f is grade %i', (index, expected) => {
    expect(
      grade({ brachial: { right: 300, left: 300 }, 'dorsalis-pedis': { left: index * 300 } }).stage,
    ).toBe(expected);
  });

  it('the toe pressure decides against the ankle index, and says so (from memory)', () => {
    const found = grade({ brachial: { right: 150 }, 'dorsalis-pedis': { left: 130 }, toe: { left: 28 } });
    expect(found).toMatchObject({ stage: 3, notes: ['toe-decides'] });
  });

  it('the worse of index and ankle pressure counts when they differ', () => {
    const found = grade({ brachial: { right: 90 }, 'dorsalis-pedis': { left: 68 } });
    expect(found.stage).toBe(2);
    expect(found.notes).toContain('worse-counts');
  });

  // Index above 1.3: toe or oxygen pressure instead (from memory).
  it.each([
    [130, 0],
    [131, undefined],
  ])('an ankle of %i over 100 gives grade %s', (mmHg, expected) => {
    const found = grade({ brachial: { right: 100, left: 98 }, 'dorsalis-pedis': { left: mmHg } });
    expect(found.stage).toBe(expected);
    if (expected === undefined)
      expect(found).toMatchObject({ missing: ['toe'], notes: ['incompressible'], candidates: [0, 1, 2, 3] });
  });

  it('is nothing without pressures', () => {
    expect(grade({})).toMatchObject({ candidates: [], missing: ['pressures'] });
  });
});

// Mills 2014, grades of infection (IDSA): two local signs; redness over 0.5 to 2 cm; over 2 cm or deep; two systemic signs (from memory).
describe('infectionGrade', () => {
  const skinOnly = { deepInfection: false } as unknown as LegInspection;
  it.each<[LegInspection, number]>([
    [{ infection: [] }, 0],
    [{ infection: ['warmth'] }, 0],
    [{ ...skinOnly, infection: ['warmth', 'pus'], systemic: [] }, 1],
    [{ infection: ['redness', 'warmth'], rednessCm: 0.5, systemic: [] }, 0],
    [{ ...skinOnly, infection: ['redness', 'warmth'], rednessCm: 0.6, systemic: [] }, 1],
    [{ ...skinOnly, infection: ['redness', 'warmth'], rednessCm: 1.9, systemic: [] }, 1],
    // IWGDF/IDSA 2023: from 2 cm; in 2012 beyond 2 cm.
    [{ infection: ['redness', 'warmth'], rednessCm: 2, systemic: [] }, 2],
    [{ infection: ['redness', 'warmth'], rednessCm: 2.1, systemic: [] }, 2],
    [{ infection: ['tenderness', 'pus'], deepInfection: true, systemic: [] }, 2],
    [{ ...skinOnly, infection: ['pus', 'swelling'], systemic: ['temperature'] }, 1],
    [{ infection: ['pus', 'swelling'], systemic: ['temperature', 'heart-rate'] }, 3],
    [{ infection: [], systemic: ['temperature', 'heart-rate'] }, 0],
  ])('%j is grade %i', (inspection, grade) => {
    expect(infectionGrade(leg(inspection)).stage).toBe(grade);
  });

  it('exactly 2 cm can be given to the milder grade, as in 2012', () => {
    const examination: Examination = {
      ...emptyExamination(),
      inspection: {
        leg: { left: { ...skinOnly, infection: ['redness', 'warmth'], rednessCm: 2, systemic: [] } },
      },
    };
    const mild = { triage: { infection: { atModerate: 'mild' } } } as const;
    expect(infectionGrade(legFindings(examination, 'left', mild)).stage).toBe(1);
  });

  it.each<[LegInspection, number[], string[]]>([
    [{ ...skinOnly, infection: ['redness', 'pus'], systemic: [] }, [1, 2], ['rednessCm']],
    [{ infection: ['warmth', 'pus'], systemic: [] }, [1, 2], ['deepInfection']],
    [{ infection: ['warmth', 'pus'] }, [1, 2, 3], ['deepInfection', 'systemic']],
    [{ deepInfection: true }, [2, 3], ['systemic']],
  ])('%j leaves %j open: what was not stated is not no', (inspection, candidates, missing) => {
    expect(infectionGrade(leg(inspection))).toMatchObject({ candidates, missing });
  });
});

describe('ischaemia by the ankle where diabetes was not asked for', () => {
  const graded = (diabetes: boolean | undefined, index: number): ReturnType<typeof ischaemiaGrade> =>
    ischaemiaGrade(
      leg(
        {},
        {
          ...(diabetes !== undefined && { context: { diabetes } }),
          pressures: { brachial: { left: 120, right: 120 }, 'posterior-tibial': { left: 120 * index } },
        },
      ),
    );

  // The unanswered question is never "no": what the grade rests on is said. Common practice, no source.
  it.each([0.95, 0.7, 0.5])('the grade of an index of %d stands, and what it rests on is said', (index) => {
    expect(graded(undefined, index).stage).toBe(graded(false, index).stage);
    expect(graded(undefined, index).notes).toContain('diabetes-unasked');
    expect(graded(false, index).notes).not.toContain('diabetes-unasked');
    expect(graded(true, index).notes).toContain('diabetes-ankle');
    expect(graded(true, index).notes).not.toContain('diabetes-unasked');
  });

  it('the worst grade can be no worse, so nothing is said', () => {
    expect(graded(undefined, 0.3)).toMatchObject({ stage: 3, notes: [] });
  });
});

describe('putting the three grades together', () => {
  it('while one grade is open every stage it allows stays open, and the missing grade is named', () => {
    const { stage } = combineWifi(derive([1]), derive([]), derive([0]));
    expect(stage).toMatchObject({ candidates: [1, 2, 3], missing: ['ischaemia'] });
  });

  it('a clinician’s own grade counts for the stage, and both stay', () => {
    const examination: Examination = {
      ...emptyExamination(),
      history: { leg: { left: { symptom: 'tissue-loss', onset: 'gradual' } } },
      context: { diabetes: false },
      inspection: {
        leg: { left: { ulcer: 'shallow', ulcerPlace: 'digits', gangrene: 'none', infection: [] } },
      },
      pressures: { toe: { left: 45 } },
      staging: { leg: { left: { wound: { stage: 2, derived: 1, why: 'probes to bone' } } } },
    };
    const { wifi } = stageLeg(examination, 'left');
    expect(wifi.wound).toMatchObject({ stage: 1, overrule: { stage: 2, why: 'probes to bone' } });
    expect(wifi.stage.stage).toBe(amputationRisk(2, 1, 0).stage);
    expect(wifi).toMatchObject({ risk: 'moderate', benefit: 'moderate', applies: true });
  });

  // Mills 2014, exclusions.
  it.each<[Partial<Examination>, string]>([
    [{ onset: 'acute', pulses: { popliteal: { left: { grade: 'absent' } } } }, 'acute'],
    [{ context: { mechanism: 'vasculitis' } }, 'vasculitis'],
    [{ context: { mechanism: 'buerger' } }, 'buerger'],
    [{ context: { mechanism: 'vasospasm' } }, 'vasospasm'],
    [{ context: { mechanism: 'injury' } }, 'injury'],
    [{ context: { legAmputation: { left: 'below-knee' } } }, 'amputated'],
  ])('%j is outside the scheme: %s', (more, excluded) => {
    const { wifi } = stageLeg(
      { ...emptyExamination(), inspection: { leg: { left: { ulcer: 'deep' } } }, ...more },
      'left',
    );
    expect(wifi).toMatchObject({ applies: false, excluded });
  });
});
