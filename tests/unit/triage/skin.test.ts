import { describe, expect, it } from 'vitest';
import { emptyExamination, type Examination, THROMBOSIS_SIGNS } from '../../../src/examination/index.js';
import { triage } from '../../../src/triage/index.js';

const leg = (inspection: object, more: object = {}): Examination =>
  ({ ...emptyExamination(), inspection: { leg: { left: inspection } }, ...more }) as unknown as Examination;
const veins = (record: Examination) => triage(record).flags.find(({ code }) => code === 'phlegmasia');

/* Emergency teaching pages on phlegmasia cerulea dolens and venous gangrene. */
describe('a swollen blue leg', () => {
  it.each<[string, object, string | undefined]>([
    ['swollen by the hand', { colour: 'blue', oedema: 'pitting' }, 'today'],
    ['whole limb swollen', { colour: 'blue', thrombosisSigns: ['whole-limb-swollen'] }, 'today'],
    ['calf wider', { colour: 'blue', thrombosisSigns: ['calf-wider'] }, 'today'],
    ['pitting on this side alone', { colour: 'mottled', thrombosisSigns: ['one-sided-pitting'] }, 'today'],
    [
      'tender veins without a swelling',
      { colour: 'blue', thrombosisSigns: ['tender-along-veins'] },
      undefined,
    ],
    ['swollen, not blue', { colour: 'red', thrombosisSigns: [...THROMBOSIS_SIGNS] }, undefined],
    ['looked for and not there', { colour: 'blue', oedema: 'none', thrombosisSigns: [] }, undefined],
    ['with gangrene', { colour: 'blue', thrombosisSigns: ['whole-limb-swollen'], gangrene: 'dry' }, 'now'],
    ['and cold', { colour: 'blue', thrombosisSigns: ['calf-wider'], temperature: 'cold' }, 'now'],
    ['no venous signal', { colour: 'blue', oedema: 'pitting', venousDoppler: 'inaudible' }, 'now'],
    ['slow refill', { colour: 'blue', oedema: 'pitting', refill: 5 }, 'now'],
    ['numb', { colour: 'blue', oedema: 'pitting', sensation: 'digits' }, 'now'],
    ['pale and dead', { colour: 'pale', oedema: 'firm', gangrene: 'wet' }, 'now'],
    ['pale alone', { colour: 'pale', oedema: 'firm' }, undefined],
  ])('%s', (_title, inspection, urgency) => {
    expect(veins(leg(inspection))?.urgency).toBe(urgency);
  });

  it('and pulseless: now', () => {
    const pulses = {
      'dorsalis-pedis': { left: { grade: 'absent' } },
      'posterior-tibial': { left: { grade: 'absent' } },
    };
    const record = leg({ colour: 'blue', thrombosisSigns: ['whole-limb-swollen'] }, { pulses });
    expect(veins(record)?.urgency).toBe('now');
  });

  it('names the signs and the gangrene that raised it', () => {
    const flag = veins(
      leg({ colour: 'blue', thrombosisSigns: ['whole-limb-swollen', 'surface-veins'], gangrene: 'wet' }),
    );
    expect(flag?.because).toContainEqual({
      code: 'thrombosis-signs',
      signs: ['whole-limb-swollen', 'surface-veins'],
    });
    expect(flag?.because).toContainEqual(expect.objectContaining({ code: 'gangrene', kind: 'wet' }));
  });

  it('of years is another matter', () => {
    expect(veins(leg({ colour: 'blue', oedema: 'pitting' }, { onset: 'chronic' }))).toBeUndefined();
  });
});
