import { describe, expect, it } from 'vitest';
import { emptyExamination, type Examination } from '../../../src/examination/index.js';
import { setLimbOnset, triage } from '../../../src/triage/index.js';

const left = { kind: 'leg', side: 'left' } as const;

function state(history: object, more: Partial<Examination> = {}) {
  const examination = {
    ...emptyExamination(),
    history: { leg: { left: history } },
    ...more,
  } as unknown as Examination;
  const found = triage(examination).limbs.find(({ limb }) => limb.kind === 'leg' && limb.side === 'left');
  return found?.began;
}

describe('the onset of a limb', () => {
  // RCEM Learning: under 14 days, also acute on chronic; thrombosis in place comes on gradually.
  it.each<[object, Examination['onset'], string]>([
    [{ hours: 335 }, undefined, 'acute'],
    [{ hours: 336 }, undefined, 'chronic'],
    [{ hours: 337 }, undefined, 'chronic'],
    [{ hours: 0 }, undefined, 'acute'],
    [{ hours: 24, onset: 'gradual' }, undefined, 'acute'],
    [{ hours: 400, onset: 'sudden' }, undefined, 'chronic'],
    [{ hours: 17_520 }, 'acute', 'unknown'],
    [{ onset: 'sudden' }, 'chronic', 'acute'],
    [{ onset: 'unknown' }, 'chronic', 'unknown'],
    [{ onset: 'gradual' }, undefined, 'unknown'],
    [{ onset: 'gradual' }, 'chronic', 'chronic'],
    [{}, undefined, 'unknown'],
    [{}, 'unknown', 'unknown'],
    [{}, 'acute', 'acute'],
    [{}, 'chronic', 'chronic'],
    [{ hours: 10 }, 'chronic', 'acute'],
    [{ hours: 10, symptom: 'tissue-loss' }, undefined, 'unknown'],
    [{ hours: 10, symptom: 'tissue-loss', onset: 'sudden' }, undefined, 'acute'],
  ])('%j, whole record %s: %s', (history, onset, expected) => {
    expect(state(history, onset ? { onset } : {})?.state).toBe(expected);
  });

  it.each([
    ['2026-05-01T04:30+02:00', 'acute', 6],
    ['2026-04-17T10:30+02:00', 'chronic', 336],
    ['2026-04-17T10:31+02:00', 'acute', 335.98],
    ['2026-05-01T12:30+02:00', 'unknown', undefined],
  ])('began at %s, examined at 10:30 on 1 May: %s', (onsetAt, expected, hours) => {
    const began = state({ onsetAt }, { examinedAt: '2026-05-01T10:30+02:00' });
    expect(began?.state).toBe(expected);
    expect(began?.hours).toBe(hours);
  });

  it('entering an acute onset writes what is new, and clearing the time keeps it', () => {
    const entered = setLimbOnset(emptyExamination(), left, { hours: 5 });
    expect(entered.history?.leg?.left).toEqual({ hours: 5, newComplaint: true });
    const cleared = setLimbOnset(entered, left, { hours: undefined });
    expect(cleared.history?.leg?.left).toEqual({ newComplaint: true });
  });

  it('sudden rest pain stays sudden pain when the onset is taken back', () => {
    const pain: Examination = {
      ...emptyExamination(),
      history: { leg: { left: { symptom: 'rest-pain', onset: 'sudden' } } },
    };
    const cleared = setLimbOnset(pain, left, { onset: undefined });
    expect(cleared.history?.leg?.left).toMatchObject({ suddenPain: true, newComplaint: true });
    expect(triage(cleared).urgency).toBe('now');
  });

  it('an acute onset of the whole record is written into the limb that shows something only', () => {
    const record: Examination = {
      ...emptyExamination(),
      onset: 'acute',
      inspection: { leg: { left: { temperature: 'cold' } } },
    };
    expect(setLimbOnset(record, left, {}).history?.leg?.left).toEqual({ newComplaint: true });
    expect(setLimbOnset(record, { kind: 'leg', side: 'right' }, {}).history).toBeUndefined();
  });
});

describe('the arterial signal at the end of a limb', () => {
  it.each<[Examination['pulses'], string | undefined]>([
    [
      {
        'dorsalis-pedis': { left: { doppler: 'absent' } },
        'posterior-tibial': { left: { doppler: 'absent' } },
      },
      'inaudible',
    ],
    [{ 'dorsalis-pedis': { left: { doppler: 'absent' } } }, undefined],
    [
      {
        'dorsalis-pedis': { left: { doppler: 'absent' } },
        'posterior-tibial': { left: { doppler: 'monophasic' } },
      },
      'audible',
    ],
    [{ 'dorsalis-pedis': { left: { grade: 'reduced' } } }, 'audible'],
    [
      { 'dorsalis-pedis': { left: { grade: 'absent' } }, 'posterior-tibial': { left: { grade: 'absent' } } },
      undefined,
    ],
    [{ 'dorsalis-pedis': { right: { doppler: 'triphasic' } } }, undefined],
    [undefined, undefined],
  ])('%j is %s', (pulses, expected) => {
    const examination: Examination = { ...emptyExamination(), ...(pulses && { pulses }) };
    const found = triage(examination).limbs.find(({ limb }) => limb.kind === 'leg' && limb.side === 'left');
    expect(found?.facts.flow.arterial).toBe(expected);
  });
});
