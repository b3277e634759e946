import { describe, expect, it } from 'vitest';
import * as fc from 'fast-check';
import {
  emptyExamination,
  type Examination,
  parseExamination,
  parseExaminationText,
} from '../../../src/examination/index.js';
import { fieldAt, patchAt } from '../../../src/examination/patch.js';

/** An invented record with every part that is not a pulse filled. */
const FULL: Examination = {
  ...emptyExamination(),
  history: {
    leg: {
      left: {
        symptom: 'claudication',
        distance: 150,
        severity: 'moderate',
        onset: 'gradual',
        hours: 2000,
        note: 'uphill',
      },
    },
    arm: { right: { symptom: 'none' } },
    rhythm: 'atrial-fibrillation',
    risks: ['hypertension', 'kidney-disease'],
    operations: 'varicose veins, 1999',
  },
  inspection: {
    leg: {
      left: {
        colour: 'pale',
        temperature: 'cool',
        temperatureLevel: 'mid-calf',
        hair: 'sparse',
        nails: 'thickened',
        muscle: 'wasted',
        oedema: 'none',
        ulcer: 'deep',
        ulcerPlace: 'heel',
        gangrene: 'dry',
        gangreneExtent: 'digits',
        infection: ['redness', 'pus'],
        rednessCm: 1.5,
        deepInfection: true,
        systemic: [],
        refill: 5,
        movement: 'normal',
        sensation: 'digits',
        venousDoppler: 'audible',
        lymphNodes: 'enlarged',
      },
      right: { couldNotExamine: 'dressing' },
    },
  },
  bedside: {
    elevation: { left: { pallor: true, angle: 25, seconds: 34, limit: 20 }, right: { notDone: 'pain' } },
    'arm-stress': { right: { seconds: 180, nothingFelt: true } },
    scalene: { left: { toward: { before: 'normal', during: 'absent', symptoms: [], seconds: 30 } } },
  },
  pressures: {
    unit: 'kPa',
    brachial: { right: 142, left: 'line-in-place' },
    toe: { left: 44 },
    'posterior-tibial': { left: 'incompressible' },
    afterExercise: { completed: false, minutes: 2, 'posterior-tibial': { right: 80 } },
  },
  staging: { leg: { left: { rutherford: { stage: 5, derived: 2, why: 'wound' }, wifi: { stage: 5 } } } },
};

describe('the parts of the record that are not pulses', () => {
  it('come back from text as they went out', () => {
    const parsed = parseExaminationText(JSON.stringify(FULL));
    expect(parsed).toEqual({ ok: true, value: FULL });
  });

  it.each<[string, unknown, (string | number)[]]>([
    [
      'a place without an ulcer',
      { inspection: { leg: { left: { ulcerPlace: 'heel' } } } },
      ['inspection', 'leg', 'left', 'ulcerPlace'],
    ],
    [
      'an extent without gangrene',
      { inspection: { leg: { left: { gangrene: 'none', gangreneExtent: 'heel' } } } },
      ['inspection', 'leg', 'left', 'gangreneExtent'],
    ],
    [
      'a reach without redness',
      { inspection: { leg: { left: { infection: [], rednessCm: 1 } } } },
      ['inspection', 'leg', 'left', 'rednessCm'],
    ],
    [
      'a level of coolness in a warm limb',
      { inspection: { arm: { left: { temperature: 'warm', temperatureLevel: 'wrist' } } } },
      ['inspection', 'arm', 'left', 'temperatureLevel'],
    ],
    [
      'a walking distance without a symptom',
      { history: { leg: { left: { symptom: 'none', distance: 100 } } } },
      ['history', 'leg', 'left', 'distance'],
    ],
    ['the same risk twice', { history: { risks: ['stroke', 'stroke'] } }, ['history', 'risks']],
    [
      'colours and no change',
      { bedside: { 'cold-provocation': { left: { white: 3, noChange: true } } } },
      ['bedside', 'cold-provocation', 'left', 'noChange'],
    ],
    [
      'an angle of 91',
      { bedside: { elevation: { left: { angle: 91 } } } },
      ['bedside', 'elevation', 'left', 'angle'],
    ],
    [
      'a negative time',
      { bedside: { 'colour-return': { left: { seconds: -1 } } } },
      ['bedside', 'colour-return', 'left', 'seconds'],
    ],
    [
      'a refill of 61 s',
      { inspection: { leg: { left: { refill: 61 } } } },
      ['inspection', 'leg', 'left', 'refill'],
    ],
    [
      'a toe level in an arm',
      { inspection: { arm: { left: { temperature: 'cold', temperatureLevel: 'toes' } } } },
      ['inspection', 'arm', 'left', 'temperatureLevel'],
    ],
    ['a test that does not exist', { bedside: { guessing: {} } }, ['bedside', 'guessing']],
    [
      'a category of 7',
      { staging: { leg: { left: { rutherford: { stage: 7 } } } } },
      ['staging', 'leg', 'left', 'rutherford', 'stage'],
    ],
    [
      'a stage of another scheme',
      { staging: { leg: { left: { acute: { stage: 'IV' } } } } },
      ['staging', 'leg', 'left', 'acute', 'stage'],
    ],
    ['a middle leg', { pressures: { toe: { midline: 40 } } }, ['pressures', 'toe', 'midline']],
  ])('%s is refused at its place', (_, part, path) => {
    const parsed = parseExamination({ ...emptyExamination(), ...(part as object) }, { strict: true });
    expect(parsed.ok ? [] : parsed.faults.map((fault) => fault.path)).toEqual([path]);
  });
});

describe('patchAt', () => {
  it('sets deep fields, takes them away again and leaves nothing empty behind', () => {
    const one = patchAt<object>(undefined, ['leg', 'left', 'colour'], 'pale');
    expect(one).toEqual({ leg: { left: { colour: 'pale' } } });
    expect(patchAt(one, ['leg', 'left', 'colour'], undefined)).toBeUndefined();
  });

  it('leaves the given value as it was, and returns it when nothing changes', () => {
    const { inspection } = FULL;
    const before = JSON.stringify(inspection);
    patchAt(inspection, ['leg', 'left', 'colour'], 'blue');
    expect(JSON.stringify(inspection)).toBe(before);
    expect(patchAt(inspection, ['leg', 'left', 'colour'], 'pale')).toBe(inspection);
  });

  it('keeps an empty list, which says that nothing was found', () => {
    expect(patchAt<object>({}, ['infection'], [])).toEqual({ infection: [] });
  });

  it('reads back whatever it wrote', () => {
    const path = fc.array(fc.constantFrom('a', 'b', 'c'), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(fc.array(fc.tuple(path, fc.nat())), path, fc.nat(), (earlier, last, value) => {
        const built = earlier.reduce<object | undefined>((part, [p, v]) => patchAt(part, p, v), undefined);
        expect(fieldAt(patchAt(built, last, value), last)).toBe(value);
      }),
    );
  });
});
