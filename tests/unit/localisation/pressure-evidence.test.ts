import { describe, expect, it } from 'vitest';
import { emptyExamination, setPulse } from '../../../src/examination/index.js';
import { pressureEvidenceOf, readExamination } from '../../../src/localisation/index.js';

describe('Pressures as evidence for the network', () => {
  it('sets each artery against the higher arm, and an arm only against the other', () => {
    const pressures = {
      brachial: { right: 120, left: 90 },
      'posterior-tibial': { right: 60, left: 126 },
      'dorsalis-pedis': { right: 'incompressible' },
    } as const;
    expect(pressureEvidenceOf({ ...emptyExamination(), pressures })).toEqual({
      at: {
        'right brachial': 1,
        'left brachial': 0.75,
        'right posterior-tibial': 0.5,
        'left posterior-tibial': 1.05,
      },
      incompressible: ['right dorsalis-pedis'],
    });
  });

  it('hands on toe and finger, and whether the ankle falls after exercise', () => {
    const pressures = {
      brachial: { right: 120, left: 118 },
      toe: { right: 36 },
      finger: { left: 108 },
      'posterior-tibial': { right: 118 },
      afterExercise: { brachial: { right: 150 }, 'posterior-tibial': { right: 60 } },
    } as const;
    expect(pressureEvidenceOf({ ...emptyExamination(), pressures })).toMatchObject({
      toe: { right: 0.3 },
      finger: { left: 0.9 },
      fallsAfterExercise: { right: true },
    });
  });

  it('says nothing without an arm pressure, and nothing of a single arm', () => {
    expect(
      pressureEvidenceOf({ ...emptyExamination(), pressures: { 'posterior-tibial': { left: 60 } } }),
    ).toEqual({});
    const one = { ...emptyExamination(), pressures: { brachial: { left: 120 } } };
    expect(pressureEvidenceOf(one)).toEqual({ at: {} });
  });

  it('reaches the reading: a low ankle pressure speaks for disease, and is named among the evidence', () => {
    const felt = setPulse(
      emptyExamination(),
      { site: 'posterior-tibial', side: 'right' },
      { grade: 'normal' },
    );
    const nothing = (examination: typeof felt): number => {
      const { network } = readExamination(examination);
      return network.status === 'read' ? network.limbs['right leg'].nothing : Number.NaN;
    };
    const measured = {
      ...felt,
      pressures: { brachial: { right: 130, left: 128 }, 'posterior-tibial': { right: 50 } },
    };
    expect(nothing(measured)).toBeLessThan(nothing(felt));
    const { network } = readExamination(measured);
    const named =
      network.status === 'read'
        ? network.detail['right leg']?.evidence.map(({ finding }) => finding.kind)
        : [];
    expect(named).toContain('index');
  });
});
