import { describe, expect, it } from 'vitest';
import { emptyExamination, type Examination } from '../../../src/examination/index.js';
import { setLimbOnset, triage, type Urgent } from '../../../src/triage/index.js';

const left = { kind: 'leg', side: 'left' } as const;
const pulses = (femoral: string, popliteal: string, dp: string, pt: string) => ({
  femoral: { left: { grade: femoral } },
  popliteal: { left: { grade: popliteal } },
  'dorsalis-pedis': { left: { grade: dp } },
  'posterior-tibial': { left: { grade: pt } },
});
const FULL = pulses('normal', 'normal', 'normal', 'normal');
const GONE = pulses('normal', 'absent', 'absent', 'absent');
const WELL = { colour: 'normal', temperature: 'warm', sensation: 'normal', movement: 'normal' };
const of = (parts: object) => ({ ...emptyExamination(), ...parts }) as unknown as Examination;
const seen = (leg: object) => ({ inspection: { leg: { left: leg } } });
const told = (leg: object) => ({ history: { leg: { left: leg } } });
const YEARS = 20_000;

/**
 * Ordinary patients: what is found, the urgency while the onset is blank, and what it becomes when it is known to be of years or of six
 * hours. Common practice, no source; the rules behind each stand with their source beside the tables.
 */
const PATIENTS: [string, Examination, blank: Urgent, years: Urgent, hours: Urgent][] = [
  [
    'claudicant, pulses gone, foot warm',
    of({ pulses: GONE, ...seen(WELL), ...told({ symptom: 'claudication' }) }),
    'none',
    'none',
    'now',
  ],
  [
    'claudicant, pulses gone, foot cool',
    of({ pulses: GONE, ...seen({ temperature: 'cool' }), ...told({ symptom: 'claudication' }) }),
    'none',
    'none',
    'now',
  ],
  [
    'one dorsalis pedis not felt',
    of({ pulses: pulses('normal', 'normal', 'absent', 'normal') }),
    'none',
    'none',
    'today',
  ],
  [
    'popliteal not felt, foot pulses full',
    of({ pulses: pulses('normal', 'absent', 'normal', 'normal') }),
    'none',
    'none',
    'today',
  ],
  ['everything normal', of({ pulses: FULL, ...seen(WELL) }), 'none', 'none', 'none'],
  [
    'cold feet in a cold room',
    of({ pulses: FULL, ...seen({ temperature: 'cold' }) }),
    'none',
    'none',
    'today',
  ],
  [
    'pale and cold, pulses full',
    of({ pulses: FULL, ...seen({ colour: 'pale', temperature: 'cold' }) }),
    'none',
    'none',
    'today',
  ],
  ['rest pain, pulses gone', of({ pulses: GONE, ...told({ symptom: 'rest-pain' }) }), 'now', 'soon', 'now'],
  ['rest pain, nothing examined', of(told({ symptom: 'rest-pain' })), 'today', 'soon', 'today'],
  [
    'rest pain, warm and pink with pulses',
    of({ context: { diabetes: false }, pulses: FULL, ...seen(WELL), ...told({ symptom: 'rest-pain' }) }),
    'none',
    'none',
    'none',
  ],
  ['cold and pulseless', of({ pulses: GONE, ...seen({ temperature: 'cold' }) }), 'now', 'soon', 'now'],
  [
    'cold, pale and pulseless',
    of({ pulses: GONE, ...seen({ temperature: 'cold', colour: 'pale' }) }),
    'now',
    'today',
    'now',
  ],
  [
    'cold, pulseless and numb toes',
    of({ pulses: GONE, ...seen({ temperature: 'cold', sensation: 'digits' }) }),
    'now',
    'now',
    'now',
  ],
  [
    'numb toes, pulses full (neuropathy)',
    of({ pulses: FULL, ...seen({ ...WELL, sensation: 'digits' }) }),
    'today',
    'none',
    'today',
  ],
  [
    'numb toes, pulses gone, warm',
    of({ pulses: GONE, ...seen({ ...WELL, sensation: 'digits' }) }),
    'now',
    'today',
    'now',
  ],
  [
    'weak leg, pulses full (old stroke)',
    of({ pulses: FULL, ...seen({ ...WELL, movement: 'weak' }) }),
    'now',
    'none',
    'now',
  ],
  [
    'the same, ticked as old and unchanged',
    of({ pulses: FULL, ...seen({ ...WELL, movement: 'weak', deficitKnown: true }) }),
    'none',
    'none',
    'none',
  ],
  [
    'tender calf, warm, pulses full',
    of({ pulses: FULL, ...seen({ ...WELL, muscle: 'tender' }) }),
    'none',
    'none',
    'none',
  ],
  [
    'swollen foot, pulses by Doppler',
    of({
      pulses: { 'dorsalis-pedis': { left: { couldNotExamine: 'oedema', doppler: 'triphasic' } } },
      ...seen({ oedema: 'pitting' }),
    }),
    'none',
    'none',
    'today',
  ],
  [
    'reduced pulses everywhere',
    of({ pulses: pulses('reduced', 'reduced', 'reduced', 'reduced'), ...seen(WELL) }),
    'none',
    'none',
    'today',
  ],
];

describe('twenty ordinary patients', () => {
  it('are twenty', () => expect(PATIENTS).toHaveLength(20));

  it.each(PATIENTS)('%s: onset blank, of years, of six hours', (_title, patient, blank, years, hours) => {
    const at = (time: number) => triage(setLimbOnset(patient, left, { hours: time })).urgency;
    expect([triage(patient).urgency, at(YEARS), at(6)]).toEqual([blank, years, hours]);
  });

  it.each(PATIENTS.filter(([, , , years, hours]) => years !== hours))(
    '%s: the onset is asked while it is blank, or nothing was found that it could change',
    (_title, patient) => {
      const { limbs, questions } = triage(patient);
      const sum = limbs.find(({ limb }) => limb.kind === 'leg' && limb.side === 'left')?.sum ?? 0;
      expect(questions.some(({ code }) => code === 'onset')).toBe(sum >= 4);
    },
  );
});

const leftArm = { kind: 'arm', side: 'left' } as const;
const ofArm = (brachial: string, radial: string, ulnar: string) => ({
  brachial: { left: { grade: brachial } },
  radial: { left: { grade: radial } },
  ulnar: { left: { grade: ulnar } },
});
const ARM_FULL = ofArm('normal', 'normal', 'normal');
const ARM_GONE = ofArm('absent', 'absent', 'absent');
const WRIST_GONE = ofArm('normal', 'absent', 'absent');
const seenArm = (arm: object) => ({ inspection: { arm: { left: arm } } });
const toldArm = (arm: object) => ({ history: { arm: { left: arm } } });

/** The same for arms. Common practice, no source. */
const ARMS: [string, Examination, blank: Urgent, years: Urgent, hours: Urgent][] = [
  ['everything normal', of({ pulses: ARM_FULL, ...seenArm(WELL) }), 'none', 'none', 'none'],
  [
    'arm tires at work, wrist pulses gone, hand warm',
    of({ pulses: WRIST_GONE, ...seenArm(WELL), ...toldArm({ symptom: 'claudication' }) }),
    'none',
    'none',
    'now',
  ],
  [
    'dizzy when the arm works, weak pulses, vertebral reversed (steal)',
    of({
      pulses: ofArm('reduced', 'reduced', 'reduced'),
      ...seenArm({ ...WELL, vertebralFlow: 'reversed' }),
      ...toldArm({ symptom: 'claudication', dizzyOnUse: true }),
    }),
    'none',
    'none',
    'today',
  ],
  [
    'radial not felt, ulnar full, hand warm',
    of({ pulses: ofArm('normal', 'absent', 'normal'), ...seenArm(WELL) }),
    'none',
    'none',
    'today',
  ],
  [
    'radial taken as a graft',
    of({
      pulses: ofArm('normal', 'absent', 'normal'),
      ...seenArm(WELL),
      context: { radialHarvested: ['left'] },
    }),
    'none',
    'none',
    'none',
  ],
  [
    'fingers white in the cold, pulses full (vasospasm)',
    of({
      pulses: ARM_FULL,
      ...seenArm({ ...WELL, temperature: 'cold' }),
      ...toldArm({ coldFingers: true }),
    }),
    'none',
    'none',
    'today',
  ],
  [
    'pale and cold, pulses full',
    of({ pulses: ARM_FULL, ...seenArm({ colour: 'pale', temperature: 'cold' }) }),
    'none',
    'none',
    'today',
  ],
  [
    'cold, pale and pulseless',
    of({ pulses: ARM_GONE, ...seenArm({ colour: 'pale', temperature: 'cold' }) }),
    'now',
    'today',
    'now',
  ],
  [
    'cold, pulseless and numb fingers',
    of({ pulses: ARM_GONE, ...seenArm({ temperature: 'cold', sensation: 'digits' }) }),
    'now',
    'now',
    'now',
  ],
  ['pulseless, warm and pink', of({ pulses: ARM_GONE, ...seenArm(WELL) }), 'none', 'none', 'now'],
  [
    'rest pain, pulses gone',
    of({ pulses: ARM_GONE, ...toldArm({ symptom: 'rest-pain' }) }),
    'now',
    'soon',
    'now',
  ],
  [
    'numb fingers, pulses full (nerve at the wrist)',
    of({ pulses: ARM_FULL, ...seenArm({ ...WELL, sensation: 'digits' }) }),
    'today',
    'none',
    'today',
  ],
  [
    'weak arm, pulses full (old stroke)',
    of({ pulses: ARM_FULL, ...seenArm({ ...WELL, movement: 'weak' }) }),
    'now',
    'none',
    'now',
  ],
  [
    'the same, ticked as old and unchanged',
    of({ pulses: ARM_FULL, ...seenArm({ ...WELL, movement: 'weak', deficitKnown: true }) }),
    'none',
    'none',
    'none',
  ],
  [
    'tender forearm, warm, pulses full',
    of({ pulses: ARM_FULL, ...seenArm({ ...WELL, muscle: 'tender' }) }),
    'none',
    'none',
    'none',
  ],
  [
    'lymphoedema of years, pulses full',
    of({ pulses: ARM_FULL, ...seenArm({ ...WELL, oedema: 'firm', lymphoedema: 'present' }) }),
    'none',
    'none',
    'none',
  ],
  [
    'arm with a fistula, cool, pulses full',
    of({
      pulses: ARM_FULL,
      ...seenArm({ temperature: 'cool' }),
      context: { access: [{ side: 'left', kind: 'fistula' }] },
    }),
    'none',
    'none',
    'today',
  ],
];

describe('ordinary patients with an arm', () => {
  it.each(ARMS)('%s: onset blank, of years, of six hours', (_title, patient, blank, years, hours) => {
    const at = (time: number) => triage(setLimbOnset(patient, leftArm, { hours: time })).urgency;
    expect([triage(patient).urgency, at(YEARS), at(6)]).toEqual([blank, years, hours]);
  });

  it.each(ARMS.filter(([, , , years, hours]) => years !== hours))(
    '%s: the onset is asked while it is blank, or nothing was found that it could change',
    (_title, patient) => {
      const { limbs, questions } = triage(patient);
      const sum = limbs.find(({ limb }) => limb.kind === 'arm' && limb.side === 'left')?.sum ?? 0;
      expect(questions.some(({ code }) => code === 'onset')).toBe(sum >= 4);
    },
  );
});

describe('pain at rest of years in a leg that is warm and pink with full pulses', () => {
  const pain = { onset: 'chronic', pulses: FULL, ...seen(WELL), ...told({ symptom: 'rest-pain' }) };

  // Global Vascular Guidelines 2019: limb threat asks for disease shown; stiff arteries of diabetes hide it.
  it('is a referral while diabetes is not excluded, and asks for it', () => {
    for (const context of [undefined, { diabetes: true }])
      expect(triage(of({ ...pain, ...(context && { context }) })).urgency).toBe('soon');
    expect(triage(of(pain)).questions.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['pad-tests', 'diabetes']),
    );
  });

  it('is none without diabetes, and asks for a measurement', () => {
    const read = triage(of({ ...pain, context: { diabetes: false } }));
    expect(read.urgency).toBe('none');
    expect(read.questions.map(({ code }) => code)).toContain('pad-tests');
  });

  it('is one again with any sign against the circulation', () => {
    const signs = [
      { temperature: 'cool' },
      { colour: 'pale' },
      { refill: 6 },
      { venousDoppler: 'inaudible' },
    ];
    for (const sign of signs)
      expect(
        triage(of({ ...pain, context: { diabetes: false }, ...seen({ ...WELL, ...sign }) })).urgency,
        JSON.stringify(sign),
      ).not.toBe('none');
  });
});

describe('numb toes with full pulses', () => {
  const numb = of({ pulses: FULL, ...seen({ ...WELL, sensation: 'digits' }) });

  it.each([
    [undefined, 'today'],
    ['soon', 'soon'],
    ['none', 'none'],
  ] as const)('by the choice %s: %s', (numbnessWithPulses, urgency) => {
    expect(triage(numb, { triage: numbnessWithPulses ? { numbnessWithPulses } : {} }).urgency).toBe(urgency);
    const known = of({ pulses: FULL, ...seen({ ...WELL, sensation: 'digits', deficitKnown: true }) });
    expect(triage(known).urgency).toBe('none');
  });
});
