import { describe, expect, it } from 'vitest';
import { emptyExamination, type Examination } from '../../../src/examination/index.js';
import { flagWordsFor } from '../../../src/locale/flags.js';
import '../../../src/locale/de/register.js';
import { redFlags, type TriageChoices } from '../../../src/triage/index.js';

const flagged = (parts: object, choices?: TriageChoices) =>
  redFlags({ ...emptyExamination(), ...parts } as unknown as Examination, {
    ...(choices && { triage: choices }),
  });
const threat = {
  onset: 'chronic',
  context: { diabetes: false },
  history: { leg: { left: { symptom: 'rest-pain' } } },
  pressures: { toe: { left: 20 } },
};
const foot = {
  context: { diabetes: true },
  inspection: { leg: { left: { ulcer: 'shallow', ulcerPlace: 'digits' } } },
};

describe('the clock behind an urgency of days', () => {
  // VSGBI 2019, by audit abstracts.
  it('of chronic limb threat: 5 days in hospital, 14 at home, or as the house has it', () => {
    const [flag] = flagged(threat);
    expect(flag).toMatchObject({
      code: 'chronic-limb-threat',
      urgency: 'soon',
      clock: { code: 'days-to-flow', inHospital: 5, atHome: 14 },
    });
    expect(flagged(threat, { clocks: { atHome: 7 } })[0]?.clock).toMatchObject({ inHospital: 5, atHome: 7 });
  });

  // NICE NG19.
  it('of the diabetic foot: one working day', () => {
    const [flag] = flagged(foot);
    expect(flag).toMatchObject({ code: 'diabetic-foot-active', clock: { code: 'working-days', days: 1 } });
    const [two] = flagged(foot, { clocks: { footWorkingDays: 2 } });
    if (!flag || !two) throw new Error('no flag');
    expect(flagWordsFor('en').when(flag)).toBe('Within 1 working day');
    expect(flagWordsFor('en').when(two)).toBe('Within 2 working days');
    expect(flagWordsFor('de').when(two)).toBe('Binnen 2 Werktagen');
  });

  it('is told of no flag that is seen today or now', () => {
    const wet = { ...threat, inspection: { leg: { left: { gangrene: 'wet' } } } };
    const urgent = flagged(wet).filter(
      ({ urgency, code }) => urgency !== 'soon' && code !== 'diabetic-foot-active',
    );
    expect(urgent.length).toBeGreaterThan(0);
    for (const { clock } of urgent) expect(clock).toBeUndefined();
  });
});
