import { describe, expect, it } from 'vitest';
import {
  emptyExamination,
  type Examination,
  METHODS,
  parseExamination,
} from '../../../src/examination/index.js';
import { DEFAULT_PRESSURE_SETTINGS, methodOf } from '../../../src/pressures/index.js';
import { stageLeg } from '../../../src/staging/index.js';
import {
  DEFAULT_TRIAGE_SETTINGS,
  OPEN_CHOICES,
  redFlags,
  triage,
  triageSettings,
} from '../../../src/triage/index.js';

/** A leg with a chronic wound and a toe pressure that one criterion calls threatening and the other does not. */
const wound: Examination = {
  ...emptyExamination(),
  onset: 'chronic',
  inspection: { leg: { left: { ulcer: 'shallow', ulcerPlace: 'digits', ulcerCause: 'arterial' } } },
  context: { diabetes: false },
  pressures: { brachial: { right: 60, left: 60 }, toe: { left: 45 } },
};
const threats = (examination: Examination, settings = {}) =>
  redFlags(examination, settings).flatMap(({ because }) => because.filter(({ code }) => code === 'threat'));

describe('the method of a record', () => {
  it('has a name for every setting, the default among them', () => {
    expect(Object.keys(METHODS).sort()).toEqual(Object.keys(DEFAULT_PRESSURE_SETTINGS).sort());
    for (const [name, words] of Object.entries(METHODS))
      expect(words).toContain(DEFAULT_PRESSURE_SETTINGS[name as keyof typeof METHODS]);
  });

  it('is read back as it was written, and unknown names are carried', () => {
    const record = { ...wound, method: { threat: 'parc-2015', arm: 'mean' } };
    expect(parseExamination(record, { strict: true })).toMatchObject({ ok: true, value: record });
    const later = { ...wound, method: { threat: 'gvg-2031', arm: 'mean' } };
    expect(parseExamination(later)).toMatchObject({
      ok: true,
      value: { method: { arm: 'mean' }, carried: [{ path: ['method', 'threat'], value: 'gvg-2031' }] },
    });
  });

  // PARC 2015: toe below 50 with tissue loss; GVG 2019: below 30.
  it('decides flags, unless the caller chose otherwise', () => {
    expect(threats(wound)).toEqual([]);
    const parc: Examination = { ...wound, method: { threat: 'parc-2015' } };
    expect(threats(parc)).toMatchObject([{ measure: 'toe', value: 45, limit: 50 }]);
    expect(threats(parc, { pressures: { threat: 'gvg-2019' } })).toEqual([]);
    expect(methodOf(parc).threat).toBe('parc-2015');
  });

  it('decides stages: the lower ankle pressure gives the worse grade', () => {
    const legs: Examination = {
      ...emptyExamination(),
      context: { diabetes: false },
      pressures: { 'dorsalis-pedis': { left: 120 }, 'posterior-tibial': { left: 60 } },
    };
    const grade = (examination: Examination) => stageLeg(examination, 'left').wifi.ischaemia.candidates;
    expect(grade(legs)).toEqual([0]);
    expect(grade({ ...legs, method: { ankle: 'lower' } })).toEqual([2]);
  });
});

describe('the choices a clinician should sign', () => {
  const at = (path: string, value: unknown) =>
    path
      .split('.')
      .reverse()
      .reduce<unknown>((inner, key) => ({ [key]: inner }), value) as object;

  it.each(OPEN_CHOICES.map(({ setting, otherwise }) => [setting, otherwise] as const))(
    '%s has a default and takes %j',
    (setting, otherwise) => {
      const read = (settings: unknown) =>
        setting.split('.').reduce<unknown>((s, key) => (s as Record<string, unknown>)[key], settings);
      for (const value of otherwise) {
        expect(read(DEFAULT_TRIAGE_SETTINGS)).not.toBe(value);
        expect(read(triageSettings(at(setting, value)))).toBe(value);
      }
    },
  );

  it('numb toes of years with absent pulses are Today, or Now by choice', () => {
    const numb: Examination = {
      ...emptyExamination(),
      onset: 'chronic',
      inspection: { leg: { left: { sensation: 'digits', temperature: 'warm', colour: 'normal' } } },
      pulses: {
        'dorsalis-pedis': { left: { grade: 'absent' } },
        'posterior-tibial': { left: { grade: 'absent' } },
      },
    };
    expect(triage(numb).urgency).toBe('today');
    expect(triage(numb, { triage: { chronicNumbness: 'now' } }).urgency).toBe('now');
  });
});
