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
import { stageArm, stageLeg } from '../../../src/staging/index.js';
import { DEFAULT_TRIAGE_SETTINGS, flowHours } from '../../../src/triage/index.js';

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

  it('every combination of the four signs is one class, and III only with all four signs of it', () => {
    for (const sensation of SENSATIONS)
      for (const movement of MOVEMENTS)
        for (const arterial of ['audible', 'inaudible'] as const)
          for (const venous of VENOUS_SIGNALS) {
            const found = acute({ sensation, movement, arterial, venous });
            const lost =
              sensation === 'lost' &&
              movement === 'paralysed' &&
              arterial === 'inaudible' &&
              venous === 'inaudible';
            expect(found.candidates).toHaveLength(1);
            expect(found.stage === 'III').toBe(lost);
          }
  });

  // Split rule, from memory: any weakness, or sensory loss beyond the toes, is at least IIb; told where no row is printed.
  it.each<[Signs, boolean]>([
    [{ sensation: 'normal', movement: 'weak', arterial: 'audible', venous: 'audible' }, true],
    [{ sensation: 'digits', movement: 'weak', arterial: 'inaudible', venous: 'audible' }, false],
    [{ sensation: 'beyond-digits', movement: 'normal', arterial: 'audible', venous: 'audible' }, true],
    [{ sensation: 'lost', movement: 'paralysed', arterial: 'inaudible', venous: 'audible' }, false],
    [{ sensation: 'lost', movement: 'weak', arterial: 'inaudible', venous: 'inaudible' }, false],
  ])('%j is IIb; fits no printed class: %s', (signs, none) => {
    const found = acute(signs);
    expect(found.stage).toBe('IIb');
    expect(found.notes.includes('no-single-class')).toBe(none);
  });

  // Rutherford 1997: movement parts IIa from IIb, feeling and both signals part the rest; what was not tested stays open.
  it.each<[Signs, AcuteClass[]]>([
    [{ movement: 'normal' }, ['I', 'IIa', 'IIb']],
    [{ arterial: 'inaudible' }, ['IIa', 'IIb', 'III']],
    [{ arterial: 'audible' }, ['I', 'IIa', 'IIb']],
    [{ arterial: 'audible', sensation: 'normal' }, ['I', 'IIa', 'IIb']],
    [{ movement: 'weak' }, ['IIb']],
    [{ sensation: 'digits' }, ['IIa', 'IIb']],
    [{ sensation: 'digits', movement: 'normal' }, ['IIa']],
    [{ venous: 'audible' }, ['I', 'IIa', 'IIb']],
    [{ sensation: 'lost', movement: 'paralysed' }, ['IIb', 'III']],
    [{ sensation: 'lost', movement: 'paralysed', arterial: 'inaudible' }, ['IIb', 'III']],
    [{ venous: 'inaudible' }, ['IIa', 'IIb', 'III']],
  ])('with only %j known, %j stay open', (signs, candidates) => {
    const found = acute(signs);
    expect(found.candidates).toEqual(candidates);
    expect(found.missing.length).toBeGreaterThan(0);
  });

  it('with none of the four signs every class is open, and all four are named', () => {
    expect(acute({})).toMatchObject({
      applies: 'yes',
      candidates: ['I', 'IIa', 'IIb', 'III'],
      missing: ['sensation', 'movement', 'arterial', 'venous'],
    });
  });

  it('continuing rest pain keeps IIa open, is ignored, or means IIb, as chosen', () => {
    const examination = leg(
      { sensation: 'normal', movement: 'normal', arterial: 'audible', venous: 'audible' },
      { history: { leg: { left: { symptom: 'rest-pain' } } } },
    );
    const by = (restPain: 'opens-IIa' | 'ignored' | 'at-least-IIb') =>
      stageLeg(examination, 'left', { triage: { acuteClass: { restPain } } }).acute.candidates;
    expect(stageLeg(examination, 'left').acute.candidates).toEqual(['I', 'IIa']);
    expect(by('opens-IIa')).toEqual(['I', 'IIa']);
    expect(by('ignored')).toEqual(['I']);
    expect(by('at-least-IIb')).toEqual(['IIb']);
  });

  it('for a limb of unknown onset the class stands for the case that it is acute, and the onset is missing', () => {
    const { onset: _onset, ...unknown } = leg({ sensation: 'digits' });
    const found = stageLeg(unknown, 'left').acute;
    expect(found).toMatchObject({ applies: 'unknown', candidates: ['IIa', 'IIb'] });
    expect(found.missing).toContain('onset');
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
    expect(ACUTE_CLASSES.map((stage) => flowHours(stage, DEFAULT_TRIAGE_SETTINGS))).toEqual([
      [6, 24],
      [0, 6],
      [0, 6],
      undefined,
    ]);
  });
});
