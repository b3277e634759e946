import { describe, expect, it } from 'vitest';
import { emptyExamination, type Examination } from '../../../src/examination/index.js';
import { armsDoubt, methodOf } from '../../../src/pressures/index.js';
import { legFindings } from '../../../src/staging/index.js';
import {
  flowHours,
  readCompression,
  readPathway,
  triage,
  type TriageChoices,
  triageSettings,
} from '../../../src/triage/index.js';

const of = (parts: object) => ({ ...emptyExamination(), ...parts }) as unknown as Examination;
const leg = { pressures: { brachial: { left: 140 }, 'dorsalis-pedis': { left: 112 } } };
const cold = { colour: 'pale', temperature: 'cold' };

/* The defaults: beside the tables. Here only that each is read where it is said to be. */
describe('limits that a hospital sets', () => {
  it('of arterial disease decide what proves it', () => {
    const state = (own: TriageChoices) => legFindings(of(leg), 'left', { triage: own }).disease.state;
    expect(state({})).toBe('proven');
    expect(state({ disease: { ankleIndexTo: 0.75 } })).not.toBe('proven');
  });

  it('of severe disease decide which diabetic ulcer is an emergency', () => {
    const ulcer = of({
      ...leg,
      context: { diabetes: true },
      inspection: { leg: { left: { ulcer: 'shallow', ulcerPlace: 'digits' } } },
    });
    const codes = (severeIndexBelow: number) =>
      triage(ulcer, { triage: { diabeticUlcer: 'severe-disease', disease: { severeIndexBelow } } }).flags.map(
        ({ code }) => code,
      );
    expect(codes(0.6)).not.toContain('diabetic-foot-emergency');
    expect(codes(0.85)).toContain('diabetic-foot-emergency');
    // Severe too where the toe is under 40 mmHg; it needs no arm.
    const byToe = (toe: number) =>
      triage(
        { ...ulcer, pressures: { toe: { left: toe } } },
        { triage: { diabeticUlcer: 'severe-disease' } },
      );
    expect([39, 40].map((toe) => byToe(toe).urgency)).toEqual(['now', 'today']);
  });

  it('of doubt about both arms reach pressures and compression', () => {
    const low = of({
      history: { risks: ['hypertension'] },
      pressures: { brachial: { right: 104, left: 106 }, 'dorsalis-pedis': { left: 110 } },
    });
    const doubts = (lowBelow: number) =>
      armsDoubt(low, methodOf(low), triageSettings({ armsDoubt: { lowBelow } }).armsDoubt).length;
    expect([doubts(100), doubts(110)]).toEqual([0, 1]);
    const grounds = (lowBelow: number) =>
      readCompression(low, 'left', { triage: { armsDoubt: { lowBelow } } }).grounds.map(({ code }) => code);
    expect(grounds(100)).not.toContain('arms-doubted');
    expect(grounds(110)).toContain('arms-doubted');
  });

  it('of hours for flow stand in the flag, and never in its urgency', () => {
    const acute = of({
      inspection: { leg: { left: { ...cold, sensation: 'beyond-digits', movement: 'weak' } } },
    });
    const [flag] = triage(acute, { triage: { flowWithin: { IIb: { to: 4 } } } }).flags;
    expect(flag).toMatchObject({ urgency: 'now', flowWithin: [0, 4] });
    expect(flowHours('III', triageSettings())).toBeUndefined();
  });

  it('of how many limbs make it the circulation', () => {
    const two = of({ inspection: { leg: { left: cold, right: cold } } });
    const codes = (limbs: number) =>
      triage(two, { triage: { poorFrom: { limbs } } }).flags.map(({ code }) => code);
    expect(codes(3)).not.toContain('circulation');
    expect(codes(2)).toContain('circulation');
  });

  it('are taken from a pathway, and what is no limit is named', () => {
    const { pathway, faults } = readPathway({
      settings: { triage: { disease: { toeBelow: 40, toeBelov: 3 }, poorFrom: { graft: -1 } } },
    });
    expect(pathway.settings?.triage).toEqual({ disease: { toeBelow: 40 }, poorFrom: {} });
    expect(faults).toEqual([
      expect.stringMatching(/settings\.triage\.disease\.toeBelov/),
      expect.stringMatching(/settings\.triage\.poorFrom\.graft/),
    ]);
  });
});
