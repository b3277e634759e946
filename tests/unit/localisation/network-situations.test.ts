import { describe, expect, it } from 'vitest';
import type { Place, PulseSiteId, Side } from '../../../src/anatomy/index.js';
import {
  type Context,
  emptyExamination,
  type Examination,
  type Grade,
  type InjuryPlace,
  type Onset,
  setBruit,
  setPulse,
} from '../../../src/examination/index.js';
import {
  type ActKind,
  localise,
  type NetworkReading,
  type PressureEvidence,
} from '../../../src/localisation/network/index.js';

/* What an experienced examiner would conclude: common practice, no source, unless said otherwise. */

type Pulses = Partial<Record<PulseSiteId, readonly [right: Grade | undefined, left?: Grade]>>;

function examined(onset: Onset, pulses: Pulses, context?: Context): Examination {
  let examination: Examination = { ...emptyExamination(), onset, ...(context && { context }) };
  for (const [site, [right, left]] of Object.entries(pulses) as [PulseSiteId, readonly Grade[]][]) {
    const set = (side: Side, grade: Grade | undefined): void => {
      if (grade) examination = setPulse(examination, { site, side } as Place<PulseSiteId>, { grade });
    };
    set('right', right);
    set('left', left);
  }
  return examination;
}

function read(examination: Examination, pressures?: PressureEvidence): NetworkReading & { status: 'read' } {
  const reading = localise(examination, { ...(pressures && { pressures }) });
  if (reading.status !== 'read') throw new Error(`expected a reading, found ${reading.status}`);
  return reading;
}

const LEFT_THIGH: Pulses = {
  femoral: ['normal', 'normal'],
  popliteal: ['normal', 'absent'],
  'posterior-tibial': ['normal', 'absent'],
  'dorsalis-pedis': ['normal', 'absent'],
};

describe('The network in situations with a known answer', () => {
  it('puts a chronic block between femoral and popliteal in the superficial femoral artery, and clears the other leg', () => {
    const { limbs, story } = read(examined('chronic', LEFT_THIGH, { ageBand: '60-79' }));
    expect(limbs['left leg'].first?.artery).toBe('superficial-femoral');
    expect(limbs['left leg'].levels[0]).toMatchObject({ level: 'femoro-popliteal' });
    expect(limbs['right leg'].first).toBeUndefined();
    expect(story.lesions.map(({ piece }) => piece)).toEqual(['left superficial-femoral']);
  });

  it('lodges an embolus at the fork of the femoral artery when the heart beats irregularly', () => {
    const sudden = examined('acute', LEFT_THIGH, { ageBand: '80-over', mechanism: 'embolic' });
    const { limbs, causes } = read({ ...sudden, history: { rhythm: 'atrial-fibrillation' } });
    expect(limbs['left leg'].first?.pieces).toContain('left common-femoral distal');
    expect(causes.embolic).toBeGreaterThan(0.9);
    expect(causes.embolic).toBeGreaterThan(read(sudden).causes.embolic);
  });

  it('finds one cause for two legs: both femorals gone point to the aortic fork', () => {
    const { limbs } = read(
      examined(
        'chronic',
        { femoral: ['absent', 'absent'], popliteal: ['absent', 'absent'] },
        { ageBand: '40-59' },
      ),
    );
    for (const leg of ['right leg', 'left leg'] as const) {
      expect(limbs[leg].first?.artery).toBe('infrarenal-aorta');
      expect(limbs[leg].levels[0]?.level).toBe('aorto-iliac');
    }
  });

  it('thinks of a coarctation when femorals are weak, arms strong and the patient young, and not in old age', () => {
    const pulses: Pulses = { radial: ['normal', 'normal'], femoral: ['reduced', 'reduced'] };
    const level = (ageBand: Context['ageBand']): string | undefined =>
      read(examined('chronic', pulses, { ageBand })).limbs['left leg'].levels[0]?.level;
    expect(level('under-20')).toBe('central');
    expect(level('60-79')).toBe('aorto-iliac');
  });

  it('takes a late femoral pulse as a sign of the aorta above', () => {
    const weak = examined('chronic', { femoral: ['reduced', 'reduced'] }, { ageBand: '20-39' });
    const central = (examination: Examination): number =>
      read(examination).limbs['left leg'].levels.find(({ level }) => level === 'central')!.probability;
    const late = { ...weak, delays: { radioFemoral: { right: 'delayed', left: 'delayed' } } } as const;
    expect(central(late)).toBeGreaterThan(central(weak) + 0.03);
  });

  it('puts an injury where it was', () => {
    const feet: Pulses = { 'posterior-tibial': ['absent'], 'dorsalis-pedis': ['absent'] };
    const known = read(examined('acute', feet, { ageBand: '20-39', injury: { right: 'knee' } }));
    expect(known.limbs['right leg'].first?.artery).toBe('popliteal');
    const thigh = read(examined('acute', feet, { ageBand: '20-39', injury: { right: 'thigh' } }));
    expect(thigh.limbs['right leg'].first?.artery).toBe('superficial-femoral');
  });

  it('sees small arteries behind absent foot pulses with strong popliteals in a diabetic (Graziani 2007: 74% below the knee)', () => {
    const pulses: Pulses = {
      femoral: ['normal', 'normal'],
      popliteal: ['normal', 'normal'],
      'posterior-tibial': ['absent', 'absent'],
      'dorsalis-pedis': ['absent', 'absent'],
    };
    const { limbs, causes } = read(examined('chronic', pulses, { ageBand: '60-79', diabetes: true }));
    expect(limbs['left leg'].levels[0]?.level).toBe('infrapopliteal');
    expect(causes.distal).toBeGreaterThan(
      read(examined('chronic', pulses, { ageBand: '60-79', diabetes: false })).causes.distal,
    );
  });

  it('never lowers by an injury the probability of the arteries at and just above its place', () => {
    const AT = {
      knee: 'popliteal',
      thigh: 'superficial-femoral',
      elbow: 'brachial',
      'wrist-hand': 'radial',
      shoulder: 'axillary',
      groin: 'common-femoral',
    } as const;
    const legs: Pulses = { 'posterior-tibial': ['absent'], 'dorsalis-pedis': ['absent'] };
    for (const onset of ['acute', 'chronic', 'unknown'] as const) {
      for (const [place, artery] of Object.entries(AT)) {
        const arm = ['brachial', 'radial', 'axillary'].includes(artery);
        const pulses: Pulses = arm ? { radial: ['absent'] } : legs;
        const share = (context: Context): number =>
          read(examined(onset, pulses, context))
            .limbs[arm ? 'right arm' : 'right leg'].occluded.entries.filter(({ arteries }) =>
              arteries.includes(artery),
            )
            .reduce((sum, { probability }) => sum + probability, 0);
        expect(share({ injury: { right: place as InjuryPlace } })).toBeGreaterThan(share({}));
      }
    }
  });

  it('takes low pressure as the reason for absent pulses of all limbs, and normal pressure not', () => {
    const gone: Pulses = {
      radial: ['absent', 'absent'],
      'posterior-tibial': ['absent', 'absent'],
      'dorsalis-pedis': ['absent', 'absent'],
    };
    const low = (systolic: number): number =>
      read({ ...examined('acute', gone), circulation: { systolic } }).causes['low-flow'];
    expect(low(70)).toBeGreaterThan(0.9);
    expect(low(150)).toBeLessThan(0.5);
  });

  it('names pulses and pressures that hardly go together, and which to check', () => {
    const normal: Pulses = {
      femoral: ['normal'],
      popliteal: ['normal'],
      'posterior-tibial': ['normal'],
      'dorsalis-pedis': ['normal'],
    };
    const { conflicts, limbs } = read(examined('chronic', normal), {
      at: { 'right posterior-tibial': 0.3, 'right dorsalis-pedis': 0.3 },
    });
    expect(limbs['right leg'].headline).toBeDefined();
    expect(conflicts.length).toBeGreaterThan(0);
    expect(read(examined('chronic', normal)).conflicts).toEqual([]);
  });

  it('offers only what the form can record, on limbs in question, and nothing where it is only read', () => {
    const leg = examined('chronic', { femoral: ['normal', 'normal'], popliteal: ['absent', 'normal'] });
    const next = (can: readonly ActKind[]) => {
      const reading = localise(leg, { can });
      return reading.status === 'read' ? reading.next.map(({ act }) => act) : [];
    };
    expect(next([])).toEqual([]);
    const felt = next(['feel']);
    expect(felt.length).toBeGreaterThan(0);
    for (const act of felt) {
      expect(act.kind).toBe('feel');
      expect('place' in act && act.place.side).not.toBe('left');
    }
  });

  it('moves a smoker’s probability towards the aorto-iliac level', () => {
    const legs: Pulses = { popliteal: ['absent'], 'posterior-tibial': ['absent'] };
    const iliac = (smoking: 'never' | 'current'): number =>
      read(examined('chronic', legs, { smoking })).limbs['right leg'].levels.find(
        ({ level }) => level === 'aorto-iliac',
      )!.probability;
    expect(iliac('current')).toBeGreaterThan(iliac('never'));
  });

  it('does not blame an artery for a foot pulse that was never there, nor for a harvested radial', () => {
    const without = examined(
      'chronic',
      { 'dorsalis-pedis': ['absent'], radial: ['absent'] },
      {
        absentFromBirth: { right: ['dorsalis-pedis'] },
        radialHarvested: ['right'],
      },
    );
    expect(localise(without)).toEqual({ status: 'nothing-examined' });
  });

  it('blames an absent dorsalis pedis alone only cautiously, since many healthy people have none to feel', () => {
    const { limbs } = read(
      examined('chronic', {
        femoral: ['normal'],
        popliteal: ['normal'],
        'posterior-tibial': ['normal'],
        'dorsalis-pedis': ['absent'],
      }),
    );
    expect(limbs['right leg'].nothing).toBeGreaterThan(0.5);
  });

  it('leaves an amputated stretch out of answers and of next acts', () => {
    const examination = examined(
      'chronic',
      { femoral: ['reduced'] },
      { legAmputation: { right: 'above-knee' } },
    );
    const { limbs, next } = read(examination);
    const below = limbs['right leg'].answers.filter(
      ({ artery }) => artery === 'popliteal' || artery === 'anterior-tibial',
    );
    expect(below.every(({ probability }) => probability === 0)).toBe(true);
    const acts = next.map(({ act }) => ('place' in act ? `${act.place.side} ${act.place.site}` : act.kind));
    expect(acts).not.toContain('right popliteal');
    expect(acts).not.toContain('right dorsalis-pedis');
  });

  it('does not offer a site that could not be examined', () => {
    let examination = examined('chronic', { femoral: ['normal', 'absent'] });
    examination = setPulse(
      examination,
      { site: 'popliteal', side: 'left' },
      { couldNotExamine: 'amputated' },
    );
    const acts = read(examination).next.map(({ act }) =>
      'place' in act ? `${act.kind} ${act.place.side} ${act.place.site}` : '',
    );
    expect(acts).not.toContain('feel left popliteal');
    expect(acts).toContain('feel left posterior-tibial');
  });

  it('suspects a graft more than an artery at large', () => {
    const pulses: Pulses = { femoral: ['normal'], popliteal: ['absent'] };
    const graft = { artery: 'superficial-femoral', side: 'right', kind: 'bypass' } as const;
    const share = (context: Context): number =>
      read(examined('chronic', pulses, context)).limbs['right leg'].answers.find(
        ({ artery }) => artery === 'superficial-femoral',
      )!.probability;
    expect(share({ revascularisations: [graft] })).toBeGreaterThan(share({}));
  });

  it('hears a narrowing: a bruit in the groin speaks for it, a continuous one more', () => {
    const weak = examined('chronic', { femoral: ['reduced'], popliteal: ['reduced'] });
    const narrowed = (examination: Examination): number => {
      const { pieces } = read(examination);
      return pieces['right common-femoral proximal'].narrowed + pieces['right external-iliac'].narrowed;
    };
    const groin = { site: 'femoral', side: 'right' } as const;
    const silent = narrowed(setBruit(weak, groin, { bruit: 'none' }));
    const systolic = narrowed(setBruit(weak, groin, { bruit: 'systolic' }));
    const continuous = narrowed(setBruit(weak, groin, { bruit: 'continuous' }));
    expect(silent).toBeLessThan(narrowed(weak));
    expect(systolic).toBeGreaterThan(narrowed(weak));
    expect(continuous).toBeGreaterThan(systolic);
  });

  it('takes a Doppler signal and a pressure index as evidence beside the finger', () => {
    const felt = examined('chronic', { femoral: ['normal'], 'posterior-tibial': ['reduced'] });
    const nothing = (examination: Examination, pressures?: PressureEvidence): number =>
      read(examination, pressures).limbs['right leg'].nothing;
    const foot = { site: 'posterior-tibial', side: 'right' } as const;
    expect(nothing(setPulse(felt, foot, { doppler: 'triphasic' }))).toBeGreaterThan(nothing(felt));
    expect(nothing(setPulse(felt, foot, { doppler: 'monophasic' }))).toBeLessThan(nothing(felt));
    expect(nothing(felt, { ankle: { right: 0.55 } })).toBeLessThan(nothing(felt));
    expect(nothing(felt, { at: { 'right posterior-tibial': 1.05 } })).toBeGreaterThan(nothing(felt));
    // A stiff artery does not compress: that speaks for disease (Suominen 2008: sensitivity 0.38, specificity 0.94).
    expect(nothing(felt, { ankle: { right: 1.5 } })).toBeLessThan(nothing(felt));
  });

  it('reads pain on effort by the highest muscle that hurts (2005 ACC/AHA guideline, from memory)', () => {
    const feet: Pulses = { 'posterior-tibial': ['absent'], 'dorsalis-pedis': ['absent'] };
    const level = (pain: 'buttock' | 'calf-upper', name: string): number =>
      read(examined('chronic', feet, { legClaudication: { right: pain } })).limbs['right leg'].levels.find(
        ({ level: one }) => one === name,
      )!.probability;
    expect(level('buttock', 'aorto-iliac')).toBeGreaterThan(level('calf-upper', 'aorto-iliac'));
    expect(level('calf-upper', 'femoro-popliteal')).toBeGreaterThan(level('buttock', 'femoro-popliteal'));
  });

  it('explains weak pulses everywhere by low flow or one proximal cause, not by many blocks', () => {
    const everywhere = Object.fromEntries(
      (['brachial', 'radial', 'femoral', 'popliteal', 'posterior-tibial', 'dorsalis-pedis'] as const).map(
        (site) => [site, ['reduced', 'reduced'] as const],
      ),
    );
    const { pieces } = read(examined('acute', everywhere));
    expect(Math.max(...Object.values(pieces).map(({ blocked }) => blocked))).toBeLessThan(0.5);
  });

  it('weighs findings: the absent popliteal speaks for the thigh, a bounding femoral of the same side too', () => {
    const { detail } = read(examined('chronic', LEFT_THIGH));
    const evidence = detail['left leg']!.evidence;
    const weight = (site: PulseSiteId): number =>
      evidence.find(
        ({ finding }) =>
          finding.kind === 'pulse' && finding.place.site === site && finding.place.side === 'left',
      )!.weight;
    expect(weight('popliteal')).toBeGreaterThan(0.3);
    expect(weight('femoral')).toBeGreaterThan(0.3);
  });

  it('asks for the femoral or the popliteal pulse first when only foot pulses are known', () => {
    const { next } = read(
      examined('chronic', {
        'posterior-tibial': [undefined, 'absent'],
        'dorsalis-pedis': [undefined, 'absent'],
      }),
    );
    expect(next[0]).toMatchObject({ act: { kind: 'feel', place: { side: 'left' } } });
    const first = next[0]!.act;
    expect('place' in first && ['femoral', 'popliteal'].includes(first.place.site)).toBe(true);
    for (const { gain } of next) expect(gain).toBeGreaterThan(-1e-9);
  });

  it('says how firm it is: firm on a full leg, not firm on a single reduced foot pulse', () => {
    const full = read(examined('chronic', LEFT_THIGH, { ageBand: '60-79' })).detail['left leg']!.firm;
    expect(full).toMatchObject({ grade: 'firm', held: 6, tried: 6 });
    const bare = read(examined('acute', { 'dorsalis-pedis': ['reduced'] })).detail['right leg']!.firm;
    expect(bare.grade).toBe('not-firm');
    expect(bare.flips).toBeGreaterThan(0);
    expect(bare.tried).toBe(6);
  });
});
