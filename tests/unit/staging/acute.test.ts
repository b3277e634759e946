import { describe, expect, it } from 'vitest';
import {
  ACUTE_CLASSES,
  type AcuteClass,
  emptyExamination,
  type Examination,
  MOVEMENTS,
  type Movement,
  SENSATIONS,
  type Sensation,
  VENOUS_SIGNALS,
  type VenousSignal,
} from '../../../src/examination/index.js';
import { ACUTE_ROWS, ACUTE_TIMING, limbFindings, stageArm, stageLeg } from '../../../src/staging/index.js';

interface Signs {
  sensation?: Sensation;
  movement?: Movement;
  arterial?: 'audible' | 'inaudible';
  venous?: VenousSignal;
}

/** An acute left leg with these signs. */
function leg({ sensation, movement, arterial, venous }: Signs, more: Partial<Examination> = {}): Examination {
  const doppler = arterial && {
    left: { doppler: arterial === 'audible' ? ('monophasic' as const) : ('absent' as const) },
  };
  return {
    ...emptyExamination(),
    onset: 'acute',
    pulses: {
      femoral: { left: { grade: 'absent' } },
      ...(doppler && { 'dorsalis-pedis': doppler, 'posterior-tibial': doppler }),
    },
    inspection: {
      leg: {
        left: {
          ...(sensation && { sensation }),
          ...(movement && { movement }),
          ...(venous && { venousDoppler: venous }),
        },
      },
    },
    ...more,
  };
}
const acute = (signs: Signs, more?: Partial<Examination>) => stageLeg(leg(signs, more), 'left').acute;

describe('acute classes by feeling, power and both Doppler signals', () => {
  // Rutherford 1997, the four printed rows.
  it.each<[Required<Signs>, AcuteClass]>([
    [{ sensation: 'normal', movement: 'normal', arterial: 'audible', venous: 'audible' }, 'I'],
    [{ sensation: 'normal', movement: 'normal', arterial: 'inaudible', venous: 'audible' }, 'IIa'],
    [{ sensation: 'digits', movement: 'normal', arterial: 'inaudible', venous: 'audible' }, 'IIa'],
    [{ sensation: 'digits', movement: 'normal', arterial: 'audible', venous: 'audible' }, 'IIa'],
    [{ sensation: 'beyond-digits', movement: 'weak', arterial: 'inaudible', venous: 'audible' }, 'IIb'],
    [{ sensation: 'beyond-digits', movement: 'weak', arterial: 'audible', venous: 'audible' }, 'IIb'],
    [{ sensation: 'lost', movement: 'paralysed', arterial: 'inaudible', venous: 'inaudible' }, 'III'],
  ])('%j is class %s', (signs, stage) => {
    expect(acute(signs)).toMatchObject({ applies: 'yes', stage, atLeast: stage, missing: [] });
  });

  it('every combination of the four signs is one printed row or no single class, never a guess', () => {
    for (const sensation of SENSATIONS)
      for (const movement of MOVEMENTS)
        for (const arterial of ['audible', 'inaudible'] as const)
          for (const venous of VENOUS_SIGNALS) {
            const found = acute({ sensation, movement, arterial, venous });
            const rows = ACUTE_ROWS.rows.filter(
              (row) =>
                row.sensation.includes(sensation) &&
                row.movement.includes(movement) &&
                row.arterial.includes(arterial) &&
                row.venous.includes(venous),
            );
            if (rows.length === 0) {
              expect(found.stage).toBeUndefined();
              expect(found.notes).toContain('no-single-class');
            } else {
              expect(rows.map((row) => row.class)).toContain(found.stage);
            }
          }
  });

  // Split rule, from memory: any weakness, or sensory loss beyond the toes, is at least IIb.
  it.each<[Signs]>([
    [{ sensation: 'normal', movement: 'weak', arterial: 'audible', venous: 'audible' }],
    [{ sensation: 'digits', movement: 'weak', arterial: 'inaudible', venous: 'audible' }],
    [{ sensation: 'beyond-digits', movement: 'normal', arterial: 'audible', venous: 'audible' }],
    [{ sensation: 'lost', movement: 'paralysed', arterial: 'inaudible', venous: 'audible' }],
    [{ sensation: 'lost', movement: 'weak', arterial: 'inaudible', venous: 'inaudible' }],
  ])('%j fits no row but is at least IIb', (signs) => {
    const found = acute(signs);
    expect(found.stage).toBeUndefined();
    expect(found.atLeast).toBe('IIb');
  });

  it.each<[Signs, AcuteClass[]]>([
    [{ movement: 'normal' }, ['I', 'IIa']],
    [{ arterial: 'inaudible' }, ['IIa', 'IIb', 'III']],
    [{ arterial: 'audible', sensation: 'normal' }, ['I']],
    [{ movement: 'weak' }, ['IIb']],
    [{ sensation: 'digits' }, ['IIa']],
    [{ venous: 'audible' }, ['I', 'IIa', 'IIb']],
    [{ sensation: 'lost', movement: 'paralysed' }, ['IIb', 'III']],
    [{ sensation: 'lost', movement: 'paralysed', arterial: 'inaudible' }, ['IIb', 'III']],
    [{ venous: 'inaudible' }, ['IIb', 'III']],
  ])('with only %j known, %j stay open', (signs, candidates) => {
    const found = acute(signs);
    expect(found.candidates).toEqual(candidates);
    expect(found.missing.length).toBeGreaterThan(0);
  });

  it('gives no class with none of the four signs, and names all four', () => {
    expect(acute({})).toMatchObject({
      applies: 'yes',
      candidates: [],
      missing: ['sensation', 'movement', 'arterial', 'venous'],
    });
  });

  it('rest pain alone raises to IIb only when that is chosen', () => {
    const examination = leg(
      { sensation: 'normal', movement: 'normal', arterial: 'audible', venous: 'audible' },
      { history: { leg: { left: { symptom: 'rest-pain' } } } },
    );
    expect(stageLeg(examination, 'left').acute.stage).toBe('I');
    expect(stageLeg(examination, 'left', { restPainRaises: true }).acute.atLeast).toBe('IIb');
  });

  it('an arm is classed by the same signs, with a note that they were described for the leg', () => {
    const found = stageArm(
      {
        ...emptyExamination(),
        onset: 'acute',
        inspection: { arm: { right: { sensation: 'beyond-digits', movement: 'weak' } } },
      },
      'right',
    );
    expect(found).toMatchObject({ stage: 'IIb', notes: ['described-for-leg'] });
  });

  // ACC/AHA 2016: I within 6 to 24 h, II within 6 h; III primary amputation considered.
  it('names the hours within which flow should be restored', () => {
    expect(ACUTE_CLASSES.map((stage) => ACUTE_TIMING[stage].hours)).toEqual([[6, 24], [0, 6], [0, 6], null]);
  });
});

describe('whether a limb is acute', () => {
  const hours = (value: number | undefined, onset?: 'sudden' | 'gradual', whole?: Examination['onset']) =>
    limbFindings(
      {
        ...emptyExamination(),
        ...(whole && { onset: whole }),
        history: {
          leg: {
            left: {
              symptom: 'rest-pain',
              ...(value !== undefined && { hours: value }),
              ...(onset && { onset }),
            },
          },
        },
      },
      { kind: 'leg', side: 'left' },
    ).acute;

  // RCEM Learning: under two weeks.
  it.each([
    [335, 'yes'],
    [336, 'no'],
    [337, 'no'],
    [0, 'yes'],
  ])('%i hours: %s', (value, expected) => expect(hours(value, 'sudden', 'acute')).toBe(expected));

  it.each<[number | undefined, 'sudden' | 'gradual' | undefined, Examination['onset'], string]>([
    [undefined, undefined, undefined, 'unknown'],
    [undefined, undefined, 'unknown', 'unknown'],
    [undefined, undefined, 'acute', 'yes'],
    [undefined, undefined, 'chronic', 'no'],
    [undefined, 'gradual', 'acute', 'no'],
    [undefined, 'sudden', 'chronic', 'yes'],
    [10, undefined, 'chronic', 'yes'],
  ])('%s hours, onset %s, whole examination %s: %s', (value, onset, whole, expected) => {
    expect(hours(value, onset, whole)).toBe(expected);
  });

  it('a limb with nothing wrong is not acute, whatever the onset given for the examination', () => {
    const healthy: Examination = {
      ...emptyExamination(),
      onset: 'acute',
      pulses: { femoral: { right: { grade: 'normal' } } },
    };
    expect(limbFindings(healthy, { kind: 'leg', side: 'right' }).acute).toBe('no');
  });
});

describe('the arterial signal at the end of a limb', () => {
  const signal = (pulses: Examination['pulses']) =>
    limbFindings({ ...emptyExamination(), ...(pulses && { pulses }) }, { kind: 'leg', side: 'left' })
      .arterial;

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
  ])('%j is %s', (pulses, expected) => expect(signal(pulses)).toBe(expected));
});
