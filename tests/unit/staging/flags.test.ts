import { describe, expect, it } from 'vitest';
import * as fc from 'fast-check';
import {
  emptyExamination,
  type Examination,
  type LegInspection,
  type Pressures,
} from '../../../src/examination/index.js';
import { FLAG_CODES, type FlagCode, redFlags, type Urgency, URGENCIES } from '../../../src/staging/index.js';

const with_ = (more: Partial<Examination>): Examination => ({ ...emptyExamination(), ...more });
const leg = (inspection: LegInspection, more: Partial<Examination> = {}) =>
  with_({ inspection: { leg: { left: inspection } }, ...more });
const codes = (examination: Examination) => redFlags(examination).map(({ code, urgency }) => [code, urgency]);
const silent = {
  'dorsalis-pedis': { left: { doppler: 'absent' } },
  'posterior-tibial': { left: { doppler: 'absent' } },
} as const;
const pulseless = { femoral: { left: { grade: 'absent' } } } as const;

/** Each flag once, with the least that raises it. Which findings count: the signs named by the classes and schemes above; urgencies: common practice, no source. */
const CASES: [FlagCode, Urgency, Examination][] = [
  [
    'acute-limb-irreversible',
    'now',
    leg(
      { sensation: 'lost', movement: 'paralysed', venousDoppler: 'inaudible' },
      { onset: 'acute', pulses: silent },
    ),
  ],
  ['acute-limb-threatened', 'now', leg({ movement: 'weak' }, { onset: 'acute', pulses: pulseless })],
  ['acute-limb-threatened', 'now', leg({ sensation: 'digits' }, { onset: 'acute' })],
  ['acute-limb-threatened', 'now', with_({ onset: 'acute', pulses: silent })],
  ['acute-limb', 'now', with_({ onset: 'acute', pulses: pulseless })],
  [
    'acute-limb',
    'today',
    leg(
      { sensation: 'normal', movement: 'normal', venousDoppler: 'audible' },
      { onset: 'acute', pulses: { ...pulseless, 'dorsalis-pedis': { left: { doppler: 'monophasic' } } } },
    ),
  ],
  [
    'injured-limb-pulseless',
    'now',
    with_({
      context: { mechanism: 'injury', injury: { left: 'knee' } },
      onset: 'chronic',
      pulses: pulseless,
    }),
  ],
  ['dissection', 'now', with_({ context: { mechanism: 'dissection' } })],
  ['wet-gangrene', 'now', leg({ gangrene: 'wet' }, { onset: 'chronic' })],
  ['spreading-infection', 'now', leg({ infection: ['pus'], systemic: ['temperature', 'breathing'] })],
  ['fixed-mottling', 'now', leg({ colour: 'fixed-mottled' }, { onset: 'chronic' })],
  ['tense-muscle', 'now', leg({ muscle: 'tense' })],
  ['expansile-mass', 'today', with_({ pulses: { 'abdominal-aorta': { midline: { expansile: true } } } })],
  ['expansile-mass', 'now', with_({ onset: 'acute', pulses: { popliteal: { left: { expansile: true } } } })],
  ['weakness', 'today', leg({ movement: 'weak' }, { onset: 'chronic' })],
  ['weakness', 'now', leg({ movement: 'weak' }, { pulses: pulseless })],
  ['sensory-loss', 'today', leg({ sensation: 'digits' }, { onset: 'chronic' })],
  ['sensory-loss', 'now', leg({ sensation: 'digits', temperature: 'cold' })],
  ['no-doppler', 'today', with_({ onset: 'chronic', pulses: silent })],
  ['no-doppler', 'now', with_({ pulses: silent })],
  ['deep-infection', 'today', leg({ deepInfection: true })],
  [
    'chronic-limb-threat',
    'soon',
    with_({ onset: 'chronic', history: { leg: { left: { symptom: 'rest-pain' } } } }),
  ],
  ['chronic-limb-threat', 'soon', leg({ ulcer: 'shallow' }, { onset: 'chronic' })],
  ['threatening-pressure', 'soon', with_({ pressures: { toe: { left: 29 } } })],
];

describe('redFlags', () => {
  it.each(CASES)('%s, %s', (code, urgency, examination) => {
    const flag = redFlags(examination).find((f) => f.code === code);
    expect(flag?.urgency).toBe(urgency);
    expect(flag?.grounds.length).toBeGreaterThan(0);
  });

  it('every kind of flag is raised by one of the cases above', () => {
    expect(new Set(CASES.map(([code]) => code))).toEqual(new Set(FLAG_CODES));
  });

  it('an empty or normal examination raises none', () => {
    expect(redFlags(emptyExamination())).toEqual([]);
    const normal = leg(
      {
        colour: 'normal',
        temperature: 'warm',
        movement: 'normal',
        sensation: 'normal',
        ulcer: 'none',
        gangrene: 'none',
        infection: [],
      },
      {
        onset: 'acute',
        history: { leg: { left: { symptom: 'none' } } },
        pressures: {
          brachial: { right: 120, left: 122 },
          'posterior-tibial': { right: 130, left: 128 },
          toe: { left: 100 },
        },
      },
    );
    expect(redFlags(normal)).toEqual([]);
  });

  it('claudication and reduced pulses alone raise none', () => {
    const examination = with_({
      onset: 'chronic',
      history: { leg: { left: { symptom: 'claudication', distance: 150 } } },
      pulses: { popliteal: { left: { grade: 'absent' } }, femoral: { left: { grade: 'reduced' } } },
    });
    expect(redFlags(examination)).toEqual([]);
  });

  it('puts the most urgent first', () => {
    const flags = redFlags(
      leg(
        { gangrene: 'wet', gangreneExtent: 'digits', sensation: 'digits' },
        { onset: 'chronic', pulses: { 'abdominal-aorta': { midline: { expansile: true } } } },
      ),
    );
    const order = flags.map(({ urgency }) => URGENCIES.indexOf(urgency));
    expect(order).toEqual([...order].sort());
    expect(flags[0]?.code).toBe('wet-gangrene');
  });

  it('names the limb, what raised it and what is missing', () => {
    const [flag] = redFlags(leg({ movement: 'weak' }, { onset: 'acute', pulses: pulseless }));
    expect(flag).toMatchObject({
      limb: { kind: 'leg', side: 'left' },
      grounds: [
        { code: 'movement', params: { value: 'weak' } },
        { code: 'pulse-absent', params: { place: 'left femoral' } },
      ],
      missing: ['sensation', 'arterial', 'venous'],
      hours: [0, 6],
    });
  });

  it('interrupts with the very finding that makes a limb threatened, not before', () => {
    const steps: [Partial<Examination>, boolean][] = [
      [{ pulses: pulseless }, false],
      [{ pulses: pulseless, history: { leg: { left: { symptom: 'rest-pain', onset: 'sudden' } } } }, true],
    ];
    for (const [step, flagged] of steps) {
      expect(codes(with_(step)).some(([code]) => code === 'acute-limb')).toBe(flagged);
    }
  });

  // PARC 2015: toe below 30 with rest pain, below 50 with tissue loss; ankle below 50 and below 70.
  it.each<[Pressures, LegInspection, boolean]>([
    [{ toe: { left: 30 } }, {}, false],
    [{ toe: { left: 29 } }, {}, true],
    [{ 'dorsalis-pedis': { left: 50 } }, {}, false],
    [{ 'dorsalis-pedis': { left: 49 } }, {}, true],
    [{ toe: { left: 50 } }, { ulcer: 'shallow' }, false],
    [{ toe: { left: 49 } }, { ulcer: 'shallow' }, true],
    [{ 'dorsalis-pedis': { left: 70 } }, { ulcer: 'shallow' }, false],
    [{ 'dorsalis-pedis': { left: 69 } }, { ulcer: 'shallow' }, true],
  ])('%j with %j counts as a threatening pressure: %s', (pressures, inspection, counts) => {
    const flags = redFlags(leg(inspection, { onset: 'chronic', pressures }));
    expect(flags.some(({ grounds }) => grounds.some(({ code }) => code.endsWith('-threat')))).toBe(counts);
  });

  it('does not repeat as single signs what the acute flag already says', () => {
    expect(codes(leg({ movement: 'weak', sensation: 'digits' }, { onset: 'acute', pulses: silent }))).toEqual(
      [['acute-limb-threatened', 'now']],
    );
  });

  it('an old wound on one leg is not taken for the acute trouble of the other', () => {
    const examination = with_({
      onset: 'acute',
      pulses: pulseless,
      inspection: { leg: { right: { gangrene: 'dry', gangreneExtent: 'digits' } } },
    });
    expect(redFlags(examination).map(({ code, limb }) => [code, limb?.side])).toEqual([
      ['acute-limb', 'left'],
      ['chronic-limb-threat', 'right'],
    ]);
  });

  it('every flag of any record says what raised it', () => {
    const one = <const T>(...words: T[]) => fc.option(fc.constantFrom(...words), { nil: undefined });
    const limb = fc.record({
      colour: one('normal', 'pale', 'mottled', 'fixed-mottled'),
      temperature: one('warm', 'cold'),
      gangrene: one('none', 'dry', 'wet'),
      ulcer: one('none', 'deep'),
      muscle: one('normal', 'tense'),
      movement: one('normal', 'weak', 'paralysed'),
      sensation: one('normal', 'digits', 'beyond-digits', 'lost'),
      venousDoppler: one('audible', 'inaudible'),
    });
    const record = fc.record({
      onset: one('acute', 'chronic', 'unknown'),
      symptom: one('none', 'claudication', 'rest-pain', 'tissue-loss'),
      began: one('sudden', 'gradual'),
      femoral: one('absent', 'normal'),
      doppler: one('absent', 'monophasic'),
      toe: fc.option(fc.integer({ min: 0, max: 120 }), { nil: undefined }),
      limb,
    });
    fc.assert(
      fc.property(record, ({ onset, symptom, began, femoral, doppler, toe, limb: inspection }) => {
        const flags = redFlags(
          with_({
            onset,
            history: { leg: { left: { symptom, onset: began } } },
            inspection: { leg: { left: inspection } },
            pulses: {
              femoral: { left: { grade: femoral } },
              'dorsalis-pedis': { left: { doppler } },
              'posterior-tibial': { left: { doppler } },
            },
            pressures: { toe: { left: toe } },
          }),
        );
        for (const flag of flags) expect(flag.grounds.length, flag.code).toBeGreaterThan(0);
      }),
    );
  });

  it('an injury elsewhere does not explain a pulseless leg', () => {
    const examination = with_({
      onset: 'chronic',
      context: { mechanism: 'injury', injury: { left: 'elbow' } },
      pulses: pulseless,
    });
    expect(redFlags(examination)).toEqual([]);
  });
});
