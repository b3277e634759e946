import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SIDES } from '../../../src/anatomy/index.js';
import { redFlags } from '../../../src/triage/index.js';
import {
  emptyExamination,
  type Examination,
  FONTAINE_STAGES,
  type FontaineStage,
  type LegInspection,
  type LimbHistory,
  type Pressures,
  RUTHERFORD_CATEGORIES,
} from '../../../src/examination/index.js';
import {
  FONTAINE_TO_RUTHERFORD,
  fontaineOf,
  RUTHERFORD_GRADES,
  stageLeg,
  type StagingSettings,
} from '../../../src/staging/index.js';
import { anyRecord } from '../../tools/any-record.js';

/** Skin looked at and found whole. */
const WHOLE: LegInspection = { ulcer: 'none', gangrene: 'none' };

function staged(
  history: LimbHistory,
  inspection: LegInspection = WHOLE,
  pressures: Pressures = {},
  settings: Partial<StagingSettings> = {},
) {
  const examination: Examination = {
    ...emptyExamination(),
    onset: 'chronic',
    history: { leg: { right: history } },
    inspection: { leg: { right: inspection } },
    pressures,
  };
  return stageLeg(examination, 'right', settings);
}

describe('Fontaine stages', () => {
  // Fontaine 1954; 200 m by European convention. Exactly 200 m is assigned by no source: IIb unless chosen otherwise.
  it.each<[LimbHistory, LegInspection, FontaineStage]>([
    [{ symptom: 'none' }, WHOLE, 'I'],
    [{ symptom: 'claudication', distance: 201 }, WHOLE, 'IIa'],
    [{ symptom: 'claudication', distance: 200 }, WHOLE, 'IIb'],
    [{ symptom: 'claudication', distance: 199 }, WHOLE, 'IIb'],
    [{ symptom: 'claudication', severity: 'mild' }, WHOLE, 'IIa'],
    [{ symptom: 'claudication', severity: 'moderate' }, WHOLE, 'IIb'],
    [{ symptom: 'claudication', severity: 'severe' }, WHOLE, 'IIb'],
    [{ symptom: 'rest-pain' }, WHOLE, 'III'],
    [{ symptom: 'rest-pain' }, { ulcer: 'shallow', ulcerCause: 'arterial' } as LegInspection, 'IV'],
    [{ symptom: 'none' }, { gangrene: 'dry' }, 'IV'],
  ])('%j with %j is stage %s', (history, inspection, stage) => {
    expect(staged(history, inspection).fontaine.stage).toBe(stage);
  });

  it('exactly 200 m is IIa by choice, and is marked either way', () => {
    const history: LimbHistory = { symptom: 'claudication', distance: 200 };
    expect(staged(history, WHOLE, {}, { fontaineAt200: 'IIa' }).fontaine).toMatchObject({
      stage: 'IIa',
      notes: ['at-200'],
    });
    expect(staged(history).fontaine.notes).toEqual(['at-200']);
  });

  it('leaves IIa and IIb open while no distance is known, and says that it is missing', () => {
    expect(staged({ symptom: 'claudication' }).fontaine).toMatchObject({
      candidates: ['IIa', 'IIb'],
      missing: ['distance'],
    });
  });

  it('is nothing while neither symptom nor wounds were looked at', () => {
    expect(staged({}, {}).fontaine).toMatchObject({
      candidates: [],
      missing: ['symptom', 'ulcer', 'gangrene'],
    });
  });

  it('without the symptom every stage of symptoms stays open, without a look at the skin IV as well', () => {
    expect(staged({}).fontaine.candidates).toEqual(['I', 'IIa', 'IIb', 'III']);
    expect(staged({ symptom: 'none' }, {}).fontaine.candidates).toEqual(['I', 'IV']);
    expect(staged({ symptom: 'tissue-loss' }, {}).fontaine.candidates).toEqual([...FONTAINE_STAGES]);
  });
});

describe('Rutherford chronic categories', () => {
  const walk = (rest: number | undefined, after: number, completed: boolean): Pressures => ({
    ...(rest !== undefined && { 'posterior-tibial': { right: rest } }),
    afterExercise: { completed, 'posterior-tibial': { right: after } },
  });
  const claudication: LimbHistory = { symptom: 'claudication' };

  // Rutherford 1997: 0 walk completed without such a fall; 1 completed, ankle over 50 afterwards and at least 20 below rest; 3 not completed and under 50; 2 between.
  it.each([
    [100, 51, true, 1],
    [100, 80, true, 1],
    [100, 81, true, 0],
    [140, 150, true, 0],
    [100, 50, true, 2],
    [100, 49, true, 2],
    [100, 49, false, 3],
    [100, 50, false, 2],
    [100, 51, false, 2],
  ])('ankle %i at rest, %i after a walk completed: %s is category %i', (rest, after, completed, category) => {
    expect(staged(claudication, WHOLE, walk(rest, after, completed)).rutherford.stage).toBe(category);
  });

  it('without the same artery at rest leaves 0 and 1 open', () => {
    expect(staged(claudication, WHOLE, walk(undefined, 80, true)).rutherford).toMatchObject({
      candidates: [0, 1],
      missing: ['same-artery'],
    });
  });

  it.each<[LimbHistory, LegInspection, number]>([
    [{ symptom: 'none' }, WHOLE, 0],
    [{ symptom: 'claudication', severity: 'mild' }, WHOLE, 1],
    [{ symptom: 'claudication', severity: 'moderate' }, WHOLE, 2],
    [{ symptom: 'claudication', severity: 'severe' }, WHOLE, 3],
    [{ symptom: 'rest-pain' }, WHOLE, 4],
    [{}, { ulcer: 'deep', ulcerPlace: 'heel', ulcerCause: 'arterial' } as LegInspection, 5],
    [{}, { gangrene: 'dry', gangreneExtent: 'digits' }, 5],
    [{}, { gangrene: 'dry', gangreneExtent: 'forefoot' }, 5],
    [{}, { gangrene: 'dry', gangreneExtent: 'midfoot' }, 6],
    [{}, { gangrene: 'wet', gangreneExtent: 'heel' }, 6],
    [{}, { gangrene: 'wet', gangreneExtent: 'above-foot' }, 6],
  ])('%j with %j is category %i', (history, inspection, category) => {
    expect(staged(history, inspection).rutherford.stage).toBe(category);
  });

  it('leaves 1 to 3 open for claudication of which no more is known', () => {
    expect(staged(claudication).rutherford).toMatchObject({
      candidates: [1, 2, 3],
      missing: ['severity', 'exercise'],
    });
  });

  // Rutherford 1997, pressures at rest: category 4 ankle under 40 or toe under 30; categories 5 and 6 under 60 or under 40.
  it.each<[LimbHistory, Pressures, string]>([
    [{ symptom: 'rest-pain' }, { 'dorsalis-pedis': { right: 39 } }, 'met'],
    [{ symptom: 'rest-pain' }, { 'dorsalis-pedis': { right: 40 } }, 'not-met'],
    [{ symptom: 'rest-pain' }, { 'dorsalis-pedis': { right: 41 } }, 'not-met'],
    [{ symptom: 'rest-pain' }, { toe: { right: 29 } }, 'met'],
    [{ symptom: 'rest-pain' }, { toe: { right: 30 } }, 'not-met'],
    [{ symptom: 'rest-pain' }, { toe: { right: 31 } }, 'not-met'],
    [{ symptom: 'tissue-loss' }, { 'dorsalis-pedis': { right: 59 } }, 'met'],
    [{ symptom: 'tissue-loss' }, { 'dorsalis-pedis': { right: 60 } }, 'not-met'],
    [{ symptom: 'tissue-loss' }, { 'dorsalis-pedis': { right: 61 } }, 'not-met'],
    [{ symptom: 'tissue-loss' }, { toe: { right: 39 } }, 'met'],
    [{ symptom: 'tissue-loss' }, { toe: { right: 40 } }, 'not-met'],
    [{ symptom: 'tissue-loss' }, { toe: { right: 41 } }, 'not-met'],
    [{ symptom: 'rest-pain' }, {}, 'not-measured'],
  ])('%j with %j: printed pressures %s', (history, pressures, objective) => {
    const wound: LegInspection =
      history.symptom === 'tissue-loss' ? { gangrene: 'dry', gangreneExtent: 'digits' } : WHOLE;
    expect(staged(history, wound, pressures).rutherford.objective).toBe(objective);
  });

  // Fontaine 1954 is clinical; Rutherford 1997 prints the pressures beside the categories.
  it.each([
    [39, true],
    [40, false],
    [41, false],
  ])('an ankle pressure of %i stands beside category 0 and moves nothing: %s', (mmHg, told) => {
    const { rutherford, fontaine } = staged({ symptom: 'none' }, WHOLE, {
      'posterior-tibial': { right: mmHg },
    });
    expect([rutherford.stage, fontaine.stage]).toEqual([0, 'I']);
    expect(rutherford.beside.length > 0).toBe(told);
    expect(rutherford.notes.includes('pressures-of-rest-pain')).toBe(told);
    expect(fontaine.notes.includes('pressures-of-rest-pain')).toBe(told);
  });

  // Rutherford 1997: grades 0, I, I, I, II, III, III.
  it('prints the Roman grade of each category', () => {
    expect(RUTHERFORD_CATEGORIES.map((category) => RUTHERFORD_GRADES[category])).toEqual([
      '0',
      'I',
      'I',
      'I',
      'II',
      'III',
      'III',
    ]);
  });
});

// TASC II, from memory: I 0, IIa 1, IIb 2 and 3, III 4, IV 5 and 6.
describe('mapping between the two chronic schemes', () => {
  it.each([
    [0, 'I'],
    [1, 'IIa'],
    [2, 'IIb'],
    [3, 'IIb'],
    [4, 'III'],
    [5, 'IV'],
    [6, 'IV'],
  ] as const)('category %i is stage %s, and back', (category, stage) => {
    expect(fontaineOf(category)).toBe(stage);
    expect(FONTAINE_TO_RUTHERFORD[stage]).toContain(category);
  });

  it('gives every category to exactly one stage', () => {
    const all = FONTAINE_STAGES.flatMap((stage) => FONTAINE_TO_RUTHERFORD[stage]);
    expect([...all].sort()).toEqual([...RUTHERFORD_CATEGORIES]);
  });

  it('says so where distance and severity lead the two schemes apart', () => {
    expect(staged({ symptom: 'claudication', distance: 300, severity: 'severe' }).schemesDiffer).toBe(true);
    expect(staged({ symptom: 'claudication', distance: 100, severity: 'severe' }).schemesDiffer).toBe(false);
    expect(staged({}).schemesDiffer).toBe(false);
  });
});

describe('a stage overruled by the clinician', () => {
  it('stands beside the derived one, which stays', () => {
    const examination: Examination = {
      ...emptyExamination(),
      history: { leg: { left: { symptom: 'claudication', distance: 300 } } },
      inspection: { leg: { left: WHOLE } },
      staging: {
        leg: { left: { fontaine: { stage: 'IIb', derived: 'IIa', why: 'stops for breath first' } } },
      },
    };
    expect(stageLeg(examination, 'left').fontaine).toMatchObject({
      stage: 'IIa',
      overrule: { stage: 'IIb', derived: 'IIa', why: 'stops for breath first' },
    });
  });
});

describe('limb threat in a disease that is not atherosclerosis', () => {
  // Mills 2014; Global Vascular Guidelines 2019 (both from memory).
  it.each(['vasculitis', 'buerger', 'vasospasm'] as const)('%s is named beside the stage', (mechanism) => {
    const examination: Examination = {
      ...emptyExamination(),
      context: { mechanism },
      history: { leg: { left: { symptom: 'rest-pain' } } },
      inspection: { leg: { left: { ulcer: 'none', gangrene: 'none' } } },
    };
    const { fontaine, rutherford } = stageLeg(examination, 'left');
    expect(fontaine).toMatchObject({ stage: 'III' });
    expect(fontaine.notes).toContain('not-atherosclerotic');
    expect(rutherford.notes).toContain('not-atherosclerotic');
    const { context: _context, ...other } = examination;
    expect(stageLeg(other, 'left').fontaine.notes).not.toContain('not-atherosclerotic');
  });
});

describe('an acutely ischaemic leg', () => {
  // Rutherford 1997 classes acute and chronic ischaemia apart; the chronic guidelines ask for two weeks of rest pain (from memory).
  const leg = (onset: 'acute' | 'chronic'): Examination => ({
    ...emptyExamination(),
    onset,
    history: { leg: { left: { symptom: 'rest-pain' } } },
    inspection: { leg: { left: { ulcer: 'none', gangrene: 'none', colour: 'pale' } } },
  });

  it('has it said beside every chronic stage that the acute class counts', () => {
    const acute = stageLeg(leg('acute'), 'left');
    expect(acute.acute.applies).toBe('yes');
    for (const stage of [acute.fontaine, acute.rutherford]) expect(stage.notes).toContain('acute-limb');
    const chronic = stageLeg(leg('chronic'), 'left');
    for (const stage of [chronic.fontaine, chronic.rutherford]) {
      expect(stage.stage).toBeDefined();
      expect(stage.notes).not.toContain('acute-limb');
    }
  });

  it('is the same for the stage of the foot and the chronic ones, whatever is recorded', () => {
    let acute = 0;
    fc.assert(
      fc.property(anyRecord, fc.constantFrom(...SIDES), (examination, side) => {
        const { fontaine, rutherford, wifi, acute: emergency } = stageLeg(examination, side);
        for (const { candidates, notes } of [fontaine, rutherford]) {
          const told = notes.includes('acute-limb');
          if (candidates.length === 0) expect(told).toBe(false);
          else if (wifi.excluded !== 'amputated') expect(told).toBe(wifi.excluded === 'acute');
          if (candidates.length > 0 && emergency.applies === 'yes') expect(told).toBe(true);
          if (told) acute++;
        }
      }),
    );
    expect(acute).toBeGreaterThan(0);
  });
});

describe('the volume curve at the ankle', () => {
  const leg = (shape: 'normal' | 'notch-lost' | 'rounded' | 'flat'): Examination => ({
    ...emptyExamination(),
    context: { diabetes: false },
    history: { leg: { left: { symptom: 'rest-pain' } } },
    onset: 'chronic',
    inspection: { leg: { left: { ulcer: 'none', gangrene: 'none' } } },
    pressures: { volumeCurve: { left: shape } },
  });

  // Rounded or flat: common practice, no source; flat is a limit of the Global Vascular Guidelines 2019 (from memory).
  it.each([
    ['normal', 'untested', []],
    ['notch-lost', 'untested', []],
    ['rounded', 'proven', ['rounded']],
    ['flat', 'proven', ['flat']],
  ] as const)('%s: disease %s', (shape, disease, shapes) => {
    const record = leg(shape);
    expect(stageLeg(record, 'left').fontaine.disease).toBe(disease);
    const [flag] = redFlags(record);
    const curves = flag?.because.flatMap((ground) => (ground.code === 'volume-curve' ? [ground.shape] : []));
    expect([...new Set(curves)]).toEqual(shapes);
  });

  it('that is flat is in the range of limb threat by the Global Vascular Guidelines alone', () => {
    const { history: _history, ...painless } = leg('flat');
    expect(redFlags(painless).map(({ code }) => code)).toEqual(['threatening-pressure']);
    expect(redFlags({ ...painless, method: { threat: 'parc-2015' } })).toEqual([]);
  });
});
